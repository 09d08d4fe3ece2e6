package lowfirst.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class PartIndexTest {

  /** Half of them usual, as R17; half not, as R017, L1-In, R1234567. */
  private static String anyName(Random random) {
    String letters = List.of("R", "C", "IC", "LED", "r", "MOTOR").get(random.nextInt(6));
    int number = random.nextInt(500);
    return switch (random.nextInt(6)) {
      case 0 -> letters + "0" + number;
      case 1 -> letters + number + "-In";
      case 2 -> letters + (1_000_000 + number);
      default -> letters + number;
    };
  }

  @Test
  void every_designator_has_one_part_found_again_by_its_text() {
    var random = new Random(7);
    var index = new PartIndex(5_000);
    Map<String, BoardPart> made = new HashMap<>();
    var order = new ArrayList<String>();
    for (int i = 0; i < 5_000; i++) {
      String name = anyName(random);
      BoardPart part = index.of(Designator.of(name));
      BoardPart before = made.putIfAbsent(name, part);
      if (before == null) {
        order.add(name);
      } else {
        assertSame(before, part, name);
      }
    }
    assertEquals(order, index.all().stream().map(part -> part.designator().text()).toList());
    made.forEach((name, part) -> assertSame(part, index.find(Designator.of(name)), name));
  }

  /** As many as were expected, so that looking on finds every slot that is not at its own place. */
  @Test
  void an_index_that_is_full_finds_all_and_nothing_else() {
    for (int most : new int[] {0, 1, 2, 3, 7, 8, 100, 1023, 1024}) {
      var index = new PartIndex(most);
      for (int i = 1; i <= most; i++) {
        index.of(Designator.of("R" + i));
      }
      assertEquals(most, index.all().size());
      for (int i = 1; i <= most; i++) {
        assertEquals("R" + i, index.find(Designator.of("R" + i)).designator().text());
        assertNull(index.find(Designator.of("C" + i)));
        assertNull(index.find(Designator.of("R0" + i)));
      }
    }
  }

  /** High numbers among few parts have no row as long as that, and are found all the same. */
  @Test
  void a_few_high_numbers_are_found_before_and_after_their_row_has_grown() {
    var index = new PartIndex(100);
    BoardPart high = index.of(Designator.of("R999999"));
    BoardPart middle = index.of(Designator.of("R900"));
    for (int i = 1; i <= 95; i++) {
      index.of(Designator.of("R" + i));
    }
    assertSame(high, index.of(Designator.of("R999999")));
    assertSame(middle, index.of(Designator.of("R900")));
    assertSame(middle, index.find(Designator.of("R900")));
    assertNull(index.find(Designator.of("R901")));
    assertNull(index.find(Designator.of("R999998")));
    assertEquals(97, index.all().size());
  }

  /** Each in a row as long as its number is high would take more memory than any machine has. */
  @Test
  void high_numbers_behind_many_letters_have_no_long_rows() {
    int rows = 26 * 26 * 26;
    var index = new PartIndex(rows);
    for (int i = 0; i < rows; i++) {
      index.of(Designator.of(letters(i) + 999_999));
    }
    assertEquals(rows, index.all().size());
    assertEquals("ZZZ999999", index.find(Designator.of("ZZZ999999")).designator().text());
  }

  /** A row that grew by one place at a time would be copied as often as it is long: for minutes. */
  @Test
  @Timeout(30)
  void a_long_row_is_copied_seldom() {
    int parts = 400_000;
    var index = new PartIndex(parts);
    for (int i = 1; i <= parts; i++) {
      index.of(Designator.of("R" + i));
    }
    assertEquals(parts, index.all().size());
  }

  private static String letters(int number) {
    return "" + letter(number / 26 / 26) + letter(number / 26) + letter(number);
  }

  private static char letter(int number) {
    return (char) ('A' + number % 26);
  }
}
