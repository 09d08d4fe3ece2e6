package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A list as one jots it down, a part a line: {@code R2, R3 = 4k7}, {@code 2x C1, C2: 100n}, {@code
 * 4k7 R2, R3}.
 *
 * @param rows designators, the words about them, and how many there are where that is said; other
 *     lines as one cell
 * @param read how many lines hold a part
 * @param signed whether a sign, and not only blanks, parts designators and words
 */
record PartLines(List<Row> rows, int read, boolean signed) {
  /** No list, in which nothing is found. */
  static final PartLines NONE = new PartLines(List.of(), 0, false);

  private static final String NAME = "([A-Z]{1,4})\\d{1,4}[A-Z]?(?:_[A-Z0-9]{1,6})?";

  /**
   * More of the same letters after any sign, of other letters only after a comma or a word. What
   * was taken is never given back: some signs fit twice, and all ways to take them would be tried.
   */
  private static final String NAMES =
      NAME
          + "(?>\\s*(?:,|;|\\band\\b|\\bund\\b)\\s*[A-Z]{1,4}\\d{1,4}[A-Z]?(?![A-Z0-9])"
          + "|\\s*(?:[-–/&+~]|\\.{2,3})\\s*\\L\\d{1,4}(?![A-Z0-9])|[-–/,~]\\d{1,4}(?![A-Za-z0-9.])"
          + "|,?\\s+\\L\\d{1,4}(?=[\\s,:=]+\\S))*+";

  private static final String BULLET = "\\s*(?:[-*•]\\s+(?:\\[[ xX]\\]\\s+)?|\\d{1,3}[.)]\\s+)?";

  /** What begins a line of a list among prose, as in notes. */
  private static final Pattern BULLETED = Pattern.compile("\\s*[-*•]\\s+\\S.*");

  /** Marks of bold text and of code. */
  private static final Pattern MARKS = Pattern.compile("\\*\\*|__|`");

  private static final String COUNT = "(?:(\\d{1,4})\\s*[x×*]\\s*|\\(?(\\d{1,4})\\)?\\s+%s)?";

  private static final Pattern NAMES_FIRST =
      Pattern.compile(
          BULLET
              + COUNT.formatted("")
              + "(?<names>"
              + NAMES.replace("\\L", "\\4")
              + ")(?<sign>\\s*(?:[-=]*>|=|:|→|–|—)\\s*|\\s+-\\s+|\\s+-$|\\s+|$)(?<words>.*)");

  private static final Pattern NAMES_LAST =
      Pattern.compile(
          BULLET
              // Not the 10 of 10 k.
              + COUNT.formatted("(?=\\d|[A-Z]{2,}\\d)")
              + "(?<words>\\S.*?)(?<sign>\\s*[:=]\\s*|\\s+[-–]\\s+|,?\\s+)\\(?(?<names>"
              + NAMES.replace("\\L", "\\6")
              + ")\\)?\\s*");

  /** Another part behind a tab, or after a wide gap. */
  private static final Pattern CROWDED =
      Pattern.compile("(?:\\t|  )\\s*(?:[RCLDQUJK]|IC)\\d{1,3}(?=\\s)");

  /** How many there are may also stand behind the designators. */
  private static final Pattern COUNTED_WORDS = Pattern.compile("(\\d{1,4})\\s*[x×]\\s+(.*)");

  /** A longer line is prose. */
  private static final int LONGEST = 300;

  /** Nobody jots down more characters. */
  private static final int MOST_CHARACTERS = 200_000;

  /** The cells of a row: designators, words, how many. */
  static final int CELLS = 3;

  /** Fewer are no list. */
  private static final int FEWEST = 3;

  /**
   * The list that {@code text} is; empty when most of its lines hold no part, or bars part them, or
   * it is too long.
   */
  static Optional<PartLines> in(String text) {
    if (text.length() > MOST_CHARACTERS || text.indexOf('|') >= 0) {
      return Optional.empty();
    }
    String[] lines = text.split("\r\n|\r|\n", -1);
    Optional<PartLines> all = in(lines, line -> true);
    // Among prose with headings, bullets tell the list.
    return all.isPresent() ? all : in(lines, PartLines::isBulleted);
  }

  private static Optional<PartLines> in(String[] lines, Predicate<String> mayHold) {
    PartLines first = by(NAMES_FIRST, lines, mayHold);
    PartLines last = by(NAMES_LAST, lines, mayHold);
    PartLines best = last.read > first.read ? last : first;
    long listed = Stream.of(lines).filter(line -> !line.isBlank() && mayHold.test(line)).count();
    return best.read >= FEWEST && best.read >= listed * 0.6 ? Optional.of(best) : Optional.empty();
  }

  /** Whether a line begins with a bullet. */
  static boolean isBulleted(String line) {
    return line.length() <= LONGEST && BULLETED.matcher(line).matches();
  }

  private static PartLines by(Pattern form, String[] lines, Predicate<String> mayHold) {
    var rows = new ArrayList<Row>();
    int read = 0;
    boolean signed = false;
    int crowded = 0;
    for (int i = 0; i < lines.length; i++) {
      boolean may = lines[i].length() <= LONGEST && mayHold.test(lines[i]);
      Matcher line = form.matcher(may ? bare(lines[i].stripTrailing()) : "");
      if (line.matches() && isPart(line)) {
        rows.add(new Row(i + 1, cells(line)));
        read++;
        signed |= !line.group("sign").isBlank();
        crowded += CROWDED.matcher(line.group("words")).find() ? 1 : 0;
      } else if (!lines[i].isBlank()) {
        rows.add(new Row(i + 1, List.of(lines[i].strip())));
      }
    }
    // Two parts in most lines are two tables beside each other.
    return crowded * 2 > read ? NONE : new PartLines(rows, read, signed);
  }

  /** Where a slash parts more than two things in a line, nobody knows what they are. */
  private static boolean isPart(Matcher line) {
    String words = line.group("words");
    return !(words.isEmpty() && isCounted(line)) && !words.startsWith("/ ");
  }

  private static String bare(String line) {
    return isBulleted(line) ? MARKS.matcher(line).replaceAll("") : line;
  }

  /** Where only a number stands before a designator, as in 100 R1, it is a value. */
  private static boolean isCounted(Matcher line) {
    return line.group(1) != null || line.group(2) != null;
  }

  private static List<String> cells(Matcher line) {
    String words = line.group("words").strip();
    String count = line.group(1) != null ? line.group(1) : line.group(2);
    Matcher counted = COUNTED_WORDS.matcher(words);
    if (count == null && counted.matches()) {
      count = counted.group(1);
      words = counted.group(2);
    }
    // A dash, so that a name alone is not taken for a heading.
    return List.of(line.group("names"), words.isEmpty() ? "-" : words, count == null ? "" : count);
  }

  /** Its columns; the count only where a line has one. */
  Header header() {
    if (rows.isEmpty()) {
      return new Header(-1, List.of(), List.of());
    }
    var uses = new ArrayList<Header.Use>();
    uses.add(new Header.Use(Column.DESIGNATORS, 0, Header.Basis.CELLS));
    uses.add(new Header.Use(Column.VALUE, 1, Header.Basis.CELLS));
    if (rows.stream().anyMatch(row -> !row.cell(2).isEmpty())) {
      uses.add(new Header.Use(Column.QUANTITY, 2, Header.Basis.CELLS));
    }
    return new Header(-1, List.of(), uses);
  }
}
