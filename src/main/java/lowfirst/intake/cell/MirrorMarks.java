package lowfirst.intake.cell;

import java.util.ArrayList;
import java.util.List;
import lowfirst.intake.column.HeaderRow;
import lowfirst.intake.column.PlainNumber;
import lowfirst.intake.column.Row;

/**
 * Evens the rows of a placement list whose cells blanks part, where an m behind the angle marks the
 * parts on the bottom and the others have nothing there: each row gets that cell.
 */
public final class MirrorMarks {
  /** In front of it stand a designator, x, y and an angle, in some order. */
  private static final int LEAST_BEFORE = 4;

  private MirrorMarks() {}

  /** Whether a cell is such a mark. */
  static boolean isOne(String cell) {
    return cell.equalsIgnoreCase("m");
  }

  /** The rows with a cell for the mark in each; as they are where none has one. */
  public static List<Row> evened(List<Row> rows) {
    for (Row row : rows) {
      for (int cell = LEAST_BEFORE; cell < row.size(); cell++) {
        if (isOne(row.cell(cell)) && isNumber(row.cell(cell - 1))) {
          return evened(rows, cell, row.size());
        }
      }
    }
    return rows;
  }

  private static List<Row> evened(List<Row> rows, int mark, int width) {
    var evened = new ArrayList<Row>();
    int even = 0;
    for (Row row : rows) {
      boolean marked = row.size() == width && isOne(row.cell(mark));
      boolean lacks =
          row.size() == width - 1 && (isNumber(row.cell(mark - 1)) || HeaderRow.isWords(row));
      evened.add(lacks ? withCell(row, mark) : row);
      even += marked || lacks ? 1 : 0;
    }
    return even * 2 > rows.size() ? evened : rows;
  }

  private static Row withCell(Row row, int at) {
    var cells = new ArrayList<>(row.cells());
    cells.add(at, "");
    return new Row(row.line(), cells);
  }

  private static boolean isNumber(String cell) {
    return PlainNumber.in(cell).isPresent();
  }
}
