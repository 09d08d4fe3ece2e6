package lowfirst.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ProblemTest {

  @Test
  void a_problem_names_file_line_cell_and_remedy() {
    var problem =
        new Problem(
            Kind.CELL_UNREADABLE,
            Place.ofCell("driver/bom.csv", 12, 3, "Qty", "12 cm"),
            "the quantity is not a whole number",
            "write how many, for example 2");

    assertEquals(
        "driver/bom.csv:12, column 3 \"Qty\" (12 cm): the quantity is not a whole number;"
            + " write how many, for example 2",
        problem.toString());
    assertEquals(Severity.FAULT, problem.severity());
  }

  @Test
  void a_place_shows_as_much_as_is_known() {
    assertEquals("bom.csv", Place.ofFile("bom.csv").toString());
    assertEquals("bom.csv:3", Place.ofLine("bom.csv", 3).toString());
    assertEquals(
        "bom.csv:3, column 2 \"Value\" (empty)",
        Place.ofCell("bom.csv", 3, 2, "Value", "").toString());
  }

  @Test
  void a_long_or_broken_cell_is_shortened_to_one_line() {
    String shown = Place.ofCell("bom.csv", 3, 2, "", "a\nb" + "x".repeat(200)).toString();

    assertFalse(shown.contains("\n"));
    assertTrue(shown.endsWith("...)") && shown.length() < 100, shown);
  }

  @Test
  void problems_stand_in_source_order() {
    var later = problemAt(Place.ofCell("bom.csv", 10, 1, "", ""));
    var earlier = problemAt(Place.ofCell("bom.csv", 9, 5, "", ""));
    var first = problemAt(Place.ofFile("bom.csv"));
    var otherFile = problemAt(Place.ofLine("boards.csv", 99));

    assertEquals(
        List.of(otherFile, first, earlier, later),
        Stream.of(later, earlier, first, otherFile).sorted().toList());
  }

  @Test
  void a_problem_without_a_remedy_is_our_own_mistake() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new Problem(Kind.FILE_EMPTY, Place.ofFile("bom.csv"), "it is empty", " "));
  }

  @Test
  void a_reading_holds_a_value_or_a_fault_but_never_both() {
    Reading<Integer> read = Reading.of(4, "counted");
    Reading<Integer> fault = Reading.fault("no number", "write one");

    assertEquals("counted", read.map(n -> n * 2).rule());
    assertEquals(8, read.map(n -> n * 2).orThrow());
    assertTrue(fault.map(n -> n * 2).value().isEmpty());
    assertEquals("no number; write one", fault.map(n -> n * 2).toString());
    assertThrows(IllegalArgumentException.class, fault::orThrow);
  }

  @Test
  void some_kinds_leave_out_one_cell_and_the_others_a_row_a_file_or_nothing() {
    assertEquals(
        List.of(
            Kind.CELL_EMPTY,
            Kind.CELL_UNREADABLE,
            Kind.UNIT_UNKNOWN,
            Kind.OUT_OF_RANGE,
            Kind.DESIGNATOR_UNREADABLE),
        Stream.of(Kind.values()).filter(Kind::isOfOneCell).toList());
  }

  private static Problem problemAt(Place place) {
    return new Problem(Kind.CELL_EMPTY, place, "it is empty", "fill it in");
  }

  @Test
  void what_leaves_out_one_cell_is_told_from_what_concerns_more() {
    assertTrue(Kind.CELL_UNREADABLE.isOfOneCell());
    assertTrue(Kind.UNIT_UNKNOWN.isOfOneCell());
    assertFalse(Kind.ROW_LENGTH.isOfOneCell());
    assertFalse(Kind.COLUMN_GUESSED.isOfOneCell());
  }
}
