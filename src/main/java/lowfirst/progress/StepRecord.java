package lowfirst.progress;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import lowfirst.assembly.Step;

/**
 * What is recorded of one step on one unit: a row of the sign-off sheet.
 *
 * @param spots one for each designator, in the order to fill
 */
public record StepRecord(Step step, List<SpotRecord> spots) {

  public StepRecord {
    spots = List.copyOf(spots);
  }

  /** How many of its parts are in which state. */
  public Tally tally() {
    return Tally.of(spots);
  }

  /** What was set aside. */
  public List<SpotRecord> setAside() {
    return spots.stream().filter(spot -> spot.state() == State.SET_ASIDE).toList();
  }

  /**
   * The last mark of a state that every part of the step has reached, leaving out what was set
   * aside; empty while one is missing. A row of the sign-off sheet comes out filled in with it.
   */
  public Optional<Mark> completed(State state) {
    List<SpotRecord> counted =
        spots.stream().filter(spot -> spot.state() != State.SET_ASIDE).toList();
    return counted.stream().allMatch(spot -> spot.mark(state).isPresent())
        ? counted.stream()
            .flatMap(spot -> spot.mark(state).stream())
            .max(Comparator.comparing(Mark::when))
        : Optional.empty();
  }

  /** Everybody who brought a part to this state, each named once; nameless marks left out. */
  public List<String> people(State state) {
    return spots.stream()
        .flatMap(spot -> spot.mark(state).stream())
        .map(Mark::who)
        .filter(Predicate.not(String::isBlank))
        .distinct()
        .toList();
  }

  /** Every meter reading that counts, in the order of the designators, equal ones once. */
  public List<String> measured() {
    return spots.stream().flatMap(spot -> spot.measured().stream()).distinct().toList();
  }
}
