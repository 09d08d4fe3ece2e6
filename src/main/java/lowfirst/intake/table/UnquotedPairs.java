package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.CoordinatePair;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.Separator;
import lowfirst.intake.column.TableKind;

/**
 * Puts x and y of one cell together again where nobody put quotes around them, so that the sign
 * between them parted them like cells: rows are longer than a header that names a position, or a
 * bracket is opened in one cell and closed in another.
 */
final class UnquotedPairs {
  /** With commas for decimal marks a pair falls into four. */
  private static final int MOST_PIECES = 4;

  private UnquotedPairs() {}

  /** The rows of a placement list with such pairs in one cell; as they are where there are none. */
  static List<Row> joined(List<Row> rows, Separator separator) {
    List<Row> searched = rows.subList(0, Math.min(rows.size(), Cut.SEARCHED));
    if (searched.stream().anyMatch(row -> cell(row, Column.X) >= 0 && cell(row, Column.Y) >= 0)) {
      return rows;
    }
    for (int index = 0; index < searched.size(); index++) {
      Row header = rows.get(index);
      int position = cell(header, Column.POSITION);
      int designator = cell(header, Column.DESIGNATOR);
      if (position >= 0 && designator >= 0 && position != designator) {
        List<Row> joined = joined(rows, index + 1, position, header.size(), separator);
        if (joined != rows) {
          return joined;
        }
      }
    }
    return rows.isEmpty() ? rows : joinedByBrackets(rows, separator);
  }

  private static int cell(Row header, Column column) {
    return HeaderWords.cell(TableKind.PLACEMENTS, header, column);
  }

  /** Without a header: where the first row opens a bracket and closes it in a later cell. */
  private static List<Row> joinedByBrackets(List<Row> rows, Separator separator) {
    Row first = rows.get(0);
    for (int cell = 0; cell < first.size(); cell++) {
      if (first.cell(cell).matches("[(\\[{<][^)\\]}>]*")) {
        int opened = cell;
        return IntStream.range(cell + 1, Math.min(cell + MOST_PIECES, first.size()))
            .filter(later -> first.cell(later).matches("[^(\\[{<]*[)\\]}>]\\s?\\p{L}{0,4}"))
            .map(end -> CoordinatePair.isUnit(first.cell(end + 1)) ? end + 1 : end)
            .mapToObj(end -> joined(rows, 0, opened, first.size() - end + opened, separator))
            .findFirst()
            .orElse(rows);
      }
    }
    return rows;
  }

  /** Only where most rows have such a pair is it one. */
  private static List<Row> joined(
      List<Row> rows, int from, int cell, int width, Separator separator) {
    var joined = new ArrayList<>(rows.subList(0, from));
    int pairs = 0;
    for (Row row : rows.subList(from, rows.size())) {
      Row whole = joined(row, cell, row.size() - width, separator);
      joined.add(whole);
      pairs += whole == row ? 0 : 1;
    }
    return pairs * 2 > rows.size() - from ? joined : rows;
  }

  /** The row with so many more cells joined to one; the row itself where they are no pair. */
  private static Row joined(Row row, int cell, int more, Separator separator) {
    if (more < 1 || more >= MOST_PIECES || CoordinatePair.isPair(row.cell(cell))) {
      return row;
    }
    String sign =
        separator == Separator.TAB || !separator.isOneCharacter()
            ? " "
            : separator.character() + "";
    String pair = String.join(sign, row.cells().subList(cell, cell + more + 1));
    if (!CoordinatePair.mayBePair(pair)) {
      return row;
    }
    var cells = new ArrayList<>(row.cells().subList(0, cell));
    cells.add(pair);
    cells.addAll(row.cells().subList(cell + more + 1, row.size()));
    return new Row(row.line(), cells);
  }
}
