package lowfirst.intake.xml;

import java.util.OptionalDouble;

/**
 * Numbers as XML Schema writes them: with a decimal point, in digits without groups, with or
 * without an exponent.
 */
public final class XmlNumber {
  /** A longer text is no number that a design holds. */
  private static final int LONGEST = 40;

  private static final String SIGNS = "0123456789+-.eE";

  private XmlNumber() {}

  /** The number, if the text is nothing else and it is finite. */
  public static OptionalDouble in(String text) {
    if (text.isEmpty()
        || text.length() > LONGEST
        || !text.chars().allMatch(c -> SIGNS.indexOf(c) >= 0)) {
      return OptionalDouble.empty();
    }
    try {
      double number = Double.parseDouble(text);
      return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
    } catch (NumberFormatException none) {
      return OptionalDouble.empty();
    }
  }
}
