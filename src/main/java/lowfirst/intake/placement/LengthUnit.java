package lowfirst.intake.placement;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.HeaderUnit;
import lowfirst.intake.column.Lengths;
import lowfirst.intake.column.Numbers;
import lowfirst.intake.table.Table;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * The unit of bare coordinates in a placement list: as told, as the header or a line before it
 * states, or guessed from how much room the parts would have.
 *
 * @param x unit of bare numbers in the x column
 * @param y unit of bare numbers in the y column
 * @param words how it was found
 */
public record LengthUnit(String x, String y, String words, List<Problem> problems) {

  /** Room that a through-hole part takes on a board as a rule, in square millimetres. */
  private static final double USUAL_ROOM = 150;

  /** Less or more room a part than this is not believed in millimetres. */
  private static final double LEAST_ROOM = 4;

  private static final double MOST_ROOM = 20_000;

  /** No part is further from the origin of a layout, in millimetres. */
  private static final double FARTHEST = 1000;

  /** Two units whose room differs less from the usual (in natural logarithms) are equally good. */
  private static final double ABOUT_AS_GOOD = 1.5;

  /** The unit of the bare numbers of a table. */
  public static LengthUnit of(Table table, ColumnMap map) {
    return of(table, map, FirstLook.at(table));
  }

  /** The same when all rows have been looked at. */
  public static LengthUnit of(Table table, ColumnMap map, FirstLook look) {
    Optional<String> told = map.unit(table.kind(), table.file());
    if (told.isPresent()) {
      return stated(told.get(), told.get(), "coordinates in " + told.get() + ", as you said");
    }
    Header header = table.header();
    Optional<String> inX =
        HeaderUnit.of(header.name(header.cellOf(Column.X))).filter(Lengths::isUnit);
    Optional<String> inY =
        HeaderUnit.of(header.name(header.cellOf(Column.Y))).filter(Lengths::isUnit);
    if (inX.isPresent() || inY.isPresent()) {
      String x = inX.or(() -> inY).orElseThrow();
      return stated(x, inY.orElse(x), "coordinates in " + x + ", as the header says");
    }
    if (table.unit().isPresent()) {
      String unit = table.unit().get();
      return stated(unit, unit, "coordinates in " + unit + ", as a line beside the rows says");
    }
    return guessed(table, look);
  }

  private static LengthUnit stated(String x, String y, String words) {
    return new LengthUnit(x, y, words, List.of());
  }

  private static LengthUnit guessed(Table table, FirstLook look) {
    double[] x = FirstLook.bare(look.x());
    double[] y = FirstLook.bare(look.y());
    if (x.length == 0 && y.length == 0) {
      return stated("mm", "mm", "every coordinate carries its own unit");
    }
    double area = span(x) * span(y);
    int parts = Math.max(1, x.length);
    double farthest =
        DoubleStream.concat(Arrays.stream(x), Arrays.stream(y)).map(Math::abs).max().orElse(0);
    String unit = likeliest(area, parts, farthest);
    Optional<String> other = rival(unit, area, parts, farthest);
    if (other.isPresent()) {
      return asked(table, unit, other.get(), span(x), span(y));
    }
    return new LengthUnit(
        unit,
        unit,
        "coordinates in " + unit + ", guessed: no unit is written",
        List.of(
            new Problem(
                Kind.UNIT_GUESSED,
                Place.ofFile(table.file()),
                "no unit is written, so the coordinates were read as " + unit,
                "if that is wrong, say --column placements.unit=mil (or mm, inch, µm)")));
  }

  private static String likeliest(double area, int parts, double farthest) {
    if (area == 0 || isBelievable(area / parts)) {
      return "mm";
    }
    return Stream.of("mm", "mil", "inch", "µm", "nm")
        .filter(unit -> isNear(farthest, unit))
        .min(Comparator.comparingDouble(unit -> farness(area, parts, unit)))
        .orElse("mm");
  }

  /** Another unit in which the parts would have about as usual a room; empty when there is none. */
  private static Optional<String> rival(String unit, double area, int parts, double farthest) {
    if (area == 0) {
      return Optional.empty();
    }
    return Stream.of("mm", "mil", "inch")
        .filter(other -> !other.equals(unit))
        .filter(other -> isNear(farthest, other) && isBelievable(room(area, parts, other)))
        .filter(
            other ->
                Math.abs(farness(area, parts, other) - farness(area, parts, unit)) < ABOUT_AS_GOOD)
        .findFirst();
  }

  private static boolean isNear(double farthest, String unit) {
    return farthest * Lengths.millimetres(unit) < FARTHEST;
  }

  private static boolean isBelievable(double room) {
    return room > LEAST_ROOM && room < MOST_ROOM;
  }

  /** Square millimetres a part in this unit. */
  private static double room(double area, int parts, String unit) {
    double scale = Lengths.millimetres(unit);
    return area * scale * scale / parts;
  }

  private static double farness(double area, int parts, String unit) {
    return Math.abs(Math.log(room(area, parts, unit) / USUAL_ROOM));
  }

  private static LengthUnit asked(Table table, String unit, String other, double x, double y) {
    String message =
        "no unit is written, and "
            + unit
            + " is as likely as "
            + other
            + ": the parts would spread over "
            + spread(x, y, unit)
            + ", or over "
            + spread(x, y, other)
            + "; "
            + unit
            + " was taken";
    return new LengthUnit(
        unit,
        unit,
        "coordinates in " + unit + ", in doubt: " + other + " is as likely",
        List.of(
            new Problem(
                Kind.COLUMN_AMBIGUOUS,
                Place.ofFile(table.file()),
                message,
                "say --column placements.unit=" + unit + " or --column placements.unit=" + other)));
  }

  private static String spread(double x, double y, String unit) {
    double scale = Lengths.millimetres(unit);
    return Numbers.plain(x * scale) + " x " + Numbers.plain(y * scale) + " mm";
  }

  /** Whether the parts would stand closer together than through-hole parts can. */
  boolean isCrowded(FirstLook look) {
    double[] bareX = FirstLook.bare(look.x());
    double wide = span(bareX) * Lengths.millimetres(x);
    double high = span(FirstLook.bare(look.y())) * Lengths.millimetres(y);
    if (bareX.length < 2) {
      return false;
    }
    // All in one row have room along it.
    double along = Math.max(wide, high) / bareX.length;
    return wide * high == 0 ? along * along < LEAST_ROOM : wide * high / bareX.length < LEAST_ROOM;
  }

  private static double span(double[] numbers) {
    double least = Double.MAX_VALUE;
    double most = -Double.MAX_VALUE;
    for (double number : numbers) {
      least = Math.min(least, number);
      most = Math.max(most, number);
    }
    return numbers.length == 0 ? 0 : most - least;
  }
}
