package lowfirst.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** All datasheet lines that a kit knows: its own, and the shipped catalogue's where it has none. */
public final class Datasheets {

  private static final int SHORTEST_NUMBER = 4;

  private final Supplier<List<DatasheetLine>> source;
  private Optional<Index> index = Optional.empty();

  private record Index(List<DatasheetLine> lines, Map<String, List<DatasheetLine>> byType) {

    private static Index of(List<DatasheetLine> lines) {
      var byType = new LinkedHashMap<String, List<DatasheetLine>>();
      for (DatasheetLine line : lines) {
        byType.computeIfAbsent(key(line.partType()), none -> new ArrayList<>()).add(line);
      }
      return new Index(List.copyOf(lines), byType);
    }
  }

  private Datasheets(Supplier<List<DatasheetLine>> source) {
    this.source = source;
  }

  /** No lines at all. */
  public static Datasheets none() {
    return of(List.of());
  }

  /** These lines, in the order given. */
  public static Datasheets of(List<DatasheetLine> lines) {
    List<DatasheetLine> copied = List.copyOf(lines);
    return new Datasheets(() -> copied);
  }

  /** Most commands on most kits ask for no line, so none is gathered before. */
  private synchronized Index index() {
    if (index.isEmpty()) {
      index = Optional.of(Index.of(source.get()));
    }
    return index.get();
  }

  /** Every line, in the order given. */
  public List<DatasheetLine> lines() {
    return index().lines();
  }

  /** The lines about one part type, in the order given; empty when none is known. */
  public List<DatasheetLine> about(String partType) {
    return List.copyOf(index().byType().getOrDefault(key(partType), List.of()));
  }

  /** The lines about one part type with one symbol. */
  public List<DatasheetLine> about(String partType, String symbol) {
    return index().byType().getOrDefault(key(partType), List.of()).stream()
        .filter(line -> line.symbol().equals(symbol))
        .toList();
  }

  /** The lines of every part type, one list each, in the order of their first lines. */
  public List<List<DatasheetLine>> byPartType() {
    return index().byType().values().stream().map(List::copyOf).toList();
  }

  /**
   * The longest part type known whose number stands whole in another: 7805 in LM7805CT, which may
   * or may not be one.
   */
  public Optional<String> within(String partType) {
    String key = key(partType);
    return index().byType().keySet().stream()
        .filter(known -> known.length() >= SHORTEST_NUMBER && standsIn(known, key))
        .max(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()))
        .map(known -> index().byType().get(known).get(0).partType());
  }

  private static boolean standsIn(String known, String key) {
    int at = key.indexOf(known);
    int end = at + known.length();
    return at >= 0
        && (at == 0 || !Character.isDigit(key.charAt(at - 1)))
        && (end == key.length() || !Character.isDigit(key.charAt(end)));
  }

  /** Whether anything is known about a part type. */
  public boolean know(String partType) {
    return index().byType().containsKey(key(partType));
  }

  /**
   * These lines, and {@code shipped} ones for every part type and symbol that these lack; nobody
   * asks for those before anything is asked of the result.
   */
  public Datasheets over(Supplier<Datasheets> shipped) {
    return new Datasheets(
        () -> {
          var joined = new ArrayList<>(lines());
          shipped.get().lines().stream()
              .filter(line -> about(line.partType(), line.symbol()).isEmpty())
              .forEach(joined::add);
          return joined;
        });
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
