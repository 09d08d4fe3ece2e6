package lowfirst.marking;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.marking.PrintedReading.Likelihood;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/** Prints on capacitors: digit code in pF, RKM code, bare numbers; with letter and voltage. */
final class CapacitorPrint {
  private static final String LETTER = "([BCDFGHJKMNPQSTZ]?)";
  private static final String VOLTS = "(?:\\s?[/-]?\\s?(\\d{1,4})\\s?([Kk]?)[V+=-]?)?";

  /** A voltage code may stand before: 2A474J. */
  private static final Pattern DIGITS =
      Pattern.compile("([0-3][A-Z])?\\s?(\\d{3})" + "\\s?" + LETTER + VOLTS);

  private static final Pattern RKM =
      Pattern.compile("(\\d{0,4})([pnuµmF])(\\d{0,3})(F?)\\s?" + LETTER + VOLTS);
  private static final Pattern R_AS_POINT = Pattern.compile("(\\d{0,2})R(\\d{1,2})\\s?" + LETTER);
  private static final Pattern DECIMAL =
      Pattern.compile("(\\d{0,3}[.,]\\d{1,4})\\s?(?:[uµ]F?)?\\s?" + LETTER + VOLTS);
  private static final Pattern TWO_DIGITS = Pattern.compile("([1-9]\\d?)\\s?" + LETTER);

  /** What only the voltage beside it tells from a digit code: 10 16V, 470/25. */
  private static final Pattern WITH_VOLTS =
      Pattern.compile("([1-9]\\d{0,4})(?:\\s?/\\s?(\\d{1,3})\\s?V?|\\s(\\d{1,3})\\s?[V+])");

  private CapacitorPrint() {}

  static List<PrintedReading> readings(String print) {
    List<PrintedReading> codes =
        PrintedReading.found(
            digits(print),
            rkm(print),
            rAsPoint(print),
            decimal(print),
            withVolts(print),
            literal(print));
    return codes.isEmpty() ? PrintedReading.found(written(print)) : codes;
  }

  private static Optional<PrintedReading> digits(String print) {
    Matcher match = DIGITS.matcher(print);
    if (!match.matches()) {
      return Optional.empty();
    }
    Optional<Quantity> before = Optional.ofNullable(match.group(1)).flatMap(VoltageCode::of);
    boolean misread = match.group(1) != null && before.isEmpty();
    boolean twice = before.isPresent() && match.group(4) != null;
    boolean runOn = match.group(3).isEmpty() && match.group(4) != null && !print.contains(" ");
    if (misread || twice || runOn) {
      return Optional.empty();
    }
    return DigitCode.read(match.group(2), Dimension.CAPACITANCE)
        .map(
            value ->
                of(value, match.group(3), "two figures and the number of zeros, in pF")
                    .rated(before.or(() -> volts(match, 4))));
  }

  private static Optional<PrintedReading> rkm(String print) {
    Matcher match = RKM.matcher(print);
    if (!match.matches()
        || match.group(1).isEmpty() && match.group(3).isEmpty()
        || isRunOn(match, print)) {
      return Optional.empty();
    }
    return RkmCode.exponent(match.group(2).charAt(0), Dimension.CAPACITANCE)
        .map(exponent -> scaled(match.group(1), match.group(3), exponent))
        .map(value -> of(value, match.group(5), rule(match)).rated(volts(match, 6)))
        .map(reading -> isHuge(reading) ? reading.as(Likelihood.RARE) : reading);
  }

  /** Electrolytics with leads end about there, and larger ones say farads: common practice. */
  private static boolean isHuge(PrintedReading reading) {
    return reading.value().orElseThrow().asDouble() > 0.0475;
  }

  /** Nothing tells where the figures of the value end: 4n7100, or a type number such as 1n4007. */
  private static boolean isRunOn(Matcher match, String print) {
    return match.group(6) != null && Character.isDigit(print.charAt(match.start(6) - 1));
  }

  /** The letter code has its letter for the decimal mark; 470 µF is a value with its unit. */
  private static String rule(Matcher match) {
    boolean inFull = match.group(3).isEmpty() && !match.group(4).isEmpty();
    return inFull ? "value in full" : "RKM code (IEC 60062)";
  }

  private static Optional<PrintedReading> rAsPoint(String print) {
    Matcher match = R_AS_POINT.matcher(print);
    return match.matches()
        ? Optional.of(
            of(
                scaled(match.group(1), match.group(2), -12),
                match.group(3),
                "R as the decimal mark of pF"))
        : Optional.empty();
  }

  private static Optional<PrintedReading> decimal(String print) {
    Matcher match = DECIMAL.matcher(print);
    if (!match.matches()) {
      return Optional.empty();
    }
    var number = new BigDecimal(match.group(1).replace(',', '.'));
    PrintedReading reading =
        of(
                new Quantity(number.scaleByPowerOfTen(-6), Dimension.CAPACITANCE),
                match.group(2),
                "bare decimal number, in µF")
            .rated(volts(match, 3));
    boolean many = number.scale() >= 3 && number.compareTo(BigDecimal.ONE) >= 0;
    return Optional.of(many ? reading.as(Likelihood.RARE) : reading);
  }

  private static Optional<PrintedReading> withVolts(String print) {
    Matcher match = WITH_VOLTS.matcher(print);
    if (!match.matches()) {
      return Optional.empty();
    }
    String volts = match.group(2) == null ? match.group(3) : match.group(2);
    String rule = "bare number beside volts, in µF (common practice)";
    return Optional.of(of(scaled(match.group(1), "", -6), "", rule))
        .filter(PrintedReading::isEverydayValue)
        .map(reading -> reading.rated(Optional.of(Quantity.of(volts, Dimension.VOLTAGE))));
  }

  /** Bare 22 is 22 pF: from memory of makers' custom, so it is called rare. */
  private static Optional<PrintedReading> literal(String print) {
    Matcher match = TWO_DIGITS.matcher(print);
    return match.matches()
        ? Optional.of(
            of(scaled(match.group(1), "", -12), match.group(2), "bare number, in pF")
                .as(Likelihood.RARE))
        : Optional.empty();
  }

  /** An electrolytic capacitor prints its value in full. */
  private static Optional<PrintedReading> written(String print) {
    if (!print.matches("(?s).*\\d\\s?[uµnpm]F.*")) {
      return Optional.empty();
    }
    return WrittenValue.parse(print, Optional.of(Dimension.CAPACITANCE))
        .value()
        .map(
            written ->
                new PrintedReading(
                    Carrier.CAPACITOR,
                    Optional.of(written.value()),
                    written.tolerance(),
                    written.voltage(),
                    "",
                    "value in full",
                    Likelihood.USUAL));
  }

  private static PrintedReading of(Quantity value, String letter, String rule) {
    return PrintedReading.value(
        Carrier.CAPACITOR, value, ToleranceLetter.read(letter, value), rule);
  }

  private static Quantity scaled(String whole, String digits, int exponent) {
    String number = (whole.isEmpty() ? "0" : whole) + "." + (digits.isEmpty() ? "0" : digits);
    return new Quantity(new BigDecimal(number).scaleByPowerOfTen(exponent), Dimension.CAPACITANCE);
  }

  private static Optional<Quantity> volts(Matcher match, int group) {
    return Optional.ofNullable(match.group(group))
        .map(
            number ->
                new Quantity(
                    new BigDecimal(number)
                        .scaleByPowerOfTen(match.group(group + 1).isEmpty() ? 0 : 3),
                    Dimension.VOLTAGE));
  }
}
