package lowfirst.intake;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Settings;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.quantity.Sourced;

/** Reads {@code kit.properties}. */
final class SettingsReader {
  private static final List<String> NAMES =
      List.of("title", "ambient", "meter", "meter capacitance", "signer");

  private SettingsReader() {}

  /** What the kit says of itself; its title is {@code name} when it states none. */
  static Settings settings(String name, Entries entries, List<Problem> problems) {
    Map<String, String> texts = entries.texts();
    texts.keySet().stream()
        .filter(known -> !NAMES.contains(known))
        .sorted(Comparator.comparing(entries.lines()::get))
        .map(unknown -> notUsed(entries, unknown))
        .forEach(problems::add);
    String title = texts.getOrDefault("title", "");
    return new Settings(
        title.isBlank() ? name : title,
        ambient(entries, problems),
        texts.getOrDefault("meter", ""),
        texts.getOrDefault("meter capacitance", ""),
        texts.getOrDefault("signer", ""));
  }

  private static Problem notUsed(Entries entries, String unknown) {
    return new Problem(
        Kind.COLUMN_NOT_USED,
        entries.place(unknown),
        "the name \"" + unknown + "\" is none that is known here: not used",
        "name it " + String.join(", ", NAMES) + "; leave it if it is a note of your own");
  }

  private static Optional<Sourced> ambient(Entries entries, List<Problem> problems) {
    String text = entries.texts().getOrDefault("ambient", "");
    if (text.isBlank()) {
      return Optional.empty();
    }
    Reading<Quantity> reading = Quantity.parse(text, Dimension.TEMPERATURE);
    Place place = entries.place("ambient");
    if (!reading.isRead()) {
      problems.add(new Problem(Kind.CELL_UNREADABLE, place, reading.fault(), reading.remedy()));
    }
    return reading.value().map(q -> Sourced.of(q, Source.kit(place.toString())));
  }
}
