package lowfirst.channel.data;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Source;

/**
 * What a resettable fuse carries without tripping: it falls with the air's temperature, as the
 * maker states it. A figure for hotter air holds in cooler air, too; nothing is read between two.
 *
 * @param name the part's
 * @param points what is stated; may be empty
 */
public record HoldCurrent(String name, List<Point> points) {

  /** Makers rate at 20 °C to 25 °C what states no temperature. */
  static final double UNSTATED_CELSIUS = 20;

  /**
   * One guarantee.
   *
   * @param airCelsius up to which temperature of the air
   * @param amperes what it holds there
   * @param source where that stands
   */
  record Point(double airCelsius, double amperes, Source source) {}

  public HoldCurrent {
    points = List.copyOf(points);
  }

  /** What it holds in this air; missing where nothing is stated for air as hot. */
  public Datum at(double airCelsius) {
    Optional<Point> best =
        points.stream()
            .filter(point -> point.airCelsius >= airCelsius)
            .max(Comparator.comparingDouble(Point::amperes));
    return best.map(
            point -> Datum.constant("Ihold", point.amperes, Dimension.CURRENT, point.source))
        .orElseGet(
            () ->
                Datum.missing(
                    Term.FUSE_RATING,
                    String.format(
                        java.util.Locale.ROOT,
                        "Ihold of %s in air of %.0f °C or more, condition TA=: write it in"
                            + " datasheets.csv",
                        name,
                        Math.ceil(airCelsius))));
  }
}
