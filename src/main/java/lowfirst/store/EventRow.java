package lowfirst.store;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lowfirst.board.Designator;
import lowfirst.board.Unit;
import lowfirst.progress.Event;
import lowfirst.progress.Event.PowerReading.Outcome;
import lowfirst.progress.State;

/**
 * An event as a row of the table.
 *
 * @param kind which kind of event
 * @param board the unit's board; empty for an undo
 * @param unitNumber the unit's number; 0 for an undo
 * @param state the state, or the outcome of a check; empty when the kind has none
 * @param words reason or note
 * @param subject what is undone, fitted or checked; empty when the kind has none
 */
record EventRow(
    String id,
    String kind,
    String board,
    int unitNumber,
    String state,
    String who,
    Instant when,
    Optional<String> measured,
    Optional<String> words,
    String subject,
    List<Designator> designators) {

  private static final String TICK = "tick";
  private static final String UNDO = "undo";
  private static final String NOTE = "note";
  private static final String SUBSTITUTION = "substitution";
  private static final String POWER_READING = "power reading";

  /** The columns between the sequence and the end, in the order of {@link #fill}. */
  static final String COLUMNS =
      "kit, id, kind, board, unit_number, state, who, done_at, measured, words, subject";

  static EventRow of(Event event) {
    return event.fold(new Rows());
  }

  void fill(PreparedStatement insert, String kit, int first) throws SQLException {
    int next = first;
    insert.setString(next++, kit);
    insert.setString(next++, id);
    insert.setString(next++, kind);
    insert.setString(next++, board);
    insert.setInt(next++, unitNumber);
    insert.setString(next++, state);
    insert.setString(next++, who);
    insert.setString(next++, when.toString());
    insert.setString(next++, measured.orElse(null));
    insert.setString(next++, words.orElse(null));
    insert.setString(next, subject);
  }

  static EventRow read(ResultSet row) throws SQLException {
    return new EventRow(
        row.getString("id"),
        row.getString("kind"),
        row.getString("board"),
        row.getInt("unit_number"),
        row.getString("state"),
        row.getString("who"),
        Instant.parse(row.getString("done_at")),
        Optional.ofNullable(row.getString("measured")),
        Optional.ofNullable(row.getString("words")),
        row.getString("subject"),
        List.of());
  }

  /** The event that this row holds; throws when the row is none of ours. */
  Event event(List<Designator> designators) {
    return switch (kind) {
      case TICK ->
          new Event.Tick(id, unit(), designators, State.valueOf(state), who, when, measured, words);
      case UNDO -> new Event.Undo(id, subject, who, when);
      case NOTE -> new Event.Note(id, unit(), designators, who, when, words.orElse(""));
      case SUBSTITUTION ->
          new Event.Substitution(id, unit(), designators, subject, words.orElse(""), who, when);
      case POWER_READING ->
          new Event.PowerReading(id, unit(), subject, Outcome.valueOf(state), measured, who, when);
      default -> throw new IllegalArgumentException("unknown kind of event: " + kind);
    };
  }

  private Unit unit() {
    return new Unit(board, unitNumber);
  }

  /** One row for each kind. */
  private static final class Rows implements Event.Reader<EventRow> {
    private static final Optional<String> NONE = Optional.empty();

    @Override
    public EventRow tick(Event.Tick tick) {
      return ofUnit(
          tick,
          TICK,
          tick.unit(),
          tick.state().name(),
          tick.measured(),
          tick.reason(),
          "",
          tick.designators());
    }

    @Override
    public EventRow undo(Event.Undo undo) {
      return new EventRow(
          undo.id(),
          UNDO,
          "",
          0,
          "",
          undo.who(),
          undo.when(),
          NONE,
          NONE,
          undo.undone(),
          List.of());
    }

    @Override
    public EventRow note(Event.Note note) {
      return ofUnit(
          note, NOTE, note.unit(), "", NONE, Optional.of(note.text()), "", note.designators());
    }

    @Override
    public EventRow substitution(Event.Substitution fitted) {
      return ofUnit(
          fitted,
          SUBSTITUTION,
          fitted.unit(),
          "",
          NONE,
          Optional.of(fitted.reason()),
          fitted.fitted(),
          fitted.designators());
    }

    @Override
    public EventRow powerReading(Event.PowerReading reading) {
      return ofUnit(
          reading,
          POWER_READING,
          reading.unit(),
          reading.outcome().name(),
          reading.measured(),
          NONE,
          reading.check(),
          List.of());
    }

    private static EventRow ofUnit(
        Event event,
        String kind,
        Unit unit,
        String state,
        Optional<String> measured,
        Optional<String> words,
        String subject,
        List<Designator> designators) {
      return new EventRow(
          event.id(),
          kind,
          unit.board(),
          unit.number(),
          state,
          event.who(),
          event.when(),
          measured,
          words,
          subject,
          designators);
    }
  }
}
