package lowfirst.board;

/**
 * A square of a board, for looking up what lies near: bodies that share none can't overlap.
 *
 * @param column counted from x = 0
 * @param row counted from y = 0
 * @param side the side of the board
 */
public record GridCell(long column, long row, Side side) {

  /** The column or row of a coordinate, with squares of this size, both in millimetres. */
  public static long at(double millimetres, double sizeMillimetres) {
    return (long) Math.floor(millimetres / sizeMillimetres);
  }

  /** Spreads neighbours: a record's own hash is the same for one to the right and 31 down. */
  @Override
  public int hashCode() {
    return Long.hashCode((column * 0x9E3779B97F4A7C15L + row) * 0xC2B2AE3D27D4EB4FL)
        + side.ordinal();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof GridCell that
        && column == that.column
        && row == that.row
        && side == that.side;
  }
}
