package lowfirst.swap;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import lowfirst.channel.check.CheckKind;
import lowfirst.swap.rule.SwapVerdict;

/** The worst that each check of the channels came to. */
final class WorstChecks {
  private final Map<CheckKind, SwapVerdict> byKind = new EnumMap<>(CheckKind.class);

  void add(CheckKind kind, SwapVerdict found) {
    byKind.merge(kind, found, SwapVerdict::worse);
  }

  int count(SwapVerdict verdict) {
    int count = 0;
    for (SwapVerdict found : byKind.values()) {
      count += found == verdict ? 1 : 0;
    }
    return count;
  }

  /** Whether they answer a reason: it yields to them, or their failing counts already. */
  boolean answers(SwapReason reason) {
    return reason.rule().answeredBy().stream()
        .flatMap(kind -> Optional.ofNullable(byKind.get(kind)).stream())
        .reduce(SwapVerdict::worse)
        .filter(worst -> worst == SwapVerdict.DOES_NOT_FIT || reason.yieldsTo(worst))
        .isPresent();
  }

  /** Every check with its worst. */
  Map<CheckKind, SwapVerdict> byKind() {
    return byKind;
  }
}
