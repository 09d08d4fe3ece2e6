package lowfirst.channel;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lowfirst.board.Designator;
import lowfirst.board.Driver;
import lowfirst.board.Item;
import lowfirst.board.Kit;
import lowfirst.board.Load;
import lowfirst.board.Load.LoadKind;
import lowfirst.board.OutputChannel;
import lowfirst.board.Rail;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.ChannelInputs.Switching;
import lowfirst.channel.PartData.Role;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Source;
import lowfirst.quantity.Sourced;

/** Finds, for each channel of a kit, every number that its checks read: the channel by itself. */
final class ChannelResolution {
  private static final double LOAD_TOLERANCE_PERCENT = 10;
  private static final double AMBIENT_CELSIUS = 50;
  private static final double COIL_RISE_KELVIN = 60;
  private static final double TRACE_LENGTH_MILLIMETRES = 100;
  private static final double COPPER_MILLIMETRES = 0.035;
  private static final double SOURCE_OHMS = 100;

  private final Kit kit;

  ChannelResolution(Kit kit) {
    this.kit = kit;
  }

  /** The numbers of one channel, apart from what the others do to it. */
  ChannelInputs resolved(OutputChannel channel) {
    return resolved(channel, railOf(channel));
  }

  /** The rail that the channel's load hangs on; empty where the tables don't tell. */
  Optional<Rail> railOf(OutputChannel channel) {
    return kit.load(channel.load()).flatMap(load -> kit.rail(load.rail()));
  }

  /** Whether it has a load, and the tables don't tell on which rail. */
  boolean isRailUnknown(OutputChannel channel) {
    return !channel.load().isEmpty() && railOf(channel).isEmpty();
  }

  /** The loads that no channel switches, each as a channel of its own name with nothing in it. */
  List<OutputChannel> unswitched() {
    Set<String> switched =
        kit.channels().stream().map(OutputChannel::load).collect(Collectors.toSet());
    return kit.loads().stream()
        .filter(load -> !switched.contains(load.name()))
        .map(load -> OutputChannel.straightThrough(load.name(), load.place()))
        .toList();
  }

  /** The numbers of one channel as if its load hung on this rail. */
  ChannelInputs resolved(OutputChannel channel, Optional<Rail> rail) {
    Optional<Load> load = kit.load(channel.load());
    Optional<Driver> driver = kit.driver(channel.driver());
    LoadKind kind = load.map(Load::kind).orElse(LoadKind.SOLENOID);
    var data = new ArrayList<Datum>();
    supply(channel, rail, data);
    data.add(ambient(channel));
    load(channel, load, rail.flatMap(Rail::voltage), data);
    path(channel, data);
    ChannelInputs in =
        ChannelInputs.of(channel, kind, switching(channel, driver), fitted(channel, driver))
            .with(data.toArray(Datum[]::new));
    in = withStage(in, driver, load);
    for (Role role : Role.values()) {
      Optional<PartData> part = part(channel, role);
      if (part.isPresent()) {
        in = in.with(part.get());
      }
    }
    return in.with(driver(channel, driver, in));
  }

  private EnumSet<Fitted> fitted(OutputChannel channel, Optional<Driver> driver) {
    var fitted = EnumSet.noneOf(Fitted.class);
    channel.gateResistor().ifPresent(there -> fitted.add(Fitted.GATE_RESISTOR));
    channel.pullDown().ifPresent(there -> fitted.add(Fitted.PULL_DOWN));
    channel.flybackDiode().ifPresent(there -> fitted.add(Fitted.FLYBACK_DIODE));
    channel.fuse().ifPresent(there -> fitted.add(Fitted.FUSE));
    channel.heatsink().ifPresent(there -> fitted.add(Fitted.HEATSINK));
    driver.flatMap(Driver::pwmFrequency).ifPresent(there -> fitted.add(Fitted.PWM));
    driver.map(this::atReset).flatMap(x -> x).ifPresent(fitted::add);
    if (channel.mosfet().isPresent()
        && driver.filter(d -> DriverStage.of(d) == DriverStage.OPTOCOUPLER).isPresent()) {
      fitted.add(Fitted.OPTOCOUPLED_GATE);
    }
    return fitted;
  }

