package lowfirst.channel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Driver;
import lowfirst.board.Item;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.board.Unit;
import lowfirst.board.UnitChannels;
import lowfirst.channel.ChannelInputs.Switching;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.data.PartData;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Source;

/**
 * What else flows through a part that a channel has in common with others: a fuse, an array, a
 * heatsink, a diode.
 */
final class SharedParts {
  private final Kit kit;
  private final List<ChannelInputs> alone;
  private final Set<String> unitNamed;

  /**
   * The shared parts of a kit.
   *
   * @param alone every channel, resolved by itself
   */
  SharedParts(Kit kit, List<ChannelInputs> alone) {
    this.kit = kit;
    this.alone = List.copyOf(alone);
    this.unitNamed = UnitChannels.unitNamedBoards(kit);
  }

  /** What else the fuse carries. */
  Datum onFuse(ChannelInputs in) {
    return onDesignator(
        Term.OTHERS_ON_FUSE, in, OutputChannel::fuse, "no other channel on this fuse");
  }

  /**
   * What else heats the package that carries the load. An array that stands as a channel's MOSFET
   * is told by its designator; one that is a driver by the driver's name, on each unit anew where
   * only the channel's own board has such a part. Drivers of other names with the same part type
   * are others of it only as far as the BOMs list so many.
   */
  Datum onStage(ChannelInputs in) {
    if (isOneTransistor(in)) {
      return summed(Term.OTHERS_ON_STAGE, List.of(), 0, "one transistor, one load");
    }
    String none = "no other channel on this driver";
    if (in.channel().mosfet().isPresent()) {
      return onDesignator(Term.OTHERS_ON_STAGE, in, OutputChannel::mosfet, none);
    }
    List<ChannelInputs> others = new ArrayList<>();
    var elsewhere = new LinkedHashMap<String, List<ChannelInputs>>();
    String type = partType(in);
    Optional<Unit> unit =
        UnitChannels.unitOf(kit, in.channel())
            .filter(own -> !type.isEmpty() && isOnlyOn(own, type));
    for (ChannelInputs other : alone) {
      boolean alike =
          other != in
              && other.switching() == in.switching()
              && other.channel().mosfet().isEmpty()
              && (unit.isEmpty() || UnitChannels.unitOf(kit, other.channel()).equals(unit));
      if (alike && other.channel().driver().equals(in.channel().driver())) {
        others.add(other);
      } else if (alike && !type.isEmpty() && partType(other).equalsIgnoreCase(type)) {
        elsewhere.computeIfAbsent(other.channel().driver(), first -> new ArrayList<>()).add(other);
      }
    }
    int units = unit.isPresent() ? kit.board(in.channel().board()).map(Board::count).orElse(1) : 1;
    int packages = Math.max(1, packages(type) / units);
    int drivers = elsewhere.size() + 1;
    elsewhere.values().stream()
        .sorted(Comparator.comparingDouble(SharedParts::amperes).reversed())
        .limit((drivers + packages - 1) / packages - 1)
        .forEach(others::addAll);
    return summed(Term.OTHERS_ON_STAGE, others, others.size(), none);
  }

  /**
   * What else heats the heatsink: all of its name on this unit; or perhaps all that name none, on
   * heatsinks as good, unless the BOM lists one for each.
   */
  Datum onHeatsink(ChannelInputs in) {
    OutputChannel own = in.channel();
    List<ChannelInputs> others =
        onSameUnit(in).filter(other -> mayShareHeatsink(own, other.channel())).toList();
    boolean isNamed = !own.heatsinkName().isEmpty();
    if (others.isEmpty() || (!isNamed && heatsinks(own) > others.size())) {
      return Datum.of(
          Term.OTHERS_ON_HEATSINK,
          0,
          Source.kit("channels.csv: no other channel on this heatsink"));
    }
    String names =
        others.stream().map(other -> other.channel().name()).sorted().toList().toString();
    double watts = others.stream().mapToDouble(SharedParts::hottestWatts).sum();
    if (Double.isNaN(watts)) {
      return Datum.missing(
          Term.OTHERS_ON_HEATSINK, "the heat of " + names + ", on one heatsink: what they lack");
    }
    boolean canPass = others.stream().allMatch(SharedParts::isSureOfHeat);
    Source source = Source.computed("shared with " + names, canPass);
    double least = isNamed ? watts : 0;
    return Datum.of(Term.OTHERS_ON_HEATSINK, least, least, watts, source);
  }

  private static boolean mayShareHeatsink(OutputChannel one, OutputChannel other) {
    return one.heatsink().isPresent()
        && other.heatsink().isPresent()
        && one.heatsinkName().equalsIgnoreCase(other.heatsinkName())
        && (!one.heatsinkName().isEmpty()
            || one.heatsink().get().asDouble() == other.heatsink().get().asDouble());
  }

  /** How many heatsinks the BOM of the channel's board lists. */
  private int heatsinks(OutputChannel channel) {
    return kit.board(channel.board()).stream()
        .flatMap(board -> board.items().stream())
        .filter(item -> item.isFitted() && item.partType().kind() == PartKind.HEATSINK)
        .mapToInt(item -> Math.max(item.quantity(), item.designators().size()))
        .sum();
  }

