package lowfirst.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A reading is a value with its rule, or a fault with its remedy, and never both. */
class ReadingTest {

  @Test
  void what_was_read_has_a_value_and_a_rule_and_no_fault() {
    Reading<Integer> read = Reading.of(4, "counted");
    assertTrue(read.isRead());
    assertEquals(Optional.of(4), read.value());
    assertEquals(4, read.orThrow());
    assertEquals("counted", read.rule());
    assertEquals("", read.fault());
    assertEquals("", read.remedy());
    assertEquals("4 (counted)", read.toString());
    assertEquals(Optional.of("IV"), read.map(any -> "IV").value());
    assertEquals("counted", read.map(any -> "IV").rule());
  }

  @Test
  void what_was_not_read_has_a_fault_and_a_remedy_and_no_value() {
    Reading<Integer> fault = Reading.fault("no number", "write one");
    assertFalse(fault.isRead());
    assertEquals(Optional.empty(), fault.value());
    assertEquals("", fault.rule());
    assertEquals("no number", fault.fault());
    assertEquals("write one", fault.remedy());
    assertEquals("no number; write one", fault.toString());
    assertEquals("no number", fault.map(number -> number + 1).fault());
    assertEquals("write one", fault.map(number -> number + 1).remedy());
    assertEquals(
        "no number", assertThrows(IllegalArgumentException.class, fault::orThrow).getMessage());
  }

  @Test
  void a_cell_of_sixty_signs_is_shown_whole_and_a_longer_one_cut() {
    String sixty = "x".repeat(60);
    assertTrue(Place.ofCell("a.csv", 1, 2, "", sixty).toString().endsWith("(" + sixty + ")"));
    assertTrue(
        Place.ofCell("a.csv", 1, 2, "", sixty + "x")
            .toString()
            .endsWith("(" + "x".repeat(57) + "...)"));
  }
}
