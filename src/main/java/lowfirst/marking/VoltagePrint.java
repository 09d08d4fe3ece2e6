package lowfirst.marking;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/**
 * Prints that say a voltage: Zener diodes by the type designation of Pro Electron (tolerance
 * letter, V as the decimal mark), and fixed regulators by their {@link RegulatorNumber}.
 */
final class VoltagePrint {
  /** The letter and a whole number of volts need the family before them; 5V6 stands alone. */
  private static final Pattern ZENER =
      Pattern.compile(
          "(?:BZ[A-Z]\\d{2}[- ]?([A-E]?)(\\d{1,3})(?:V(\\d{0,2}))?|([A-E]?)(\\d{1,2})V(\\d{1,2}))");

  /**
   * Tolerance letters of voltage regulator diodes, in per cent; published tables of Pro Electron.
   */
  private static final Map<String, String> PERCENT =
      Map.of("A", "1", "B", "2", "C", "5", "D", "10", "E", "15");

  private VoltagePrint() {}

  static List<PrintedReading> readings(String print) {
    return PrintedReading.found(zener(print), regulator(print));
  }

  private static Optional<PrintedReading> zener(String print) {
    Matcher match = ZENER.matcher(print);
    if (!match.matches()) {
      return Optional.empty();
    }
    int from = match.group(2) != null ? 1 : 4;
    String tenths = match.group(from + 2);
    String volts = match.group(from + 1) + (tenths == null || tenths.isEmpty() ? "" : "." + tenths);
    return Optional.of(
        PrintedReading.value(
            Carrier.ZENER_DIODE,
            Quantity.of(volts, Dimension.VOLTAGE),
            Optional.ofNullable(PERCENT.get(match.group(from))).map(Tolerance::percent),
            "type designation (Pro Electron)"));
  }

  private static Optional<PrintedReading> regulator(String print) {
    // Most prints need not wait for its patterns to be compiled.
    if (!print.contains("78") && !print.contains("79")) {
      return Optional.empty();
    }
    return RegulatorNumber.of(print)
        .filter(RegulatorNumber::isListed)
        .map(
            number ->
                PrintedReading.value(
                    Carrier.REGULATOR, number.volts(), Optional.empty(), rule(number)));
  }

  private static String rule(RegulatorNumber number) {
    return number.volts().toString().contains(".")
        ? "type number: the last two figures are tenths of volts"
        : "type number: the last two figures are volts";
  }
}
