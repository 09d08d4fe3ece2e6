package lowfirst.board;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import lowfirst.part.BodyOutline;

/** A bare board design and how many of it are built, with its BOM and placement list joined. */
public final class Board {
  /** So many parts outside the outline may each be misplaced, however few parts there are. */
  private static final int FEW = 3;

  private final String name;
  private final int count;
  private final Optional<Size> size;
  private final Optional<Size> outline;
  private final List<Item> items;
  private final List<Placement> placements;
  private final PartIndex parts;
  private final List<Placed> placed;

  /**
   * The bare board.
   *
   * @param left x of its lower left corner in the placement list's origin
   * @param bottom y of its lower left corner in the placement list's origin
   */
  public record Size(
      double left, double bottom, double widthMillimetres, double heightMillimetres) {

    /** Whether a part's middle lies on it. */
    public boolean holds(Placement placement) {
      double x = placement.xMillimetres() - left;
      double y = placement.yMillimetres() - bottom;
      return x >= 0 && y >= 0 && x <= widthMillimetres && y <= heightMillimetres;
    }
  }

  /**
   * A board.
   *
   * @param name what the kit calls it
   * @param count how many units are built, at least 1
   * @param size width and height where {@code boards.csv} gives them
   * @param items the BOM, and what the placement list tells of parts that it doesn't name
   * @param placements the placement list
   * @param bodies finds the body of a part; asked once for each
   */
  public Board(
      String name,
      int count,
      Optional<Size> size,
      List<Item> items,
      List<Placement> placements,
      BodyFinder bodies) {
    this.name = name;
    this.count = count;
    this.size = size;
    this.items = List.copyOf(items);
    this.placements = List.copyOf(placements);
    this.outline = size.filter(known -> isMostlyOn(known, placements));
    this.placed = new ArrayList<>(placements.size());
    int named = items.stream().mapToInt(item -> item.designators().size()).sum();
    this.parts = new PartIndex(named + placements.size());
    for (Item item : this.items) {
      Optional<Item> line = Optional.of(item);
      List<Item> alone = List.of(item);
      Optional<BodyOutline> settled = bodies.ofAllIn(item);
      for (Designator designator : item.designators()) {
        BoardPart part = parts.of(designator);
        if (part.item().isEmpty()) {
          part.shapedAs(settled);
        }
        part.namedBy(line, alone);
      }
    }
    for (Placement placement : this.placements) {
      BoardPart part = parts.of(placement.designator());
      boolean again = part.placement().isPresent();
      if (!again) {
        part.placedAt(placement);
        findBody(part, bodies);
      }
      placed.add(new Placed(placement, part, again));
    }
    for (BoardPart part : parts.all()) {
      if (part.placement().isEmpty()) {
        findBody(part, bodies);
      }
    }
  }

  private static void findBody(BoardPart part, BodyFinder bodies) {
    if (part.outline().isEmpty()) {
      part.shapedAs(bodies.of(part));
    }
  }

  /** What the kit calls it. */
  public String name() {
    return name;
  }

  /** How many units are built, at least 1. */
  public int count() {
    return count;
  }

  /**
   * Where the edge lies among the placements; empty where the size is not known, or where most
   * parts would lie outside: then the list counts from another corner, or in another unit.
   */
  public Optional<Size> outline() {
    return outline;
  }

  private static boolean isMostlyOn(Size size, List<Placement> placements) {
    long outside = placements.stream().filter(placement -> !size.holds(placement)).count();
    return outside <= FEW || outside * 2 <= placements.size();
  }

  /** Width and height where {@code boards.csv} gives them. */
  public Optional<Size> size() {
    return size;
  }

  /** The BOM, and what the placement list tells of parts that it doesn't name. */
  public List<Item> items() {
    return items;
  }

  /** The BOM alone. */
  public List<Item> bomLines() {
    return items.stream().filter(item -> !isOnlyPlaced(item)).toList();
  }

  /**
   * Whether an item is told by the placement list and not by the BOM: it has a placement's place.
   */
  @SuppressWarnings("ReferenceEquality") // one table may be both: then two places are alike
  public boolean isOnlyPlaced(Item item) {
    if (item.designators().isEmpty()) {
      return false;
    }
    BoardPart first = parts.find(item.designators().get(0));
    return first != null
        && first.placement().isPresent()
        && first.placement().get().place() == item.place();
  }

  /** The placement list. */
  public List<Placement> placements() {
    return placements;
  }

  /** Every designator once: in the order of the BOM, then what is only placed. */
  public List<BoardPart> parts() {
    return Collections.unmodifiableList(parts.all());
  }

  /** Every placement with its part, in the order of the placement list. */
  public List<Placed> placed() {
    return Collections.unmodifiableList(placed);
  }

  /** The part of a designator; empty when neither table has it. */
  public Optional<BoardPart> find(Designator designator) {
    return Optional.ofNullable(parts.find(designator));
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
    return parts.all().stream().map(BoardPart::outline).toList();
  }

  @Override
  public String toString() {
    return name + " of " + items.size() + " items and " + placements.size() + " placements";
  }
}
