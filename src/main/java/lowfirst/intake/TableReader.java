package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Reads the bytes of one file as a table of one kind; its cells are read by others. */
final class TableReader {
  private static final Pattern PREAMBLE_UNIT =
      Pattern.compile(
          "(?i)\\b(?:units?|measure(?:ment)?s?|metric|einheit(?:en)?|unit(?:é|e)s?|dimensions?|coordinates?|positions?)\\b"
              + "(?:\\s*(?:used|of|are|is|in|for|measurement|length|metric|imperial|coordinates?|[:=]))*\\s*[:=,(-]?\\s*"
              + "(mm|millimet(?:er|re)s?|mils?|thou|inch(?:es)?|in|um|µm|μm|microns?)\\b");
  private static final Pattern PREAMBLE_SIDE =
      Pattern.compile("(?i)\\b(?:side|layer)\\s*[:=]\\s*([\\p{L}.]+)");

  /** More headings than this are no headings. */
  private static final int MOST_HEADINGS = 200;

  private final TableKind kind;
  private final String file;
  private final Cut cut;
  private final List<Problem> problems = new ArrayList<>();
  private final List<TableRow> rows = new ArrayList<>();
  private final NavigableMap<Integer, String> headings = new TreeMap<>();
  private Optional<String> unitBelow = Optional.empty();
  private Optional<Place> value = Optional.empty();
  private Set<Integer> merged = Set.of();

  private TableReader(TableKind kind, String file, Cut cut) {
    this.kind = kind;
    this.file = file;
    this.cut = cut;
  }

  /** The table that {@code bytes} hold; never throws. */
  static Table read(TableKind kind, String file, byte[] bytes, ColumnMap map) {
    if (Workbook.isOne(bytes)) {
      return read(kind, file, Workbook.of(file, bytes), map);
    }
    TextOfFile text = TextOfFile.of(file, bytes).with(OddQuotes::plain);
    var cut =
        text.text().isEmpty()
            ? new Cut(Separator.COMMA, List.of(), new Header(-1, List.of(), List.of()), List.of())
            : Cut.of(kind, file, text.text(), map);
    var reader = new TableReader(kind, file, cut);
    reader.problems.addAll(text.problems());
    reader.problems.addAll(cut.problems());
    if (!text.text().isEmpty()) {
      reader.readRows(map);
    }
    return reader.table(text.encoding());
  }

  private static Table read(TableKind kind, String file, Workbook workbook, ColumnMap map) {
    var reader = new TableReader(kind, file, Cut.of(kind, file, workbook, map));
    reader.problems.addAll(reader.cut.problems());
    if (workbook.problems().isEmpty()) {
      reader.readRows(map);
    }
    return reader.table("spreadsheet (Office Open XML)");
  }

  private void readRows(ColumnMap map) {
    if (!cut.header().isComplete(kind)) {
      problems.add(HeaderDoubts.noPairs(kind, file, cut).orElseGet(this::headerNotFound));
      return;
    }
    problems.addAll(HeaderDoubts.about(kind, file, cut, map));
    Header header = cut.header();
    List<Row> all = cut.rows();
    merged = MergedValues.lines(kind, header, all.subList(header.index() + 1, all.size()));
    for (int i = header.index() + 1; i < all.size(); i++) {
      Row row = all.get(i);
      if (isComment(row)) {
        continue;
      }
      Optional<Header> again = headerAgain(header, map, all, i);
      if (again.isPresent()) {
        header = again.get();
        value = Optional.empty();
      } else if (!headsValues(header, row, all.subList(i + 1, all.size()))) {
        Optional<Problem> remark = unitRow(header, row).or(remark(header, row));
        if (remark.isPresent()) {
          problems.add(remark.get());
          headSection(row);
          value = Optional.empty();
        } else {
          addRow(header, row);
        }
      }
    }
  }

  private boolean headsValues(Header header, Row row, List<Row> after) {
    Optional<Place> heading =
        kind == TableKind.BOM && !after.isEmpty()
            ? ValueHeading.in(file, header, row, after.get(0))
                .filter(
                    found ->
                        value.isPresent() || !ValueHeading.namesPart(header, row, after.get(0)))
            : Optional.empty();
    // Where values head rows, another word alone ends the rows of a value.
    boolean ends =
        heading.isEmpty()
            && value.isPresent()
            && row.filled() == 1
            && row.cells().stream().noneMatch(CellShapes::isDesignators);
    value = ends ? Optional.empty() : heading.or(() -> value);
    heading.map(ValueHeading::said).ifPresent(problems::add);
    if (ends) {
      problems.add(ignored(row));
    }
    return heading.isPresent() || ends;
  }

