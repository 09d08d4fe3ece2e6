package lowfirst.board;

import java.util.Optional;
import lowfirst.part.BodyOutline;

/**
 * A placement with what BOM and package say of its part, all at hand: checks walk over thousands,
 * and to follow each to its {@link BoardPart} takes longer than most checks.
 */
public final class Placed {
  private final Placement placement;
  private final Optional<Item> item;
  private final Optional<BodyOutline> outline;
  private final boolean again;
  private final boolean fitted;

  Placed(Placement placement, BoardPart part, boolean again) {
    this.placement = placement;
    this.item = part.item();
    this.outline = part.outline();
    this.again = again;
    this.fitted = item.isEmpty() || item.get().isFitted();
  }

  /** Where it sits. */
  public Placement placement() {
    return placement;
  }

  /** The BOM line that its designator belongs to. */
  public Optional<Item> item() {
    return item;
  }

  /** The body of its part, as far as it was found. */
  public Optional<BodyOutline> outline() {
    return outline;
  }

  /** Whether an earlier row places the same designator. */
  public boolean isPlacedAgain() {
    return again;
  }

  /** Whether it is to be fitted: what no BOM line names is, since it is placed. */
  public boolean isFitted() {
    return fitted;
  }
}
