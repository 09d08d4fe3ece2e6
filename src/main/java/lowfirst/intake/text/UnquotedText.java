package lowfirst.intake.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lowfirst.intake.column.Row;

/**
 * Cuts a text that holds no quotes. There nothing is escaped: every separator parts two cells and
 * every line end two rows, as RFC 4180 has it. Of a large kit, reading and checking take half the
 * time so, since a cell that says the same as an earlier one is that one: sides, angles, values and
 * packages are a few texts in a hundred thousand rows.
 */
final class UnquotedText {
  /** Slots for cells met before; a cell that falls on another's slot takes it over. */
  private static final int SLOTS = 1 << 12;

  /** Signs of a cell that is not compared one by one. */
  private static final int LONG = 16;

  /** So many cells of a column tell whether it says the same again and again. */
  private static final int TRIED = 200;

  /** Of columns beyond this no account is kept. */
  private static final int COLUMNS = 64;

  private final String text;
  private final char separator;
  private final boolean hasHardBlanks;
  private final String[] met = new String[SLOTS];
  private final List<Row> rows = new ArrayList<>();
  private String[] cells = new String[16];
  private int filled;

  /** Of each column how many cells were looked for among those met, and how many were there. */
  private final int[] tried = new int[COLUMNS];

  private final int[] found = new int[COLUMNS];

  private UnquotedText(String text, char separator) {
    this.text = text;
    this.separator = separator;
    this.hasHardBlanks = text.indexOf('\u00a0') >= 0;
  }

  /** Whether this is for it to cut. */
  static boolean is(String text) {
    return text.indexOf('"') < 0;
  }

  /** Every row that is not blank, its cells without the blanks around them. */
  static List<Row> rows(String text, char separator) {
    var cutting = new UnquotedText(text, separator);
    cutting.cut();
    return cutting.rows;
  }

  private void cut() {
    int line = 1;
    int start = 0;
    int part = next(separator, 0);
    int feed = next('\n', 0);
    int carriageReturn = next('\r', 0);
    boolean more = true;
    while (more) {
      int end = Math.min(feed, carriageReturn);
      while (part < end) {
        add(start, part);
        start = part + 1;
        part = next(separator, start);
      }
      add(start, end);
      endRow(line++);
      more = end < text.length();
      start = end + 1;
      if (end == carriageReturn) {
        start += feed == start && start < text.length() ? 1 : 0;
        carriageReturn = next('\r', start);
      }
      feed = feed < start ? next('\n', start) : feed;
    }
  }

  /** Where a sign stands next; the end of the text where it doesn't. */
  private int next(char sign, int from) {
    int at = text.indexOf(sign, from);
    return at < 0 ? text.length() : at;
  }

  /** Adds the cell between two places. */
  private void add(int start, int end) {
    if (filled == cells.length) {
      cells = Arrays.copyOf(cells, 2 * filled);
    }
    int column = Math.min(filled, COLUMNS - 1);
    boolean repeats = tried[column] < TRIED || found[column] > tried[column] / 4;
    cells[filled++] = repeats ? met(column, start, end) : made(start, end);
  }

  private String met(int column, int start, int end) {
    int slot = slot(start, end);
    String cell = met[slot];
    tried[column]++;
    if (cell != null && cell.length() == end - start && isThere(cell, start)) {
      found[column]++;
      return cell;
    }
    met[slot] = made(start, end);
    return met[slot];
  }

  private String made(int start, int end) {
    String cell = text.substring(start, end);
    return hasHardBlanks ? Rows.stripped(cell) : cell.strip();
  }

  /** A copy and its comparison are done many signs at a time, so a long cell is copied. */
  private boolean isThere(String cell, int start) {
    return cell.length() < LONG
        ? text.startsWith(cell, start)
        : cell.equals(text.substring(start, start + cell.length()));
  }

  /** By some of its signs: of a long cell more of them don't tell it better. */
  private int slot(int start, int end) {
    int step = 1 + (end - start) / 16;
    int hash = end - start;
    for (int at = start; at < end; at += step) {
      hash = 31 * hash + text.charAt(at);
    }
    return (hash ^ hash >>> 16) & SLOTS - 1;
  }

  private void endRow(int line) {
    Row row = Row.holding(line, Arrays.copyOf(cells, filled));
    if (!row.isBlank()) {
      rows.add(row);
    }
    filled = 0;
  }
}