  private Optional<Fitted> atReset(Driver driver) {
    String words = driver.atReset().toLowerCase(Locale.ROOT);
    boolean undriven =
        words.isBlank()
            || words.contains("imped")
            || words.contains("-z")
            || words.contains("tri")
            || words.contains("float")
            || words.contains("undriven");
    if (DriverStage.of(driver) == DriverStage.OPEN_COLLECTOR && undriven) {
      // nothing pulls it down, so its pull-up turns the load on
      return Optional.of(Fitted.ON_AT_RESET);
    }
    if (undriven) {
      return Optional.empty();
    }
    return Optional.of(words.contains("high") ? Fitted.ON_AT_RESET : Fitted.DRIVEN_AT_RESET);
  }

  private Switching switching(OutputChannel channel, Optional<Driver> driver) {
    if (channel.mosfet().isPresent()) {
      return Switching.MOSFET;
    }
    return driver.map(d -> DriverStage.of(d).switching()).orElse(Switching.MOSFET);
  }

  private void supply(OutputChannel channel, Optional<Rail> rail, List<Datum> data) {
    data.add(
        rail.flatMap(r -> spread(Term.SUPPLY, r))
            .orElseGet(() -> Datum.missing(Term.SUPPLY, railMissing(channel))));
  }

  /** What lacks until the rail of the channel's load is known with its voltage. */
  String railMissing(OutputChannel channel) {
    Optional<Load> load = kit.load(channel.load());
    if (channel.load().isEmpty()) {
      return "load of channel " + channel.name() + ": write it in channels.csv";
    }
    if (load.isEmpty()) {
      return "load \"" + channel.load() + "\" of channel " + channel.name() + ": loads.csv";
    }
    String name = load.get().rail();
    if (name.isEmpty()) {
      return "rail of load " + channel.load() + ": write it in loads.csv";
    }
    return kit.rail(name).isEmpty()
        ? "rail \"" + name + "\" of load " + channel.load() + ": rails.csv"
        : "voltage of rail " + name + ": rails.csv";
  }

  /** A rail's voltage with its tolerance. */
  static Optional<Datum> spread(Term term, Rail rail) {
    if (rail.voltage().isEmpty()) {
      return Optional.empty();
    }
    double nominal = rail.voltage().get().asDouble();
    double percent = rail.percentOff();
    Source source = rail.voltage().get().source();
    Source cited =
        rail.tolerance().isPresent()
            ? weaker(source, rail.tolerance().get().source())
            : new Source(
                source.origin(), source + "; ±10 % assumed, change it in rails.csv tolerance");
    return Optional.of(
        Datum.of(
            term, nominal * (1 - percent / 100), nominal, nominal * (1 + percent / 100), cited));
  }

  private static Source weaker(Source one, Source other) {
    return one.canPass() && !other.canPass() ? other : one;
  }

  private Datum ambient(OutputChannel channel) {
    return channel
        .ambient()
        .or(() -> kit.settings().ambient())
        .map(air -> Datum.of(Term.AMBIENT, air))
        .orElseGet(
            () ->
                Datum.of(
                    Term.AMBIENT,
                    AMBIENT_CELSIUS,
                    Source.assumed("50 °C inside a closed case", "kit.properties ambient")));
  }

