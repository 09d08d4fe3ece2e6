package lowfirst.intake.column;

import java.util.OptionalDouble;

/** Plain decimal numbers, read fast: a sign, digits, and one decimal point or comma. */
public final class PlainNumber {
  private static final double[] TENTHS = new double[16];

  static {
    double scale = 1;
    for (int i = 0; i < TENTHS.length; i++) {
      TENTHS[i] = scale;
      scale *= 10;
    }
  }

  private PlainNumber() {}

  /** Whether a text ends in a digit or the point behind one, so that no unit follows. */
  public static boolean isBare(String text) {
    int last = text.length() - 1;
    boolean point = last > 0 && (text.charAt(last) == '.' || text.charAt(last) == ',');
    return last >= 0 && Character.isDigit(text.charAt(point ? last - 1 : last));
  }

  /** The number, if the text is nothing else and has at most 15 digits. */
  public static OptionalDouble in(String text) {
    double number = orNan(text);
    return Double.isNaN(number) ? OptionalDouble.empty() : OptionalDouble.of(number);
  }

  /** The same; not a number where the text is none. */
  public static double orNan(String text) {
    int length = text.length();
    int at = 0;
    boolean negative = false;
    if (at < length && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
      negative = text.charAt(at) == '-';
      at++;
    }
    long digits = 0;
    int count = 0;
    int decimals = -1;
    for (; at < length; at++) {
      char c = text.charAt(at);
      if (c >= '0' && c <= '9') {
        digits = digits * 10 + (c - '0');
        count++;
        decimals += decimals >= 0 ? 1 : 0;
      } else if ((c == '.' || c == ',') && decimals < 0) {
        decimals = 0;
      } else {
        return Double.NaN;
      }
    }
    if (count == 0 || count > 15) {
      return Double.NaN;
    }
    // Both are exact below 2^53, so the quotient is the nearest double.
    double number = digits / TENTHS[Math.max(0, decimals)];
    return negative ? -number : number;
  }
}
