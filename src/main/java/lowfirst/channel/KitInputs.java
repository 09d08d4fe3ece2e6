package lowfirst.channel;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Kit;
import lowfirst.board.Rail;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.UnreadCells;
import lowfirst.channel.data.LoadRails;

/**
 * The resolved numbers of every channel, rail and supply unit of a kit, with what channels do to
 * each other: the return they share, a fuse, a driver, a heatsink.
 */
public final class KitInputs {
  private final List<ChannelInputs> channels;
  private final List<RailInputs> rails;
  private final List<SupplyInputs> supplies;

  private KitInputs(
      List<ChannelInputs> channels, List<RailInputs> rails, List<SupplyInputs> supplies) {
    this.channels = List.copyOf(channels);
    this.rails = List.copyOf(rails);
    this.supplies = List.copyOf(supplies);
  }

  /** Resolves a kit. */
  public static KitInputs of(Kit kit) {
    var resolution = new ChannelResolution(kit);
    List<ChannelInputs> alone = kit.channels().stream().map(resolution::resolved).toList();
    var loadRails = new LoadRails(kit);
    List<RailInputs> rails = rails(kit, resolution, loadRails, alone);
    Map<String, RailInputs> byName = new HashMap<>();
    rails.forEach(rail -> byName.putIfAbsent(rail.rail().name(), rail));
    var shared = new SharedParts(kit, alone);
    List<ChannelInputs> joined = new ArrayList<>();
    for (ChannelInputs in : alone) {
      Optional<RailInputs> rail = loadRails.of(in.channel()).map(Rail::name).map(byName::get);
      Datum lift =
          rail.map(RailInputs::lift)
              .orElseGet(() -> Datum.missing(Term.RETURN_LIFT, loadRails.missing(in.channel())));
      Datum intoShort =
          rail.map(RailInputs::shortCircuit)
              .orElseGet(() -> Datum.missing(Term.SHORT_CIRCUIT, loadRails.missing(in.channel())));
      joined.add(
          in.with(lift, intoShort, shared.onFuse(in), shared.onStage(in), shared.ownParts(in)));
    }
    var heated = new SharedParts(kit, joined);
    joined.replaceAll(in -> in.has(Fitted.HEATSINK) ? in.with(heated.onHeatsink(in)) : in);
    List<SupplyInputs> supplies =
        kit.supplies().stream().map(supply -> SupplyInputs.of(supply, kit, byName)).toList();
    return new KitInputs(joined, rails, supplies);
  }

  /** Every rail that loads hang on; any of them may, whose rail nobody knows. */
  private static List<RailInputs> rails(
      Kit kit, ChannelResolution resolution, LoadRails loadRails, List<ChannelInputs> alone) {
    var every =
        new RailLoads(alone, RailLoads.unswitched(kit).stream().map(resolution::resolved).toList());
    RailLoads unknown = every.where(loadRails::isUnknown);
    List<Datum> missing =
        unknown.all().stream()
            .map(in -> Datum.missing(Term.RAIL_SUM, loadRails.missing(in.channel())))
            .toList();
    var units = new UnitCopies(kit);
    var rails = new ArrayList<RailInputs>();
    for (Rail rail : kit.rails()) {
      RailLoads on = every.where(channel -> isOn(loadRails.of(channel), rail));
      Optional<Rail> here = Optional.of(rail);
      RailLoads copies = units.of(on);
      RailLoads perhaps = unknown.as(channel -> resolution.resolved(channel, here)).and(copies);
      if (!perhaps.isEmpty()) {
        var lacking = new ArrayList<>(missing);
        lacking.addAll(units.missing(copies));
        rails.add(RailInputs.of(rail, on, perhaps, lacking));
      } else if (!on.isEmpty()) {
        rails.add(RailInputs.of(rail, on));
      }
    }
    var unread = new UnreadCells(kit);
    return RailInputs.onReturns(rails, kit.rails()).stream()
        .map(rail -> rail.with(unread.of(rail.rail())))
        .toList();
  }

  private static boolean isOn(Optional<Rail> found, Rail rail) {
    return found.filter(known -> known.name().equals(rail.name())).isPresent();
  }

  /** Every channel, in the order of {@code channels.csv}. */
  public List<ChannelInputs> channels() {
    return channels;
  }

  /** The channel of this name. */
  public Optional<ChannelInputs> channel(String name) {
    return channels.stream().filter(in -> in.channel().name().equals(name)).findFirst();
  }

  List<RailInputs> rails() {
    return rails;
  }

  List<SupplyInputs> supplies() {
    return supplies;
  }
}
