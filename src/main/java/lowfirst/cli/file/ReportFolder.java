package lowfirst.cli.file;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import lowfirst.cli.process.CannotReadOrWrite;

/**
 * A folder of reports. Files are written beside their place and moved there once all are whole, so
 * that a failure leaves the old ones as they were and nothing half-written looks whole.
 */
public final class ReportFolder implements AutoCloseable {
  private record Written(Path part, Path file) {}

  private final Path folder;
  private final List<Written> written = new ArrayList<>();

  private ReportFolder(Path folder) {
    this.folder = folder;
  }

  /** The folder, made where there is none. */
  public static ReportFolder at(Path folder) {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw failure(folder, e);
    }
    return new ReportFolder(folder);
  }

  /** Puts one file in its place, in one move; its folder is made where there is none. */
  public static Path put(Path file, byte[] content) {
    Path name = file.getFileName();
    if (name == null || Files.isDirectory(file)) {
      throw new CannotReadOrWrite("can't write " + file + ": it is a folder; name a file in it");
    }
    try (var folder = at(file.toAbsolutePath().getParent())) {
      folder.write(name.toString(), content);
      return folder.publish().get(0);
    }
  }

  /** Writes a file beside its place. */
  public void write(String name, byte[] content) {
    Path file = folder.resolve(name);
    Path part = folder.resolve("." + name + ".part");
    written.add(new Written(part, file));
    try {
      Files.write(part, content);
    } catch (IOException e) {
      throw failure(file, e);
    }
  }

  /** Moves everything written to its place; returns the files. */
  public List<Path> publish() {
    var files = new ArrayList<Path>();
    for (Written one : written) {
      try {
        move(one);
      } catch (IOException e) {
        throw failure(one.file(), e);
      }
      files.add(one.file());
    }
    written.clear();
    return files;
  }

  private static void move(Written one) throws IOException {
    try {
      Files.move(
          one.part(),
          one.file(),
          StandardCopyOption.ATOMIC_MOVE,
          StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(one.part(), one.file(), StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static CannotReadOrWrite failure(Path path, IOException cause) {
    String why;
    if (cause instanceof AccessDeniedException) {
      why = "no permission; is it open in another program, or the folder read-only?";
    } else if (cause instanceof FileAlreadyExistsException) {
      why = "a file stands where the folder should be; move it away";
    } else if (cause instanceof NoSuchFileException) {
      why = "the folder is gone";
    } else if (cause instanceof FileSystemException system && system.getReason() != null) {
      why = system.getReason();
    } else {
      why = String.valueOf(cause.getMessage());
    }
    return new CannotReadOrWrite("can't write " + path + ": " + why, cause);
  }

  /** Takes away what was written but not published. */
  @Override
  public void close() {
    for (Written one : written) {
      try {
        Files.deleteIfExists(one.part());
      } catch (IOException e) {
        // It bears the name of a part, so nobody takes it for a report.
      }
    }
  }
}
