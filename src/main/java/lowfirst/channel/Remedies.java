package lowfirst.channel;

import static java.util.Map.entry;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.ChannelInputs.Switching;
import lowfirst.channel.Remedy.Action;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.channel.formula.Conductor;
import lowfirst.channel.formula.ResistorRating;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/**
 * What to change in a channel that does not carry: for each failing check the smallest change of
 * each number that helps it, found by halving on the finding itself and tried again after rounding.
 */
final class Remedies {

  /** A number that helps a check, and which way. */
  private record Lever(Term term, Action action) {}

  private static final double FARTHEST = 1e4;
  private static final int HALVINGS = 40;
  private static final double WORST_HEATSINK = 100;

  private static final Map<CheckKind, List<Lever>> LEVERS =
      Map.ofEntries(
          entry(CheckKind.GATE_LEVEL, List.of(up(Term.DRIVE_LEVEL), up(Term.PULL_DOWN))),
          entry(CheckKind.GATE_LIMIT, List.of(down(Term.DRIVE_CEILING), up(Term.GATE_RATING))),
          entry(CheckKind.GATE_OFF, List.of(down(Term.PULL_DOWN), down(Term.DRIVE_LOW))),
          entry(CheckKind.GATE_DRIVE_CURRENT, List.of(up(Term.GATE_RESISTOR))),
          entry(CheckKind.PULL_DOWN_POWER, List.of(up(Term.PULL_DOWN), up(Term.PULL_DOWN_RATING))),
          entry(CheckKind.GATE_RESISTOR_POWER, List.of(up(Term.GATE_RESISTOR_RATING))),
          entry(
              CheckKind.SWITCHING_TIME,
              List.of(down(Term.GATE_RESISTOR), down(Term.PWM_FREQUENCY))),
          entry(CheckKind.DRAIN_CURRENT, List.of(up(Term.DRAIN_CURRENT_RATING))),
          entry(CheckKind.INRUSH_CURRENT, List.of(up(Term.PULSE_CURRENT_RATING))),
          entry(
              CheckKind.JUNCTION_TEMPERATURE,
              List.of(
                  down(Term.ON_RESISTANCE_FACTOR),
                  down(Term.HEATSINK),
                  down(Term.ON_TIME),
                  down(Term.PWM_FREQUENCY),
                  down(Term.GATE_RESISTOR),
                  up(Term.DRIVE_LEVEL),
                  down(Term.AMBIENT))),
          entry(
              CheckKind.INRUSH_JUNCTION,
              List.of(
                  down(Term.ON_RESISTANCE_FACTOR),
                  down(Term.INRUSH),
                  down(Term.INRUSH_TIME),
                  down(Term.HEATSINK))),
          entry(CheckKind.DRAIN_VOLTAGE, List.of(up(Term.DRAIN_RATING))),
          entry(CheckKind.ON_TIME, List.of(down(Term.ON_TIME))),
          entry(CheckKind.LOAD_DUTY, List.of(down(Term.ON_TIME), up(Term.PERIOD))),
          entry(
              CheckKind.PULL_IN,
              List.of(up(Term.WIRE_AREA), down(Term.RETURN_LIFT), down(Term.PULL_IN))),
          entry(CheckKind.DIODE_VOLTAGE, List.of(up(Term.DIODE_REVERSE_RATING))),
          entry(CheckKind.DIODE_PEAK, List.of(up(Term.DIODE_PEAK_RATING))),
          entry(CheckKind.DIODE_CURRENT, List.of(up(Term.DIODE_AVERAGE_RATING), up(Term.PERIOD))),
          entry(CheckKind.DIODE_TEMPERATURE, List.of(down(Term.DIODE_RTH), up(Term.PERIOD))),
          entry(
              CheckKind.DIODE_RECOVERY,
              List.of(down(Term.DIODE_RECOVERY), down(Term.PWM_FREQUENCY))),
          entry(CheckKind.RELEASE_TIME, List.of(up(Term.PERIOD), up(Term.DIODE_FORWARD))),
          entry(CheckKind.FUSE_CURRENT, List.of(up(Term.FUSE_RATING))),
          entry(
              CheckKind.FUSE_PULSE,
              List.of(
                  up(Term.FUSE_MELTING),
                  down(Term.INRUSH_TIME),
                  down(Term.INRUSH),
                  up(Term.PERIOD),
                  down(Term.SWITCH_ONS))),
          entry(CheckKind.FUSE_BREAKING, List.of(up(Term.FUSE_BREAKING), down(Term.SHORT_CIRCUIT))),
          entry(
              CheckKind.CONTACT_FAULT,
              List.of(up(Term.CONTACT_RATING), down(Term.FUSE_RATING), down(Term.SHORT_CIRCUIT))),
          entry(CheckKind.FUSE_HOLDER, List.of(up(Term.FUSE_HOLDER), down(Term.FUSE_RATING))),
          entry(CheckKind.FUSE_VOLTAGE, List.of(up(Term.FUSE_VOLTAGE))),
          entry(
              CheckKind.FUSE_PROTECTS_TRACK, List.of(down(Term.FUSE_RATING), up(Term.TRACE_WIDTH))),
          entry(CheckKind.FUSE_PROTECTS_WIRE, List.of(down(Term.FUSE_RATING), up(Term.WIRE_AREA))),
          entry(CheckKind.TRIP_PROTECTS_TRACK, List.of(down(Term.FUSE_TRIP), up(Term.TRACE_WIDTH))),
          entry(CheckKind.TRIP_PROTECTS_WIRE, List.of(down(Term.FUSE_TRIP), up(Term.WIRE_AREA))),
          entry(CheckKind.UNFUSED_TRACK, List.of(up(Term.TRACE_WIDTH), down(Term.SHORT_CIRCUIT))),
          entry(CheckKind.UNFUSED_WIRE, List.of(up(Term.WIRE_AREA), down(Term.SHORT_CIRCUIT))),
          entry(CheckKind.TRACE_CURRENT, List.of(up(Term.TRACE_WIDTH), up(Term.TRACE_COPPER))),
          entry(CheckKind.CONTACT_CURRENT, List.of(up(Term.CONTACT_RATING))),
          entry(CheckKind.WIRE_CURRENT, List.of(up(Term.WIRE_AREA))),
          entry(CheckKind.WIRE_DROP, List.of(up(Term.WIRE_AREA), down(Term.WIRE_LENGTH))),
          entry(CheckKind.STAGE_CURRENT, List.of(up(Term.DRAIN_CURRENT_RATING))),
          entry(CheckKind.STAGE_TOTAL, List.of(down(Term.OTHERS_ON_STAGE))),
          entry(CheckKind.STAGE_VOLTAGE, List.of(up(Term.DRAIN_RATING))),
          entry(
              CheckKind.STAGE_TEMPERATURE, List.of(down(Term.OTHERS_ON_STAGE), down(Term.AMBIENT))),
          entry(CheckKind.FORCED_GAIN, List.of(down(Term.GATE_RESISTOR), up(Term.DRIVE_LEVEL))),
          entry(CheckKind.OPTO_CURRENT, List.of(up(Term.INPUT_CURRENT), up(Term.PULL_DOWN))));

