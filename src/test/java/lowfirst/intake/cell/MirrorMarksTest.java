package lowfirst.intake.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lowfirst.intake.column.Row;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows in which only parts on the bottom have an m behind the angle; a dot is an empty cell. */
class MirrorMarksTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // a cell for the mark in every row, the header's too, also before what else stands there
    "part x y angle/R1 1 2 90/C1 3 4 0 m, part x y angle ./R1 1 2 90 ./C1 3 4 0 m",
    "R1 1 2 90 10k/C1 3 4 0 M 1n, R1 1 2 90 . 10k/C1 3 4 0 M 1n",
    // a row of another length, or without an angle there, stays as it is
    "R1 1 2 90/R2 1 2 9 9 9/C1 3 4 0 m, R1 1 2 90 ./R2 1 2 9 9 9/C1 3 4 0 m",
    "R1 1 2 90/R2 1 2 up/C1 3 4 0 m, R1 1 2 90 ./R2 1 2 up/C1 3 4 0 m",
    // no mark: nowhere, behind no number, too far left, or where only half of the rows has room
    "R1 1 2 90/C1 3 4 0, R1 1 2 90/C1 3 4 0",
    "R1 1 2 90/C1 3 4 up m, R1 1 2 90/C1 3 4 up m",
    "R1 1 2/C1 3 4 m, R1 1 2/C1 3 4 m",
    "R1 1 2 90/C1 3 4 0 m/C2 3/C3 4, R1 1 2 90/C1 3 4 0 m/C2 3/C3 4",
  })
  void each_row_gets_a_cell_for_the_mark(String written, String evened) {
    var rows = new ArrayList<Row>();
    for (String line : written.split("/")) {
      rows.add(new Row(rows.size() + 1, List.of(line.split(" "))));
    }
    assertEquals(
        evened,
        MirrorMarks.evened(rows).stream()
            .map(row -> String.join(" ", row.cells()).replaceAll("(?<= )(?= |$)", "."))
            .collect(Collectors.joining("/")));
  }
}
