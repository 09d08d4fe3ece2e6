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
import lowfirst.quantity.Tolerance;

/** Prints on resistors: RKM code, digit code, and the three-character code of small chips. */
final class ResistorPrint {
  private static final String LETTER = "([BCDFGHJKMNELPW]?)";

  /** A cement resistor prints its power first: 5W10RJ. */
  private static final Pattern POWER = Pattern.compile("(\\d{1,2})\\s?W\\s?(.+)");

  private static final Pattern RKM =
      Pattern.compile("(\\d{0,4})([RrKkMGTLEΩ])(\\d{0,4})\\s?" + LETTER);
  private static final Pattern DIGITS = Pattern.compile("(\\d{3,4})\\s?([BCDFGHJ]?)");
  private static final Pattern LINK = Pattern.compile("0{1,4}");
  private static final Pattern TENTHS = Pattern.compile("(\\d{2})G");
  private static final Pattern THREE_CHARACTERS = Pattern.compile("(\\d\\d)([A-FHRSXYZ])");

  /** Powers of ten of the three-character code, IEC 60062:2016 Annex A. */
  private static final String MULTIPLIERS = "Z-3 Y-2 R-2 X-1 S-1 A0 B1 H1 C2 D3 E4 F5";

  private ResistorPrint() {}

  static List<PrintedReading> readings(String print) {
    Matcher power = POWER.matcher(print);
    if (!power.matches()) {
      return readingsOf(print);
    }
    String watts = power.group(1) + " W";
    return readingsOf(power.group(2)).stream().map(reading -> reading.saying(watts)).toList();
  }

  private static List<PrintedReading> readingsOf(String code) {
    return PrintedReading.found(rkm(code), digits(code), tenths(code), threeCharacters(code));
  }

  private static Optional<PrintedReading> rkm(String code) {
    Matcher match = RKM.matcher(code);
    if (!match.matches() || match.group(1).isEmpty() && match.group(3).isEmpty()) {
      return Optional.empty();
    }
    char letter = match.group(2).charAt(0);
    int exponent = RkmCode.exponent(letter, Dimension.RESISTANCE).orElse(0);
    String whole = match.group(1).isEmpty() ? "0" : match.group(1);
    String digits = match.group(3).isEmpty() ? "0" : match.group(3);
    var value =
        new Quantity(
            new BigDecimal(whole + "." + digits).scaleByPowerOfTen(exponent), Dimension.RESISTANCE);
    String rule = letter == 'E' ? "E for ohms, an older custom" : "RKM code (IEC 60062)";
    var reading =
        PrintedReading.value(
            Carrier.RESISTOR, value, ToleranceLetter.read(match.group(4), value), rule);
    boolean rare = "GTLE".indexOf(letter) >= 0;
    return Optional.of(rare ? reading.as(Likelihood.RARE) : reading);
  }

  private static Optional<PrintedReading> digits(String code) {
    if (LINK.matcher(code).matches()) {
      var link = Quantity.of("0", Dimension.RESISTANCE);
      return Optional.of(
          PrintedReading.value(Carrier.RESISTOR, link, Optional.empty(), "zeros: 0 Ω link"));
    }
    Matcher match = DIGITS.matcher(code);
    if (!match.matches()) {
      return Optional.empty();
    }
    String figures = match.group(1).length() == 3 ? "two" : "three";
    String rule = figures + " figures and the number of zeros, in Ω";
    return DigitCode.read(match.group(1), Dimension.RESISTANCE)
        .map(
            value ->
                PrintedReading.value(
                    Carrier.RESISTOR, value, ToleranceLetter.read(match.group(2), value), rule));
  }

  private static Optional<PrintedReading> tenths(String code) {
    Matcher match = TENTHS.matcher(code);
    return match.matches()
        ? Optional.of(
            PrintedReading.value(
                    Carrier.RESISTOR,
                    new Quantity(
                        new BigDecimal(match.group(1)).scaleByPowerOfTen(-1), Dimension.RESISTANCE),
                    Optional.empty(),
                    "G as ×0.1, on old moulded parts")
                .as(Likelihood.RARE))
        : Optional.empty();
  }

  private static Optional<PrintedReading> threeCharacters(String code) {
    Matcher match = THREE_CHARACTERS.matcher(code);
    int at = match.matches() ? MULTIPLIERS.indexOf(match.group(2)) : -1;
    if (at < 0) {
      return Optional.empty();
    }
    int index = Integer.parseInt(match.group(1));
    if (index < 1 || index > 96) {
      return Optional.empty();
    }
    int end = MULTIPLIERS.indexOf(' ', at);
    int exponent =
        Integer.parseInt(MULTIPLIERS.substring(at + 1, end < 0 ? MULTIPLIERS.length() : end));
    BigDecimal figures = BigDecimal.valueOf(Series.E96.members().get(index - 1));
    return Optional.of(
        PrintedReading.value(
                Carrier.RESISTOR,
                new Quantity(figures.scaleByPowerOfTen(exponent), Dimension.RESISTANCE),
                Optional.of(Tolerance.percent("1")),
                "three-character code (IEC 60062:2016, Annex A)")
            .as(Likelihood.NOT_THROUGH_HOLE));
  }
}
