package lowfirst.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ExcerptTest {
  @Test
  void as_many_names_as_fit_are_said_in_full() {
    assertEquals("", Excerpt.of(List.of(), 2));
    assertEquals("R1", Excerpt.of(List.of("R1"), 2));
    assertEquals("R1, R2", Excerpt.of(List.of("R1", "R2"), 2));
  }

  @Test
  void of_more_names_the_first_are_said_and_how_many_more_there_are() {
    assertEquals("R1, R2 and 1 more", Excerpt.of(List.of("R1", "R2", "R3"), 2));
    assertEquals("7 and 3 more", Excerpt.of(List.of(7, 8, 9, 10), 1));
  }

  @Test
  void a_long_text_ends_in_dots_and_is_as_long_as_it_may_be() {
    assertEquals("abcd", Excerpt.of("abcd", 4));
    assertEquals("a...", Excerpt.of("abcde", 4));
  }
}
