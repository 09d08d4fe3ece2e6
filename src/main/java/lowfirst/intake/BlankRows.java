package lowfirst.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** Rows of a text whose cells stand in columns with blanks between them. */
final class BlankRows {
  /** Lines looked at to find the header. */
  private static final int SEARCHED = 60;

  private BlankRows() {}

  /** The rows of {@code text}, cut as {@code separator} says. */
  static List<Row> of(TableKind kind, String text, Separator separator) {
    String[] lines = text.split("\r\n|\r|\n", -1);
    List<Integer> columns = separator == Separator.FIXED_WIDTH ? columns(kind, lines) : List.of();
    var rows = new ArrayList<Row>();
    for (int i = 0; i < lines.length; i++) {
      if (!lines[i].isBlank()) {
        rows.add(new Row(i + 1, cells(withoutCommentSign(lines[i]), separator, columns)));
      }
    }
    return rows;
  }

  /** A header may itself be a comment line: its sign becomes a blank, so that columns stay put. */
  private static String withoutCommentSign(String line) {
    return line.startsWith("# ") ? " " + line.substring(1) : line;
  }

  private static List<String> cells(String line, Separator separator, List<Integer> columns) {
    return switch (separator) {
      case WIDE_BLANKS -> Arrays.asList(line.strip().split("\\s{2,}|\t"));
      case FIXED_WIDTH -> cut(line, columns);
      case COMMA, SEMICOLON, TAB, BAR, BLANKS -> Arrays.asList(line.strip().split("\\s+"));
    };
  }

  /** Character columns that are blank in every line that looks like a row. */
  private static BitSet gutters(String[] lines) {
    int width = 0;
    for (String line : lines) {
      width = Math.max(width, Math.min(line.length(), 4096));
    }
    var blank = new BitSet(width);
    blank.set(0, width + 1);
    for (String raw : lines) {
      String line = withoutCommentSign(raw);
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      for (int at = 0; at < Math.min(line.length(), width); at++) {
        if (line.charAt(at) != ' ') {
          blank.clear(at);
        }
      }
    }
    return blank;
  }

  /** Where columns start: after a gutter, if the header has a word there. */
  private static List<Integer> columns(TableKind kind, String[] lines) {
    BitSet gutters = gutters(lines);
    String header = header(kind, lines);
    var starts = new ArrayList<Integer>();
    int start = gutters.nextClearBit(0);
    while (start < gutters.length() - 1) {
      int end = gutters.nextSetBit(start);
      String word =
          header.substring(Math.min(start, header.length()), Math.min(end, header.length()));
      if (starts.isEmpty() || !word.isBlank()) {
        starts.add(start);
      }
      start = gutters.nextClearBit(end);
    }
    return starts;
  }

  /** The line with the most header words. */
  private static String header(TableKind kind, String[] lines) {
    String best = "";
    long most = 0;
    for (int i = 0; i < Math.min(lines.length, SEARCHED); i++) {
      String line = withoutCommentSign(lines[i]);
      long words =
          Arrays.stream(line.strip().split("\\s+"))
              .filter(word -> !HeaderWords.matches(kind, word).isEmpty())
              .count();
      if (words > most) {
        best = line;
        most = words;
      }
    }
    return best;
  }

  private static List<String> cut(String line, List<Integer> columns) {
    var cells = new ArrayList<String>();
    for (int i = 0; i < columns.size(); i++) {
      int start = Math.min(columns.get(i), line.length());
      int end =
          i + 1 < columns.size() ? Math.min(columns.get(i + 1), line.length()) : line.length();
      cells.add(line.substring(start, end).strip());
    }
    return cells;
  }
}
