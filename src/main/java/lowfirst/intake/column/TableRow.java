package lowfirst.intake.column;

import java.util.Optional;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** A row of a table whose columns are known. */
public final class TableRow {
  private final String file;
  private final Header header;
  private final Row row;
  private final Optional<Place> heading;

  /** A row of a table. */
  public TableRow(String file, Header header, Row row) {
    this(file, header, row, Optional.empty());
  }

  /** A row below a heading that is the value of every row below it. */
  public TableRow(String file, Header header, Row row, Optional<Place> heading) {
    this.file = file;
    this.header = header;
    this.row = row;
    this.heading = heading;
  }

  /** The line it starts on. */
  public int line() {
    return row.line();
  }

  /** The cells as they stand. */
  public Row row() {
    return row;
  }

  /** Whether the table has such a column at all. */
  public boolean has(Column column) {
    return header.cellOf(column) >= 0 || (column == Column.VALUE && heading.isPresent());
  }

  /** What stands in a column; empty when nothing does. */
  public String text(Column column) {
    if (column == Column.VALUE && heading.isPresent()) {
      return heading.get().cell();
    }
    String cell = row.cell(header.cellOf(column));
    return header.pair().isPresent() && (column == Column.X || column == Column.Y)
        ? header.pair().get().half(column, cell)
        : cell;
  }

  /** How x and y stand together in one cell, where they do. */
  public Optional<CoordinatePair> pair() {
    return header.pair();
  }

  /** Whether words or cells that may mean something else tell of a column. */
  public boolean isGuessed(Column column) {
    return header.isWeak(column);
  }

  /** The header over a column; empty when it has none. */
  public String headerOf(Column column) {
    return header.name(header.cellOf(column));
  }

  /** The whole line. */
  public Place place() {
    return Place.ofLine(file, row.line());
  }

  /** The cell of a column; the whole line when the table lacks the column. */
  public Place place(Column column) {
    if (column == Column.VALUE && heading.isPresent()) {
      return heading.get();
    }
    int cell = header.cellOf(column);
    return cell < 0
        ? place()
        : Place.ofCell(file, row.line(), cell + 1, header.name(cell), row.cell(cell));
  }

  /** A problem with one cell. */
  public Problem problem(Kind kind, Column column, String message, String remedy) {
    return new Problem(kind, place(column), message, remedy);
  }
}
