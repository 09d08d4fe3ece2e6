package lowfirst.store;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * Where a store is: an SQLite file, or a database that a JDBC URL names.
 *
 * @param url the JDBC URL
 * @param file the SQLite file, when it is one given as a path
 * @param words how messages name it; holds no password
 */
public record StoreLocation(String url, Optional<Path> file, String words) {

  /** An SQLite file. */
  public static StoreLocation of(Path file) {
    return new StoreLocation("jdbc:sqlite:" + file, Optional.of(file), file.toString());
  }

  /** A path, relative to {@code directory}, or a JDBC URL. */
  public static StoreLocation parse(String text, Path directory) {
    if (!text.toLowerCase(Locale.ROOT).startsWith("jdbc:")) {
      return of(directory.resolve(text).normalize());
    }
    String withoutQuery = text.replaceFirst("[?;].*", "");
    return new StoreLocation(text, Optional.empty(), withoutQuery.replaceFirst("//[^/@]*@", "//"));
  }

  /** Whether SQLite keeps it. */
  boolean isSqlite() {
    return url.startsWith("jdbc:sqlite:");
  }
}