  private Problem ignored(Row row) {
    return new Problem(
        Kind.ROW_IGNORED,
        Place.ofLine(file, row.line()),
        "this row is one word between the rows of values, it was not read as a row",
        "nothing, unless it is a row");
  }

  private TableRow below(Header header, Row row) {
    return new TableRow(
        file, header, row, value.filter(heading -> ValueHeading.lacksValue(header, row)));
  }

  private Supplier<Optional<Problem>> remark(Header header, Row row) {
    return () -> Remarks.in(kind, file, header, rows, row);
  }

  /** A remark of one cell heads the rows below it, or states the unit after them. */
  private void headSection(Row row) {
    if (row.filled() == 1 && headings.size() < MOST_HEADINGS) {
      headings.put(
          row.line(), row.cells().stream().filter(cell -> !cell.isEmpty()).findFirst().orElse(""));
      unitBelow = unitBelow.or(() -> found(PREAMBLE_UNIT, List.of(row)).map(HeaderUnit::canonical));
    }
  }

  /** Below the header a row may name the units of the columns. */
  private Optional<Problem> unitRow(Header header, Row row) {
    if (!rows.isEmpty() || header.index() < 0) {
      return Optional.empty();
    }
    if (kind == TableKind.BOM) {
      return secondHeader(header, row);
    }
    if (kind != TableKind.PLACEMENTS) {
      return Optional.empty();
    }
    String unit = bare(row.cell(header.cellOf(Column.X)));
    boolean names =
        row.cell(header.cellOf(Column.DESIGNATOR)).isEmpty()
            && !unit.isEmpty()
            && Lengths.isUnit(HeaderUnit.canonical(unit))
            && unit.equals(bare(row.cell(header.cellOf(Column.Y))));
    if (!names) {
      return Optional.empty();
    }
    unitBelow = Optional.of(HeaderUnit.canonical(unit));
    return Optional.of(
        new Problem(
            Kind.ROW_IGNORED,
            Place.ofLine(file, row.line()),
            "this row names the units (" + unit + "), it was not read as a part",
            "nothing, unless it is a row"));
  }

  /** A word where the quantity belongs, and no number or designator anywhere: pieces, each. */
  private Optional<Problem> secondHeader(Header header, Row row) {
    boolean carriesOn =
        row.cell(header.cellOf(Column.DESIGNATORS)).isEmpty()
            && !row.cell(header.cellOf(Column.QUANTITY)).isEmpty()
            && row.cells().stream().noneMatch(TableReader::hasDigit);
    return carriesOn
        ? Optional.of(
            new Problem(
                Kind.ROW_IGNORED,
                Place.ofLine(file, row.line()),
                "this row carries on the header, it was not read as a part",
                "nothing, unless it is a row"))
        : Optional.empty();
  }

  private static String bare(String unit) {
    return unit.replaceAll("[()\\[\\]]", "").strip();
  }

  private void addRow(Header header, Row row) {
    int width = header.index() < 0 ? usualWidth() : header.names().size();
    boolean tooLong =
        row.size() > width
            && row.cells().subList(width, row.size()).stream().anyMatch(t -> !t.isEmpty());
    Optional<Row> joined = tooLong ? joined(header, row, width) : Optional.empty();
    if (joined.isPresent()) {
      int names = header.cellOf(Column.DESIGNATORS);
      Column parted =
          joined.get().cell(names).equals(row.cell(names)) ? Column.VALUE : Column.DESIGNATORS;
      rows.add(below(header, joined.get()));
      problems.add(
          new Problem(
              Kind.COLUMN_GUESSED,
              Place.ofLine(file, row.line()),
              "the row has more cells than the header; \""
                  + joined.get().cell(header.cellOf(parted))
                  + "\" was read as one cell of "
                  + parted.words(),
              "put quotes around a cell that holds a separator"));
      return;
    }
    if (continues(header, row)) {
      return;
    }
    rows.add(below(header, row));
    if (tooLong) {
      problems.add(
          new Problem(
              Kind.ROW_LENGTH,
              Place.ofCell(file, row.line(), width + 1, "", row.cell(width)),
              "the row has " + row.size() + " cells where " + width + " are usual",
              "put quotes around a cell that holds a separator"));
    }
  }

