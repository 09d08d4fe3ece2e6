package lowfirst.board;

/**
 * One board that is built.
 *
 * @param board the board design's name
 * @param number from 1
 */
public record Unit(String board, int number) {

  /** The serial that people write on it, for example {@code driver-2}. */
  public String serial() {
    return board + "-" + number;
  }

  @Override
  public String toString() {
    return serial();
  }
}
