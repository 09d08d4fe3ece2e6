package lowfirst.channel.formula;

import java.util.Arrays;
import java.util.List;
import lowfirst.quantity.Source;

/**
 * How much more a MOSFET resists when hot: RDS(on) at a junction temperature over that at 25 °C, by
 * straight lines between points. Below 25 °C it counts as 1; beyond the last point it goes on at
 * the steeper of its own last slope and the default's.
 */
public final class HotFactor {
  /** A point of the curve. */
  public record Point(double celsius, double factor) {}

  private static final double LAST_DEFAULT_SLOPE = 0.0168;

  /**
   * Used where the datasheet gives no curve: the steepest of four published ones (International
   * Rectifier IRF540N, PD-91341B, Fig. 4: 1.80 at 100 °C, 2.50 at 150 °C, 2.92 at 175 °C).
   */
  public static final HotFactor DEFAULT =
      of(
          List.of(new Point(100, 1.80), new Point(150, 2.50), new Point(175, 2.92)),
          Source.assumed(
              "the steepest of four typical curves, IR IRF540N PD-91341B Fig. 4",
              "datasheets.csv RDSonRatio with condition TJ="));

  private final double[] celsius;
  private final double[] factors;
  private final double lastSlope;
  private final Source source;

  private HotFactor(double[] celsius, double[] factors, Source source) {
    this.celsius = celsius;
    this.factors = factors;
    this.source = source;
    int last = celsius.length - 1;
    double own = (factors[last] - factors[last - 1]) / (celsius[last] - celsius[last - 1]);
    this.lastSlope = Math.max(own, LAST_DEFAULT_SLOPE);
  }

  /** A curve through (25 °C, 1) and these points, any order; points below 25 °C are left out. */
  public static HotFactor of(List<Point> points, Source source) {
    var sorted =
        java.util.stream.Stream.concat(
                java.util.stream.Stream.of(new Point(25, 1)),
                points.stream().filter(point -> point.celsius() > 25))
            .sorted(java.util.Comparator.comparingDouble(Point::celsius))
            .toList();
    if (sorted.size() < 2) {
      return DEFAULT;
    }
    return new HotFactor(
        sorted.stream().mapToDouble(Point::celsius).toArray(),
        sorted.stream().mapToDouble(Point::factor).toArray(),
        source);
  }

  /** The factor at a junction temperature. */
  public double at(double junctionCelsius) {
    if (junctionCelsius <= celsius[0]) {
      return 1;
    }
    int i = segment(junctionCelsius);
    return factors[i] + slope(i) * (junctionCelsius - celsius[i]);
  }

  /**
   * The junction temperature at which heat made and heat carried away balance: the lowest T with T
   * = baseCelsius + coldRiseKelvin·k(T), where {@code coldRiseKelvin} is Rth·I²·RDSon at 25 °C.
   * Solved exactly, stretch by stretch of the curve.
   *
   * @return the temperature; infinite when the heat outruns the cooling at every temperature
   */
  public double balance(double baseCelsius, double coldRiseKelvin) {
    double below = baseCelsius + coldRiseKelvin;
    if (below <= celsius[0]) {
      return below;
    }
    for (int i = 0; i < celsius.length; i++) {
      double gain = coldRiseKelvin * slope(i);
      if (gain < 1) {
        double balanced =
            (baseCelsius + coldRiseKelvin * (factors[i] - slope(i) * celsius[i])) / (1 - gain);
        double end = i + 1 < celsius.length ? celsius[i + 1] : Double.POSITIVE_INFINITY;
        if (balanced >= celsius[i] && balanced <= end) {
          return balanced;
        }
      }
    }
    return Double.isNaN(below) ? Double.NaN : Double.POSITIVE_INFINITY;
  }

  /** Where the curve came from. */
  public Source source() {
    return source;
  }

  private int segment(double junctionCelsius) {
    int found = Arrays.binarySearch(celsius, junctionCelsius);
    return found >= 0 ? found : -found - 2;
  }

  private double slope(int i) {
    return i + 1 < celsius.length
        ? (factors[i + 1] - factors[i]) / (celsius[i + 1] - celsius[i])
        : lastSlope;
  }
}
