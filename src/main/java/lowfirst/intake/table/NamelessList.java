package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.HeaderWords;
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
  private static final Pattern COUNT =
      Pattern.compile("(?i)x?\\s?\\d{1,5}\\s?(x|pcs\\.?|st\\.?|off)?");

  /** What says what the part is, the surest first. */
  private static final List<Column> TEXTS =
      List.of(Column.VALUE, Column.DESCRIPTION, Column.PART_TYPE, Column.PACKAGE);

  private static final Set<Column> OTHERS =
      EnumSet.of(Column.TOLERANCE, Column.VOLTAGE, Column.POWER, Column.HEIGHT, Column.MAKER);

  /** Share of filled cells from which a column counts parts, or names such. */
  private static final double MOSTLY = 0.6;

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
        var search = new Search(row.cells(), below, new ArrayList<>());
        if (search.isFound()) {
          return Optional.of(headed(index, search));
        }
      }
    }
    return Optional.empty();
  }

  private static NamelessList headed(int index, Search search) {
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
        && TEXTS.stream().anyMatch(text -> !row.cell(header.cellOf(text)).isEmpty());
  }

  /** Where bullets stand before most lines that name parts, all others are prose. */
  private static Optional<NamelessList> lines(Cut cut) {
    List<Row> bulleted =
        cut.rows().stream().filter(row -> PartLines.isBulleted(line(row, " "))).toList();
    Optional<NamelessList> list = lines(bulleted);
    long known = cut.rows().stream().filter(row -> isKnown(line(row, ", "))).count();
    return list.filter(read -> read.rows().size() * 2 > known).isPresent()
        ? list.map(read -> read.passingOver(cut.rows(), bulleted))
        : lines(cut.rows());
  }

  private NamelessList passingOver(List<Row> all, List<Row> bulleted) {
    var more = new ArrayList<>(unread);
    all.stream()
        .filter(row -> !bulleted.contains(row) && !CellShapes.isDrawn(row))
        .filter(row -> line(row.line(), line(row, ", ")).isPresent())
        .forEach(more::add);
    return new NamelessList(header, rows, more);
  }

  private static String line(Row row, String between) {
    return row.cells().stream()
        .filter(cell -> !cell.isEmpty())
        .collect(Collectors.joining(between));
  }

  private static Optional<NamelessList> lines(List<Row> all) {
    var rows = new ArrayList<Row>();
    var unread = new ArrayList<Row>();
    int counted = 0;
    for (Row row : all) {
      String line = line(row, ", ");
      Optional<Row> read = line(row.line(), line);
      if (read.isPresent()) {
        rows.add(read.get());
        counted += read.get().cell(1).isEmpty() ? 0 : 1;
      } else if (!line.isEmpty() && !CellShapes.isDrawn(row)) {
        unread.add(row);
      }
    }
    long known = rows.stream().filter(row -> isKnown(row.cell(0))).count();
    boolean isList =
        known >= FEWEST
            && rows.size() > MOSTLY * (rows.size() + unread.size())
            && (counted > MOSTLY * rows.size() || known > MOSTLY * rows.size());
    var header =
        new Header(
            -1,
            List.of(),
            List.of(
                new Header.Use(Column.VALUE, 0, Header.Basis.CELLS),
                new Header.Use(Column.QUANTITY, 1, Header.Basis.CELLS)));
    return isList ? Optional.of(new NamelessList(header, rows, unread)) : Optional.empty();
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
    return brief && plain.matches() && isKnown(plain.group(1))
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

  private static boolean isKnown(String text) {
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

  /** The look for columns under a header. */
  private record Search(List<String> names, List<Row> below, List<Header.Use> uses) {
    private boolean isFound() {
      boolean counted = use(Column.QUANTITY, cell -> share(cell, COUNT) > MOSTLY);
      for (Column text : TEXTS) {
        use(text, cell -> true);
      }
      OTHERS.forEach(column -> use(column, cell -> true));
      List<Header.Use> texts = uses.stream().filter(use -> TEXTS.contains(use.column())).toList();
      // Without a count only words for parts tell a list of them.
      return texts.stream().anyMatch(use -> known(use.cell()) > (counted ? 0.3 : MOSTLY));
    }

    private boolean use(Column column, IntPredicate fits) {
      int best = -1;
      int rank = Integer.MAX_VALUE;
      for (int cell = 0; cell < names.size(); cell++) {
        int at = cell;
        boolean free = uses.stream().noneMatch(use -> use.cell() == at);
        for (HeaderWords.Match match : HeaderWords.matches(TableKind.BOM, names.get(cell))) {
          if (free && match.column() == column && match.rank() < rank && fits.test(cell)) {
            best = cell;
            rank = match.rank();
          }
        }
      }
      if (best >= 0) {
        Header.Basis basis =
            rank < HeaderWords.WEAK ? Header.Basis.HEADER : Header.Basis.LIKELY_HEADER;
        uses.add(new Header.Use(column, best, basis));
      }
      return best >= 0;
    }

    private double share(int cell, Pattern pattern) {
      List<String> filled = filled(cell);
      long fitting = filled.stream().filter(text -> pattern.matcher(text).matches()).count();
      return filled.isEmpty() ? 0 : (double) fitting / filled.size();
    }

    /** Share of cells whose words or numbers are those of parts. */
    private double known(int cell) {
      List<String> filled = filled(cell);
      long known = filled.stream().filter(NamelessList::isKnown).count();
      return filled.isEmpty() ? 0 : (double) known / filled.size();
    }

    private List<String> filled(int cell) {
      return below.stream().map(row -> row.cell(cell)).filter(text -> !text.isEmpty()).toList();
    }
  }
}
