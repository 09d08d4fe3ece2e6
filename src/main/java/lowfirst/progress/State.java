package lowfirst.progress;

/** The state of a placement on one unit. */
public enum State {
  TO_DO("to do"),
  SEATED("seated"),
  SOLDERED("soldered"),
  INSPECTED("inspected"),
  SET_ASIDE("set aside");

  private final String words;

  State(String words) {
    this.words = words;
  }

  /** The words that people read. */
  public String words() {
    return words;
  }
}
