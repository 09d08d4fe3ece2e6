package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.CoordinatePair;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.HeaderNames;
import lowfirst.intake.column.HeaderUses;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;

/** Finds which cell of a header row names which column. */
public final class HeaderMatch {
  private final TableKind kind;
  private final Map<Column, String> told;
  private final List<Row> below;
  private final List<String> names;
  private final List<List<HeaderWords.Match>> matches = new ArrayList<>();
  private final HeaderUses uses;
  private final ColumnsByCells cells;
  private Optional<CoordinatePair> pair = Optional.empty();

  private HeaderMatch(
      TableKind kind, Map<Column, String> told, List<String> names, List<Row> below) {
    this.kind = kind;
    this.told = told;
    this.below = below;
    this.uses = new HeaderUses(kind, told, names);
    this.names = uses.names();
    this.cells = new ColumnsByCells(uses, below);
    names.forEach(name -> matches.add(HeaderWords.matches(kind, name)));
  }

  /**
   * How the header at {@code index} names the columns of the rows after it.
   *
   * @param told what the user says of columns: a header or number each
   */
  public static Header at(TableKind kind, Map<Column, String> told, List<Row> rows, int index) {
    boolean ruled = index + 1 < rows.size() && CellShapes.isDrawn(rows.get(index + 1));
    int first = index + (ruled ? 2 : 1);
    List<Row> below = withoutRepeats(rows, index, first, Math.min(rows.size(), first + 200));
    var match = new HeaderMatch(kind, told, HeaderNames.of(kind, rows, index), below);
    match.useWhatIsTold();
    match.useSureHeaders();
    match.usePair();
    match.useLikelyHeaders();
    match.useDesignatorsByCells();
    match.cells.useFitted();
    match.cells.usePackages();
    match.cells.useKind();
    match.cells.usePlaced();
    match.cells.useValueBehind();
    return new Header(index, match.names, match.uses.all(), match.pair);
  }

  /** The rows of a span, without those that say the header again, as on each page. */
  private static List<Row> withoutRepeats(List<Row> rows, int index, int from, int to) {
    List<String> header = rows.get(index).cells();
    List<Row> span = rows.subList(from, to);
    for (Row row : span) {
      if (row.cells().equals(header)) {
        return span.stream().filter(other -> !other.cells().equals(header)).toList();
      }
    }
    return span;
  }

  /**
   * What {@link #at} can score with a row at most, told by its words alone, which spares most rows
   * a look at those below.
   *
   * @param ofWords what single cells score at most, kept from row to row, since cells repeat
   */
  public static int highestScore(
      TableKind kind,
      Map<Column, String> told,
      List<Row> rows,
      int index,
      Map<String, Integer> ofWords) {
    // Designators, fitted and a value by their cells; a position that is told has two halves.
    int highest = 3 + 3 * told.size() + (told.containsKey(Column.POSITION) ? 6 : 0);
    for (String name : HeaderNames.of(kind, rows, index)) {
      highest += ofWords.computeIfAbsent(name, words -> highestScore(kind, words));
    }
    return highest;
  }

  private static int highestScore(TableKind kind, String words) {
    int most = 0;
    for (HeaderWords.Match match : HeaderWords.matches(kind, words)) {
      int score = match.column() == Column.POSITION ? 7 : match.isWeak() ? 1 : 3;
      most = Math.max(most, score);
    }
    return most;
  }

