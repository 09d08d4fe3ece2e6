package lowfirst.channel.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.board.Board;
import lowfirst.board.Driver;
import lowfirst.board.Kit;
import lowfirst.board.Load;
import lowfirst.board.OutputChannel;
import lowfirst.board.Rail;
import lowfirst.board.Swap;
import lowfirst.problem.Place;
import lowfirst.quantity.Source;

/**
 * The cells that nobody could read in the rows that a finding rests on, the rows that may be meant
 * as well since they have the same name, and the swaps of which nobody knows the place. What stands
 * there may be what decides, so nothing carries until they are mended.
 */
public final class UnreadCells {
  private static final List<String> OF_CHANNELS = List.of("channels.", "loads.");
  private static final List<String> OF_ALL = List.of("kit.properties", "swaps.");

  private final Kit kit;

  /** By the row that each stands in. */
  private final Map<Place, List<Place>> byRow;

  private final List<Place> ofAll;

  /** The rejected cells of a kit. */
  public UnreadCells(Kit kit) {
    this.kit = kit;
    this.byRow =
        kit.rejected().stream()
            .collect(Collectors.groupingBy(UnreadCells::row, TreeMap::new, Collectors.toList()));
    namesakes(kit.rails(), Rail::name, Rail::place);
    namesakes(kit.drivers(), Driver::name, Driver::place);
    namesakes(kit.loads(), Load::name, Load::place);
    this.ofAll =
        Stream.concat(
                kit.rejected().stream()
                    .filter(cell -> OF_ALL.stream().anyMatch(cell.file()::startsWith)),
                kit.swaps().stream().filter(swap -> !isPlaced(swap)).map(Swap::place))
            .toList();
  }

  /**
   * The first row of a name is the one that is used, and the others may be the one that is meant.
   */
  private <T> void namesakes(List<T> rows, Function<T, String> name, Function<T, Place> place) {
    var first = new HashMap<String, Place>();
    for (T row : rows) {
      Place used = first.putIfAbsent(name.apply(row), place.apply(row));
      if (used != null) {
        byRow.computeIfAbsent(row(used), none -> new ArrayList<>()).add(place.apply(row));
      }
    }
  }

  /** Whether the tables tell where it is fitted, every place of it. */
  private boolean isPlaced(Swap swap) {
    List<Board> boards = kit.boards().stream().filter(board -> swap.isOn(board.name())).toList();
    return swap.designators().stream()
        .allMatch(place -> boards.stream().anyMatch(board -> board.find(place).isPresent()));
  }

  private static Place row(Place cell) {
    return Place.ofLine(cell.file(), cell.line());
  }

  /** No such cell. */
  public static Datum none() {
    return Datum.of(Term.UNREAD, 0, Source.kit("every cell was read"));
  }

  /** Those of a channel, its load, its driver, and the rails of both. */
  public Datum of(
      OutputChannel channel, Optional<Load> load, Optional<Driver> driver, Optional<Rail> rail) {
    return among(
        Stream.of(
                Optional.of(channel.place()),
                load.map(Load::place),
                driver.map(Driver::place),
                driver.flatMap(known -> kit.rail(known.supply())).map(Rail::place),
                rail.map(Rail::place))
            .flatMap(Optional::stream)
            .flatMap(this::in));
  }

  /** Those of a rail, and of channels and loads that were left out and may hang on it. */
  public Datum of(Rail rail) {
    return among(Stream.concat(in(rail.place()), leftOut()));
  }

  private Stream<Place> in(Place row) {
    return byRow.getOrDefault(row(row), List.of()).stream();
  }

  private Stream<Place> leftOut() {
    if (byRow.isEmpty()) {
      return Stream.empty();
    }
    Set<Place> used =
        Stream.concat(
                kit.channels().stream().map(OutputChannel::place),
                kit.loads().stream().map(Load::place))
            .map(UnreadCells::row)
            .collect(Collectors.toSet());
    return byRow.entrySet().stream()
        .filter(row -> OF_CHANNELS.stream().anyMatch(row.getKey().file()::startsWith))
        .filter(row -> !used.contains(row.getKey()))
        .flatMap(row -> row.getValue().stream());
  }

  private Datum among(Stream<Place> cells) {
    String all =
        Stream.concat(cells, ofAll.stream())
            .map(Place::toString)
            .distinct()
            .collect(Collectors.joining("; "));
    return all.isEmpty()
        ? none()
        : Datum.missing(Term.UNREAD, "what check says of " + all + ": mend it there");
  }

  /** Undecided where a cell could not be read; no check where all were. */
  public static void into(Datum unread, List<Check> checks) {
    if (!unread.isKnown()) {
      checks.add(Check.of(CheckKind.CELLS_READ, Double.NaN, Double.NaN, unread));
    }
  }
}
