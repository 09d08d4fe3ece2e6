package lowfirst.intake;

import java.io.IOException;
import java.io.StringReader;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import lowfirst.board.Settings;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.quantity.Sourced;

/** Reads {@code kit.properties}, and any other file of names and texts. */
final class SettingsReader {
  private SettingsReader() {}

  /** What the kit says of itself; its title is {@code name} when it states none. */
  static Settings settings(String name, Map<String, String> entries, List<Problem> problems) {
    var others = new HashMap<>(entries);
    String title = others.getOrDefault("title", "").isBlank() ? name : others.get("title");
    var settings =
        new Settings(
            title,
            ambient(others.getOrDefault("ambient", ""), problems),
            others.getOrDefault("meter", ""),
            others.getOrDefault("signer", ""),
            others);
    List.of("title", "ambient", "meter", "signer").forEach(others::remove);
    return new Settings(
        settings.title(), settings.ambient(), settings.meter(), settings.signer(), others);
  }

  private static Optional<Sourced> ambient(String text, List<Problem> problems) {
    if (text.isBlank()) {
      return Optional.empty();
    }
    Reading<Quantity> reading = Quantity.parse(text, Dimension.TEMPERATURE);
    Place place = Place.ofCell("kit.properties", 0, 0, "ambient", text);
    if (!reading.isRead()) {
      problems.add(new Problem(Kind.CELL_UNREADABLE, place, reading.fault(), reading.remedy()));
    }
    return reading.value().map(q -> Sourced.of(q, Source.kit(place.toString())));
  }

  /** The entries of a file of names and texts; empty when there is no such file. */
  static Map<String, String> entries(KitFiles files, String path, List<Problem> problems) {
    Optional<byte[]> bytes = files.file(path);
    if (bytes.isEmpty() || bytes.get().length == 0) {
      return Map.of();
    }
    TextOfFile text = TextOfFile.of(path, bytes.get());
    problems.addAll(text.problems());
    var entries = new HashMap<String, String>();
    var properties = new Properties();
    try {
      properties.load(new StringReader(text.text()));
      properties.forEach((key, value) -> entries.put(key + "", value + ""));
    } catch (IOException | IllegalArgumentException malformed) {
      problems.add(
          new Problem(
              Kind.CELL_UNREADABLE,
              Place.ofFile(path),
              "a \\u in this file is not followed by four hexadecimal digits",
              "write the character itself, or double the backslash"));
    }
    return entries;
  }
}
