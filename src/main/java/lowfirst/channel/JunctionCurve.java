package lowfirst.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.channel.ChannelInputs.Switching;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Term;
import lowfirst.channel.formula.OnResistance;

/**
 * Junction temperature against load current, for a drawing.
 *
 * @param points from no load on; ends where heat outruns cooling
 * @param limitCelsius the temperature allowed
 * @param loadAmps where the load stands
 */
public record JunctionCurve(List<Point> points, double limitCelsius, double loadAmps) {
  private static final int STEPS = 60;
  private static final double HIGHEST_CELSIUS = 400;

  /** A point of the curve. */
  public record Point(double amperes, double celsius) {}

  public JunctionCurve {
    points = List.copyOf(points);
  }

  /**
   * The curve up to some current.
   *
   * @return the curve; absent when the channel has no MOSFET or its temperature is not known
   */
  public static Optional<JunctionCurve> of(ChannelInputs in, double upToAmps) {
    Optional<Check> now = ChannelFinding.of(in).check(CheckKind.JUNCTION_TEMPERATURE);
    if (in.switching() != Switching.MOSFET
        || now.isEmpty()
        || Double.isNaN(now.get().actualAmount())
        || Double.isNaN(now.get().allowedAmount())) {
      return Optional.empty();
    }
    var points = new ArrayList<Point>();
    for (int i = 0; i <= STEPS; i++) {
      double amps = upToAmps * i / STEPS;
      ChannelInputs there = in.scaled(Term.LOAD_CURRENT, Math.max(amps, 1e-6) / in.loadAmps());
      OnResistance.Line line = there.onResistance().earned(there.gateVolts(), there.loadAmps());
      double celsius = SwitchChecks.junctionCelsius(there, line);
      if (!(celsius < HIGHEST_CELSIUS)) {
        break;
      }
      points.add(new Point(amps, celsius));
    }
    return points.size() < 2
        ? Optional.empty()
        : Optional.of(new JunctionCurve(points, now.get().allowedAmount(), in.loadAmps()));
  }
}
