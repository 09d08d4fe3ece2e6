package lowfirst.channel;

import lowfirst.channel.check.Term;
import lowfirst.channel.formula.Conductor;

/**
 * The current that flows when the channel is on and everything is still cold: the rail over load,
 * wire, track and MOSFET in series. What to expect on the meter; checks take the larger worst case.
 */
public final class OnCurrent {
  private OnCurrent() {}

  /** The expected current, in amperes; NaN when a number is missing. */
  public static double amperes(ChannelInputs in) {
    ChannelInputs nominal = in.atNominal();
    double volts = nominal.nominal(Term.SUPPLY);
    double load = volts / nominal.nominal(Term.LOAD_CURRENT);
    double left = volts - nominal.nominal(Term.RETURN_LIFT);
    return left / (load + coldLoopOhms(nominal) + onOhms(nominal));
  }

  /** Wire both ways and track at 20 °C, in ohms. */
  static double coldLoopOhms(ChannelInputs in) {
    double wire = Conductor.ohms(in.nominal(Term.WIRE_AREA), in.nominal(Term.WIRE_LENGTH), 20);
    return 2 * wire + PathChecks.trackOhms(in, in.nominal(Term.TRACE_LENGTH), 20);
  }

  private static double onOhms(ChannelInputs in) {
    return in.onResistance().earned(in.gateVolts(), in.loadAmps()).maxOhms();
  }
}
