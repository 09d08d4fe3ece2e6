package lowfirst.store;

import java.io.IOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lowfirst.board.Designator;
import lowfirst.progress.Event;

/**
 * The events of one kit in a database. When {@link #append} returns, the event is on the disk and
 * survives a kill or a power cut. Safe for many threads, and for many processes on one store.
 *
 * <p>Every failure is a {@link StoreFailure} worded for people.
 */
public final class EventStore implements AutoCloseable {
  private final StoreLocation location;
  private final String kit;
  private final StoreFile file;
  private Connection connection;

  private EventStore(StoreLocation location, String kit, Connection connection) {
    this.location = location;
    this.kit = kit;
    this.connection = connection;
    this.file = StoreFile.of(location);
  }

  /**
   * What was stored, with its place among all events of the store.
   *
   * @param sequence from 1, without gaps over the whole store
   */
  public record Stored(long sequence, Event event) {}

  /** What a store says to an event. */
  public enum Acknowledgement {
    /** It is on the disk. */
    RECORDED,
    /** An event of this id was on the disk already; it counts once. */
    ALREADY_THERE
  }

  /**
   * Opens a store, and makes it if it isn't there.
   *
   * @param kit which kit's events to read and write; many kits may share a store
   */
  public static EventStore open(StoreLocation location, String kit) {
    return new EventStore(location, kit, connected(location));
  }

  /**
   * Everything recorded of a kit, without making a store where there is none.
   *
   * @return empty when there is no store yet
   */
  public static List<Event> peek(StoreLocation location, String kit) {
    if (location.file().isPresent() && !java.nio.file.Files.exists(location.file().get())) {
      return List.of();
    }
    try (EventStore store = open(location, kit)) {
      return store.events().stream().map(Stored::event).toList();
    }
  }

  private static Connection connected(StoreLocation location) {
    try {
      Connection connection = Connections.open(location);
      try {
        Schema.prepare(location, connection);
        return connection;
      } catch (SQLException | RuntimeException failure) {
        connection.close();
        throw failure;
      }
    } catch (SQLException | IOException failure) {
      throw StoreFailure.of(location, failure);
    }
  }

  /** Records an event durably. Recording the same id again changes nothing. */
  public synchronized Acknowledgement append(Event event) {
    EventRow row = EventRow.of(event);
    Acknowledgement answer = withConnection(() -> appended(row));
    if (!file.isStillThere()) {
      throw StoreFailure.gone(location);
    }
    return answer;
  }

  /** Every event of the kit in the order acknowledged. */
  public List<Stored> events() {
    return after(0);
  }

  /** The events of the kit above a sequence, in the order acknowledged. */
  public synchronized List<Stored> after(long sequence) {
    return withConnection(() -> read(sequence));
  }

  @Override
  public synchronized void close() {
    try {
      connection.close();
    } catch (SQLException failure) {
      throw StoreFailure.of(location, failure);
    }
  }

  /** Work with the database that may fail. */
  private interface Work<R> {
    R done() throws SQLException;
  }

  /**
   * Does the work; once more on a new connection when the old one was lost. Safe, because an event
   * that went through before the loss is found by its id.
   */
  private <R> R withConnection(Work<R> work) {
    try {
      return attempt(work);
    } catch (SQLException failure) {
      if (!StoreFailure.isConnection(failure)) {
        throw StoreFailure.of(location, failure);
      }
    }
    connection = connected(location);
    try {
      return attempt(work);
    } catch (SQLException failure) {
      throw StoreFailure.of(location, failure);
    }
  }

  private <R> R attempt(Work<R> work) throws SQLException {
    try {
      R result = work.done();
      connection.commit();
      return result;
    } catch (SQLException | RuntimeException failure) {
      try {
        connection.rollback();
      } catch (SQLException alsoFailed) {
        failure.addSuppressed(alsoFailed);
      }
      throw failure;
    }
  }

  private Acknowledgement appended(EventRow row) throws SQLException {
    long sequence = nextSequence();
    try (PreparedStatement insert =
        connection.prepareStatement(
            "INSERT INTO lowfirst_event (sequence, "
                + EventRow.COLUMNS
                + ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (kit, id) DO NOTHING")) {
      insert.setLong(1, sequence);
      row.fill(insert, kit, 2);
      if (insert.executeUpdate() == 0) {
        connection.rollback();
        return Acknowledgement.ALREADY_THERE;
      }
    }
    appendDesignators(sequence, row.designators());
    return Acknowledgement.RECORDED;
  }

  private void appendDesignators(long sequence, List<Designator> designators) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "INSERT INTO lowfirst_event_designator (sequence, position, designator)"
                + " VALUES (?, ?, ?)")) {
      for (int position = 0; position < designators.size(); position++) {
        insert.setLong(1, sequence);
        insert.setInt(2, position);
        insert.setString(3, designators.get(position).text());
        insert.addBatch();
      }
      insert.executeBatch();
    }
  }

  /**
   * Takes the next sequence, and with it the row lock: writers stand in line from here to the
   * commit. A transaction that begins by writing never has to give way to one that wrote before it.
   */
  private long nextSequence() throws SQLException {
    try (Statement update = connection.createStatement();
        var row =
            update.executeQuery(
                "UPDATE lowfirst_store SET last_sequence = last_sequence + 1"
                    + " RETURNING last_sequence")) {
      row.next();
      return row.getLong(1);
    }
  }

  private List<Stored> read(long above) throws SQLException {
    var rows = new LinkedHashMap<Long, EventRow>();
    try (PreparedStatement select =
        connection.prepareStatement(
            "SELECT * FROM lowfirst_event WHERE kit = ? AND sequence > ? ORDER BY sequence")) {
      select.setString(1, kit);
      select.setLong(2, above);
      try (var row = select.executeQuery()) {
        while (row.next()) {
          rows.put(row.getLong("sequence"), EventRow.read(row));
        }
      }
      // The designators come second: an event that was seen has all of them by then.
      Map<Long, List<Designator>> designators = designators(above);
      var stored = new ArrayList<Stored>();
      rows.forEach(
          (sequence, row) ->
              stored.add(
                  new Stored(sequence, row.event(designators.getOrDefault(sequence, List.of())))));
      return List.copyOf(stored);
    } catch (IllegalArgumentException | DateTimeException notOurs) {
      throw StoreFailure.damaged(location, String.valueOf(notOurs.getMessage()));
    }
  }

  private Map<Long, List<Designator>> designators(long above) throws SQLException {
    var bySequence = new HashMap<Long, List<Designator>>();
    try (PreparedStatement select =
        connection.prepareStatement(
            "SELECT d.sequence, d.designator FROM lowfirst_event_designator d"
                + " JOIN lowfirst_event e ON e.sequence = d.sequence"
                + " WHERE e.kit = ? AND d.sequence > ? ORDER BY d.sequence, d.position")) {
      select.setString(1, kit);
      select.setLong(2, above);
      try (var row = select.executeQuery()) {
        while (row.next()) {
          bySequence
              .computeIfAbsent(row.getLong(1), any -> new ArrayList<>())
              .add(Designator.of(row.getString(2)));
        }
      }
    }
    return bySequence;
  }
}
