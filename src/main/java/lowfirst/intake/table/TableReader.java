package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.cell.FittedSigns;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.HeaderRow;
import lowfirst.intake.column.HeaderUnit;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.Separator;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.column.WholeNumber;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Reads the bytes of one file as a table of one kind; its cells are read by others. */
public final class TableReader {
  /** More headings than this are no headings. */
  private static final int MOST_HEADINGS = 200;

  private final TableKind kind;
  private final String file;
  private Cut cut;
  private final int width;
  private final List<Problem> problems = new ArrayList<>();
  private final List<TableRow> rows;
  private final NavigableMap<Integer, String> headings = new TreeMap<>();
  private Optional<String> unitBelow = Optional.empty();
  private final ValueHeading value;
  private Header header;
  private Set<Integer> merged = Set.of();
  private Set<String> packages = Set.of();
  private boolean isInOtherTable;
  private Optional<String> otherUnit = Optional.empty();
  private Optional<ListedAgain> second = Optional.empty();

  private TableReader(TableKind kind, String file, Cut found) {
    this.kind = kind;
    this.file = file;
    this.cut = MoreDesignators.joined(kind, file, found);
    this.rows = new ArrayList<>(cut.rows().size());
    this.width = width(found);
    this.header = cut.header();
    this.value = new ValueHeading(file);
  }

  /** The table that {@code bytes} hold; never throws. */
  public static Table read(TableKind kind, String file, byte[] bytes, ColumnMap map) {
    return read(kind, DecodedFile.of(file, bytes), map);
  }

  /** The file as a table of this kind; never throws. */
  public static Table read(TableKind kind, DecodedFile decoded, ColumnMap map) {
    var reader = new TableReader(kind, decoded.file(), cut(kind, decoded, map));
    reader.problems.addAll(decoded.textProblems());
    reader.problems.addAll(reader.cut.problems());
    if (!decoded.isEmpty()) {
      reader.readRows(map);
    }
    return reader.table(decoded.form());
  }

  private static Cut cut(TableKind kind, DecodedFile decoded, ColumnMap map) {
    if (decoded.sheets().isPresent()) {
      return LikeliestSheet.of(kind, decoded.file(), decoded.sheets().get(), map);
    }
    return decoded.isEmpty()
        ? new Cut(Separator.COMMA, List.of(), new Header(-1, List.of(), List.of()), List.of())
        : LikeliestCut.of(kind, decoded.file(), decoded.text(), map);
  }

  private void readRows(ColumnMap map) {
    if (!header.isComplete(kind)) {
      Optional<NamelessList> list =
          map.columns(kind, file).isEmpty() ? NamelessList.in(kind, cut) : Optional.empty();
      problems.add(list.isPresent() ? NoHeader.overParts(file, cut) : NoHeader.in(kind, file, cut));
      list.ifPresent(this::readNameless);
      return;
    }
    problems.addAll(HeaderDoubts.about(kind, file, cut, map));
    List<Row> all = cut.rows();
    int first = header.index() + 1;
    List<Row> before = all.subList(0, Math.max(0, header.index()));
    PageHeads pages = PageHeads.in(before);
    above(before);
    merged = MergedValues.lines(kind, header, all.subList(first, all.size()));
    for (int i = first; i < all.size(); i++) {
      Row row = Remarks.whole(cut.separator(), unnumbered(all.get(i)));
      if (!isPassedOver(row, pages)) {
        readRow(row, all, i, map);
      }
    }
    second
        .filter(again -> kind == TableKind.BOM && again.isIn(rows))
        .ifPresent(
            again -> {
              rows.subList(again.rows(), rows.size()).clear();
              problems.add(again.said(file));
            });
  }

  /** Without designators, what there is to buy can still be told. */
  private void readNameless(NamelessList list) {
    header = list.header();
    cut = new Cut(cut.separator(), cut.rows(), header, cut.problems());
    list.rows().forEach(this::add);
    list.passedOver(file).ifPresent(problems::add);
  }

