package lowfirst.intake;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The unit that a header carries: {@code X (mm)}, {@code Mid X [mil]}, {@code PosX_inch}. */
final class HeaderUnit {
  private static final Pattern UNIT =
      Pattern.compile(
          "^(.*?)[\\s_,/-]*[(\\[{]?\\s*"
              + "(mm|millimeters?|millimetres?|mils?|thou|inch|inches|in|um|µm|μm|microns?|nm|cm|мм|[\"\u2033]|deg|degrees?|°|%|V|A|W|Ω)"
              + "\\s*[)\\]}]?$",
          Pattern.CASE_INSENSITIVE);

  /** A longer text is no header. */
  private static final int LONGEST = 80;

  private HeaderUnit() {}

  /** The header without its unit; the header itself when it carries none. */
  static String without(String header) {
    if (header.length() > LONGEST) {
      return header;
    }
    Matcher matcher = UNIT.matcher(header.strip());
    return matcher.matches() && isSetApart(matcher) ? matcher.group(1).strip() : header.strip();
  }

  /** The unit, spelt as {@code Quantity} knows it. */
  static Optional<String> of(String header) {
    if (header.length() > LONGEST) {
      return Optional.empty();
    }
    Matcher matcher = UNIT.matcher(header.strip());
    return matcher.matches() && isSetApart(matcher)
        ? Optional.of(canonical(matcher.group(2)))
        : Optional.empty();
  }

  /** One spelling for each unit. */
  static String canonical(String unit) {
    String lower = unit.toLowerCase(java.util.Locale.ROOT);
    return switch (lower) {
      case "millimeter", "millimeters", "millimetre", "millimetres", "мм" -> "mm";
      case "mils", "thou" -> "mil";
      case "in", "inches", "\"", "\u2033" -> "inch";
      case "um", "μm", "micron", "microns" -> "µm";
      case "deg", "degree", "degrees" -> "°";
      default -> unit.length() == 1 ? unit : lower;
    };
  }

  /**
   * "Origin" does not end in inches: a unit follows a blank, a bracket or such, or is all there.
   */
  private static boolean isSetApart(Matcher matcher) {
    int end = matcher.end(1);
    return end > 0 && (end < matcher.start(2) || matcher.group(1).matches("(?i)[xy]"));
  }
}
