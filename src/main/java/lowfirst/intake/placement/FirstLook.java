package lowfirst.intake.placement;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lowfirst.intake.cell.GroupedNumber;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.PlainNumber;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.table.Table;

/**
 * What the rows of a placement list show only together, gathered in one pass before any is read.
 *
 * @param x the bare number in the x column of each row; not a number where none stands there
 * @param y the same of the y column
 * @param pointGroups whether some coordinate shows that points part groups and a comma the decimals
 * @param commaGroups whether some coordinate shows that commas part groups and a point the decimals
 * @param sides the different texts of the side column, as far as the third
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record FirstLook(
    double[] x, double[] y, boolean pointGroups, boolean commaGroups, Set<String> sides) {

  /** A column of more different texts is no pair of signs. */
  private static final int SIDES_TOLD_APART = 3;

  /** The look at a table whose columns are known. */
  static FirstLook at(Table table) {
    List<TableRow> rows = table.rows();
    var x = new double[rows.size()];
    var y = new double[rows.size()];
    boolean pointGroups = false;
    boolean commaGroups = false;
    var sides = new HashSet<String>();
    for (int i = 0; i < x.length; i++) {
      TableRow row = rows.get(i);
      String xText = row.text(Column.X);
      String yText = row.text(Column.Y);
      x[i] = PlainNumber.orNan(xText);
      y[i] = PlainNumber.orNan(yText);
      // A bare number has one such sign at most.
      if (Double.isNaN(x[i]) || Double.isNaN(y[i])) {
        pointGroups |= GroupedNumber.groupsByPoint(xText) || GroupedNumber.groupsByPoint(yText);
        commaGroups |= GroupedNumber.groupsByComma(xText) || GroupedNumber.groupsByComma(yText);
      }
      String side = row.text(Column.SIDE);
      if (!side.isEmpty() && sides.size() < SIDES_TOLD_APART) {
        sides.add(side);
      }
    }
    return new FirstLook(x, y, pointGroups, commaGroups, sides);
  }

  /** The same where commas part groups. */
  FirstLook withCommaGroups() {
    return new FirstLook(x, y, pointGroups, true, sides);
  }

  /** The bare numbers alone. */
  static double[] bare(double[] numbers) {
    return Arrays.stream(numbers).filter(number -> !Double.isNaN(number)).toArray();
  }
}
