package lowfirst.channel;

import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Source;

/**
 * How much of a voltage rating is used, in one place for MOSFET, driver stage and diode: wiring
 * inductance adds short spikes to the rail, so a fifth of the rating is kept for them.
 */
final class VoltageMargin {
  private static final double SHARE = 0.8;
  private static final Source PRACTICE =
      Source.standard("common practice: a fifth of the rating kept for wiring inductance");

  /** The margin as an input that a check shows. */
  static final Datum RULE = Datum.constant("share of the rating", SHARE, Dimension.RATIO, PRACTICE);

  private VoltageMargin() {}

  /** The volts that may stand across a part, from its lowest rating. */
  static double usableVolts(ChannelInputs in, Term rating) {
    return SHARE * in.low(rating);
  }

  /** Whether a voltage, with the kit's worst numbers, stays within what is used of a rating. */
  static Check check(CheckKind kind, ChannelInputs in, double volts, Term rating, Datum... more) {
    Datum[] data = java.util.Arrays.copyOf(more, more.length + 3);
    data[more.length] = in.datum(Term.SUPPLY);
    data[more.length + 1] = in.datum(rating);
    data[more.length + 2] = RULE;
    return Check.of(kind, volts, usableVolts(in, rating), data);
  }

  /** Whether a switch that is off bears its rail, and the diode's drop where a diode clamps. */
  static Check whenOff(CheckKind kind, ChannelInputs in) {
    if (!in.isInductive() || !in.has(Fitted.FLYBACK_DIODE)) {
      return check(kind, in, in.supplyHigh(), Term.DRAIN_RATING);
    }
    double clamped = in.supplyHigh() + in.high(Term.DIODE_FORWARD);
    return check(kind, in, clamped, Term.DRAIN_RATING, in.datum(Term.DIODE_FORWARD));
  }
}
