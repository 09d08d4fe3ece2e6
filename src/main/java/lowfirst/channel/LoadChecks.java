package lowfirst.channel;

import java.util.List;
import lowfirst.board.Load.LoadKind;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.channel.formula.CopperTemperature;
import lowfirst.channel.formula.OnResistance;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Source;

/** Whether the load itself bears how it is switched. */
final class LoadChecks {
  private static final Datum SCOPE =
      Datum.constant(
          "scope",
          60,
          Dimension.VOLTAGE,
          Source.standard(
              "IEC 60335-1 clause 3.4.2, safety extra-low voltage: 60 V DC; above it local code"
                  + " and licensed practice decide"));

  /**
   * DIN VDE 0580, clauses 3.2.2 and 3.2.3: a relative duty is one of a cycle of 5 min, and 60 % and
   * 180 s are the most short of continuous duty.
   */
  private static final double CYCLE_SECONDS = 300;

  private static final double LONGEST_SECONDS = 180;
  private static final double CONTINUOUS_PERCENT = 100;

  private static final double USUAL_SHARE = 0.8;

  private static final Datum FULL =
      Datum.constant("D", 100, Dimension.PERCENT, Source.computed("wholly on"));
  private static final Datum WHOLLY_ON =
      Datum.missing(
          Term.DUTY,
          "whether the program drives the coil wholly on until it has pulled in, and only then holds"
              + " it by PWM: then write 100 % as its duty in loads.csv");

  private LoadChecks() {}

  /** Adds the checks of the load and of the voltage it hangs on. */
  static void into(ChannelInputs in, List<Check> checks) {
    checks.add(
        Check.of(
            CheckKind.VOLTAGE_SCOPE,
            in.supplyHigh(),
            SCOPE.nominal(),
            in.datum(Term.SUPPLY),
            SCOPE));
    ownHeat(in, checks);
    if (in.knows(Term.PULL_IN)) {
      checks.add(pullIn(in));
    } else if (isCoil(in)) {
      Check usual = pullIn(in.with(usualPullIn(in)));
      checks.add(
          usual.verdict() == Verdict.OVERLOADED
              ? usual.lacking(List.of(in.datum(Term.PULL_IN)))
              : usual);
    }
  }

  private static boolean isCoil(ChannelInputs in) {
    return in.loadKind() == LoadKind.SOLENOID || in.loadKind() == LoadKind.RELAY;
  }

  /** What a hot coil made for the rail pulls in at, as the cold voltage that makers state. */
  private static Datum usualPullIn(ChannelInputs in) {
    return Datum.of(
        Term.PULL_IN,
        USUAL_SHARE * in.nominal(Term.SUPPLY) / hotFactor(in),
        Source.assumed(
            "made for this rail, and pulls in hot at 80 % of it: common practice",
            "loads.csv pull-in voltage"));
  }

  private static double hotFactor(ChannelInputs in) {
    return CopperTemperature.factor(20, in.ambient() + in.high(Term.TEMPERATURE_RISE));
  }

  private static Check pullIn(ChannelInputs in) {
    Check pullIn = pullIn(in, FULL);
    Datum duty = in.knows(Term.DUTY) ? in.datum(Term.DUTY) : GateChecks.UNSTATED_DUTY;
    if (in.has(Fitted.PWM)) {
      pullIn = pullIn.upTo(pullIn(in, duty), List.of(WHOLLY_ON));
    }
    boolean isSwitchedByStage = in.switching() != ChannelInputs.Switching.MOSFET;
    return isSwitchedByStage ? StageChecks.promised(in, pullIn) : pullIn;
  }

  /**
   * How long and how often it is on against what it bears. What is rated for continuous duty bears
   * anything, also a program that hangs; of a coil it must be known, of others it counts if stated.
   */
  private static void ownHeat(ChannelInputs in, List<Check> checks) {
    boolean isCoil = isCoil(in);
    Datum duty = in.datum(Term.RATED_DUTY);
    boolean isContinuous = duty.low() >= CONTINUOUS_PERCENT && duty.canPass();
    Datum longest = in.datum(Term.MAX_ON_TIME);
    if (isCoil && !longest.isKnown() && duty.isKnown() && !isContinuous) {
      longest = ofUsualCycle(duty);
    }
    if (longest.isKnown()) {
      checks.add(
          Check.of(
              CheckKind.ON_TIME,
              in.high(Term.ON_TIME),
              longest.low(),
              in.datum(Term.ON_TIME),
              longest));
    }
    if (!in.knows(Term.RATED_DUTY) && isCoil) {
      checks.add(Check.of(CheckKind.LOAD_DUTY, Double.NaN, Double.NaN, in.datum(Term.RATED_DUTY)));
    } else if (in.low(Term.RATED_DUTY) < CONTINUOUS_PERCENT) {
      checks.add(
          Check.of(
              CheckKind.LOAD_DUTY,
              dutyPercent(in.high(Term.ON_TIME), in.low(Term.PERIOD)),
              duty.low(),
              in.datum(Term.ON_TIME),
              in.datum(Term.PERIOD),
              duty));
    }
  }

  /** What a rated duty means where no longest on time stands beside it. */
  private static Datum ofUsualCycle(Datum duty) {
    return Datum.of(
        Term.MAX_ON_TIME,
        longestOnSeconds(duty.low()),
        duty.canPass()
            ? Source.assumed(
                "a duty of a cycle of 5 min, DIN VDE 0580 clause 3.2.2",
                "loads.csv max on time, where its maker allows less")
            : duty.source());
  }

  /** The longest on time that a relative duty stands for, where its maker states none. */
  static double longestOnSeconds(double ratedPercent) {
    return Math.min(LONGEST_SECONDS, ratedPercent / 100 * CYCLE_SECONDS);
  }

  /** Duty in per cent: on time over on and off time together. */
  static double dutyPercent(double onSeconds, double periodSeconds) {
    return 100 * onSeconds / periodSeconds;
  }

  private static Check pullIn(ChannelInputs in, Datum duty) {
    double share = duty.low() / 100;
    double freewheeling = in.knows(Term.DIODE_FORWARD) ? in.high(Term.DIODE_FORWARD) : 0;
    double needed = in.high(Term.PULL_IN) * hotFactor(in);
    double ohms = PathChecks.loopOhms(in);
    double switched = in.high(Term.SATURATION);
    Datum[] from = {in.datum(Term.SATURATION)};
    if (in.switching() == ChannelInputs.Switching.MOSFET) {
      OnResistance.Line line = in.onResistance().earned(in.gateVolts(), in.loadAmps());
      double junction = SwitchChecks.junctionCelsius(in, line);
      double hottest = Math.min(junction, in.low(Term.JUNCTION_RATING));
      switched = in.loadAmps() * line.maxOhms() * in.hotFactor().at(hottest);
      from = Datum.with(SwitchChecks.heatedBy(in, line, junction), in.datum(Term.JUNCTION_RATING));
    }
    double on = in.low(Term.SUPPLY) - in.loadAmps() * ohms - switched - in.high(Term.RETURN_LIFT);
    double left = share * on - (1 - share) * freewheeling;
    return Check.of(
        CheckKind.PULL_IN,
        left,
        needed,
        Datum.with(
            Datum.with(from, PathChecks.loopFrom(in)),
            in.datum(Term.SUPPLY),
            in.datum(Term.LOAD_CURRENT),
            in.datum(Term.RETURN_LIFT),
            in.datum(Term.PULL_IN),
            in.datum(Term.TEMPERATURE_RISE),
            in.datum(Term.AMBIENT),
            duty));
  }
}
