package lowfirst.part;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The package table: body outlines by every name that people and design tools give them. */
public final class BodyOutlines {
  private final Map<String, BodyOutline> byName = new HashMap<>();

  private BodyOutlines() {}

  /** A row of the package table: an outline and the further names it goes by. */
  public record Row(BodyOutline outline, List<String> otherNames) {}

  /** These rows; the first to claim a name keeps it. */
  public static BodyOutlines of(List<Row> rows) {
    var table = new BodyOutlines();
    for (Row row : rows) {
      table.byName.putIfAbsent(key(row.outline().name()), row.outline());
      row.otherNames().forEach(name -> table.byName.putIfAbsent(key(name), row.outline()));
    }
    return table;
  }

  /** The outline that goes by this name, case and punctuation aside. */
  public Optional<BodyOutline> named(String name) {
    return Optional.ofNullable(byName.get(key(name)));
  }

  /** Every outline, each once. */
  public List<BodyOutline> all() {
    return byName.values().stream()
        .distinct()
        .sorted(java.util.Comparator.comparing(BodyOutline::name))
        .toList();
  }

  private static String key(String name) {
    return name.strip().toUpperCase(Locale.ROOT).replaceAll("[\\s\\-_()]", "");
  }
}
