package lowfirst.intake.column;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How x and y stand together in the cells of one column: {@code 12.5, 30.0}, {@code (12.5;30)},
 * {@code X12.5Y30}, {@code 12.5mm x 30mm}. One way is taken for the whole column, and another only
 * for a cell that it can't part.
 *
 * @param way what parts them, in most cells
 * @param rival another sign that parts as many cells, and otherwise
 */
public record CoordinatePair(Way way, Optional<Way> rival) {

  /** What parts x and y. Where a blank parts them as well as a comma, commas are decimal marks. */
  public enum Way {
    LETTERS("XY", "the letters X and Y"),
    SEMICOLON(";", "semicolons"),
    BAR("|", "bars"),
    SLASH("/", "slashes"),
    CROSS("xX×*", "crosses"),
    BLANK(" ", "blanks"),
    COMMA(",", "commas");

    private final String signs;
    private final String words;

    Way(String signs, String words) {
      this.signs = signs;
      this.words = words;
    }

    /** What a person calls it. */
    public String words() {
      return words;
    }
  }

  /** The two halves of a cell. */
  public record Halves(String x, String y) {
    @Override
    public String toString() {
      return x + " and y = " + y;
    }
  }

  private static final String UNIT = "mm|mils?|thou|inch(?:es)?|in|[\"″]|um|µm|μm|nm|cm";

  /** Digits may stand in groups of three, parted by a sign that is not the decimal mark, too. */
  private static final String NUMBER =
      "[+-]?(?:\\d{1,3}([ '’.,])\\d{3}(?:\\1\\d{3}){0,3}(?:(?!\\1)[.,]\\d{1,9})?"
          + "|\\d{1,12}(?:\\.\\d{0,9}|,\\d{1,9})?|[.,]\\d{1,9})(?:[eE][+-]?\\d{1,2})?";

  private static final Pattern LENGTH =
      Pattern.compile(NUMBER + "\\s*(" + UNIT + ")?", Pattern.CASE_INSENSITIVE);
  private static final Pattern UNIT_ALONE = Pattern.compile(UNIT, Pattern.CASE_INSENSITIVE);
  private static final Pattern LETTERED =
      Pattern.compile("x\\s*[:=]?(.+?)[\\s,;|/]*y\\s*[:=]?(.+)", Pattern.CASE_INSENSITIVE);
  private static final Pattern BRACKETED =
      Pattern.compile("[(\\[{<](.*)[)\\]}>]\\s*(" + UNIT + ")?", Pattern.CASE_INSENSITIVE);

  /** More than two whole numbers and a sign: a decimal mark, a semicolon, a unit, brackets. */
  private static final Pattern TELLING = Pattern.compile("(?i).*([.;(\\[{<xy]|\\d,\\d|mil|mm).*");

  /** A longer text holds no pair. */
  private static final int LONGEST = 60;

  /** Share of the filled cells that must hold a pair. */
  private static final double MOST = 0.7;

  /** How the cells of a column hold pairs; empty when they don't. */
  public static Optional<CoordinatePair> in(List<Row> rows, int cell) {
    List<String> texts = filled(rows, cell);
    Way best = null;
    long most = 0;
    for (Way way : Way.values()) {
      long cut = texts.stream().filter(text -> !halves(way, text).isEmpty()).count();
      if (cut > most) {
        best = way;
        most = cut;
      }
    }
    if (most == 0) {
      return Optional.empty();
    }
    var pair = new CoordinatePair(best, rival(best, texts));
    long pairs = texts.stream().filter(text -> !pair.halves(text).isEmpty()).count();
    return pairs >= texts.size() * MOST ? Optional.of(pair) : Optional.empty();
  }

  /** Whether pairs of a column can be nothing else, whatever it is called. */
  public static boolean areTelling(List<Row> rows, int cell) {
    List<String> texts = filled(rows, cell);
    return texts.stream().filter(CoordinatePair::isTelling).count() * 3 > texts.size();
  }

  /** 12,5 alone may be one number. */
  private static boolean isTelling(String text) {
    return TELLING.matcher(text).matches() && !LENGTH.matcher(text).matches();
  }

