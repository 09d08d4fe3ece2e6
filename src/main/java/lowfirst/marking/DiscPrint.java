package lowfirst.marking;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/**
 * Prints on discs that are no capacitors, with their width in millimetres: varistors (10D471K: the
 * voltage at 1 mA as digit code, with a tolerance letter) and thermistors against inrush (5D-9:
 * ohms when cold). Common practice of makers.
 */
final class DiscPrint {
  private static final Pattern VARISTOR = Pattern.compile("(\\d{2})D(\\d{2})(\\d)([KLM])");
  private static final Pattern THERMISTOR =
      Pattern.compile("(?:NTC\\s?)?(\\d{1,3}(?:\\.\\d)?)D-?(\\d{1,2})");

  private DiscPrint() {}

  static List<PrintedReading> readings(String print) {
    return PrintedReading.found(varistor(print), thermistor(print));
  }

  private static Optional<PrintedReading> varistor(String print) {
    Matcher match = VARISTOR.matcher(print);
    if (!match.matches()) {
      return Optional.empty();
    }
    Quantity volts = Quantity.of(match.group(2) + "E" + match.group(3), Dimension.VOLTAGE);
    Optional<Tolerance> tolerance =
        ToleranceLetter.of(match.group(4).charAt(0)).map(ToleranceLetter::percent);
    return Optional.of(
        PrintedReading.value(
                Carrier.VARISTOR, volts, tolerance, "width, volts at 1 mA (common practice)")
            .saying(wide(match.group(1))));
  }

  private static Optional<PrintedReading> thermistor(String print) {
    Matcher match = THERMISTOR.matcher(print);
    return match.matches()
        ? Optional.of(
            PrintedReading.value(
                    Carrier.THERMISTOR,
                    Quantity.of(match.group(1), Dimension.RESISTANCE),
                    Optional.empty(),
                    "ohms when cold, width (common practice)")
                .saying(wide(match.group(2))))
        : Optional.empty();
  }

  private static String wide(String millimetres) {
    return Integer.valueOf(millimetres) + " mm wide";
  }
}
