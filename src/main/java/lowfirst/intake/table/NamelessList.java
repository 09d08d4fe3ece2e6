package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.kind.DescriptionWords;
import lowfirst.intake.kind.PartKindWords;
import lowfirst.marking.WrittenValue;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * A BOM that names no part on the board: what to buy, and how many, as a table or a part a line. It
 * can't tell where parts go, but what the bag must hold.
 *
 * @param header its columns
 * @param rows what there is to buy
 * @param unread lines that say neither how many nor a known word for a part
 */
record NamelessList(Header header, List<Row> rows, List<Row> unread) {
  /** What says what the part is, the surest first. */
  static final List<Column> TEXTS =
      List.of(Column.VALUE, Column.DESCRIPTION, Column.PART_TYPE, Column.PACKAGE);

  /** Share of filled cells from which a column counts parts, or names such. */
  static final double MOSTLY = 0.6;

  /** Rows before which a header stands. */
  private static final int SEARCHED = 20;

  private static final String BULLET = "\\s*(?:[-*•+]\\s+)?";

  /** How many stand before what it is: 3x, 3*, 3 before a word; not the 2x of 2x6, nor 555. */
  private static final Pattern COUNT_FIRST =
      Pattern.compile(
          "(?U)"
              + BULLET
              + "(?:(\\d{1,4})\\s*(?:[x×](?=[\\s\\p{L}])|\\*)\\s*|([1-9]\\d?)\\s+(?!(?i:[kmg]?hz|[kmg]?ohms?|volts?|watts?|amps?|mils?|inch|pins?|ways?|poles?|bits?|digits?)\\b)(?=\\p{L}{3}))(\\S.*)");

  /** Or behind it: (3), (x3), x3, 3 pcs. */
  private static final Pattern COUNT_LAST =
      Pattern.compile(
          "(?iU)"
              + BULLET
              + "(\\S.*?)[\\s,:-]+(?:\\(\\s?[x×]?\\s?(\\d{1,3})\\s?[x×]?\\s?\\)|[x×]\\s?(\\d{1,3})|(\\d{1,3})\\s?(?:x|pcs?\\.?|st(?:k|ück)?\\.?|off|ks|szt\\.?))\\s*");

  private static final Pattern PLAIN = Pattern.compile(BULLET + "(\\S.*?)[\\s,:-]*");

  private static final Pattern UNDERLINE = Pattern.compile("-{3,}|={3,}|~{3,}");

  /** What ends in a full stop is prose. */
  private static final Pattern SENTENCE = Pattern.compile(".*\\p{Ll}{3,}\\.");

  private static final Pattern WORDS = Pattern.compile("\\s+");

  /** More words without a count are prose. */
  private static final int MOST_WORDS = 8;

  /** Fewer lines are no list. */
  private static final int FEWEST = 3;

  /** A longer line is prose. */
  private static final int LONGEST = 120;

  /** Such a list; empty where the rows are none. */
  static Optional<NamelessList> in(TableKind kind, Cut cut) {
    if (kind != TableKind.BOM) {
      return Optional.empty();
    }
    return headed(cut.rows()).or(() -> lines(cut));
  }

  private static Optional<NamelessList> headed(List<Row> rows) {
    for (int index = 0; index < Math.min(SEARCHED, rows.size() - 2); index++) {
      Row row = rows.get(index);
      if (row.fillsMoreThan(1)) {
        List<Row> below = rows.subList(index + 1, rows.size());
        var search = new NamelessColumns(row.cells(), below, new ArrayList<>());
        if (search.isFound()) {
          return Optional.of(headed(index, search));
        }
      }
    }
    return Optional.empty();
  }

  private static NamelessList headed(int index, NamelessColumns search) {
    var plain = new Header(index, search.names(), search.uses());
    List<Row> held = search.below().stream().filter(row -> holds(plain, row)).toList();
    int text =
        TEXTS.stream().mapToInt(plain::cellOf).filter(cell -> cell >= 0).findFirst().orElse(0);
    if (plain.cellOf(Column.QUANTITY) >= 0) {
      return new NamelessList(plain, held, List.of());
    }
    // A count among the words goes into a column of its own.
    int width = search.names().size();
    var uses = new ArrayList<>(search.uses());
    uses.add(new Header.Use(Column.QUANTITY, width, Header.Basis.CELLS));
    var names = new ArrayList<>(search.names());
    names.add("");
    return new NamelessList(
        new Header(index, names, uses),
        held.stream().map(row -> counted(row, text, width)).toList(),
        List.of());
  }

  private static Row counted(Row row, int text, int width) {
    var cells = new ArrayList<>(row.cells());
    while (cells.size() <= width) {
      cells.add("");
    }
    line(row.line(), row.cell(text))
        .ifPresent(
            read -> {
              cells.set(text, read.cell(0));
              cells.set(width, read.cell(1));
            });
    return new Row(row.line(), cells);
  }

  private static boolean holds(Header header, Row row) {
    return row.fillsMoreThan(1)
        && !CellShapes.isDrawn(row)
        && !row.cells().equals(header.names())
        && !Remarks.isTotal(row)
        && TEXTS.stream().anyMatch(text -> !row.cell(header.cellOf(text)).isEmpty());
  }

