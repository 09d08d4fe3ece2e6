package lowfirst.assembly;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which groups of one rank wait for others of it. Each group counts what it waits for, so that
 * asking costs nothing; the pieces of one group share a set, and with it a count.
 */
final class Waiting {
  private final Set<Integer> positions;
  private final IdentityHashMap<Set<Integer>, int[]> counts = new IdentityHashMap<>();
  private final Map<Integer, List<int[]>> freedBy = new HashMap<>();

  Waiting(List<Ranked> rank) {
    positions = rank.stream().map(Ranked::position).collect(Collectors.toSet());
    rank.forEach(ranked -> counts.computeIfAbsent(ranked.after(), this::counted));
  }

  private int[] counted(Set<Integer> after) {
    var count = new int[1];
    for (int position : after) {
      if (positions.contains(position)) {
        count[0]++;
        freedBy.computeIfAbsent(position, none -> new ArrayList<>()).add(count);
      }
    }
    return count;
  }

  /** Whether nothing of this rank that must go before a group is left. */
  boolean isFree(Ranked ranked) {
    return counts.get(ranked.after())[0] == 0;
  }

  /** A group has been seated. */
  void remove(Ranked ranked) {
    freedBy.getOrDefault(ranked.position(), List.of()).forEach(count -> count[0]--);
  }
}
