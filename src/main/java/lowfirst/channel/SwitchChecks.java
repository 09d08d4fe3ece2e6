package lowfirst.channel;

import java.util.List;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.formula.Avalanche;
import lowfirst.channel.formula.OnResistance;
import lowfirst.channel.formula.SwitchingLoss;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Source;

/** Whether the MOSFET bears current, voltage and heat. */
final class SwitchChecks {
  /** Kelvin kept below the junction rating. */
  static final double MARGIN_KELVIN = 25;

  /** The same margin as an input that a check shows. */
  static final Datum HEAT_MARGIN =
      Datum.constant(
          "margin below TJmax",
          MARGIN_KELVIN,
          Dimension.TEMPERATURE_RISE,
          Source.standard("common practice: 25 K below the rating"));

  private static final Term[] EDGES = {
    Term.GATE_SOURCE_CHARGE,
    Term.MILLER_CHARGE,
    Term.PLATEAU,
    Term.THRESHOLD,
    Term.OUTPUT_CAPACITANCE,
    Term.PWM_FREQUENCY
  };

  private SwitchChecks() {}

  /** Adds the checks of the MOSFET. */
  static void into(ChannelInputs in, List<Check> checks) {
    checks.add(
        Check.of(
            CheckKind.DRAIN_CURRENT,
            in.loadAmps(),
            in.low(Term.DRAIN_CURRENT_RATING),
            in.datum(Term.LOAD_CURRENT),
            in.datum(Term.SUPPLY),
            in.datum(Term.DRAIN_CURRENT_RATING)));
    if (hasInrush(in)) {
      checks.add(inrush(in));
    }
    checks.add(heat(CheckKind.JUNCTION_TEMPERATURE, in));
    if (hasInrush(in)) {
      checks.add(
          pulseHeat(CheckKind.INRUSH_JUNCTION, in, in.atInrush(), in.datum(Term.INRUSH_TIME)));
    }
    checks.add(VoltageMargin.whenOff(CheckKind.DRAIN_VOLTAGE, in));
    if (in.isInductive() && !in.has(Fitted.FLYBACK_DIODE)) {
      avalanche(in, checks);
    }
    if (in.safeArea().isKnown() && in.has(Fitted.PWM)) {
      checks.add(safeArea(in));
    }
  }

  /** Whether what carries the load bears its inrush for a moment. */
  static Check inrush(ChannelInputs in) {
    return Check.of(
        CheckKind.INRUSH_CURRENT,
        in.inrushAmps(),
        in.low(Term.PULSE_CURRENT_RATING),
        in.datum(Term.INRUSH),
        in.datum(Term.LOAD_CURRENT),
        in.datum(Term.SUPPLY),
        in.datum(Term.PULSE_CURRENT_RATING));
  }

  static boolean hasInrush(ChannelInputs in) {
    return switch (in.loadKind()) {
      case LAMP, MOTOR, CAPACITIVE -> true;
      case SOLENOID, RELAY, LED, RESISTIVE -> in.knows(Term.INRUSH);
    };
  }

  /** Thermal resistance from junction to air of the whole chain, K/W. */
  static double junctionToAir(ChannelInputs in) {
    return in.has(Fitted.HEATSINK)
        ? in.high(Term.RTH_CASE) + in.high(Term.HEATSINK)
        : in.high(Term.RTH_AIR);
  }

  /**
   * The effective thermal resistance for the loss while on: the case by its mean, the chip by its
   * transient impedance.
   */
  static double effectiveResistance(ChannelInputs in) {
    double toAir = junctionToAir(in);
    double toCase = in.high(Term.RTH_CASE);
    double share = in.heatingShare();
    if (share >= 1 || Double.isNaN(toCase) || toCase > toAir) {
      return toAir;
    }
    double on = in.high(Term.ON_TIME);
    double period = Math.min(in.low(Term.PERIOD), 1);
    boolean pulses = in.impedance().isKnown() && on < period;
    double chip = pulses ? in.impedance().repeated(on, period, toCase) : toCase;
    return share * (toAir - toCase) + chip;
  }

