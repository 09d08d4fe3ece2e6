package lowfirst.sheet.text;

import java.util.ArrayList;
import java.util.List;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;

/** A table as aligned columns or, where they don't fit, one record a paragraph. */
final class TextTable {
  private static final int GAP = 2;

  /** A column isn't squeezed below this, unless its content is narrower. */
  private static final int READABLE = 12;

  /** Words longer than this are broken rather than given the whole column. */
  private static final int LONGEST_WORD_KEPT = 24;

  private final Table table;
  private final List<List<String>> rows;
  private final int columns;

  private TextTable(Table table) {
    this.table = table;
    this.columns = table.columns().size();
    this.rows = new ArrayList<>(table.rows().size());
    for (Table.Row row : table.rows()) {
      var words = new ArrayList<String>(columns);
      for (Cell cell : row.cells()) {
        words.add(words(cell));
      }
      rows.add(words);
    }
  }

  /** The lines of a table within {@code width} columns. */
  static List<String> lines(Table table, int width) {
    var text = new TextTable(table);
    int[] widths = text.widths(width);
    return widths.length == 0 ? text.records(width) : text.aligned(widths);
  }

  /** What a cell says in plain text. */
  static String words(Cell cell) {
    String text = Wrapping.harmless(cell.text());
    return switch (cell.entry()) {
      case BOX -> "[ ]";
      case BOX_TICKED -> "[x]";
      case FIELD -> text.isBlank() ? "____" : text;
      case NONE ->
          text.isBlank() ? cell.drawing().map(d -> Wrapping.harmless(d.words())).orElse("") : text;
    };
  }

  /** The width of each column; none at all when the columns don't fit side by side. */
  private int[] widths(int width) {
    var natural = new int[columns];
    var least = new int[columns];
    for (int column = 0; column < columns; column++) {
      String header = table.columns().get(column).header();
      natural[column] = Wrapping.width(header);
      least[column] = Wrapping.longestWord(header);
      for (List<String> row : rows) {
        String cell = row.get(column);
        natural[column] = Math.max(natural[column], widestLine(cell));
        least[column] = Math.max(least[column], Wrapping.longestWord(cell));
      }
      least[column] = Math.min(least[column], LONGEST_WORD_KEPT);
      least[column] = Math.max(least[column], Math.min(natural[column], READABLE));
    }
    int room = width - GAP * (columns - 1);
    return spread(natural, least, room);
  }

  /** Starts from the least widths and hands the rest to whoever still wants most, in proportion. */
  private static int[] spread(int[] natural, int[] least, int room) {
    int wanted = 0;
    int needed = 0;
    for (int column = 0; column < natural.length; column++) {
      wanted += natural[column];
      needed += least[column];
    }
    if (wanted <= room) {
      return natural;
    }
    if (needed > room) {
      return new int[0];
    }
    int[] widths = least.clone();
    int spare = room - needed;
    int lacking = wanted - needed;
    for (int column = 0; column < widths.length; column++) {
      widths[column] += (int) ((long) spare * (natural[column] - least[column]) / lacking);
    }
    return widths;
  }

  private static int widestLine(String text) {
    if (text.indexOf('\n') < 0 && text.indexOf('\r') < 0) {
      return Wrapping.width(text);
    }
    return text.lines().mapToInt(Wrapping::width).max().orElse(0);
  }

  private List<String> aligned(int[] widths) {
    var lines = new ArrayList<String>();
    var headers = new ArrayList<String>(columns);
    for (Table.Column column : table.columns()) {
      headers.add(column.header());
    }
    addRow(headers, widths, lines);
    var rule = new StringBuilder();
    for (int width : widths) {
      rule.append(rule.isEmpty() ? "" : " ".repeat(GAP)).append("-".repeat(width));
    }
    lines.add(rule.toString());
    boolean tallBefore = false;
    for (int at = 0; at < rows.size(); at++) {
      var row = new ArrayList<String>();
      addRow(rows.get(at), widths, row);
      boolean tall = row.size() > 1;
      if (at > 0 && (tall || tallBefore)) {
        lines.add("");
      }
      lines.addAll(row);
      tallBefore = tall;
    }
    return lines;
  }

  private void addRow(List<String> cells, int[] widths, List<String> lines) {
    var wrapped = new ArrayList<List<String>>();
    int height = 0;
    for (int column = 0; column < columns; column++) {
      List<String> parts = Wrapping.lines(cells.get(column), widths[column]);
      wrapped.add(parts);
      height = Math.max(height, parts.size());
    }
    for (int part = 0; part < height; part++) {
      var line = new StringBuilder();
      for (int column = 0; column < columns; column++) {
        String text = part < wrapped.get(column).size() ? wrapped.get(column).get(part) : "";
        line.append(column > 0 ? " ".repeat(GAP) : "")
            .append(
                table.columns().get(column).align() == Table.Align.END
                    ? Wrapping.paddedLeft(text, widths[column])
                    : Wrapping.padded(text, widths[column]));
      }
      lines.add(line.toString().stripTrailing());
    }
  }

  private List<String> records(int width) {
    var lines = new ArrayList<String>();
    for (List<String> row : rows) {
      if (!lines.isEmpty()) {
        lines.add("");
      }
      boolean first = true;
      for (int column = 0; column < columns; column++) {
        if (row.get(column).isBlank()) {
          continue;
        }
        String header = table.columns().get(column).header();
        String field = header.isBlank() ? row.get(column) : header + ": " + row.get(column);
        String start = first ? "" : "  ";
        for (String part : Wrapping.lines(field, width - 4)) {
          lines.add(start + part);
          start = "    ";
        }
        first = false;
      }
    }
    return lines;
  }
}
