package lowfirst.channel;

import java.util.List;
import lowfirst.board.OutputChannel.PullDownSide;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.channel.formula.GateNetwork;
import lowfirst.channel.formula.OnResistance;
import lowfirst.channel.formula.ResistorRating;
import lowfirst.channel.formula.SwitchingLoss;
import lowfirst.channel.formula.SwitchingTime;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Source;

/** Whether the driver turns the MOSFET fully on, safely off, and within its own strength. */
final class GateChecks {
  /** Loss of threshold per kelvin above 25 °C (International Rectifier IRLB8721, PD-97390). */
  private static final double THRESHOLD_PER_KELVIN = 0.007;

  private static final Datum LEAKAGE =
      Datum.constant(
          "Ileak",
          10e-6,
          Dimension.CURRENT,
          Source.assumed("an undriven pin leaks at most 10 µA", "drivers.csv at reset"));
  private static final Datum SUPPLY_RISE =
      Datum.constant(
          "trise",
          1e-3,
          Dimension.TIME,
          new Source(
              Source.Origin.ASSUMED,
              "assumed: the rail rises in 1 ms or slower, by its own switch, not plugged in live"));

  private GateChecks() {}

  /** Adds the checks of the gate. */
  static void into(ChannelInputs in, List<Check> checks) {
    checks.add(level(in));
    checks.add(
        Check.of(
            CheckKind.GATE_LIMIT,
            in.high(Term.DRIVE_CEILING),
            in.low(Term.GATE_RATING),
            in.datum(Term.DRIVE_CEILING),
            in.datum(Term.GATE_RATING)));
    checks.add(off(in));
    // an optocoupler lets no more through than its light gives, whatever the gate would take
    if (!in.has(Fitted.OPTOCOUPLED_GATE)) {
      checks.add(driveCurrent(in));
    }
    if (in.has(Fitted.PULL_DOWN)) {
      checks.add(pullDownPower(in));
    }
    if (in.has(Fitted.GATE_RESISTOR) && in.has(Fitted.PWM)) {
      checks.add(gateResistorPower(in));
    }
    if (in.has(Fitted.PWM)) {
      checks.add(switchingTime(in));
    }
  }

  private static Check level(ChannelInputs in) {
    double gate = in.gateVolts();
    double amps = in.loadAmps();
    OnResistance.Line earned = in.onResistance().earned(gate, amps);
    double needed = in.onResistance().leastGateVolts(amps);
    double allowed = Double.isNaN(earned.gateVolts()) ? needed : earned.gateVolts();
    Datum line =
        Double.isInfinite(allowed) || Double.isNaN(allowed)
            ? in.missingLine()
            : Datum.constant("VGS of the line", allowed, Dimension.VOLTAGE, source(in, earned));
    return CouplerChecks.level(
        in,
        Check.of(
            CheckKind.GATE_LEVEL,
            gate,
            allowed,
            Datum.with(levelFrom(in), in.datum(Term.LOAD_CURRENT), in.datum(Term.SUPPLY), line)));
  }

  /** What the level at the gate follows from, and with it RDSon and all the MOSFET's heat. */
  static Datum[] levelFrom(ChannelInputs in) {
    Datum drive = in.datum(Term.DRIVE_RESISTANCE);
    // What stands twice is shown once.
    return new Datum[] {
      in.datum(Term.DRIVE_LEVEL),
      drive,
      in.has(Fitted.GATE_RESISTOR) ? in.datum(Term.GATE_RESISTOR) : drive,
      in.has(Fitted.PULL_DOWN) ? in.datum(Term.PULL_DOWN) : drive,
      in.datum(Term.RETURN_LIFT),
      CouplerChecks.isOpen(in) ? in.datum(Term.TRANSFER_VOLTAGE) : drive,
      CouplerChecks.isOpen(in) ? in.datum(Term.SATURATION) : drive
    };
  }

  /** The RDSon line that the datasheet would have to hold, where none fits. */
  static Datum missingLine(ChannelInputs in) {
    if (CouplerChecks.isOpen(in)) {
      return CouplerChecks.levelLeft(in);
    }
    return Datum.missing(
        Term.ON_RESISTANCE,
        new MissingLine(in.switchName(), in.gateVolts(), in.loadAmps()).words());
  }

  private static Source source(ChannelInputs in, OnResistance.Line earned) {
    if (!Double.isNaN(earned.gateVolts())) {
      return earned.source();
    }
    return in.onResistance().lines().get(0).source();
  }

  static final Datum NOT_FITTED =
      Datum.constant("not fitted", 0, Dimension.RATIO, Source.kit("channels.csv: none fitted"));

