package lowfirst.intake.placement;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.table.Table;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;

/**
 * Coordinates of which nothing but their size tells that commas part thousands: 1,200 mil. As
 * decimals they would heap all parts up on one spot.
 *
 * @param row the first that has one
 * @param column where
 */
record Thousands(TableRow row, Column column) {
  private static final Pattern GROUPED = Pattern.compile("[+-]?[1-9]\\d{0,2}(,\\d{3})+");
  private static final Pattern SMALL = Pattern.compile("[+-]?\\d{1,3}(\\.\\d+)?");

  /** The first such coordinate; empty where the parts have room, or some number is a decimal. */
  static Optional<Thousands> in(Table table, LengthUnit unit, FirstLook look) {
    if (look.pointGroups() || look.commaGroups() || !unit.isCrowded(look)) {
      return Optional.empty();
    }
    Optional<Thousands> first = Optional.empty();
    for (TableRow row : table.rows()) {
      for (Column column : List.of(Column.X, Column.Y)) {
        String text = row.text(column);
        boolean grouped = GROUPED.matcher(text).matches();
        if (!grouped && !text.isEmpty() && !SMALL.matcher(text).matches()) {
          return Optional.empty();
        }
        if (grouped && first.isEmpty()) {
          first = Optional.of(new Thousands(row, column));
        }
      }
    }
    return first;
  }

  /** How they were read. */
  Problem said() {
    String text = row.text(column);
    return row.problem(
        Kind.COLUMN_GUESSED,
        column,
        "\""
            + text
            + "\" was read as "
            + text.replace(",", "")
            + ", since with a decimal comma all parts would stand on one spot",
        "if that is wrong, write decimals with a point");
  }
}
