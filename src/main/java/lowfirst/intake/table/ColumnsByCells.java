package lowfirst.intake.table;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import lowfirst.board.Designator;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.cell.FittedSigns;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.HeaderRow;
import lowfirst.intake.column.HeaderUses;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.kind.KindOfLine;
import lowfirst.intake.kind.PartKindGuess;
import lowfirst.intake.kind.PartKindWords;
import lowfirst.marking.WrittenValue;
import lowfirst.part.PartKind;
import lowfirst.quantity.Dimension;

/** What the cells below a header show of its columns, where its words leave that open. */
final class ColumnsByCells {
  /** So much more of its cells must look right that one column gives way to another. */
  static final double CLEARLY = 0.3;

  /** Share of cells that must be filled with designators where no word says that they are. */
  private static final double MOSTLY = 0.7;

  private static final double NEARLY_ALL = 0.9;

  /** Share of rows that name a part, without which a column names none. */
  private static final double LEAST = 0.3;

  /**
   * Share of cells that may name a part, below which a likely header heads no designators; share of
   * strange ones that are passed over.
   */
  private static final double FEW = 0.2;

  /** What a column that only numbers the rows can't be. */
  static final Set<Column> TEXTS =
      EnumSet.of(Column.VALUE, Column.PACKAGE, Column.PART_TYPE, Column.DESCRIPTION);

  /** Share of cells that say no more than a kind of part, from which a column is about kinds. */
  private static final double MANY = 0.6;

  /** What the unit of a value tells apart. */
  private static final List<Dimension> MEASURED =
      List.of(Dimension.RESISTANCE, Dimension.CAPACITANCE, Dimension.INDUCTANCE);

  private static final Pattern NAME = Pattern.compile("(?i)((part|component) ?)?name");

  /** Letters and digits without a blank. */
  private static final Pattern TYPE_NUMBER =
      Pattern.compile("(?U)(?=\\S*\\p{L})(?=\\S*\\d)[\\w./+-]{3,}");

  private final HeaderUses uses;
  private final List<Row> below;

  ColumnsByCells(HeaderUses uses, List<Row> below) {
    this.uses = uses;
    this.below = below;
  }

  /** How much the cells of a column look like what it should hold, 0 to 1. */
  double likeness(Column column, int cell) {
    return switch (column) {
      case DESIGNATORS, DESIGNATOR -> CellShapes.designatorShare(below, cell);
      case QUANTITY -> CellShapes.countingShare(below, cell, uses.cellOf(Column.DESIGNATORS));
      case X, Y, ROTATION -> CellShapes.numberShare(below, cell);
      case SIDE -> CellShapes.sideShare(below, cell);
      default -> 0;
    };
  }

  /** Whether another column of a BOM has names of parts that are clearly surer. */
  boolean areKnownElsewhere(int cell) {
    int other = uses.kind() == TableKind.BOM ? designators() : -1;
    return other >= 0
        && other != cell
        && CellShapes.knownShare(below, other) > CellShapes.knownShare(below, cell) + CLEARLY;
  }

  /** What to buy, under a word that may as well head designators: part, item. */
  boolean namesFew(int cell) {
    return CellShapes.nameShare(below, cell) < FEW;
  }

  /** Whether few rows have such a cell, so that another likely header stands over more. */
  boolean isSparse(int cell) {
    return !below.isEmpty() && CellShapes.filledShare(below, cell) < LEAST;
  }

  /**
   * A number for each row, its kind, the same word in all of them, or how its part is mounted,
   * which a package may tell.
   */
  boolean saysLittle(Column column, int cell) {
    return CellShapes.numbersRows(below, cell)
        || tellKinds(cell)
        || (column != Column.PACKAGE
            && (saysOneWord(cell)
                || CellShapes.areMountings(below, cell)
                || (uses.lacks(Column.PACKAGE) && arePackages(cell))));
  }

