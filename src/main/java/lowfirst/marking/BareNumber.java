package lowfirst.marking;

import java.math.BigDecimal;
import java.util.Optional;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * A number without letter or unit, of which only the kind of part tells what it counts; and where
 * it could be a digit code as well (two figures and the number of zeros), it is not guessed.
 */
final class BareNumber {
  private static final int PICO = -12;
  private static final int MICRO = -6;

  private BareNumber() {}

  /**
   * Reads it.
   *
   * @param number digits, perhaps with a point
   */
  static Reading<Quantity> read(String number, Dimension dimension) {
    return switch (dimension) {
      case RESISTANCE -> ohms(number);
      case CAPACITANCE -> farads(number);
      default -> ambiguous(number, "it has no unit", "write it with a unit, such as 100 µH");
    };
  }

  private static Reading<Quantity> ohms(String number) {
    Quantity literal = Quantity.of(number, Dimension.RESISTANCE);
    Optional<Quantity> coded = digitCode(number, Dimension.RESISTANCE, 0);
    if (coded.isPresent() && !number.endsWith("0") && !Series.E24.contains(literal)) {
      return ambiguous(
          number,
          "it can be " + literal + " or, as a digit code, " + coded.get(),
          "write it as " + number + "R or as " + coded.get());
    }
    return Reading.of(literal, "bare number, read as ohms");
  }

  private static Reading<Quantity> farads(String number) {
    if (number.indexOf('.') >= 0) {
      return Reading.of(
          new Quantity(new BigDecimal(number).scaleByPowerOfTen(MICRO), Dimension.CAPACITANCE),
          "bare decimal number, read as µF");
    }
    Quantity literal =
        new Quantity(new BigDecimal(number).scaleByPowerOfTen(PICO), Dimension.CAPACITANCE);
    if (number.length() <= 2) {
      return ambiguous(
          number, "it can be pF or µF", "write it with a unit, such as " + number + "p");
    }
    Optional<Quantity> coded = digitCode(number, Dimension.CAPACITANCE, PICO);
    if (coded.isPresent() && !number.endsWith("0")) {
      return Reading.of(coded.get(), "digit code in pF");
    }
    return ambiguous(
        number,
        "it can be " + literal + coded.map(code -> " or, as a digit code, " + code).orElse(""),
        "write it with a unit, such as " + number + "p");
  }

  /** Two figures and the number of zeros, where the figures are a preferred number. */
  private static Optional<Quantity> digitCode(String number, Dimension dimension, int exponent) {
    if (!number.matches("[1-9]\\d\\d")) {
      return Optional.empty();
    }
    int last = number.charAt(2) - '0';
    int zeros = dimension == Dimension.CAPACITANCE && last >= 8 ? last - 10 : last;
    BigDecimal figures = new BigDecimal(number.substring(0, 2));
    var value = new Quantity(figures.scaleByPowerOfTen(zeros + exponent), dimension);
    return Series.E24.contains(value) ? Optional.of(value) : Optional.empty();
  }

  private static Reading<Quantity> ambiguous(String number, String why, String remedy) {
    return Reading.fault("\"" + number + "\" is not clear: " + why, remedy);
  }
}
