package lowfirst.progress;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lowfirst.board.Designator;
import lowfirst.board.Unit;

/**
 * Something that happened at the bench and was acknowledged. Closed; whoever handles every kind
 * does so by {@link #fold}.
 */
public sealed interface Event {

  /** Given by whoever records it; the same id recorded twice counts once. */
  String id();

  /** Who did it; may be empty. */
  String who();

  /** When it was done. */
  Instant when();

  /** Calls the one method of {@code reader} that fits this event. */
  <R> R fold(Reader<R> reader);

  /** What a reader of events must understand. */
  interface Reader<R> {
    R tick(Tick tick);

    R undo(Undo undo);

    R note(Note note);

    R substitution(Substitution substitution);

    R powerReading(PowerReading reading);
  }

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

    @Override
    public <R> R fold(Reader<R> reader) {
      return reader.tick(this);
    }
  }

  /**
   * An earlier event no longer counts. Undoing an undo makes it count again.
   *
   * @param undone the id of the event that no longer counts
   */
  record Undo(String id, String undone, String who, Instant when) implements Event {
    @Override
    public <R> R fold(Reader<R> reader) {
      return reader.undo(this);
    }
  }

  /**
   * Something worth remembering of placements; the state stays.
   *
   * @param designators what it is about; empty when it is about the unit
   */
  record Note(
      String id, Unit unit, List<Designator> designators, String who, Instant when, String text)
      implements Event {
    public Note {
      designators = List.copyOf(designators);
    }

    @Override
    public <R> R fold(Reader<R> reader) {
      return reader.note(this);
    }
  }

  /**
   * Another part type was fitted in place of the one that the BOM asks for.
   *
   * @param fitted the part type fitted, as written
   */
  record Substitution(
      String id,
      Unit unit,
      List<Designator> designators,
      String fitted,
      String reason,
      String who,
      Instant when)
      implements Event {
    public Substitution {
      designators = List.copyOf(designators);
    }

    @Override
    public <R> R fold(Reader<R> reader) {
      return reader.substitution(this);
    }
  }

  /**
   * A check at first power was made.
   *
   * @param check the name of the check, the same on screen and on the sign-off sheet
   * @param measured the value as written; empty when the check measures nothing
   */
  record PowerReading(
      String id,
      Unit unit,
      String check,
      Outcome outcome,
      Optional<String> measured,
      String who,
      Instant when)
      implements Event {

    /** What a check at first power came to. */
    public enum Outcome {
      PASSED("passed"),
      FAILED("failed");

      private final String words;

      Outcome(String words) {
        this.words = words;
      }

      /** The word that people read. */
      public String words() {
        return words;
      }
    }

    @Override
    public <R> R fold(Reader<R> reader) {
      return reader.powerReading(this);
    }
  }
}
