package lowfirst.marking;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.quantity.Dimension;

/**
 * Prints on resistors that turn. Of trimmers the style's letter stands before the digit code, by
 * itself or in the whole type number (Bourns 3296 sheet). Of potentiometers a letter tells the
 * taper, and makers disagree on which (a dealer's table of codes, support.banzaimusic.com).
 */
final class AdjustablePrint {
  private static final Pattern TRIMMER =
      Pattern.compile("(?:3[0-9]{3}[A-Z]-\\d-|[FPWXYZ])(\\d{3})(?:LF)?");
  private static final Pattern POTENTIOMETER =
      Pattern.compile("(?:([ABC])\\s?(\\d{1,3}[KM]\\d?)|(\\d{1,3}[KM]\\d?)\\s?([ABC]))");

  private static final Map<String, String> TAPERS =
      Map.of(
          "A", "A: logarithmic, on older European parts linear",
          "B", "B: linear, on older European parts logarithmic",
          "C", "C: reverse logarithmic");

  private AdjustablePrint() {}

  static List<PrintedReading> readings(String print) {
    return PrintedReading.found(trimmer(print), potentiometer(print));
  }

  private static Optional<PrintedReading> trimmer(String print) {
    Matcher match = TRIMMER.matcher(print);
    return match.matches()
        ? DigitCode.read(match.group(1), Dimension.RESISTANCE)
            .map(
                value ->
                    PrintedReading.value(
                        Carrier.TRIMMER, value, Optional.empty(), "style, digit code in Ω"))
        : Optional.empty();
  }

  private static Optional<PrintedReading> potentiometer(String print) {
    Matcher match = POTENTIOMETER.matcher(print);
    if (!match.matches()) {
      return Optional.empty();
    }
    boolean before = match.group(1) != null;
    return WrittenValue.parse(match.group(before ? 2 : 3), Optional.of(Dimension.RESISTANCE))
        .value()
        .map(
            written ->
                PrintedReading.value(
                        Carrier.POTENTIOMETER,
                        written.value(),
                        Optional.empty(),
                        "taper and value; measure from the middle to see which")
                    .saying(TAPERS.get(match.group(before ? 1 : 4))));
  }
}
