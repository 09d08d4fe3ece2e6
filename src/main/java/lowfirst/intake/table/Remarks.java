package lowfirst.intake.table;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.cell.FittedSigns;
import lowfirst.intake.cell.FittingWords;
import lowfirst.intake.cell.LostNames;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.Separator;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.column.WholeNumber;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Rows that are no data: totals, headings between sections, remarks under the table. */
final class Remarks {
  private static final Pattern NUMBERS = Pattern.compile("[\\d.,\\s€$£%]*");
  private static final Pattern TOTAL =
      Pattern.compile(
          "(?iU)^(grand\\s+|sub-?)?(total|totals|sum|summe|gesamt|gesamtsumme|somme|totale|suma|razem|celkem|totaal"
              + "|carried (over|forward)|brought forward|übertrag|zwischensumme|sous-total|à reporter|łącznie|součet|итого|всего|合计|小计|总计|合計|小計)\\b.*");

  /** The same words and nothing else, wherever they stand. */
  private static final Pattern JUST_TOTAL =
      Pattern.compile(
          "(?iU)(grand\\s+|sub-?)?(total|totals|summe|gesamt|somme|totale|suma)\\s*:?"
              + "|\\p{L}+ sub-?totals?");

  private static final Pattern NUMBERING = Pattern.compile("\\(?\\d{1,2}[.):]|[*•]");
  private static final Pattern SENTENCE = Pattern.compile("\\p{L}{2,}\\s+\\S");

  private static final Pattern NOTES =
      Pattern.compile(
          "(?iU)\\W*(notes?|remarks?|comments?|hinweise?|anmerkung(en)?|bemerkung(en)?|notas?|remarques?|uwagi?)\\s*:\\W*");

  private static final Pattern ALTERNATIVE =
      Pattern.compile("(?iU)(or|oder|ou|oppure|alternativ\\w*|ersatzweise)\\b[ :].*");

  /** Marks of bold text. */
  private static final Pattern STARS = Pattern.compile("^[*_]+|[*_]+$");

  /** A designator, and behind a blank more that has digits: no sentence goes on so. */
  private static final Pattern TORN =
      Pattern.compile("[A-Z]{1,4}\\d{1,4}[\\s;|]+\\d\\S*[\\s;|]+\\S");

  /** A designator between wide gaps, as in a row whose cells don't stand below the header's. */
  private static final Pattern SHIFTED =
      Pattern.compile("\\S\\s{2,}[A-Z]{1,4}\\d{1,4}(?:,? ?[A-Z]{1,4}\\d{1,4})*(?:\\s{2,}\\S|$)");

  /** A heading that counts the parts below it. */
  private static final Pattern COUNTED = Pattern.compile("(?U)[\\p{L} ]{3,40}\\((\\d{1,4})\\)");

  /** A row with more filled cells than this is data. */
  private static final int MOST_IN_A_REMARK = 3;

  private static final int MOST_WORDS_OF_A_HEADING = 6;

  private Remarks() {}

  /** A heading of a few words, which blanks parted into cells: Optional parts: */
  static Row whole(Separator separator, Row row) {
    boolean parted = separator == Separator.BLANKS || separator == Separator.FIXED_WIDTH;
    if (!parted || row.filled() < 2 || row.fillsMoreThan(MOST_WORDS_OF_A_HEADING)) {
      return row;
    }
    String words = words(row);
    boolean heads = words.endsWith(":") || FittedSigns.leaveOutOnly(words);
    return heads && words.chars().noneMatch(Character::isDigit)
        ? new Row(row.line(), List.of(words))
        : row;
  }

  /** Why {@code row} is no data; empty when it is. */
  static Optional<Problem> in(
      TableKind kind, String file, Header header, List<TableRow> before, Row row) {
    if (!kind.isExported()) {
      return Optional.empty();
    }
    Place place = Place.ofLine(file, row.line());
    if (isUnread(header, row)) {
      return Optional.of(ignored(place, "this holds nothing in the columns that are read"));
    }
    if (row.fillsMoreThan(MOST_IN_A_REMARK)) {
      return Optional.empty();
    }
    String first = row.cell(row.firstFilled());
    if (isTotal(kind, header, before, row, first)) {
      return Optional.of(ignored(place, "this looks like a total (\"" + shortened(first) + "\")"));
    }
    if (isAlternative(kind, header, row, first)) {
      return Optional.of(
          new Problem(
              Kind.OPTIONAL_PART,
              place,
              "this names an alternative to the part above (\""
                  + shortened(words(row))
                  + "\"), it was not read",
              "decide, and write just what you fit"));
    }
    if (isNumberedNote(kind, header, row)
        || isNoted(header, row, first)
        || explains(header, first)) {
      return Optional.of(
          ignored(place, "this looks like a note (\"" + shortened(words(row)) + "\")"));
    }
    if (isLone(kind, header, row)) {
      return Optional.of(ignored(place, "this names no part (\"" + shortened(first) + "\")"));
    }
    Matcher counted = COUNTED.matcher(first);
    int quantity = header.cellOf(Column.QUANTITY);
    if (row.filled() == 2 && counted.matches() && row.cell(quantity).equals(counted.group(1))) {
      return Optional.of(ignored(place, "this heads a section (\"" + shortened(first) + "\")"));
    }
    boolean alone = row.filled() == 1 && !CellShapes.isDesignators(first);
    // Of two columns under a header, the second may be empty: BOOT, RESET.
    boolean tells =
        header.uses().size() >= 3
            || header.index() < 0
            || SENTENCE.matcher(first).find()
            || ((row.size() == 1 || row.cell(header.cellOf(kind.required().get(0))).isEmpty())
                && first.chars().noneMatch(Character::isDigit));
    if (alone
        && header.uses().size() >= 3
        && (TORN.matcher(first).lookingAt() || SHIFTED.matcher(first).find())) {
      return Optional.of(
          new Problem(
              Kind.ROW_LENGTH,
              place,
              "all of the row stands in one cell (\""
                  + shortened(first)
                  + "\"), so it was not read",
              "part its cells as in the other rows"));
    }
    if (alone && (tells || FittedSigns.leaveOut(first))) {
      return Optional.of(ignored(place, "this looks like a remark (\"" + shortened(first) + "\")"));
    }
    return isHeading(kind, header, row)
        ? Optional.of(ignored(place, "this heads a section (\"" + shortened(words(row)) + "\")"))
        : Optional.empty();
  }

