package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Reads the bytes of one file as a table of one kind; its cells are read by others. */
final class TableReader {
  /** More headings than this are no headings. */
  private static final int MOST_HEADINGS = 200;

  private final TableKind kind;
  private final String file;
  private final Cut cut;
  private final int width;
  private final List<Problem> problems = new ArrayList<>();
  private final List<TableRow> rows;
  private final NavigableMap<Integer, String> headings = new TreeMap<>();
  private Optional<String> unitBelow = Optional.empty();
  private Optional<Place> value = Optional.empty();
  private Set<Integer> merged = Set.of();
  private boolean isInOtherTable;
  private Optional<String> otherUnit = Optional.empty();
  private Optional<ListedAgain> second = Optional.empty();

  private TableReader(TableKind kind, String file, Cut found) {
    this.kind = kind;
    this.file = file;
    this.cut = MoreDesignators.joined(kind, file, found);
    this.rows = new ArrayList<>(cut.rows().size());
    this.width = width(found);
  }

  /** The table that {@code bytes} hold; never throws. */
  static Table read(TableKind kind, String file, byte[] bytes, ColumnMap map) {
    if (Workbook.isOne(bytes)) {
      return read(kind, file, Workbook.of(file, bytes), map);
    }
    TextOfFile text =
        TextOfFile.of(file, bytes)
            .with(ZeroWidthSigns::dropped)
            .with(WideSigns::plain)
            .with(OddQuotes::plain)
            .with(PipeTable::plain)
            .with(TickBoxes::dropped)
            .with(LeaderDots::blanked);
    var cut =
        text.text().isEmpty()
            ? new Cut(Separator.COMMA, List.of(), new Header(-1, List.of(), List.of()), List.of())
            : LikeliestCut.of(kind, file, text.text(), map);
    var reader = new TableReader(kind, file, cut);
    reader.problems.addAll(text.problems());
    reader.problems.addAll(reader.cut.problems());
    if (!text.text().isEmpty()) {
      reader.readRows(map);
    }
    return reader.table(text.encoding());
  }

  private static Table read(TableKind kind, String file, Workbook workbook, ColumnMap map) {
    var reader = new TableReader(kind, file, LikeliestSheet.of(kind, file, workbook, map));
    reader.problems.addAll(reader.cut.problems());
    if (workbook.problems().isEmpty()) {
      reader.readRows(map);
    }
    return reader.table("spreadsheet (Office Open XML)");
  }

  private void readRows(ColumnMap map) {
    if (!cut.header().isComplete(kind)) {
      problems.add(NoHeader.in(kind, file, cut));
      return;
    }
    problems.addAll(HeaderDoubts.about(kind, file, cut, map));
    Header header = cut.header();
    List<Row> all = cut.rows();
    PageHeads pages = PageHeads.in(all.subList(0, Math.max(0, header.index())));
    above(header, all.subList(0, Math.max(0, header.index())));
    merged = MergedValues.lines(kind, header, all.subList(header.index() + 1, all.size()));
    for (int i = header.index() + 1; i < all.size(); i++) {
      Row row = unnumbered(header, all.get(i));
      boolean comments = Comments.are(row);
      if (comments && !(kind.isExported() && Comments.mayBePart(row))) {
        unitBelow = unitBelow.or(() -> Preamble.unit(List.of(row)));
        continue;
      }
      if (comments || row.cell(0).startsWith("//")) {
        problems.add(ignored(row, "this was taken for a comment, it was not read as a row"));
        continue;
      }
      if (pages.have(row)) {
        problems.add(ignored(row, "this stands above the header, too, it was not read as a row"));
        continue;
      }
      Optional<Header> again = headerAgain(header, map, all, i);
      if (again.isPresent()) {
        header = again.get();
        second = second.or(() -> Optional.of(new ListedAgain(row.line(), rows.size())));
        value = Optional.empty();
        isInOtherTable = !header.isComplete(kind);
      } else if (isInOtherTable || headsOtherTable(all, i)) {
        isInOtherTable = true;
      } else if (kind != TableKind.BOM
          || !headsValues(header, row, all.subList(i + 1, all.size()))) {
        Optional<Problem> remark = unitRow(header, row);
        if (remark.isEmpty()) {
          remark = Remarks.in(kind, file, header, rows, row);
        }
        if (remark.isPresent()) {
          problems.add(remark.get());
          Remarks.leavingOut(kind, file, row).ifPresent(problems::add);
          headSection(row);
          value = Optional.empty();
        } else {
          addRow(header, row);
        }
      }
    }
    second.filter(found -> kind == TableKind.BOM && found.isIn(rows)).ifPresent(this::leaveOut);
  }

