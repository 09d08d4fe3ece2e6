package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.cell.DesignatorRange;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * A list as one jots it down, a part a line: {@code R2, R3 = 4k7}, {@code 2x C1, C2: 100n}, {@code
 * 4k7 R2, R3}.
 *
 * @param rows designators, the words about them, how many there are where that is said, and what
 *     stands behind a wide gap; other lines as one cell
 * @param read how many lines hold a part
 * @param signed whether a sign, and not only blanks, parts designators and words
 * @param named rows whose first word was taken for the name of a part, since they stand like parts
 * @param unread rows that stand like parts and name some, but are not understood
 */
public record PartLines(
    List<Row> rows, int read, boolean signed, List<Row> named, List<Row> unread) {
  /** No list, in which nothing is found. */
  static final PartLines NONE = new PartLines(List.of(), 0, false, List.of(), List.of());

  private static final String NAME = "([A-Z]{1,4})\\d{1,4}[A-Z]?(?:_[A-Z0-9]{1,6})?";

  /**
   * More of the same letters after any sign, of other letters only after a comma or a word. What
   * was taken is never given back: some signs fit twice, and all ways to take them would be tried.
   */
  private static final String NAMES =
      NAME
          + "(?>\\s*(?:,|;|\\band\\b|\\bund\\b)\\s*[A-Z]{1,4}\\d{1,4}[A-Z]?(?![A-Z0-9])"
          + "|(?:\\s*(?:-{1,3}|[–/&+~]|\\.{2,3})\\s*|\\s+(?iu:"
          + DesignatorRange.TO_WORDS
          + ")\\s+)\\L\\d{1,4}(?![A-Z0-9])|[-–/,~]\\d{1,4}(?![A-Za-z0-9.])"
          + "|,?\\s+\\L\\d{1,4}(?=[\\s,:=]+\\S))*+";

  private static final String BULLET = "\\s*(?:[-*•]\\s+(?:\\[[ xX]\\]\\s+)?|\\d{1,3}[.)]\\s+)?";

  /** Names of bodies at the end of a line, which look like designators. */
  private static final Pattern BODY =
      Pattern.compile("(?:SOT|SOD|TO|DO|SOIC|SOP|DIP|DIL|SIP)\\d{1,3}");

  /** What begins a line of a list among prose, as in notes. */
  private static final Pattern BULLETED = Pattern.compile("\\s*[-*•]\\s+\\S.*");

  /** Marks of bold text and of code. */
  private static final Pattern MARKS = Pattern.compile("\\*\\*|__|`");

  private static final String COUNT = "(?:(\\d{1,4})\\s*[x×*]\\s*|\\(?(\\d{1,4})\\)?\\s+%s)?";

  private static final Pattern NAMES_FIRST =
      Pattern.compile(
          BULLET
              + COUNT.formatted("")
              + "\\(?(?<names>"
              + NAMES.replace("\\L", "\\4")
              + ")\\)?(?<sign>\\s*(?:[-=]*>|=|:|→|–|—)\\s*|\\s+-{1,3}\\s+|\\s+-$|\\s+|$)(?<words>.*)");

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

  /** A name without a number, in capitals, and words behind a wide gap, or behind a bullet. */
  private static final Pattern NAMED =
      Pattern.compile(
          BULLET + "(?<names>[A-Z][A-Z0-9_$+]{1,11})(?<gap>\\t\\s*|\\s+)(?<words>\\S.*)");

  /** What to buy that has no place on the board. */
  private static final Pattern COUNTED =
      Pattern.compile(BULLET + "(?<count>\\d{1,4})\\s*[x×]\\s+(?<words>[\\p{L}\\p{N}].*)");

  private static final Pattern WIDE_GAP = Pattern.compile("\\s{2,}|\\t");

  /** One word with a digit. */
  private static final Pattern VALUE = Pattern.compile("\\S{0,9}\\d\\S{0,9}");

  /** A part among the words of a line. */
  private static final Pattern LOST =
      Pattern.compile("(?<![\\p{L}\\p{N}-])(?:[RCLDQUJKF]|IC|SW|LED)\\d{1,3}(?![\\p{L}\\p{N}])");

  /** A line drawn below a heading. */
  private static final Pattern DRAWN = Pattern.compile("\\s*[-=_*#~+]{3,}\\s*");

  /** A longer line is prose. */
  private static final int LONGEST = 300;

  /** Nobody jots down more characters. */
  private static final int MOST_CHARACTERS = 200_000;

  /** The cells of a row: designators, words, how many, more words. */
  static final int CELLS = 4;

  /** Fewer are no list. */
  private static final int FEWEST = 3;

  /**
   * The list that {@code text} is; empty when most of its lines hold no part, or bars part them, or
   * it is too long.
   */
  public static Optional<PartLines> in(String text) {
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
    long listed =
        Stream.of(lines)
            .filter(line -> !line.isBlank() && mayHold.test(line))
            .filter(line -> !DRAWN.matcher(line).matches())
            .count();
    long alike = best.rows.stream().filter(row -> row.size() > 1).count() + best.unread.size();
    return best.read >= FEWEST && alike >= listed * 0.6 ? Optional.of(best) : Optional.empty();
  }

  /** Whether a line begins with a bullet. */
  static boolean isBulleted(String line) {
    return line.length() <= LONGEST && BULLETED.matcher(line).matches();
  }

  private static PartLines by(Pattern form, String[] lines, Predicate<String> mayHold) {
    var parts = new ArrayList<Optional<List<String>>>();
    var usual = new Usual();
    boolean signed = false;
    int crowded = 0;
    for (String line : lines) {
      boolean may = line.length() <= LONGEST && mayHold.test(line);
      Matcher part = form.matcher(may ? bare(line.stripTrailing()) : "");
      boolean is = part.matches() && isPart(part);
      parts.add(is ? Optional.of(cells(part)) : Optional.empty());
      if (is) {
        usual.see(line, part);
        signed |= !part.group("sign").isBlank();
        crowded += CROWDED.matcher(part.group("words")).find() ? 1 : 0;
      }
    }
    // Two parts in most lines are two tables beside each other.
    return crowded * 2 > usual.read
        ? NONE
        : new PartLines(new ArrayList<>(), usual.read, signed, new ArrayList<>(), new ArrayList<>())
            .with(lines, parts, usual);
  }

  private PartLines with(String[] lines, List<Optional<List<String>>> parts, Usual usual) {
    for (int i = 0; i < lines.length; i++) {
      String line = lines[i].stripTrailing();
      Optional<List<String>> alike = parts.get(i).or(() -> usual.alike(line));
      if (alike.isPresent()) {
        var row = new Row(i + 1, alike.get());
        rows.add(row);
        if (parts.get(i).isEmpty() && !row.cell(0).isEmpty()) {
          named.add(row);
        }
      } else if (!line.isBlank()) {
        boolean isLost = usual.isBulleted(line) && LOST.matcher(line).find();
        (isLost ? unread : rows).add(new Row(i + 1, List.of(line.strip())));
      }
    }
    return this;
  }

  /** What the parts of a list have before and behind their designators. */
  private static final class Usual {
    private int read;
    private int bulleted;
    private int counted;
    private int gapped;

    void see(String line, Matcher part) {
      read++;
      bulleted += PartLines.isBulleted(line) ? 1 : 0;
      counted += isCounted(part) ? 1 : 0;
      gapped += WIDE_GAP.matcher(part.group("sign")).matches() ? 1 : 0;
    }

    boolean isBulleted(String line) {
      return bulleted * 2 > read && PartLines.isBulleted(line);
    }

    /** The cells of a line that stands like most parts do, though it has no designator. */
    Optional<List<String>> alike(String line) {
      if (line.length() > LONGEST) {
        return Optional.empty();
      }
      Matcher count = COUNTED.matcher(line);
      if (counted * 2 > read && count.matches()) {
        return Optional.of(List.of("", count.group("words"), count.group("count"), ""));
      }
      Matcher name = NAMED.matcher(bare(line));
      boolean stands =
          name.matches()
              && (isBulleted(line)
                  || gapped * 2 > read && WIDE_GAP.matcher(name.group("gap")).matches());
      return stands && HeaderWords.matches(TableKind.BOM, name.group("names")).isEmpty()
          ? Optional.of(cells(name.group("names"), name.group("words"), ""))
          : Optional.empty();
    }
  }

  /** Where a slash parts more than two things in a line, nobody knows what they are. */
  private static boolean isPart(Matcher line) {
    String words = line.group("words");
    int closed = words.indexOf(')');
    boolean torn = closed >= 0 && (words.indexOf('(') < 0 || closed < words.indexOf('('));
    return !(words.isEmpty() && isCounted(line))
        && !words.startsWith("/ ")
        && !BODY.matcher(line.group("names")).matches()
        && !torn
        && CellShapes.mayName(line.group("names"));
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
    return cells(line.group("names"), words, count == null ? "" : count);
  }

  /** What stands behind a wide gap after a value is of another column. */
  private static List<String> cells(String names, String words, String count) {
    Matcher gap = WIDE_GAP.matcher(words);
    boolean parted = gap.find() && VALUE.matcher(words.substring(0, gap.start())).matches();
    String first = parted ? words.substring(0, gap.start()) : words;
    // A dash, so that a name alone is not taken for a heading.
    return List.of(
        names,
        first.isEmpty() ? "-" : first,
        count,
        parted ? words.substring(gap.end()).strip() : "");
  }

  /** What was taken for granted, and what was not read. */
  List<Problem> problems(String file) {
    var problems = new ArrayList<Problem>();
    for (Row row : named) {
      if (WordNames.isWord(row.cell(0))) {
        continue;
      }
      problems.add(
          new Problem(
              Kind.COLUMN_GUESSED,
              Place.ofCell(file, row.line(), 1, "", row.cell(0)),
              "\"" + row.cell(0) + "\" was taken for the name of a part on the board",
              "if that is wrong, delete the line"));
    }
    for (Row row : unread) {
      problems.add(
          new Problem(
              Kind.DESIGNATOR_UNREADABLE,
              Place.ofLine(file, row.line()),
              "this line of the list was not understood (\"" + row.cell(0) + "\")",
              "begin it with the designators of its part, such as - R1, R2: 10k"));
    }
    return problems;
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
    List<String> more = rows.stream().map(row -> row.cell(3)).filter(t -> !t.isEmpty()).toList();
    if (!more.isEmpty()) {
      boolean words = more.stream().anyMatch(text -> text.indexOf(' ') > 0);
      uses.add(new Header.Use(words ? Column.DESCRIPTION : Column.PACKAGE, 3, Header.Basis.CELLS));
    }
    return new Header(-1, List.of(), uses);
  }
}
