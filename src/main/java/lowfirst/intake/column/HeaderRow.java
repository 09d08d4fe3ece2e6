package lowfirst.intake.column;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Rows below the header that are about the columns themselves: more of it, or it again. */
public final class HeaderRow {
  /** A longer cell is no header. */
  private static final int LONGEST = 40;

  private static final int LONGEST_UNIT = 15;

  private HeaderRow() {}

  /** Whether the header stands again in this row, as where exports were joined. */
  public static boolean isAgain(TableKind kind, Header header, Row row) {
    if (header.index() < 0) {
      return false;
    }
    int first = header.cellOf(kind.required().get(0));
    String name = header.name(first);
    return (!name.isEmpty() && row.cell(first).equals(name))
        || repeats(header, row)
        || isOther(kind, row);
  }

  /** Whether most words of the header stand again, though one is written otherwise. */
  private static boolean repeats(Header header, Row row) {
    int same = 0;
    for (int i = 0; i < row.size(); i++) {
      same += !row.cell(i).isEmpty() && row.cell(i).equals(header.name(i)) ? 1 : 0;
    }
    return same > 1 && same * 2 > row.filled();
  }

  /**
   * A header with its columns in another order, or with others, as where another table follows:
   * only words, each a sure one, or the designators' and another sure, or three that may head
   * columns.
   */
  private static boolean isOther(TableKind kind, Row row) {
    if (!kind.isExported()) {
      return false;
    }
    int filled = 0;
    int worded = 0;
    int sure = 0;
    boolean names = false;
    boolean surely = false;
    for (int i = 0; i < row.size(); i++) {
      String cell = row.cell(i);
      if (cell.isEmpty()) {
        continue;
      }
      filled++;
      if (cell.length() > LONGEST || hasDigit(cell)) {
        return false;
      }
      List<HeaderWords.Match> matches = HeaderWords.matches(kind, cell);
      worded += matches.isEmpty() ? 0 : 1;
      sure += matches.stream().allMatch(HeaderWords.Match::isWeak) ? 0 : 1;
      names |= matches.stream().anyMatch(m -> m.column() == kind.required().get(0));
      surely |= matches.stream().anyMatch(m -> m.column() == kind.required().get(0) && !m.isWeak());
    }
    boolean all = sure == filled || (worded == filled && filled > 2);
    return filled > 1 && (all ? names : surely && sure > 1);
  }

  /**
   * Another header that lacks columns.
   *
   * @param place where it stands
   * @param first the table's own header
   */
  public static Problem lacking(TableKind kind, Header again, Place place, Row first) {
    List<String> missing =
        kind.required().stream()
            .filter(column -> again.cellOf(column) < 0)
            .map(Column::words)
            .toList();
    return new Problem(
        Kind.COLUMN_MISSING,
        place,
        "another header stands here, without "
            + String.join(" and ", missing)
            + "; the rows below it were not read",
        "name those columns as in line " + first.line());
  }

  /** A word where a BOM's quantity belongs, and no number or designator anywhere: pieces, each. */
  public static boolean carriesOn(Header header, Row row) {
    return row.cell(header.cellOf(Column.DESIGNATORS)).isEmpty()
        && !row.cell(header.cellOf(Column.QUANTITY)).isEmpty()
        && isWords(row);
  }

  /** Whether no cell has a digit, as of a header. */
  public static boolean isWords(Row row) {
    return row.cells().stream().noneMatch(HeaderRow::hasDigit);
  }

  /** The unit of x and y, as it stands in this row of a placement list; empty without one. */
  public static Optional<String> unit(Header header, Row row) {
    String unit = bare(row.cell(header.cellOf(Column.X)));
    boolean names =
        row.cell(header.cellOf(Column.DESIGNATOR)).isEmpty()
            && !unit.isEmpty()
            && Lengths.isUnit(HeaderUnit.canonical(unit))
            && unit.equals(bare(row.cell(header.cellOf(Column.Y))));
    return names ? Optional.of(unit) : Optional.empty();
  }

  /** The unit of x in a header further down, where it is not that of the first header. */
  public static Optional<String> otherUnit(Header first, Header again) {
    Optional<String> unit = HeaderUnit.of(again.name(again.cellOf(Column.X)));
    return unit.equals(HeaderUnit.of(first.name(first.cellOf(Column.X))))
        ? Optional.empty()
        : unit.filter(Lengths::isUnit);
  }

  /** The row with its unit behind bare coordinates. */
  public static Row withUnit(Header header, Row row, String unit) {
    var cells = new ArrayList<>(row.cells());
    for (Column column : List.of(Column.X, Column.Y)) {
      String text = row.cell(header.cellOf(column));
      if (PlainNumber.isBare(text)) {
        cells.set(header.cellOf(column), text + " " + unit);
      }
    }
    return new Row(row.line(), cells);
  }

  /** Names of columns with the units that stand in the row below, where it holds nothing else. */
  static List<String> withUnits(List<String> names, Row below) {
    boolean units = below.filled() > 1 && below.cells().stream().allMatch(HeaderRow::mayBeUnit);
    return units
        ? IntStream.range(0, names.size())
            .mapToObj(i -> (names.get(i) + " " + below.cell(i)).strip())
            .toList()
        : names;
  }

  private static boolean mayBeUnit(String cell) {
    return cell.isEmpty()
        || (cell.length() <= LONGEST_UNIT
            && !hasDigit(cell)
            && HeaderUnit.of("x " + cell).isPresent());
  }

  private static String bare(String unit) {
    return unit.replaceAll("[()\\[\\]]", "").strip();
  }

  /** Whether a cell has a digit, which headers seldom have. */
  public static boolean hasDigit(String cell) {
    for (int at = 0; at < cell.length(); at++) {
      if (Character.isDigit(cell.charAt(at))) {
        return true;
      }
    }
    return false;
  }
}
