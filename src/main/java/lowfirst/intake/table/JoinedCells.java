package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * A row that is longer than its header, put together again: of a BOM, since nobody quoted its
 * designators or a value with a decimal comma; of placements between blanks, since its value has
 * some.
 *
 * @param text what is one cell now
 * @param column what that cell holds
 */
record JoinedCells(Row row, String text, Column column) {

  /** The row with what belongs together in one cell, if that explains its length. */
  static Optional<JoinedCells> in(TableKind kind, Header header, Row row, int width) {
    int first = header.cellOf(Column.DESIGNATORS);
    int more = row.size() - width;
    boolean fits = first >= 0 && first < width;
    if (kind != TableKind.BOM || header.index() < 0 || !fits) {
      return Optional.empty();
    }
    List<String> names = row.cells().subList(first, first + more + 1);
    if (names.stream().allMatch(CellShapes::isDesignators)) {
      return Optional.of(joined(row, first, more, ", ", Column.DESIGNATORS));
    }
    int value = header.cellOf(Column.VALUE);
    return more == 1 && isPartedValue(row, value)
        ? Optional.of(joined(row, value, more, ",", Column.VALUE))
        : Optional.empty();
  }

  /**
   * The row of a placement list with a value of several words in one cell, where a package stands
   * behind it that another row has, too.
   */
  static Optional<JoinedCells> betweenBlanks(
      Header header, Row row, int width, Set<String> packages) {
    int value = header.cellOf(Column.VALUE);
    if (value < 0 || header.cellOf(Column.PACKAGE) != value + 1) {
      return Optional.empty();
    }
    JoinedCells joined = joined(row, value, row.size() - width, " ", Column.VALUE);
    return packages.contains(joined.row.cell(value + 1)) && EmptyCells.fits(header, joined.row)
        ? Optional.of(joined)
        : Optional.empty();
  }

  /** The packages of the rows that are as long as usual. */
  static Set<String> packages(Header header, List<Row> rows, int width) {
    int cell = header.cellOf(Column.PACKAGE);
    return rows.stream()
        .filter(row -> row.size() == width)
        .map(row -> row.cell(cell))
        .collect(Collectors.toSet());
  }

  private static JoinedCells joined(Row row, int first, int more, String sign, Column column) {
    String text = String.join(sign, row.cells().subList(first, first + more + 1));
    var cells = new ArrayList<>(row.cells().subList(0, first));
    cells.add(text);
    cells.addAll(row.cells().subList(first + more + 1, row.size()));
    return new JoinedCells(new Row(row.line(), cells), text, column);
  }

  /** A whole number in the value's cell, and digits with a letter or unit in the one behind. */
  private static boolean isPartedValue(Row row, int value) {
    return row.cell(value).matches("\\d{1,3}")
        && row.cell(value + 1).matches("\\d{1,3}\\s?[kKMmuµnpRrΩ]\\p{L}{0,3}");
  }

  Problem said(String file) {
    return new Problem(
        Kind.COLUMN_GUESSED,
        Place.ofLine(file, row.line()),
        "the row has more cells than are usual; \""
            + text
            + "\" was read as one cell of "
            + column.words(),
        "put quotes around a cell that holds a separator");
  }
}
