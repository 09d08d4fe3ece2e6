package lowfirst.intake;

import java.util.regex.Pattern;

/**
 * Numbers whose digits stand in groups of three: {@code 1,234.5}, {@code 1.234,5}, {@code 12 700},
 * {@code 12'700}. A sign that groups in one cell of a column groups in all of them.
 */
final class GroupedNumber {
  private static final Pattern BY_BLANK =
      Pattern.compile("[+-]?\\d{1,3}([ '\u2019]\\d{3})+([.,]\\d+)?(?=\\D*$).*");

  private static final Pattern BY_POINT =
      Pattern.compile("[+-]?\\d{1,3}(\\.\\d{3})+(,\\d+)?(?=\\D*$).*");

  private static final Pattern BY_COMMA =
      Pattern.compile("[+-]?\\d{1,3}(,\\d{3})+(\\.\\d+)?(?=\\D*$).*");

  private GroupedNumber() {}

  /** Whether a coordinate shows that points part groups and a comma the decimals. */
  static boolean groupsByPoint(String text) {
    return shows(text, '.', ',');
  }

  /** Whether a coordinate shows that commas part groups and a point the decimals. */
  static boolean groupsByComma(String text) {
    return shows(text, ',', '.');
  }

  private static boolean shows(String text, char group, char decimal) {
    int first = text.indexOf(group);
    return first > 0 && text.lastIndexOf(decimal) > first;
  }

  /** The number with its groups joined; the text itself when it has none. */
  static String without(String text, boolean point, boolean comma) {
    if (text.length() > 40) {
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