  /** A heading over parts that are left out, without the number that every row begins with. */
  private Row unnumbered(Header header, Row row) {
    if (kind != TableKind.BOM || row.fillsMoreThan(2) || row.filled() < 2) {
      return row;
    }
    int number = row.firstFilled();
    boolean read = header.uses().stream().anyMatch(use -> use.cell() == number);
    var rest = new ArrayList<>(row.cells());
    rest.set(number, "");
    var heading = new Row(row.line(), rest);
    return !read
            && WholeNumber.in(row.cell(number)).isPresent()
            && FittedSigns.leaveOut(heading.cell(heading.firstFilled()))
        ? heading
        : row;
  }

  private void leaveOut(ListedAgain again) {
    rows.subList(again.rows(), rows.size()).clear();
    problems.add(
        new Problem(
            Kind.ROW_IGNORED,
            Place.ofLine(file, again.line()),
            "from here on the same parts are listed again, they were not read twice",
            "nothing, unless the board has them twice"));
  }

  /** Where somebody sorted all rows, the header stands among them: those above are read, too. */
  private void above(Header header, List<Row> before) {
    List<Row> parts = RowAbove.parts(kind, header, before);
    parts.forEach(row -> addRow(header, row));
    if (!parts.isEmpty()) {
      problems.add(
          new Problem(
              Kind.COLUMN_GUESSED,
              Place.ofLine(file, parts.get(0).line()),
              "rows from here on stand above the header; those with a designator ("
                  + parts.size()
                  + ") were read, too",
              "if they are no parts, delete them, else put the header above them"));
    }
  }