  private static boolean isUnread(Header header, Row row) {
    for (Header.Use use : header.uses()) {
      // A package alone is that of the line above, ordered elsewhere.
      if (use.column() != Column.PACKAGE && !row.cell(use.cell()).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /** A row that only goes on about the part above: or 9k1. */
  private static boolean isAlternative(TableKind kind, Header header, Row row, String first) {
    return kind == TableKind.BOM
        && header.cellOf(Column.DESIGNATORS) >= 0
        && row.cell(header.cellOf(Column.DESIGNATORS)).isEmpty()
        && row.cell(header.cellOf(Column.QUANTITY)).isEmpty()
        && ALTERNATIVE.matcher(first).matches();
  }

  /** "Notes:" where no part is named. */
  private static boolean isNoted(Header header, Row row, String first) {
    return NOTES.matcher(first).matches()
        && !CellShapes.isDesignators(row.cell(header.cellOf(Column.DESIGNATORS)));
  }

  /** A header's own words below it, and what they mean: MOQ, least to order. */
  private static boolean explains(Header header, String first) {
    return header.names().stream().anyMatch(first::equalsIgnoreCase);
  }

  /** 1. and a sentence behind it. */
  private static boolean isNumberedNote(TableKind kind, Header header, Row row) {
    int name = header.cellOf(kind.required().get(0));
    return row.filled() == 2
        && NUMBERING.matcher(row.cell(name)).matches()
        && row.cells().stream().anyMatch(cell -> SENTENCE.matcher(cell).find());
  }

  /** Of a remark that speaks of parts that are left out, though their rows may not say so. */
  static Optional<Problem> leavingOut(TableKind kind, String file, Row row) {
    String words = words(row);
    boolean speaks =
        kind == TableKind.BOM
            && (FittedSigns.leaveOut(words) || FittingWords.leaveOut(words))
            && LostNames.areIn(words);
    return speaks
        ? Optional.of(
            new Problem(
                Kind.OPTIONAL_PART,
                Place.ofLine(file, row.line()),
                "\"" + shortened(words) + "\" may leave parts out, and is not read",
                "write no into a column \"fitted\" in the row of each part that is not fitted"))
        : Optional.empty();
  }

  private static String words(Row row) {
    return String.join(" ", row.cells().stream().filter(cell -> !cell.isEmpty()).toList());
  }

  /** A word for a designator, and nothing in any other column that is read: shipping, postage. */
  private static boolean isLone(TableKind kind, Header header, Row row) {
    String name = row.cell(header.cellOf(kind.required().get(0)));
    if (kind != TableKind.BOM || header.uses().size() < 3 || name.isEmpty() || row.filled() < 2) {
      return false;
    }
    boolean others =
        header.uses().stream()
            .filter(use -> use.column() != kind.required().get(0))
            .anyMatch(use -> !row.cell(use.cell()).isEmpty());
    return !others && name.chars().noneMatch(Character::isDigit);
  }

  /** Words alone above rows that no header stands over, which name no part: Resistors (all 1%). */
  private static boolean isHeading(TableKind kind, Header header, Row row) {
    return kind == TableKind.BOM
        && header.index() < 0
        && !row.cell(header.cellOf(Column.DESIGNATORS)).isEmpty()
        && DesignatorList.parse(row.cell(header.cellOf(Column.DESIGNATORS))).designators().isEmpty()
        && row.cell(header.cellOf(Column.VALUE)).chars().noneMatch(Character::isDigit);
  }

  /** Whether a row of a list without designators is the sum of the others: it names itself. */
  static boolean isTotal(Row row) {
    return row.cells().stream().anyMatch(cell -> JUST_TOTAL.matcher(cell).matches());
  }

  /** A total names itself, or stands last with nothing but the sum of the quantities. */
  private static boolean isTotal(
      TableKind kind, Header header, List<TableRow> before, Row row, String first) {
    String plain = STARS.matcher(first).replaceAll("");
    if (TOTAL.matcher(plain).matches() && !CellShapes.isDesignators(first)) {
      return true;
    }
    String name = row.cell(header.cellOf(kind.required().get(0)));
    boolean named = !name.isEmpty() && !JUST_TOTAL.matcher(name).matches();
    if (!named && isTotal(row)) {
      return true;
    }
    int quantity = header.cellOf(Column.QUANTITY);
    boolean onlyNumbers = row.cells().stream().allMatch(cell -> NUMBERS.matcher(cell).matches());
    if (quantity < 0 || !onlyNumbers || row.cell(quantity).isEmpty() || before.isEmpty()) {
      return false;
    }
    int sum = 0;
    for (TableRow earlier : before) {
      sum += WholeNumber.in(earlier.text(Column.QUANTITY)).orElse(0);
    }
    return WholeNumber.in(row.cell(quantity)).orElse(-1) == sum;
  }

  private static Problem ignored(Place place, String why) {
    return new Problem(
        Kind.ROW_IGNORED, place, why + ", it was not read as a row", "nothing, unless it is a row");
  }

  private static String shortened(String text) {
    return Excerpt.of(text, 40);
  }
}
