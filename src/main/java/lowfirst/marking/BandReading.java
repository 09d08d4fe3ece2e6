package lowfirst.marking;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/**
 * One legal reading of a row of bands.
 *
 * @param layout what each place stands for
 * @param direction from which end it was read
 * @param figures the digits as one number: two or three figures, 0 for a link
 * @param exponent the power of ten that multiplies them, in the dimension's own unit
 * @param tolerance absent for a link only
 * @param ppmPerKelvin temperature coefficient, 10⁻⁶ per kelvin, where there is a band for it
 * @param extra what a special band says; empty when there is none
 */
public record BandReading(
    Layout layout,
    Direction direction,
    int figures,
    int exponent,
    Optional<Tolerance> tolerance,
    OptionalInt ppmPerKelvin,
    String extra) {

  /** From which end the bands were read. */
  public enum Direction {
    AS_GIVEN,
    FROM_THE_OTHER_END
  }

  /** Ordinary resistors run from 0.1 Ω to 22 MΩ; high-voltage ones to 68 MΩ (Vishay 28907). */
  private static final double LEAST_ORDINARY_OHM = 0.1;

  private static final double MOST_ORDINARY_OHM = 22e6;
  private static final double MOST_HIGH_VOLTAGE_OHM = 68e6;

  /** Ordinary moulded inductors run from 0.1 µH to 100 mH (common practice). */
  private static final double LEAST_ORDINARY_HENRY = 0.1e-6;

  private static final double MOST_ORDINARY_HENRY = 0.1;

  private static final double[] POWERS = new double[40];

  static {
    for (int i = 0; i < POWERS.length; i++) {
      POWERS[i] = Double.parseDouble("1e" + (i - 20));
    }
  }

  /** What the bands say the value is: a resistance or an inductance. */
  public Quantity value() {
    return new Quantity(BigDecimal.valueOf(figures, -exponent), dimension());
  }

  /** The tolerance and value are the same in both. */
  public boolean meansTheSameAs(BandReading other) {
    return sameValueAs(other) && tolerance.equals(other.tolerance);
  }

  /** Whether both say the same value, whatever the tolerance. */
  boolean sameValueAs(BandReading other) {
    if (dimension() != other.dimension()) {
      return false;
    }
    return figures == other.figures && exponent == other.exponent
        || figures == 10 * other.figures && exponent == other.exponent - 1
        || 10 * figures == other.figures && exponent - 1 == other.exponent;
  }

  private Dimension dimension() {
    return isInductor() ? Dimension.INDUCTANCE : Dimension.RESISTANCE;
  }

  private boolean isInductor() {
    return switch (layout) {
      case INDUCTOR_THREE, INDUCTOR_FOUR, INDUCTOR_MILITARY -> true;
      case LINK,
          THREE,
          FOUR,
          FIVE,
          SIX,
          FOUR_AND_SPECIAL,
          FOUR_AND_FAILURE_RATE,
          FOUR_HIGH_VOLTAGE ->
          false;
    };
  }

  /**
   * Whether the figures are a preferred number in which parts of this tolerance are sold. Two
   * figures are a number of E24.
   */
  public boolean isPreferred() {
    if (figures < 100) {
      return figures == 0 || Series.E24.containsFigures(10 * figures);
    }
    return tolerance.isPresent() && Series.sold(figures, tolerance.get());
  }

  /** Whether the value lies in the range that shops sell. */
  public boolean isOrdinary() {
    double value = figures * POWERS[exponent + 20];
    if (figures == 0) {
      return layout == Layout.LINK;
    }
    if (isInductor()) {
      return value >= LEAST_ORDINARY_HENRY && value <= MOST_ORDINARY_HENRY;
    }
    double most = layout == Layout.FOUR_HIGH_VOLTAGE ? MOST_HIGH_VOLTAGE_OHM : MOST_ORDINARY_OHM;
    return value >= LEAST_ORDINARY_OHM && value <= most;
  }

  /** Whether the tolerance is one that general-purpose parts have: 1 % or wider. */
  public boolean hasEverydayTolerance() {
    return tolerance.isEmpty() || tolerance.get().plus().compareTo(BigDecimal.ONE) >= 0;
  }

  /**
   * Whether two figures carry so narrow a tolerance: below ±2 % the code uses three (IEC 60062).
   */
  boolean hasTooFewFigures() {
    return layout == Layout.FOUR && !hasEverydayTolerance();
  }

  /** Whether nothing but its rarity speaks against it. */
  public boolean isPlausible() {
    return isPreferred() && isOrdinary() && !hasTooFewFigures();
  }

  /** Less is likelier: the order in which readings are named. */
  int unlikeliness() {
    return (isPlausible() ? 0 : 16)
        + (isOrdinary() ? 0 : 8)
        + (hasEverydayTolerance() ? 0 : 4)
        + (layout.isUnusual() ? 2 : 0)
        + (direction == Direction.AS_GIVEN ? 0 : 1);
  }
}
