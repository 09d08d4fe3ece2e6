package lowfirst.sorting;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.problem.Reading;

/**
 * How far a meter's reading y may be off: a = p/100 · |y| + n · d, with d the resolution of the
 * range it is on.
 *
 * <p>Source of the form: Fluke KA-03135 and Keithley's "Accuracy in counts"; some bench meters give
 * per cent of range instead, which this doesn't read.
 *
 * @param percent p, per cent of the reading; zero or more
 * @param counts n, counts of the last digit; zero or more
 * @param displayCounts how far the display counts, for example 6000
 */
public record MeterAccuracy(double percent, int counts, int displayCounts) {

  private static final Pattern WRITTEN =
      Pattern.compile(
          "±?\\(?(\\d{1,2}(?:[.,]\\d{1,4})?)%(?:rdg|ofreading|reading)?\\+(\\d{1,3})"
              + "(?:dgts?|digits?|counts?|lsd)?\\)?(?:of|/|,|on)(\\d{4,6})(?:counts?)?");

  private static final int LEAST_DISPLAY = 1000;

  public MeterAccuracy {
    if (!(percent >= 0) || counts < 0 || displayCounts < LEAST_DISPLAY) {
      throw new IllegalArgumentException(percent + " % + " + counts + " of " + displayCounts);
    }
  }

  /** Reads {@code 0.5 % + 2 of 6000}: per cent of reading, counts, counts of the display. */
  public static Reading<MeterAccuracy> parse(String text) {
    Matcher match = WRITTEN.matcher(text.toLowerCase(java.util.Locale.ROOT).replaceAll("\\s", ""));
    if (!match.matches() || Integer.parseInt(match.group(3)) < LEAST_DISPLAY) {
      return Reading.fault(
          "\"" + text.strip() + "\" is not a meter's accuracy",
          "write it as in the meter's manual, such as 0.5 % + 2 of 6000");
    }
    return Reading.of(
        new MeterAccuracy(
            Double.parseDouble(match.group(1).replace(',', '.')),
            Integer.parseInt(match.group(2)),
            Integer.parseInt(match.group(3))),
        "per cent of reading and counts of the display");
  }

  /** How far a reading may be off on a range of this resolution, in the reading's unit. */
  public double limit(double reading, double resolution) {
    return percent / 100 * Math.abs(reading) + counts * resolution;
  }

  /** What {@link #parse} reads back. */
  @Override
  public String toString() {
    String number = Double.toString(percent);
    String shown = number.endsWith(".0") ? number.substring(0, number.length() - 2) : number;
    return shown + " % + " + counts + " of " + displayCounts;
  }
}
