package lowfirst.intake.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which rows are a form that is refused, and which may still be read without a header. */
class OtherFormTest {

  /** Rows that a line end parts, cells that a bar parts. */
  private static List<Row> rows(String text) {
    var rows = new ArrayList<Row>();
    for (String line : text.split("\n")) {
      rows.add(new Row(rows.size() + 1, List.of(line.split("\\|", -1))));
    }
    return rows;
  }

  private static Optional<Problem> of(TableKind kind, String text) {
    return OtherForm.of(kind, "bom.csv", rows(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        // fewer than three labels, none of them the reference, or words that are no labels
        "Reference: R1\nValue: 10k",
        "Value: 10k\nQuantity: 1\nPackage: 0207",
        "Reference: R1\nWeather: fine\nMood: good",
        ": R1\n: 10k\n= 0207",
        // turned, but for the names, the designators, or the reference among them
        "Reference|R1|R2",
        "Reference|R1|R2\nWeather|good|bad",
        "Reference|see|there\nValue|1k|2k",
        "Reference\nValue",
        "Value|R1|R2\nQuantity|1|1",
        // side by side in no more than half of the rows, or one part in each
        "R1 10k|C1 100n\nR2|10k",
        "R1 10k|metal\nR2 22k|metal",
        // plain lists
        "R1|1k|0207\nR2|2k|0207",
        "Board\n\nR1|1k"
      })
  void rows_that_have_none_of_the_forms_in_full_are_not_refused(String text) {
    assertEquals(Optional.empty(), of(TableKind.BOM, text));
  }

  @Test
  void the_line_where_a_form_shows_and_an_example_are_named() {
    Problem blocks = of(TableKind.BOM, "Parts\nReference = R1\nValue: 1k\nQuantity: 2").get();
    assertEquals(2, blocks.place().line());
    assertTrue(blocks.remedy().contains("such as: Reference, Quantity, Value"), blocks.remedy());
    Problem placed = of(TableKind.PLACEMENTS, "Reference: R1\nX: 1 mm\nY: 2 mm\nRotation: 0").get();
    assertTrue(placed.message().startsWith("each part stands in lines of its own"));
    assertFalse(placed.remedy().contains("such as"), "of a BOM's columns: " + placed.remedy());
    Problem turned = of(TableKind.BOM, "Value|1k|2k\nReference|R1|R2").get();
    assertEquals(2, turned.place().line());
    Problem beside = of(TableKind.BOM, "Parts\nR1 10k|C1 100n\nR2 22k|C2 1n").get();
    assertEquals(2, beside.place().line());
    assertTrue(beside.message().contains("side by side in one row (\"R1 10k C1 100n\")"));
    assertEquals(
        Optional.empty(), of(TableKind.PLACEMENTS, "R1 10k|C1 100n\nR2 22k|C2 1n"), "a BOM's form");
  }
}
