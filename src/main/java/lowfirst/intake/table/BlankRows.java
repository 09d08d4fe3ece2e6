package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.Separator;
import lowfirst.intake.column.TableKind;

/** Rows of a text whose cells stand in columns with blanks between them. */
final class BlankRows {
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"(?=\\s|$)|\\S+");

  /** A bar by itself draws a line; where bars part the cells, the rows are not cut here. */
  private static final Pattern BAR = Pattern.compile("(?<!\\S)\\|(?!\\S)");

  private static final Pattern QUOTED = Pattern.compile("(?<!\\S)\"[^\"]*\"(?=\\s|$)");
  private static final Pattern OPENED = Pattern.compile("(?<!\\S)\"");

  /** A quote that closes no sooner was never meant to. */
  private static final int LINES_IN_A_CELL = 30;

  /** Lines looked at to find the header. */
  private static final int SEARCHED = 60;

  /** A longer line is no row of a table made for eyes. */
  private static final int LONGEST = 4096;

  /** Characters between two stops of a tab. */
  private static final int TAB = 8;

  private BlankRows() {}

  /** The rows of {@code text}, cut as {@code separator} says. */
  static List<Row> of(TableKind kind, String text, Separator separator) {
    String[] lines = text.split("\r\n|\r|\n", -1);
    boolean fixed = separator == Separator.FIXED_WIDTH;
    if (text.indexOf('|') >= 0) {
      Arrays.setAll(lines, line -> BAR.matcher(lines[line]).replaceAll(" "));
    }
    if (fixed) {
      Arrays.setAll(lines, line -> untabbed(lines[line]));
    }
    List<Integer> columns = fixed ? columns(kind, lines) : List.of();
    var rows = new ArrayList<Row>();
    for (int i = 0; i < lines.length; i++) {
      if (!lines[i].isBlank()) {
        int end = separator == Separator.BLANKS ? endOfQuote(lines, i) : i;
        String line = String.join("\n", Arrays.asList(lines).subList(i, end + 1));
        rows.add(new Row(i + 1, cells(withoutCommentSign(line), separator, columns)));
        i = end;
      }
    }
    return rows;
  }

  /** The line in which a quote closes that the line opens; the line itself when none does so. */
  private static int endOfQuote(String[] lines, int line) {
    boolean opens =
        lines[line].indexOf('"') >= 0
            && OPENED.matcher(QUOTED.matcher(lines[line]).replaceAll("")).find();
    if (!opens) {
      return line;
    }
    for (int next = line + 1; next < Math.min(lines.length, line + LINES_IN_A_CELL); next++) {
      int quote = lines[next].indexOf('"');
      if (quote >= 0) {
        String after = lines[next].substring(quote + 1);
        return after.isEmpty() || Character.isWhitespace(after.charAt(0)) ? next : line;
      }
    }
    return line;
  }

  /** A header may itself be a comment line: its sign becomes a blank, so that columns stay put. */
  private static String withoutCommentSign(String line) {
    return line.startsWith("# ") ? " " + line.substring(1) : line;
  }

  private static List<String> cells(String line, Separator separator, List<Integer> columns) {
    return switch (separator) {
      case WIDE_BLANKS ->
          Arrays.stream(line.strip().split("\\s{2,}|\t")).map(String::strip).toList();
      case FIXED_WIDTH -> cut(line, columns);
      case COMMA, SEMICOLON, TAB, BAR, SIGNS, BLANKS, LINES, RECORDS, SHEET -> words(line);
    };
  }

  /** Words, or texts in quotes. */
  private static List<String> words(String line) {
    var words = new ArrayList<String>();
    Matcher word = WORD.matcher(line);
    while (word.find()) {
      // Some control characters are blanks to one and none to the other.
      words.add((word.group(1) == null ? word.group() : word.group(1)).strip());
    }
    return words;
  }

  /**
   * Character columns that are blank in the header and in every line below it, up to a blank line:
   * titles before and remarks after a table don't keep to its columns.
   */
  private static BitSet gutters(String[] lines, int header) {
    var filled = new BitSet();
    int width = 0;
    for (int i = header; i < lines.length; i++) {
      String line = withoutCommentSign(lines[i]);
      if (line.isBlank() && i > header + 1) {
        break;
      }
      if (line.startsWith("#") || line.length() > LONGEST || isRule(line)) {
        continue;
      }
      width = Math.max(width, line.length());
      for (int at = 0; at < line.length(); at++) {
        if (line.charAt(at) != ' ') {
          filled.set(at);
        }
      }
    }
    var blank = new BitSet(width + 1);
    blank.set(0, width + 1);
    blank.andNot(filled);
    return blank;
  }

  private static boolean isRule(String line) {
    return line.chars().noneMatch(Character::isLetterOrDigit);
  }

  /** A line whose tabs reach to where columns of eight characters begin, as terminals show them. */
  private static String untabbed(String line) {
    if (line.indexOf('\t') < 0 || line.length() > LONGEST) {
      return line;
    }
    var plain = new StringBuilder();
    for (int at = 0; at < line.length(); at++) {
      if (line.charAt(at) == '\t') {
        plain.append(" ".repeat(TAB - plain.length() % TAB));
      } else {
        plain.append(line.charAt(at));
      }
    }
    return plain.toString();
  }

  /** Where columns start: after a gutter, if the header has a word there. */
  private static List<Integer> columns(TableKind kind, String[] lines) {
    int header = header(kind, lines);
    BitSet gutters = gutters(lines, header);
    String names = withoutCommentSign(lines[header]);
    var starts = new ArrayList<Integer>();
    int start = gutters.nextClearBit(0);
    while (start < gutters.length() - 1) {
      int end = gutters.nextSetBit(start);
      String word = names.substring(Math.min(start, names.length()), Math.min(end, names.length()));
      if (starts.isEmpty() || !word.isBlank()) {
        starts.add(start);
      }
      start = gutters.nextClearBit(end);
    }
    return starts;
  }

  /** The line with the most header words. */
  private static int header(TableKind kind, String[] lines) {
    int best = 0;
    long most = 0;
    for (int i = 0; i < Math.min(lines.length, SEARCHED); i++) {
      String line = withoutCommentSign(lines[i]).strip();
      long words =
          Arrays.stream(line.length() > LONGEST ? new String[0] : line.split("\\s+"))
              .filter(word -> !HeaderWords.matches(kind, word).isEmpty())
              .count();
      if (words > most) {
        best = i;
        most = words;
      }
    }
    return best;
  }

  /** A line that runs across a column's edge is prose, and stays whole. */
  private static List<String> cut(String line, List<Integer> columns) {
    var cells = new ArrayList<String>();
    for (int start : columns) {
      boolean across = start > 0 && start < line.length() && line.charAt(start - 1) != ' ';
      if (across) {
        return List.of(line.strip());
      }
    }
    for (int i = 0; i < columns.size(); i++) {
      int start = Math.min(columns.get(i), line.length());
      int end =
          i + 1 < columns.size() ? Math.min(columns.get(i + 1), line.length()) : line.length();
      cells.add(line.substring(start, end).strip());
    }
    return cells;
  }
}