  private static List<String> filled(List<Row> rows, int cell) {
    return rows.stream().map(row -> row.cell(cell)).filter(text -> !text.isEmpty()).toList();
  }

  private static Optional<Way> rival(Way best, List<String> texts) {
    List<String> parted = texts.stream().filter(text -> !halves(best, text).isEmpty()).toList();
    for (Way other : Way.values()) {
      boolean asMany = parted.stream().noneMatch(text -> halves(other, text).isEmpty());
      if (asMany && parted.stream().anyMatch(text -> differ(best, other, text))) {
        return Optional.of(other);
      }
    }
    return Optional.empty();
  }

  private static boolean differ(Way one, Way other, String text) {
    return other != one && !halves(one, text).equals(halves(other, text));
  }

  /**
   * The halves of a cell; none when it holds no pair, several when it can be cut in several ways.
   */
  public List<Halves> halves(String text) {
    List<Halves> usual = halves(way, text);
    return usual.isEmpty() ? partedOtherwise(text) : usual;
  }

  /** Whether another sign than in the column parts a cell. */
  public boolean isOdd(String text) {
    return halves(way, text).isEmpty() && partedOtherwise(text).size() == 1;
  }

  /** Whether a cell is nothing but a unit of length. */
  public static boolean isUnit(String text) {
    return UNIT_ALONE.matcher(text).matches();
  }

  /** Whether a cell can be read as a pair, and not as one number. */
  public static boolean isPair(String text) {
    return !partedOtherwise(text).isEmpty();
  }

  /** Whether a cell can be read as a pair at all: 12,5 may be. */
  public static boolean mayBePair(String text) {
    return Arrays.stream(Way.values()).anyMatch(way -> !halves(way, text).isEmpty());
  }

  /** All pairs that a cell can be read as, each once. */
  public static List<Halves> halvesOf(String text) {
    return Arrays.stream(Way.values())
        .flatMap(way -> halves(way, text).stream())
        .distinct()
        .toList();
  }

  /** By any other sign; but where a column has 12,5; 30 a lone 12,5 has lost its y. */
  private static List<Halves> partedOtherwise(String text) {
    return LENGTH.matcher(text).matches() ? List.of() : halvesOf(text);
  }

  /** Whether the rival, if there is one, cuts a cell alike. */
  public boolean isOneWay(String text) {
    return rival.isEmpty() || !differ(way, rival.get(), text);
  }

  /** X or y of a cell; empty when it holds no pair that is sure. */
  String half(Column column, String text) {
    List<Halves> halves = halves(text);
    if (halves.size() != 1) {
      return "";
    }
    return column == Column.X ? halves.get(0).x() : halves.get(0).y();
  }

  /** Every way to part a cell into x and y; none where it holds no two numbers. */
  public static List<Halves> halves(Way way, String text) {
    if (text.length() > LONGEST) {
      return List.of();
    }
    Matcher bracketed = BRACKETED.matcher(text);
    // A unit behind the brackets is said once, for both.
    String bare = bracketed.matches() ? bracketed.replaceFirst("$1$2").strip() : text.strip();
    var halves = new ArrayList<Halves>();
    if (way == Way.LETTERS) {
      Matcher lettered = LETTERED.matcher(bare);
      if (lettered.matches()) {
        add(lettered.group(1), lettered.group(2), halves);
      }
      return halves;
    }
    for (int at = 1; at < bare.length(); at++) {
      if (way.signs.indexOf(bare.charAt(at)) >= 0) {
        add(bare.substring(0, at), bare.substring(at + 1), halves);
      }
    }
    return halves;
  }

  private static void add(String left, String right, List<Halves> halves) {
    Matcher x = LENGTH.matcher(left.strip());
    Matcher y = LENGTH.matcher(right.strip());
    if (x.matches() && y.matches()) {
      // 12.5 x 30 mm: the unit is said once, for both.
      boolean shared = x.group(2) == null && y.group(2) != null;
      var pair = new Halves(left.strip() + (shared ? y.group(2) : ""), right.strip());
      if (!halves.contains(pair)) {
        halves.add(pair);
      }
    }
  }
}
