package lowfirst.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.OptionalInt;

/**
 * The tables of a store and their version. The same statements for every database.
 *
 * <p>{@code lowfirst_store} has one row: the version and the sequence of the newest event. Its row
 * lock makes writers stand in line, so that sequences have no gaps and become visible in order: who
 * has read up to n misses nothing by asking for what is above n.
 */
final class Schema {
  /** The version that this program reads and writes. */
  static final int VERSION = 1;

  private static final List<String> TABLES =
      List.of(
          """
          CREATE TABLE lowfirst_event (
            sequence BIGINT PRIMARY KEY,
            kit TEXT NOT NULL,
            id TEXT NOT NULL,
            kind TEXT NOT NULL,
            board TEXT NOT NULL,
            unit_number INTEGER NOT NULL,
            state TEXT NOT NULL,
            who TEXT NOT NULL,
            done_at TEXT NOT NULL,
            measured TEXT,
            words TEXT,
            subject TEXT NOT NULL,
            UNIQUE (kit, id))
          """,
          """
          CREATE TABLE lowfirst_event_designator (
            sequence BIGINT NOT NULL REFERENCES lowfirst_event (sequence),
            position INTEGER NOT NULL,
            designator TEXT NOT NULL,
            PRIMARY KEY (sequence, position))
          """,
          "CREATE TABLE lowfirst_store (version INTEGER NOT NULL, last_sequence BIGINT NOT NULL)",
          "INSERT INTO lowfirst_store (version, last_sequence) VALUES (" + VERSION + ", 0)");

  private Schema() {}

  /** Whether the store has our tables. */
  private static boolean isThere(Connection connection) throws SQLException {
    return version(connection).isPresent();
  }

  /** Makes the tables if they are missing; refuses a store of another version. */
  static void prepare(StoreLocation location, Connection connection) throws SQLException {
    OptionalInt found = version(connection);
    if (found.isEmpty()) {
      try {
        create(connection);
      } catch (SQLException failure) {
        // Another bench may have made them in the same moment.
        connection.rollback();
        if (!isThere(connection)) {
          throw failure;
        }
      }
      found = version(connection);
    }
    checkVersion(location, found);
  }

  static void checkVersion(StoreLocation location, OptionalInt found) {
    if (found.isPresent() && found.getAsInt() != VERSION) {
      throw new StoreFailure(
          "the progress store "
              + location.words()
              + " has version "
              + found.getAsInt()
              + " and this program knows version "
              + VERSION
              + "; it was left as it is; use the newer program");
    }
  }

  private static void create(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      for (String table : TABLES) {
        statement.executeUpdate(table);
      }
      connection.commit();
    }
  }

  static OptionalInt version(Connection connection) throws SQLException {
    try (var tables =
        connection.getMetaData().getTables(null, connection.getSchema(), "lowfirst_store", null)) {
      if (!tables.next()) {
        return OptionalInt.empty();
      }
    }
    try (Statement statement = connection.createStatement();
        var row = statement.executeQuery("SELECT version FROM lowfirst_store")) {
      return row.next() ? OptionalInt.of(row.getInt(1)) : OptionalInt.empty();
    } finally {
      connection.rollback();
    }
  }
}