  /** Adds a row that only carries on the line above to it. */
  private boolean continues(Header header, Row row) {
    if (kind != TableKind.BOM || rows.isEmpty()) {
      return false;
    }
    Row above = rows.get(rows.size() - 1).row();
    boolean isMerged = merged.contains(row.line());
    if (!isMerged && !isMissing(header, above, row)) {
      return false;
    }
    int names = header.cellOf(Column.DESIGNATORS);
    int quantity = header.cellOf(Column.QUANTITY);
    String more = row.cell(names);
    var cells = new ArrayList<>(above.cells());
    cells.set(names, above.cell(names) + ", " + more);
    if (!row.cell(quantity).isEmpty()) {
      int both =
          WholeNumber.in(above.cell(quantity)).orElse(0)
              + WholeNumber.in(row.cell(quantity)).orElse(0);
      cells.set(quantity, both + "");
    }
    rows.set(rows.size() - 1, below(header, new Row(above.line(), cells)));
    problems.add(
        new Problem(
            Kind.COLUMN_GUESSED,
            Place.ofCell(file, row.line(), names + 1, header.name(names), more),
            isMerged
                ? "the row has no value, as below a merged cell; "
                    + more
                    + " was added to the line above"
                : "the row holds nothing but designators; they were added to the line above",
            isMerged
                ? "if it is another part, write its value into the row"
                : "if they are a line of their own, write its quantity and value"));
    return true;
  }

  /** Nothing but designators, where the line above has fewer than it counts: they belong to it. */
  private static boolean isMissing(Header header, Row above, Row row) {
    int names = header.cellOf(Column.DESIGNATORS);
    int counted = WholeNumber.in(above.cell(header.cellOf(Column.QUANTITY))).orElse(0);
    return row.filled() == 1
        && CellShapes.isDesignators(row.cell(names))
        && DesignatorList.parse(above.cell(names)).designators().size() < counted;
  }

  /** Designators, or a value with a decimal comma, that nobody quoted, put together again. */
  private Optional<Row> joined(Header header, Row row, int width) {
    int first = header.cellOf(Column.DESIGNATORS);
    int more = row.size() - width;
    boolean fits = first >= 0 && first < width && first + more < row.size();
    if (kind != TableKind.BOM || header.index() < 0 || !fits) {
      return Optional.empty();
    }
    List<String> names = row.cells().subList(first, first + more + 1);
    if (names.stream().allMatch(CellShapes::isDesignators)) {
      return Optional.of(joined(row, first, more, ", "));
    }
    int value = header.cellOf(Column.VALUE);
    return more == 1 && isPartedValue(row, value)
        ? Optional.of(joined(row, value, more, ","))
        : Optional.empty();
  }

  private static Row joined(Row row, int first, int more, String sign) {
    var cells = new ArrayList<>(row.cells().subList(0, first));
    cells.add(String.join(sign, row.cells().subList(first, first + more + 1)));
    cells.addAll(row.cells().subList(first + more + 1, row.size()));
    return new Row(row.line(), cells);
  }

  /** A whole number in the value's cell, and digits with a letter or unit in the one behind. */
  private static boolean isPartedValue(Row row, int value) {
    return row.cell(value).matches("\\d{1,3}")
        && row.cell(value + 1).matches("\\d{1,3}\\s?[kKMmuµnpRrΩ]\\p{L}{0,3}");
  }

  private int usualWidth() {
    return cut.rows().stream()
        .map(row -> row.size())
        .sorted()
        .skip(cut.rows().size() / 2)
        .findFirst()
        .orElse(0);
  }

  /** A comment, or a rule drawn with dashes; a lone # may also be a number column's header. */
  private static boolean isComment(Row row) {
    String first = row.cell(0);
    boolean comment =
        first.startsWith("##")
            || first.startsWith("# ")
            || (first.equals("#") && row.filled() == 1);
    return comment || isRule(row);
  }

