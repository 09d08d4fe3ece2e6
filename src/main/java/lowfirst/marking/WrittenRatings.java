package lowfirst.marking;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/**
 * The ratings that people write beside a value, taken out of the text: tolerance, voltage, power.
 * What is left holds the value.
 */
final class WrittenRatings {
  private static final String NUMBER = "(\\d+(?:[.,]\\d+)?|\\.\\d+)";
  private static final String NOT_INSIDE_A_NUMBER = "(?<![\\d.])(?<!\\d,)(?<!\\d\\p{L})";
  private static final String WORD_ENDS = "(?![\\p{L}\\d])";

  private static final Pattern UNEQUAL =
      Pattern.compile(
          "[-−]\\s*"
              + NUMBER
              + "\\s*%?\\s*/?\\s*\\+\\s*"
              + NUMBER
              + "\\s*%"
              + "|\\+\\s*"
              + NUMBER
              + "\\s*%?\\s*/?\\s*[-−]\\s*"
              + NUMBER
              + "\\s*%");
  private static final Pattern PERCENT =
      Pattern.compile("(?:±|\\+\\s*/?\\s*[-−])?\\s*" + NOT_INSIDE_A_NUMBER + NUMBER + "\\s*%");
  private static final Pattern PICOFARAD =
      Pattern.compile(
          "(?:±|\\+\\s*/?\\s*[-−])\\s*" + NUMBER + "\\s*pF" + WORD_ENDS, Pattern.CASE_INSENSITIVE);
  private static final Pattern FRACTION_OF_A_WATT =
      Pattern.compile(
          NOT_INSIDE_A_NUMBER + "(\\d)\\s*/\\s*(\\d{1,2})\\s*(?:W|watts?)" + WORD_ENDS,
          Pattern.CASE_INSENSITIVE);

  /** R0805W and 2512W are sizes of bodies, or series; no part on a board takes a kilowatt. */
  private static final String NO_SIZE = "(?!\\d{4}|0\\d)";

  private static final Pattern WATT =
      Pattern.compile(
          NOT_INSIDE_A_NUMBER + NO_SIZE + NUMBER + "\\s*(m?)\\s*(?:W|watts?)" + WORD_ENDS,
          Pattern.CASE_INSENSITIVE);

  /** What a circuit has there, which is no rating of the part: 12 V input, 5V rail. */
  private static final String NO_PLACE =
      "(?!\\s*[-–]?\\s*(?:(?:power|main|logic|motor|dc)[- ]?)?(?:input|output|(?:in|out)(?=\\s*(?:$|[,;)]))|rails?|suppl(?:y|ies)"
          + "|bus|eing(?:a|ä)ng\\w*|ausg(?:a|ä)ng\\w*|versorgung\\w*|schiene|entr(?:é|e)e"
          + "|sortie|alimentation|entrada|salida|alimentaci(?:ó|o)n|sa(?:í|i)da|ingresso|uscita|alimentazione)(?![\\p{L}\\d]))";

  private static final Pattern VOLT =
      Pattern.compile(
          NOT_INSIDE_A_NUMBER
              // No volts are the digits of a maker's number: XY5101V.
              + "(?!(?<=\\p{L})\\d{4})"
              + NUMBER
              + "\\s*(k?)\\s*(?:V(?:dc|ac)?|volts?)"
              + WORD_ENDS
              + NO_PLACE,
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  private String rest;
  private Optional<Tolerance> tolerance = Optional.empty();
  private Optional<Quantity> voltage = Optional.empty();
  private Optional<Quantity> power = Optional.empty();

  private WrittenRatings(String text) {
    this.rest = text;
  }

  /**
   * Takes the ratings out of {@code text}.
   *
   * @param expected what the value is; a rating of that dimension stays in the text
   */
  static WrittenRatings in(String text, Optional<Dimension> expected) {
    var ratings = new WrittenRatings(text);
    ratings.takeTolerance();
    if (expected.isEmpty() || expected.get() != Dimension.POWER) {
      ratings.takePower();
    }
    if (expected.isEmpty() || expected.get() != Dimension.VOLTAGE) {
      ratings.voltage = scaled(ratings.take(VOLT), Dimension.VOLTAGE);
    }
    return ratings;
  }

  private void takeTolerance() {
    Optional<Matcher> unequal = take(UNEQUAL);
    if (unequal.isPresent()) {
      Matcher found = unequal.get();
      tolerance =
          Optional.of(
              found.group(1) != null
                  ? percent(found.group(1), found.group(2))
                  : percent(found.group(4), found.group(3)));
      return;
    }
    Optional<Matcher> absolute = take(PICOFARAD);
    if (absolute.isPresent()) {
      BigDecimal farads = number(absolute.get().group(1)).scaleByPowerOfTen(-12);
      tolerance = Optional.of(Tolerance.absolute(farads.toPlainString()));
      return;
    }
    Optional<Matcher> equal = take(PERCENT);
    if (equal.isPresent()) {
      String both = equal.get().group(1);
      tolerance = Optional.of(percent(both, both));
    }
  }

  private static Tolerance percent(String minus, String plus) {
    return Tolerance.percent(number(minus).toPlainString(), number(plus).toPlainString());
  }

  private void takePower() {
    Optional<Matcher> fraction = take(FRACTION_OF_A_WATT);
    if (fraction.isPresent() && !fraction.get().group(2).matches("0+")) {
      double watts =
          Double.parseDouble(fraction.get().group(1)) / Double.parseDouble(fraction.get().group(2));
      power = Optional.of(Quantity.of(watts, Dimension.POWER));
      return;
    }
    power = scaled(take(WATT), Dimension.POWER);
  }

  private static Optional<Quantity> scaled(Optional<Matcher> found, Dimension dimension) {
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Matcher match = found.get();
    int exponent = match.group(2).isEmpty() ? 0 : dimension == Dimension.POWER ? -3 : 3;
    return Optional.of(new Quantity(number(match.group(1)).scaleByPowerOfTen(exponent), dimension));
  }

  static BigDecimal number(String text) {
    return new BigDecimal(text.replace(',', '.'));
  }

  /** The first match, which leaves the text; a mark stays where it stood, so words don't join. */
  private Optional<Matcher> take(Pattern pattern) {
    Matcher matcher = pattern.matcher(rest);
    if (!matcher.find()) {
      return Optional.empty();
    }
    rest = rest.substring(0, matcher.start()) + " \u0000 " + rest.substring(matcher.end());
    return Optional.of(matcher);
  }

  /** The text without its ratings; a NUL stands where one was. */
  String rest() {
    return rest;
  }

  Optional<Tolerance> tolerance() {
    return tolerance;
  }

  Optional<Quantity> voltage() {
    return voltage;
  }

  Optional<Quantity> power() {
    return power;
  }
}