  /**
   * Whether the cells of a BOM's column only tell the kinds of its parts: in words, or in letters
   * of which there are several, and never another than a resistor's, capacitor's or inductor's.
   */
  boolean tellKinds(int cell) {
    if (uses.kind() != TableKind.BOM || !uses.has(Column.DESIGNATORS)) {
      return false;
    }
    var kinds = EnumSet.noneOf(PartKind.class);
    boolean worded = false;
    int filled = 0;
    int telling = 0;
    int others = 0;
    for (Row row : below) {
      String text = row.cell(cell);
      filled += text.isEmpty() ? 0 : 1;
      Optional<PartKind> kind = PartKindWords.byName(text);
      if (kind.isPresent()) {
        telling++;
        kinds.add(kind.get());
        worded |= text.length() > 2;
        others += isAnother(row, kind.get()) ? 1 : 0;
      }
    }
    return telling > MANY * filled && (worded || kinds.size() > 1) && others <= FEW * telling;
  }

  /** Whether all rows, of three at least, have the same word. */
  private boolean saysOneWord(int cell) {
    List<String> texts =
        below.stream().map(row -> row.cell(cell)).filter(text -> !text.isEmpty()).toList();
    return texts.size() > 2
        && !HeaderRow.hasDigit(texts.get(0))
        && texts.stream().allMatch(texts.get(0)::equals);
  }

  /** Whether most cells are names of packages, each of one word. */
  private boolean arePackages(int cell) {
    return CellShapes.packageShare(below, cell) > MANY
        && below.stream().allMatch(row -> row.cell(cell).indexOf(' ') < 0);
  }

  /** The free column of a BOM that holds packages, whatever stands over it. */
  void usePackages() {
    if (uses.kind() == TableKind.BOM) {
      useByCells(Column.PACKAGE, this::arePackages);
    }
  }

  /** The same: such words stand beside several values, which no type number does. */
  boolean tellKindsOfSeveralValues(int cell) {
    return tellKinds(cell) && standBesideSeveralValues(cell, text -> !text.isEmpty());
  }

  /** Whether words that describe parts stand beside several values: 1/4W metal film. */
  boolean describeSeveralValues(int cell) {
    return standBesideSeveralValues(cell, text -> text.indexOf(' ') > 0);
  }

  private boolean standBesideSeveralValues(int cell, Predicate<String> counts) {
    int value = uses.cellOf(Column.VALUE);
    if (value < 0) {
      return false;
    }
    var values = new HashMap<String, String>();
    return below.stream()
        .filter(row -> counts.test(row.cell(cell)) && !row.cell(value).isEmpty())
        .anyMatch(
            row ->
                !values
                    .computeIfAbsent(row.cell(cell), first -> row.cell(value))
                    .equals(row.cell(value)));
  }

  /**
   * Letters of other kinds beside them, or values, show that the words tell what a part is for, or
   * in which folder its drawing lies.
   */
  private boolean isAnother(Row row, PartKind kind) {
    String value = row.cell(uses.cellOf(Column.VALUE));
    boolean measured =
        kind.measures().isPresent()
            && !WrittenValue.showsUnit(value, kind.measures().get())
            && MEASURED.stream().anyMatch(other -> WrittenValue.showsUnit(value, other));
    return measured || hasOtherLetters(row, kind);
  }

  private boolean hasOtherLetters(Row row, PartKind kind) {
    return DesignatorList.parse(row.cell(uses.cellOf(Column.DESIGNATORS))).designators().stream()
        .limit(1)
        .map(Designator::prefix)
        .filter(letters -> !letters.equals(KindOfLine.EITHER))
        .flatMap(letters -> PartKindWords.byLetters(letters).stream())
        .anyMatch(usual -> !PartKindGuess.areKin(usual, kind));
  }

  /** The free column that only tells kinds, whatever stands over it. */
  void useKind() {
    if (uses.kind() == TableKind.BOM) {
      useByCells(Column.KIND, this::tellKinds);
    }
  }

  /**
   * Whether a likely header such as name stands, beside values, over what parts are for: at most
   * half of such cells could be type numbers.
   */
  boolean areNamesBesideValues(int cell) {
    if (uses.lacks(Column.VALUE) || !NAME.matcher(uses.names().get(cell).strip()).matches()) {
      return false;
    }
    List<String> texts =
        below.stream().map(row -> row.cell(cell)).filter(text -> !text.isEmpty()).toList();
    long numbers = texts.stream().filter(text -> TYPE_NUMBER.matcher(text).matches()).count();
    return numbers * 2 <= texts.size();
  }

