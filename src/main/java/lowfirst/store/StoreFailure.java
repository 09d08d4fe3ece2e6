package lowfirst.store;

import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * The store can't be used: a message for people, with what to do. Nothing in the store was deleted
 * or changed by it.
 */
public final class StoreFailure extends RuntimeException {
  private static final long serialVersionUID = 1L;

  StoreFailure(String message) {
    super(message);
  }

  private StoreFailure(String message, Throwable cause) {
    super(message, cause);
  }

  /** What an exception of the database means to the person at the bench. */
  static StoreFailure of(StoreLocation location, Exception cause) {
    return new StoreFailure("the progress store " + location.words() + " " + meaning(cause), cause);
  }

  /** A file that is not what it should be. */
  static StoreFailure damaged(StoreLocation location, String how) {
    return new StoreFailure("the progress store " + location.words() + " " + damaged(how));
  }

  /** A file that was taken away. */
  static StoreFailure gone(StoreLocation location) {
    return new StoreFailure(
        "the progress store "
            + location.words()
            + " was moved or deleted while it was in use; what was just done is not recorded; put it"
            + " back, then start again");
  }

  private static String meaning(Exception cause) {
    if (cause instanceof SQLiteException sqlite) {
      return meaning(sqlite.getResultCode(), sqlite);
    }
    if (cause instanceof SQLException sql && isConnection(sql)) {
      return "can't be reached ("
          + firstLine(sql)
          + "); nothing was recorded; start the database or check the URL, then do it again";
    }
    return "can't be used (" + firstLine(cause) + "); nothing was recorded";
  }

  private static String meaning(SQLiteErrorCode code, SQLiteException cause) {
    return switch (SQLiteErrorCode.getErrorCode(code.code & 0xff)) {
      case SQLITE_BUSY, SQLITE_LOCKED ->
          "is held by another program; nothing was recorded; close that program, then do it again";
      case SQLITE_READONLY, SQLITE_PERM, SQLITE_AUTH ->
          "can only be read; nothing was recorded; allow writing to the file and its folder, or name"
              + " another store with --store";
      case SQLITE_CANTOPEN ->
          "can't be opened; nothing was recorded; check that its folder exists and may be written"
              + " to, or name another store with --store";
      case SQLITE_FULL ->
          "can't grow: the disk is full; nothing was recorded; make room, then do it again";
      case SQLITE_IOERR ->
          "can't be read or written ("
              + firstLine(cause)
              + "); nothing was recorded; the disk may be full or failing: make room, then do it"
              + " again, or name another store with --store";
      case SQLITE_CORRUPT, SQLITE_NOTADB -> damaged(firstLine(cause));
      default -> "can't be used (" + firstLine(cause) + "); nothing was recorded";
    };
  }

  private static String damaged(String how) {
    return "is damaged or no store of ours ("
        + how
        + "); it was left as it is; keep a copy of it, then put back a good copy or name another"
        + " store with --store";
  }

  /** SQLSTATE class 08 is a connection exception (ISO/IEC 9075-2), 57P a shutdown of PostgreSQL. */
  static boolean isConnection(SQLException cause) {
    String state = cause.getSQLState() == null ? "" : cause.getSQLState();
    return state.startsWith("08") || state.startsWith("57P");
  }

  private static String firstLine(Exception cause) {
    String message = cause.getMessage() == null ? cause.toString() : cause.getMessage();
    return message.lines().findFirst().orElse("").strip();
  }
}
