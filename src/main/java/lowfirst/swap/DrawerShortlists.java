package lowfirst.swap;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import lowfirst.swap.rule.SwapVerdict;
import lowfirst.swap.subject.SwapCase;

/** The best of a drawer's parts of each sort, and how many of each verdict there were. */
final class DrawerShortlists {
  private final int most;
  private final PriorityQueue<DrawerHit> best =
      queue(Comparator.comparingDouble(DrawerHit::margin));
  private final PriorityQueue<DrawerHit> near =
      queue(Comparator.comparingDouble(DrawerHit::margin));
  private final PriorityQueue<DrawerHit> open =
      queue(Comparator.comparing((DrawerHit hit) -> hit.lacks().size()).reversed());
  private final int[] counts = new int[SwapVerdict.values().length];

  /**
   * Empty lists.
   *
   * @param most how many of each sort are kept
   */
  DrawerShortlists(int most) {
    this.most = most;
  }

  private static PriorityQueue<DrawerHit> queue(Comparator<DrawerHit> worstFirst) {
    return new PriorityQueue<>(
        worstFirst
            .thenComparingDouble(DrawerHit::mean)
            .thenComparing(DrawerHit::partType, Comparator.reverseOrder()));
  }

  /** Counts one that isn't worth keeping. */
  void misfit() {
    counts[SwapVerdict.DOES_NOT_FIT.ordinal()]++;
  }

  /** Counts a part, and keeps it while it is among the best of its sort. */
  void add(DrawerHit hit) {
    counts[hit.verdict().ordinal()]++;
    switch (hit.verdict()) {
      case FITS -> offer(best, hit);
      case UNDECIDED -> offer(open, hit);
      case DOES_NOT_FIT -> {
        if (hit.lacks().size() == 1) {
          offer(near, hit);
        }
      }
    }
  }

  private void offer(PriorityQueue<DrawerHit> kept, DrawerHit hit) {
    kept.add(hit);
    if (kept.size() > most) {
      kept.poll();
    }
  }

  /** What was kept. */
  DrawerResult result(SwapCase question) {
    return new DrawerResult(
        question,
        counts[SwapVerdict.FITS.ordinal()],
        counts[SwapVerdict.UNDECIDED.ordinal()],
        counts[SwapVerdict.DOES_NOT_FIT.ordinal()],
        bestFirst(best),
        bestFirst(near),
        bestFirst(open));
  }

  private static List<DrawerHit> bestFirst(PriorityQueue<DrawerHit> kept) {
    return kept.stream().sorted(Collections.reverseOrder(kept.comparator())).toList();
  }
}
