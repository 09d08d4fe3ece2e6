package lowfirst.intake.table;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Row;

/** Where blank rows part the rows of a table. */
final class BlankLines {
  private BlankLines() {}

  /**
   * The lines below a header that blank ones stand before; none where blank lines part most rows of
   * several cells from the next, so that they end nothing.
   */
  static Set<Integer> before(Header header, List<Row> rows) {
    var after = new HashSet<Integer>();
    int pairs = 0;
    int parted = 0;
    for (int i = Math.max(0, header.index()) + 1; i < rows.size(); i++) {
      Row above = rows.get(i - 1);
      Row row = rows.get(i);
      int gap = row.line() - above.line();
      boolean isAfter = gap > 1 && gap > height(above);
      if (isAfter) {
        after.add(row.line());
      }
      if (i - 1 > header.index() && above.fillsMoreThan(1) && row.fillsMoreThan(1)) {
        pairs++;
        parted += isAfter ? 1 : 0;
      }
    }
    return parted * 2 > pairs ? Set.of() : after;
  }

  /** How many lines the cells of a row fill. */
  private static int height(Row row) {
    return row.cells().stream()
        .mapToInt(cell -> 1 + (int) cell.chars().filter(sign -> sign == '\n').count())
        .max()
        .orElse(1);
  }
}
