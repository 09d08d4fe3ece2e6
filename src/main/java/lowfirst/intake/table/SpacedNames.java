package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lowfirst.intake.column.HeaderRow;
import lowfirst.intake.column.Row;

/**
 * Headers such as Mid X in a placement list whose cells blanks part: two words over one column,
 * joined where the rows below have a cell fewer for each.
 */
final class SpacedNames {
  /** More lines about the file stand before no header. */
  private static final int MOST_BEFORE = 40;

  private SpacedNames() {}

  /** The rows, with the words of such a header joined, and those of the last cells. */
  static List<Row> joined(List<Row> rows) {
    for (int index = 0; index < Math.min(rows.size() - 1, MOST_BEFORE); index++) {
      Row header = rows.get(index);
      List<String> names = header.cells().contains("X") ? joinedNames(header) : header.cells();
      int spaced = header.size() - names.size();
      if (spaced > 0 && isShorter(rows.get(index + 1), names.size(), spaced)) {
        List<Row> below = rows.subList(index + 1, rows.size());
        Row model =
            below.stream().filter(row -> row.size() >= names.size()).findFirst().orElse(header);
        var joined = new ArrayList<>(rows.subList(0, index));
        joined.add(new Row(header.line(), names));
        below.forEach(row -> joined.add(even(row, names.size(), model)));
        return joined;
      }
    }
    return rows;
  }

  /** A value at the end may be missing, or have several words. */
  private static boolean isShorter(Row row, int width, int spaced) {
    return row.size() >= width - 1 && row.size() < width + spaced && !HeaderRow.isWords(row);
  }

  private static Row even(Row row, int width, Row model) {
    if (row.size() == width - 1 && isLike(row, model)) {
      var cells = new ArrayList<>(row.cells());
      cells.add("");
      return new Row(row.line(), cells);
    }
    if (row.size() <= width) {
      return row;
    }
    var cells = new ArrayList<>(row.cells().subList(0, width - 1));
    cells.add(String.join(" ", row.cells().subList(width - 1, row.size())));
    return new Row(row.line(), cells);
  }

  /** Whether digits stand in the same cells, behind those that name the part. */
  private static boolean isLike(Row row, Row model) {
    return IntStream.range(2, row.size())
        .allMatch(
            cell -> HeaderRow.hasDigit(row.cell(cell)) == HeaderRow.hasDigit(model.cell(cell)));
  }

  private static List<String> joinedNames(Row header) {
    var names = new ArrayList<String>();
    for (String word : header.cells()) {
      boolean axis = word.equalsIgnoreCase("x") || word.equalsIgnoreCase("y");
      int last = names.size() - 1;
      if (axis && last > 0 && names.get(last).length() > 1 && names.get(last).indexOf(' ') < 0) {
        names.set(last, names.get(last) + " " + word);
      } else {
        names.add(word);
      }
    }
    return names;
  }
}
