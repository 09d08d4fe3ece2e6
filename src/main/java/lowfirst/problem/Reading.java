package lowfirst.problem;

import java.util.Optional;
import java.util.function.Function;

/**
 * What came of reading a person's text: a value with the rule that read it, or what is wrong with
 * the text and what to do. Reading never throws.
 *
 * @param <T> the type of the value read
 */
public final class Reading<T> {
  private final T value;
  private final String rule;
  private final String fault;
  private final String remedy;

  private Reading(T value, String rule, String fault, String remedy) {
    this.value = value;
    this.rule = rule;
    this.fault = fault;
    this.remedy = remedy;
  }

  /** The text was read as {@code value} by {@code rule}, a short phrase such as "RKM code". */
  public static <T> Reading<T> of(T value, String rule) {
    return new Reading<>(java.util.Objects.requireNonNull(value), rule, "", "");
  }

  /** The text could not be read. */
  public static <T> Reading<T> fault(String fault, String remedy) {
    return new Reading<>(null, "", fault, remedy);
  }

  /** Whether there is a value. */
  public boolean isRead() {
    return value != null;
  }

  /** The value, if the text was read. */
  public Optional<T> value() {
    return Optional.ofNullable(value);
  }

  /** The value of a text that is known to be readable; our own mistake if it is not. */
  public T orThrow() {
    if (value == null) {
      throw new IllegalArgumentException(fault);
    }
    return value;
  }

  /** How the text was understood; empty when it was not read. */
  public String rule() {
    return rule;
  }

  /** What is wrong with the text; empty when it was read. */
  public String fault() {
    return fault;
  }

  /** What to do about it; empty when it was read. */
  public String remedy() {
    return remedy;
  }

  /** The same reading with its value changed by {@code change}. */
  public <U> Reading<U> map(Function<? super T, ? extends U> change) {
    return value == null ? fault(fault, remedy) : of(change.apply(value), rule);
  }

  @Override
  public String toString() {
    return value == null ? fault + "; " + remedy : value + " (" + rule + ")";
  }
}
