package lowfirst.sheet.pdf;

import java.util.List;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;

/** Tables for tests, in few words. */
final class Grid {
  private Grid() {}

  static Table of(String caption, List<Table.Column> columns, Table.Row... rows) {
    return new Table(caption, columns, List.of(rows));
  }

  /** A column of words. */
  static Table.Column words(String header, double weight) {
    return new Table.Column(header, Table.Align.START, weight);
  }

  /** A column of numbers. */
  static Table.Column numbers(String header, double weight) {
    return new Table.Column(header, Table.Align.END, weight);
  }

  static Table.Row row(Cell... cells) {
    return new Table.Row(List.of(cells));
  }
}
