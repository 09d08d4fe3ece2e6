package lowfirst.channel;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.board.Driver;
import lowfirst.board.Kit;
import lowfirst.board.Load;
import lowfirst.board.OutputChannel;
import lowfirst.board.Rail;
import lowfirst.problem.Place;
import lowfirst.quantity.Source;

/**
 * The cells that nobody could read in the rows that a finding rests on. What stands there may be
 * what decides, so nothing carries until they are mended.
 */
final class UnreadCells {
  private static final List<String> OF_CHANNELS = List.of("channels.", "loads.");

  private final Kit kit;

  /** By the row that each stands in. */
  private final Map<Place, List<Place>> byRow;

  private final List<Place> ofAll;

  UnreadCells(Kit kit) {
    this.kit = kit;
    this.byRow =
        kit.rejected().stream()
            .collect(Collectors.groupingBy(UnreadCells::row, TreeMap::new, Collectors.toList()));
    this.ofAll =
        kit.rejected().stream().filter(cell -> cell.file().equals("kit.properties")).toList();
  }

  private static Place row(Place cell) {
    return Place.ofLine(cell.file(), cell.line());
  }

  /** No such cell. */
  static Datum none() {
    return Datum.of(Term.UNREAD, 0, Source.kit("every cell was read"));
  }

  /** Those of a channel, its load, its driver, and the rails of both. */
  Datum of(
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
  Datum of(Rail rail) {
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
        : Datum.missing(Term.UNREAD, "what can't be read in " + all + ": mend it there");
  }

  /** Undecided where a cell could not be read; no check where all were. */
  static void into(Datum unread, List<Check> checks) {
    if (!unread.isKnown()) {
      checks.add(Check.of(CheckKind.CELLS_READ, Double.NaN, Double.NaN, unread));
    }
  }
}
