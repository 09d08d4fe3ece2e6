package lowfirst.assembly;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The fewest batches over every order that keeps ranks and constraints: dynamic programming, rank
 * by rank, over the sets of groups already seated.
 *
 * <p>A state is how many batches were begun and what the open one holds. Fewer batches always win,
 * since closing a batch costs one at most; among as many, only states that no other is at least as
 * open as are kept. With up to {@value #MOST_EXACT} groups in a rank the answer is exact. Packing
 * is NP-hard in general, so in a larger rank the open batch is filled as full as a subset of the
 * groups can fill it, time and again, which may miss the best.
 */
final class FewestFlips {
  /** Sets of so many groups are still all tried: 2 to the tenth. */
  static final int MOST_EXACT = 10;

  private static final int NOT_REACHED = -1;

  private final AssemblyOptions options;

  private FewestFlips(AssemblyOptions options) {
    this.options = options;
  }

  /** How far one is, and how one came there. */
  private record State(int batches, OpenBatch open, Optional<Move> lastMove) {
    static final State START = new State(0, OpenBatch.EMPTY, Optional.empty());

    State with(Ranked ranked, AssemblyOptions options) {
      boolean joins = batches > 0 && open.takes(ranked.group(), options);
      return new State(
          joins ? batches : batches + 1,
          (joins ? open : OpenBatch.EMPTY).with(ranked.group()),
          Optional.of(new Move(this, ranked)));
    }

    boolean isAtLeastAsGoodAs(State other) {
      return batches < other.batches || (batches == other.batches && open.isAsOpenAs(other.open));
    }
  }

  /** A group seated on top of an earlier state. */
  private record Move(State from, Ranked seated) {}

  static List<List<Ranked>> of(List<Ranked> pieces, AssemblyOptions options) {
    var search = new FewestFlips(options);
    Map<Integer, List<Ranked>> ranks = new LinkedHashMap<>();
    for (Ranked piece : pieces) {
      ranks.computeIfAbsent(piece.rank(), none -> new ArrayList<>()).add(piece);
    }
    List<State> states = List.of(State.START);
    for (List<Ranked> rank : ranks.values()) {
      states =
          rank.size() <= MOST_EXACT ? search.everySet(rank, states) : search.filled(rank, states);
    }
    return batches(states.get(0));
  }

  private List<State> everySet(List<Ranked> rank, List<State> start) {
    int all = (1 << rank.size()) - 1;
    List<List<State>> bySet = new ArrayList<>(Collections.nCopies(all + 1, List.of()));
    bySet.set(0, start);
    for (int set = 0; set < all; set++) {
      for (int i = 0; i < rank.size(); i++) {
        boolean reachable = !bySet.get(set).isEmpty() && (set & 1 << i) == 0;
        if (reachable && isFree(rank, i, set)) {
          int larger = set | 1 << i;
          if (bySet.get(larger).isEmpty()) {
            bySet.set(larger, new ArrayList<>());
          }
          for (State state : bySet.get(set)) {
            keep(bySet.get(larger), state.with(rank.get(i), options));
          }
        }
      }
      bySet.set(set, List.of());
    }
    return bySet.get(all);
  }

  private static boolean isFree(List<Ranked> rank, int index, int set) {
    Set<Integer> waitsFor = rank.get(index).after();
    if (waitsFor.isEmpty()) {
      return true;
    }
    for (int i = 0; i < rank.size(); i++) {
      if ((set & 1 << i) == 0 && waitsFor.contains(rank.get(i).position())) {
        return false;
      }
    }
    return true;
  }

  private static void keep(List<State> states, State found) {
    for (State state : states) {
      if (state.isAtLeastAsGoodAs(found)) {
        return;
      }
    }
    states.removeIf(found::isAtLeastAsGoodAs);
    states.add(found);
  }

  /** Fills batch after batch as full as the free groups of this rank allow. */
  private List<State> filled(List<Ranked> rank, List<State> start) {
    State state = start.get(0);
    var left = new BitSet();
    left.set(0, rank.size());
    var waiting = new Waiting(rank);
    while (!left.isEmpty()) {
      OpenBatch open = state.batches() == 0 ? OpenBatch.EMPTY : state.open();
      List<Integer> joining = fullest(rank, left, waiting, open);
      if (joining.isEmpty()) {
        joining = fullest(rank, left, waiting, OpenBatch.EMPTY);
      }
      for (int index : joining) {
        state = state.with(rank.get(index), options);
        waiting.remove(rank.get(index));
        left.clear(index);
      }
    }
    return List.of(state);
  }

  /**
   * The groups that together leave the least room in a batch, earlier ones preferred: subset sums,
   * each sum remembering the last group that reached it.
   *
   * @param left which groups of the rank are still to be seated
   */
  private List<Integer> fullest(List<Ranked> rank, BitSet left, Waiting waiting, OpenBatch open) {
    int room = room(rank, left, options.partsPerBatch() - open.parts());
    int[] reachedBy = new int[Math.max(room, 0) + 1];
    Arrays.fill(reachedBy, NOT_REACHED);
    int fullest = 0;
    for (int i = left.nextSetBit(0); i >= 0 && fullest < room; i = left.nextSetBit(i + 1)) {
      Ranked ranked = rank.get(i);
      if (!waiting.isFree(ranked) || !open.takes(ranked.group(), options)) {
        continue;
      }
      int size = ranked.group().size();
      for (int sum = room; sum >= size; sum--) {
        boolean reached = sum == size || reachedBy[sum - size] != NOT_REACHED;
        if (reached && reachedBy[sum] == NOT_REACHED) {
          reachedBy[sum] = i;
          fullest = Math.max(fullest, sum);
        }
      }
    }
    var joining = new ArrayList<Integer>();
    for (int sum = fullest; sum > 0; sum -= rank.get(reachedBy[sum]).group().size()) {
      joining.add(reachedBy[sum]);
    }
    return joining;
  }

  /** How many of the parts left a batch that takes {@code most} more could take. */
  private static int room(List<Ranked> rank, BitSet left, int most) {
    int total = 0;
    for (int i = left.nextSetBit(0); i >= 0 && total < most; i = left.nextSetBit(i + 1)) {
      total += rank.get(i).group().size();
    }
    return Math.min(total, most);
  }

  private static List<List<Ranked>> batches(State end) {
    var batches = new ArrayList<List<Ranked>>();
    for (int i = 0; i < end.batches(); i++) {
      batches.add(new ArrayList<>());
    }
    State state = end;
    while (state.lastMove().isPresent()) {
      Move move = state.lastMove().get();
      batches.get(state.batches() - 1).add(0, move.seated());
      state = move.from();
    }
    return batches;
  }
}
