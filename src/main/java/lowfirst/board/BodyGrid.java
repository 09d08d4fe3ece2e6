package lowfirst.board;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/**
 * Bodies by the squares of a board that they lie on, for finding what overlaps without trying all.
 * All is kept in plain arrays: a board may have a hundred thousand bodies, and to follow each to an
 * object of its own takes longer than to compare it.
 */
public final class BodyGrid {
  /** Nothing larger is believed to be a body; else a slip of the pen would lie on every square. */
  private static final double LARGEST_MILLIMETRES = 500;

  private static final int NONE = -1;

  private final double squareMillimetres;

  /** The last entry of each slot. Squares far apart may share one. */
  private final int[] last;

  /** Of each entry the one before it in its slot, and the number of its body. */
  private int[] entries;

  /** Of each body left, bottom, right and top. */
  private double[] areas;

  private int entryCount;
  private int bodyCount;

  /**
   * An empty grid.
   *
   * @param squareMillimetres about as large as bodies are
   * @param bodies how many are expected
   */
  public BodyGrid(double squareMillimetres, int bodies) {
    this.squareMillimetres = squareMillimetres;
    this.last = new int[4 * Integer.highestOneBit(Math.max(8, bodies))];
    this.entries = new int[4 * Math.max(8, bodies)];
    this.areas = new double[4 * Math.max(8, bodies)];
    Arrays.fill(last, NONE);
  }

  /** Whether an area can be that of a body; no other overlaps anything here. */
  public static boolean isBelievable(BodyArea area) {
    return area.width() <= LARGEST_MILLIMETRES && area.height() <= LARGEST_MILLIMETRES;
  }

  /** Adds a body; bodies are numbered from 0 in the order added. */
  public void add(BodyArea area, Side side) {
    int number = bodyCount++;
    if (4 * bodyCount > areas.length) {
      areas = Arrays.copyOf(areas, 2 * areas.length);
    }
    areas[4 * number] = area.left();
    areas[4 * number + 1] = area.bottom();
    areas[4 * number + 2] = area.right();
    areas[4 * number + 3] = area.top();
    if (isBelievable(area)) {
      long lastColumn = at(area.right());
      long lastRow = at(area.top());
      for (long column = at(area.left()); column <= lastColumn; column++) {
        for (long row = at(area.bottom()); row <= lastRow; row++) {
          enter(slot(column, row), 2 * number + side.ordinal());
        }
      }
    }
  }

  private void enter(int slot, int body) {
    if (2 * entryCount == entries.length) {
      entries = Arrays.copyOf(entries, 2 * entries.length);
    }
    entries[2 * entryCount] = last[slot];
    entries[2 * entryCount + 1] = body;
    last[slot] = entryCount++;
  }

  /**
   * The numbers of all bodies on a side that share a patch with an area that is deeper than {@code
   * depthMillimetres} along x and y, in ascending order.
   */
  public Collection<Integer> overlapping(BodyArea area, Side side, double depthMillimetres) {
    Collection<Integer> found = List.of();
    if (!isBelievable(area)) {
      return found;
    }
    long lastColumn = at(area.right());
    long lastRow = at(area.top());
    for (long column = at(area.left()); column <= lastColumn; column++) {
      for (long row = at(area.bottom()); row <= lastRow; row++) {
        for (int at = last[slot(column, row)]; at != NONE; at = entries[2 * at]) {
          int body = entries[2 * at + 1];
          if (body % 2 == side.ordinal() && overlaps(body / 2, area, depthMillimetres)) {
            found = found.isEmpty() ? new TreeSet<>() : found;
            found.add(body / 2);
          }
        }
      }
    }
    return found;
  }

  private boolean overlaps(int number, BodyArea area, double depth) {
    int at = 4 * number;
    return Math.min(areas[at + 2], area.right()) - Math.max(areas[at], area.left()) > depth
        && Math.min(areas[at + 3], area.top()) - Math.max(areas[at + 1], area.bottom()) > depth;
  }

  private long at(double millimetres) {
    double squares = millimetres / squareMillimetres;
    long towardsZero = (long) squares;
    return squares < towardsZero ? towardsZero - 1 : towardsZero;
  }

  /** Spreads neighbours, by multiplying with large odd numbers; sides share their slots. */
  private int slot(long column, long row) {
    long mixed = (column * 0x9E3779B97F4A7C15L + row) * 0xC2B2AE3D27D4EB4FL;
    return (int) (mixed >>> 32) & (last.length - 1);
  }
}
