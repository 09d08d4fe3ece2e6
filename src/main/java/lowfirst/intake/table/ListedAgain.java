package lowfirst.intake.table;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.TableRow;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * The same parts listed again below a second header, as some exports do: one by one, then like ones
 * together.
 *
 * @param line of the second header
 * @param rows how many rows stand above it
 */
record ListedAgain(int line, int rows) {

  /** Whether the rows below name just the designators of those above, each with the same value. */
  boolean isIn(List<TableRow> all) {
    Map<String, String> above = values(all.subList(0, rows));
    return !above.isEmpty() && above.equals(values(all.subList(rows, all.size())));
  }

  Problem said(String file) {
    return new Problem(
        Kind.ROW_IGNORED,
        Place.ofLine(file, line),
        "from here on the same parts are listed again, they were not read twice",
        "nothing, unless the board has them twice");
  }

  private static Map<String, String> values(List<TableRow> rows) {
    var values = new HashMap<String, String>();
    for (TableRow row : rows) {
      DesignatorList.parse(row.text(Column.DESIGNATORS))
          .designators()
          .forEach(designator -> values.put(designator.text(), row.text(Column.VALUE)));
    }
    return values;
  }
}