  /** Heat of the edges, in watts, mean over time. */
  static double switchingWatts(ChannelInputs in) {
    double volts = in.supplyHigh();
    double amps = in.loadAmps();
    double seconds = GateChecks.edgesSeconds(in);
    double edge =
        in.isInductive()
            ? SwitchingLoss.inductiveJoules(volts, amps, seconds)
            : SwitchingLoss.resistiveJoules(volts, 0, amps, seconds);
    if (in.has(Fitted.PWM)) {
      double capacitance = SwitchingLoss.capacitiveJoules(in.high(Term.OUTPUT_CAPACITANCE), volts);
      double recovery =
          in.isInductive() && in.has(Fitted.FLYBACK_DIODE) && in.knows(Term.DIODE_RECOVERY)
              ? volts * amps * in.high(Term.DIODE_RECOVERY)
              : 0;
      return (edge + capacitance + recovery) * in.high(Term.PWM_FREQUENCY);
    }
    double rate = in.knows(Term.PERIOD) ? 1 / in.low(Term.PERIOD) : 0;
    double known = Double.isFinite(edge) ? edge : 0;
    return (known + avalancheJoules(in)) * rate;
  }

  /** Heat of the whole MOSFET, in watts, mean over time, as hot as it may get; NaN when unknown. */
  static double hottestWatts(ChannelInputs in) {
    double ohms = earned(in).maxOhms() * in.high(Term.ON_RESISTANCE_FACTOR);
    double hot = in.hotFactor().at(in.low(Term.JUNCTION_RATING) - MARGIN_KELVIN);
    double amps = in.heatingAmps();
    return amps * amps * ohms * hot + switchingWatts(in);
  }

  private static double avalancheJoules(ChannelInputs in) {
    if (!in.isInductive() || in.has(Fitted.FLYBACK_DIODE) || !in.knows(Term.INDUCTANCE)) {
      return 0;
    }
    double joules =
        Avalanche.joules(
            in.high(Term.INDUCTANCE), in.loadAmps(), in.low(Term.DRAIN_RATING), in.supplyHigh());
    return Double.isFinite(joules) ? joules : 0;
  }

  /** Junction temperature in the worst case, °C; infinite at thermal runaway; NaN when unknown. */
  static double junctionCelsius(ChannelInputs in, OnResistance.Line line) {
    double ohms = line.maxOhms() * in.high(Term.ON_RESISTANCE_FACTOR);
    double amps = in.loadAmps();
    double others =
        in.has(Fitted.HEATSINK) ? in.high(Term.HEATSINK) * in.high(Term.OTHERS_ON_HEATSINK) : 0;
    double base = in.ambient() + others + junctionToAir(in) * switchingWatts(in);
    return in.hotFactor().balance(base, effectiveResistance(in) * amps * amps * ohms);
  }

  /** The junction in a steady state. */
  static Check heat(CheckKind kind, ChannelInputs in) {
    OnResistance.Line line = earned(in);
    double junction = junctionCelsius(in, line);
    return Check.of(
        kind,
        junction,
        in.low(Term.JUNCTION_RATING) - MARGIN_KELVIN,
        Datum.with(heatedBy(in, line, junction), in.datum(Term.JUNCTION_RATING), HEAT_MARGIN));
  }

  /** What a junction temperature follows from; every check that uses one shows it. */
  static Datum[] heatedBy(ChannelInputs in, OnResistance.Line line, double junction) {
    Datum[] steady = {
      in.datum(Term.AMBIENT),
      in.datum(Term.LOAD_CURRENT),
      in.datum(Term.SUPPLY),
      resistance(in, line),
      Datum.constant(
          "k(TJ)",
          in.hotFactor().at(Math.min(junction, 1000)),
          Dimension.RATIO,
          in.hotFactor().source()),
      in.has(Fitted.HEATSINK) ? in.datum(Term.HEATSINK) : in.datum(Term.RTH_AIR),
      in.has(Fitted.HEATSINK) || in.heatingShare() < 1 ? caseResistance(in) : in.datum(Term.AMBIENT)
    };
    Datum[] data = Datum.with(GateChecks.levelFrom(in), steady);
    if (in.has(Fitted.HEATSINK)) {
      data = Datum.with(data, in.datum(Term.OTHERS_ON_HEATSINK));
    }
    return in.has(Fitted.PWM) ? Datum.with(data, edges(in)) : data;
  }

  /** What the edges' heat follows from; without PWM they are few, and count as far as known. */
  private static Datum[] edges(ChannelInputs in) {
    var edges = new Datum[EDGES.length];
    for (int i = 0; i < edges.length; i++) {
      edges[i] = in.datum(EDGES[i]);
    }
    return edges;
  }

