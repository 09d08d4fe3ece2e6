package lowfirst.marking;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * Prints on crystals: megahertz with three decimals or more, but 32.768 is kilohertz. Common
 * practice of makers; no standard was found that asks for it.
 */
final class FrequencyPrint {
  private static final Pattern PRINT =
      Pattern.compile("(?:([1-9]\\d?\\.\\d{3,6})|(\\d{1,5}(?:\\.\\d{1,6})?)\\s?([KkM])H[zZ])");
  private static final String OF_WATCHES = "32.768";

  private FrequencyPrint() {}

  static Optional<PrintedReading> of(String print) {
    Matcher match = PRINT.matcher(print);
    if (!match.matches()) {
      return Optional.empty();
    }
    boolean bare = match.group(1) != null;
    boolean mega = bare ? !print.equals(OF_WATCHES) : match.group(3).equals("M");
    Quantity hertz =
        Quantity.of(match.group(bare ? 1 : 2) + (mega ? "E6" : "E3"), Dimension.FREQUENCY);
    String rule = "three decimals: " + (mega ? "MHz" : "kHz") + " (common practice)";
    return Optional.of(
        PrintedReading.value(
            Carrier.CRYSTAL, hertz, Optional.empty(), bare ? rule : "value in full"));
  }
}
