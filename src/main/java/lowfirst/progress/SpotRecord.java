package lowfirst.progress;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is recorded of one part on one unit.
 *
 * @param spot which part on which unit
 * @param state where it stands now
 * @param marks the states reached, by state; going back to an earlier state takes the later marks
 *     away, so that a part re-seated after inspection asks for a new inspection
 * @param notes notes about it, oldest first
 * @param substitution the part type fitted in place of the BOM's, if any
 * @param spoiled how many parts from the BOM's bag were set aside here as unfit for use
 */
public record SpotRecord(
    Spot spot,
    State state,
    Map<State, Mark> marks,
    List<Event.Note> notes,
    Optional<Event.Substitution> substitution,
    int spoiled) {

  public SpotRecord {
    marks = Map.copyOf(marks);
    notes = List.copyOf(notes);
  }

  static SpotRecord untouched(Spot spot) {
    return new SpotRecord(spot, State.TO_DO, Map.of(), List.of(), Optional.empty(), 0);
  }

  /** Who reached a state and when, unless later work took it back. */
  public Optional<Mark> mark(State reached) {
    return Optional.ofNullable(marks.get(reached));
  }

  /** The latest meter reading that still counts. */
  public Optional<String> measured() {
    return marks.values().stream()
        .filter(mark -> mark.measured().isPresent())
        .max(Comparator.comparing(Mark::when).thenComparing(Mark::state))
        .flatMap(Mark::measured);
  }

  /** Why it was set aside; empty when it isn't, or when no reason was given. */
  public Optional<String> reasonSetAside() {
    return state == State.SET_ASIDE
        ? mark(State.SET_ASIDE).flatMap(Mark::reason)
        : Optional.empty();
  }

  /**
   * How many parts of the BOM's bag are gone for this spot: those spoiled, and the one on the board
   * unless another part type is fitted there.
   */
  public int takenFromBag() {
    return spoiled + (wantsPart() || substitution.isPresent() ? 0 : 1);
  }

  /** Whether no part is on the board yet: to do, or set aside for later. */
  public boolean wantsPart() {
    return state == State.TO_DO || state == State.SET_ASIDE;
  }

  SpotRecord with(Event.Tick tick) {
    var kept = new EnumMap<State, Mark>(State.class);
    kept.putAll(marks);
    kept.keySet().removeIf(reached -> reached.compareTo(tick.state()) >= 0);
    if (tick.state() != State.TO_DO) {
      kept.put(tick.state(), Mark.of(tick));
    }
    return new SpotRecord(
        spot, tick.state(), kept, notes, substitution, spoiled + (spoils(tick) ? 1 : 0));
  }

  private boolean spoils(Event.Tick tick) {
    return tick.state() == State.SET_ASIDE
        && substitution.isEmpty()
        && tick.reason().flatMap(AsideReason::of).filter(AsideReason::spoilsPart).isPresent();
  }

  SpotRecord with(Event.Note note) {
    var longer = new ArrayList<>(notes);
    longer.add(note);
    return new SpotRecord(spot, state, marks, longer, substitution, spoiled);
  }

  SpotRecord with(Event.Substitution fitted) {
    return new SpotRecord(spot, state, marks, notes, Optional.of(fitted), spoiled);
  }
}
