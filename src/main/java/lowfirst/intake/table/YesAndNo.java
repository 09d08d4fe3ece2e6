package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import lowfirst.intake.cell.FittedSigns;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * Columns of yes and no in a BOM that nothing is read from, or of a word and the same with one that
 * may deny it, in whatever language: they may say what is fitted.
 */
final class YesAndNo {
  private static final Pattern WORDS = Pattern.compile("[\\p{L}\\p{M}' -]{3,30}");

  private YesAndNo() {}

  /** What to ask about them; empty without any, or where another column says what is fitted. */
  static Optional<Problem> unread(String file, Cut cut, ColumnMap map) {
    Header header = cut.header();
    boolean said =
        header.cellOf(Column.FITTED) >= 0
            || header.cellOf(Column.NOT_FITTED) >= 0
            || map.column(TableKind.BOM, file, Column.FITTED).isPresent()
            || map.column(TableKind.BOM, file, Column.NOT_FITTED).isPresent();
    List<Integer> cells = said ? List.of() : cells(cut);
    if (cells.isEmpty()) {
      return Optional.empty();
    }
    int first = cells.get(0);
    Row names = cut.rows().get(header.index());
    boolean one = cells.size() == 1;
    return Optional.of(
        new Problem(
            Kind.OPTIONAL_PART,
            Place.ofCell(file, names.line(), first + 1, "", names.cell(first)),
            (one ? "the column " : "the columns ")
                + String.join(", ", cells.stream().map(cell -> named(header, cell)).toList())
                + (one ? " was" : " were")
                + " not understood, but may say which parts are fitted ("
                + answers(cut, first)
                + ")",
            "if so, say --column "
                + option(header, "fitted", first)
                + (one ? "" : ", or the one that counts")
                + ", or --column "
                + option(header, "not-fitted", first)
                + " if yes means not fitted; if not, say --column bom.fitted=none"));
  }

  private static List<Integer> cells(Cut cut) {
    var found = new ArrayList<Integer>();
    List<Row> below = cut.rows().subList(cut.header().index() + 1, cut.rows().size());
    for (int cell = 0; cell < cut.header().names().size(); cell++) {
      int own = cell;
      boolean free =
          !ExcludedColumn.isHeaded(cut.header().name(cell))
              && cut.header().uses().stream().noneMatch(use -> use.cell() == own)
              && HeaderWords.matches(TableKind.BOM, cut.header().name(cell)).stream()
                  .allMatch(match -> match.column() == Column.FITTED);
      if (free && (partsRows(below, cell) || deny(below, cell))) {
        found.add(cell);
      }
    }
    return found;
  }

  /** Whether all cells are a yes, a no or empty, and not all the same. */
  private static boolean partsRows(List<Row> rows, int cell) {
    int yes = 0;
    int others = 0;
    for (Row row : rows) {
      String text = row.cell(cell);
      if (FittedSigns.isYes(text)) {
        yes++;
      } else if (FittedSigns.isNo(text) || (text.isEmpty() && row.fillsMoreThan(1))) {
        others++;
      } else if (!text.isEmpty()) {
        return false;
      }
    }
    return yes > 0 && others > 0;
  }

  /** Whether there are just two texts, of which one has the other in it: x, not x. */
  private static boolean deny(List<Row> rows, int cell) {
    List<String> texts =
        rows.stream()
            .map(row -> row.cell(cell).toLowerCase(Locale.ROOT))
            .filter(text -> !text.isEmpty())
            .distinct()
            .limit(3)
            .toList();
    return texts.size() == 2
        && texts.stream().allMatch(text -> WORDS.matcher(text).matches())
        && (texts.get(0).contains(texts.get(1)) || texts.get(1).contains(texts.get(0)));
  }

  /** The words that stand in a column, for a person to know it by. */
  private static String answers(Cut cut, int cell) {
    var answers = new TreeSet<String>();
    cut.rows().stream()
        .skip(cut.header().index() + 1L)
        .filter(row -> row.fillsMoreThan(1))
        .forEach(row -> answers.add(row.cell(cell).isEmpty() ? "empty" : row.cell(cell)));
    return String.join(", ", answers);
  }

  private static String named(Header header, int cell) {
    return header.name(cell).isEmpty() ? (cell + 1) + "" : "\"" + header.name(cell) + "\"";
  }

  private static String option(Header header, String column, int cell) {
    String name = header.name(cell).isEmpty() ? (cell + 1) + "" : header.name(cell);
    String option = "bom." + column + "=" + name;
    return option.indexOf(' ') < 0 ? option : "\"" + option + "\"";
  }
}
