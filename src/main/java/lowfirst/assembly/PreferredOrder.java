package lowfirst.assembly;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * The order that height and constraints ask for, before anything is said about batches.
 *
 * <p>A group that must wait for taller ones takes their rank; one of unknown height that lies under
 * another takes that one's. Then, of the groups that nothing stands before, the lowest rank goes
 * first, and among equals {@link Group#AMONG_EQUALS} decides: n log n.
 */
final class PreferredOrder {
  private final List<Group> groups;
  private final Precedence precedence;
  private final int[] own;
  private final int[] rank;

  private PreferredOrder(List<Group> groups, Precedence precedence) {
    this.groups = groups;
    this.precedence = precedence;
    var ranks = HeightRanks.of(groups);
    own = groups.stream().mapToInt(ranks::of).toArray();
    lowerTheUnknown(ranks.unknown());
    rank = own.clone();
    raiseTheWaiting();
  }

  /** Groups in the preferred order, each with its rank and what it waits for; rules come later. */
  static List<Ranked> of(List<Group> groups, Precedence precedence) {
    return new PreferredOrder(groups, precedence).ordered();
  }

  private void lowerTheUnknown(int unknown) {
    List<Integer> firstToLast = topological();
    for (int i = firstToLast.size() - 1; i >= 0; i--) {
      int group = firstToLast.get(i);
      if (own[group] == unknown) {
        own[group] =
            precedence.after(group).stream().mapToInt(next -> own[next]).min().orElse(unknown);
      }
    }
  }

  private void raiseTheWaiting() {
    for (int group : topological()) {
      for (int first : precedence.before(group)) {
        rank[group] = Math.max(rank[group], rank[first]);
      }
    }
  }

  private List<Integer> topological() {
    int[] waiting = waiting();
    var free = new ArrayDeque<Integer>();
    var order = new ArrayList<Integer>();
    for (int i = 0; i < groups.size(); i++) {
      if (waiting[i] == 0) {
        free.add(i);
      }
    }
    while (!free.isEmpty()) {
      int done = free.remove();
      order.add(done);
      for (int next : precedence.after(done)) {
        if (--waiting[next] == 0) {
          free.add(next);
        }
      }
    }
    return order;
  }

  private int[] waiting() {
    int[] waiting = new int[groups.size()];
    for (int i = 0; i < waiting.length; i++) {
      waiting[i] = precedence.before(i).size();
    }
    return waiting;
  }

  private List<Ranked> ordered() {
    int[] waiting = waiting();
    int[] position = new int[groups.size()];
    var free =
        new PriorityQueue<Integer>(
            Comparator.<Integer>comparingInt(index -> rank[index])
                .thenComparing(groups::get, Group.AMONG_EQUALS));
    for (int i = 0; i < waiting.length; i++) {
      if (waiting[i] == 0) {
        free.add(i);
      }
    }
    var ordered = new ArrayList<Ranked>();
    while (!free.isEmpty()) {
      int done = free.remove();
      position[done] = ordered.size();
      Set<Integer> sameRank = new HashSet<>();
      for (int first : precedence.before(done)) {
        if (rank[first] == rank[done]) {
          sameRank.add(position[first]);
        }
      }
      Rule rule = rank[done] > own[done] ? Rule.COVERS_ANOTHER : Rule.LOWEST_FIRST;
      ordered.add(new Ranked(groups.get(done), ordered.size(), rank[done], sameRank, rule, ""));
      for (int next : precedence.after(done)) {
        if (--waiting[next] == 0) {
          free.add(next);
        }
      }
    }
    return ordered;
  }
}