  private void load(
      OutputChannel channel, Optional<Load> found, Optional<Sourced> volts, List<Datum> data) {
    if (found.isEmpty()) {
      data.add(Datum.missing(Term.LOAD_CURRENT, railMissing(channel)));
      data.add(Datum.missing(Term.INRUSH, railMissing(channel)));
      return;
    }
    Load load = found.get();
    var current = new LoadCurrent(load, volts, LOAD_TOLERANCE_PERCENT);
    data.add(orRail(current.operating(), load, volts, channel));
    data.add(orRail(current.inrush(), load, volts, channel));
    data.add(current.inrushTime());
    add(data, Term.INDUCTANCE, load.inductance(), load, "inductance");
    add(data, Term.ON_TIME, load.onTime(), load, "on time");
    add(data, Term.PERIOD, load.period(), load, "period");
    add(data, Term.DUTY, load.duty(), load, "duty");
    data.add(
        load.switchOns().isPresent()
            ? Datum.of(
                Term.SWITCH_ONS,
                load.switchOns().getAsInt(),
                Source.kit(load.place() + ", switch-ons"))
            : Datum.of(
                Term.SWITCH_ONS,
                FuseFamily.MOST_PULSES,
                Source.assumed("100 000 times in its life", "loads.csv switch-ons")));
    add(data, Term.MAX_ON_TIME, load.maxOnTime(), load, "max on time");
    add(data, Term.RATED_DUTY, load.ratedDuty(), load, "rated duty");
    add(data, Term.PULL_IN, load.pullInVoltage(), load, "pull-in voltage");
    data.add(
        load.temperatureRise()
            .map(rise -> Datum.of(Term.TEMPERATURE_RISE, rise))
            .orElseGet(
                () ->
                    Datum.of(
                        Term.TEMPERATURE_RISE,
                        COIL_RISE_KELVIN,
                        Source.assumed("60 K", "loads.csv temperature rise"))));
  }

  /** Where only the rail's voltage is missing to know a current, that is asked for. */
  private Datum orRail(Datum amperes, Load load, Optional<Sourced> volts, OutputChannel channel) {
    boolean isStated = load.resistance().isPresent() || load.power().isPresent();
    return amperes.isKnown() || volts.isPresent() || !isStated
        ? amperes
        : Datum.missing(amperes.term(), railMissing(channel));
  }

  private static void add(
      List<Datum> data, Term term, Optional<Sourced> value, Load load, String column) {
    data.add(
        value
            .map(v -> Datum.of(term, v))
            .orElseGet(
                () ->
                    Datum.missing(
                        term, column + " of load " + load.name() + ": write it in loads.csv")));
  }

  private static void path(OutputChannel channel, List<Datum> data) {
    data.add(channelCell(Term.TRACE_WIDTH, channel.traceWidth(), channel, "trace width"));
    data.add(
        channel
            .traceLength()
            .map(length -> Datum.of(Term.TRACE_LENGTH, length))
            .orElse(
                Datum.of(
                    Term.TRACE_LENGTH,
                    TRACE_LENGTH_MILLIMETRES,
                    Source.assumed("100 mm", "channels.csv trace length"))));
    data.add(
        channel
            .traceCopper()
            .map(copper -> Datum.of(Term.TRACE_COPPER, copper))
            .orElse(
                Datum.of(
                    Term.TRACE_COPPER,
                    COPPER_MILLIMETRES,
                    Source.assumed("35 µm copper", "channels.csv trace copper"))));
    data.add(channelCell(Term.CONTACT_RATING, channel.contactRating(), channel, "contact rating"));
    var area = Conductor.squareMillimetres(channel.wire());
    data.add(
        area.isPresent()
            ? Datum.of(
                Term.WIRE_AREA,
                area.getAsDouble(),
                Source.kit(
                    channel.place() + ", wire " + channel.wire() + Conductor.doubt(channel.wire())))
            : Datum.missing(
                Term.WIRE_AREA,
                "wire of channel " + channel.name() + ", as 0.75 mm² or AWG 18: channels.csv"));
    data.add(channelCell(Term.WIRE_LENGTH, channel.wireLength(), channel, "wire length"));
    data.add(
        channel.wiresTogether().isPresent()
            ? Datum.of(
                Term.WIRES_TOGETHER,
                channel.wiresTogether().getAsInt(),
                Source.kit(channel.place() + ", wires together"))
            : Datum.of(
                Term.WIRES_TOGETHER,
                1,
                Source.assumed("not bundled with others", "channels.csv wires together")));
    channel.heatsink().ifPresent(sink -> data.add(Datum.of(Term.HEATSINK, sink)));
  }

