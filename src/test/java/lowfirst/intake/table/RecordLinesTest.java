package lowfirst.intake.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.intake.KitReading;
import lowfirst.intake.KitTables;
import lowfirst.problem.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lists with a line for each thing that is known of a part. */
class RecordLinesTest {
  private static List<String> items(KitReading reading) {
    return reading.kit().boards().get(0).items().stream()
        .map(item -> item.quantity() + " " + item.designators() + " " + item.partType().words())
        .toList();
  }

  @Test
  void blank_lines_part_the_records() {
    KitReading reading =
        KitTables.read(
            "bom.txt",
            "Desc.: resistor 10k 1%\nQty per board: 2\nRef: R1, R2\n\nDesc.: ceramic capacitor 100n\n"
                + "Qty per board: 1\nRef: C1\n\nDesc.: transistor BC547\nQty per board: 1\nRef: Q1\n");
    assertEquals(
        List.of(
            "2 [R1, R2] 10 kΩ resistor",
            "1 [C1] 100 nF ceramic capacitor",
            "1 [Q1] BC547 bipolar transistor"),
        items(reading));
    assertEquals(0, reading.faults(), reading.problems().toString());
  }

  @Test
  void a_name_that_comes_again_begins_the_next_record_and_may_be_missing() {
    KitReading reading =
        KitTables.read(
            "bom.txt",
            "Parts of the bell board\n\n**Reference** = R1\nValue = 10k\nQuantity = 1\n- Reference = R2\n"
                + "- Value = 1k\nReference = Q1\nFitted = no\nValue = IRLZ44N\n");
    assertEquals(
        List.of("1 [R1] 10 kΩ resistor", "1 [R2] 1 kΩ resistor", "1 [Q1] IRLZ44N MOSFET"),
        items(reading));
    assertEquals(
        List.of(true, true, false),
        reading.kit().boards().get(0).items().stream().map(item -> item.isFitted()).toList());
  }

  @Test
  void a_fault_names_the_line_where_its_record_begins() {
    KitReading reading =
        KitTables.read(
            "bom.txt", "Ref: R1, R2\nQty: 2\nValue: 1k\n\nRef: R3, R4\nQty: 3\nValue: 2k\n");
    assertEquals(
        List.of(5),
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.QUANTITY_DISAGREES)
            .map(problem -> problem.place().line())
            .toList());
  }

  @Test
  void places_may_be_listed_so_too() {
    KitReading reading =
        KitTables.read(
            "placements.txt",
            "Ref: R1\nX: 10 mm\nY: 20 mm\nRotation: 90\nSide: top\n\n"
                + "Ref: R2\nX: 15 mm\nY: 25 mm\nRotation: 0\nSide: bottom\n");
    assertEquals(
        List.of("R1 10.0 20.0 90.0 TOP", "R2 15.0 25.0 0.0 BOTTOM"),
        reading.kit().boards().get(0).placements().stream()
            .map(
                placed ->
                    placed.designator()
                        + " "
                        + placed.xMillimetres()
                        + " "
                        + placed.yMillimetres()
                        + " "
                        + placed.rotationDegrees()
                        + " "
                        + placed.side())
            .toList());
  }

  /** A list with a part a line, prose, and a single record. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "R1: 10k\nR2: 22k\nR3: 1k\n",
        "Ref: see below\nValue: great\nBell: loud\n",
        "Note: mind the heat\nRef: R1\n\nTip: cut the leads\n\nHint: rest\n"
      })
  void other_texts_are_no_records(String text) {
    assertTrue(RecordLines.in(lowfirst.intake.column.TableKind.BOM, text).isEmpty());
  }
}
