package lowfirst.progress;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;

/**
 * How many parts are in which state.
 *
 * @param counts how many stand in each state now; a state without parts may be missing
 */
public record Tally(Map<State, Integer> counts) {

  public Tally {
    counts = Map.copyOf(counts);
  }

  /** The tally of these records. */
  public static Tally of(Collection<SpotRecord> records) {
    var counts = new EnumMap<State, Integer>(State.class);
    records.forEach(record -> counts.merge(record.state(), 1, Integer::sum));
    return new Tally(counts);
  }

  /** How many parts there are. */
  public int total() {
    return counts.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** How many stand in exactly this state. */
  public int in(State state) {
    return counts.getOrDefault(state, 0);
  }

  /** How many reached this state or a later one; what was set aside reached none. */
  public int reached(State state) {
    return counts.entrySet().stream()
        .filter(entry -> entry.getKey() != State.SET_ASIDE)
        .filter(entry -> entry.getKey().compareTo(state) >= 0)
        .mapToInt(Map.Entry::getValue)
        .sum();
  }

  /** Whether nothing is left but what was set aside. */
  public boolean isFinished() {
    return in(State.INSPECTED) + in(State.SET_ASIDE) == total();
  }
}
