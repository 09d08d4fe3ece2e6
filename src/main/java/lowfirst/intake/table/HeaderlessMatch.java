package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.CoordinatePair;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;

/** Tells the columns of a table without a header by what stands in their cells. */
final class HeaderlessMatch {
  private static final Set<Column> LENGTHS = EnumSet.of(Column.X, Column.Y, Column.POSITION);

  private static final Set<Column> PLACED =
      EnumSet.of(Column.X, Column.Y, Column.ROTATION, Column.SIDE);

  /** Parts whose value is a number. */
  private static final Pattern VALUED = Pattern.compile("[RCL]\\d+");

  /** A number with a prefix or a unit, or nothing behind it, at the start of a text. */
  private static final Pattern VALUE =
      Pattern.compile(
          "(?U)^\\d*[.,]?\\d+\\s*(?:[pnuµμmkKMGRΩ]\\d*|(?i:ohms?|mf|uf|nf|pf|uh|mh|nh|h|f))?(?![\\w-])");

  /** A number with a prefix or a unit at the start of a text. */
  private static final Pattern MEASURED =
      Pattern.compile(
          "(?U)^\\d*[.,]?\\d+\\s*(?:[pnuµμmkKMGR]\\d*(?i:ohms?|[fhΩ])?|(?i:ohms?|[fhΩ]))(?![\\w-])");

  private final TableKind kind;
  private final List<Row> rows;
  private final List<String> names;
  private final int width;
  private final List<Header.Use> uses = new ArrayList<>();
  private final boolean[] taken;
  private final Set<Column> told = EnumSet.noneOf(Column.class);
  private Optional<CoordinatePair> pair = Optional.empty();

  /** More lines about the file stand before no header. */
  private static final int MOST_BEFORE = 20;

  /** Share of rows that name a part, without which a text is no list of parts. */
  private static final double FILLED = 0.4;

  /** Share of cells that may name a part, below which they are type numbers of what to buy. */
  private static final double NAMING = 0.2;

  /** Share of rows whose number counts their designators, from which a column is the quantity. */
  private static final double COUNTING = 0.8;

  private HeaderlessMatch(TableKind kind, List<Row> rows, List<String> names) {
    this.kind = kind;
    this.rows = rows;
    this.names = names;
    this.width = Math.max(names.size(), rows.stream().mapToInt(Row::size).max().orElse(0));
    this.taken = new boolean[width];
  }

  /** The columns of {@code rows}; incomplete when they can't be told. */
  static Header of(TableKind kind, Map<Column, String> told, List<Row> rows) {
    int strange = strangeHeader(rows);
    List<String> names = strange < 0 ? List.of() : rows.get(strange).cells();
    List<Row> below = below(rows, strange);
    var match = new HeaderlessMatch(kind, below, names);
    told.forEach((column, name) -> match.useTold(column, name, names));
    if (kind == TableKind.BOM) {
      match.tellBom();
    } else {
      match.tellPlacements();
    }
    int header = strange >= 0 ? strange : match.firstRowIsHeader() ? 0 : -1;
    return new Header(
        header, header < 0 ? List.of() : rows.get(header).cells(), match.uses, match.pair);
  }

  /** Rows below another that are more than drawn, as many as tell. */
  private static List<Row> below(List<Row> rows, int index) {
    return rows.subList(index + 1, Math.min(rows.size(), 400)).stream()
        .filter(row -> !CellShapes.isDrawn(row))
        .toList();
  }

  /** What is told bars every guess, also where no such column is found. */
  private void useTold(Column column, String name, List<String> names) {
    told.add(column);
    use(column, HeaderMatch.cellNamed(name, names, width), Header.Basis.TOLD);
  }

  /** The row of a header that nobody knows, which lines about the file may precede; -1 without. */
  private static int strangeHeader(List<Row> rows) {
    return IntStream.range(0, Math.min(MOST_BEFORE, rows.size() - 2))
        .takeWhile(index -> index == 0 || !namesPart(rows.get(index - 1)))
        .filter(index -> isStrangeHeader(rows.subList(index, rows.size())))
        .findFirst()
        .orElse(-1);
  }

  private static boolean namesPart(Row row) {
    return row.cells().stream().anyMatch(CellShapes::isDesignators);
  }

  /** A first row without a digit, where all others hold designators, is a header nobody knows. */
  private static boolean isStrangeHeader(List<Row> rows) {
    Row first = rows.get(0);
    boolean digits = first.cells().stream().anyMatch(c -> c.chars().anyMatch(Character::isDigit));
    List<Row> below = below(rows, 0).stream().filter(row -> row.fillsMoreThan(1)).toList();
    // Of three words over the columns, one may stand over parts that have no place on the board.
    double filled = first.filled() > 2 ? 0.5 : 0.95;
    return !digits
        && !CellShapes.isDrawn(first)
        && first.filled() > 1
        && IntStream.range(0, first.cells().size())
            .anyMatch(
                cell ->
                    CellShapes.designatorShare(below, cell) > 0.95
                        && CellShapes.filledShare(below, cell) > filled);
  }

