package lowfirst.assembly;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import lowfirst.board.Designator;

/**
 * Which group must go before which, whatever its height. A ring of such demands can't be met: it is
 * reported, and one demand of it is dropped so that the rest is still planned.
 */
final class Precedence {
  private final List<Group> groups;
  private final Map<Designator, Integer> groupOf = new HashMap<>();
  private final List<Set<Integer>> before = new ArrayList<>();
  private final List<Set<Integer>> after = new ArrayList<>();
  private final List<List<Designator>> rings = new ArrayList<>();

  private Precedence(List<Group> groups, Collection<Demand> demands) {
    this.groups = groups;
    Set<Designator> demanded = new HashSet<>();
    for (Demand demand : demands) {
      demanded.add(demand.first());
      demanded.add(demand.second());
    }
    for (int i = 0; i < groups.size(); i++) {
      for (Seat seat : demanded.isEmpty() ? List.<Seat>of() : groups.get(i).seats()) {
        if (demanded.contains(seat.designator())) {
          groupOf.put(seat.designator(), i);
        }
      }
      before.add(new LinkedHashSet<>());
      after.add(new LinkedHashSet<>());
    }
  }

  /** One part goes before another. */
  record Demand(Designator first, Designator second) {}

  /** The demands on these groups, rings broken. Demands about other groups are ignored. */
  static Precedence of(List<Group> groups, Collection<Demand> demands) {
    var precedence = new Precedence(groups, demands);
    for (Demand demand : demands) {
      Integer first = precedence.groupOf.get(demand.first());
      Integer second = precedence.groupOf.get(demand.second());
      if (first != null && second != null && !first.equals(second)) {
        precedence.before.get(second).add(first);
        precedence.after.get(first).add(second);
      }
    }
    precedence.breakRings();
    return precedence;
  }

  /** The groups that must go before one. */
  Set<Integer> before(int group) {
    return before.get(group);
  }

  /** The groups that must go after one. */
  Set<Integer> after(int group) {
    return after.get(group);
  }

  /** The parts of each ring that was broken, in the order of its demands. */
  List<List<Designator>> rings() {
    return rings;
  }

  /** Takes away what nothing stands before, again and again; what is left over holds a ring. */
  private void breakRings() {
    int[] waiting = new int[groups.size()];
    var free = new ArrayDeque<Integer>();
    for (int i = 0; i < groups.size(); i++) {
      waiting[i] = before.get(i).size();
      if (waiting[i] == 0) {
        free.add(i);
      }
    }
    var left = new TreeSet<Integer>();
    for (int i = 0; i < groups.size(); i++) {
      left.add(i);
    }
    while (!left.isEmpty()) {
      if (free.isEmpty()) {
        List<Integer> ring = ringAmong(left);
        rings.add(ring.stream().map(index -> groups.get(index).first().designator()).toList());
        int opened = ring.get(0);
        int last = ring.get(ring.size() - 1);
        before.get(opened).remove(last);
        after.get(last).remove(opened);
        if (--waiting[opened] == 0) {
          free.add(opened);
        }
        continue;
      }
      int done = free.remove();
      left.remove(done);
      for (int next : after.get(done)) {
        if (--waiting[next] == 0) {
          free.add(next);
        }
      }
    }
  }

  /** A ring, found by walking back from what is left; its lowest member first. */
  private List<Integer> ringAmong(Set<Integer> left) {
    var path = new ArrayList<Integer>();
    var seen = new HashSet<Integer>();
    int at = left.iterator().next();
    while (seen.add(at)) {
      path.add(at);
      at = before.get(at).stream().filter(left::contains).findFirst().orElseThrow();
    }
    List<Integer> ring = new ArrayList<>(path.subList(path.indexOf(at), path.size()));
    java.util.Collections.reverse(ring);
    int lowest =
        ring.stream()
            .min(
                java.util.Comparator.comparingDouble(
                    index -> groups.get(index).height().orElse(Double.MAX_VALUE)))
            .orElseThrow();
    java.util.Collections.rotate(ring, -ring.indexOf(lowest));
    return ring;
  }
}
