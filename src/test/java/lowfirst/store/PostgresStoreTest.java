package lowfirst.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;

/**
 * The same promises on PostgreSQL. Needs a database of its own, named by a JDBC URL: {@code
 * LOWFIRST_POSTGRES=jdbc:postgresql://localhost:5432/lowfirst?user=...}.
 */
@EnabledIfEnvironmentVariable(
    named = "LOWFIRST_POSTGRES",
    matches = "jdbc:postgresql:.+",
    disabledReason = "LOWFIRST_POSTGRES names no database: PostgreSQL is NOT tested in this run")
class PostgresStoreTest extends EventStoreContract {
  private static int schemas;

  private static String url() {
    return Optional.ofNullable(System.getenv("LOWFIRST_POSTGRES")).orElseThrow();
  }

  /** Each store gets a schema of its own, removed from an earlier run first. */
  @Override
  StoreLocation fresh() {
    String schema = "lowfirst_test_" + ++schemas;
    try (var connection = DriverManager.getConnection(url());
        var statement = connection.createStatement()) {
      statement.executeUpdate("DROP SCHEMA IF EXISTS " + schema + " CASCADE");
      statement.executeUpdate("CREATE SCHEMA " + schema);
    } catch (SQLException failure) {
      throw new IllegalStateException(failure);
    }
    String separator = url().contains("?") ? "&" : "?";
    return StoreLocation.parse(url() + separator + "currentSchema=" + schema, Path.of(""));
  }

  @Override
  int connectionsOfACrowd() {
    return 20;
  }

  @Test
  void a_lost_connection_is_made_again_and_the_tick_is_recorded_once() throws Exception {
    StoreLocation location = fresh();
    try (EventStore store = EventStore.open(location, "kit")) {
      store.append(tick("1"));
      try (var other = DriverManager.getConnection(url());
          var statement = other.createStatement()) {
        statement.execute(
            "SELECT pg_terminate_backend(pid) FROM pg_stat_activity"
                + " WHERE pid <> pg_backend_pid() AND datname = current_database()");
      }
      assertEquals(EventStore.Acknowledgement.RECORDED, store.append(tick("2")));
      assertEquals(2, store.events().size());
    }
  }

  @Test
  void a_database_that_does_not_answer_is_said_not_to() {
    StoreLocation nowhere =
        StoreLocation.parse("jdbc:postgresql://127.0.0.1:1/none?user=nobody", Path.of(""));
    var failure = assertThrows(StoreFailure.class, () -> EventStore.open(nowhere, "kit").close());
    assertTrue(failure.getMessage().contains("can't be reached"), failure.getMessage());
  }
}
