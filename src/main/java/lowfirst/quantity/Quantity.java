package lowfirst.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import lowfirst.problem.Reading;

/**
 * An exact amount of something, such as 4.7 kΩ or 2.54 mm.
 *
 * @param amount the amount in {@link Dimension#symbol()}; trailing zeros are dropped
 * @param dimension what is measured
 */
public record Quantity(BigDecimal amount, Dimension dimension) implements Comparable<Quantity> {

  private static final Map<Character, Integer> PREFIXES =
      Map.ofEntries(
          Map.entry('f', -15),
          Map.entry('p', -12),
          Map.entry('n', -9),
          Map.entry('u', -6),
          Map.entry('µ', -6),
          Map.entry('μ', -6),
          Map.entry('m', -3),
          Map.entry('k', 3),
          Map.entry('K', 3),
          Map.entry('M', 6),
          Map.entry('G', 9),
          Map.entry('T', 12));

  /** Longest text that can be an amount; anything longer is refused unread. */
  private static final int LONGEST = 64;

  /** Largest power of ten on either side that an amount may have. */
  private static final int LARGEST_EXPONENT = 30;

  public Quantity {
    amount = amount.signum() == 0 ? BigDecimal.ZERO : amount.stripTrailingZeros();
  }

  /** An amount in the dimension's own unit, for example {@code of("4700", RESISTANCE)}. */
  public static Quantity of(String amount, Dimension dimension) {
    return new Quantity(new BigDecimal(amount), dimension);
  }

  /** An amount computed as a double, in the dimension's own unit. */
  public static Quantity of(double amount, Dimension dimension) {
    return new Quantity(BigDecimal.valueOf(amount), dimension);
  }

  /**
   * Reads a number with an optional SI prefix and unit: {@code 4.7 kΩ}, {@code 4,7k}, {@code 100n},
   * {@code -75.2918mm}, {@code 1e-3}. A bare number is in the dimension's own unit. A comma is a
   * decimal mark when it is the only mark; {@code 1,000} is therefore 1.000.
   *
   * <p>Letter codes such as {@code 4k7} are read by {@code marking}.
   */
  public static Reading<Quantity> parse(String text, Dimension dimension) {
    String trimmed = text.strip().replace('\u00a0', ' ');
    String wanted = "write a number with its unit, such as " + example(dimension);
    if (trimmed.isEmpty()) {
      return Reading.fault("nothing is written here", wanted);
    }
    if (trimmed.length() > LONGEST) {
      return Reading.fault("this is too long to be an amount", wanted);
    }
    int end = numberEnd(trimmed);
    Optional<BigDecimal> number = number(trimmed.substring(0, end));
    if (number.isEmpty()) {
      return Reading.fault("no number stands at the start of \"" + trimmed + "\"", wanted);
    }
    String unit = trimmed.substring(end).strip().replace('\u2126', 'Ω');
    Optional<BigDecimal> scale = scale(unit, dimension);
    if (scale.isEmpty()) {
      return Reading.fault("the unit \"" + unit + "\" is not known here", wanted);
    }
    return Reading.of(
        new Quantity(number.get().multiply(scale.get()), dimension),
        unit.isEmpty() ? "number without a unit" : "number with unit");
  }

  /**
   * What a unit by itself measures: {@code mΩ} a resistance, {@code nC} a charge, no unit at all a
   * ratio. A lone {@code C} is a temperature: coulombs come with a prefix.
   */
  public static Optional<Dimension> measuredIn(String unit) {
    String trimmed = unit.strip().replace('\u2126', 'Ω');
    if (trimmed.equals("C")) {
      return Optional.of(Dimension.TEMPERATURE);
    }
    for (Dimension dimension : Dimension.values()) {
      if (unitScale(trimmed, dimension).isPresent()) {
        return Optional.of(dimension);
      }
    }
    for (Dimension dimension : Dimension.values()) {
      boolean prefixAndUnit = dimension.takesPrefixes() && trimmed.length() > 1;
      if (prefixAndUnit && scale(trimmed, dimension).isPresent()) {
        return Optional.of(dimension);
      }
    }
    return Optional.empty();
  }