  /**
   * A first row without a number, where all others have one, is a header nobody knows; a single
   * word above wider rows is a title.
   */
  private boolean firstRowIsHeader() {
    if (width > 1 && !rows.isEmpty() && !rows.get(0).fillsMoreThan(1)) {
      return false;
    }
    for (Header.Use use : uses) {
      boolean names = use.column() == Column.DESIGNATORS || use.column() == Column.DESIGNATOR;
      if (names && !rows.isEmpty() && CellShapes.isDesignators(rows.get(0).cell(use.cell()))) {
        return false;
      }
    }
    for (Header.Use use : uses) {
      boolean numeric = use.column() == Column.QUANTITY || use.column() == Column.X;
      List<Row> first = rows.subList(0, Math.min(1, rows.size()));
      if (numeric
          && CellShapes.numberShare(first, use.cell()) == 0
          && CellShapes.numberShare(rows, use.cell()) > 0.6) {
        return true;
      }
    }
    return false;
  }

  private void tellBom() {
    for (int cell = 0; cell < width; cell++) {
      taken[cell] |= isPlaced(cell);
    }
    tellNamed();
    int designators = designators();
    tell(Column.DESIGNATORS, designators);
    int counting = first(cell -> CellShapes.countingShare(rows, cell, designators) > COUNTING);
    tell(
        Column.QUANTITY,
        counting >= 0
            ? counting
            : first(cell -> CellShapes.countForBoards(rows, cell, designators)));
    int numbers =
        first(
            cell ->
                CellShapes.wholeShare(rows, cell) > 0.9 && !CellShapes.areQuantities(rows, cell));
    if (numbers >= 0 && numbers < width - 1) {
      taken[numbers] = true;
    }
    // Of what is left, a value is what varies and stands first; a part number comes later.
    int written = first(cell -> areValues(cell, designators));
    int value =
        written >= 0
            ? written
            : first(
                cell ->
                    CellShapes.filledShare(rows, cell) > 0.5
                        && CellShapes.wholeShare(rows, cell) < 0.9);
    tell(
        Column.VALUE, value >= 0 ? value : first(cell -> CellShapes.filledShare(rows, cell) > 0.5));
    tell(Column.PACKAGE, first(cell -> CellShapes.packageShare(rows, cell) > 0.5));
    // Prices, links and dealers' numbers are none.
    tell(
        Column.PART_TYPE,
        first(
            cell ->
                CellShapes.filledShare(rows, cell) > 0.3
                    && CellShapes.numberShare(rows, cell) < 0.9
                    && CellShapes.linkShare(rows, cell) < 0.5
                    && CellShapes.orderNumberShare(rows, cell) < 0.5));
  }

  private void tellPlacements() {
    tell(Column.DESIGNATOR, designators());
    tellNamed();
    tell(Column.SIDE, first(cell -> CellShapes.sideShare(rows, cell) > 0.9));
    tell(Column.MIRROR, first(cell -> CellShapes.areMirrorMarks(rows, cell)));
    tell(Column.ROTATION, first(cell -> CellShapes.areTurns(rows, cell)));
    List<Integer> numbers =
        IntStream.range(0, width)
            .filter(cell -> !taken[cell] && CellShapes.numberShare(rows, cell) > 0.9)
            .boxed()
            .toList();
    List<Integer> lengths = numbers.stream().filter(cell -> !isNamed(cell)).toList();
    if (lengths.size() < 2 && !tellPair(numbers)) {
      return;
    }
    if (pair.isEmpty()) {
      tell(Column.X, lengths.get(0));
      tell(Column.Y, lengths.get(1));
    }
    List<Integer> others = numbers.stream().filter(cell -> !taken[cell]).toList();
    others.stream()
        .filter(cell -> CellShapes.areAngles(rows, cell))
        .reduce((one, later) -> later)
        .or(() -> others.size() == 1 ? others.stream().findFirst() : Optional.empty())
        .ifPresent(cell -> tell(Column.ROTATION, cell));
    tell(
        Column.PACKAGE,
        first(cell -> !numbers.contains(cell) && CellShapes.packageShare(rows, cell) > 0.4));
    if (!mayBeValues(text(numbers))) {
      tell(Column.PACKAGE, text(numbers));
    }
    tell(Column.VALUE, text(numbers));
    tell(Column.PACKAGE, text(numbers));
    tell(Column.VALUE, sparse(numbers));
  }

  /** The only free column with words, of which most rows have none; -1 without, or of several. */
  private int sparse(List<Integer> numbers) {
    int[] free =
        IntStream.range(0, width)
            .filter(cell -> !taken[cell] && !numbers.contains(cell))
            .filter(cell -> CellShapes.filledShare(rows, cell) > 0)
            .toArray();
    return free.length == 1 && mayBeValues(free[0]) ? free[0] : -1;
  }

