package lowfirst.intake.table;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lowfirst.intake.cell.FittedSigns;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Row;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** A column of a BOM that nothing is read from, though it calls some parts optional. */
final class OptionalColumn {
  /** A longer cell is prose. */
  private static final int LONGEST = 30;

  private OptionalColumn() {}

  /** What to decide about its parts; empty without such a column. */
  static Optional<Problem> unread(String file, Cut cut) {
    Header header = cut.header();
    List<Row> below = cut.rows().subList(header.index() + 1, cut.rows().size());
    return IntStream.range(0, header.names().size())
        .filter(cell -> header.uses().stream().noneMatch(use -> use.cell() == cell))
        .boxed()
        .flatMap(
            cell ->
                below.stream()
                    .filter(row -> row.fillsMoreThan(1) && isOptional(row.cell(cell)))
                    .limit(1)
                    .map(row -> said(file, header, row, cell)))
        .findFirst();
  }

  private static boolean isOptional(String text) {
    return text.length() > 2 && text.length() <= LONGEST && FittedSigns.isOptional(text);
  }

  private static Problem said(String file, Header header, Row row, int cell) {
    return new Problem(
        Kind.OPTIONAL_PART,
        Place.ofCell(file, row.line(), cell + 1, header.name(cell), row.cell(cell)),
        "this may say that the part is optional, but nothing is read from the column \""
            + header.name(cell)
            + "\", so it counts as fitted",
        "decide, and write yes or no into a column \"fitted\"");
  }
}
