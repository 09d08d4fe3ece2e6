package lowfirst.intake.table;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lowfirst.intake.column.Row;

/** Where blank rows part the rows of a table. */
final class BlankLines {
  private BlankLines() {}

  /**
   * The lines that blank ones stand before; none where those stand between most rows, so that they
   * part nothing.
   */
  static Set<Integer> before(List<Row> rows) {
    var after = new HashSet<Integer>();
    for (int i = 1; i < rows.size(); i++) {
      Row above = rows.get(i - 1);
      if (rows.get(i).line() > above.line() + height(above)) {
        after.add(rows.get(i).line());
      }
    }
    return after.size() * 2 > rows.size() ? Set.of() : after;
  }

  /** How many lines the cells of a row fill. */
  private static int height(Row row) {
    return row.cells().stream()
        .mapToInt(cell -> 1 + (int) cell.chars().filter(sign -> sign == '\n').count())
        .max()
        .orElse(1);
  }
}
