package lowfirst.intake.cell;

import java.util.regex.Pattern;

/**
 * Numbers whose digits stand in groups of three: {@code 1,234.5}, {@code 1.234,5}, {@code 12 700},
 * {@code 12'700}. A sign that groups in one cell of a column groups in all of them.
 */
public final class GroupedNumber {
  private static final Pattern BY_BLANK =
      Pattern.compile("[+-]?\\d{1,3}([ '\u2019]\\d{3})+([.,]\\d+)?(?=\\D*$).*");

  private static final Pattern BY_POINT =
      Pattern.compile("[+-]?\\d{1,3}(\\.\\d{3})+(,\\d+)?(?=\\D*$).*");

  private static final Pattern BY_COMMA =
      Pattern.compile("[+-]?\\d{1,3}(,\\d{3})+(\\.\\d+)?(?=\\D*$).*");

  /** A longer text is no number. */
  private static final int LONGEST = 40;

  private GroupedNumber() {}

  /** Whether a coordinate shows that points part groups and a comma the decimals. */
  public static boolean groupsByPoint(String text) {
    return shows(text, '.', ',') || isGroupedTwice(text, '.', BY_POINT);
  }

  /** Whether a coordinate shows that commas part groups and a point the decimals. */
  public static boolean groupsByComma(String text) {
    return shows(text, ',', '.') || isGroupedTwice(text, ',', BY_COMMA);
  }

  /** 1.012.700: no number has two decimal marks. */
  private static boolean isGroupedTwice(String text, char group, Pattern grouped) {
    return text.indexOf(group) != text.lastIndexOf(group)
        && text.length() <= LONGEST
        && grouped.matcher(text).matches();
  }

  private static boolean shows(String text, char group, char decimal) {
    int first = text.indexOf(group);
    return first > 0 && text.lastIndexOf(decimal) > first;
  }

  /** The number with its groups joined; the text itself when it has none. */
  public static String without(String text, boolean point, boolean comma) {
    if (text.length() > LONGEST) {
      return text;
    }
    if (BY_BLANK.matcher(text).matches()) {
      return text.replaceAll("(?<=\\d)[ '\u2019](?=\\d{3})", "");
    }
    if (point && BY_POINT.matcher(text).matches()) {
      return text.replace(".", "").replace(',', '.');
    }
    return comma && BY_COMMA.matcher(text).matches() ? text.replace(",", "") : text;
  }
}