  private static String example(Dimension dimension) {
    return dimension.symbol().isEmpty() ? "3" : "4.7 " + dimension.symbol();
  }

  private static int numberEnd(String text) {
    int end = 0;
    while (end < text.length() && "+-−.,0123456789".indexOf(text.charAt(end)) >= 0) {
      end++;
    }
    int exponent = end;
    if (exponent > 0
        && exponent + 1 < text.length()
        && Character.toLowerCase(text.charAt(exponent)) == 'e') {
      int digits = exponent + 1;
      if ("+-".indexOf(text.charAt(digits)) >= 0) {
        digits++;
      }
      int stop = digits;
      while (stop < text.length() && Character.isDigit(text.charAt(stop))) {
        stop++;
      }
      if (stop > digits) {
        return stop;
      }
    }
    return end;
  }

  private static Optional<BigDecimal> number(String text) {
    String plain = text.replace('−', '-');
    boolean commaOnly = plain.indexOf('.') < 0 && plain.indexOf(',') == plain.lastIndexOf(',');
    if (commaOnly) {
      plain = plain.replace(',', '.');
    }
    try {
      var number = new BigDecimal(plain);
      int magnitude = number.precision() - number.scale();
      return Math.abs(magnitude) > LARGEST_EXPONENT ? Optional.empty() : Optional.of(number);
    } catch (NumberFormatException notANumber) {
      return Optional.empty();
    }
  }

  private static Optional<BigDecimal> scale(String unit, Dimension dimension) {
    if (unit.isEmpty()) {
      return Optional.of(BigDecimal.ONE);
    }
    Optional<BigDecimal> whole = unitScale(unit, dimension);
    if (whole.isPresent() || !dimension.takesPrefixes()) {
      return whole;
    }
    Integer power = PREFIXES.get(unit.charAt(0));
    if (power == null) {
      return Optional.empty();
    }
    String rest = unit.substring(1).strip();
    return (rest.isEmpty() ? Optional.of(BigDecimal.ONE) : unitScale(rest, dimension))
        .map(scale -> scale.scaleByPowerOfTen(power));
  }

  private static Optional<BigDecimal> unitScale(String unit, Dimension dimension) {
    BigDecimal exact = dimension.unit(unit);
    // A single letter in the other case is another unit, or a prefix.
    boolean anyCase = unit.length() != 1 || dimension == Dimension.CAPACITANCE;
    return Optional.ofNullable(exact == null && anyCase ? dimension.unitInAnyCase(unit) : exact);
  }

  /** The amount as a double, in the dimension's own unit. */
  public double asDouble() {
    return amount.doubleValue();
  }

  /** Whether the amount is exactly nothing. */
  public boolean isZero() {
    return amount.signum() == 0;
  }

  /** Whether both are the same amount of the same thing. */
  public boolean sameAs(Quantity other) {
    return dimension == other.dimension && amount.compareTo(other.amount) == 0;
  }

  /** Written out, since making a record's own at run time slows the start of a quick command. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Quantity that
        && dimension == that.dimension
        && amount.equals(that.amount);
  }

  @Override
  public int hashCode() {
    return 31 * amount.hashCode() + dimension.hashCode();
  }

  @Override
  public int compareTo(Quantity other) {
    int byDimension = dimension.compareTo(other.dimension);
    return byDimension != 0 ? byDimension : amount.compareTo(other.amount);
  }

  /** With at most {@code digits} significant figures, for example {@code 4.7 kΩ}. */
  public String rounded(int digits) {
    return new Quantity(amount.round(new MathContext(digits, RoundingMode.HALF_EVEN)), dimension)
        .toString();
  }

  /**
   * In engineering notation, exact: {@code 4.7 kΩ}, {@code 100 nF}, {@code 2.54 mm}. What this
   * writes, {@link #parse} reads back.
   */
  @Override
  public String toString() {
    return Engineering.text(amount, dimension);
  }
}
