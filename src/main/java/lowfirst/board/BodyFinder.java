package lowfirst.board;

import java.util.Optional;
import lowfirst.part.BodyOutline;

/** Finds the bodies of a board's parts. */
@FunctionalInterface
public interface BodyFinder {

  /** The body of one part, from all that is known of it. */
  Optional<BodyOutline> of(BoardPart part);

  /**
   * The body of every part that a BOM line is the first to name, where the line alone settles it.
   * It spares asking for each.
   */
  default Optional<BodyOutline> ofAllIn(Item line) {
    return Optional.empty();
  }
}
