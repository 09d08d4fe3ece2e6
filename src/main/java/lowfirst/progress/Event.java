package lowfirst.progress;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lowfirst.board.Designator;
import lowfirst.board.Unit;

/** Something that was done at the bench and acknowledged. Closed: a tick, or the undoing of one. */
public sealed interface Event {

  /** Given by whoever records it; the same id recorded twice counts once. */
  String id();

  /** Who did it; may be empty. */
  String who();

  /** When it was done. */
  Instant when();

  /**
   * Placements of one unit moved to a state.
   *
   * @param measured a meter reading as written
   * @param reason why it was set aside, or a note
   */
  record Tick(
      String id,
      Unit unit,
      List<Designator> designators,
      State state,
      String who,
      Instant when,
      Optional<String> measured,
      Optional<String> reason)
      implements Event {
    public Tick {
      designators = List.copyOf(designators);
    }
  }

  /**
   * An earlier event no longer counts. Undoing an undo makes it count again.
   *
   * @param undone the id of the event that no longer counts
   */
  record Undo(String id, String undone, String who, Instant when) implements Event {}
}