  private static double hottestWatts(ChannelInputs in) {
    return in.switching() == Switching.MOSFET
        ? SwitchChecks.hottestWatts(in)
        : in.high(Term.SATURATION) * in.loadAmps();
  }

  private static boolean isSureOfHeat(ChannelInputs in) {
    return ChannelFinding.checksOn(Role.MOSFET, in).stream()
        .flatMap(check -> check.data().stream())
        .allMatch(datum -> !datum.isKnown() || datum.canPass());
  }

  private Stream<ChannelInputs> onSameUnit(ChannelInputs in) {
    Optional<Unit> unit = UnitChannels.unitOf(kit, in.channel());
    return alone.stream()
        .filter(other -> other != in)
        .filter(other -> other.channel().board().equals(in.channel().board()))
        .filter(other -> UnitChannels.unitOf(kit, other.channel()).equals(unit));
  }

  /**
   * One transistor, one gate resistor, one pull-down, one diode: one channel. Where several rows
   * name it nobody knows whose it is, and what a transistor carries for two is not the current of
   * either.
   */
  Datum ownParts(ChannelInputs in) {
    String shared =
        Arrays.stream(Role.values())
            .filter(role -> servesOne(role, in))
            .flatMap(role -> inSeveralRows(role, in).stream())
            .collect(Collectors.joining("; "));
    return shared.isEmpty()
        ? in.datum(Term.SEVERAL_ROWS)
        : Datum.missing(Term.SEVERAL_ROWS, shared);
  }

  /** Of an array or a network each channel has its own; a fuse carries what flows through it. */
  private static boolean servesOne(Role role, ChannelInputs in) {
    PartData part = in.parts().get(role);
    return part != null
        && switch (role) {
          case MOSFET -> isOneTransistor(in);
          case GATE_RESISTOR, PULL_DOWN -> part.kind() == PartKind.RESISTOR;
          case FLYBACK_DIODE -> part.kind().isDiode();
          case FUSE, STAGE -> false;
        };
  }

  private static boolean isOneTransistor(ChannelInputs in) {
    return in.switching() == Switching.MOSFET || in.switching() == Switching.BIPOLAR_TRANSISTOR;
  }

  private Optional<String> inSeveralRows(Role role, ChannelInputs in) {
    Designator place = role.placeIn(in.channel()).orElseThrow();
    long here = named(place, in);
    long everywhere = here + onSameUnit(in).mapToLong(row -> named(place, row)).sum();
    if (here == 1 && everywhere <= copies(in)) {
      return Optional.empty();
    }
    String joint = role == Role.MOSFET ? " or, if it switches them all, one load for them," : "";
    return Optional.of(
        "whose "
            + role.words()
            + " "
            + place
            + " is: it is named several times, and serves one channel; write each row's own"
            + joint
            + " in channels.csv");
  }

  /** How many places a row names it in. */
  private static long named(Designator place, ChannelInputs row) {
    return Arrays.stream(Role.values())
        .flatMap(role -> role.placeIn(row.channel()).stream())
        .filter(place::equals)
        .count();
  }

  private String partType(ChannelInputs in) {
    return kit.driver(in.channel().driver()).map(Driver::partType).orElse("").strip();
  }

  /** How many of a part type the BOMs list, on every board that is built. */
  private int packages(String type) {
    return kit.boards().stream().mapToInt(board -> packages(board, type) * board.count()).sum();
  }

  private static int packages(Board board, String type) {
    int packages = 0;
    for (Item item : board.items()) {
      PartType listed = item.partType();
      boolean same =
          listed.typeNumber().strip().equalsIgnoreCase(type)
              || listed.text().strip().equalsIgnoreCase(type);
      packages += same && item.isFitted() ? item.designators().size() : 0;
    }
    return packages;
  }

  /** Whether the board of the unit lists such a part, and no other does. */
  private boolean isOnlyOn(Unit unit, String type) {
    return kit.boards().stream()
        .allMatch(board -> (packages(board, type) > 0) == board.name().equals(unit.board()));
  }

  /**
   * A board built n times has each part n times: channels that name their units share one only
   * within a unit; of those that don't, only more on one designator than boards share it, and then
   * the largest of them.
   */
  private Datum onDesignator(
      Term term,
      ChannelInputs in,
      Function<OutputChannel, Optional<Designator>> part,
      String none) {
    OutputChannel own = in.channel();
    if (part.apply(own).isEmpty()) {
      return summed(term, List.of(), 0, none);
    }
    List<ChannelInputs> others =
        onSameUnit(in)
            .filter(other -> part.apply(other.channel()).equals(part.apply(own)))
            .toList();
    int count = copies(in);
    int sharing = (others.size() + 1 + count - 1) / count - 1;
    return summed(term, others, sharing, none);
  }

  /** How many of its board's parts the rows without a unit's name may be about. */
  private int copies(ChannelInputs in) {
    String board = in.channel().board();
    return unitNamed.contains(board) ? 1 : kit.board(board).map(Board::count).orElse(1);
  }

  private static double amperes(List<ChannelInputs> channels) {
    return channels.stream().mapToDouble(ChannelInputs::loadAmps).sum();
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
}
