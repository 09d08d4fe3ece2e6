package lowfirst.intake.table;

import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import lowfirst.intake.cell.FittedSigns;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Row;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * A column of a BOM or placement list that says to which variants of the board a row belongs.
 * Nobody said which variant is built, so all rows are read, and that is said.
 */
final class VariantColumn {
  /** More different cells than this name no variants. */
  private static final int MOST = 12;

  /** A longer cell is prose. */
  private static final int LONGEST = 40;

  private VariantColumn() {}

  /** What to ask about the first such column; empty without any that parts the rows. */
  static Optional<Problem> unread(String file, Cut cut) {
    Header header = cut.header();
    return IntStream.range(0, header.names().size())
        .filter(cell -> HeaderWords.key(header.name(cell)).contains("variant"))
        .filter(cell -> header.uses().stream().noneMatch(use -> use.cell() == cell))
        .boxed()
        .flatMap(cell -> said(file, cut, cell).stream())
        .findFirst();
  }

  private static Optional<Problem> said(String file, Cut cut, int cell) {
    var variants = new TreeSet<String>();
    boolean some = false;
    for (Row row : cut.rows().subList(cut.header().index() + 1, cut.rows().size())) {
      String text = row.cell(cell);
      if (!text.isEmpty()) {
        variants.add(text);
      } else {
        some |= row.fillsMoreThan(1);
      }
    }
    boolean parts = variants.size() > 1 || (some && !variants.isEmpty());
    boolean names =
        variants.size() <= MOST
            && variants.stream().allMatch(text -> text.length() <= LONGEST)
            && !variants.stream().allMatch(FittedSigns::isOne);
    if (!parts || !names) {
      return Optional.empty();
    }
    Row header = cut.rows().get(cut.header().index());
    return Optional.of(
        new Problem(
            Kind.OPTIONAL_PART,
            Place.ofCell(file, header.line(), cell + 1, "", header.cell(cell)),
            "the column \""
                + cut.header().name(cell)
                + "\" may say in which variants a part is fitted ("
                + String.join(", ", variants)
                + "), and was not read: the parts of every row were taken as fitted",
            "delete the rows of the variants that you don't build, or write yes or no for yours into"
                + " a column \"fitted\""));
  }
}