  /** Designators under a word for part numbers or such, surer ones than in the free column. */
  Optional<Header.Use> textOfDesignators(int free) {
    double least = free < 0 ? NEARLY_ALL : CellShapes.knownShare(below, free) + CLEARLY;
    return uses.all().stream()
        .filter(use -> TEXTS.contains(use.column()) && use.basis() != Header.Basis.TOLD)
        .filter(use -> CellShapes.filledShare(below, use.cell()) > NEARLY_ALL)
        .filter(use -> CellShapes.designatorShare(below, use.cell()) > NEARLY_ALL)
        .filter(use -> CellShapes.knownShare(below, use.cell()) > least)
        .findFirst();
  }

  /** The free column that holds designators nearly everywhere; -1 without one. */
  int designators() {
    int best = -1;
    double most = MOSTLY;
    for (int cell = 0; cell < uses.names().size(); cell++) {
      // "R2, Fitted, Not Fitted" is a row.
      boolean mayHead =
          uses.isFree(cell)
              && !CellShapes.isDesignators(uses.names().get(cell))
              && !(uses.kind() == TableKind.BOM && namesFew(cell));
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
  void useFitted() {
    if (uses.kind() != TableKind.BOM || !uses.lacks(Column.FITTED) || uses.has(Column.NOT_FITTED)) {
      return;
    }
    List<Integer> telling =
        IntStream.range(0, uses.names().size())
            .filter(cell -> uses.isFree(cell) && leavesOut(cell))
            .boxed()
            .toList();
    if (telling.size() == 1 && CellShapes.fittedShare(below, telling.get(0)) == 1) {
      uses.add(Column.FITTED, telling.get(0), Header.Basis.CELLS);
    }
  }

  private boolean leavesOut(int cell) {
    return below.stream().map(row -> row.cell(cell)).distinct().anyMatch(FittedSigns::mayLeaveOut);
  }

  /** What the cells of a placement list show, where no header names it. */
  void usePlaced() {
    if (uses.kind() != TableKind.PLACEMENTS || !uses.has(Column.X)) {
      return;
    }
    if (!uses.has(Column.SIDE) && !uses.has(Column.MIRROR)) {
      useByCells(
          Column.MIRROR,
          cell -> uses.names().get(cell).isEmpty() && CellShapes.areMirrorMarks(below, cell));
    }
    if (!uses.has(Column.MIRROR)) {
      useByCells(Column.SIDE, cell -> CellShapes.tellSides(below, cell));
    }
    useByCells(
        Column.ROTATION,
        cell -> CellShapes.areTurns(below, cell) || CellShapes.areQuarterTurns(below, cell));
  }

  private void useByCells(Column column, IntPredicate shows) {
    if (!uses.lacks(column)) {
      return;
    }
    IntStream.range(0, uses.names().size())
        .filter(cell -> uses.isFree(cell) && shows.test(cell))
        .findFirst()
        .ifPresent(cell -> uses.add(column, cell, Header.Basis.CELLS));
  }

  /** One header over designators and values: all rows go on by a cell, where no header stands. */
  void useValueBehind() {
    int behind = uses.names().size();
    boolean missing = uses.has(Column.DESIGNATORS) && uses.lacks(Column.VALUE);
    if (uses.kind() != TableKind.BOM || !missing || below.isEmpty()) {
      return;
    }
    // Words under a likely header alone are what to buy.
    if (uses.sure() == 0 && CellShapes.nameShare(below, uses.cellOf(Column.DESIGNATORS)) < MOSTLY) {
      return;
    }
    long longer = below.stream().filter(row -> row.size() == behind + 1).count();
    boolean words =
        CellShapes.designatorShare(below, behind) < MOSTLY
            && CellShapes.wholeShare(below, behind) < 1 - MOSTLY;
    if (longer > NEARLY_ALL * below.size()
        && CellShapes.filledShare(below, behind) > MOSTLY
        && words) {
      uses.addBehind(Column.VALUE, Header.Basis.CELLS);
    }
  }
}
