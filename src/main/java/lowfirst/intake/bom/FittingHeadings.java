package lowfirst.intake.bom;

import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import lowfirst.board.Item;
import lowfirst.intake.cell.FittedSigns;
import lowfirst.intake.cell.FittingWords;
import lowfirst.intake.cell.LostNames;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.table.Table;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * Headings over rows of a BOM that say whether their parts are fitted. One holds up to the next
 * heading or blank row; one that neither ends holds up to the last row, which is asked.
 */
final class FittingHeadings {
  /** What a heading over parts says beside whether they are fitted. */
  private static final Pattern PARTS =
      Pattern.compile(
          "(?iU)[^\\w/.]+|\\b(parts?|components?|items|teile|bauteile|composants?|componentes?|componenti)\\b");

  /** A longer text is no heading. */
  private static final int LONGEST = 60;

  /** More words without a colon behind them are a remark. */
  private static final int MOST_WORDS = 4;

  private static final Pattern BLANKS = Pattern.compile("\\s+");

  private final Table table;

  /** By their first lines, and an empty one where none holds any more. */
  private final NavigableMap<Integer, Optional<Section>> sections = new TreeMap<>();

  /**
   * Rows below a heading.
   *
   * @param isEnded whether a heading or blank row ends them, or sets the heading off
   */
  private record Section(
      int line, String heading, Item.Fitting fitting, int rows, int last, boolean isEnded) {}

  FittingHeadings(Table table) {
    this.table = table;
    table.headings().forEach(this::see);
  }

  private void see(int line, String heading) {
    Optional<Item.Fitting> fitting = fitting(heading);
    sections.put(line, fitting.flatMap(said -> section(line, heading, said)));
    sections
        .get(line)
        .filter(section -> section.last() + 1 > line)
        .ifPresent(section -> sections.putIfAbsent(section.last() + 1, Optional.empty()));
  }

  private Optional<Section> section(int line, String heading, Item.Fitting fitting) {
    Integer next = table.headings().higherKey(line);
    int rows = 0;
    int last = line;
    boolean ended = next != null || table.isAfterBlank(line);
    for (TableRow row : table.rows()) {
      if (row.line() < line) {
        continue;
      }
      boolean isBehind = next != null && row.line() > next;
      boolean isBlankBefore = rows > 0 && table.isAfterBlank(row.line());
      if (isBehind || isBlankBefore) {
        ended = true;
        break;
      }
      rows++;
      last = row.line();
    }
    return rows == 0
        ? Optional.empty()
        : Optional.of(new Section(line, heading, fitting, rows, last, ended));
  }

  /** What a heading says that it does not only speak of; empty without it. */
  private static Optional<Item.Fitting> fitting(String heading) {
    String words = PARTS.matcher(heading).replaceAll(" ").strip();
    if (words.isEmpty() || heading.length() >= LONGEST) {
      return Optional.empty();
    }
    if (FittedSigns.leaveOutOnly(words)) {
      return Optional.of(Item.Fitting.NOT_FITTED);
    }
    boolean brief =
        heading.strip().endsWith(":") || BLANKS.split(heading.strip()).length <= MOST_WORDS;
    return brief && !LostNames.areIn(heading) && FittingWords.beginWithOptional(words)
        ? Optional.of(Item.Fitting.OPTIONAL)
        : Optional.empty();
  }

  /** What the heading over a line says of its part; empty where none holds. */
  Optional<Item.Fitting> over(int line) {
    Map.Entry<Integer, Optional<Section>> section = sections.floorEntry(line);
    return section == null ? Optional.empty() : section.getValue().map(Section::fitting);
  }

  /** How each heading was taken. */
  Iterable<Problem> said() {
    return sections.values().stream().flatMap(Optional::stream).map(this::said).toList();
  }

  private Problem said(Section section) {
    boolean one = section.rows() == 1;
    String rows =
        one
            ? "the row below \"" + Excerpt.of(section.heading(), LONGEST) + "\" was taken as "
            : "the rows below \"" + Excerpt.of(section.heading(), LONGEST) + "\" were taken as ";
    boolean optional = section.fitting() == Item.Fitting.OPTIONAL;
    String taken =
        rows
            + (optional ? "optional, counting as fitted" : "not fitted")
            + (one ? ": line " : ": up to line ")
            + section.last();
    return section.isEnded()
        ? new Problem(
            optional ? Kind.OPTIONAL_PART : Kind.COLUMN_GUESSED,
            Place.ofLine(table.file(), section.line()),
            taken,
            optional
                ? "decide, and write yes or no into a column \"fitted\""
                : "if that is wrong, delete this line, or write yes into a column \"fitted\"")
        : new Problem(
            Kind.OPTIONAL_PART,
            Place.ofLine(table.file(), section.line()),
            taken + ", the last one, since nothing shows where that ends",
            "write yes, no or optional into a column \"fitted\", or leave a blank row where it ends");
  }
}
