package lowfirst.swap;

import java.util.EnumMap;
import java.util.Map;
import lowfirst.channel.check.CheckKind;

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

  /** Whether they answer a reason: they all carry, or their failing counts already. */
  boolean answers(SwapReason reason) {
    boolean any = false;
    SwapVerdict worst = SwapVerdict.FITS;
    for (CheckKind kind : reason.rule().answeredBy()) {
      SwapVerdict verdict = byKind.get(kind);
      if (verdict != null) {
        any = true;
        worst = worst.worse(verdict);
      }
    }
    boolean carried = any && worst == SwapVerdict.FITS;
    boolean counted = worst != SwapVerdict.FITS && worst.worse(reason.answer().verdict()) == worst;
    return carried || counted;
  }

  /** Every check with its worst. */
  Map<CheckKind, SwapVerdict> byKind() {
    return byKind;
  }
}
