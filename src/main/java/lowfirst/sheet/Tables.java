package lowfirst.sheet;

import java.util.List;
import lowfirst.sheet.Block.Table.Align;
import lowfirst.sheet.Block.Table.Column;

/** Columns as the paper documents use them. */
final class Tables {
  private Tables() {}

  /** A column of words. */
  static Column words(String header, double weight) {
    return new Column(header, Align.START, weight);
  }

  /** A column of numbers. */
  static Column number(String header) {
    return new Column(header, Align.END, 0.5);
  }

  /** A column of boxes to tick. */
  static Column boxes(String header) {
    return new Column(header, Align.START, 0.01);
  }

  /** A row of these cells. */
  static Block.Table.Row row(Block.Cell... cells) {
    return new Block.Table.Row(List.of(cells));
  }
}
