package lowfirst.channel;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lowfirst.board.Load.LoadKind;
import lowfirst.board.OutputChannel;
import lowfirst.board.OutputChannel.PullDownSide;
import lowfirst.board.OutputChannel.TraceLayer;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.UnreadCells;
import lowfirst.channel.data.HoldCurrent;
import lowfirst.channel.data.PartData;
import lowfirst.channel.formula.Conductor;
import lowfirst.channel.formula.FuseFamily;
import lowfirst.channel.formula.GateNetwork;
import lowfirst.channel.formula.HotFactor;
import lowfirst.channel.formula.OnResistance;
import lowfirst.channel.formula.Pulses;
import lowfirst.channel.formula.SafeArea;
import lowfirst.channel.formula.TransientImpedance;
import lowfirst.part.PartKind;
import lowfirst.quantity.Source;

/**
 * Everything that the checks of one channel read, resolved once: numbers with their corners and
 * sources, the parts' data, and what is fitted. A value; {@code with} gives a changed copy cheaply,
 * so that a hundred thousand substitutes can be tried.
 */
public final class ChannelInputs {

  /** What a channel has or not. */
  public enum Fitted {
    GATE_RESISTOR,
    PULL_DOWN,
    FLYBACK_DIODE,
    FUSE,
    FUSE_HOLDER,
    HEATSINK,
    /** The driver switches at {@link Term#PWM_FREQUENCY}. */
    PWM,
    /** The driver doesn't leave its output undriven at reset. */
    DRIVEN_AT_RESET,
    /** The driver's output is on at reset. */
    ON_AT_RESET,
    /** An optocoupler's transistor pulls the gate up. */
    OPTOCOUPLED_GATE,
    /** What the driver's output gives is stated, whatever its stage keeps. */
    LEVEL_STATED
  }

  /** What carries the load current. */
  enum Switching {
    MOSFET,
    BIPOLAR_TRANSISTOR,
    DARLINGTON_ARRAY,
    OPTOCOUPLER,
    CURRENT_SINK
  }

  private final OutputChannel channel;
  private final LoadKind loadKind;
  private final Switching switching;
  private final EnumSet<Fitted> fitted;
  private final Datum[] data;
  private final EnumMap<Role, PartData> parts;
  private final double loadAmps;
  private final double inrushAmps;

  /** Made when first asked for, since several checks share the text. */
  private Optional<Datum> missingLine = Optional.empty();

  private ChannelInputs(
      OutputChannel channel,
      LoadKind loadKind,
      Switching switching,
      EnumSet<Fitted> fitted,
      Datum[] data,
      EnumMap<Role, PartData> parts) {
    this.channel = channel;
    this.loadKind = loadKind;
    this.switching = switching;
    this.fitted = fitted;
    this.data = data;
    this.parts = parts;
    Datum supply = data[Term.SUPPLY.ordinal()];
    double steepness = loadKind == LoadKind.LED ? LED_STEEPNESS : 1;
    double high = Math.max(1, 1 + steepness * (supply.high() / supply.nominal() - 1));
    this.loadAmps = data[Term.LOAD_CURRENT.ordinal()].high() * high;
    this.inrushAmps =
        Math.max(data[Term.INRUSH.ordinal()].high() * supply.high() / supply.nominal(), loadAmps);
  }

  /**
   * How much steeper than its voltage the current of an LED string with a series resistor may rise:
   * four times, for a string that drops three quarters of its rail.
   */
  static final double LED_STEEPNESS = 4;

  /** Inputs with nothing known yet but what the channel and its load are. */
  static ChannelInputs of(
      OutputChannel channel, LoadKind loadKind, Switching switching, Set<Fitted> fitted) {
    var data = new Datum[Term.values().length];
    for (Term term : Term.values()) {
      data[term.ordinal()] = MISSING[term.ordinal()];
    }
    data[Term.UNREAD.ordinal()] = UnreadCells.none();
    data[Term.OTHERS_ON_HEATSINK.ordinal()] =
        Datum.of(Term.OTHERS_ON_HEATSINK, 0, Source.kit("channels.csv: nothing else"));
    data[Term.SEVERAL_ROWS.ordinal()] =
        Datum.of(Term.SEVERAL_ROWS, 0, Source.kit("channels.csv: nothing else"));
    var set = EnumSet.noneOf(Fitted.class);
    set.addAll(fitted);
    return new ChannelInputs(channel, loadKind, switching, set, data, new EnumMap<>(Role.class));
  }

