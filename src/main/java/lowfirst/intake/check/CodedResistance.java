package lowfirst.intake.check;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.quantity.Quantity;

/**
 * The resistance that a maker's number holds in a letter code (IEC 60062): the {@code 4K7} of
 * {@code XY-25J-52-4K7}. Makers put digits for the size, the tape or the tolerance right before and
 * behind it, so each way to part them is tried before a number is said to mean another resistance.
 *
 * @param number the whole number, in capitals
 */
record CodedResistance(String number) {
  /** A code that ends the number, but for letters that say how it is packed. */
  private static final Pattern CODE =
      Pattern.compile(
          "(?:^|(?<=[-_/ ])|(?<=[A-Z]))\\d{1,5}(?:[KM]\\d{0,3}|R\\d{1,3})(?=[A-Z]{0,2}(?:[-_/ ].*)?$)");

  private static final Pattern LETTER = Pattern.compile("(\\d{0,5})([RKM])(\\d{0,4})");

  /** A longer text is no number. */
  private static final int LONGEST = 40;

  /** The code in a maker's number; empty where none stands out. */
  static Optional<CodedResistance> in(String number) {
    var coded = new CodedResistance(number.toUpperCase(Locale.ROOT));
    return number.length() <= LONGEST && CODE.matcher(coded.number).find()
        ? Optional.of(coded)
        : Optional.empty();
  }

  /** Whether some reading of the number is this resistance. */
  boolean mayMean(Quantity resistance) {
    return isInLetters(resistance) || isInDigits(resistance);
  }

  private boolean isInLetters(Quantity resistance) {
    Matcher letter = LETTER.matcher(number);
    while (letter.find()) {
      int exponent = "R..K..M".indexOf(letter.group(2));
      String before = letter.group(1);
      String behind = letter.group(3);
      for (int from = 0; from <= before.length(); from++) {
        for (int to = 0; to <= behind.length(); to++) {
          String whole = before.substring(from);
          String part = behind.substring(0, to);
          if (!(whole + part).isEmpty()
              && is(resistance, "0" + whole + "." + part + "0", exponent)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** Two or three digits and how many noughts follow them. */
  private boolean isInDigits(Quantity resistance) {
    for (int at = 0; at + 2 < number.length(); at++) {
      for (int length = 3; length <= 4 && at + length <= number.length(); length++) {
        String code = number.substring(at, at + length);
        boolean means =
            code.chars().allMatch(Character::isDigit)
                && is(resistance, code.substring(0, length - 1), code.charAt(length - 1) - '0');
        if (means) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean is(Quantity resistance, String ohms, int exponent) {
    return resistance.amount().compareTo(new BigDecimal(ohms).scaleByPowerOfTen(exponent)) == 0;
  }
}
