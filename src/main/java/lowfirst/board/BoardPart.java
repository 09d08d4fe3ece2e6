package lowfirst.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.part.BodyOutline;

/**
 * One designator of a board, with what BOM and placement list say of it and its body. {@link Board}
 * makes them once: to look a designator up costs more than most of what is asked of it.
 */
public final class BoardPart {
  private final Designator designator;
  private Optional<Item> item = Optional.empty();
  private List<Item> items = List.of();
  private Placement placement;

  /** Kept beside the placement, since an assembly order asks no more of it. */
  private Side side = Side.TOP;

  private Optional<BodyOutline> outline = Optional.empty();

  BoardPart(Designator designator) {
    this.designator = designator;
  }

  /** The line in the wrappers that all its parts share, where it is the only one. */
  void namedBy(Optional<Item> line, List<Item> alone) {
    if (item.isEmpty()) {
      item = line;
      items = alone;
    } else if (!isLast(line.orElseThrow())) {
      var all = new ArrayList<>(items);
      all.add(line.get());
      items = List.copyOf(all);
    }
  }

  @SuppressWarnings("ReferenceEquality") // a line that names it twice, not one that says the same
  private boolean isLast(Item line) {
    return line == items.get(items.size() - 1);
  }

  void placedAt(Placement place) {
    placement = place;
    side = place.side();
  }

  void shapedAs(Optional<BodyOutline> body) {
    outline = body;
  }

  /** Which one. */
  public Designator designator() {
    return designator;
  }

  /** The BOM line that it belongs to: the first that names it. */
  public Optional<Item> item() {
    return item;
  }

  /** Every BOM line that names it, a socket's and its circuit's, for example; mostly one. */
  public List<Item> items() {
    return items;
  }

  /** Where it sits: the first placement of it. */
  public Optional<Placement> placement() {
    return Optional.ofNullable(placement);
  }

  /** Which side its body is on; the top where that isn't known. */
  public Side side() {
    return side;
  }

  /** Its body, as far as it was found. */
  public Optional<BodyOutline> outline() {
    return outline;
  }
}