  /** Whether a row of a BOM is the value of the rows below it, or ends such rows. */
  private boolean headsValues(Header header, Row row, List<Row> after) {
    Optional<Place> heading =
        !after.isEmpty()
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
      problems.add(
          ignored(
              row, "this row is one word between the rows of values, it was not read as a row"));
    }
    return heading.isPresent() || ends;
  }

  private Problem ignored(Row row, String why) {
    return new Problem(
        Kind.ROW_IGNORED, Place.ofLine(file, row.line()), why, "nothing, unless it is a row");
  }

  private TableRow below(Header header, Row row) {
    boolean isHeaded = value.isPresent() && ValueHeading.lacksValue(header, row);
    return new TableRow(file, header, row, isHeaded ? value : Optional.empty());
  }

  /** A remark of one cell heads the rows below it, or states the unit after them. */
  private void headSection(Row row) {
    if (row.filled() == 1 && headings.size() < MOST_HEADINGS) {
      headings.put(row.line(), row.cell(row.firstFilled()));
      unitBelow = unitBelow.or(() -> Preamble.unit(List.of(row)));
    }
  }

  /** The rows right below the header may carry it on, or name the units of the columns. */
  private Optional<Problem> unitRow(Header header, Row row) {
    if (!rows.isEmpty() || header.index() < 0) {
      return Optional.empty();
    }
    if (kind == TableKind.BOM) {
      return HeaderRow.carriesOn(header, row)
          ? Optional.of(ignored(row, "this row carries on the header, it was not read as a part"))
          : Optional.empty();
    }
    Optional<String> unit =
        kind == TableKind.PLACEMENTS ? HeaderRow.unit(header, row) : Optional.empty();
    unitBelow = unit.map(HeaderUnit::canonical).or(() -> unitBelow);
    return unit.map(
        named ->
            ignored(row, "this row names the units (" + named + "), it was not read as a part"));
  }

  private void addRow(Header header, Row written) {
    Row row =
        otherUnit.isPresent() ? HeaderRow.withUnit(header, written, otherUnit.get()) : written;
    int width = header.index() < 0 ? this.width : header.names().size();
    boolean tooLong =
        row.size() > width
            && row.cells().subList(width, row.size()).stream().anyMatch(t -> !t.isEmpty());
    Optional<JoinedCells> joined =
        tooLong ? JoinedCells.in(kind, header, row, width) : Optional.empty();
    if (joined.isPresent()) {
      rows.add(below(header, joined.get().row()));
      problems.add(joined.get().said(file));
      return;
    }
    if (continues(header, row)) {
      return;
    }
    if (tooLong && cut.separator() == Separator.BLANKS && isProse(header, row)) {
      problems.add(ignored(row, "this looks like a remark, it was not read as a row"));
      return;
    }
    Optional<EmptyCells> empty =
        isShort(row, width) ? EmptyCells.in(kind, header, row, width) : Optional.empty();
    rows.add(below(header, empty.map(EmptyCells::row).orElse(row)));
    if (tooLong) {
      problems.add(
          new Problem(
              Kind.ROW_LENGTH,
              Place.ofCell(file, row.line(), width + 1, "", row.cell(width)),
              "the row has " + row.size() + " cells where " + width + " are usual",
              CellShapes.isDesignators(row.cell(width))
                  ? "give each part a row of its own; put quotes around a cell that holds a"
                      + " separator"
                  : "put quotes around a cell that holds a separator"));
    } else if (empty.isPresent()) {
      problems.add(empty.get().said(file, row, header, width));
    } else if (isShort(row, width)) {
      problems.add(
          new Problem(
              Kind.ROW_LENGTH,
              Place.ofLine(file, row.line()),
              "the row has "
                  + row.size()
                  + " cells where "
                  + width
                  + " are usual: one may be empty, and which can't be told",
              "write a dash into an empty cell"));
    }
  }

  /** Without commas or tabs, nothing tells which cell an uneven row lacks. */
  private boolean isShort(Row row, int width) {
    return row.size() < width
        && (cut.separator() == Separator.BLANKS || cut.separator() == Separator.SIGNS);
  }

  /** Many words, of which the one that should name a part has no digit. */
  private boolean isProse(Header header, Row row) {
    String name = row.cell(header.cellOf(kind.required().get(0)));
    return row.size() > width + 2 && name.chars().noneMatch(Character::isDigit);
  }

  /** Adds a row that only carries on the line above to it. */
  private boolean continues(Header header, Row row) {
    if (kind != TableKind.BOM || rows.isEmpty()) {
      return false;
    }
    Row above = rows.get(rows.size() - 1).row();
    boolean isMerged = merged.contains(row.line());
    if (!isMerged && !RunOnRow.isMissing(header, above, row)) {
      return false;
    }
    rows.set(rows.size() - 1, below(header, RunOnRow.joined(header, above, row)));
    problems.add(RunOnRow.said(file, header, row, isMerged));
    return true;
  }

  /** How many cells a row has: as many as the header, else as the middle one of all. */
  private static int width(Cut cut) {
    if (cut.separator() == Separator.LINES) {
      return PartLines.CELLS;
    }
    return cut.header().index() >= 0
        ? cut.header().names().size()
        : cut.rows().stream()
            .map(Row::size)
            .sorted()
            .skip(cut.rows().size() / 2)
            .findFirst()
            .orElse(0);
  }

  /** A header that stands again among the data, as where exports were joined. */
  private Optional<Header> headerAgain(Header header, ColumnMap map, List<Row> all, int index) {
    Row row = all.get(index);
    if (!HeaderRow.isAgain(kind, header, row)) {
      return Optional.empty();
    }
    boolean same = row.cells().equals(all.get(header.index()).cells());
    Header again = same ? header : HeaderMatch.at(kind, map.columns(kind, file), all, index);
    problems.add(
        again.isComplete(kind)
            ? ignored(row, "the header stands here again, it was not read as a row")
            : headsNothingRead(row, again));
    otherUnit = HeaderRow.otherUnit(cut.header(), again);
    return Optional.of(again);
  }

  private Problem headsNothingRead(Row row, Header again) {
    List<String> missing =
        kind.required().stream()
            .filter(column -> again.cellOf(column) < 0)
            .map(Column::words)
            .toList();
    return new Problem(
        Kind.COLUMN_MISSING,
        Place.ofLine(file, row.line()),
        "another header stands here, without "
            + String.join(" and ", missing)
            + "; the rows below it were not read",
        "name those columns as in line " + cut.rows().get(cut.header().index()).line());
  }

  /** In notes, after a blank line: words with a rule below them, about something else. */
  private boolean headsOtherTable(List<Row> all, int index) {
    Row row = all.get(index);
    boolean heads =
        cut.separator() == Separator.BAR
            && (!rows.isEmpty() || cut.header().index() >= 0)
            && index > 0
            && index + 1 < all.size()
            && Comments.isRule(all.get(index + 1))
            && row.line() > all.get(index - 1).line() + 1
            && HeaderRow.isWords(row);
    if (heads) {
      problems.add(ignored(row, "another table begins here that lists no parts, it was not read"));
    }
    return heads;
  }

  private Table table(String encoding) {
    List<Row> before = cut.before();
    return new Table(
        file,
        kind,
        rows,
        cut.header(),
        Preamble.unit(before).or(() -> unitBelow),
        Preamble.side(before),
        headings,
        Understanding.of(kind, cut, width, encoding, file, rows),
        problems);
  }
}
