package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;

/**
 * A list of parts as records, a line for each thing that is known of one: {@code Ref: R1, R2},
 * below it {@code Value: 10k}, and so on. A blank line, or a name that stands in the record
 * already, begins the next.
 */
final class RecordLines {
  /**
   * A name, a colon or an equals sign, and what it is; an address has no blank behind its colon.
   */
  private static final Pattern FIELD =
      Pattern.compile(
          "(?U)\\s*(?:[-*•]\\s+)?(\\p{L}[\\p{L}\\p{N} ./#()_-]{0,38}?)\\s*[:=](?!//)\\s*(.*?)\\s*");

  /** Marks of bold text. */
  private static final Pattern MARKS = Pattern.compile("\\*\\*|__|`");

  /** Share of lines that are fields, from which a text is a list of records. */
  private static final double MOSTLY = 0.8;

  /** Fewer records are none: one part is no list. */
  private static final int FEWEST = 2;

  /** Nobody writes more characters so. */
  private static final int MOST_CHARACTERS = 500_000;

  /** A longer line is prose. */
  private static final int LONGEST = 400;

  private final List<Integer> lines = new ArrayList<>();
  private final List<Map<String, String>> records = new ArrayList<>();
  private final List<Row> others = new ArrayList<>();
  private int fields;

  private RecordLines() {}

  /**
   * The list as a table, its header the names in the order in which they come up first; empty where
   * a text is none.
   */
  static Optional<List<Row>> in(TableKind kind, String text) {
    if (!kind.isExported() || text.length() > MOST_CHARACTERS || text.indexOf('|') >= 0) {
      return Optional.empty();
    }
    var found = new RecordLines();
    String[] all = text.split("\r\n|\r|\n", -1);
    boolean parted = true;
    for (int i = 0; i < all.length; i++) {
      parted = all[i].isBlank() || found.take(i + 1, all[i], parted);
    }
    return found.isList(kind) ? Optional.of(found.rows()) : Optional.empty();
  }

  /** Takes a line; whether it is none of a record, so that the next one begins. */
  private boolean take(int number, String line, boolean parted) {
    Matcher field =
        FIELD.matcher(line.length() > LONGEST ? "" : MARKS.matcher(line).replaceAll(""));
    if (!field.matches()) {
      others.add(new Row(number, List.of(line.strip())));
      return true;
    }
    fields++;
    String name = field.group(1);
    if (parted || records.isEmpty() || last().containsKey(name)) {
      lines.add(number);
      records.add(new LinkedHashMap<>());
    }
    last().put(name, field.group(2));
    return false;
  }

  private Map<String, String> last() {
    return records.get(records.size() - 1);
  }

  /** Nearly all lines are fields, and nearly all records name their parts and something else. */
  private boolean isList(TableKind kind) {
    Column names = kind.required().get(0);
    long telling =
        records.stream()
            .filter(record -> record.size() > 1)
            .filter(record -> record.keySet().stream().anyMatch(name -> isFor(kind, name, names)))
            .filter(record -> record.keySet().stream().anyMatch(name -> tells(kind, name, names)))
            .count();
    return telling >= FEWEST
        && telling >= MOSTLY * records.size()
        && fields >= MOSTLY * (fields + others.size());
  }

  private static boolean isFor(TableKind kind, String name, Column column) {
    return HeaderWords.matches(kind, name).stream().anyMatch(match -> match.column() == column);
  }

  private static boolean tells(TableKind kind, String name, Column names) {
    return HeaderWords.matches(kind, name).stream().anyMatch(match -> match.column() != names);
  }

  private List<Row> rows() {
    var names = new ArrayList<String>();
    records.forEach(
        record ->
            record.keySet().stream().filter(name -> !names.contains(name)).forEach(names::add));
    int first = lines.get(0);
    var rows = new ArrayList<Row>();
    others.stream().filter(row -> row.line() < first).forEach(rows::add);
    rows.add(new Row(first, names));
    for (int i = 0; i < records.size(); i++) {
      int line = lines.get(i);
      int next = i + 1 < lines.size() ? lines.get(i + 1) : Integer.MAX_VALUE;
      Map<String, String> record = records.get(i);
      rows.add(new Row(line, names.stream().map(name -> record.getOrDefault(name, "")).toList()));
      others.stream().filter(row -> row.line() > line && row.line() < next).forEach(rows::add);
    }
    return rows;
  }
}
