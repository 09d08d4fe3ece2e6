package lowfirst.intake.column;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * What the user says about columns, against which no guess stands: {@code bom.value = Part Number},
 * {@code placements.x = 3}, {@code driver/bom.header = 5}. Remembered in the kit's {@code
 * columns.properties}.
 *
 * @param entries from {@code [folder/]table.column} to a header, a column number from 1, or {@code
 *     none}
 */
public record ColumnMap(Map<String, String> entries) {

  /** The file of the kit that remembers it. */
  public static final String FILE = "columns.properties";

  /** What can be said of a table beside its columns. */
  private static final Map<String, String> ALLOWED =
      Map.of(
          "unit", "mm, mil, inch or µm",
          "separator", "comma, semicolon, tab, bar, blanks, wide-blanks or fixed-width",
          "header", "the line that the header stands in, or none",
          "bottom-x", "mirrored or as-is");

  public ColumnMap {
    entries = java.util.Collections.unmodifiableMap(new TreeMap<>(entries));
  }

  /** Nothing said. */
  public static ColumnMap empty() {
    return new ColumnMap(Map.of());
  }

  /** This map with the entries of {@code stronger} winning. */
  public ColumnMap with(ColumnMap stronger) {
    var joined = new TreeMap<>(entries);
    joined.putAll(stronger.entries);
    return new ColumnMap(joined);
  }

  /** What is wrong with its keys, if anything. */
  public List<Problem> problems(String file) {
    var problems = new ArrayList<Problem>();
    entries.forEach(
        (key, value) -> {
          if (!isKnown(key)) {
            problems.add(
                new Problem(
                    Kind.REFERENCE_UNKNOWN,
                    Place.ofCell(file, 0, 0, key, value),
                    "\"" + key + "\" names no column of a table",
                    "write table.column, such as bom.value, placements.x or placements.unit"));
          } else if (!isAllowed(key.substring(key.lastIndexOf('.') + 1), value.strip())) {
            problems.add(
                new Problem(
                    Kind.CELL_UNREADABLE,
                    Place.ofCell(file, 0, 0, key, value),
                    "\"" + value + "\" is not known here",
                    "write " + ALLOWED.get(key.substring(key.lastIndexOf('.') + 1))));
          }
        });
    return problems;
  }

  private static boolean isAllowed(String name, String value) {
    return switch (name) {
      case "unit" -> Lengths.isUnit(HeaderUnit.canonical(value));
      case "separator" -> Separator.named(value).isPresent();
      case "header" -> value.matches("none|[0-9]{1,7}");
      case "bottom-x" -> value.equals("mirrored") || value.equals("as-is");
      default -> true;
    };
  }

  private static boolean isKnown(String key) {
    String[] names = key.substring(key.lastIndexOf('/') + 1).split("\\.", 2);
    boolean table = Arrays.stream(TableKind.values()).anyMatch(kind -> kind.key().equals(names[0]));
    return table
        && names.length == 2
        && (ALLOWED.containsKey(names[1]) || Column.ofKey(names[1]).isPresent());
  }

  /** The header or number that is said to hold a column of this file. */
  public Optional<String> column(TableKind kind, String file, Column column) {
    return said(kind, file, column.key());
  }

  /** All that is said of this file's columns: its header or number, by column. */
  public Map<Column, String> columns(TableKind kind, String file) {
    var columns = new EnumMap<Column, String>(Column.class);
    if (!entries.isEmpty()) {
      for (Column column : Column.values()) {
        column(kind, file, column).ifPresent(told -> columns.put(column, told));
      }
    }
    return columns;
  }

  /** The unit of bare numbers in this file. */
  public Optional<String> unit(TableKind kind, String file) {
    return said(kind, file, "unit").map(HeaderUnit::canonical).filter(Lengths::isUnit);
  }

  /** The separator of this file. */
  public Optional<Separator> separator(TableKind kind, String file) {
    return said(kind, file, "separator").flatMap(Separator::named);
  }

  /** The line of the header, or {@code none}. */
  public Optional<String> headerLine(TableKind kind, String file) {
    return said(kind, file, "header");
  }

  /** Whether x on the bottom side is {@code mirrored} or {@code as-is}. */
  public Optional<String> bottomX(TableKind kind, String file) {
    return said(kind, file, "bottom-x");
  }

  private Optional<String> said(TableKind kind, String file, String name) {
    int slash = file.lastIndexOf('/');
    String own = slash < 0 ? "" : file.substring(0, slash + 1);
    String key = kind.key() + "." + name;
    return Optional.ofNullable(entries.getOrDefault(own + key, entries.get(key)))
        .map(String::strip)
        .filter(text -> !text.isEmpty());
  }
}