  /** Comments, and what stands on every page. */
  private boolean isPassedOver(Row row, PageHeads pages) {
    boolean comment = Comments.are(row);
    if (comment && !(kind.isExported() && Comments.mayBePart(row))) {
      unitBelow = unitBelow.or(() -> Preamble.unit(List.of(row)));
      Comments.heading(cut.separator(), row).ifPresent(this::headSection);
      return true;
    }
    if (comment || row.cell(0).startsWith("//")) {
      problems.add(ignored(row, "this was taken for a comment, it was not read as a row"));
      return true;
    }
    if (pages.have(row)) {
      problems.add(ignored(row, "this stands above the header, too, it was not read as a row"));
      return true;
    }
    return false;
  }

  private void readRow(Row row, List<Row> all, int index, ColumnMap map) {
    Optional<Header> again = headerAgain(map, all, index);
    if (again.isPresent()) {
      header = again.get();
      second = second.or(() -> Optional.of(new ListedAgain(row.line(), rows.size())));
      value.end();
      isInOtherTable = !header.isComplete(kind);
      return;
    }
    isInOtherTable = isInOtherTable || headsOtherTable(all, index);
    if (isInOtherTable) {
      return;
    }
    Optional<Problem> heading =
        kind == TableKind.BOM
            ? value.take(header, row, all.subList(index + 1, all.size()))
            : Optional.empty();
    if (heading.isPresent()) {
      problems.add(heading.get());
      return;
    }
    // Between blanks, more designators stand below the wrong column.
    if (kind == TableKind.BOM
        && cut.separator() == Separator.WIDE_BLANKS
        && row.filled() == 1
        && continues(RunOnRow.moved(header, row))) {
      return;
    }
    Optional<Problem> remark = unitRow(row).or(() -> Remarks.in(kind, file, header, rows, row));
    if (remark.isPresent()) {
      problems.add(remark.get());
      Remarks.leavingOut(kind, file, row).ifPresent(problems::add);
      headSection(row);
      value.end();
    } else {
      addRow(row);
    }
  }

