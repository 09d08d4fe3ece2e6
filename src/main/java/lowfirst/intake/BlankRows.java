package lowfirst.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** Rows of a text whose cells stand in columns with blanks between them. */
final class BlankRows {
  private BlankRows() {}

  /** The rows of {@code text}, cut as {@code separator} says. */
  static List<Row> of(String text, Separator separator) {
    String[] lines = text.split("\r\n|\r|\n", -1);
    BitSet gutters = separator == Separator.FIXED_WIDTH ? gutters(lines) : new BitSet();
    var rows = new ArrayList<Row>();
    for (int i = 0; i < lines.length; i++) {
      if (!lines[i].isBlank()) {
        rows.add(new Row(i + 1, cells(withoutCommentSign(lines[i]), separator, gutters)));
      }
    }
    return rows;
  }

  /** A header may itself be a comment line: its sign becomes a blank, so that columns stay put. */
  private static String withoutCommentSign(String line) {
    return line.startsWith("# ") ? " " + line.substring(1) : line;
  }

  private static List<String> cells(String line, Separator separator, BitSet gutters) {
    return switch (separator) {
      case WIDE_BLANKS -> Arrays.asList(line.strip().split("\\s{2,}|\t"));
      case FIXED_WIDTH -> cut(line, gutters);
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

  private static List<String> cut(String line, BitSet gutters) {
    var cells = new ArrayList<String>();
    int start = gutters.nextClearBit(0);
    while (start < Math.max(line.length(), gutters.length() - 1)) {
      int end = gutters.nextSetBit(start);
      int stop = end < 0 ? line.length() : Math.min(end, line.length());
      cells.add(start < stop ? line.substring(start, stop).strip() : "");
      if (end < 0) {
        break;
      }
      start = gutters.nextClearBit(end);
    }
    return cells;
  }
}
