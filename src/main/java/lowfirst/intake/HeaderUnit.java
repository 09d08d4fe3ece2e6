package lowfirst.intake;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The unit that a header carries: {@code X (mm)}, {@code Mid X [mil]}, {@code PosX_inch}. */
final class HeaderUnit {
  private static final List<String> UNITS =
      List.of(
          "mm",
          "millimeter",
          "millimeters",
          "millimetre",
          "millimetres",
          "mil",
          "mils",
          "mill",
          "thou",
          "inch",
          "inches",
          "in",
          "um",
          "µm",
          "μm",
          "micron",
          "microns",
          "nm",
          "cm",
          "мм",
          "\"",
          "\u2033",
          "deg",
          "degree",
          "degrees",
          "°",
          "%",
          "V",
          "A",
          "W",
          "Ω");

  private static final Pattern HEADER =
      Pattern.compile(
          "^(.*?)[\\s_,/-]*[(\\[{]?\\s*(" + String.join("|", UNITS) + ")\\s*[)\\]}]?$",
          Pattern.CASE_INSENSITIVE);

  /** A longer text is no header. */
  private static final int LONGEST = 80;

  private HeaderUnit() {}

  /** The header without its unit; the header itself when it carries none. */
  static String without(String header) {
    String text = header.strip();
    return parted(text).map(matcher -> matcher.group(1).strip()).orElse(text);
  }

  /** The unit, spelt as {@code Quantity} knows it. */
  static Optional<String> of(String header) {
    return parted(header.strip()).map(matcher -> canonical(matcher.group(2)));
  }

  private static Optional<Matcher> parted(String text) {
    if (text.length() > LONGEST || !mayEndInUnit(text)) {
      return Optional.empty();
    }
    Matcher matcher = HEADER.matcher(text);
    return matcher.matches() && isSetApart(matcher) ? Optional.of(matcher) : Optional.empty();
  }

  /** Spares most texts the pattern. */
  private static boolean mayEndInUnit(String text) {
    if (text.isEmpty() || ")]}".indexOf(text.charAt(text.length() - 1)) >= 0) {
      return true;
    }
    for (String unit : UNITS) {
      int from = text.length() - unit.length();
      if (text.regionMatches(true, from, unit, 0, unit.length())) {
        return true;
      }
    }
    return false;
  }

  /** One spelling for each unit. */
  static String canonical(String unit) {
    String lower = unit.toLowerCase(java.util.Locale.ROOT);
    return switch (lower) {
      case "millimeter", "millimeters", "millimetre", "millimetres", "мм" -> "mm";
      case "mils", "mill", "thou", "th" -> "mil";
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
