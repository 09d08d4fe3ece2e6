package lowfirst.marking;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * Rated voltage of capacitors as a digit and a letter, EIA/JIS custom: {@code 1H} is 50 V.
 *
 * <p>Source: Panasonic "Aluminum Electrolytic Capacitors (Radial lead type), Explanation of part
 * numbers", and public tables for the values that it lacks. The digit is a power of ten; most
 * letters are a number of the R10 series, seven are not.
 */
final class VoltageCode {
  private static final Map<Character, String> LETTERS =
      Map.ofEntries(
          Map.entry('A', "1.0"),
          Map.entry('B', "1.25"),
          Map.entry('C', "1.6"),
          Map.entry('D', "2.0"),
          Map.entry('E', "2.5"),
          Map.entry('F', "3.15"),
          Map.entry('G', "4.0"),
          Map.entry('H', "5.0"),
          Map.entry('J', "6.3"),
          Map.entry('K', "8.0"),
          Map.entry('L', "5.5"),
          Map.entry('P', "2.2"),
          Map.entry('Q', "1.1"),
          Map.entry('T', "1.5"),
          Map.entry('V', "3.5"),
          Map.entry('W', "4.5"),
          Map.entry('Z', "1.8"));

  private VoltageCode() {}

  /** The voltage that two characters stand for, if they do. */
  static Optional<Quantity> of(String code) {
    if (code.length() != 2 || code.charAt(0) < '0' || code.charAt(0) > '3') {
      return Optional.empty();
    }
    return Optional.ofNullable(LETTERS.get(code.charAt(1)))
        .map(
            number ->
                new Quantity(
                    new BigDecimal(number).scaleByPowerOfTen(code.charAt(0) - '0'),
                    Dimension.VOLTAGE));
  }
}
