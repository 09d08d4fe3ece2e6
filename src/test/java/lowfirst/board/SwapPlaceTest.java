package lowfirst.board;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lowfirst.problem.Place;
import org.junit.jupiter.api.Test;

/** Which substitute sits at a place. */
class SwapPlaceTest {
  private static Swap swap(String board, String fitted, String... places) {
    return new Swap(
        board,
        List.of(places).stream().map(Designator::of).toList(),
        fitted,
        "",
        "",
        "",
        Place.ofLine("swaps.csv", 2));
  }

  private static String fitted(String board, String place, Swap... swaps) {
    Kit kit = SampleBoards.kit(List.of(swaps));
    return kit.swapAt(board, Designator.of(place)).map(Swap::fitted).orElse("none");
  }

  @Test
  void the_last_row_of_a_place_tells_what_sits_there() {
    Swap[] swaps = {swap("driver", "first", "Q1", "Q2"), swap("driver", "second", "Q1")};
    assertEquals("second", fitted("driver", "Q1", swaps));
    assertEquals("first", fitted("driver", "Q2", swaps));
    assertEquals("none", fitted("driver", "Q3", swaps));
  }

  @Test
  void a_row_is_of_its_board_and_one_without_a_board_of_every() {
    assertEquals("none", fitted("controller", "Q1", swap("driver", "other", "Q1")));
    assertEquals("any", fitted("controller", "Q1", swap(" ", "any", "Q1")));
  }
}
