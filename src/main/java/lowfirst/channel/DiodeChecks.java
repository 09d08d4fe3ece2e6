package lowfirst.channel;

import java.util.List;
import java.util.function.DoubleFunction;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.channel.formula.CoilDecay;
import lowfirst.channel.formula.Pulses;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/** Whether the flyback diode takes over the coil's current. */
final class DiodeChecks {
  private static final double RECOVERY_SHARE = 0.01;
  private static final Datum RECOVERY_LIMIT =
      Datum.constant(
          "share of the period",
          RECOVERY_SHARE,
          Dimension.RATIO,
          Source.standard("common practice: recovery in 1 % of the period"));

  private DiodeChecks() {}

  /** Adds the checks of the flyback diode. */
  static void into(ChannelInputs in, List<Check> checks) {
    if (!in.has(Fitted.FLYBACK_DIODE)) {
      return;
    }
    checks.add(
        VoltageMargin.check(
            CheckKind.DIODE_VOLTAGE, in, in.supplyHigh(), Term.DIODE_REVERSE_RATING));
    if (!in.isInductive()) {
      return;
    }
    checks.add(
        Check.of(
            CheckKind.DIODE_PEAK,
            in.loadAmps(),
            in.low(Term.DIODE_PEAK_RATING),
            in.datum(Term.LOAD_CURRENT),
            in.datum(Term.SUPPLY),
            in.datum(Term.DIODE_PEAK_RATING)));
    checks.add(average(in));
    checks.add(heated(in, share -> temperature(in, share)));
    if (in.has(Fitted.PWM)) {
      checks.add(recovery(in));
    } else if (in.knows(Term.INDUCTANCE) && in.knows(Term.PERIOD) && in.knows(Term.ON_TIME)) {
      checks.add(release(in));
    }
  }

  /** What is known only to be at least so long may fail, but not pass. */
  private static Check recovery(ChannelInputs in) {
    Datum stated = in.datum(Term.DIODE_RECOVERY);
    if (stated.isKnown() || Double.isNaN(stated.low())) {
      return recovery(in, stated.high(), stated);
    }
    Datum least = Datum.constant(stated.name(), stated.low(), stated.dimension(), stated.source());
    Check check = recovery(in, least.low(), least);
    return check.verdict() == Verdict.OVERLOADED ? check : check.lacking(List.of(stated));
  }

  private static Check recovery(ChannelInputs in, double seconds, Datum from) {
    return Check.of(
        CheckKind.DIODE_RECOVERY,
        seconds,
        RECOVERY_SHARE / in.high(Term.PWM_FREQUENCY),
        from,
        in.datum(Term.PWM_FREQUENCY),
        RECOVERY_LIMIT);
  }

  /** The coil's decay at its slowest: least forward voltage, most current. */
  static CoilDecay slowestDecay(ChannelInputs in) {
    return new CoilDecay(
        in.high(Term.INDUCTANCE),
        in.supplyHigh() / in.loadAmps(),
        in.loadAmps(),
        in.low(Term.DIODE_FORWARD));
  }

  /**
   * Mean diode current: what is known of it, and what is missing to know more. A release that comes
   * once a minute heats the diode as one that comes every second, as {@link Pulses} has it: its
   * body doesn't remember longer.
   */
  private static double averageAmps(ChannelInputs in) {
    double amps = in.loadAmps();
    if (in.has(Fitted.PWM)) {
      return in.knows(Term.DUTY) ? averageUnderPwm(amps, in.low(Term.DUTY) / 100) : amps;
    }
    if (in.knows(Term.INDUCTANCE) && in.knows(Term.PERIOD) && in.knows(Term.DIODE_FORWARD)) {
      return Math.min(
          amps, slowestDecay(in).coulombs() / Pulses.averagedSeconds(in.low(Term.PERIOD)));
    }
    return amps;
  }

  /** Mean diode current under PWM with a coil that keeps its current: I·(1 − D). */
  static double averageUnderPwm(double amps, double duty) {
    return amps * (1 - duty);
  }

  private static Datum absent(ChannelInputs in) {
    if (in.has(Fitted.PWM)) {
      return in.datum(Term.DUTY);
    }
    return in.knows(Term.INDUCTANCE) ? in.datum(Term.PERIOD) : in.datum(Term.INDUCTANCE);
  }

