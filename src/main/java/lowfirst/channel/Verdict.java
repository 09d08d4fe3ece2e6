package lowfirst.channel;

/** What a check or a finding says. */
public enum Verdict {
  CARRIES("carries"),
  UNDECIDED("undecided"),
  OVERLOADED("overloaded");

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  /** The word that people read. */
  public String words() {
    return words;
  }

  /** The worse of two: overloaded before undecided before carries. */
  public Verdict worse(Verdict other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
