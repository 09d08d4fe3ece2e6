package lowfirst.intake;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Finds which cell of a header row names which column. */
final class HeaderMatch {
  /** So much more of its cells must look right that one header gives way to another. */
  private static final double CLEARLY = 0.3;

  /** Share of cells that must be filled with designators where no word says that they are. */
  private static final double MOSTLY = 0.7;

  private static final double NEARLY_ALL = 0.9;

  /** Share of rows that name a part, without which a column names none. */
  private static final double LEAST = 0.3;

  /** Share of cells that may name a part, below which a likely header heads no designators. */
  private static final double FEW = 0.2;

  /** What a column that only numbers the rows can't be. */
  private static final Set<Column> TEXTS =
      EnumSet.of(Column.VALUE, Column.PACKAGE, Column.PART_TYPE, Column.DESCRIPTION);

  private final TableKind kind;
  private final Map<Column, String> told;
  private final List<Row> below;
  private final List<List<HeaderWords.Match>> matches = new ArrayList<>();
  private final List<String> names;
  private final List<Header.Use> uses = new ArrayList<>();
  private final boolean[] taken;
  private Optional<CoordinatePair> pair = Optional.empty();

  private HeaderMatch(
      TableKind kind, Map<Column, String> told, List<String> names, List<Row> below) {
    this.kind = kind;
    this.told = told;
    this.below = below;
    this.names = new ArrayList<>(names);
    this.taken = new boolean[names.size()];
    names.forEach(name -> matches.add(HeaderWords.matches(kind, name)));
  }

  /**
   * How the header at {@code index} names the columns of the rows after it.
   *
   * @param told what the user says of columns: a header or number each
   */
  static Header at(TableKind kind, Map<Column, String> told, List<Row> rows, int index) {
    boolean ruled = index + 1 < rows.size() && CellShapes.isDrawn(rows.get(index + 1));
    int first = index + (ruled ? 2 : 1);
    List<Row> below = rows.subList(first, Math.min(rows.size(), first + 200));
    var match = new HeaderMatch(kind, told, HeaderNames.of(kind, rows, index), below);
    match.useWhatIsTold();
    match.useSureHeaders();
    match.usePair();
    match.useLikelyHeaders();
    match.useDesignatorsByCells();
    match.useFittedByCells();
    match.usePlacedByCells();
    match.useValueBehind();
    return new Header(index, match.names, match.uses, match.pair);
  }

  /**
   * What {@link #at} can score with a row at most, told by its words alone, which spares most rows
   * a look at those below.
   */
  static int highestScore(TableKind kind, Map<Column, String> told, List<Row> rows, int index) {
    // Designators, fitted and a value by their cells; a position that is told has two halves.
    int highest = 3 + 3 * told.size() + (told.containsKey(Column.POSITION) ? 6 : 0);
    for (String name : HeaderNames.of(kind, rows, index)) {
      int most = 0;
      for (HeaderWords.Match match : HeaderWords.matches(kind, name)) {
        int score = match.column() == Column.POSITION ? 7 : match.isWeak() ? 1 : 3;
        most = Math.max(most, score);
      }
      highest += most;
    }
    return highest;
  }

  private void useWhatIsTold() {
    told.forEach(
        (column, name) -> {
          int cell = cellNamed(name, names, names.size());
          if (cell >= 0 && !taken[cell]) {
            use(column, cell, Header.Basis.TOLD);
          }
        });
  }

  /** The column of this name, else of this number from 1; -1 when there is none. */
  static int cellNamed(String told, List<String> names, int width) {
    for (int i = 0; i < names.size(); i++) {
      if (HeaderWords.key(names.get(i)).equals(HeaderWords.key(told))) {
        return i;
      }
    }
    return told.matches("\\d{1,3}") && Integer.parseInt(told) <= width
        ? Integer.parseInt(told) - 1
        : -1;
  }