  /**
   * A check of the diode's heat: with VF as it is promised and, where the coil drives more current
   * than that promise is for, with the most that VF may be. A diode's curve bends towards less
   * voltage for more current, so its VF grows no faster than the current.
   */
  private static Check heated(ChannelInputs in, DoubleFunction<Check> check) {
    double promised = in.low(Term.DIODE_FORWARD_CURRENT);
    if (!(in.loadAmps() > promised)) {
      return check.apply(1);
    }
    String needed = Quantity.of(in.loadAmps(), Dimension.CURRENT).rounded(3);
    Datum missing =
        Datum.missing(
            Term.DIODE_FORWARD,
            "VF of "
                + in.parts().get(Role.FLYBACK_DIODE).name()
                + " at IF of "
                + needed
                + " or more: write it in datasheets.csv");
    return check.apply(1).upTo(check.apply(in.loadAmps() / promised), List.of(missing));
  }

  /** A rating at the leads' temperature needs them, and they get no hotter than the junction. */
  private static Check average(ChannelInputs in) {
    return in.knows(Term.DIODE_RATING_LEAD)
        ? heated(in, share -> average(in, junctionCelsius(in, share)))
        : average(in, in.ambient());
  }

  private static Check average(ChannelInputs in, double around) {
    boolean leads = in.knows(Term.DIODE_RATING_LEAD);
    Datum ratedAt = in.datum(leads ? Term.DIODE_RATING_LEAD : Term.DIODE_RATING_AIR);
    double junction = in.low(Term.DIODE_JUNCTION_RATING);
    double left = Math.max(0, (junction - around) / (junction - ratedAt.low()));
    double warm = around <= ratedAt.low() ? 1 : left;
    Datum[] data = {
      in.datum(Term.LOAD_CURRENT),
      in.datum(Term.SUPPLY),
      in.datum(Term.AMBIENT),
      in.datum(Term.DIODE_AVERAGE_RATING),
      ratedAt,
      in.datum(Term.DIODE_JUNCTION_RATING)
    };
    Check check =
        bounded(
            in,
            CheckKind.DIODE_CURRENT,
            averageAmps(in),
            in.low(Term.DIODE_AVERAGE_RATING) * warm,
            leads ? Datum.with(data, in.datum(Term.DIODE_FORWARD), wayToAir(in)) : data);
    return leads ? withWayToAir(in, check) : check;
  }

  /** Where no datasheet tells the way from the junction to the air, the most that it can be. */
  private static Datum wayToAir(ChannelInputs in) {
    Datum stated = in.datum(Term.DIODE_RTH);
    return stated.isKnown() || Double.isNaN(stated.high())
        ? stated
        : Datum.constant(stated.name(), stated.high(), stated.dimension(), stated.source());
  }

  /** What carries with the most carries; what doesn't may with what the datasheet lacks. */
  private static Check withWayToAir(ChannelInputs in, Check check) {
    Datum stated = in.datum(Term.DIODE_RTH);
    return stated.isKnown() || check.verdict() == Verdict.CARRIES
        ? check
        : check.lacking(List.of(stated));
  }

  private static double junctionCelsius(ChannelInputs in, double share) {
    double watts = share * in.high(Term.DIODE_FORWARD) * averageAmps(in);
    return in.ambient() + watts * in.high(Term.DIODE_RTH);
  }

  private static Check temperature(ChannelInputs in, double share) {
    return withWayToAir(
        in,
        bounded(
            in,
            CheckKind.DIODE_TEMPERATURE,
            junctionCelsius(in, share),
            in.low(Term.DIODE_JUNCTION_RATING) - SwitchChecks.MARGIN_KELVIN,
            in.datum(Term.AMBIENT),
            in.datum(Term.LOAD_CURRENT),
            in.datum(Term.SUPPLY),
            in.datum(Term.DIODE_FORWARD),
            wayToAir(in),
            in.datum(Term.DIODE_JUNCTION_RATING),
            SwitchChecks.HEAT_MARGIN));
  }

  private static Check bounded(
      ChannelInputs in, CheckKind kind, double actual, double allowed, Datum... data) {
    Datum absent = absent(in);
    return absent.isKnown()
        ? Check.of(kind, actual, allowed, data)
        : Check.bounded(kind, actual, allowed, absent, data);
  }

  private static Check release(ChannelInputs in) {
    return Check.of(
        CheckKind.RELEASE_TIME,
        slowestDecay(in).seconds(),
        in.low(Term.PERIOD) - in.high(Term.ON_TIME),
        in.datum(Term.INDUCTANCE),
        in.datum(Term.LOAD_CURRENT),
        in.datum(Term.SUPPLY),
        in.datum(Term.DIODE_FORWARD),
        in.datum(Term.PERIOD),
        in.datum(Term.ON_TIME));
  }
}
