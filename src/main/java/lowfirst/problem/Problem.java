package lowfirst.problem;

import java.util.Comparator;

/**
 * One thing wrong with the kit, worded where it was found.
 *
 * @param kind the closed kind, which carries the severity
 * @param place where it stands
 * @param message what is wrong, in plain words, without a full stop
 * @param remedy what to do about it, as an instruction
 */
public record Problem(Kind kind, Place place, String message, String remedy)
    implements Comparable<Problem> {

  private static final Comparator<Problem> SOURCE_ORDER =
      Comparator.comparing(Problem::place)
          .thenComparing(Problem::kind)
          .thenComparing(Problem::message);

  public Problem {
    if (message.isBlank() || remedy.isBlank()) {
      throw new IllegalArgumentException("a problem says what is wrong and what to do: " + place);
    }
  }

  /** How much it matters. */
  public Severity severity() {
    return kind.severity();
  }

  @Override
  public int compareTo(Problem other) {
    return SOURCE_ORDER.compare(this, other);
  }

  @Override
  public String toString() {
    return place + ": " + message + "; " + remedy;
  }
}
