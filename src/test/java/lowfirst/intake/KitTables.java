package lowfirst.intake;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Kits for tests, written as file names and texts. */
public final class KitTables {
  private KitTables() {}

  /** Reads a kit of these files: name, text, name, text ... */
  public static KitReading read(String... namesAndTexts) {
    return KitReader.read(files(namesAndTexts));
  }

  public static KitFiles files(String... namesAndTexts) {
    Map<String, byte[]> files = new TreeMap<>();
    for (int i = 0; i < namesAndTexts.length; i += 2) {
      files.put(namesAndTexts[i], namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
    }
    return new KitFiles("kit", files, List.of());
  }

  /** The messages of all problems, as {@code place: message; remedy}. */
  public static List<String> problems(KitReading reading) {
    return reading.problems().stream().map(Object::toString).toList();
  }
}