  private void useSureHeaders() {
    for (Column column : columns()) {
      int cell = best(column, 0, HeaderWords.WEAK);
      if (cell >= 0) {
        int better = betterByCells(column, cell);
        use(column, better, better == cell ? Header.Basis.HEADER : Header.Basis.CELLS);
      }
    }
  }

  /** Of several sure headers of one column, the one whose cells look clearly more like it. */
  private int betterByCells(Column column, int first) {
    int best = first;
    for (int other = 0; other < names.size(); other++) {
      boolean rival =
          other != first
              && !taken[other]
              && matches.get(other).stream().anyMatch(m -> m.column() == column && !m.isWeak());
      if (rival && likeness(column, other) > likeness(column, best) + CLEARLY) {
        best = other;
      }
    }
    return best;
  }

  /** How much the cells of a column look like what it should hold, 0 to 1. */
  private double likeness(Column column, int cell) {
    return switch (column) {
      case DESIGNATORS, DESIGNATOR -> CellShapes.designatorShare(below, cell);
      case QUANTITY -> CellShapes.countingShare(below, cell, designators());
      case X, Y, ROTATION -> CellShapes.numberShare(below, cell);
      case SIDE -> CellShapes.sideShare(below, cell);
      default -> 0;
    };
  }

  private int designators() {
    for (Header.Use use : uses) {
      if (use.column() == Column.DESIGNATORS) {
        return use.cell();
      }
    }
    return -1;
  }

  private void useLikelyHeaders() {
    for (Column column : columns()) {
      int cell =
          column == Column.DESIGNATORS || column == Column.DESIGNATOR
              ? likeliestDesignators(column)
              : best(column, HeaderWords.WEAK, Integer.MAX_VALUE);
      boolean fits =
          switch (column) {
            case QUANTITY -> cell >= 0 && CellShapes.areQuantities(below, cell);
            case FITTED -> cell >= 0 && CellShapes.fittedShare(below, cell) > 0.9;
            default -> cell >= 0;
          };
      boolean names = fits && column == kind.required().get(0) && kind.isExported();
      boolean numbers = names && CellShapes.numberShare(below, cell) == 1;
      boolean nameless = names && kind == TableKind.BOM && !below.isEmpty() && namesFew(cell);
      boolean other = names && (numbers || nameless && sure() > 0 || areKnownElsewhere(cell));
      if (other && cellOfDesignators() >= 0) {
        use(column, cellOfDesignators(), Header.Basis.CELLS);
      } else if (fits && !nameless) {
        use(column, cell, Header.Basis.LIKELY_HEADER);
      }
    }
  }

  /** Whether another column of a BOM has names of parts that are clearly surer. */
  private boolean areKnownElsewhere(int cell) {
    int other = kind == TableKind.BOM ? cellOfDesignators() : -1;
    return other >= 0
        && other != cell
        && CellShapes.knownShare(below, other) > CellShapes.knownShare(below, cell) + CLEARLY;
  }

  /** What to buy, under a word that may as well head designators: part, item. */
  private boolean namesFew(int cell) {
    return CellShapes.nameShare(below, cell) < FEW;
  }

  /** Under a word that nobody knows, where two others at least are sure to head columns. */
  private void useDesignatorsByCells() {
    Column designators = kind.required().get(0);
    boolean missing = !isUsed(designators) && !told.containsKey(designators);
    if (!kind.isExported() || !missing || sure() < 2) {
      return;
    }
    int best = cellOfDesignators();
    Optional<Header.Use> text = kind == TableKind.BOM ? textOfDesignators(best) : Optional.empty();
    if (text.isPresent()) {
      Column column = text.get().column();
      uses.remove(text.get());
      uses.add(new Header.Use(designators, text.get().cell(), Header.Basis.CELLS));
      int other = best(column, 0, HeaderWords.WEAK);
      if (other >= 0) {
        use(column, other, Header.Basis.HEADER);
      }
    } else if (best >= 0) {
      use(designators, best, Header.Basis.CELLS);
    }
  }

