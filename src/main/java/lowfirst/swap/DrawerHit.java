package lowfirst.swap;

import java.util.List;
import lowfirst.swap.rule.SwapVerdict;

/**
 * A part type of a drawer, judged for one place.
 *
 * @param partType its name
 * @param verdict what the rules and the hardest channels say
 * @param margin the least margin; not a number where none has a size
 * @param mean the mean of all margins, each counted as 1 at most; it ranks equals
 * @param lacks what it lacks, each in the words of its rule or check; empty for what fits
 */
public record DrawerHit(
    String partType, SwapVerdict verdict, double margin, double mean, List<String> lacks) {

  public DrawerHit {
    lacks = List.copyOf(lacks);
  }
}
