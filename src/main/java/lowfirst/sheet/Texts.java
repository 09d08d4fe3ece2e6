package lowfirst.sheet;

import java.util.ArrayList;
import lowfirst.sheet.Block.Cell;
import lowfirst.sheet.Block.Table.Row;

/** Rows of plain text. */
final class Texts {
  private Texts() {}

  static Row row(String... cells) {
    var row = new ArrayList<Cell>(cells.length);
    for (String cell : cells) {
      row.add(Cell.of(cell));
    }
    return new Row(row);
  }
}
