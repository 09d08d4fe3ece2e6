package lowfirst.marking;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/** Prints on inductors: digit code in µH; R is the decimal mark of µH, N of nH. */
final class InductorPrint {
  private static final String LETTER = "([FGHJKMN]?)";
  private static final Pattern DIGITS = Pattern.compile("(\\d{3})\\s?" + LETTER);
  private static final Pattern MARKED = Pattern.compile("(\\d{0,3})([RN])(\\d{1,3})\\s?" + LETTER);
  private static final Pattern FULL =
      Pattern.compile("(\\d{1,4}(?:\\.\\d{1,3})?)\\s?([nuµm])H\\s?" + LETTER);

  private InductorPrint() {}

  static List<PrintedReading> readings(String print) {
    return PrintedReading.found(digits(print), marked(print), full(print));
  }

  private static Optional<PrintedReading> digits(String print) {
    Matcher match = DIGITS.matcher(print);
    return match.matches()
        ? DigitCode.read(match.group(1), Dimension.INDUCTANCE)
            .map(value -> of(value, match.group(2), "two figures and the number of zeros, in µH"))
        : Optional.empty();
  }

  private static Optional<PrintedReading> marked(String print) {
    Matcher match = MARKED.matcher(print);
    if (!match.matches()) {
      return Optional.empty();
    }
    boolean nano = match.group(2).equals("N");
    String whole = match.group(1).isEmpty() ? "0" : match.group(1);
    return Optional.of(
        of(
            scaled(whole + "." + match.group(3), nano ? -9 : -6),
            match.group(4),
            nano ? "N as the decimal mark of nH" : "R as the decimal mark of µH"));
  }

  private static Optional<PrintedReading> full(String print) {
    Matcher match = FULL.matcher(print);
    if (!match.matches()) {
      return Optional.empty();
    }
    int exponent =
        switch (match.group(2)) {
          case "n" -> -9;
          case "m" -> -3;
          default -> -6;
        };
    return Optional.of(of(scaled(match.group(1), exponent), match.group(3), "value in full"));
  }

  private static Quantity scaled(String number, int exponent) {
    return new Quantity(new BigDecimal(number).scaleByPowerOfTen(exponent), Dimension.INDUCTANCE);
  }

  private static PrintedReading of(Quantity value, String letter, String rule) {
    return PrintedReading.value(Carrier.INDUCTOR, value, ToleranceLetter.read(letter, value), rule);
  }
}
