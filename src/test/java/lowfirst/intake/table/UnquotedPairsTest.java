package lowfirst.intake.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.Separator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** X and y of one cell that a comma parted like cells. */
class UnquotedPairsTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        // two and four pieces, one in one cell already, and one that is none
        "ref pos side/R1 1 2 top/R2 3 4 top | ref pos side/R1 1,2 top/R2 3,4 top",
        "ref pos side/R1 1 5 2 5 top/R2 3 4 top | ref pos side/R1 1,5,2,5 top/R2 3,4 top",
        "ref pos side/R1 1 2 top/R2 3;4 top/R3 5 6 top | ref pos side/R1 1,2 top/R2 3;4 top/R3 5,6 top",
        "ref pos side/R1 1 2 top/R2 see note top/R3 5 6 top"
            + " | ref pos side/R1 1,2 top/R2 see note top/R3 5,6 top",
        // only half of the rows, or x and y by themselves
        "ref pos side/R1 1 2 top/R2 3 top | ref pos side/R1 1 2 top/R2 3 top",
        "ref pos x y/R1 1 2 3 4/R2 3 4 5 6 | ref pos x y/R1 1 2 3 4/R2 3 4 5 6",
        "x y ref pos/1 2 R1 3 4/3 4 R2 5 6 | x y ref pos/1 2 R1 3 4/3 4 R2 5 6",
        "y x ref pos/1 2 R1 3 4/3 4 R2 5 6 | y x ref pos/1 2 R1 3 4/3 4 R2 5 6",
        // brackets, where nothing heads the rows
        "R1 (1 2) top/R2 (3 4) top | R1 (1,2) top/R2 (3,4) top",
      })
  void stand_together_again(String written, String joined) {
    var rows = new ArrayList<Row>();
    for (String line : written.split("/")) {
      rows.add(new Row(rows.size() + 1, List.of(line.split(" "))));
    }
    List<Row> together = UnquotedPairs.joined(rows, Separator.COMMA);
    assertEquals(
        List.of(joined.split("/")),
        together.stream().map(row -> String.join(" ", row.cells())).toList());
  }
}
