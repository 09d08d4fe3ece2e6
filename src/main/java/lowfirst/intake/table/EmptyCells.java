package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lowfirst.intake.cell.CellShapes;
import lowfirst.intake.cell.SideWords;
import lowfirst.intake.cell.TurnSigns;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.PlainNumber;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.column.WholeNumber;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * A row between runs of blanks that is short of cells, where what the others hold tells which are
 * empty: x, y, angle and side of a placement, designators and quantity of a BOM line.
 *
 * @param row the row with its empty cells
 * @param first the leftmost cell that may be the empty one, from 0
 * @param last the rightmost, which was taken
 */
record EmptyCells(Row row, int first, int last) {
  private static final Set<Column> TELLING =
      EnumSet.of(
          Column.DESIGNATORS,
          Column.DESIGNATOR,
          Column.QUANTITY,
          Column.X,
          Column.Y,
          Column.ROTATION,
          Column.SIDE);

  /** Parts are turned by a multiple of it. */
  private static final int USUAL = 15;

  /** Of more, too many ways fit. */
  private static final int MOST = 2;

  /** Where the cells that {@code row} lacks were; empty where no way or no cell tells. */
  static Optional<EmptyCells> in(TableKind kind, Header header, Row row, int width) {
    if (!kind.isExported()
        || header.pair().isPresent()
        || row.size() < 2
        || width - row.size() > MOST) {
      return Optional.empty();
    }
    var ways = new ArrayList<Row>();
    fill(row, width, 1, ways);
    ways.removeIf(way -> !fits(header, way));
    if (ways.stream().map(way -> telling(header, way)).distinct().count() != 1) {
      return Optional.empty();
    }
    Row taken = ways.get(ways.size() - 1);
    return Optional.of(
        new EmptyCells(taken, ways.get(0).cells().indexOf(""), taken.cells().indexOf("")));
  }

  /** All ways to put in empty cells, those further left first; the first cell is never empty. */
  private static void fill(Row row, int width, int from, List<Row> ways) {
    if (row.size() == width) {
      ways.add(row);
      return;
    }
    for (int at = from; at <= row.size(); at++) {
      var more = new ArrayList<>(row.cells());
      more.add(at, "");
      fill(new Row(row.line(), more), width, at + 1, ways);
    }
  }

  /** What the cells would tell of the part; they must not do so in two ways. */
  private static List<String> telling(Header header, Row way) {
    return header.uses().stream()
        .filter(use -> TELLING.contains(use.column()))
        .map(use -> way.cell(use.cell()))
        .toList();
  }

  /** Whether each cell of a row may be what its column holds. */
  static boolean fits(Header header, Row row) {
    for (Header.Use use : header.uses()) {
      String cell = row.cell(use.cell());
      boolean fits =
          switch (use.column()) {
            case DESIGNATORS, DESIGNATOR -> CellShapes.isDesignators(cell);
            case X, Y -> CellShapes.isNumber(cell);
            case ROTATION -> cell.isEmpty() || isUsualAngle(cell) || TurnSigns.isOne(cell);
            case VALUE, PACKAGE -> !isDecimal(cell);
            case QUANTITY -> cell.isEmpty() || WholeNumber.in(cell).isPresent();
            case SIDE -> cell.isEmpty() || SideWords.side(cell).isPresent();
            default -> true;
          };
      if (!fits) {
        return false;
      }
    }
    return true;
  }

  private static boolean isUsualAngle(String cell) {
    return PlainNumber.orNan(cell) % USUAL == 0;
  }

  /** A number with a decimal sign and no unit is a coordinate. */
  private static boolean isDecimal(String cell) {
    return (cell.indexOf('.') >= 0 || cell.indexOf(',') >= 0)
        && !Double.isNaN(PlainNumber.orNan(cell));
  }

  /** Which cell was taken as empty. */
  Problem said(String file, Row written, Header header, int width) {
    return new Problem(
        Kind.ROW_LENGTH,
        Place.ofLine(file, row.line()),
        "the row has "
            + written.size()
            + " cells where "
            + width
            + " are usual: by what the others hold, "
            + named(header, last)
            + " was taken as empty"
            + (first < last ? ", but " + named(header, first) + " may be" : ""),
        "write a dash into an empty cell");
  }

  /** Where nothing tells which cells a row lacks. */
  static Problem untold(String file, Row row, int width) {
    return new Problem(
        Kind.ROW_LENGTH,
        Place.ofLine(file, row.line()),
        "the row has "
            + row.size()
            + " cells where "
            + width
            + " are usual: one may be empty, and which can't be told",
        "write a dash into an empty cell");
  }

  private static String named(Header header, int cell) {
    return header.name(cell).isEmpty() ? "cell " + (cell + 1) : "\"" + header.name(cell) + "\"";
  }
}
