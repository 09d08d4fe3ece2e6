package lowfirst.intake.cell;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import lowfirst.board.Designator;
import lowfirst.board.Side;
import lowfirst.intake.column.PlainNumber;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.WholeNumber;
import lowfirst.intake.kind.PartKindWords;

/** What the cells of a column look like, for headers that are missing or say little. */
public final class CellShapes {
  /** Digits only, but for a letter before and dashes between: C28233, 77123-45; common practice. */
  private static final Pattern ORDER_NUMBER =
      Pattern.compile("[A-Z]?\\d{5,9}|\\d{2,7}(-\\d{1,7})+");

  private static final Pattern DESIGNATORS =
      Pattern.compile(
          "(?:\\d{1,2}\\.)?[\\p{L}_]{1,6}[0-9?]{1,4}[\\p{L}_]{0,12}((?:[\\s,;.–-]+|\\s+(?iu:"
              + DesignatorRange.TO_WORDS
              + ")\\s+)[\\p{L}_]{0,6}[0-9]{1,4}[\\p{L}_]{0,12})*[,;\\s]*");
  private static final Pattern WHOLE = Pattern.compile("[0-9]{1,5}");
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?[0-9]+([.,][0-9]+)?\\s*(mm|mil|mils|in|inch|um|µm|\")?");
  private static final Pattern SIDE =
      Pattern.compile(
          "(?i)top|bottom|t|b|f|front|back|top ?layer|bottom ?layer|oben|unten|f\\.cu|b\\.cu");

  private static final Pattern PACKAGE =
      Pattern.compile(
          "(?i)(?<![a-z0-9])(dip|dil|pdip|to-?\\d{2,3}|do-?\\d{2,3}|axial|radial|rad|hdr|sip|tht|smd|sot|soic|qfn|din0\\d{3}|0[2-9]\\d{2}|hc-?49|disc|disk|box|film)(?![a-z])");

  /** As design tools write one: the library that has it, then its name. */
  private static final Pattern IN_LIBRARY =
      Pattern.compile("\\p{L}[\\w.-]*:\\p{L}[\\w.,()-]*", Pattern.UNICODE_CHARACTER_CLASS);

  /** A larger number that stands at every row is a size or a value. */
  private static final int MOST_BOARDS = 50;

  /** So many digits behind letters that no kind of part has are a type number's. */
  private static final int TYPE_DIGITS = 3;

  /** Transistors or transformers, valves or any semiconductor: parts, whatever their kind. */
  private static final Set<String> MANY_MEANINGS = Set.of("T", "V");

  /** So many quantities hardly rise from row to row. */
  private static final int COUNTED = 5;

  /** So few rows may well name R90 and R180. */
  private static final int FEW = 4;

  /** The number of a sheet of the drawing before a designator: 2.R1. */
  private static final Pattern SHEET = Pattern.compile("^\\d{1,2}\\.(?=\\p{L}{1,4}\\d)");

  /** No designator has more. */
  private static final int MOST_DIGITS = 4;

  private static final Pattern MOUNTING =
      Pattern.compile(
          "(?i)smd|smt|tht|pth|th|(through|thru)[- ]?hole|surface[- ]?mount(ed)?|leaded");

  private CellShapes() {}

  /** Whether a cell reads as designators with numbers. */
  public static boolean isDesignators(String text) {
    return text.length() < 2000 && DESIGNATORS.matcher(text).matches();
  }

  /** Whether a row holds no letter and no digit. */
  public static boolean isDrawn(Row row) {
    return row.cells().stream()
        .noneMatch(cell -> cell.chars().anyMatch(Character::isLetterOrDigit));
  }

  /**
   * The share of the filled cells of a column that read as designators with numbers; none of angles
   * such as R90.
   */
  public static double designatorShare(List<Row> rows, int cell) {
    return rows.size() > FEW && areTurns(rows, cell)
        ? 0
        : share(rows, cell, CellShapes::isDesignators);
  }

  /** The share of the filled cells that may name parts on the board. */
  public static double nameShare(List<Row> rows, int cell) {
    return share(rows, cell, text -> !Cells.isNone(text) && mayName(text));
  }

  /** The share of the filled cells whose first designator has the letters of a kind of part. */
  public static double knownShare(List<Row> rows, int cell) {
    return share(
        rows,
        cell,
        text ->
            DesignatorList.parse(text).designators().stream()
                .limit(1)
                .anyMatch(first -> PartKindWords.byLetters(first.prefix()).isPresent()));
  }

