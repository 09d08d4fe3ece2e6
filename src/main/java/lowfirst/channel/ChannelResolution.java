package lowfirst.channel;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import lowfirst.board.Driver;
import lowfirst.board.Kit;
import lowfirst.board.Load;
import lowfirst.board.Load.LoadKind;
import lowfirst.board.OutputChannel;
import lowfirst.board.Rail;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.ChannelInputs.Switching;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.UnreadCells;
import lowfirst.channel.data.LoadData;
import lowfirst.channel.data.LoadRails;
import lowfirst.channel.data.PartData;
import lowfirst.channel.data.PathData;
import lowfirst.quantity.Source;

/** Finds, for each channel of a kit, every number that its checks read: the channel by itself. */
final class ChannelResolution {
  private static final double AMBIENT_CELSIUS = 50;

  private final Kit kit;
  private final LoadRails rails;
  private final ChannelParts parts;
  private final UnreadCells unread;

  ChannelResolution(Kit kit) {
    this.kit = kit;
    this.rails = new LoadRails(kit);
    this.parts = new ChannelParts(kit);
    this.unread = new UnreadCells(kit);
  }

  /** The numbers of one channel, apart from what the others do to it. */
  ChannelInputs resolved(OutputChannel channel) {
    return resolved(channel, rails.of(channel));
  }

  /** The numbers of one channel as if its load hung on this rail. */
  ChannelInputs resolved(OutputChannel channel, Optional<Rail> rail) {
    Optional<Load> load = kit.load(channel.load());
    Optional<Driver> driver = kit.driver(channel.driver());
    LoadKind kind = load.map(Load::kind).orElse(LoadKind.SOLENOID);
    String railMissing = rails.missing(channel);
    var data = new ArrayList<Datum>();
    data.add(
        rail.flatMap(known -> LoadRails.voltage(Term.SUPPLY, known))
            .orElseGet(() -> Datum.missing(Term.SUPPLY, railMissing)));
    data.add(ambient(channel));
    data.addAll(
        load.map(known -> LoadData.of(known, rail.flatMap(Rail::voltage), railMissing))
            .orElseGet(() -> LoadData.missing(railMissing)));
    data.addAll(PathData.of(channel));
    data.add(unread.of(channel, load, driver, rail));
    channel.heatsink().ifPresent(sink -> data.add(Datum.of(Term.HEATSINK, sink)));
    ChannelInputs in =
        with(
            ChannelInputs.of(channel, kind, switching(channel, driver), fitted(channel, driver)),
            data);
    in = withStage(in, driver, load);
    for (Role role : Role.values()) {
      Optional<PartData> part = parts.in(role, channel);
      if (part.isPresent()) {
        in = in.with(part.get());
      }
    }
    Optional<Datum> holder = in.has(Fitted.FUSE) ? parts.holderOfFuse(channel) : Optional.empty();
    if (holder.isPresent()) {
      in = in.fitting(Fitted.FUSE_HOLDER).with(holder.get());
    }
    return with(in, driven(in, driver));
  }

  private static ChannelInputs with(ChannelInputs in, List<Datum> data) {
    return in.with(data.toArray(Datum[]::new));
  }

  private static EnumSet<Fitted> fitted(OutputChannel channel, Optional<Driver> driver) {
    var fitted = EnumSet.noneOf(Fitted.class);
    channel.gateResistor().ifPresent(there -> fitted.add(Fitted.GATE_RESISTOR));
    channel.pullDown().ifPresent(there -> fitted.add(Fitted.PULL_DOWN));
    channel.flybackDiode().ifPresent(there -> fitted.add(Fitted.FLYBACK_DIODE));
    channel.fuse().ifPresent(there -> fitted.add(Fitted.FUSE));
    channel.heatsink().ifPresent(there -> fitted.add(Fitted.HEATSINK));
    driver.flatMap(Driver::pwmFrequency).ifPresent(there -> fitted.add(Fitted.PWM));
    driver.flatMap(DriverData::atReset).ifPresent(fitted::add);
    driver.flatMap(Driver::highLevelMin).ifPresent(there -> fitted.add(Fitted.LEVEL_STATED));
    if (channel.mosfet().isPresent()
        && driver.filter(d -> DriverStage.of(d) == DriverStage.OPTOCOUPLER).isPresent()) {
      fitted.add(Fitted.OPTOCOUPLED_GATE);
    }
    return fitted;
  }

  private static Switching switching(OutputChannel channel, Optional<Driver> driver) {
    if (channel.mosfet().isPresent()) {
      return Switching.MOSFET;
    }
    return driver.map(d -> DriverStage.of(d).switching()).orElse(Switching.MOSFET);
  }

  private Datum ambient(OutputChannel channel) {
    return Datum.statedOr(
        Term.AMBIENT,
        channel.ambient().or(() -> kit.settings().ambient()),
        AMBIENT_CELSIUS,
        Source.assumed("50 °C inside a closed case", "kit.properties ambient"));
  }

  /** What the driver's own datasheet says, where the driver carries the load or couples a gate. */
  private ChannelInputs withStage(ChannelInputs in, Optional<Driver> driver, Optional<Load> load) {
    boolean needed = in.switching() != Switching.MOSFET || in.has(Fitted.OPTOCOUPLED_GATE);
    if (driver.isEmpty() || !needed) {
      return in;
    }
    ChannelInputs with = in.with(parts.stage(driver.get()));
    return in.switching() == Switching.CURRENT_SINK
        ? with.with(DriverData.sinkDrop(with, load), DriverData.sinkRating(with, driver.get()))
        : with;
  }

  private List<Datum> driven(ChannelInputs in, Optional<Driver> driver) {
    return driver
        .map(known -> DriverData.of(known, kit.rail(known.supply()), in))
        .orElseGet(() -> DriverData.missing(in.channel()));
  }
}
