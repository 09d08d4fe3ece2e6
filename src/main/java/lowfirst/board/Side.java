package lowfirst.board;

/**
 * A side of the board. Parts sit on the component side of their row; leads are soldered opposite.
 */
public enum Side {
  TOP("top"),
  BOTTOM("bottom");

  private final String words;

  Side(String words) {
    this.words = words;
  }

  /** What a person calls it. */
  public String words() {
    return words;
  }

  /** The other side. */
  public Side opposite() {
    return this == TOP ? BOTTOM : TOP;
  }
}
