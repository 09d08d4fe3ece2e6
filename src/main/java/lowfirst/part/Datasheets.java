package lowfirst.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** All datasheet lines that a kit knows: its own, and the shipped catalogue's where it has none. */
public final class Datasheets {

  private final List<DatasheetLine> lines;
  private final Map<String, List<DatasheetLine>> byType = new LinkedHashMap<>();

  private Datasheets(List<DatasheetLine> lines) {
    this.lines = List.copyOf(lines);
    for (DatasheetLine line : this.lines) {
      byType.computeIfAbsent(key(line.partType()), none -> new ArrayList<>()).add(line);
    }
  }

  /** No lines at all. */
  public static Datasheets none() {
    return new Datasheets(List.of());
  }

  /** These lines, in the order given. */
  public static Datasheets of(List<DatasheetLine> lines) {
    return new Datasheets(lines);
  }

  /** Every line, in the order given. */
  public List<DatasheetLine> lines() {
    return lines;
  }

  /** The lines about one part type, in the order given; empty when none is known. */
  public List<DatasheetLine> about(String partType) {
    return List.copyOf(byType.getOrDefault(key(partType), List.of()));
  }

  /** The lines about one part type with one symbol. */
  public List<DatasheetLine> about(String partType, String symbol) {
    return byType.getOrDefault(key(partType), List.of()).stream()
        .filter(line -> line.symbol().equals(symbol))
        .toList();
  }

  /** The lines of every part type, one list each, in the order of their first lines. */
  public List<List<DatasheetLine>> byPartType() {
    return byType.values().stream().map(List::copyOf).toList();
  }

  /** Whether anything is known about a part type. */
  public boolean know(String partType) {
    return byType.containsKey(key(partType));
  }

  /** These lines, and {@code shipped} ones for every part type and symbol that these lack. */
  public Datasheets over(Datasheets shipped) {
    var joined = new ArrayList<>(lines);
    shipped.lines.stream()
        .filter(line -> about(line.partType(), line.symbol()).isEmpty())
        .forEach(joined::add);
    return of(joined);
  }

  /** The type number without blanks, hyphens, underlines and slashes, in capitals. */
  private static String key(String partType) {
    var key = new StringBuilder(partType.length());
    for (int i = 0; i < partType.length(); i++) {
      char c = partType.charAt(i);
      if (c != '-' && c != '_' && c != '/' && !Character.isWhitespace(c)) {
        key.append(c);
      }
    }
    return key.toString().toUpperCase(Locale.ROOT);
  }
}
