package lowfirst.swap;

import java.util.List;

/**
 * One reason of a finding: what a rule answered.
 *
 * @param rule which rule
 * @param answer what it answered by comparing the two parts
 * @param decidedBy the channels whose recomputed checks carry and so answer it for the real load;
 *     empty where no channel asks the same question, or one does not carry
 */
public record SwapReason(SwapRule rule, Answer answer, List<String> decidedBy) {

  public SwapReason {
    decidedBy = List.copyOf(decidedBy);
  }

  /** The rule's verdict, or that the recomputed channels carry. */
  public SwapVerdict verdict() {
    return decidedBy.isEmpty() ? answer.verdict() : SwapVerdict.FITS;
  }
}
