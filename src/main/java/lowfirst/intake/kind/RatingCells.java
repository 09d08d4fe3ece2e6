package lowfirst.intake.kind;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.Normalizer;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.intake.column.PlainNumber;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/** Columns of their own for what a value is rated for: tolerance, voltage, power. */
public final class RatingCells {
  private static final Pattern PLUS = Pattern.compile("\\+\\s?(\\d{1,3}(?:\\.\\d{1,3})?)");
  private static final Pattern MINUS = Pattern.compile("[-−]\\s?(\\d{1,3}(?:\\.\\d{1,3})?)");

  /** 1/4, 1/4W, 1 1/2 W, and words after it. */
  private static final Pattern FRACTION =
      Pattern.compile(
          "(?i)(?:(\\d{1,2})\\s+)?(\\d)\\s*/\\s*([1-9]\\d?)\\s*(?:W|watts?)?(?:$|[,;(\\s].*)");

  /** 0.05 may be percent, or a spreadsheet's 5 %. */
  private static final Pattern BARE_SHARE = Pattern.compile("[±+]?0?[.,][0-2]\\d{0,3}");

  /** 275V X class, X2 275 VAC. */
  private static final Pattern VOLTS =
      Pattern.compile("(?iU)(?<![\\w.,])(\\d+(?:[.,]\\d+)?\\s?k?V)(?:[ -]?[AD]C)?(?!\\w)");

  private static final Pattern WATTS = Pattern.compile("(?iU)\\d\\s?m?W(?:atts?)?(?!\\w)");

  private static final Pattern MILLIWATTS = Pattern.compile(".*[\\s(\\[_,/]m[Ww][)\\]]?");

  /** A bare number above this may be milliwatts, and nobody knows. */
  private static final double MOST_BARE_WATTS = 20;

  private RatingCells() {}

  /** A tolerance in percent, with or without its sign. */
  static Optional<Tolerance> tolerance(String text) {
    if (BARE_SHARE.matcher(text).matches()) {
      return Optional.empty();
    }
    String percent = text.replaceAll("[±%\\s]|\\+/?-", "").replace(',', '.');
    return percent.matches("\\d{1,3}(\\.\\d{1,3})?")
        ? Optional.of(Tolerance.percent(percent))
        : unlike(text.replace(',', '.'));
  }

  /** Limits that differ: +80/-20 %, -20% +80%. */
  private static Optional<Tolerance> unlike(String text) {
    Matcher plus = PLUS.matcher(text);
    Matcher minus = MINUS.matcher(text);
    boolean both = text.length() < 40 && text.indexOf('%') > 0 && plus.find() && minus.find();
    return both ? Optional.of(Tolerance.percent(minus.group(1), plus.group(1))) : Optional.empty();
  }

  /** A voltage, which words about its kind or class may stand beside. */
  static Optional<Quantity> voltage(String text) {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    List<String> among =
        VOLTS.matcher(text).results().map(volts -> volts.group(1)).distinct().toList();
    return Quantity.parse(among.size() == 1 ? among.get(0) : text, Dimension.VOLTAGE).value();
  }

  /** The text of a rating, with the milliwatts or the percent that only its header states. */
  public static String withUnit(String text, String header) {
    if (!PlainNumber.isBare(text)) {
      return text;
    }
    return header.indexOf('%') >= 0
        ? text + " %"
        : MILLIWATTS.matcher(header).matches() ? text + " mW" : text;
  }

  /** A power in watts, of which resistors often have a fraction; empty where it may be another. */
  static Optional<Quantity> power(String text) {
    if (text.isEmpty() || text.length() > 60) {
      return Optional.empty();
    }
    String plain = plain(text);
    Matcher fraction = FRACTION.matcher(plain);
    if (fraction.matches()) {
      String whole = fraction.group(1) == null ? "0" : fraction.group(1);
      BigDecimal part =
          new BigDecimal(fraction.group(2))
              .divide(new BigDecimal(fraction.group(3)), MathContext.DECIMAL32);
      return Optional.of(new Quantity(new BigDecimal(whole).add(part), Dimension.POWER));
    }
    boolean bare = PlainNumber.isBare(plain);
    return Quantity.parse(plain, Dimension.POWER)
        .value()
        .filter(power -> !bare || power.asDouble() <= MOST_BARE_WATTS);
  }

  /** One column for both, as "Power/Voltage": the unit tells which a cell holds. */
  static Optional<Quantity> powerAmongVoltages(String text) {
    return WATTS.matcher(text).find() ? power(text) : Optional.empty();
  }

  /** The same of a column for powers. */
  static Optional<Quantity> voltageAmongPowers(String text) {
    return VOLTS.matcher(text).find() ? voltage(text) : Optional.empty();
  }

  /** ¼ as 1/4, and 1½ as 1 1/2 (compatibility decomposition of Unicode). */
  private static String plain(String text) {
    for (int at = 0; at < text.length(); at++) {
      if (text.charAt(at) > 127) {
        return Normalizer.normalize(
                text.replaceAll("(?<=\\d)(?=[\u00bc-\u00be\u2150-\u215e])", " "),
                Normalizer.Form.NFKC)
            .replace('\u2044', '/')
            .strip();
      }
    }
    return text;
  }
}
