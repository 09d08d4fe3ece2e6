package lowfirst.marking;

import java.math.BigDecimal;
import java.util.Optional;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * The letter-and-digit code of IEC 60062, clause 4: a letter stands for the decimal mark and the
 * power of ten. Capital K is kilo; m, which only capacitors and inductors use, is not M.
 */
public final class RkmCode {
  private static final String RESISTOR_LETTERS = "LRKMGT";
  private static final String CAPACITOR_LETTERS = "pnµmF";

  private RkmCode() {}

  /** The power of ten of a letter on this kind of value, if it is one of the code's. */
  static Optional<Integer> exponent(char letter, Dimension dimension) {
    if (dimension == Dimension.RESISTANCE) {
      int at = RESISTOR_LETTERS.indexOf(letter == 'k' ? 'K' : letter == 'r' ? 'R' : letter);
      return at < 0 ? Optional.empty() : Optional.of(3 * at - 3);
    }
    int at = CAPACITOR_LETTERS.indexOf(letter == 'u' || letter == 'μ' ? 'µ' : letter);
    return at < 0 ? Optional.empty() : Optional.of(3 * at - 12);
  }

  /**
   * Writes a resistance or capacitance: {@code 4K7}, {@code 470R}, {@code R47}, {@code 4n7}.
   * Refuses what needs more than four figures or a letter that the code lacks.
   */
  public static Reading<String> write(Quantity value) {
    boolean resistance = value.dimension() == Dimension.RESISTANCE;
    String letters = resistance ? RESISTOR_LETTERS : CAPACITOR_LETTERS;
    int lowest = resistance ? -3 : -12;
    if (value.isZero() && resistance) {
      return Reading.of("0R", "RKM code");
    }
    BigDecimal amount = value.amount();
    int magnitude = amount.precision() - amount.scale() - 1;
    // 0.33 pF is p33: below the lowest letter the code starts with that letter.
    int at = Math.max(0, Math.floorDiv(magnitude - lowest, 3));
    if (resistance && magnitude < 0 && amount.scale() <= 3) {
      at = 1;
    }
    boolean known =
        (resistance || value.dimension() == Dimension.CAPACITANCE)
            && amount.signum() > 0
            && amount.precision() <= 4
            && at < letters.length();
    if (!known) {
      return Reading.fault(
          "the letter code can't write " + value,
          "use a resistance or capacitance of up to four figures");
    }
    String plain = amount.scaleByPowerOfTen(-lowest - 3 * at).toPlainString();
    String letter = letters.substring(at, at + 1);
    int point = plain.indexOf('.');
    String code = point < 0 ? plain + letter : plain.replace(".", letter);
    return Reading.of(code.startsWith("0" + letter) ? code.substring(1) : code, "RKM code");
  }
}