  /** RthJC is a must with a heatsink; without it pulses just count as lasting for ever. */
  private static Datum caseResistance(ChannelInputs in) {
    return in.has(Fitted.HEATSINK) || in.knows(Term.RTH_CASE)
        ? in.datum(Term.RTH_CASE)
        : in.datum(Term.AMBIENT);
  }

  private static Datum resistance(ChannelInputs in, OnResistance.Line line) {
    if (Double.isNaN(line.maxOhms())) {
      return in.missingLine();
    }
    return Datum.of(
        Term.ON_RESISTANCE, line.maxOhms() * in.high(Term.ON_RESISTANCE_FACTOR), line.source());
  }

  /**
   * The junction at the end of a pulse on top of the running temperature.
   *
   * @param peak the channel as if it drew the pulse's current for good
   */
  static Check pulseHeat(CheckKind kind, ChannelInputs in, ChannelInputs peak, Datum lasts) {
    OnResistance.Line line = earned(peak);
    double ohms = line.maxOhms() * in.high(Term.ON_RESISTANCE_FACTOR);
    double amps = peak.loadAmps();
    double toCase = in.knows(Term.RTH_CASE) ? in.high(Term.RTH_CASE) : junctionToAir(in);
    double chip =
        lasts.high() <= 1 ? in.impedance().after(lasts.high(), toCase) : junctionToAir(in);
    OnResistance.Line running = earned(in);
    double junction = junctionCelsius(in, running);
    return Check.of(
        kind,
        in.hotFactor().balance(junction, amps * amps * ohms * chip),
        in.low(Term.JUNCTION_RATING) - MARGIN_KELVIN,
        Datum.with(
            heatedBy(in, running, junction),
            peak.datum(Term.LOAD_CURRENT),
            resistance(peak, line),
            lasts,
            in.knows(Term.RTH_CASE) ? in.datum(Term.RTH_CASE) : in.datum(Term.RTH_AIR),
            in.datum(Term.JUNCTION_RATING),
            HEAT_MARGIN));
  }

  private static OnResistance.Line earned(ChannelInputs in) {
    return in.onResistance().earned(in.gateVolts(), in.loadAmps());
  }

  private static void avalanche(ChannelInputs in, List<Check> checks) {
    OnResistance.Line line = earned(in);
    double junction = junctionCelsius(in, line);
    double joules =
        Avalanche.joules(
            in.high(Term.INDUCTANCE), in.loadAmps(), in.low(Term.DRAIN_RATING), in.supplyHigh());
    double rating = in.low(Term.JUNCTION_RATING);
    double cool = Math.max(0, Math.min(1, (rating - junction) / (rating - 25)));
    checks.add(
        Check.of(
            CheckKind.AVALANCHE_CURRENT,
            in.loadAmps(),
            in.low(Term.AVALANCHE_CURRENT_RATING),
            in.datum(Term.LOAD_CURRENT),
            in.datum(Term.SUPPLY),
            in.datum(Term.AVALANCHE_CURRENT_RATING)));
    checks.add(
        Check.of(
            CheckKind.AVALANCHE_ENERGY,
            joules,
            in.low(Term.AVALANCHE_RATING) * cool * cool,
            Datum.with(
                heatedBy(in, line, junction),
                in.datum(Term.INDUCTANCE),
                in.datum(Term.DRAIN_RATING),
                in.datum(Term.AVALANCHE_RATING),
                in.datum(Term.JUNCTION_RATING))));
    checks.add(
        Check.of(
            CheckKind.REPETITIVE_AVALANCHE,
            joules,
            in.low(Term.REPETITIVE_RATING),
            in.datum(Term.INDUCTANCE),
            in.datum(Term.LOAD_CURRENT),
            in.datum(Term.SUPPLY),
            in.datum(Term.DRAIN_RATING),
            in.datum(Term.REPETITIVE_RATING)));
  }

  private static Check safeArea(ChannelInputs in) {
    double seconds = Math.max(GateChecks.onSeconds(in), GateChecks.offSeconds(in));
    return Check.of(
        CheckKind.SAFE_AREA,
        in.loadAmps(),
        in.safeArea().amperes(in.supplyHigh(), seconds),
        in.datum(Term.LOAD_CURRENT),
        in.datum(Term.SUPPLY),
        in.datum(Term.MILLER_CHARGE),
        in.datum(Term.PLATEAU));
  }
}
