package lowfirst.intake.column;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/** The unit that a header carries: {@code X (mm)}, {@code Mid X [mil]}, {@code PosX_inch}. */
public final class HeaderUnit {
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

  /** The last word of a header, or what stands in brackets at its end. */
  private static final Pattern LAST =
      Pattern.compile(
          "^(.*?[^\\s_,(\\[{])(?:\\s+in)?"
              + "(?:[\\s_,]*[(\\[{]\\s*([^()\\[\\]{}]+?)\\s*[)\\]}]|[\\s_,]+([^\\s_,()\\[\\]{}]+))$");

  private HeaderUnit() {}

  /** The header without its unit; the header itself when it carries none. */
  public static String without(String header) {
    String text = header.strip();
    return parted(text).map(matcher -> matcher.group(1).strip()).orElse(text);
  }

  /** The unit, spelt as {@code Quantity} knows it. */
  public static Optional<String> of(String header) {
    return parted(header.strip()).map(matcher -> canonical(matcher.group(2)));
  }

  /** The header of a kit's own table without its unit, which may be one of any dimension. */
  static String withoutAny(String header) {
    String text = header.strip();
    return last(text)
        .filter(last -> areUnits(unit(last)))
        .map(last -> last.group(1).strip())
        .orElseGet(() -> without(text));
  }

  /** The unit that the header of an amount in a kit's own table carries, of whatever dimension. */
  public static Optional<String> ofAny(String header) {
    return last(header.strip()).map(HeaderUnit::unit).filter(HeaderUnit::areUnits);
  }

  private static Optional<Matcher> last(String text) {
    Matcher matcher = LAST.matcher(text);
    return text.length() <= LONGEST && matcher.matches() ? Optional.of(matcher) : Optional.empty();
  }

  private static String unit(Matcher last) {
    return last.group(2) == null ? last.group(3) : last.group(2);
  }

  /** Whether amounts are in it; a least one ("high level min") is taken for minutes nowhere. */
  private static boolean areUnits(String unit) {
    return !unit.equalsIgnoreCase("min")
        && !Character.isDigit(unit.charAt(0))
        && Arrays.stream(Dimension.values())
            .filter(dimension -> dimension != Dimension.RATIO)
            .anyMatch(dimension -> Quantity.parse("1 " + unit, dimension).isRead());
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
  public static String canonical(String unit) {
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