  /** A heading over parts that are left out, without the number that every row begins with. */
  private Row unnumbered(Row row) {
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

  /** Where somebody sorted all rows, the header stands among them: those above are read, too. */
  private void above(List<Row> before) {
    List<Row> parts = RowAbove.parts(kind, header, before);
    parts.forEach(this::addRow);
    if (!parts.isEmpty()) {
      problems.add(RowAbove.said(file, parts));
    }
    RowAbove.lost(kind, file, header, before, parts).ifPresent(problems::add);
  }

  private Problem ignored(Row row, String why) {
    return new Problem(
        Kind.ROW_IGNORED, Place.ofLine(file, row.line()), why, "nothing, unless it is a row");
  }

  private void add(Row written) {
    Row row = UnitColumn.joined(kind, header, written);
    rows.add(new TableRow(file, header, row, value.over(header, row)));
  }

  /** A remark of one cell heads the rows below it, or states the unit after them. */
  private void headSection(Row row) {
    if (row.filled() == 1 && headings.size() < MOST_HEADINGS) {
      headings.put(row.line(), row.cell(row.firstFilled()));
      unitBelow = unitBelow.or(() -> Preamble.unit(List.of(row)));
    }
  }

  /** The rows right below the header may carry it on, or name the units of the columns. */
  private Optional<Problem> unitRow(Row row) {
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

  private void addRow(Row written) {
    Row row = otherUnit.map(unit -> HeaderRow.withUnit(header, written, unit)).orElse(written);
    int usual = header.index() < 0 ? width : header.names().size();
    boolean tooLong =
        row.size() > usual
            && row.cells().subList(usual, row.size()).stream().anyMatch(text -> !text.isEmpty());
    Optional<JoinedCells> joined = tooLong ? joined(row, usual) : Optional.empty();
    if (joined.isPresent()) {
      add(joined.get().row());
      problems.add(joined.get().said(file));
    } else if (!continues(row)) {
      if (tooLong) {
        addLong(row, usual);
      } else if (isShort(row, usual)) {
        addShort(row, usual);
      } else {
        add(row);
      }
    }
  }

  private Optional<JoinedCells> joined(Row row, int usual) {
    if (kind != TableKind.PLACEMENTS || cut.separator() != Separator.BLANKS) {
      return JoinedCells.in(kind, header, row, usual);
    }
    if (packages.isEmpty()) {
      packages = JoinedCells.packages(header, cut.rows(), usual);
    }
    return JoinedCells.betweenBlanks(header, row, usual, packages);
  }

  private void addLong(Row row, int usual) {
    if (cut.separator() == Separator.BLANKS && isProse(row)) {
      problems.add(ignored(row, "this looks like a remark, it was not read as a row"));
      return;
    }
    add(row);
    problems.add(
        new Problem(
            Kind.ROW_LENGTH,
            Place.ofCell(file, row.line(), usual + 1, "", row.cell(usual)),
            "the row has " + row.size() + " cells where " + usual + " are usual",
            CellShapes.isDesignators(row.cell(usual))
                ? "give each part a row of its own; put quotes around a cell that holds a separator"
                : "put quotes around a cell that holds a separator"));
  }

  private void addShort(Row row, int usual) {
    Optional<EmptyCells> empty = EmptyCells.in(kind, header, row, usual);
    add(empty.map(EmptyCells::row).orElse(row));
    problems.add(
        empty
            .map(cells -> cells.said(file, row, header, usual))
            .orElseGet(() -> EmptyCells.untold(file, row, usual)));
  }

  /** Without commas or tabs, nothing tells which cell an uneven row lacks. */
  private boolean isShort(Row row, int width) {
    return row.size() < width
        && (cut.separator() == Separator.BLANKS || cut.separator() == Separator.SIGNS);
  }

  /** Many words, of which the one that should name a part has no digit. */
  private boolean isProse(Row row) {
    String name = row.cell(header.cellOf(kind.required().get(0)));
    return row.size() > width + 2 && name.chars().noneMatch(Character::isDigit);
  }

  /** Adds a row that only carries on the line above to it. */
  private boolean continues(Row row) {
    if (kind != TableKind.BOM || rows.isEmpty()) {
      return false;
    }
    Row above = rows.get(rows.size() - 1).row();
    boolean isMerged = merged.contains(row.line());
    if (!isMerged && !RunOnRow.isMissing(header, above, row)) {
      return false;
    }
    rows.remove(rows.size() - 1);
    add(RunOnRow.joined(header, above, row));
    problems.add(RunOnRow.said(file, header, row, isMerged));
    return true;
  }

  /** How many cells a row has: as many as the header, else as is usual. */
  private static int width(Cut cut) {
    if (cut.separator() == Separator.LINES) {
      return PartLines.CELLS;
    }
    return cut.header().index() >= 0 ? cut.header().names().size() : cut.width();
  }

  /** A header that stands again among the data, as where exports were joined. */
  private Optional<Header> headerAgain(ColumnMap map, List<Row> all, int index) {
    Row row = all.get(index);
    if (!HeaderRow.isAgain(kind, header, row)) {
      return Optional.empty();
    }
    boolean same = row.cells().equals(all.get(header.index()).cells());
    Header again = same ? header : HeaderMatch.at(kind, map.columns(kind, file), all, index);
    problems.add(
        again.isComplete(kind)
            ? ignored(row, "the header stands here again, it was not read as a row")
            : HeaderRow.lacking(
                kind, again, Place.ofLine(file, row.line()), all.get(cut.header().index())));
    otherUnit = HeaderRow.otherUnit(cut.header(), again);
    return Optional.of(again);
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

  private List<Row> whole() {
    return cut.rows().stream().map(row -> Remarks.whole(cut.separator(), row)).toList();
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
        headings.isEmpty() ? Set.of() : BlankLines.before(cut.header(), whole()),
        Understanding.of(kind, cut, width, encoding, file, rows),
        problems);
  }
}
