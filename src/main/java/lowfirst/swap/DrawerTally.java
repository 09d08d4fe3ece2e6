package lowfirst.swap;

import java.util.ArrayList;
import java.util.List;
import lowfirst.channel.check.Check;
import lowfirst.swap.rule.SwapVerdict;

/** What has been found of one candidate so far. */
final class DrawerTally {
  private int misfits;
  private int undecided;
  private double margin = Double.POSITIVE_INFINITY;
  private double sum = 0;
  private int sized = 0;
  private final List<String> lacks = new ArrayList<>(2);

  void add(SwapReason reason) {
    count(reason.verdict());
    reason.answer().margin().ifPresent(this::bound);
    if (reason.verdict() != SwapVerdict.FITS) {
      lacks.add(reason.rule().words());
    }
  }

  void add(Check check) {
    if (!Double.isNaN(check.margin())) {
      bound(check.margin());
    }
  }

  private void bound(double size) {
    margin = Math.min(margin, size);
    sum += Math.min(size, 1);
    sized++;
  }

  /**
   * Whether it neither fits nor nearly fits, whatever else is found: one thing is amiss, and
   * another is amiss or open.
   */
  boolean isHopeless(WorstChecks more) {
    int amiss = misfits + more.count(SwapVerdict.DOES_NOT_FIT);
    return amiss > 0 && amiss + undecided + more.count(SwapVerdict.UNDECIDED) > 1;
  }

  /** What came of it, under the candidate's name. */
  DrawerHit hit(String name) {
    return new DrawerHit(name, verdict(), margin, sized == 0 ? 0 : sum / sized, lacks);
  }

  void add(WorstChecks checked) {
    checked
        .byKind()
        .forEach(
            (kind, verdict) -> {
              count(verdict);
              if (verdict != SwapVerdict.FITS) {
                lacks.add(kind.words());
              }
            });
  }

  private void count(SwapVerdict verdict) {
    misfits += verdict == SwapVerdict.DOES_NOT_FIT ? 1 : 0;
    undecided += verdict == SwapVerdict.UNDECIDED ? 1 : 0;
  }

  private SwapVerdict verdict() {
    if (misfits > 0) {
      return SwapVerdict.DOES_NOT_FIT;
    }
    return undecided > 0 ? SwapVerdict.UNDECIDED : SwapVerdict.FITS;
  }
}
