package lowfirst.channel.check;

import java.util.List;

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

  /** The worst of some checks; carries where there are none. */
  public static Verdict worstOf(List<Check> checks) {
    Verdict worst = CARRIES;
    for (Check check : checks) {
      worst = worst.worse(check.verdict());
    }
    return worst;
  }
}
