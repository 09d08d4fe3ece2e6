package lowfirst.sheet;

import java.util.List;
import java.util.stream.Stream;
import lowfirst.sheet.Block.Cell;
import lowfirst.sheet.Block.Table.Align;
import lowfirst.sheet.Block.Table.Column;
import lowfirst.sheet.Block.Table.Row;

/** Columns and rows as the documents use them. */
final class Tables {
  private Tables() {}

  /** A column of words. */
  static Column words(String header, double weight) {
    return new Column(header, Align.START, weight);
  }

  /** A column of numbers. */
  static Column numbers(String header, double weight) {
    return new Column(header, Align.END, weight);
  }

  /** A column of numbers no wider than they are. */
  static Column number(String header) {
    return numbers(header, 0.01);
  }

  /** A column of boxes to tick. */
  static Column boxes(String header) {
    return new Column(header, Align.START, 0.01);
  }

  /** A row of these cells. */
  static Row row(Cell... cells) {
    return new Row(List.of(cells));
  }

  /** A row of plain text. */
  static Row row(String... texts) {
    return new Row(Stream.of(texts).map(Cell::of).toList());
  }
}
