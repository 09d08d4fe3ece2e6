package lowfirst.channel.formula;

import java.util.List;

/**
 * Points of a MOSFET's safe operating area, each a guarantee: this current at this voltage for this
 * long. A point also covers lower voltages and shorter times.
 */
public record SafeArea(List<Point> points) {
  /** A point of the area. */
  public record Point(double volts, double seconds, double amperes) {}

  public SafeArea {
    points = List.copyOf(points);
  }

  /** No point known. */
  public static SafeArea unknown() {
    return new SafeArea(List.of());
  }

  /** Whether any point is known. */
  public boolean isKnown() {
    return !points.isEmpty();
  }

  /** The largest current guaranteed at a voltage for a time; nothing when no point covers it. */
  public double amperes(double volts, double seconds) {
    double best = 0;
    for (Point point : points) {
      if (point.volts >= volts && point.seconds >= seconds) {
        best = Math.max(best, point.amperes);
      }
    }
    return best;
  }
}
