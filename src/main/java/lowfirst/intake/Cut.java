package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * A text cut into rows, with the header found: the cut, among all separators, that explains most.
 *
 * @param above lines that state something about a table without a header, which are none of its
 *     rows
 * @param problems quotes that never close
 */
record Cut(
    Separator separator, List<Row> above, List<Row> rows, Header header, List<Problem> problems) {

  /** Rows looked at to find the header. */
  static final int SEARCHED = 80;

  /** Share of rows of the usual length without which words between blanks are no table. */
  private static final double MOSTLY_EVEN = 0.5;

  /** Characters looked at to find the separator. */
  private static final int SAMPLE = 1 << 14;

  /** A cut in which nothing but a header stands above the rows. */
  Cut(Separator separator, List<Row> rows, Header header, List<Problem> problems) {
    this(separator, List.of(), rows, header, problems);
  }

  /** The lines before the header, or before the rows where there is none. */
  List<Row> before() {
    var before = new ArrayList<>(above);
    before.addAll(rows.subList(0, Math.max(0, header.index())));
    return before;
  }

  /** The best cut of {@code text} as a table of this kind. */
  static Cut of(TableKind kind, String file, String text, ColumnMap map) {
    Optional<Separator> told = map.separator(kind, file);
    if (told.isPresent()) {
      return by(told.get(), kind, file, text, map);
    }
    String sample = sample(text);
    Cut likeliest = likeliest(kind, file, sample, map);
    Cut cut =
        sample.length() == text.length()
            ? likeliest
            : by(likeliest.separator(), kind, file, text, map);
    return !kind.isExported() || !cut.separator().isOneCharacter()
        ? cut
        : cut.asking(rival(cut, kind, file, sample, map), kind, file);
  }

  /** Another separator that explains as much, though it cuts otherwise; empty without one. */
  private static Optional<Cut> rival(
      Cut cut, TableKind kind, String file, String text, ColumnMap map) {
    for (Separator other : Separator.values()) {
      boolean mayPart =
          other.isOneCharacter()
              && !(other == Separator.COMMA && isDecimal(text))
              && other != cut.separator()
              && text.indexOf(other.character()) >= 0;
      if (mayPart) {
        Cut rival = by(other, kind, file, text, map);
        boolean alike = cut.header().index() >= 0 == rival.header().index() >= 0;
        boolean asGood =
            rival.header().isComplete(kind)
                && (rival.header().isHeaded(kind) || !cut.header().isHeaded(kind))
                && rival.header().uses().size() >= cut.header().uses().size()
                && rival.evenness() > 0.9
                && cut.evenness() > 0.9;
        if (alike && asGood) {
          return Optional.of(rival);
        }
      }
    }
    return Optional.empty();
  }

  /** This cut with the question which separator is meant. */
  private Cut asking(Optional<Cut> rival, TableKind kind, String file) {
    if (rival.isEmpty()) {
      return this;
    }
    var more = new ArrayList<>(problems);
    more.add(
        new Problem(
            Kind.COLUMN_AMBIGUOUS,
            Place.ofLine(file, rows.get(Math.max(0, header.index())).line()),
            separator.words()
                + " part the cells as well as "
                + rival.get().separator().words()
                + ": "
                + shown()
                + ", or "
                + rival.get().shown()
                + "; "
                + separator.words()
                + " were taken",
            "say --column "
                + kind.key()
                + ".separator="
                + separator.words().replaceAll("s$", "")
                + " or --column "
                + kind.key()
                + ".separator="
                + rival.get().separator().words().replaceAll("s$", "")));
    return new Cut(separator, above, rows, header, more);
  }

  /** The first row of data, its cells in brackets. */
  private String shown() {
    int first = Math.min(Math.max(0, header.index() + 1), rows.size() - 1);
    return rows.get(first).cells().stream()
        .map(cell -> "[" + cell + "]")
        .collect(Collectors.joining(" "));
  }

  /** The sheet of a workbook that explains most as a table of this kind. */
  static Cut of(TableKind kind, String file, Workbook workbook, ColumnMap map) {
    Workbook.Grid best = new Workbook.Grid("", List.of(), List.of(), List.of());
    Cut cut = new Cut(Separator.SHEET, List.of(), new Header(-1, List.of(), List.of()), List.of());
    for (Workbook.Grid sheet : workbook.sheets()) {
      Cut other = of(kind, file, sheet, map);
      if (cut.rows().isEmpty() || other.worth(kind) > cut.worth(kind)) {
        best = sheet;
        cut = other;
      }
    }
    var problems = new ArrayList<>(workbook.problems());
    for (Workbook.Grid sheet : workbook.sheets()) {
      if (!sheet.name().equals(best.name())
          && kind.isExported()
          && isAnother(kind, file, sheet, map)) {
        problems.add(notRead(kind, file, best, sheet));
      }
    }
    if (kind.isExported()) {
      HiddenRows.said(file, best, cut.header()).ifPresent(problems::add);
      problems.addAll(StruckRows.said(file, best, cut.header()));
    }
    return new Cut(Separator.SHEET, cut.rows(), cut.header(), problems);
  }

  private static Cut of(TableKind kind, String file, Workbook.Grid sheet, ColumnMap map) {
    return new Cut(Separator.SHEET, sheet.rows(), header(kind, file, sheet.rows(), map), List.of());
  }

  /** A sheet with coordinates may have values, too, and is no BOM for that. */
  private static boolean isAnother(
      TableKind kind, String file, Workbook.Grid sheet, ColumnMap map) {
    return of(kind, file, sheet, map).header().isHeaded(kind)
        && (kind == TableKind.PLACEMENTS
            || !of(TableKind.PLACEMENTS, file, sheet, map).header().isHeaded(TableKind.PLACEMENTS));
  }

  private static Problem notRead(
      TableKind kind, String file, Workbook.Grid read, Workbook.Grid other) {
    return new Problem(
        Kind.COLUMN_AMBIGUOUS,
        Place.ofFile(file),
        "the sheet \""
            + other.name()
            + "\" holds "
            + kind.key()
            + " rows as well as the sheet \""
            + read.name()
            + "\", which alone was read",
        "put all rows into one sheet, or save each sheet that counts as a file of its own");
  }

  private static String sample(String text) {
    if (text.length() <= SAMPLE) {
      return text;
    }
    int end = Math.max(text.lastIndexOf('\n', SAMPLE), text.lastIndexOf('\r', SAMPLE));
    return text.substring(0, end > 0 ? end : SAMPLE);
  }

  private static Cut likeliest(TableKind kind, String file, String text, ColumnMap map) {
    if (kind.isExported() && PipeTable.isIn(text)) {
      Cut bars = by(Separator.BAR, kind, file, text, map);
      if (!bars.partsHeaderAlone()) {
        return bars;
      }
    }
    Optional<Cut> best = Optional.empty();
    double most = 0;
    // Columns of blanks are tried only where no character parts the cells.
    boolean found = false;
    for (Separator separator : Separator.values()) {
      if (!separator.isOneCharacter()
          && (found || !kind.isExported() || separator == Separator.LINES)) {
        break;
      }
      if (separator.isOneCharacter() && text.indexOf(separator.character()) < 0) {
        continue;
      }
      Cut cut = by(separator, kind, file, text, map);
      double worth = cut.worth(kind);
      boolean headed =
          worth > 0 && cut.header().index() >= 0 && !cut.isRagged(text) && !cut.partsHeaderAlone();
      found |= separator.isOneCharacter() && (headed || SideBySide.areIn(kind, cut.rows()));
      // Where another sign parts as well, a comma is more likely a decimal one.
      boolean comma = best.isEmpty() || best.get().separator() == Separator.COMMA;
      boolean decimal = comma && worth == most && isDecimal(text);
      if (worth > most || (decimal && worth > 0)) {
        best = Optional.of(cut);
        most = worth;
      }
    }
    Cut cut = best.orElseGet(() -> blanksOrFirst(kind, file, text, map));
    return cut.header().isGuessed() ? cut.orLines(kind, file, text, map).orNone(kind) : cut;
  }

  /** Where runs of tabs bring columns below each other, as many of them as the words need. */
  private boolean isRagged(String text) {
    return separator == Separator.TAB && text.contains("\t\t") && fit() < 0.9;
  }

  /** Whether a character stands between the words of the header, and hardly anywhere below. */
  private boolean partsHeaderAlone() {
    List<Row> below = rows.subList(header.index() + 1, rows.size());
    return below.stream().filter(row -> row.fillsMoreThan(1)).count() * 5 < below.size();
  }

  /** At single blanks, rows of many lengths are prose, of which nothing is guessed. */
  private Cut orNone(TableKind kind) {
    boolean prose =
        kind == TableKind.BOM && separator == Separator.BLANKS && evenness() < MOSTLY_EVEN;
    return prose ? new Cut(separator, rows, new Header(-1, List.of(), List.of()), problems) : this;
  }

  /** A list of lines instead, where the text is one and has no header and no even columns. */
  private Cut orLines(TableKind kind, String file, String text, ColumnMap map) {
    boolean told = !map.columns(kind, file).isEmpty();
    Optional<PartLines> lines =
        kind == TableKind.BOM && !told && OtherForm.of(kind, file, rows).isEmpty()
            ? PartLines.in(text)
            : Optional.empty();
    if (lines.isEmpty() || beats(lines.get(), kind)) {
      return this;
    }
    return Stream.of(Separator.WIDE_BLANKS, Separator.FIXED_WIDTH)
        .map(separator -> by(separator, kind, file, text, map))
        .filter(columns -> columns.beats(lines.get(), kind))
        .findFirst()
        .orElseGet(() -> by(Separator.LINES, kind, file, text, map));
  }

  /** Whether every comma of the text stands between digits. */
  private static boolean isDecimal(String text) {
    for (int at = text.indexOf(','); at >= 0; at = text.indexOf(',', at + 1)) {
      boolean between =
          at > 0
              && at + 1 < text.length()
              && Character.isDigit(text.charAt(at - 1))
              && Character.isDigit(text.charAt(at + 1));
      if (!between) {
        return false;
      }
    }
    return true;
  }

  private static Cut blanksOrFirst(TableKind kind, String file, String text, ColumnMap map) {
    Optional<Cut> best = Optional.empty();
    double most = 0;
    for (Separator separator : Separator.values()) {
      if (separator == Separator.LINES) {
        break;
      }
      Cut cut = by(separator, kind, file, text, map);
      if (separator == Separator.SIGNS && cut.header().index() < 0) {
        continue;
      }
      double worth = separator.isOneCharacter() ? cut.evenness() * 1.5 : cut.worth(kind);
      if (worth > most) {
        best = Optional.of(cut);
        most = worth;
      }
    }
    return best.orElseGet(() -> by(Separator.COMMA, kind, file, text, map));
  }

  /** Even columns with the designators in one of them are surer than lines, unless signs part. */
  private boolean beats(PartLines lines, TableKind kind) {
    boolean columns =
        separator.isOneCharacter()
            || (separator != Separator.BLANKS && !lines.signed() && width() > 2);
    return columns && header.isComplete(kind) && evenness() > 0.9;
  }

  /** The usual number of cells of a row. */
  private int width() {
    return rows.stream().map(Row::size).sorted().skip(rows.size() / 2).findFirst().orElse(0);
  }

  private static Cut by(
      Separator separator, TableKind kind, String file, String text, ColumnMap map) {
    if (separator == Separator.LINES) {
      PartLines lines = PartLines.in(text).orElse(PartLines.NONE);
      return new Cut(separator, lines.rows(), lines.header(), lines.problems(file));
    }
    Rows rows =
        separator.isOneCharacter()
            ? Rows.separated(file, text, separator)
            : new Rows(
                separator == Separator.SIGNS
                    ? SignRows.of(text)
                    : BlankRows.of(kind, text, separator),
                List.of());
    if (kind != TableKind.PLACEMENTS) {
      return new Cut(separator, rows.rows(), header(kind, file, rows.rows(), map), rows.problems());
    }
    List<Row> even =
        separator == Separator.BLANKS
            ? MirrorMarks.evened(SpacedNames.joined(rows.rows()))
            : rows.rows();
    List<Row> whole = UnquotedPairs.joined(even, separator);
    Header header = header(kind, file, whole, map);
    List<Row> above = Preamble.before(whole);
    if (header.index() >= above.size() || header.isHeaded(kind)) {
      return new Cut(separator, whole, header, rows.problems());
    }
    List<Row> below = whole.subList(above.size(), whole.size());
    return new Cut(separator, above, below, header(kind, file, below, map), rows.problems());
  }

  private static Header header(TableKind kind, String file, List<Row> rows, ColumnMap map) {
    Optional<String> line = map.headerLine(kind, file);
    Map<Column, String> told = map.columns(kind, file);
    var best = new Header(-1, List.of(), List.of());
    int most = 0;
    for (int index = 0; index < Math.min(rows.size(), SEARCHED); index++) {
      if (line.isPresent() && !line.get().equals(rows.get(index).line() + "")) {
        continue;
      }
      if (line.isEmpty() && HeaderMatch.highestScore(kind, told, rows, index) <= most) {
        continue;
      }
      if (best.isHeaded(kind) && holdsPart(kind, best, rows.subList(best.index() + 1, index))) {
        break;
      }
      Header header = HeaderMatch.at(kind, told, rows, index);
      int score = header.score(kind);
      if (score > most || (line.isPresent() && score >= most)) {
        best = header;
        most = score;
      }
    }
    if (best.index() >= 0 || !kind.isExported()) {
      return best;
    }
    boolean untold = line.isEmpty() && !told.containsKey(kind.required().get(0));
    return untold && OtherForm.of(kind, file, rows).isPresent()
        ? best
        : HeaderlessMatch.of(kind, told, rows);
  }

  /** Whether a header has parts below it already, so that one further down is another table's. */
  private static boolean holdsPart(TableKind kind, Header header, List<Row> below) {
    return below.stream().anyMatch(row -> RowAbove.isPart(kind, header, row));
  }

  /** How much the header explains, times how many rows are as long as it. */
  private double worth(TableKind kind) {
    int score = header.score(kind);
    if (score == 0 || header.index() < 0) {
      return header.index() < 0 && header.isComplete(kind) ? 0.1 * evenness() : 0;
    }
    return score * (0.5 + 0.5 * fit());
  }

  /** The share of rows from the header on that are as long as it. */
  private double fit() {
    int length = rows.get(header.index()).cells().size();
    List<Row> below =
        rows.stream().skip(header.index()).filter(row -> !row.cell(0).startsWith("#")).toList();
    long fitting = below.stream().filter(row -> row.size() == length).count();
    return (double) fitting / Math.max(1, below.size());
  }

  /** The share of rows that have the usual number of cells; 0 when that is one. */
  private double evenness() {
    var counts = new ArrayList<Integer>();
    rows.forEach(row -> counts.add(row.size()));
    counts.sort(null);
    if (counts.isEmpty() || counts.get(counts.size() / 2) < 2) {
      return 0;
    }
    int usual = counts.get(counts.size() / 2);
    return (double) counts.stream().filter(count -> count == usual).count() / counts.size();
  }
}