  /** No number of a row, no type number such as BC547 or 1N4148, no words as of prose. */
  public static boolean mayName(String text) {
    DesignatorList list = DesignatorList.parse(text);
    if (list.designators().isEmpty() || !list.otherText().isEmpty()) {
      return LostNames.areIn(text);
    }
    String first = SHEET.matcher(list.designators().get(0).text()).replaceFirst("");
    long digits = first.chars().filter(Character::isDigit).count();
    if (digits == 0 || Character.isDigit(first.charAt(0))) {
      return digits == 0 && first.chars().noneMatch(Character::isLowerCase);
    }
    String prefix = Designator.of(first).prefix();
    boolean known = MANY_MEANINGS.contains(prefix) || PartKindWords.byLetters(prefix).isPresent();
    return digits < TYPE_DIGITS || (known && digits <= MOST_DIGITS);
  }

  /** The share of the filled cells that are whole numbers. */
  public static double wholeShare(List<Row> rows, int cell) {
    return share(rows, cell, text -> WHOLE.matcher(text).matches());
  }

  /** The share of the filled cells that are numbers or lengths. */
  public static double numberShare(List<Row> rows, int cell) {
    return share(rows, cell, CellShapes::isNumber);
  }

  /** Whether a cell is a number or a length. */
  public static boolean isNumber(String text) {
    return NUMBER.matcher(text).matches();
  }

  /** The share of the filled cells that are addresses of pages. */
  public static double linkShare(List<Row> rows, int cell) {
    return share(rows, cell, text -> text.contains("://"));
  }

  /** The share of the filled cells that are numbers by which dealers sell, and nothing else. */
  public static double orderNumberShare(List<Row> rows, int cell) {
    return share(rows, cell, text -> ORDER_NUMBER.matcher(text).matches());
  }

  /** The share of the filled cells that name a side of the board. */
  public static double sideShare(List<Row> rows, int cell) {
    return share(rows, cell, text -> SIDE.matcher(text).matches() || isSideWord(text));
  }

  /** The share of the filled cells that say whether a part is fitted, and nothing else. */
  public static double fittedShare(List<Row> rows, int cell) {
    return share(rows, cell, FittedSigns::isOne);
  }

  /** Single letters and digits may be anything. */
  private static boolean isSideWord(String text) {
    return text.length() > 2 && text.length() < 20 && SideWords.side(text).isPresent();
  }

  /** The share of the rows that have anything in this cell. */
  public static double filledShare(List<Row> rows, int cell) {
    long filled = rows.stream().filter(row -> !row.cell(cell).isEmpty()).count();
    return rows.isEmpty() ? 0 : (double) filled / rows.size();
  }

  /** Whether the cells say only how parts are mounted. */
  public static boolean areMountings(List<Row> rows, int cell) {
    return share(rows, cell, text -> MOUNTING.matcher(text).matches()) > 0.9;
  }

  /** The share of the filled cells that name a package. */
  public static double packageShare(List<Row> rows, int cell) {
    return share(
        rows, cell, text -> PACKAGE.matcher(text).find() || IN_LIBRARY.matcher(text).matches());
  }

  /** Whether a column of whole numbers counts something, and does not just number the rows. */
  public static boolean areQuantities(List<Row> rows, int cell) {
    List<String> cells =
        rows.stream().map(row -> row.cell(cell)).filter(t -> WHOLE.matcher(t).matches()).toList();
    if (cells.isEmpty() || wholeShare(rows, cell) < 0.7) {
      return false;
    }
    if (cells.size() >= COUNTED && isRising(cells)) {
      return false;
    }
    int steady = 0;
    for (int i = 2; i < cells.size(); i++) {
      int step = step(cells, i);
      if (step != 0 && step == step(cells, i - 1)) {
        steady++;
      }
    }
    return cells.size() < 3 || steady < (cells.size() - 2) * 0.8;
  }

  /** Whether each counts more than the one before, as numbers of rows of which some are gone. */
  private static boolean isRising(List<String> cells) {
    return IntStream.range(1, cells.size()).allMatch(i -> step(cells, i) > 0);
  }

  /** Whether a column numbers the rows, in whatever order they stand now. */
  public static boolean numbersRows(List<Row> rows, int cell) {
    List<String> filled =
        rows.stream().map(row -> row.cell(cell)).filter(text -> !text.isEmpty()).toList();
    List<String> whole = filled.stream().filter(text -> WHOLE.matcher(text).matches()).toList();
    // Between blanks, what runs on from a row stands below its number.
    List<String> cells = whole.size() * 2 > filled.size() ? whole : filled;
    var numbers = new HashSet<Integer>();
    cells.forEach(text -> WholeNumber.in(text).ifPresent(numbers::add));
    // Sections may each begin with 1 again.
    long rising =
        IntStream.range(1, cells.size())
            .filter(i -> step(cells, i) == 1 || cells.get(i).equals("1"))
            .count();
    boolean each =
        numbers.size() == cells.size()
            && numbers.stream().allMatch(number -> number <= cells.size());
    return cells.size() > 1 && (each || rising >= (cells.size() - 1) * 0.8);
  }

