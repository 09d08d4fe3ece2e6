package lowfirst.marking;

import java.math.BigDecimal;
import java.util.Optional;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * Two or three figures and the number of zeros, in ohms, picofarads or microhenries: {@code 104},
 * {@code 1001}. On capacitors a last 8 or 9 is ×0.01 or ×0.1 (479 is 4.7 pF).
 */
public final class DigitCode {
  private DigitCode() {}

  /** The value that three or four digits stand for, if they do. */
  public static Optional<Quantity> read(String digits, Dimension dimension) {
    if (digits.length() < 3
        || digits.length() > 4
        || digits.charAt(0) < '1'
        || !digits.chars().allMatch(c -> c >= '0' && c <= '9')) {
      return Optional.empty();
    }
    int zeros = digits.charAt(digits.length() - 1) - '0';
    if (dimension == Dimension.CAPACITANCE) {
      if (zeros == 7) {
        return Optional.empty();
      }
      zeros = zeros > 7 ? zeros - 10 : zeros;
    }
    var figures = new BigDecimal(digits.substring(0, digits.length() - 1));
    return Optional.of(new Quantity(figures.scaleByPowerOfTen(zeros + unit(dimension)), dimension));
  }

  /** The three-digit code of a value of one or two figures, if it has one. */
  public static Optional<String> write(Quantity value) {
    BigDecimal units = value.amount().scaleByPowerOfTen(-unit(value.dimension()));
    int zeros = units.precision() - units.scale() - 2;
    if (units.signum() <= 0 || units.precision() > 2 || zeros < -2 || zeros > 6) {
      return Optional.empty();
    }
    if (zeros < 0 && value.dimension() != Dimension.CAPACITANCE) {
      return Optional.empty();
    }
    return Optional.of(
        units.scaleByPowerOfTen(-zeros).toBigIntegerExact().toString() + (zeros + 10) % 10);
  }

  private static int unit(Dimension dimension) {
    return switch (dimension) {
      case CAPACITANCE -> -12;
      case INDUCTANCE -> -6;
      default -> 0;
    };
  }
}
