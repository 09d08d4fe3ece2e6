package lowfirst.intake;

import java.util.HashMap;
import java.util.List;
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
  private SettingsReader() {}

  /** What the kit says of itself; its title is {@code name} when it states none. */
  static Settings settings(String name, Entries entries, List<Problem> problems) {
    var others = new HashMap<>(entries.texts());
    String title = others.getOrDefault("title", "").isBlank() ? name : others.get("title");
    var settings =
        new Settings(
            title,
            ambient(entries, problems),
            others.getOrDefault("meter", ""),
            others.getOrDefault("signer", ""),
            others);
    List.of("title", "ambient", "meter", "signer").forEach(others::remove);
    return new Settings(
        settings.title(), settings.ambient(), settings.meter(), settings.signer(), others);
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
