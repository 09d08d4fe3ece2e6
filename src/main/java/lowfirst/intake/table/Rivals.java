package lowfirst.intake.table;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import lowfirst.board.Side;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.cell.SideWords;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.HeaderUnit;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Lengths;
import lowfirst.intake.column.PlainNumber;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * A column that could as well be the one that was taken: its header means the same, and its cells
 * differ.
 *
 * @param used the column taken
 * @param other the index of the other from 0
 */
record Rivals(TableKind kind, Cut cut, Header.Use used, int other) {

  /** Rows shown of both. */
  private static final int SHOWN = 3;

  /** Share of cells that may look like designators though they are others. */
  private static final double FEW = 0.5;

  /** Coordinates are rounded otherwise in each unit. */
  private static final double SLACK_MILLIMETRES = 0.1;

  /** Columns that may well stand there twice in other words: which is taken is just said. */
  private static final Set<Column> HARMLESS =
      EnumSet.of(Column.PACKAGE, Column.PART_TYPE, Column.DESCRIPTION);

  /** The first column that rivals the one used, if any. */
  static Optional<Rivals> of(TableKind kind, Cut cut, Header.Use used) {
    Header header = cut.header();
    for (int other = 0; other < header.names().size(); other++) {
      int cell = other;
      boolean free = header.uses().stream().noneMatch(use -> use.cell() == cell);
      var rivals = new Rivals(kind, cut, used, other);
      if (free
          && rivals.meansTheSame()
          && rivals.mayNameParts()
          && !rivals.isSettled()
          && !rivals.differing().isEmpty()) {
        return Optional.of(rivals);
      }
    }
    return Optional.empty();
  }

  /** A header may mean the number of an order, too, which a few of its cells then look like. */
  private boolean mayNameParts() {
    List<Row> below = cut.rows().subList(cut.header().index() + 1, cut.rows().size());
    boolean names = used.column() == Column.DESIGNATORS || used.column() == Column.DESIGNATOR;
    return !names
        || isSameHeader()
        || CellShapes.designatorShare(below, other) > FEW
        || CellShapes.designatorShare(below, used.cell()) < 1 - FEW;
  }

  /** Of two quantities, one counts the designators, as that of a board does; the other does not. */
  private boolean isSettled() {
    int designators = cut.header().cellOf(Column.DESIGNATORS);
    if (used.column() != Column.QUANTITY || designators < 0 || isSameHeader()) {
      return false;
    }
    List<Row> named =
        cut.rows().stream()
            .skip(cut.header().index() + 1L)
            .filter(row -> CellShapes.isDesignators(row.cell(designators)))
            .toList();
    return CellShapes.countingShare(named, used.cell(), designators) > 1 - FEW / 2
        && CellShapes.countingShare(named, other, designators) < FEW / 2;
  }

  private boolean isSameHeader() {
    Header header = cut.header();
    return HeaderWords.key(header.name(other)).equals(HeaderWords.key(header.name(used.cell())));
  }

  private boolean meansTheSame() {
    return isSameHeader()
        || (kind.isExported()
            && HeaderWords.matches(kind, cut.header().name(other)).stream()
                .anyMatch(match -> match.column() == used.column() && !match.isWeak()))
        || isLikelyQuantity();
  }

  /** Of quantities for several variants none is surer than another. */
  private boolean isLikelyQuantity() {
    Header header = cut.header();
    return used.column() == Column.QUANTITY
        && used.basis() == Header.Basis.LIKELY_HEADER
        && HeaderWords.matches(kind, header.name(other)).stream()
            .anyMatch(match -> match.column() == Column.QUANTITY)
        && CellShapes.areQuantities(
            cut.rows().subList(header.index() + 1, cut.rows().size()), other);
  }

  /** The first rows in which both hold something, and not the same. */
  private List<Row> differing() {
    return cut.rows().stream()
        .skip(cut.header().index() + 1L)
        .filter(row -> !row.cell(other).isEmpty() && !row.cell(used.cell()).isEmpty())
        .filter(row -> differ(row.cell(used.cell()), row.cell(other)))
        .limit(SHOWN)
        .toList();
  }

  /** Whether two cells mean something else: TopLayer is top, and 2.54 mm are 100 mil. */
  private boolean differ(String one, String another) {
    if (one.equalsIgnoreCase(another)) {
      return false;
    }
    if (used.column() == Column.SIDE) {
      Optional<Side> side = SideWords.side(one);
      Optional<Side> otherSide = SideWords.side(another);
      return side.isPresent() && otherSide.isPresent() && !side.equals(otherSide);
    }
    if (used.column() == Column.X || used.column() == Column.Y) {
      OptionalDouble length = millimetres(one, used.cell());
      OptionalDouble otherLength = millimetres(another, other);
      return length.isPresent()
          && otherLength.isPresent()
          && Math.abs(length.getAsDouble() - otherLength.getAsDouble()) > SLACK_MILLIMETRES;
    }
    OptionalDouble number = PlainNumber.in(one);
    return number.isEmpty() || !number.equals(PlainNumber.in(another));
  }

  private OptionalDouble millimetres(String cell, int column) {
    String unit = HeaderUnit.of(cut.header().name(column)).filter(Lengths::isUnit).orElse("mm");
    return Lengths.read(cell, unit)
        .value()
        .map(length -> OptionalDouble.of(length.asDouble()))
        .orElse(OptionalDouble.empty());
  }

  /** Asks which is meant; of harmless columns, says which was taken. */
  Problem problem(String file) {
    boolean harmless = HARMLESS.contains(used.column()) && !isSameHeader();
    Row names = cut.rows().get(cut.header().index());
    String column = kind.key() + "." + used.column().key() + "=";
    return new Problem(
        harmless ? Kind.COLUMN_GUESSED : Kind.COLUMN_AMBIGUOUS,
        Place.ofCell(file, names.line(), used.cell() + 1, "", names.cell(used.cell())),
        "columns "
            + (used.cell() + 1)
            + " and "
            + (other + 1)
            + (isSameHeader()
                ? " are both headed so"
                : " (\"" + names.cell(other) + "\") may both mean " + used.column().words())
            + " and differ: from line "
            + differing().get(0).line()
            + " on they have "
            + cells(used.cell())
            + ", and "
            + cells(other)
            + "; column "
            + (used.cell() + 1)
            + " was used",
        "say which you mean with --column "
            + column
            + (used.cell() + 1)
            + " or --column "
            + column
            + (other + 1));
  }

  private String cells(int cell) {
    return differing().stream()
        .map(row -> "\"" + row.cell(cell) + "\"")
        .collect(Collectors.joining(", "));
  }
}