  /** Designators under a word for part numbers or such, surer ones than in the free column. */
  private Optional<Header.Use> textOfDesignators(int free) {
    double least = free < 0 ? NEARLY_ALL : CellShapes.knownShare(below, free) + CLEARLY;
    return uses.stream()
        .filter(use -> TEXTS.contains(use.column()) && use.basis() == Header.Basis.HEADER)
        .filter(use -> CellShapes.filledShare(below, use.cell()) > NEARLY_ALL)
        .filter(use -> CellShapes.designatorShare(below, use.cell()) > NEARLY_ALL)
        .filter(use -> CellShapes.knownShare(below, use.cell()) > least)
        .findFirst();
  }

  /** The free column that holds designators nearly everywhere; -1 without one. */
  private int cellOfDesignators() {
    int best = -1;
    double most = MOSTLY;
    for (int cell = 0; cell < names.size(); cell++) {
      // "R2, Fitted, Not Fitted" is a row.
      boolean mayHead =
          !taken[cell]
              && !CellShapes.isDesignators(names.get(cell))
              && !(kind == TableKind.BOM && namesFew(cell));
      double share = mayHead ? CellShapes.designatorShare(below, cell) : 0;
      if (share > most && isFilled(cell)) {
        best = cell;
        most = share;
      }
    }
    return best;
  }

  /**
   * Parts that have no place on the board leave such a column empty; the others have known names.
   */
  private boolean isFilled(int cell) {
    double filled = CellShapes.filledShare(below, cell);
    return filled > MOSTLY || (filled > LEAST && CellShapes.knownShare(below, cell) > MOSTLY);
  }

  /** The only column whose cells say whether parts are fitted, whatever stands over it. */
  private void useFittedByCells() {
    if (kind != TableKind.BOM
        || isUsed(Column.FITTED)
        || isUsed(Column.NOT_FITTED)
        || told.containsKey(Column.FITTED)) {
      return;
    }
    List<Integer> telling =
        IntStream.range(0, names.size())
            .filter(cell -> !taken[cell] && leavesOut(cell))
            .boxed()
            .toList();
    if (telling.size() == 1 && CellShapes.fittedShare(below, telling.get(0)) == 1) {
      use(Column.FITTED, telling.get(0), Header.Basis.CELLS);
    }
  }

  /** What the cells of a placement list show, where no header names it. */
  private void usePlacedByCells() {
    if (kind != TableKind.PLACEMENTS || !isUsed(Column.X)) {
      return;
    }
    if (!isUsed(Column.SIDE) && !isUsed(Column.MIRROR)) {
      useByCells(
          Column.MIRROR,
          cell -> names.get(cell).isEmpty() && CellShapes.areMirrorMarks(below, cell));
    }
    if (!isUsed(Column.MIRROR)) {
      useByCells(Column.SIDE, cell -> CellShapes.tellSides(below, cell));
    }
    useByCells(
        Column.ROTATION,
        cell -> CellShapes.areTurns(below, cell) || CellShapes.areQuarterTurns(below, cell));
  }

  private void useByCells(Column column, IntPredicate shows) {
    if (isUsed(column) || told.containsKey(column)) {
      return;
    }
    IntStream.range(0, names.size())
        .filter(cell -> !taken[cell] && shows.test(cell))
        .findFirst()
        .ifPresent(cell -> use(column, cell, Header.Basis.CELLS));
  }

  /** One header over designators and values: all rows go on by a cell, where no header stands. */
  private void useValueBehind() {
    int behind = names.size();
    boolean missing = isUsed(Column.DESIGNATORS) && !isUsed(Column.VALUE);
    if (kind != TableKind.BOM || !missing || below.isEmpty() || told.containsKey(Column.VALUE)) {
      return;
    }
    // Words under a likely header alone are what to buy.
    if (sure() == 0 && CellShapes.nameShare(below, designators()) < MOSTLY) {
      return;
    }
    long longer = below.stream().filter(row -> row.size() == behind + 1).count();
    boolean words =
        CellShapes.designatorShare(below, behind) < MOSTLY
            && CellShapes.wholeShare(below, behind) < 1 - MOSTLY;
    if (longer > NEARLY_ALL * below.size()
        && CellShapes.filledShare(below, behind) > MOSTLY
        && words) {
      names.add("");
      uses.add(new Header.Use(Column.VALUE, behind, Header.Basis.CELLS));
    }
  }

