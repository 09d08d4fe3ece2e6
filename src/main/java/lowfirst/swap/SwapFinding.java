package lowfirst.swap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.quantity.Source;

/**
 * What the tool says of one swap. It can't be built without its reasons.
 *
 * @param swap which swap
 * @param reasons every rule that concerns it, with its answer; never empty
 */
public record SwapFinding(SwapCase swap, List<SwapReason> reasons) {

  public SwapFinding {
    reasons = List.copyOf(reasons);
    if (reasons.isEmpty()) {
      throw new IllegalArgumentException("a finding shows its reasons: " + swap.offered().name());
    }
  }

  /** Every rule of the asked kind, held against the two parts. */
  public static SwapFinding ofParts(SwapCase swap) {
    if (isSameType(swap)) {
      return new SwapFinding(swap, List.of(sameType(swap)));
    }
    var reasons = new ArrayList<SwapReason>();
    for (SwapRule rule : SwapRules.of(swap.asked().type().kind())) {
      rule.judge(swap).ifPresent(answer -> reasons.add(new SwapReason(rule, answer, List.of())));
      if (rule == PlaceRule.KIND && reasons.get(0).verdict() != SwapVerdict.FITS) {
        break;
      }
    }
    return new SwapFinding(swap, reasons);
  }

  private static boolean isSameType(SwapCase swap) {
    String asked = swap.asked().type().typeNumber();
    return !asked.isBlank() && Words.same(asked, swap.offered().type().typeNumber());
  }

  private static SwapReason sameType(SwapCase swap) {
    Evidence number =
        Evidence.of(swap.asked().type().typeNumber(), Source.kit("the BOM's part type"));
    return new SwapReason(
        PlaceRule.KIND, Answer.of(SwapVerdict.FITS, number, number, "the same type"), List.of());
  }

  /** The worst of the reasons. */
  public SwapVerdict verdict() {
    SwapVerdict worst = SwapVerdict.FITS;
    for (SwapReason reason : reasons) {
      worst = worst.worse(reason.verdict());
    }
    return worst;
  }

  /** The reasons with one verdict. */
  public List<SwapReason> reasons(SwapVerdict verdict) {
    return reasons.stream().filter(reason -> reason.verdict() == verdict).toList();
  }

  /** The reason that settles it: the first of the worst verdict, the tightest of those that fit. */
  public SwapReason settledBy() {
    SwapVerdict verdict = verdict();
    Comparator<SwapReason> tightest =
        Comparator.comparingDouble(reason -> reason.answer().margin().orElse(Double.MAX_VALUE));
    return reasons(verdict).stream().min(tightest).orElseThrow();
  }

  /** The least of the margins that have a size. */
  public OptionalDouble margin() {
    return reasons.stream()
        .filter(reason -> reason.decidedBy().isEmpty())
        .flatMapToDouble(reason -> reason.answer().margin().stream())
        .min();
  }

  /** What one rule said. */
  public Optional<SwapReason> reason(SwapRule rule) {
    return reasons.stream().filter(reason -> reason.rule() == rule).findFirst();
  }
}