  /** How much more a cell counts than the one before; 0 when either is no number. */
  private static int step(List<String> cells, int index) {
    boolean numbers =
        WHOLE.matcher(cells.get(index)).matches() && WHOLE.matcher(cells.get(index - 1)).matches();
    return numbers
        ? Integer.parseInt(cells.get(index)) - Integer.parseInt(cells.get(index - 1))
        : 0;
  }

  /** The share of rows whose cell counts the designators of another cell. */
  public static double countingShare(List<Row> rows, int cell, int designators) {
    long counting =
        rows.stream()
            .filter(
                row ->
                    WholeNumber.in(row.cell(cell)).orElse(-1)
                        == DesignatorList.parse(row.cell(designators)).designators().size())
            .count();
    return rows.isEmpty() ? 0 : (double) counting / rows.size();
  }

  /** Whether all filled cells of a column mark a part as mirrored, and some are filled. */
  public static boolean areMirrorMarks(List<Row> rows, int cell) {
    return share(rows, cell, MirrorMarks::isOne) == 1;
  }

  /** Whether a column counts the designators of another cell for several boards: 10 of R1, R2. */
  public static boolean countForBoards(List<Row> rows, int cell, int designators) {
    var boards = new HashSet<Integer>();
    for (Row row : rows) {
      int named = DesignatorList.parse(row.cell(designators)).designators().size();
      int count = WholeNumber.in(row.cell(cell)).orElse(0);
      boards.add(named > 0 && count % named == 0 ? count / named : 0);
    }
    return boards.size() == 1 && boards.stream().allMatch(many -> many > 1 && many <= MOST_BOARDS);
  }

  /** Whether a column holds angles such as R90 and MR0. */
  public static boolean areTurns(List<Row> rows, int cell) {
    return share(rows, cell, TurnSigns::isOne) == 1
        && share(rows, cell, text -> TurnSigns.angle(text) % 45 == 0) > 0.6;
  }

  /** Whether a column holds nothing but quarter turns, two kinds of them at least. */
  public static boolean areQuarterTurns(List<Row> rows, int cell) {
    var turns = new HashSet<Double>();
    for (Row row : rows) {
      double angle = PlainNumber.orNan(row.cell(cell));
      if (!(angle % 90 == 0 && Math.abs(angle) <= 360)) {
        return false;
      }
      turns.add(Math.abs(angle) % 360);
    }
    turns.remove(0.0);
    return turns.size() > 1;
  }

  /** Whether a column names sides in words, the bottom among them, or by T and B, or F and B. */
  public static boolean tellSides(List<Row> rows, int cell) {
    boolean words =
        sideShare(rows, cell) > 0.9
            && share(
                    rows,
                    cell,
                    text -> isSideWord(text) && SideWords.side(text).get() == Side.BOTTOM)
                > 0;
    return words || areSideLetters(rows, cell);
  }

  /** One letter may be anything; these two, and no other, are sides. */
  private static boolean areSideLetters(List<Row> rows, int cell) {
    var letters = new HashSet<String>();
    for (Row row : rows) {
      letters.add(row.cell(cell).toUpperCase(Locale.ROOT));
      if (letters.size() > 2) {
        return false;
      }
    }
    return letters.equals(Set.of("T", "B")) || letters.equals(Set.of("F", "B"));
  }

  /** Whether every number of a column can be an angle, most of them a usual one. */
  public static boolean areAngles(List<Row> rows, int cell) {
    int usual = 0;
    for (Row row : rows) {
      double angle = PlainNumber.in(row.cell(cell)).orElse(Double.MAX_VALUE);
      if (Math.abs(angle) > 360 && !row.cell(cell).isEmpty()) {
        return false;
      }
      usual += angle % 45 == 0 ? 1 : 0;
    }
    return usual > rows.size() * 0.6;
  }

  private static double share(List<Row> rows, int cell, Predicate<String> shape) {
    int filled = 0;
    int fitting = 0;
    for (Row row : rows) {
      String text = row.cell(cell);
      if (!text.isEmpty()) {
        filled++;
        if (shape.test(text)) {
          fitting++;
        }
      }
    }
    return filled == 0 ? 0 : (double) fitting / filled;
  }
}
