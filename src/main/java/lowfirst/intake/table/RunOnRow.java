package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.Collections;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.WholeNumber;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** A row of a BOM that only carries on the line above it: more designators of the same part. */
final class RunOnRow {
  private RunOnRow() {}

  /** Nothing but designators, where the line above has fewer than it counts: they belong to it. */
  static boolean isMissing(Header header, Row above, Row row) {
    int names = header.cellOf(Column.DESIGNATORS);
    int counted = WholeNumber.in(above.cell(header.cellOf(Column.QUANTITY))).orElse(0);
    return row.filled() == 1
        && CellShapes.isDesignators(more(header, row))
        && DesignatorList.parse(above.cell(names)).designators().size() < counted;
  }

  /** Between blanks a lone cell stands first, wherever it was meant to. */
  static Row moved(Header header, Row row) {
    var cells = new ArrayList<>(Collections.nCopies(header.cellOf(Column.DESIGNATORS), ""));
    cells.add(row.cell(row.firstFilled()).replaceFirst(",\\s*$", ""));
    return new Row(row.line(), cells);
  }

  private static String more(Header header, Row row) {
    return row.cell(header.cellOf(Column.DESIGNATORS));
  }

  /** The line above with the row's designators, and its quantity where it has one. */
  static Row joined(Header header, Row above, Row row) {
    int names = header.cellOf(Column.DESIGNATORS);
    int quantity = header.cellOf(Column.QUANTITY);
    var cells = new ArrayList<>(above.cells());
    cells.set(names, above.cell(names).replaceFirst(",\\s*$", "") + ", " + more(header, row));
    if (row.filled() > 1 && !row.cell(quantity).isEmpty()) {
      int both =
          WholeNumber.in(above.cell(quantity)).orElse(0)
              + WholeNumber.in(row.cell(quantity)).orElse(0);
      cells.set(quantity, both + "");
    }
    return new Row(above.line(), cells);
  }

  static Problem said(String file, Header header, Row row, boolean isMerged) {
    int names = header.cellOf(Column.DESIGNATORS);
    String more = more(header, row);
    return new Problem(
        Kind.COLUMN_GUESSED,
        Place.ofCell(file, row.line(), names + 1, header.name(names), more),
        isMerged
            ? "the row has no value, as below a merged cell; "
                + more
                + " was added to the line above"
            : "the row holds nothing but designators; they were added to the line above",
        isMerged
            ? "if it is another part, write its value into the row"
            : "if they are a line of their own, write its quantity and value");
  }
}
