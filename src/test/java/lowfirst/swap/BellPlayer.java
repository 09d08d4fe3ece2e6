package lowfirst.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import lowfirst.board.Kit;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;

/** The sample kit, read from its folder, with single tables replaced where a test wants that. */
final class BellPlayer {
  private static final Path FOLDER = Path.of("sample-boms", "bell-player");

  /** Kits read before, by what was changed: reading takes far longer than a swap. */
  private static final Map<Map<String, String>, Kit> READ = new ConcurrentHashMap<>();

  private BellPlayer() {}

  static Kit asWritten() {
    return with(Map.of());
  }

  /** The kit with these files in place of its own; an empty text leaves a file out. */
  static Kit with(Map<String, String> changed) {
    return READ.computeIfAbsent(Map.copyOf(changed), BellPlayer::read);
  }

  private static Kit read(Map<String, String> changed) {
    var contents = new HashMap<String, byte[]>();
    try (Stream<Path> files = Files.walk(FOLDER)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = FOLDER.relativize(file).toString().replace('\\', '/');
        contents.put(name, Files.readAllBytes(file));
      }
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
    changed.forEach(
        (name, text) -> contents.put(name, text.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
    return KitReader.read(new KitFiles("bell-player", contents, List.of())).kit();
  }

  /** One of its tables as it stands. */
  static String text(String name) {
    try {
      return Files.readString(FOLDER.resolve(name));
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }
}
