package lowfirst.marking;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.quantity.Dimension;

/**
 * Prints on resistor networks in a row of pins: pins, circuit, value ({@code 4606X-101-222}, and
 * short {@code 6X-1-222}). The 101 is the circuit, not 100 Ω. Source: Bourns 4600X series sheet.
 * The letters A and B for the circuit are common practice.
 */
final class NetworkPrint {
  /** The circuit's letter and perhaps the pins before the digit code: 9A103J. */
  private static final Pattern LETTERED = Pattern.compile("([4-9]|1\\d)?([AB])(\\d{3})([FGJ]?)");

  private static final Pattern PRINT =
      Pattern.compile("(?:46)?0?(\\d{1,2})[XMH]-(?:10)?([124])-(\\d{3})(?:LF)?");

  private NetworkPrint() {}

  static List<PrintedReading> readings(String print) {
    Matcher match = PRINT.matcher(print);
    if (!match.matches()) {
      return lettered(print).stream().toList();
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
                        Optional.empty(),
                        "pins, circuit, digit code in Ω")
                    .saying(words))
        .toList();
  }

  private static Optional<PrintedReading> lettered(String print) {
    Matcher match = LETTERED.matcher(print);
    if (!match.matches()) {
      return Optional.empty();
    }
    String pins = match.group(1) == null ? "" : match.group(1) + " pins, ";
    String circuit =
        match.group(2).equals("A") ? "all resistors on one common pin" : "separate resistors";
    return DigitCode.read(match.group(3), Dimension.RESISTANCE)
        .map(
            value ->
                PrintedReading.value(
                        Carrier.RESISTOR_NETWORK,
                        value,
                        ToleranceLetter.read(match.group(4), value),
                        "circuit, digit code in Ω (common practice)")
                    .saying(pins + circuit));
  }
}