  private static final Datum[] MISSING =
      java.util.Arrays.stream(Term.values()).map(Datum::missing).toArray(Datum[]::new);

  /** The number of a term; missing ones too. */
  public Datum datum(Term term) {
    return data[term.ordinal()];
  }

  double low(Term term) {
    return data[term.ordinal()].low();
  }

  double nominal(Term term) {
    return data[term.ordinal()].nominal();
  }

  double high(Term term) {
    return data[term.ordinal()].high();
  }

  boolean knows(Term term) {
    return data[term.ordinal()].isKnown();
  }

  /** The same channel with some numbers changed. */
  ChannelInputs with(Datum... changed) {
    Datum[] copy = data.clone();
    for (Datum datum : changed) {
      copy[datum.term().ordinal()] = datum;
    }
    return new ChannelInputs(channel, loadKind, switching, fitted, copy, parts);
  }

  /** The same channel with a term at one value, all corners alike. */
  public ChannelInputs with(Term term, double value) {
    Datum now = datum(term);
    return with(
        now.isKnown()
            ? now.at(value)
            : Datum.of(term, value, Source.assumed("tried here", term.where())));
  }

  /** The same channel with a term multiplied, keeping its spread. */
  public ChannelInputs scaled(Term term, double factor) {
    return with(datum(term).times(factor));
  }

  /** The same channel as if its load drew for good what it draws at switching on. */
  ChannelInputs atInrush() {
    Datum inrush = datum(Term.INRUSH);
    return high(Term.LOAD_CURRENT) > inrush.high()
        ? this
        : with(
            new Datum(
                Term.LOAD_CURRENT,
                inrush.name(),
                inrush.dimension(),
                inrush.low(),
                inrush.nominal(),
                inrush.high(),
                inrush.source(),
                inrush.missing()));
  }

  /** The same channel with every number at its nominal: not for judging, but for measuring. */
  public ChannelInputs atNominal() {
    Datum[] copy = data.clone();
    for (int i = 0; i < copy.length; i++) {
      copy[i] = copy[i].at(copy[i].nominal());
    }
    return new ChannelInputs(channel, loadKind, switching, fitted, copy, parts);
  }

  /** The same channel with this part in its role. */
  public ChannelInputs with(PartData part) {
    Datum[] copy = data.clone();
    for (Datum datum : part.data()) {
      copy[datum.term().ordinal()] = datum;
    }
    if (part.role() == Role.MOSFET && high(Term.OTHERS_ON_HEATSINK) > 0) {
      copy[Term.OTHERS_ON_HEATSINK.ordinal()] =
          Datum.missing(
              Term.OTHERS_ON_HEATSINK,
              "the heat of what shares the heatsink, with " + part.name() + ": try it by itself");
    }
    var changed = new EnumMap<>(parts);
    changed.put(part.role(), part);
    Switching now = part.role() == Role.MOSFET ? switchedBy(part.kind(), switching) : switching;
    return new ChannelInputs(channel, loadKind, now, fitted, copy, changed);
  }

  private static Switching switchedBy(PartKind kind, Switching otherwise) {
    return switch (kind) {
      case MOSFET -> Switching.MOSFET;
      case BIPOLAR_TRANSISTOR -> Switching.BIPOLAR_TRANSISTOR;
      case DRIVER_ARRAY -> Switching.DARLINGTON_ARRAY;
      case OPTOCOUPLER -> Switching.OPTOCOUPLER;
      default -> otherwise;
    };
  }

  /** The same channel with this fitted. */
  public ChannelInputs fitting(Fitted more) {
    var set = EnumSet.copyOf(fitted);
    set.add(more);
    return new ChannelInputs(channel, loadKind, switching, set, data, parts);
  }

  /** The same channel without this. */
  public ChannelInputs without(Fitted less) {
    var set = EnumSet.copyOf(fitted);
    set.remove(less);
    return new ChannelInputs(channel, loadKind, switching, set, data, parts);
  }

  /** Which channel. */
  public OutputChannel channel() {
    return channel;
  }

  /** What kind of load it switches. */
  public LoadKind loadKind() {
    return loadKind;
  }

