package lowfirst.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;

/**
 * The file that an open SQLite store writes to. A file that is deleted stays writable for whoever
 * has it open, and everything written to it is lost: so its name is checked before a tick is
 * acknowledged.
 *
 * @param path the file; empty when the store is no file
 * @param identity what the file system calls it; empty where it has no such thing
 */
record StoreFile(Optional<Path> path, Optional<Object> identity) {

  static StoreFile of(StoreLocation location) {
    return new StoreFile(location.file(), location.file().flatMap(StoreFile::identity));
  }

  /** Whether the name still stands for the same file. */
  boolean isStillThere() {
    return path.isEmpty() || (Files.exists(path.get()) && identity.equals(identity(path.get())));
  }

  private static Optional<Object> identity(Path file) {
    try {
      return Optional.ofNullable(Files.readAttributes(file, BasicFileAttributes.class).fileKey());
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }
}
