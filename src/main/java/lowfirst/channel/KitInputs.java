package lowfirst.channel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lowfirst.board.Board;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.board.Rail;
import lowfirst.board.Unit;
import lowfirst.board.UnitChannels;
import lowfirst.channel.ChannelInputs.Switching;
import lowfirst.quantity.Source;

/**
 * The resolved numbers of every channel, rail and supply unit of a kit, with what channels do to
 * each other: the return they share, a fuse, a driver.
 */
public final class KitInputs {
  private static final String NO_OTHER_ON_FUSE = "no other channel on this fuse";

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
    Set<String> named = UnitChannels.unitNamedBoards(kit);
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
          in.with(lift, intoShort, othersOnFuse(kit, named, in, alone), othersOnStage(in, alone)));
    }
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
    return rails;
  }

  private static boolean isOn(Optional<Rail> found, Rail rail) {
    return found.filter(known -> known.name().equals(rail.name())).isPresent();
  }

  /**
   * What else the fuse carries. A board built n times has each fuse n times: channels that name
   * their units share one only within a unit; of those that don't, only more on one designator than
   * boards share it, and then the largest of them.
   */
  private static Datum othersOnFuse(
      Kit kit, Set<String> named, ChannelInputs in, List<ChannelInputs> alone) {
    OutputChannel own = in.channel();
    if (own.fuse().isEmpty()) {
      return summed(Term.OTHERS_ON_FUSE, List.of(), 0, NO_OTHER_ON_FUSE);
    }
    Optional<Unit> unit = UnitChannels.unitOf(kit, own);
    List<ChannelInputs> others =
        alone.stream()
            .filter(other -> other != in)
            .filter(other -> other.channel().board().equals(own.board()))
            .filter(other -> other.channel().fuse().equals(own.fuse()))
            .filter(other -> UnitChannels.unitOf(kit, other.channel()).equals(unit))
            .toList();
    int count =
        named.contains(own.board()) ? 1 : kit.board(own.board()).map(Board::count).orElse(1);
    int sharing = (others.size() + 1 + count - 1) / count - 1;
    return summed(Term.OTHERS_ON_FUSE, others, sharing, NO_OTHER_ON_FUSE);
  }

  private static Datum othersOnStage(ChannelInputs in, List<ChannelInputs> alone) {
    if (in.switching() == Switching.MOSFET || in.switching() == Switching.BIPOLAR_TRANSISTOR) {
      return summed(Term.OTHERS_ON_STAGE, List.of(), 0, "one transistor, one load");
    }
    List<ChannelInputs> others =
        alone.stream()
            .filter(other -> other != in && other.switching() == in.switching())
            .filter(
                other ->
                    other.channel().driver().equals(in.channel().driver())
                        && other.channel().mosfet().equals(in.channel().mosfet()))
            .toList();
    return summed(Term.OTHERS_ON_STAGE, others, others.size(), "no other channel on this driver");
  }

  private static Datum summed(Term term, List<ChannelInputs> others, int count, String none) {
    if (count == 0) {
      return Datum.of(term, 0, Source.kit("channels.csv: " + none));
    }
    double sum =
        others.stream()
            .sorted(Comparator.comparingDouble(ChannelInputs::loadAmps).reversed())
            .limit(count)
            .mapToDouble(ChannelInputs::loadAmps)
            .sum();
    if (Double.isNaN(sum)) {
      return Datum.missing(term, "the current of every load that shares it: loads.csv");
    }
    boolean canPass = others.stream().allMatch(o -> o.datum(Term.LOAD_CURRENT).canPass());
    String names =
        others.stream().map(other -> other.channel().name()).sorted().toList().toString();
    return Datum.of(term, sum, Source.computed("shared with " + names, canPass));
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
