package lowfirst.sheet.document;

import java.util.List;
import java.util.stream.Stream;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table.Align;
import lowfirst.sheet.document.Block.Table.Column;
import lowfirst.sheet.document.Block.Table.Row;

/** Columns and rows as the documents use them. */
public final class Tables {
  private Tables() {}

  /** A column of words. */
  public static Column words(String header, double weight) {
    return new Column(header, Align.START, weight);
  }

  /** A column of numbers. */
  public static Column numbers(String header, double weight) {
    return new Column(header, Align.END, weight);
  }

  /** A column of numbers no wider than they are. */
  public static Column number(String header) {
    return numbers(header, 0.01);
  }

  /** A column of boxes to tick. */
  public static Column boxes(String header) {
    return new Column(header, Align.START, 0.01);
  }

  /** A row of these cells. */
  public static Row row(Cell... cells) {
    return new Row(List.of(cells));
  }

  /** A row of plain text. */
  public static Row row(String... texts) {
    return new Row(Stream.of(texts).map(Cell::of).toList());
  }
}