  private void useWhatIsTold() {
    told.forEach(
        (column, name) -> {
          int cell = cellNamed(name, names, names.size());
          if (cell >= 0 && uses.isFree(cell)) {
            uses.add(column, cell, Header.Basis.TOLD);
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
    for (Column column : uses.wanted()) {
      int cell = best(column, 0, HeaderWords.WEAK);
      if (cell >= 0) {
        int better = betterByCells(column, cell);
        uses.add(column, better, better == cell ? Header.Basis.HEADER : Header.Basis.CELLS);
      }
    }
  }

  /** Of several sure headers of one column, the one whose cells look clearly more like it. */
  private int betterByCells(Column column, int first) {
    int best = first;
    for (int other = 0; other < names.size(); other++) {
      boolean rival =
          other != first
              && uses.isFree(other)
              && matches.get(other).stream().anyMatch(m -> m.column() == column && !m.isWeak());
      if (rival
          && cells.likeness(column, other)
              > cells.likeness(column, best) + ColumnsByCells.CLEARLY) {
        best = other;
      }
    }
    return best;
  }

  private void useLikelyHeaders() {
    for (Column column : uses.wanted()) {
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
      boolean nameless = names && kind == TableKind.BOM && !below.isEmpty() && cells.namesFew(cell);
      boolean other =
          names && (numbers || nameless && uses.sure() > 0 || cells.areKnownElsewhere(cell));
      if (other && cells.designators() >= 0) {
        uses.add(column, cells.designators(), Header.Basis.CELLS);
      } else if (fits && !nameless) {
        uses.add(column, cell, Header.Basis.LIKELY_HEADER);
      }
    }
  }

  /** Under a word that nobody knows, where two others at least are sure to head columns. */
  private void useDesignatorsByCells() {
    Column designators = kind.required().get(0);
    if (!kind.isExported() || !uses.lacks(designators) || uses.sure() < 2) {
      return;
    }
    int best = cells.designators();
    Optional<Header.Use> text = cells.textOfDesignators(best);
    if (text.isPresent()) {
      Column column = text.get().column();
      uses.replace(text.get(), designators, Header.Basis.CELLS);
      int other = best(column, 0, HeaderWords.WEAK);
      if (other >= 0) {
        uses.add(column, other, Header.Basis.HEADER);
      }
    } else if (best >= 0) {
      uses.add(designators, best, Header.Basis.CELLS);
    }
  }

  /** X and y in one cell: only where neither has a column of its own. */
  private void usePair() {
    if (kind != TableKind.PLACEMENTS || uses.has(Column.X) || uses.has(Column.Y)) {
      return;
    }
    for (int cell = 0; cell < names.size() && pair.isEmpty(); cell++) {
      if (mayHoldPairs(cell)) {
        pair = CoordinatePair.in(below, cell);
      }
      if (pair.isPresent()) {
        if (uses.isFree(cell)) {
          uses.add(Column.POSITION, cell, Header.Basis.LIKELY_HEADER);
        }
        uses.add(Column.X, cell, Header.Basis.HALF);
        uses.add(Column.Y, cell, Header.Basis.HALF);
      }
    }
  }

  /** The column told for it, or a free one that is headed so. */
  private boolean mayHoldPairs(int cell) {
    if (uses.has(Column.POSITION)) {
      return uses.cellOf(Column.POSITION) == cell;
    }
    return uses.isFree(cell)
        && matches.get(cell).stream()
            .filter(match -> match.column() == Column.POSITION)
            .anyMatch(match -> !match.isWeak() || CoordinatePair.areTelling(below, cell));
  }

  private int best(Column column, int fromRank, int belowRank) {
    int best = -1;
    int bestRank = belowRank;
    for (int cell = 0; cell < names.size(); cell++) {
      for (HeaderWords.Match match : matches.get(cell)) {
        int rank = rank(match, cell);
        if (uses.isFree(cell)
            && match.column() == column
            && match.rank() >= fromRank
            && rank < bestRank
            && !(ColumnsByCells.TEXTS.contains(column)
                && (match.isWeak()
                    ? cells.saysLittle(column, cell)
                        || column == Column.PART_TYPE
                            && (cells.areNamesBesideValues(cell) || describes(cell))
                    : column == Column.PART_TYPE && cells.tellKindsOfSeveralValues(cell)))) {
          best = cell;
          bestRank = rank;
        }
      }
    }
    return best;
  }

  /** A likely header of values that stands over few gives way to all others. */
  private int rank(HeaderWords.Match match, int cell) {
    boolean last = match.isWeak() && match.column() == Column.VALUE && cells.isSparse(cell);
    return match.rank() + (last ? HeaderWords.WEAK : 0);
  }

  /** Words under a header that may head descriptions as well, where nothing else does. */
  private boolean describes(int cell) {
    return uses.lacks(Column.DESCRIPTION)
        && matches.get(cell).stream().anyMatch(m -> m.column() == Column.DESCRIPTION)
        && cells.describeSeveralValues(cell);
  }

  /** Among likely headers, the one whose cells look most like designators; the surer on a tie. */
  private int likeliestDesignators(Column column) {
    var byRank = new TreeMap<Integer, Integer>();
    for (int cell = 0; cell < names.size(); cell++) {
      for (HeaderWords.Match match : matches.get(cell)) {
        if (uses.isFree(cell) && match.column() == column && match.isWeak()) {
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
}
