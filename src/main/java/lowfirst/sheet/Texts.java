package lowfirst.sheet;

import java.util.Arrays;
import lowfirst.sheet.Block.Cell;
import lowfirst.sheet.Block.Table.Row;

/** Rows of plain text. */
final class Texts {
  private Texts() {}

  static Row row(String... cells) {
    return new Row(Arrays.stream(cells).map(Cell::of).toList());
  }
}