  Switching switching() {
    return switching;
  }

  /** Whether it has this. */
  public boolean has(Fitted what) {
    return fitted.contains(what);
  }

  /** Every part known in its role. */
  public Map<Role, PartData> parts() {
    return java.util.Collections.unmodifiableMap(parts);
  }

  OnResistance onResistance() {
    return of(Role.MOSFET, PartData::onResistance, OnResistance.unknown());
  }

  /** The RDSon line that the datasheet would have to hold, where none fits. */
  Datum missingLine() {
    if (missingLine.isEmpty()) {
      missingLine = Optional.of(GateChecks.missingLine(this));
    }
    return missingLine.get();
  }

  HotFactor hotFactor() {
    return of(Role.MOSFET, PartData::hotFactor, HotFactor.DEFAULT);
  }

  TransientImpedance impedance() {
    return of(Role.MOSFET, PartData::impedance, TransientImpedance.unknown());
  }

  SafeArea safeArea() {
    return of(Role.MOSFET, PartData::safeArea, SafeArea.unknown());
  }

  FuseFamily fuseFamily() {
    return of(Role.FUSE, PartData::family, FuseFamily.UNSTATED);
  }

  /** What the fuse holds, where it is a resettable one. */
  Optional<HoldCurrent> hold() {
    return of(Role.FUSE, PartData::hold, Optional.empty());
  }

  private <T> T of(Role role, Function<PartData, T> what, T unknown) {
    PartData part = parts.get(role);
    return part == null ? unknown : what.apply(part);
  }

  /** The name of the part that carries the load current; for messages. */
  String switchName() {
    PartData part = parts.getOrDefault(Role.MOSFET, parts.get(Role.STAGE));
    return part == null ? "the switch" : part.name();
  }

  // Worst-case numbers that several checks share.

  /** The highest load current: cold, low tolerance, high rail; amperes. */
  public double loadAmps() {
    return loadAmps;
  }

  /**
   * The highest inrush, at least the load current; amperes; NaN when a load with inrush hides it.
   */
  double inrushAmps() {
    return inrushAmps;
  }

  /** The highest rail voltage. */
  double supplyHigh() {
    return high(Term.SUPPLY);
  }

  double ambient() {
    return high(Term.AMBIENT);
  }

  /** Whether it drives its current on when switched off: by its kind, or since it says so. */
  boolean isInductive() {
    return loadKind.isInductive() || knows(Term.INDUCTANCE);
  }

  boolean pullDownAtGate() {
    return has(Fitted.PULL_DOWN) && channel.pullDownSide() != PullDownSide.DRIVER;
  }

  /** Whether a printed track carries the current: wires may run from part to part instead. */
  boolean hasTrack() {
    return channel.traceLayer() != TraceLayer.NONE;
  }

  boolean traceIsExternal() {
    return channel.traceLayer() == TraceLayer.EXTERNAL;
  }

  /** Lowest level at the gate: low drive, large series and small pull-down resistance. */
  GateNetwork weakestGate() {
    return new GateNetwork(
        low(Term.DRIVE_LEVEL) - CouplerChecks.keptVolts(this),
        high(Term.DRIVE_RESISTANCE),
        has(Fitted.GATE_RESISTOR) ? high(Term.GATE_RESISTOR) : 0,
        has(Fitted.PULL_DOWN) ? low(Term.PULL_DOWN) : Double.POSITIVE_INFINITY,
        pullDownAtGate());
  }

  /** The gate-source voltage that is left in the worst case. */
  public double gateVolts() {
    return weakestGate().gateVolts() - high(Term.RETURN_LIFT);
  }

  /** The largest share of time that it heats, by pulses of seconds at most: see {@link Pulses}. */
  double heatingShare() {
    double pulses = Pulses.heatingShare(high(Term.ON_TIME), low(Term.PERIOD));
    double pwm = has(Fitted.PWM) && knows(Term.DUTY) ? high(Term.DUTY) / 100 : 1;
    return Math.min(1, pulses * pwm);
  }

  /** Load current by its heating, root mean square over pulses; amperes. */
  double heatingAmps() {
    return loadAmps * Math.sqrt(heatingShare());
  }

  /** Temperature that copper is taken at for drops: insulation's limit. */
  static double hotCopperCelsius() {
    return Conductor.INSULATION_CELSIUS;
  }
}
