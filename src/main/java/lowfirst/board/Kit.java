package lowfirst.board;

import java.util.List;
import java.util.Optional;
import lowfirst.part.Datasheets;
import lowfirst.problem.Place;

/**
 * One or more boards, the parts for them, the loads they will switch.
 *
 * @param settings from {@code kit.properties}
 * @param rejected the cells that were left out since they can't be read or used
 * @param fingerprint of the input tables
 */
public record Kit(
    Settings settings,
    List<Board> boards,
    Datasheets datasheets,
    List<Rail> rails,
    List<SupplyUnit> supplies,
    List<OutputChannel> channels,
    List<Driver> drivers,
    List<Load> loads,
    List<BagLine> bag,
    List<Swap> swaps,
    List<Place> rejected,
    Fingerprint fingerprint) {

  public Kit {
    boards = List.copyOf(boards);
    rails = List.copyOf(rails);
    supplies = List.copyOf(supplies);
    channels = List.copyOf(channels);
    drivers = List.copyOf(drivers);
    loads = List.copyOf(loads);
    bag = List.copyOf(bag);
    swaps = List.copyOf(swaps);
    rejected = List.copyOf(rejected);
  }

  /** The board of this name. */
  public Optional<Board> board(String name) {
    return boards.stream().filter(board -> board.name().equals(name)).findFirst();
  }

  /** The rail of this name. */
  public Optional<Rail> rail(String name) {
    return rails.stream().filter(rail -> rail.name().equals(name)).findFirst();
  }

  /** The driver of this name. */
  public Optional<Driver> driver(String name) {
    return drivers.stream().filter(driver -> driver.name().equals(name)).findFirst();
  }

  /**
   * What is fitted in place of the BOM's part, where something is: rows are added as parts are
   * fitted, so of several the last one tells what sits there now.
   */
  public Optional<Swap> swapAt(String board, Designator place) {
    return swaps.stream()
        .filter(swap -> swap.isOn(board) && swap.designators().contains(place))
        .reduce((earlier, later) -> later);
  }

  /** The rail that a channel's load hangs on. */
  public Optional<Rail> railOf(OutputChannel channel) {
    return load(channel.load()).flatMap(load -> rail(load.rail()));
  }

  /** The load of this name. */
  public Optional<Load> load(String name) {
    return loads.stream().filter(load -> load.name().equals(name)).findFirst();
  }
}
