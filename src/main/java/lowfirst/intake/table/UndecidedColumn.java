package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import lowfirst.intake.cell.DoneWords;
import lowfirst.intake.cell.FittedSigns;
import lowfirst.intake.cell.FittingWords;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * Columns of a BOM that nothing is read from, though they call some parts optional, or say that
 * they are on the board already.
 */
final class UndecidedColumn {
  /** A longer cell is prose. */
  private static final int LONGEST = 30;

  private UndecidedColumn() {}

  /** What to decide about the parts of the first such column of each sort. */
  static List<Problem> unread(String file, Cut cut) {
    var found = new ArrayList<Problem>();
    first(cut, header -> true, UndecidedColumn::isOptional)
        .map(place -> at(file, cut, place))
        .map(place -> new Problem(Kind.OPTIONAL_PART, place, optional(place), DECIDE))
        .ifPresent(found::add);
    first(cut, UndecidedColumn::isForNotes, text -> !DoneWords.in(text).isEmpty())
        .map(place -> at(file, cut, place))
        .map(
            place ->
                new Problem(
                    Kind.OPTIONAL_PART,
                    place,
                    FittingWords.done(DoneWords.in(place.cell())),
                    FittingWords.UNLESS_DONE))
        .ifPresent(found::add);
    return found;
  }

  private static final String DECIDE = "decide, and write yes or no into a column \"fitted\"";

  /** A row and a cell of it. */
  private record Spot(Row row, int cell) {}

  private static Optional<Spot> first(Cut cut, Predicate<String> headed, Predicate<String> says) {
    Header header = cut.header();
    List<Row> below = cut.rows().subList(header.index() + 1, cut.rows().size());
    return IntStream.range(0, header.names().size())
        .filter(cell -> header.uses().stream().noneMatch(use -> use.cell() == cell))
        .filter(cell -> headed.test(header.name(cell)))
        .boxed()
        .flatMap(
            cell ->
                below.stream()
                    .filter(row -> row.fillsMoreThan(1) && says.test(row.cell(cell)))
                    .limit(1)
                    .map(row -> new Spot(row, cell)))
        .findFirst();
  }

  /** Spares columns such as links and prices the look. */
  private static boolean isForNotes(String header) {
    return HeaderWords.matches(TableKind.BOM, header).stream()
        .anyMatch(match -> match.column() == Column.DESCRIPTION || match.column() == Column.FITTED);
  }

  private static boolean isOptional(String text) {
    return text.length() > 2 && text.length() <= LONGEST && FittedSigns.isOptional(text);
  }

  private static Place at(String file, Cut cut, Spot spot) {
    return Place.ofCell(
        file,
        spot.row().line(),
        spot.cell() + 1,
        cut.header().name(spot.cell()),
        spot.row().cell(spot.cell()));
  }

  private static String optional(Place place) {
    return "this may say that the part is optional, but nothing is read from the column \""
        + place.header()
        + "\", so it counts as fitted";
  }
}
