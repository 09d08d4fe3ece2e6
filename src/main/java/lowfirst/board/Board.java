package lowfirst.board;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.part.BodyOutline;

/**
 * A bare board design and how many of it are built.
 *
 * @param name what the kit calls it
 * @param count how many units are built, at least 1
 * @param size width and height where {@code boards.csv} gives them
 * @param items the BOM
 * @param placements the placement list
 * @param outlines the body outline found for each designator, from the kit or the package table
 */
public record Board(
    String name,
    int count,
    Optional<Size> size,
    List<Item> items,
    List<Placement> placements,
    Map<Designator, BodyOutline> outlines) {

  /**
   * The bare board.
   *
   * @param left x of its lower left corner in the placement list's origin
   * @param bottom y of its lower left corner in the placement list's origin
   */
  public record Size(
      double left,
      double bottom,
      double widthMillimetres,
      double heightMillimetres,
      double thicknessMillimetres) {}

  public Board {
    items = List.copyOf(items);
    placements = List.copyOf(placements);
    outlines = Map.copyOf(outlines);
  }

  /** The item that a designator belongs to; the first to name it. */
  public Optional<Item> itemOf(Designator designator) {
    return Optional.ofNullable(itemsByDesignator().get(designator));
  }

  /** Every designator of the BOM with the first item that names it. */
  public Map<Designator, Item> itemsByDesignator() {
    var map = new HashMap<Designator, Item>();
    for (Item item : items) {
      item.designators().forEach(designator -> map.putIfAbsent(designator, item));
    }
    return map;
  }

  /** Every placed designator with its first placement. */
  public Map<Designator, Placement> placementsByDesignator() {
    var map = new HashMap<Designator, Placement>();
    placements.forEach(placement -> map.putIfAbsent(placement.designator(), placement));
    return map;
  }

  /** The units to build, each with its serial: {@code driver-1}, {@code driver-2}. */
  public List<Unit> units() {
    return java.util.stream.IntStream.rangeClosed(1, count)
        .mapToObj(number -> new Unit(name, number))
        .toList();
  }
}
