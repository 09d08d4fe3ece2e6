package lowfirst.swap;

import java.util.List;
import lowfirst.swap.rule.Answer;
import lowfirst.swap.rule.SwapRule;
import lowfirst.swap.rule.SwapVerdict;

/**
 * One reason of a finding: what a rule answered.
 *
 * @param rule which rule
 * @param answer what it answered by comparing the two parts
 * @param decidedBy the channels whose recomputed checks answer it for the real load, and have the
 *     last word; empty where no channel asks the same question
 */
public record SwapReason(SwapRule rule, Answer answer, List<String> decidedBy) {

  public SwapReason {
    decidedBy = List.copyOf(decidedBy);
  }

  /**
   * Whether the load's own checks have the last word: where they are undecided, only over what is
   * undecided itself or falls short by a figure, which the load may yet not need.
   */
  boolean yieldsTo(SwapVerdict load) {
    return switch (load) {
      case FITS -> true;
      case UNDECIDED -> answer.verdict() == SwapVerdict.UNDECIDED || answer.margin().isPresent();
      case DOES_NOT_FIT -> false;
    };
  }

  /** The rule's verdict; where channels decide, theirs counts, and this is no obstacle. */
  public SwapVerdict verdict() {
    return decidedBy.isEmpty() ? answer.verdict() : SwapVerdict.FITS;
  }
}
