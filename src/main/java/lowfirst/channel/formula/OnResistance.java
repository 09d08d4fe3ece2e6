package lowfirst.channel.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lowfirst.quantity.Source;

/**
 * The RDS(on) lines of a MOSFET's datasheet, each good only at and above its own gate voltage and
 * up to its own test current. Never interpolated: what no line states is not specified.
 *
 * <p>Where several makers' lines are known and none is named, each maker's part must earn a line,
 * and the largest resistance counts.
 */
public final class OnResistance {
  /**
   * A line with a guaranteed maximum at 25 °C.
   *
   * @param amps the drain current it is specified at; infinite when not stated
   * @param typicalOhms shown and used for the spread of builds only; the maximum when not stated
   */
  public record Line(
      String maker,
      double gateVolts,
      double amps,
      double maxOhms,
      double typicalOhms,
      Source source) {}

  private static final OnResistance NONE = new OnResistance(List.of());

  private final List<Line> lines;
  private final Line[][] byMaker;

  private OnResistance(List<Line> lines) {
    this.lines = lines;
    this.byMaker =
        lines.stream()
            .collect(
                Collectors.groupingBy(
                    Line::maker, java.util.LinkedHashMap::new, Collectors.toList()))
            .values()
            .stream()
            .map(OnResistance::tightestFirst)
            .toArray(Line[][]::new);
  }

  private static Line[] tightestFirst(List<Line> lines) {
    var sorted = new ArrayList<>(lines);
    sorted.sort(java.util.Comparator.comparingDouble(Line::maxOhms));
    return sorted.toArray(Line[]::new);
  }

  /** No lines: nothing is specified. */
  public static OnResistance unknown() {
    return NONE;
  }

  /** These lines. */
  public static OnResistance of(List<Line> lines) {
    return lines.isEmpty() ? NONE : new OnResistance(List.copyOf(lines));
  }

  /** Every line. */
  public List<Line> lines() {
    return lines;
  }

  /**
   * The line that a gate voltage and a drain current earn: of each maker the tightest whose gate
   * voltage is at or below {@code gateVolts} and whose test current is at or above {@code amps};
   * over the makers the largest. Null-free: {@link #NOT_SPECIFIED} when a maker has none.
   */
  @SuppressWarnings("ReferenceEquality") // NOT_SPECIFIED is one object
  public Line earned(double gateVolts, double amps) {
    Line worst = NOT_SPECIFIED;
    for (Line[] makers : byMaker) {
      Line best = NOT_SPECIFIED;
      for (Line line : makers) {
        if (line.gateVolts <= gateVolts && line.amps >= amps) {
          best = line;
          break;
        }
      }
      if (best == NOT_SPECIFIED) {
        return NOT_SPECIFIED;
      }
      if (worst == NOT_SPECIFIED || best.maxOhms > worst.maxOhms) {
        worst = best;
      }
    }
    return worst;
  }

  /** What is earned where no line fits: a resistance that is not a number. */
  static final Line NOT_SPECIFIED =
      new Line("", Double.NaN, Double.NaN, Double.NaN, Double.NaN, Source.computed("missing"));

  /** The least gate voltage at which every maker specifies a line for {@code amps}. */
  public double leastGateVolts(double amps) {
    double least = byMaker.length == 0 ? Double.NaN : 0;
    for (Line[] makers : byMaker) {
      double own = Double.POSITIVE_INFINITY;
      for (Line line : makers) {
        if (line.amps >= amps) {
          own = Math.min(own, line.gateVolts);
        }
      }
      least = Math.max(least, own);
    }
    return least;
  }
}
