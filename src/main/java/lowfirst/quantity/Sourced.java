package lowfirst.quantity;

/** An amount and where it came from. */
public record Sourced(Quantity quantity, Source source) {

  /** An amount with its source. */
  public static Sourced of(Quantity quantity, Source source) {
    return new Sourced(quantity, source);
  }

  /** The amount as a double in the dimension's own unit. */
  public double asDouble() {
    return quantity.asDouble();
  }

  @Override
  public String toString() {
    return quantity + " [" + source + "]";
  }
}
