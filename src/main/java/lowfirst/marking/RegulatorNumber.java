package lowfirst.marking;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * The number of a fixed voltage regulator: 78 or 79, perhaps a letter for its current, and two
 * figures that are volts, from 30 on tenths of volts; 79 is negative (Texas Instruments SLVS056 and
 * SLVS058; 5.2 and 8.5 V: ST L7800 series, Rev. 12; 7.5 V: ST L78S, DocID2148 Rev. 8; 3.3 V: ST
 * L78L, DS0424 Rev. 28).
 *
 * @param volts the output voltage, negative of a 79
 * @param amperes what the letter says that it delivers: 0.1 A for L, 0.5 A for M
 * @param isListed whether one of these makers lists such a voltage
 */
public record RegulatorNumber(Quantity volts, Optional<Quantity> amperes, boolean isListed) {
  private static final Pattern SOMEWHERE =
      Pattern.compile("(?<!\\d)7([89])([LMST]?)(\\d\\d)(?!\\d)", Pattern.CASE_INSENSITIVE);
  private static final Pattern WHOLE =
      Pattern.compile("(?:L|LM|MC|UA|µA|KA|TL|NJM)?7([89])([LMST]?)(\\d\\d)(?:[A-Z][A-Z\\d]*)?");

  /** Nobody makes one of less than three volts, and 7800 names the whole family. */
  private static final int LEAST_VOLTS = 3;

  private static final int TENTHS_FROM = 30;

  private static final Set<String> LISTED =
      Set.of("05", "06", "08", "09", "10", "12", "15", "18", "24", "33", "52", "75", "85");

  /** The first such number in a text. */
  public static Optional<RegulatorNumber> in(String text) {
    Matcher match = SOMEWHERE.matcher(text);
    return match.find() ? read(match) : Optional.empty();
  }

  /** The number that a print is, with a maker's letters before it and a suffix behind. */
  static Optional<RegulatorNumber> of(String print) {
    Matcher match = WHOLE.matcher(print);
    return match.matches() ? read(match) : Optional.empty();
  }

  private static Optional<RegulatorNumber> read(Matcher match) {
    boolean isNegative = match.group(1).equals("9");
    int figures = Integer.parseInt(match.group(3));
    boolean isTenths = figures >= TENTHS_FROM;
    if (figures < LEAST_VOLTS || isTenths && isNegative) {
      return Optional.empty();
    }
    String volts = isTenths ? figures / 10 + "." + figures % 10 : Integer.toString(figures);
    return Optional.of(
        new RegulatorNumber(
            Quantity.of((isNegative ? "-" : "") + volts, Dimension.VOLTAGE),
            amperes(match.group(2)),
            LISTED.contains(match.group(3))));
  }

  private static Optional<Quantity> amperes(String letter) {
    return switch (letter) {
      case "L", "l" -> Optional.of(Quantity.of("0.1", Dimension.CURRENT));
      case "M", "m" -> Optional.of(Quantity.of("0.5", Dimension.CURRENT));
      default -> Optional.empty();
    };
  }
}
