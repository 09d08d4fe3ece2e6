package lowfirst.board;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import lowfirst.part.BodyOutline;

/** A bare board design and how many of it are built, with its BOM and placement list joined. */
public final class Board {
  private final String name;
  private final int count;
  private final Optional<Size> size;
  private final List<Item> items;
  private final List<Placement> placements;
  private final Map<Designator, BoardPart> byDesignator;
  private final List<BoardPart> parts = new ArrayList<>();
  private final List<Placed> placed = new ArrayList<>();

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

  /**
   * A board.
   *
   * @param name what the kit calls it
   * @param count how many units are built, at least 1
   * @param size width and height where {@code boards.csv} gives them
   * @param items the BOM
   * @param placements the placement list
   * @param outlines finds the body of a part; asked once for each
   */
  public Board(
      String name,
      int count,
      Optional<Size> size,
      List<Item> items,
      List<Placement> placements,
      Function<BoardPart, Optional<BodyOutline>> outlines) {
    this.name = name;
    this.count = count;
    this.size = size;
    this.items = List.copyOf(items);
    this.placements = List.copyOf(placements);
    int named = items.stream().mapToInt(item -> item.designators().size()).sum();
    this.byDesignator = new HashMap<>(2 * Math.max(named, placements.size()));
    for (Item item : this.items) {
      item.designators().forEach(designator -> part(designator).namedBy(item));
    }
    for (Placement placement : this.placements) {
      BoardPart part = part(placement.designator());
      boolean again = part.placement().isPresent();
      if (!again) {
        part.placedAt(placement);
        outlines.apply(part).ifPresent(part::shapedAs);
      }
      placed.add(new Placed(placement, part, again));
    }
    for (BoardPart part : parts) {
      if (part.placement().isEmpty()) {
        outlines.apply(part).ifPresent(part::shapedAs);
      }
    }
  }

  private BoardPart part(Designator designator) {
    return byDesignator.computeIfAbsent(
        designator,
        unknown -> {
          var part = new BoardPart(unknown);
          parts.add(part);
          return part;
        });
  }

  /** What the kit calls it. */
  public String name() {
    return name;
  }

  /** How many units are built, at least 1. */
  public int count() {
    return count;
  }

  /** Width and height where {@code boards.csv} gives them. */
  public Optional<Size> size() {
    return size;
  }

  /** The BOM. */
  public List<Item> items() {
    return items;
  }

  /** The placement list. */
  public List<Placement> placements() {
    return placements;
  }

  /** Every designator once: in the order of the BOM, then what is only placed. */
  public List<BoardPart> parts() {
    return Collections.unmodifiableList(parts);
  }

  /** Every placement with its part, in the order of the placement list. */
  public List<Placed> placed() {
    return Collections.unmodifiableList(placed);
  }

  /** The part of a designator; empty when neither table has it. */
  public Optional<BoardPart> find(Designator designator) {
    return Optional.ofNullable(byDesignator.get(designator));
  }

  /** The item that a designator belongs to; the first to name it. */
  public Optional<Item> itemOf(Designator designator) {
    return find(designator).flatMap(BoardPart::item);
  }

  /** The body of a designator, as far as it was found. */
  public Optional<BodyOutline> outlineOf(Designator designator) {
    return find(designator).flatMap(BoardPart::outline);
  }

  /** The units to build, each with its serial: {@code driver-1}, {@code driver-2}. */
  public List<Unit> units() {
    return IntStream.rangeClosed(1, count).mapToObj(number -> new Unit(name, number)).toList();
  }

  /** The same by its tables and by the bodies found. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Board that
        && name.equals(that.name)
        && count == that.count
        && size.equals(that.size)
        && items.equals(that.items)
        && placements.equals(that.placements)
        && outlines().equals(that.outlines());
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, count, size, items, placements);
  }

  private List<Optional<BodyOutline>> outlines() {
    return parts.stream().map(BoardPart::outline).toList();
  }

  @Override
  public String toString() {
    return name + " of " + items.size() + " items and " + placements.size() + " placements";
  }
}