  private static Datum channelCell(
      Term term, Optional<Sourced> value, OutputChannel channel, String column) {
    return value
        .map(v -> Datum.of(term, v))
        .orElseGet(
            () ->
                Datum.missing(
                    term, column + " of channel " + channel.name() + ": write it in channels.csv"));
  }

  private Datum[] driver(OutputChannel channel, Optional<Driver> found, ChannelInputs in) {
    if (found.isEmpty()) {
      String where =
          "driver \"" + channel.driver() + "\" of channel " + channel.name() + ": drivers.csv";
      return List.of(Term.DRIVE_LEVEL, Term.DRIVE_CEILING, Term.DRIVE_RESISTANCE, Term.DRIVE_LIMIT)
          .stream()
          .map(term -> Datum.missing(term, where))
          .toArray(Datum[]::new);
    }
    Driver driver = found.get();
    var data = new ArrayList<Datum>();
    Optional<Datum> supply =
        kit.rail(driver.supply()).flatMap(rail -> spread(Term.DRIVE_CEILING, rail));
    data.add(
        supply.orElseGet(
            () ->
                Datum.missing(
                    Term.DRIVE_CEILING,
                    "supply of driver " + driver.name() + ": a rail's name, in drivers.csv")));
    data.add(driveLevel(driver, supply, in));
    data.add(sourceResistance(driver));
    data.add(cell(Term.DRIVE_LOW, driver.lowLevelMax(), driver, "low level max"));
    data.add(cell(Term.DRIVE_LIMIT, driver.currentLimit(), driver, "current limit"));
    data.add(cell(Term.PWM_FREQUENCY, driver.pwmFrequency(), driver, "PWM frequency"));
    data.add(cell(Term.INPUT_CURRENT, driver.inputCurrent(), driver, "input current"));
    return data.toArray(Datum[]::new);
  }

  /** What it drives when on: stated, or its supply less what the stage keeps. */
  private static Datum driveLevel(Driver driver, Optional<Datum> supply, ChannelInputs in) {
    if (driver.highLevelMin().isPresent()) {
      return Datum.of(Term.DRIVE_LEVEL, driver.highLevelMin().get());
    }
    DriverStage stage = DriverStage.of(driver);
    boolean pulledUp = stage == DriverStage.OPEN_COLLECTOR || stage == DriverStage.OPTOCOUPLER;
    double kept = stage == DriverStage.OPTOCOUPLER ? in.high(Term.SATURATION) : 0;
    if (!pulledUp || supply.isEmpty() || Double.isNaN(kept)) {
      return cell(Term.DRIVE_LEVEL, Optional.empty(), driver, "high level min");
    }
    Datum rail = supply.get();
    return Datum.of(
        Term.DRIVE_LEVEL,
        rail.low() - kept,
        rail.nominal() - kept,
        rail.high() - kept,
        rail.source());
  }

  private static Datum sourceResistance(Driver driver) {
    if (DriverStage.of(driver) == DriverStage.OPEN_COLLECTOR) {
      return cell(Term.DRIVE_RESISTANCE, driver.pullUp(), driver, "pull-up");
    }
    return driver
        .sourceResistance()
        .map(ohms -> Datum.of(Term.DRIVE_RESISTANCE, ohms))
        .orElseGet(
            () ->
                Datum.of(
                    Term.DRIVE_RESISTANCE,
                    0,
                    SOURCE_OHMS / 2,
                    SOURCE_OHMS,
                    Source.assumed("0 to 100 Ω", "drivers.csv source resistance")));
  }

