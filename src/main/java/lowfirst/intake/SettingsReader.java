package lowfirst.intake;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Bounds;
import lowfirst.board.Settings;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;
import lowfirst.problem.Reading;
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
    Place place = entries.place("ambient");
    Reading<Quantity> reading = Quantity.parse(text, Bounds.AMBIENT.dimension());
    Reading<Quantity> within =
        reading.value().map(q -> Bounds.AMBIENT.within("ambient", q)).orElse(reading);
    if (!within.isRead()) {
      Kind kind = reading.isRead() ? Kind.OUT_OF_RANGE : Kind.CELL_UNREADABLE;
      problems.add(new Problem(kind, place, within.fault(), within.remedy()));
    }
    return within.value().map(q -> Sourced.of(q, Source.kit(place.toString())));
  }
}
