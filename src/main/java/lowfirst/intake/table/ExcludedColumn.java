package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import lowfirst.intake.cell.Cells;
import lowfirst.intake.cell.FittedSigns;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * Columns of a BOM that exclude parts, from the board or from the BOM that names them. Such a part
 * may be there to be seen, or fitted by another hand, so it counts, and that is said.
 */
final class ExcludedColumn {
  private static final Pattern HEADED = Pattern.compile("(?iU)\\bexclu\\w*");

  /** What may be left out of these is fitted all the same. */
  private static final Pattern OTHER = Pattern.compile("(?iU)\\b(sim|pos|place|test)\\w*");

  private ExcludedColumn() {}

  /** Whether a header names such a column. */
  static boolean isHeaded(String header) {
    return HEADED.matcher(header).find();
  }

  /** What to ask about those from which nothing is read; empty where none excludes a part. */
  static Optional<Problem> unread(String file, Cut cut, ColumnMap map) {
    boolean told =
        map.column(TableKind.BOM, file, Column.FITTED).isPresent()
            || map.column(TableKind.BOM, file, Column.NOT_FITTED).isPresent();
    Header header = cut.header();
    int[] cells =
        IntStream.range(0, told ? 0 : header.names().size())
            .filter(cell -> isHeaded(header.name(cell)))
            .filter(cell -> !OTHER.matcher(header.name(cell)).find())
            .filter(cell -> header.uses().stream().noneMatch(use -> use.cell() == cell))
            .toArray();
    var names = new ArrayList<String>();
    Optional<Place> first = Optional.empty();
    int parts = 0;
    for (int cell : cells) {
      boolean excludes = false;
      for (Row row : cut.rows().subList(header.index() + 1, cut.rows().size())) {
        if (excludes(row, cell)) {
          excludes = true;
          parts++;
          first =
              first.or(
                  () ->
                      Optional.of(
                          Place.ofCell(
                              file, row.line(), cell + 1, header.name(cell), row.cell(cell))));
        }
      }
      if (excludes) {
        names.add("\"" + header.name(cell) + "\"");
      }
    }
    return first.isEmpty() ? Optional.empty() : Optional.of(said(first.get(), names, parts));
  }

  private static boolean excludes(Row row, int cell) {
    String text = row.cell(cell);
    return row.fillsMoreThan(1)
        && !Cells.isNone(text)
        && (!FittedSigns.isNo(text) || HEADED.matcher(text).find());
  }

  private static Problem said(Place first, List<String> names, int rows) {
    return new Problem(
        Kind.OPTIONAL_PART,
        first,
        "nothing was read from "
            + (names.size() == 1 ? "the column " : "the columns ")
            + String.join(", ", names)
            + ", so "
            + (rows == 1
                ? "the part that it excludes counts"
                : "the parts of " + rows + " rows count")
            + " as fitted",
        "delete the rows of parts that are not on the board, or write yes for them into a column"
            + " \"DNP\"");
  }
}
