package lowfirst.intake.table;

import java.util.List;
import java.util.Optional;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.PlainNumber;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.column.WholeNumber;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** A row above the header that is a part all the same. */
final class RowAbove {
  /** A longer word is no name of a part. */
  private static final int LONGEST = 12;

  private RowAbove() {}

  /** The rows that are parts; where some are, a word in place of a designator is a name, too. */
  static List<Row> parts(TableKind kind, Header header, List<Row> rows) {
    return rows.stream().anyMatch(row -> isPart(kind, header, row))
        ? rows.stream()
            .filter(row -> isPart(kind, header, row) || isNamed(kind, header, row))
            .toList()
        : List.of();
  }

  static Problem said(String file, List<Row> parts) {
    return new Problem(
        Kind.COLUMN_GUESSED,
        Place.ofLine(file, parts.get(0).line()),
        "rows from here on stand above the header; those with a designator ("
            + parts.size()
            + ") were read, too",
        "if they are no parts, delete them, else put the header above them");
  }

  /** Rows above the header that name parts where the rows below do, and are not read. */
  static Optional<Problem> lost(
      TableKind kind, String file, Header header, List<Row> before, List<Row> read) {
    List<Row> lost =
        before.stream().filter(row -> !read.contains(row) && names(kind, header, row)).toList();
    return lost.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Problem(
                Kind.ROW_IGNORED,
                Place.ofLine(file, lost.get(0).line()),
                lost.size() == 1
                    ? "this row stands above the header, it was not read"
                    : "rows from here on stand above the header and were not read: " + lost.size(),
                "if they are parts, put the header above them"));
  }

  private static boolean names(TableKind kind, Header header, Row row) {
    return kind.isExported()
        && row.fillsMoreThan(1)
        && CellShapes.isDesignators(row.cell(header.cellOf(kind.required().get(0))));
  }

  private static boolean isNamed(TableKind kind, Header header, Row row) {
    String name = row.cell(header.cellOf(kind.required().get(0)));
    return !name.isEmpty()
        && name.length() <= LONGEST
        && name.indexOf(' ') < 0
        && hasNumbers(kind, header, row);
  }

  /** A designator and the numbers that such a table has, each in its column. */
  static boolean isPart(TableKind kind, Header header, Row row) {
    return kind.isExported()
        && CellShapes.isDesignators(row.cell(header.cellOf(kind.required().get(0))))
        && hasNumbers(kind, header, row);
  }

  private static boolean hasNumbers(TableKind kind, Header header, Row row) {
    return kind == TableKind.BOM
        ? WholeNumber.in(row.cell(header.cellOf(Column.QUANTITY))).isPresent()
        : PlainNumber.in(row.cell(header.cellOf(Column.X))).isPresent()
            && PlainNumber.in(row.cell(header.cellOf(Column.Y))).isPresent();
  }
}
