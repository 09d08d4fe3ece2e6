package lowfirst.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Copies of kits that a test may change. */
final class KitCopy {
  private KitCopy() {}

  /** Copies a folder, each file written as {@code writing} says. */
  static void of(Path from, Path to, UnaryOperator<String> writing) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copied = to.resolve(from.relativize(file).toString());
        Files.createDirectories(copied.getParent());
        Files.writeString(copied, writing.apply(Files.readString(file)));
      }
    }
  }
}
