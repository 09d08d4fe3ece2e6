package lowfirst.marking;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * A number with m and no unit, as parts lists have it: 100m is a resistor of milliohms (IEC 60062
 * has L there), an inductor of millihenries or a fuse of milliamperes; common practice. What it is
 * on a capacitor stands in {@link CapacitorPrint}.
 */
final class MilliPrint {
  private static final String RULE = "m for milli, its unit left out (common practice)";

  /** Rated currents in milliamperes of the sheets of IEC 60127-2: the series R10 of ISO 3. */
  private static final Set<String> RATED =
      Set.of(
          "32", "40", "50", "63", "80", "100", "125", "160", "200", "250", "315", "400", "500",
          "630", "800");

  private MilliPrint() {}

  static List<PrintedReading> readings(String print) {
    int m = print.indexOf('m');
    int behind = print.length() - m - 1;
    if (m < 1
        || m > 3
        || behind > 2
        || !areDigits(print, 0, m)
        || !areDigits(print, m + 1, print.length())) {
      return List.of();
    }
    var number = new BigDecimal(print.replace('m', '.') + "0").stripTrailingZeros();
    return PrintedReading.found(
        Optional.of(of(Carrier.RESISTOR, number, Dimension.RESISTANCE)),
        Optional.of(of(Carrier.FUSE, number, Dimension.CURRENT))
            .filter(fuse -> RATED.contains(number.toPlainString())),
        Optional.of(of(Carrier.INDUCTOR, number, Dimension.INDUCTANCE)));
  }

  private static boolean areDigits(String text, int from, int to) {
    for (int at = from; at < to; at++) {
      if (text.charAt(at) < '0' || text.charAt(at) > '9') {
        return false;
      }
    }
    return true;
  }

  private static PrintedReading of(Carrier on, BigDecimal number, Dimension dimension) {
    return PrintedReading.value(
        on, new Quantity(number.scaleByPowerOfTen(-3), dimension), Optional.empty(), RULE);
  }
}
