package lowfirst.assembly;

/**
 * Why a step stands where it stands. "Lowest first" is common practice, no clause of a standard: a
 * board turned over rests on its parts, and a low part beside a tall one is not held.
 */
public enum Rule {
  WIRE_LINKS_FIRST("wire links and anything else that lies flat go first"),
  LOWEST_FIRST("lowest seated height first"),
  UNDER_ANOTHER("it sits under another part"),
  COVERS_ANOTHER("it covers another part, which goes first"),
  FASTENED_FIRST(
      "bolted to its heatsink before it is soldered, so that no strain stays in the leads"),
  STURDY_BEFORE_DELICATE(
      "as tall as others, but heat or static could spoil it: later among equals"),
  SAVES_A_FLIP("as tall as others, and going now it saves turning the board over once more"),
  HEIGHT_NOT_KNOWN("its height is not known: late, so that it can't prop the board up; measure it"),
  AFTER_RAIL_CHECK("plugged into its socket only after the rail check");

  private final String words;

  Rule(String words) {
    this.words = words;
  }

  /** The reason as a sheet prints it. */
  public String words() {
    return words;
  }
}
