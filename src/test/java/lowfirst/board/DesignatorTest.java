package lowfirst.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DesignatorTest {

  private static final List<String> AS_A_PERSON_SORTS =
      List.of(
          "1N1", "1N2", "C1", "C2", "C10", "C100", "IC1", "L1-In", "L1-Out", "L2-In", "R2", "R02",
          "R10", "R10A", "Tuner", "Tuner_2");

  @Test
  void a_designator_is_the_same_by_its_text_alone() {
    Designator one = Designator.of("R12");
    assertEquals(Designator.of("R12"), one);
    assertEquals(Designator.of("R12").hashCode(), one.hashCode());
    assertNotEquals(Designator.of("R21"), one);
    assertNotEquals(one, (Object) "R12");
    assertNotEquals(Designator.of("R21").hashCode(), one.hashCode());
  }

  @Test
  void numbers_of_many_figures_sort_by_the_first_that_differs() {
    assertTrue(Designator.of("R1234").compareTo(Designator.of("R1243")) < 0);
    assertTrue(Designator.of("R2134").compareTo(Designator.of("R1999")) > 0);
    assertTrue(Designator.of("XR1299").compareTo(Designator.of("XR1301")) < 0);
    assertTrue(Designator.of("K1123-B").compareTo(Designator.of("K1124-A")) < 0);
    assertTrue(Designator.of("K1124-A").compareTo(Designator.of("K1123-B")) > 0);
    // with a letter behind, the number is read figure by figure
    assertTrue(Designator.of("R1234A").compareTo(Designator.of("R1243A")) < 0);
    assertTrue(Designator.of("R2134A").compareTo(Designator.of("R1999A")) > 0);
    assertTrue(Designator.of("R007A").compareTo(Designator.of("R10A")) < 0);
  }

  @Test
  void designators_sort_as_a_person_would() {
    for (int seed = 0; seed < 50; seed++) {
      var shuffled = new ArrayList<>(AS_A_PERSON_SORTS);
      Collections.shuffle(shuffled, new Random(seed));
      var sorted = shuffled.stream().map(Designator::of).sorted().map(Designator::text).toList();

      // R02 and R2 are the same number but two names; the order between them is fixed, not natural.
      assertEquals(
          AS_A_PERSON_SORTS.stream().map(DesignatorTest::withoutLeadingZero).toList(),
          sorted.stream().map(DesignatorTest::withoutLeadingZero).toList());
    }
  }

  private static String withoutLeadingZero(String text) {
    return text.equals("R02") ? "R2" : text;
  }

  @Test
  void the_order_is_total_and_agrees_with_equality() {
    for (String a : AS_A_PERSON_SORTS) {
      for (String b : AS_A_PERSON_SORTS) {
        int order = Designator.of(a).compareTo(Designator.of(b));
        assertEquals(
            Integer.signum(order), -Integer.signum(Designator.of(b).compareTo(Designator.of(a))));
        assertEquals(a.equals(b), order == 0, a + " and " + b);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"R1", "R12", "C999999", "LED7", "conn3", "Q10", "A1", "Z1", "a1", "z1"})
  void letters_and_a_number_alone_are_usual(String text) {
    assertTrue(Designator.of(text).isUsual());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "R",
        "12",
        "R01",
        "R0",
        "R1A",
        "L1-In",
        "R1234567",
        "MOTOR1",
        "ΩR1",
        "R1 2",
        "R1.",
        "R٣",
        "@1",
        "[1",
        "`1",
        "{1"
      })
  void anything_else_is_not(String text) {
    assertFalse(Designator.of(text).isUsual());
  }

  @Test
  void usual_designators_of_other_letters_or_numbers_are_others() {
    List<String> letters = List.of("R", "r", "RR", "AR", "RA", "A", "ABCD", "BCD");
    List<Integer> numbers = List.of(1, 2, 10, 12, 21, 120, 99_999, 100_000, 999_999);
    var all = new HashSet<Designator>();
    letters.forEach(letter -> numbers.forEach(n -> all.add(Designator.of(letter + n))));
    assertEquals(letters.size() * numbers.size(), all.size());
    for (Designator one : all) {
      for (Designator other : all) {
        int byLetters = letters(one).compareTo(letters(other));
        int expected = byLetters != 0 ? byLetters : Long.compare(number(one), number(other));
        assertEquals(
            Integer.signum(expected), Integer.signum(one.compareTo(other)), one + " and " + other);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "R1, R2, true",
    "R9, R10, true",
    "R2, R1, false",
    "R1, R3, false",
    "R1, R1, false",
    "R1, C2, false",
    "R1, r2, false",
    "R09, R10, false",
    "R999999, R1000000, false",
    "A, B, false",
  })
  void the_next_number_behind_the_same_letters_follows(String one, String other, boolean follows) {
    assertEquals(follows, Designator.of(one).isJustBefore(Designator.of(other)));
  }

  /** What usual designators sort by first: their letters, as the alphabet has them. */
  private static String letters(Designator usual) {
    return usual.text().replaceAll("[0-9]", "");
  }

  private static long number(Designator usual) {
    return Long.parseLong(usual.text().replaceAll("[^0-9]", ""));
  }

  /**
   * Of neighbours in a BOM few may share the low bits of their hash, or a table of them is slow.
   */
  @Test
  void hashes_of_neighbours_spread() {
    var slots = new HashSet<Integer>();
    for (String letters : List.of("R", "C", "D", "Q")) {
      for (int number = 1; number <= 1_000; number++) {
        slots.add(Designator.of(letters + number).hashCode() & 16_383);
      }
    }
    // Thrown at random, 4000 fill 16384 (1 - e^(-4000/16384)) = 3550 of the slots.
    assertTrue(slots.size() > 3_300, slots.size() + " slots");
  }

  @ParameterizedTest
  @CsvSource({"R12, R", "ic3, IC", "1N1, ''", "L1-In, L", "REF**, REF", "Tuner_2, TUNER"})
  void the_letters_in_front_tell_the_family(String text, String prefix) {
    assertEquals(prefix, Designator.of(text).prefix());
  }

  @ParameterizedTest
  @CsvSource({
    "R1, R12, true",
    "R1, r12, true",
    "R1, RV1, false",
    "R1, C1, false",
    "R07, R7, true",
    "LED1, LED1A, true",
    "RELAYS1, RELAYS2, true",
    "RELAYS1, RELAY1, false",
  })
  void letters_are_the_same_capital_or_small(String one, String other, boolean same) {
    assertEquals(same, Designator.of(one).hasPrefixOf(Designator.of(other)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", " R1", "R1 "})
  void a_blank_or_padded_text_is_our_own_mistake(String text) {
    assertThrows(IllegalArgumentException.class, () -> Designator.of(text));
  }
}
