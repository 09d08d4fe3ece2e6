package lowfirst.quantity;

import java.math.BigDecimal;

/**
 * How far a part may be from its nominal value.
 *
 * @param basis whether the limits are per cent of the value or an absolute amount
 * @param minus how far below, never negative: per cent, or the dimension's own unit
 * @param plus how far above, never negative: per cent, or the dimension's own unit
 */
public record Tolerance(Basis basis, BigDecimal minus, BigDecimal plus) {

  /** What the limits are counted in. */
  public enum Basis {
    PERCENT,
    /** In the value's own unit, as on ceramic capacitors below 10 pF. */
    ABSOLUTE
  }

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  public Tolerance {
    if (minus.signum() < 0 || plus.signum() < 0) {
      throw new IllegalArgumentException("limits are distances: -" + minus + " +" + plus);
    }
    minus = minus.signum() == 0 ? BigDecimal.ZERO : minus.stripTrailingZeros();
    plus = plus.signum() == 0 ? BigDecimal.ZERO : plus.stripTrailingZeros();
  }

  /** The same per cent either way. */
  public static Tolerance percent(String percent) {
    return percent(percent, percent);
  }

  /** Different per cent below and above. */
  public static Tolerance percent(String minus, String plus) {
    return new Tolerance(Basis.PERCENT, new BigDecimal(minus), new BigDecimal(plus));
  }

  /** The same absolute amount either way, in the value's own unit. */
  public static Tolerance absolute(String amount) {
    return new Tolerance(Basis.ABSOLUTE, new BigDecimal(amount), new BigDecimal(amount));
  }

  /** The least that a part marked {@code nominal} may be. */
  public Quantity lowest(Quantity nominal) {
    return moved(nominal, minus.negate());
  }

  /** The most that a part marked {@code nominal} may be. */
  public Quantity highest(Quantity nominal) {
    return moved(nominal, plus);
  }

  private Quantity moved(Quantity nominal, BigDecimal by) {
    BigDecimal distance =
        basis == Basis.ABSOLUTE ? by : nominal.amount().multiply(by).divide(HUNDRED);
    return new Quantity(nominal.amount().add(distance), nominal.dimension());
  }

  /**
   * Whether every part within {@code other} of {@code otherNominal} is within this of {@code
   * nominal}.
   */
  public boolean encloses(Quantity nominal, Tolerance other, Quantity otherNominal) {
    return lowest(nominal).compareTo(other.lowest(otherNominal)) <= 0
        && highest(nominal).compareTo(other.highest(otherNominal)) >= 0;
  }

  /** Written out, since making a record's own at run time slows the start of a quick command. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Tolerance that
        && basis == that.basis
        && minus.equals(that.minus)
        && plus.equals(that.plus);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * basis.hashCode() + minus.hashCode()) + plus.hashCode();
  }

  /** For example {@code ±5 %} or {@code -20/+80 %}. */
  @Override
  public String toString() {
    String unit = basis == Basis.PERCENT ? " %" : "";
    return minus.compareTo(plus) == 0
        ? "±" + plus.toPlainString() + unit
        : "-" + minus.toPlainString() + "/+" + plus.toPlainString() + unit;
  }
}