  private boolean leavesOut(int cell) {
    return below.stream().map(row -> row.cell(cell)).distinct().anyMatch(FittedSigns::mayLeaveOut);
  }

  private long sure() {
    return uses.stream().filter(use -> use.basis() == Header.Basis.HEADER).count();
  }

  /** X and y in one cell: only where neither has a column of its own. */
  private void usePair() {
    if (kind != TableKind.PLACEMENTS || isUsed(Column.X) || isUsed(Column.Y)) {
      return;
    }
    for (int cell = 0; cell < names.size() && pair.isEmpty(); cell++) {
      if (mayHoldPairs(cell)) {
        pair = CoordinatePair.in(below, cell);
      }
      if (pair.isPresent()) {
        if (!taken[cell]) {
          use(Column.POSITION, cell, Header.Basis.LIKELY_HEADER);
        }
        use(Column.X, cell, Header.Basis.HALF);
        use(Column.Y, cell, Header.Basis.HALF);
      }
    }
  }

  /** The column told for it, or a free one that is headed so. */
  private boolean mayHoldPairs(int cell) {
    if (isUsed(Column.POSITION)) {
      return uses.stream().anyMatch(u -> u.column() == Column.POSITION && u.cell() == cell);
    }
    return !taken[cell]
        && matches.get(cell).stream()
            .filter(match -> match.column() == Column.POSITION)
            .anyMatch(match -> !match.isWeak() || CoordinatePair.areTelling(below, cell));
  }

  private boolean isUsed(Column column) {
    return uses.stream().anyMatch(use -> use.column() == column);
  }

  /** Columns that no header names yet: the required ones first. */
  private Set<Column> columns() {
    var wanted = new LinkedHashSet<>(kind.required());
    wanted.addAll(EnumSet.allOf(Column.class));
    wanted.remove(Column.POSITION);
    wanted.removeAll(told.keySet());
    uses.forEach(use -> wanted.remove(use.column()));
    return wanted;
  }

  private int best(Column column, int fromRank, int belowRank) {
    int best = -1;
    int bestRank = belowRank;
    for (int cell = 0; cell < names.size(); cell++) {
      for (HeaderWords.Match match : matches.get(cell)) {
        if (!taken[cell]
            && match.column() == column
            && match.rank() >= fromRank
            && match.rank() < bestRank
            && !(match.isWeak() && TEXTS.contains(column) && saysLittle(column, cell))) {
          best = cell;
          bestRank = match.rank();
        }
      }
    }
    return best;
  }

  /** A number for each row, or how its part is mounted, which a package may tell. */
  private boolean saysLittle(Column column, int cell) {
    return CellShapes.numbersRows(below, cell)
        || (column != Column.PACKAGE && CellShapes.areMountings(below, cell));
  }

  /** Among likely headers, the one whose cells look most like designators; the surer on a tie. */
  private int likeliestDesignators(Column column) {
    var byRank = new TreeMap<Integer, Integer>();
    for (int cell = 0; cell < names.size(); cell++) {
      for (HeaderWords.Match match : matches.get(cell)) {
        if (!taken[cell] && match.column() == column && match.isWeak()) {
          byRank.putIfAbsent(match.rank(), cell);
        }
      }
    }
    int best = -1;
    double most = -1;
    for (int cell : byRank.values()) {
      double share = CellShapes.designatorShare(below, cell);
      if (share > most + 0.1) {
        best = cell;
        most = share;
      }
    }
    return best;
  }

  private void use(Column column, int cell, Header.Basis basis) {
    uses.add(new Header.Use(column, cell, basis));
    taken[cell] = true;
  }
}