  /** The level at the gate that the driver leaves when off, or that an undriven gate drifts to. */
  private static Check off(ChannelInputs in) {
    double hotter = Math.max(0, in.ambient() - 25);
    double allowed = in.low(Term.THRESHOLD) - THRESHOLD_PER_KELVIN * hotter;
    if (in.has(Fitted.ON_AT_RESET)) {
      return Check.of(
          CheckKind.GATE_OFF,
          in.high(Term.DRIVE_CEILING),
          allowed,
          in.datum(Term.DRIVE_CEILING),
          in.datum(Term.THRESHOLD),
          in.datum(Term.AMBIENT));
    }
    if (in.has(Fitted.DRIVEN_AT_RESET)) {
      Check low =
          Check.of(
              CheckKind.GATE_OFF,
              in.high(Term.DRIVE_LOW),
              allowed,
              in.datum(Term.DRIVE_LOW),
              in.datum(Term.THRESHOLD),
              in.datum(Term.AMBIENT));
      return in.has(Fitted.PULL_DOWN) || low.verdict() != Verdict.CARRIES
          ? low
          : low.lacking(List.of(NOT_YET_DRIVEN));
    }
    if (!in.has(Fitted.PULL_DOWN)) {
      return Check.of(
          CheckKind.GATE_OFF,
          in.supplyHigh(),
          allowed,
          in.datum(Term.SUPPLY),
          in.datum(Term.THRESHOLD),
          in.datum(Term.AMBIENT),
          FLOATING);
    }
    boolean atGate = in.channel().pullDownSide() == PullDownSide.GATE;
    double series = atGate || !in.has(Fitted.GATE_RESISTOR) ? 0 : in.high(Term.GATE_RESISTOR);
    double ohms = in.high(Term.PULL_DOWN) + series;
    double drift = ohms * (LEAKAGE.nominal() + in.high(Term.MILLER_CHARGE) / SUPPLY_RISE.nominal());
    return Check.of(
        CheckKind.GATE_OFF,
        Math.max(drift, in.knows(Term.DRIVE_LOW) ? in.high(Term.DRIVE_LOW) : 0),
        allowed,
        in.datum(Term.PULL_DOWN),
        atGate || !in.has(Fitted.GATE_RESISTOR) ? LEAKAGE : in.datum(Term.GATE_RESISTOR),
        in.datum(Term.MILLER_CHARGE),
        in.datum(Term.THRESHOLD),
        in.datum(Term.AMBIENT),
        LEAKAGE,
        SUPPLY_RISE);
  }

  /** Common practice: a driver drives nothing until its own supply is up. */
  private static final Datum NOT_YET_DRIVEN =
      Datum.missing(
          Term.PULL_DOWN,
          "a pull-down at the gate: the driver holds the gate low only when it has its own supply,"
              + " and the load's may be there before: fit one and name it in channels.csv");

  private static final Datum FLOATING =
      Datum.constant(
          "no pull-down",
          0,
          Dimension.RATIO,
          Source.kit(
              "channels.csv: no pull-down, and the driver leaves the gate undriven at reset: it"
                  + " may drift to the rail"));

  /** What the pin must deliver into a gate's capacitance, or for good into a base. */
  static Check driveCurrent(ChannelInputs in) {
    double volts = in.high(Term.DRIVE_CEILING);
    double gateOhms = in.has(Fitted.GATE_RESISTOR) ? in.low(Term.GATE_RESISTOR) : 0;
    double series = Math.max(gateOhms, in.low(Term.DRIVE_RESISTANCE));
    double steady = in.has(Fitted.PULL_DOWN) ? volts / in.low(Term.PULL_DOWN) : 0;
    return Check.of(
        CheckKind.GATE_DRIVE_CURRENT,
        volts / series + steady,
        in.low(Term.DRIVE_LIMIT),
        in.datum(Term.DRIVE_CEILING),
        in.has(Fitted.GATE_RESISTOR) ? in.datum(Term.GATE_RESISTOR) : NOT_FITTED,
        in.datum(Term.DRIVE_RESISTANCE),
        in.has(Fitted.PULL_DOWN) ? in.datum(Term.PULL_DOWN) : NOT_FITTED,
        in.datum(Term.DRIVE_LIMIT));
  }

  private static Check pullDownPower(ChannelInputs in) {
    double volts = in.high(Term.DRIVE_CEILING);
    return Check.of(
        CheckKind.PULL_DOWN_POWER,
        volts * volts / in.low(Term.PULL_DOWN),
        new ResistorRating(in.low(Term.PULL_DOWN_RATING), in.high(Term.PULL_DOWN))
            .watts(in.ambient()),
        in.datum(Term.DRIVE_CEILING),
        in.datum(Term.PULL_DOWN),
        in.datum(Term.PULL_DOWN_RATING),
        in.datum(Term.AMBIENT));
  }