  private static Datum cell(Term term, Optional<Sourced> value, Driver driver, String column) {
    return value
        .map(v -> Datum.of(term, v))
        .orElseGet(
            () ->
                Datum.missing(
                    term, column + " of driver " + driver.name() + ": write it in drivers.csv"));
  }

  /** What the driver's own datasheet says, where the driver carries the load or couples a gate. */
  private ChannelInputs withStage(ChannelInputs in, Optional<Driver> found, Optional<Load> load) {
    boolean needed = in.switching() != Switching.MOSFET || in.has(Fitted.OPTOCOUPLED_GATE);
    if (found.isEmpty() || !needed) {
      return in;
    }
    Driver driver = found.get();
    PartKind kind = DriverStage.of(driver).partKind();
    ChannelInputs with =
        in.with(partData(Role.STAGE, named(kind, driver.partType()), driver.partType()));
    if (in.switching() != Switching.CURRENT_SINK) {
      return with;
    }
    return with.with(sinkDrop(with, load), sinkRating(with, driver));
  }

  /** A current sink keeps what the load leaves of the rail: all of it where that isn't known. */
  private static Datum sinkDrop(ChannelInputs in, Optional<Load> load) {
    Optional<Sourced> power = load.flatMap(Load::power);
    Optional<Sourced> current = load.flatMap(Load::current);
    double kept =
        power.isPresent() && current.isPresent()
            ? power.get().asDouble() / current.get().asDouble()
            : 0;
    Datum supply = in.datum(Term.SUPPLY);
    return supply.isKnown()
        ? Datum.of(
            Term.SATURATION,
            Math.max(0, supply.high() - kept),
            Source.computed("Vmax − Pload/Iload, " + supply.source()))
        : Datum.missing(Term.SATURATION, supply.missing());
  }

  private static Datum sinkRating(ChannelInputs in, Driver driver) {
    Datum rated = in.datum(Term.DRAIN_CURRENT_RATING);
    return rated.isKnown()
        ? rated
        : cell(Term.DRAIN_CURRENT_RATING, driver.currentLimit(), driver, "current limit");
  }

  private Optional<PartData> part(OutputChannel channel, Role role) {
    Optional<Designator> designator =
        switch (role) {
          case SWITCH -> channel.mosfet();
          case GATE_RESISTOR -> channel.gateResistor();
          case PULL_DOWN -> channel.pullDown();
          case FLYBACK_DIODE -> channel.flybackDiode();
          case FUSE -> channel.fuse();
          case STAGE -> Optional.empty();
        };
    if (designator.isEmpty()) {
      return Optional.empty();
    }
    Optional<Item> item =
        kit.board(channel.board()).flatMap(board -> board.itemOf(designator.get()));
    if (item.isEmpty()) {
      PartKind kind = role == Role.SWITCH ? PartKind.MOSFET : PartKind.UNKNOWN;
      String name = designator.get() + " (not in the BOM of board " + channel.board() + ")";
      return Optional.of(partData(role, named(kind, name), ""));
    }
    PartType type = item.get().partType();
    String words =
        String.join(
            " ", type.text(), type.typeNumber(), type.packageName(), item.get().description());
    PartData part = partData(role, type, words);
    String where = designator.get() + " is %s in the BOM of board " + channel.board() + ": ";
    return Optional.of(
        switch (item.get().fitting()) {
          case FITTED -> part;
          case NOT_FITTED ->
              part.absent(
                  String.format(where, "not fitted")
                      + "fit it there, or take it out of channels.csv");
          case OPTIONAL ->
              part.absent(String.format(where, "optional") + "write there whether it is fitted");
        });
  }

  private PartData partData(Role role, PartType type, String words) {
    String key = type.typeNumber().isBlank() ? type.text() : type.typeNumber();
    return PartData.of(role, type, kit.datasheets().about(key), words);
  }

  private static PartType named(PartKind kind, String typeNumber) {
    return new PartType(
        kind,
        typeNumber,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        typeNumber,
        "");
  }
}