  private Remedies() {}

  private static Lever up(Term term) {
    return new Lever(term, Action.RAISE);
  }

  private static Lever down(Term term) {
    return new Lever(term, Action.LOWER);
  }

  /** Every change that mends a failing check; none for a channel that carries. */
  static List<Remedy> of(ChannelInputs in) {
    var remedies = new ArrayList<Remedy>();
    ChannelFinding finding = ChannelFinding.of(in);
    boolean weakGate =
        finding
            .check(CheckKind.GATE_LEVEL)
            .filter(check -> check.verdict() == Verdict.OVERLOADED)
            .isPresent();
    for (Check check : finding.checks()) {
      if (check.verdict() == Verdict.CARRIES) {
        continue;
      }
      if (!check.missing().isEmpty()) {
        fitted(in, check.kind()).ifPresent(remedies::add);
        check.data().stream()
            .filter(datum -> !datum.isKnown())
            // no datasheet holds a line for a gate this weak: mending the gate mends it
            .filter(datum -> !weakGate || datum.term() != Term.ON_RESISTANCE)
            .forEach(datum -> remedies.add(Remedy.lookUp(check.kind(), datum.missing())));
      } else if (check.verdict() == Verdict.OVERLOADED) {
        remedies.addAll(of(in, check.kind()));
      }
    }
    return List.copyOf(remedies);
  }

  private static List<Remedy> of(ChannelInputs in, CheckKind kind) {
    var remedies = new ArrayList<Remedy>();
    for (Lever lever : LEVERS.getOrDefault(kind, List.of())) {
      changed(in, kind, lever).ifPresent(remedies::add);
    }
    fitted(in, kind).ifPresent(remedies::add);
    changed(in, kind, down(Term.LOAD_CURRENT)).ifPresent(remedies::add);
    return remedies;
  }

  private static Optional<Remedy> changed(ChannelInputs in, CheckKind kind, Lever lever) {
    ChannelInputs start = in;
    if (lever.term == Term.HEATSINK && !in.has(Fitted.HEATSINK)) {
      if (!in.knows(Term.RTH_CASE)) {
        return Optional.empty();
      }
      start =
          in.fitting(Fitted.HEATSINK)
              .with(
                  Datum.of(Term.HEATSINK, WORST_HEATSINK, Source.assumed("tried", "channels.csv")));
    }
    Datum now = start.datum(lever.term);
    if (!now.isKnown() || now.nominal() == 0) {
      return Optional.empty();
    }
    OptionalDouble least = least(start, kind, lever);
    if (least.isEmpty()) {
      return Optional.empty();
    }
    double exact = now.nominal() * least.getAsDouble();
    // A limit of 30 V is found as 30.0000001 V, and 30 V does.
    double nearly = exact * (lever.action == Action.RAISE ? 1 - 1e-6 : 1 + 1e-6);
    double shown = rounded(nearly, lever);
    ChannelInputs mended = start.with(now.times(shown / now.nominal()));
    if (!passes(mended, kind)) {
      shown = rounded(exact, lever);
      mended = start.with(now.times(shown / now.nominal()));
    }
    if (!passes(mended, kind)) {
      return Optional.empty();
    }
    boolean alone = ChannelFinding.of(mended).carries();
    Quantity value = value(in, lever, shown);
    return Optional.of(
        start == in
            ? Remedy.change(kind, lever.action, said(lever.term), value, alone)
            : Remedy.fit(
                kind,
                Fitted.HEATSINK,
                Optional.of(Remedy.change(kind, lever.action, lever.term, value, alone)),
                alone));
  }