  /** Where bullets stand before most lines that name parts, all others are prose. */
  private static Optional<NamelessList> lines(Cut cut) {
    Optional<NamelessList> list = lines(cut, row -> PartLines.isBulleted(line(row, " ")));
    long known = cut.rows().stream().filter(row -> isKnown(line(row, ", "))).count();
    return list.filter(read -> read.rows().size() * 2L > known).or(() -> lines(cut, row -> true));
  }

  private static String line(Row row, String between) {
    return row.cells().stream()
        .filter(cell -> !cell.isEmpty())
        .collect(Collectors.joining(between));
  }

  private static Optional<NamelessList> lines(Cut cut, Predicate<Row> mayHold) {
    var rows = new ArrayList<Row>();
    var unread = new ArrayList<Row>();
    String heading = "";
    int counted = 0;
    int listed = 0;
    for (int index = 0; index < cut.rows().size(); index++) {
      Row row = cut.rows().get(index);
      String line = line(row, ", ");
      boolean heads = index + 1 < cut.rows().size() && isUnderlined(cut.rows().get(index + 1));
      Optional<Row> read =
          line(row.line(), line).filter(found -> !heads || !found.cell(1).isEmpty());
      if (read.isPresent() && mayHold.test(row)) {
        rows.add(under(heading, read.get()));
        counted += read.get().cell(1).isEmpty() ? 0 : 1;
      } else if (line.endsWith(":")) {
        heading = PartKindWords.byWords(line).isPresent() || isKind(line) ? line : "";
      } else if (!line.isEmpty()
          && !CellShapes.isDrawn(row)
          && (mayHold.test(row) || read.isPresent())) {
        unread.add(row);
        listed += mayHold.test(row) && !heads ? 1 : 0;
      }
    }
    long known = rows.stream().filter(row -> isKnown(row.cell(0))).count();
    boolean isList =
        known >= FEWEST
            && rows.size() > MOSTLY * (rows.size() + listed)
            && (counted > MOSTLY * rows.size() || known > MOSTLY * rows.size());
    var header =
        new Header(
            -1,
            List.of(),
            List.of(
                new Header.Use(Column.VALUE, 0, Header.Basis.CELLS),
                new Header.Use(Column.QUANTITY, 1, Header.Basis.CELLS),
                new Header.Use(Column.DESCRIPTION, 2, Header.Basis.CELLS)));
    return isList ? Optional.of(new NamelessList(header, rows, unread)) : Optional.empty();
  }

  /** Whether a row is a line drawn below another, which is a heading. */
  private static boolean isUnderlined(Row below) {
    return UNDERLINE.matcher(line(below, "")).matches();
  }

  /** With the words over it, which may say what the line leaves out: Resistors, and below 150. */
  private static Row under(String heading, Row read) {
    return new Row(read.line(), List.of(read.cell(0), read.cell(1), heading));
  }

  private static boolean isKind(String heading) {
    return PartKindWords.byName(heading.substring(0, heading.length() - 1)).isPresent();
  }

  /** What a line says that there is to buy, and how many where it does. */
  private static Optional<Row> line(int number, String line) {
    boolean heads = line.endsWith(":");
    if (line.length() > LONGEST || line.contains("://") || heads) {
      return Optional.empty();
    }
    Matcher last = COUNT_LAST.matcher(line);
    if (last.matches()) {
      return Optional.of(new Row(number, List.of(last.group(1), count(last, 2, 4))));
    }
    Matcher first = COUNT_FIRST.matcher(line);
    if (first.matches()) {
      return Optional.of(new Row(number, List.of(first.group(3), count(first, 1, 2))));
    }
    Matcher plain = PLAIN.matcher(line);
    boolean brief = WORDS.splitAsStream(line).limit(MOST_WORDS + 1L).count() <= MOST_WORDS;
    return brief && plain.matches() && !SENTENCE.matcher(line).matches() && isKnown(plain.group(1))
        ? Optional.of(new Row(number, List.of(plain.group(1), "")))
        : Optional.empty();
  }

  private static String count(Matcher line, int from, int to) {
    return IntStream.rangeClosed(from, to)
        .mapToObj(line::group)
        .filter(Objects::nonNull)
        .findFirst()
        .orElse("");
  }

  static boolean isKnown(String text) {
    return PartKindWords.byWords(text).isPresent()
        || PartKindWords.byTypeNumber(text).isPresent()
        || DescriptionWords.typeNumberIn(text).isPresent()
        || WrittenValue.parse(text, Optional.empty()).isRead();
  }

  /** That lines were passed over; empty when all were read. */
  Optional<Problem> passedOver(String file) {
    return unread.stream()
        .findFirst()
        .map(
            row ->
                new Problem(
                    Kind.ROW_IGNORED,
                    Place.ofLine(file, row.line()),
                    (unread.size() == 1
                            ? "this line says"
                            : "this and " + (unread.size() - 1) + " more lines say")
                        + " neither how many nor a known word for a part (\""
                        + Excerpt.of(String.join(" ", row.cells()).strip(), 40)
                        + "\"), so nothing was read from "
                        + (unread.size() == 1 ? "it" : "them"),
                    "nothing, unless parts stand there: then write 2x before each"));
  }
}
