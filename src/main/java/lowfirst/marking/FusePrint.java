package lowfirst.marking;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.marking.PrintedReading.Likelihood;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * Prints on miniature fuse-links: T500mAL250V. IEC 60127-1 clause 6.1 has the characteristic's
 * letters right before the rated current and that right before the rated voltage; the letters of
 * the breaking capacity between them are from memory of IEC 60127-2.
 */
final class FusePrint {
  private static final Pattern MARKED =
      Pattern.compile(
          "(FF|F|M|TT|T)\\s?(\\d{1,4}(?:\\.\\d{1,3})?)\\s?(m?A)\\s?([LEH]?)(?:\\s?(\\d{2,3})\\s?V)?");

  /** Without a letter for its speed, as on fuses of UL 248-14 and in lists: common practice. */
  private static final Pattern CURRENT =
      Pattern.compile("(\\d{1,2}(?:\\.\\d{1,2})?\\s?A|\\d{2,3}\\s?mA)(?:\\s?(\\d{2,3})\\s?V)?");

  private static final Map<String, String> SPEEDS =
      Map.of(
          "FF", "very quick-acting",
          "F", "quick-acting",
          "M", "medium time-lag",
          "T", "time-lag (slow)",
          "TT", "long time-lag (very slow)");

  private static final Map<String, String> BREAKING =
      Map.of(
          "L", "; low breaking capacity",
          "E", "; enhanced breaking capacity",
          "H", "; high breaking capacity");

  private FusePrint() {}

  static Optional<PrintedReading> of(String print) {
    Matcher match = MARKED.matcher(print);
    if (!match.matches()) {
      return unlettered(print);
    }
    return Optional.of(
        new PrintedReading(
            Carrier.FUSE,
            Quantity.parse(match.group(2) + match.group(3), Dimension.CURRENT).value(),
            Optional.empty(),
            Optional.ofNullable(match.group(5)).map(volts -> Quantity.of(volts, Dimension.VOLTAGE)),
            SPEEDS.get(match.group(1)) + BREAKING.getOrDefault(match.group(4), ""),
            "marking of fuse-links (IEC 60127-1)",
            Likelihood.USUAL));
  }

  private static Optional<PrintedReading> unlettered(String print) {
    Matcher match = CURRENT.matcher(print);
    return match.matches()
        ? Quantity.parse(match.group(1), Dimension.CURRENT)
            .value()
            .map(
                amperes ->
                    PrintedReading.value(
                            Carrier.FUSE,
                            amperes,
                            Optional.empty(),
                            "rated current; no letter tells how fast (common practice)")
                        .rated(
                            Optional.ofNullable(match.group(2))
                                .map(volts -> Quantity.of(volts, Dimension.VOLTAGE))))
        : Optional.empty();
  }
}