  /** People buy a resistance, not a factor on one. */
  private static Term said(Term term) {
    return term == Term.ON_RESISTANCE_FACTOR ? Term.ON_RESISTANCE : term;
  }

  private static Quantity value(ChannelInputs in, Lever lever, double shown) {
    if (lever.term == Term.ON_RESISTANCE_FACTOR) {
      double ohms = in.onResistance().earned(in.gateVolts(), in.loadAmps()).maxOhms();
      return Quantity.of(
          new BigDecimal(ohms * shown).round(new MathContext(2, RoundingMode.DOWN)).toString(),
          Term.ON_RESISTANCE.dimension());
    }
    if (lever.term == Term.LOAD_CURRENT) {
      double worst = in.with(in.datum(Term.LOAD_CURRENT)).loadAmps();
      double factor = shown / in.nominal(Term.LOAD_CURRENT);
      return Quantity.of(safe(worst * factor, lever), Term.LOAD_CURRENT.dimension());
    }
    return Quantity.of(shown, lever.term.dimension());
  }

  /** The smallest factor on a term with which the check passes. */
  private static OptionalDouble least(ChannelInputs in, CheckKind kind, Lever lever) {
    Datum now = in.datum(lever.term);
    double far = lever.action == Action.RAISE ? FARTHEST : 1 / FARTHEST;
    if (!passes(in.with(now.times(far)), kind)) {
      return OptionalDouble.empty();
    }
    double bad = 1;
    double good = far;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = Math.sqrt(good * bad);
      if (passes(in.with(now.times(middle)), kind)) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    return OptionalDouble.of(good);
  }

  private static double rounded(double value, Lever lever) {
    if (lever.term == Term.WIRE_AREA) {
      return Conductor.nextSize(value * (1 - 1e-9));
    }
    return safe(value, lever);
  }

  /** To three figures, towards the side that is better still. */
  private static double safe(double value, Lever lever) {
    RoundingMode side = lever.action == Action.RAISE ? RoundingMode.UP : RoundingMode.DOWN;
    return new BigDecimal(value).round(new MathContext(3, side)).doubleValue();
  }

  private static boolean passes(ChannelInputs in, CheckKind kind) {
    return ChannelFinding.of(in)
        .check(kind)
        .map(check -> check.verdict() == Verdict.CARRIES)
        .orElse(true);
  }

  private static Optional<Remedy> fitted(ChannelInputs in, CheckKind kind) {
    return switch (kind) {
      case AVALANCHE_CURRENT, AVALANCHE_ENERGY, REPETITIVE_AVALANCHE, STAGE_VOLTAGE ->
          in.isInductive() && !in.has(Fitted.FLYBACK_DIODE)
              ? Optional.of(Remedy.fit(kind, Fitted.FLYBACK_DIODE, Optional.empty(), false))
              : Optional.empty();
      case GATE_OFF ->
          in.switching() == Switching.MOSFET && !in.has(Fitted.PULL_DOWN)
              ? Optional.of(pullDown(in))
              : Optional.empty();
      case UNFUSED_TRACK, UNFUSED_WIRE, CONTACT_FAULT ->
          in.has(Fitted.FUSE)
              ? Optional.empty()
              : Optional.of(Remedy.fit(kind, Fitted.FUSE, Optional.empty(), false));
      case GATE_DRIVE_CURRENT ->
          in.has(Fitted.GATE_RESISTOR)
              ? Optional.empty()
              : Optional.of(Remedy.fit(kind, Fitted.GATE_RESISTOR, Optional.empty(), false));
      default -> Optional.empty();
    };
  }

  private static Remedy pullDown(ChannelInputs in) {
    Datum ten = Datum.of(Term.PULL_DOWN, 10_000, Source.assumed("10 kΩ", "channels.csv pull-down"));
    Datum small =
        Datum.of(
            Term.PULL_DOWN_RATING,
            ResistorRating.SMALLEST_WATTS,
            Source.assumed("1/8 W", "the BOM's value"));
    ChannelInputs mended = in.fitting(Fitted.PULL_DOWN).with(ten, small);
    Remedy value =
        Remedy.change(
            CheckKind.GATE_OFF,
            Action.LOWER,
            Term.PULL_DOWN,
            Quantity.of("10000", Term.PULL_DOWN.dimension()),
            false);
    return Remedy.fit(
        CheckKind.GATE_OFF,
        Fitted.PULL_DOWN,
        Optional.of(value),
        ChannelFinding.of(mended).carries());
  }
}
