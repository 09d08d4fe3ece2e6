package lowfirst.assembly;

/**
 * How much may be seated before the board is turned over.
 *
 * @param partsPerBatch at most so many parts on one unit, at least 1
 * @param heightSpreadMillimetres at most so much between the lowest and the tallest part of a
 *     batch: the board rests on the tall ones, and a lower one is not held
 */
public record AssemblyOptions(int partsPerBatch, double heightSpreadMillimetres) {

  /** 24 parts and 1.5 mm: what a hand keeps in place. Common practice, no standard. */
  public static final AssemblyOptions USUAL = new AssemblyOptions(24, 1.5);

  public AssemblyOptions {
    if (partsPerBatch < 1 || !(heightSpreadMillimetres >= 0)) {
      throw new IllegalArgumentException(partsPerBatch + ", " + heightSpreadMillimetres);
    }
  }
}
