package lowfirst.marking;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.quantity.Dimension;

/**
 * Prints on resistor networks in a row of pins: pins, circuit, value ({@code 4606X-101-222}, and
 * short {@code 6X-1-222}). The 101 is the circuit, not 100 Ω. Source: Bourns 4600X series sheet.
 */
final class NetworkPrint {
  private static final Pattern PRINT =
      Pattern.compile("(?:46)?0?(\\d{1,2})[XMH]-(?:10)?([124])-(\\d{3})(?:LF)?");

  private NetworkPrint() {}

  static List<PrintedReading> readings(String print) {
    Matcher match = PRINT.matcher(print);
    if (!match.matches()) {
      return List.of();
    }
    String circuit =
        switch (match.group(2)) {
          case "1" -> "all resistors on one common pin";
          case "2" -> "separate resistors";
          default -> "two resistors at each pin, to two rails";
        };
    String words = match.group(1) + " pins, " + circuit;
    return DigitCode.read(match.group(3), Dimension.RESISTANCE).stream()
        .map(
            value ->
                PrintedReading.value(
                        Carrier.RESISTOR_NETWORK,
                        value,
                        java.util.Optional.empty(),
                        "pins, circuit, digit code in Ω")
                    .saying(words))
        .toList();
  }
}