  /** Charging and discharging the gate turns V·Q of every period into heat, at worst all in RG. */
  private static Check gateResistorPower(ChannelInputs in) {
    double charge = in.high(Term.GATE_SOURCE_CHARGE) + in.high(Term.MILLER_CHARGE);
    return Check.of(
        CheckKind.GATE_RESISTOR_POWER,
        SwitchingLoss.gateWatts(in.high(Term.DRIVE_CEILING), charge, in.high(Term.PWM_FREQUENCY)),
        new ResistorRating(in.low(Term.GATE_RESISTOR_RATING), in.high(Term.GATE_RESISTOR))
            .watts(in.ambient()),
        in.datum(Term.DRIVE_CEILING),
        in.datum(Term.GATE_SOURCE_CHARGE),
        in.datum(Term.MILLER_CHARGE),
        in.datum(Term.PWM_FREQUENCY),
        in.datum(Term.GATE_RESISTOR),
        in.datum(Term.GATE_RESISTOR_RATING),
        in.datum(Term.AMBIENT));
  }

  /** A saturated phototransistor opens many times later than makers state for a small load. */
  private static final Datum COUPLER_OFF =
      Datum.missing(
          Term.PWM_FREQUENCY,
          "how long the optocoupler itself takes to turn off into this pull-down: measure it, drive"
              + " the gate from a pin, or leave the PWM frequency away and only switch on and off");

  static final Datum UNSTATED_DUTY =
      Datum.of(
          Term.DUTY,
          10,
          50,
          90,
          Source.assumed("on for 10 % to 90 % of each period", "loads.csv duty"));

  private static Check switchingTime(ChannelInputs in) {
    Datum duty = in.knows(Term.DUTY) ? in.datum(Term.DUTY) : UNSTATED_DUTY;
    double shorter = Math.min(duty.low(), 100 - duty.high()) / 100;
    // at 0 % and 100 % it never switches: half a period stands for that
    double share = shorter <= 0 ? 0.5 : shorter;
    Check check = switchingTime(in, duty, share);
    return in.has(Fitted.OPTOCOUPLED_GATE) && check.verdict() == Verdict.CARRIES
        ? check.lacking(List.of(COUPLER_OFF))
        : check;
  }

  private static Check switchingTime(ChannelInputs in, Datum duty, double share) {
    return Check.of(
        CheckKind.SWITCHING_TIME,
        edgesSeconds(in),
        share / in.high(Term.PWM_FREQUENCY),
        Datum.with(
            levelFrom(in),
            duty,
            in.datum(Term.GATE_SOURCE_CHARGE),
            in.datum(Term.MILLER_CHARGE),
            in.datum(Term.PLATEAU),
            in.datum(Term.THRESHOLD),
            in.datum(Term.PWM_FREQUENCY)));
  }

  /** Longest turn-on and turn-off together, in seconds. */
  static double edgesSeconds(ChannelInputs in) {
    return onSeconds(in) + offSeconds(in);
  }

  static double onSeconds(ChannelInputs in) {
    GateNetwork gate = in.weakestGate();
    return new SwitchingTime(
            slowestOhms(in),
            in.high(Term.GATE_SOURCE_CHARGE),
            in.high(Term.MILLER_CHARGE),
            in.low(Term.THRESHOLD),
            in.high(Term.PLATEAU))
        .onSeconds(gate.gateVolts() - in.high(Term.RETURN_LIFT));
  }

  static double offSeconds(ChannelInputs in) {
    double low = in.knows(Term.DRIVE_LOW) ? in.high(Term.DRIVE_LOW) : 0;
    return new SwitchingTime(
            slowestOffOhms(in),
            in.high(Term.GATE_SOURCE_CHARGE),
            in.high(Term.MILLER_CHARGE),
            in.low(Term.THRESHOLD),
            in.low(Term.PLATEAU))
        .offSeconds(low);
  }

  /** What only pulls up leaves it to the pull-down to discharge the gate. */
  private static double slowestOffOhms(ChannelInputs in) {
    if (!in.has(Fitted.OPTOCOUPLED_GATE)) {
      return slowestOhms(in);
    }
    if (!in.has(Fitted.PULL_DOWN)) {
      return Double.POSITIVE_INFINITY;
    }
    boolean through = in.has(Fitted.GATE_RESISTOR) && !in.pullDownAtGate();
    return in.high(Term.PULL_DOWN) + (through ? in.high(Term.GATE_RESISTOR) : 0);
  }

  /** The largest resistance that charges the gate. */
  private static double slowestOhms(ChannelInputs in) {
    return new GateNetwork(
            in.high(Term.DRIVE_LEVEL),
            in.high(Term.DRIVE_RESISTANCE),
            in.has(Fitted.GATE_RESISTOR) ? in.high(Term.GATE_RESISTOR) : 0,
            in.has(Fitted.PULL_DOWN) ? in.high(Term.PULL_DOWN) : Double.POSITIVE_INFINITY,
            in.pullDownAtGate())
        .chargingOhms();
  }
}
