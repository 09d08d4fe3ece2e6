package lowfirst.quantity;

/**
 * Where a number came from. Every number on a finding has one.
 *
 * @param origin what kind of source
 * @param text how to cite it: a datasheet line, a cell of the kit, a named standard, or the
 *     assumption and where to change it
 */
public record Source(Origin origin, String text) {

  /** The kinds of source, from the strongest to the weakest. */
  public enum Origin {
    /** A cell of the user's own tables. */
    KIT,
    /** A line of a maker's datasheet. */
    DATASHEET,
    /** A named standard, handbook or physical constant. */
    STANDARD,
    /** Worked out from other numbers that have sources. */
    COMPUTED,
    /** Assumed, with where to change it. */
    ASSUMED,
    /** From memory: may be shown, can make nothing pass. */
    MEMORY
  }

  /** A cell of the kit. */
  public static Source kit(String place) {
    return new Source(Origin.KIT, place);
  }

  /** A datasheet line: maker, document, revision. */
  public static Source datasheet(String citation) {
    return new Source(Origin.DATASHEET, citation);
  }

  /** A named standard or handbook. */
  public static Source standard(String citation) {
    return new Source(Origin.STANDARD, citation);
  }

  /** Worked out by a named formula. */
  public static Source computed(String formula) {
    return new Source(Origin.COMPUTED, formula);
  }

  /** Worked out by a named formula; from memory unless all that went in may pass. */
  public static Source computed(String formula, boolean canPass) {
    return new Source(canPass ? Origin.COMPUTED : Origin.MEMORY, formula);
  }

  /** An assumption, and where the user changes it. */
  public static Source assumed(String what, String changeItIn) {
    return new Source(Origin.ASSUMED, "assumed: " + what + ", change it in " + changeItIn);
  }

  /** Whether a finding may pass on it. */
  public boolean canPass() {
    return origin != Origin.MEMORY;
  }

  @Override
  public String toString() {
    return text;
  }
}
