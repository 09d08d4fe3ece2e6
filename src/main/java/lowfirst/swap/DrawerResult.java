package lowfirst.swap;

import java.util.List;
import lowfirst.swap.subject.SwapCase;

/**
 * What a drawer holds for one place.
 *
 * @param question the place, and the part that the BOM asks for there
 * @param fitting how many part types fit
 * @param undecided how many lack a datum
 * @param misfits how many do not fit
 * @param best those that fit, best margin first, as many as were asked for
 * @param nearMisses those that lack just one thing, the nearest first
 * @param open undecided ones, those with the fewest open points first
 */
public record DrawerResult(
    SwapCase question,
    int fitting,
    int undecided,
    int misfits,
    List<DrawerHit> best,
    List<DrawerHit> nearMisses,
    List<DrawerHit> open) {

  public DrawerResult {
    best = List.copyOf(best);
    nearMisses = List.copyOf(nearMisses);
    open = List.copyOf(open);
  }

  /** How many part types were looked at. */
  public int looked() {
    return fitting + undecided + misfits;
  }
}
