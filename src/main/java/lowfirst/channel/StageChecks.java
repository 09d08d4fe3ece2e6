package lowfirst.channel;

import java.util.List;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.ChannelInputs.Switching;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.channel.formula.SwitchingLoss;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * Drivers that carry the load themselves, without a MOSFET: Darlington array, optocoupler,
 * constant-current sink, bipolar transistor.
 */
final class StageChecks {
  private StageChecks() {}

  /** Adds the checks of a stage that carries the load. */
  static void into(ChannelInputs in, List<Check> checks) {
    checks.add(
        Check.of(
            CheckKind.STAGE_CURRENT,
            in.loadAmps(),
            in.low(Term.DRAIN_CURRENT_RATING),
            in.datum(Term.LOAD_CURRENT),
            in.datum(Term.SUPPLY),
            in.datum(Term.DRAIN_CURRENT_RATING)));
    // a sink lets no more through, whatever the load would draw
    boolean hasInrush = SwitchChecks.hasInrush(in) && in.switching() != Switching.CURRENT_SINK;
    if (hasInrush) {
      checks.add(SwitchChecks.inrush(in));
    }
    if (in.switching() == Switching.DARLINGTON_ARRAY) {
      checks.add(total(in));
    }
    checks.add(voltage(in));
    if (in.switching() == Switching.BIPOLAR_TRANSISTOR) {
      ChannelInputs most = hasInrush ? in.atInrush() : in;
      checks.add(promised(most, forcedGain(most)));
      checks.add(GateChecks.driveCurrent(in));
    }
    if (in.switching() == Switching.OPTOCOUPLER) {
      checks.add(optocoupler(in, in.loadAmps(), in.datum(Term.LOAD_CURRENT)));
    }
    checks.add(promised(in, temperature(CheckKind.STAGE_TEMPERATURE, in)));
  }

  /** Where no rating of all outputs is stated, the common pin bears what one of them may carry. */
  private static Check total(ChannelInputs in) {
    boolean isStated = in.knows(Term.TOTAL_CURRENT_RATING);
    Term rating = isStated ? Term.TOTAL_CURRENT_RATING : Term.DRAIN_CURRENT_RATING;
    Check check =
        Check.of(
            CheckKind.STAGE_TOTAL,
            in.loadAmps() + in.high(Term.OTHERS_ON_STAGE),
            in.low(rating),
            in.datum(Term.LOAD_CURRENT),
            in.datum(Term.SUPPLY),
            in.datum(Term.OTHERS_ON_STAGE),
            in.datum(rating));
    return isStated || check.verdict() == Verdict.CARRIES
        ? check
        : check.lacking(List.of(in.datum(Term.TOTAL_CURRENT_RATING)));
  }

  /** What rests on VCEsat passes only up to the current for which VCEsat is promised. */
  static Check promised(ChannelInputs in, Check check) {
    Datum tested = in.datum(Term.SATURATION_CURRENT);
    if (check.verdict() != Verdict.CARRIES || !tested.isKnown() || in.loadAmps() <= tested.low()) {
      return check;
    }
    String needed = Quantity.of(in.loadAmps(), Dimension.CURRENT).rounded(3);
    return check.lacking(
        List.of(
            Datum.missing(
                Term.SATURATION,
                "VCEsat of "
                    + in.switchName()
                    + " at IC of "
                    + needed
                    + " or more: write it in datasheets.csv")));
  }

  /** An optocoupler that is to stay saturated at this current. */
  static Check optocoupler(ChannelInputs in, double amps, Datum from) {
    return Check.of(
        CheckKind.OPTO_CURRENT,
        amps,
        saturatedAmps(in.low(Term.INPUT_CURRENT), in.low(Term.FORCED_GAIN_RATING)),
        from,
        in.datum(Term.INPUT_CURRENT),
        in.datum(Term.FORCED_GAIN_RATING));
  }

  /** The current up to which an optocoupler's VCEsat is promised: IF times its forced ratio. */
  static double saturatedAmps(double inputAmps, double forcedRatio) {
    return inputAmps * forcedRatio;
  }

