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
  private Item item;
  private List<Item> further = List.of();
  private Placement placement;

  /** Kept beside the placement, since an assembly order asks no more of it. */
  private Side side = Side.TOP;

  private BodyOutline outline;

  BoardPart(Designator designator) {
    this.designator = designator;
  }

  void namedBy(Item line) {
    if (item == null) {
      item = line;
    } else if (!isLast(line)) {
      further = new ArrayList<>(further);
      further.add(line);
    }
  }

  @SuppressWarnings("ReferenceEquality") // a line that names it twice, not one that says the same
  private boolean isLast(Item line) {
    return line == (further.isEmpty() ? item : further.get(further.size() - 1));
  }

  void placedAt(Placement place) {
    placement = place;
    side = place.side();
  }

  void shapedAs(BodyOutline body) {
    outline = body;
  }

  /** Which one. */
  public Designator designator() {
    return designator;
  }

  /** The BOM line that it belongs to: the first that names it. */
  public Optional<Item> item() {
    return Optional.ofNullable(item);
  }

  /** Every BOM line that names it, a socket's and its circuit's, for example; mostly one. */
  public List<Item> items() {
    if (further.isEmpty()) {
      return item == null ? List.of() : List.of(item);
    }
    var all = new ArrayList<Item>();
    all.add(item);
    all.addAll(further);
    return all;
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
    return Optional.ofNullable(outline);
  }
}
