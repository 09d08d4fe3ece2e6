package lowfirst.swap.rule;

/** What a rule, or all rules together, say of a swap. */
public enum SwapVerdict {
  FITS("fits"),
  UNDECIDED("undecided"),
  DOES_NOT_FIT("does not fit");

  private final String words;

  SwapVerdict(String words) {
    this.words = words;
  }

  /** The words that people read. */
  public String words() {
    return words;
  }

  /** The worse of two: does not fit before undecided before fits. */
  public SwapVerdict worse(SwapVerdict other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