  private static boolean isRule(Row row) {
    int dashes = 0;
    for (String cell : row.cells()) {
      for (int at = 0; at < cell.length(); at++) {
        if ("-=_*+ :|".indexOf(cell.charAt(at)) < 0) {
          return false;
        }
        dashes++;
      }
    }
    return dashes >= 3;
  }

  /** A header that stands again among the data, as where exports were joined. */
  private Optional<Header> headerAgain(Header header, ColumnMap map, List<Row> all, int index) {
    Row row = all.get(index);
    boolean other = header.index() >= 0 && isOtherHeader(row);
    if (header.index() < 0
        || !other
            && !row.cell(header.cellOf(kind.required().get(0)))
                .equals(header.name(header.cellOf(kind.required().get(0))))) {
      return Optional.empty();
    }
    boolean same = row.cells().equals(all.get(header.index()).cells());
    problems.add(
        new Problem(
            Kind.ROW_IGNORED,
            Place.ofLine(file, row.line()),
            "the header stands here again, it was not read as a row",
            "nothing, unless it is a row"));
    return Optional.of(same ? header : HeaderMatch.at(kind, file, map, all, index));
  }

  /** A header with its columns in another order, as where another table follows: only words. */
  private boolean isOtherHeader(Row row) {
    if (!kind.isExported()) {
      return false;
    }
    int filled = 0;
    boolean names = false;
    for (String cell : row.cells()) {
      if (cell.isEmpty()) {
        continue;
      }
      filled++;
      if (cell.length() > 40 || hasDigit(cell)) {
        return false;
      }
      List<HeaderWords.Match> matches = HeaderWords.matches(kind, cell);
      if (matches.stream().allMatch(HeaderWords.Match::isWeak)) {
        return false;
      }
      names |= matches.stream().anyMatch(m -> m.column() == kind.required().get(0));
    }
    return names && filled > 1;
  }

  private static boolean hasDigit(String cell) {
    for (int at = 0; at < cell.length(); at++) {
      if (Character.isDigit(cell.charAt(at))) {
        return true;
      }
    }
    return false;
  }

  private Problem headerNotFound() {
    String wanted = String.join(", ", kind.required().stream().map(Column::words).toList());
    return new Problem(
        Kind.HEADER_NOT_FOUND,
        Place.ofFile(file),
        "no line could be read as a header with: " + wanted,
        "name the columns, for example with --column "
            + kind.key()
            + "."
            + kind.required().get(0).key()
            + "=1 for the first column");
  }

  private Table table(String encoding) {
    List<Row> before = cut.rows().subList(0, Math.max(0, cut.header().index()));
    return new Table(
        file,
        kind,
        rows,
        cut.header(),
        found(PREAMBLE_UNIT, before).map(HeaderUnit::canonical).or(() -> unitBelow),
        found(PREAMBLE_SIDE, before),
        headings,
        understanding(encoding),
        problems);
  }

  private static Optional<String> found(Pattern pattern, List<Row> before) {
    for (Row row : before) {
      Matcher matcher = pattern.matcher(String.join(" ", row.cells()));
      if (matcher.find()) {
        return Optional.of(matcher.group(1).toLowerCase(Locale.ROOT));
      }
    }
    return Optional.empty();
  }

  private Understanding understanding(String encoding) {
    Header header = cut.header();
    var columns = new ArrayList<Understanding.UnderstoodColumn>();
    int width = header.index() < 0 ? usualWidth() : header.names().size();
    for (int cell = 0; cell < width; cell++) {
      columns.add(column(header, cell));
    }
    return new Understanding(
        file,
        kind.key(),
        encoding,
        cut.separator().words(),
        header.index() < 0 ? 0 : cut.rows().get(header.index()).line(),
        columns,
        List.of(),
        rows.size(),
        rows.stream().limit(3).map(row -> row.row().cells()).toList());
  }

  private Understanding.UnderstoodColumn column(Header header, int cell) {
    for (Header.Use use : header.uses()) {
      if (use.cell() == cell) {
        return new Understanding.UnderstoodColumn(
            cell + 1,
            header.name(cell),
            use.column().words(),
            kind.key() + "." + use.column().key(),
            use.basis().words());
      }
    }
    return new Understanding.UnderstoodColumn(cell + 1, header.name(cell), "", "", "");
  }
}
