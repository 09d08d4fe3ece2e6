package lowfirst.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;

/** Opens connections whose commits are on the disk when they return. */
final class Connections {

  /** How long to wait while another program writes. */
  private static final int BUSY_MILLISECONDS = 10_000;

  private Connections() {}

  static Connection open(StoreLocation location) throws SQLException, IOException {
    Connection connection =
        location.isSqlite() ? sqlite(location) : DriverManager.getConnection(location.url());
    try {
      connection.setAutoCommit(false);
      if (location.isSqlite()) {
        checkWhole(location, connection);
      } else {
        connection.setTransactionIsolation(Connection.TRANSACTION_READ_COMMITTED);
      }
      return connection;
    } catch (SQLException | RuntimeException failure) {
      connection.close();
      throw failure;
    }
  }

  /**
   * Write-ahead log with {@code synchronous=FULL}: each commit is flushed to the disk before it
   * returns (SQLite manual, PRAGMA synchronous).
   */
  private static Connection sqlite(StoreLocation location) throws SQLException, IOException {
    if (location.file().isPresent()) {
      prepareFolder(location.file().get().toAbsolutePath().getParent());
    }
    var config = new SQLiteConfig();
    config.setJournalMode(SQLiteConfig.JournalMode.WAL);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    config.setBusyTimeout(BUSY_MILLISECONDS);
    config.enforceForeignKeys(true);
    return patiently(() -> config.createConnection(location.url()));
  }

  /** Opening that may find the file held. */
  private interface Opening {
    Connection done() throws SQLException;
  }

  /**
   * SQLite waits for others in every statement but the one that switches a new file to its
   * write-ahead log; so the waiting there is ours.
   */
  private static Connection patiently(Opening opening) throws SQLException, IOException {
    long end = System.nanoTime() + BUSY_MILLISECONDS * 1_000_000L;
    while (true) {
      try {
        return opening.done();
      } catch (SQLException failure) {
        boolean held = failure.getErrorCode() == SQLiteErrorCode.SQLITE_BUSY.code;
        if (!held || System.nanoTime() > end) {
          throw failure;
        }
      }
      try {
        Thread.sleep(20);
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
        throw new IOException("stopped while waiting for another program", stopped);
      }
    }
  }

  /** Makes the folder, and makes its name last through a power cut. */
  private static void prepareFolder(Path folder) throws IOException {
    if (Files.isDirectory(folder)) {
      return;
    }
    Files.createDirectories(folder);
    for (Path made = folder; made != null && made.getParent() != null; made = made.getParent()) {
      try (FileChannel directory = FileChannel.open(made, StandardOpenOption.READ)) {
        directory.force(true);
      } catch (IOException notOnThisSystem) {
        // Some systems can't flush a folder; they keep its entries safe by themselves or not at
        // all.
        return;
      }
    }
  }

  private static void checkWhole(StoreLocation location, Connection connection)
      throws SQLException {
    try (Statement statement = connection.createStatement();
        var answer = statement.executeQuery("PRAGMA quick_check(1)")) {
      if (answer.next() && !answer.getString(1).equals("ok")) {
        throw StoreFailure.damaged(location, answer.getString(1).lines().findFirst().orElse(""));
      }
    } finally {
      connection.rollback();
    }
  }
}