  private static Check voltage(ChannelInputs in) {
    boolean openCoil = in.isInductive() && !in.has(Fitted.FLYBACK_DIODE);
    return openCoil
        ? VoltageMargin.check(
            CheckKind.STAGE_VOLTAGE, in, Double.POSITIVE_INFINITY, Term.DRAIN_RATING)
        : VoltageMargin.whenOff(CheckKind.STAGE_VOLTAGE, in);
  }

  /** Base current left in the worst case, in amperes. */
  static double baseAmps(ChannelInputs in) {
    double base = in.high(Term.BASE_VOLTAGE);
    double series =
        in.high(Term.DRIVE_RESISTANCE)
            + (in.has(Fitted.GATE_RESISTOR) ? in.high(Term.GATE_RESISTOR) : 0);
    double lost = in.has(Fitted.PULL_DOWN) ? base / in.low(Term.PULL_DOWN) : 0;
    double drive = in.low(Term.DRIVE_LEVEL) - in.high(Term.RETURN_LIFT) - base;
    return Math.max(0, drive / series - lost);
  }

  /** Forced gain: collector current over base current. */
  static double forcedGain(double collectorAmps, double baseAmps) {
    return collectorAmps / baseAmps;
  }

  private static Check forcedGain(ChannelInputs in) {
    double base = baseAmps(in);
    return Check.of(
        CheckKind.FORCED_GAIN,
        forcedGain(in.loadAmps(), base),
        in.low(Term.FORCED_GAIN_RATING),
        Datum.with(baseFrom(in), in.datum(Term.LOAD_CURRENT), in.datum(Term.SUPPLY)));
  }

  /** What the base current follows from, and what it is held against. */
  static Datum[] baseFrom(ChannelInputs in) {
    return new Datum[] {
      in.datum(Term.DRIVE_LEVEL),
      in.datum(Term.DRIVE_RESISTANCE),
      in.has(Fitted.GATE_RESISTOR) ? in.datum(Term.GATE_RESISTOR) : GateChecks.NOT_FITTED,
      in.has(Fitted.PULL_DOWN) ? in.datum(Term.PULL_DOWN) : GateChecks.NOT_FITTED,
      in.datum(Term.RETURN_LIFT),
      in.datum(Term.BASE_VOLTAGE),
      in.datum(Term.FORCED_GAIN_RATING)
    };
  }

  /** The package in a steady state. */
  static Check temperature(CheckKind kind, ChannelInputs in) {
    double amps = in.loadAmps() + in.high(Term.OTHERS_ON_STAGE);
    boolean edges = in.has(Fitted.PWM) && in.switching() != Switching.CURRENT_SINK;
    double watts = in.high(Term.SATURATION) * amps + (edges ? edgeWatts(in, amps) : 0);
    Datum[] data = {
      in.datum(Term.AMBIENT),
      in.datum(Term.LOAD_CURRENT),
      in.datum(Term.SUPPLY),
      in.datum(Term.OTHERS_ON_STAGE),
      in.datum(Term.SATURATION),
      in.datum(Term.RTH_AIR),
      in.datum(Term.JUNCTION_RATING),
      SwitchChecks.HEAT_MARGIN
    };
    return Check.of(
        kind,
        packageCelsius(in.ambient(), in.high(Term.RTH_AIR), watts),
        in.low(Term.JUNCTION_RATING) - SwitchChecks.MARGIN_KELVIN,
        edges ? Datum.with(data, in.datum(Term.STAGE_EDGES), in.datum(Term.PWM_FREQUENCY)) : data);
  }

  /** Heat of PWM's edges, slow where a saturated base must be emptied first. */
  private static double edgeWatts(ChannelInputs in, double amps) {
    double seconds = in.high(Term.STAGE_EDGES);
    double joules =
        in.isInductive()
            ? SwitchingLoss.inductiveJoules(in.supplyHigh(), amps, seconds)
            : SwitchingLoss.resistiveJoules(in.supplyHigh(), 0, amps, seconds);
    return joules * in.high(Term.PWM_FREQUENCY);
  }

  /** Junction temperature of a package that turns this power into heat. */
  static double packageCelsius(double ambient, double kelvinPerWatt, double watts) {
    return ambient + kelvinPerWatt * watts;
  }
}
