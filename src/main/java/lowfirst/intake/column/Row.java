package lowfirst.intake.column;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** A record of a table as it stands in the file. */
public final class Row {
  private final int line;
  private final String[] cells;

  private Row(int line, String[] cells) {
    this.line = line;
    this.cells = cells;
  }

  /**
   * A row.
   *
   * @param line the line it starts on, from 1
   * @param cells its cells, without the blanks around them
   */
  public Row(int line, List<String> cells) {
    this(line, cells.toArray(new String[0]));
  }

  /** A row of cells that are given away. */
  public static Row holding(int line, String[] cells) {
    return new Row(line, cells);
  }

  /** The line it starts on, from 1. */
  public int line() {
    return line;
  }

  /** Its cells, without the blanks around them. */
  public List<String> cells() {
    return Collections.unmodifiableList(Arrays.asList(cells));
  }

  /** How many cells it has, empty ones included. */
  public int size() {
    return cells.length;
  }

  /** The cell at an index from 0; empty when the row is shorter. */
  public String cell(int index) {
    return index >= 0 && index < cells.length ? cells[index] : "";
  }

  /** Whether no cell holds anything. */
  public boolean isBlank() {
    return !fillsMoreThan(0);
  }

  /** The index of the first cell that holds something; -1 without one. */
  public int firstFilled() {
    for (int i = 0; i < cells.length; i++) {
      if (!cells[i].isEmpty()) {
        return i;
      }
    }
    return -1;
  }

  /** How many cells hold something. */
  public int filled() {
    int filled = 0;
    for (String cell : cells) {
      filled += cell.isEmpty() ? 0 : 1;
    }
    return filled;
  }

  /** Whether more cells than this hold something; looks no further than it must. */
  public boolean fillsMoreThan(int count) {
    int filled = 0;
    for (int i = 0; i < cells.length && filled <= count; i++) {
      filled += cells[i].isEmpty() ? 0 : 1;
    }
    return filled > count;
  }
}
