package lowfirst.intake.text;

/** Letters, digits and blanks as wide as those of East Asia (Unicode's fullwidth forms). */
final class WideSigns {
  /** Without a digit among them nothing is changed. */
  static final String DIGITS = "\uff10\uff11\uff12\uff13\uff14\uff15\uff16\uff17\uff18\uff19";

  private static final char FIRST = '\uff01';
  private static final char LAST = '\uff5e';

  /** From such a sign to the same in ASCII. */
  private static final int APART = FIRST - '!';

  /** Signs that part cells or hold them together where they are not wide. */
  private static final String KEPT = "\uff0c\uff1b\uff5c\uff02\uff07";

  private WideSigns() {}

  /** The text with such signs in ASCII; the text itself where no wide digit stands in it. */
  static String plain(String text) {
    if (text.chars().noneMatch(c -> DIGITS.indexOf(c) >= 0)) {
      return text;
    }
    var plain = new StringBuilder(text);
    for (int at = 0; at < plain.length(); at++) {
      char c = plain.charAt(at);
      if (c >= FIRST && c <= LAST && KEPT.indexOf(c) < 0) {
        plain.setCharAt(at, (char) (c - APART));
      } else if (c == '\u3000') {
        plain.setCharAt(at, ' ');
      }
    }
    return plain.toString();
  }
}