  /** What sure words of a header tell that has a strange one, whatever the cells look like. */
  private void tellNamed() {
    for (Column column : Column.values()) {
      if (!LENGTHS.contains(column)) {
        tell(column, first(cell -> names(cell, column)));
      }
    }
  }

  private boolean names(int cell, Column column) {
    return cell < names.size()
        && HeaderWords.matches(kind, names.get(cell)).stream()
            .anyMatch(match -> match.column() == column && !match.isWeak());
  }

  /** Whether no part whose value is a number has a text without one in this column. */
  private boolean mayBeValues(int cell) {
    int designator = cellOf(Column.DESIGNATOR);
    List<String> texts =
        rows.stream()
            .filter(row -> VALUED.matcher(row.cell(designator)).matches())
            .map(row -> row.cell(cell))
            .filter(text -> !text.isEmpty())
            .toList();
    return texts.isEmpty() || texts.stream().anyMatch(text -> VALUE.matcher(text).find());
  }

  /** Whether most parts whose value is a number have one here, with a prefix or a unit. */
  private boolean areValues(int cell, int designators) {
    List<String> texts =
        rows.stream()
            .filter(row -> VALUED.matcher(row.cell(designators)).lookingAt())
            .map(row -> row.cell(cell))
            .toList();
    long values = texts.stream().filter(text -> MEASURED.matcher(text).find()).count();
    return values > texts.size() * 0.6;
  }

  private int cellOf(Column column) {
    return uses.stream()
        .filter(use -> use.column() == column)
        .mapToInt(Header.Use::cell)
        .findFirst()
        .orElse(-1);
  }

  /** Whether a sure word says that a column of numbers holds others, such as angles or counts. */
  private boolean isNamed(int cell) {
    return cell < names.size()
        && (isNamed(cell, TableKind.PLACEMENTS, column -> !LENGTHS.contains(column))
            || isNamed(cell, TableKind.BOM, column -> column == Column.QUANTITY));
  }

  private boolean isNamed(int cell, TableKind kind, Predicate<Column> wanted) {
    return HeaderWords.matches(kind, names.get(cell)).stream()
        .anyMatch(match -> !match.isWeak() && wanted.test(match.column()));
  }

  /** Whether a header names what only a placement list has. */
  private boolean isPlaced(int cell) {
    return cell < names.size()
        && HeaderWords.matches(TableKind.PLACEMENTS, names.get(cell)).stream()
            .anyMatch(match -> !match.isWeak() && PLACED.contains(match.column()));
  }

  /** X and y in one cell; whether there is such a column. */
  private boolean tellPair(List<Integer> numbers) {
    for (int cell = 0; cell < width && pair.isEmpty(); cell++) {
      boolean told = uses.contains(new Header.Use(Column.POSITION, cell, Header.Basis.TOLD));
      boolean free = !taken[cell] && !numbers.contains(cell);
      if (told || (free && CoordinatePair.areTelling(rows, cell))) {
        pair = CoordinatePair.in(rows, cell);
      }
      if (pair.isPresent()) {
        tell(Column.POSITION, cell);
        uses.add(new Header.Use(Column.X, cell, Header.Basis.HALF));
        uses.add(new Header.Use(Column.Y, cell, Header.Basis.HALF));
      }
    }
    return pair.isPresent();
  }

  /** The first column that is still free, mostly filled, and holds more than numbers. */
  private int text(List<Integer> numbers) {
    return first(cell -> !numbers.contains(cell) && CellShapes.filledShare(rows, cell) > 0.5);
  }

  private int designators() {
    int best = -1;
    double most = 0.6;
    double names = 0;
    for (int cell = 0; cell < width; cell++) {
      double named = kind == TableKind.BOM ? CellShapes.nameShare(rows, cell) : 1;
      boolean mayName =
          !taken[cell] && CellShapes.filledShare(rows, cell) > FILLED && named > NAMING;
      double share = mayName ? CellShapes.designatorShare(rows, cell) : 0;
      // Type numbers may look like designators, too.
      boolean likelier = best >= 0 && share == most && names < 0.5 && named > names;
      if (share > most || likelier) {
        best = cell;
        most = share;
        names = named;
      }
    }
    return best;
  }

  private int first(java.util.function.IntPredicate fits) {
    return IntStream.range(0, width)
        .filter(cell -> !taken[cell] && fits.test(cell))
        .findFirst()
        .orElse(-1);
  }

  private void tell(Column column, int cell) {
    boolean known = uses.stream().anyMatch(use -> use.column() == column);
    if (cell >= 0 && !known && !told.contains(column)) {
      use(column, cell, names(cell, column) ? Header.Basis.HEADER : Header.Basis.CELLS);
    }
  }

  private void use(Column column, int cell, Header.Basis basis) {
    if (cell >= 0 && !taken[cell]) {
      uses.add(new Header.Use(column, cell, basis));
      taken[cell] = true;
    }
  }
}
