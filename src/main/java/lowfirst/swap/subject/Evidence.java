package lowfirst.swap.subject;

import java.util.Optional;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/**
 * What is asked for or offered in one respect, and where that stands.
 *
 * @param quantity the amount; absent when it is a word
 * @param word the word, or the test condition of the amount; may be empty
 * @param source where it stands
 */
public record Evidence(Optional<Quantity> quantity, String word, Source source) {

  /** An amount. */
  public static Evidence of(Quantity quantity, Source source) {
    return new Evidence(Optional.of(quantity), "", source);
  }

  /** An amount under a test condition. */
  public static Evidence of(Quantity quantity, String condition, Source source) {
    return new Evidence(Optional.of(quantity), condition, source);
  }

  /** A word, such as a pin order. */
  public static Evidence of(String word, Source source) {
    return new Evidence(Optional.empty(), word, source);
  }
}
