package lowfirst.intake.text;

import java.util.regex.Pattern;

/**
 * A table as notes for the web have it (Markdown): bars between the cells, a rule of dashes under
 * the header, and marks for how words look.
 */
public final class PipeTable {
  /** Without one of them nothing is changed. */
  static final String SIGNS = "|<";

  private static final Pattern LINK = Pattern.compile("!?\\[([^\\]|\\n\\r]*)]\\([^)|\\n\\r]*\\)");
  private static final Pattern LINE_BREAK = Pattern.compile("(?i)<br ?/?>");
  private static final Pattern MARK = Pattern.compile("\\*\\*|`");

  private static final Pattern BETWEEN_BARS =
      Pattern.compile("(?m)^\\|[^|\\n\\r]+\\|[^\\n\\r]*\\|\\s*$");

  /** Fewer lines between bars are no table. */
  private static final int FEWEST = 3;

  private static final Pattern LEADING = Pattern.compile("(?m)^\\|");
  private static final Pattern TAG = Pattern.compile("</?[a-zA-Z][^<>|\\n\\r]*>");

  /** A sign that is not meant as a mark. */
  private static final Pattern ESCAPE = Pattern.compile("\\\\([-_.+*#!~<>()\\[\\]{}])");

  private PipeTable() {}

  /** Whether a line of the text is the rule of such a table, or several stand between bars. */
  public static boolean isIn(String text) {
    return text.indexOf('|') >= 0
        && (hasRule(text) || BETWEEN_BARS.matcher(text).results().limit(FEWEST).count() == FEWEST);
  }

  private static boolean hasRule(String text) {
    for (int at = text.indexOf('|'); at >= 0; at = text.indexOf('|', at)) {
      int start = at;
      while (start > 0 && isOfRule(text.charAt(start - 1))) {
        start--;
      }
      int end = at;
      while (end < text.length() && isOfRule(text.charAt(end))) {
        end++;
      }
      boolean whole =
          (start == 0 || isLineEnd(text.charAt(start - 1)))
              && (end == text.length() || isLineEnd(text.charAt(end)));
      if (whole && text.substring(start, end).indexOf('-') >= 0) {
        return true;
      }
      at = Math.max(end, at + 1);
    }
    return false;
  }

  private static boolean isOfRule(char c) {
    return "-|:+= \t".indexOf(c) >= 0;
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }

  /** The text without marks that stand for the look of words; itself when it has none. */
  static String plain(String written) {
    String broken = LINE_BREAK.matcher(written).replaceAll(" ");
    String text = onlyLead(broken) ? LEADING.matcher(broken).replaceAll(" ") : broken;
    if (!isIn(text)) {
      return text;
    }
    String words = LINK.matcher(text.replace("\\|", "\u00a6")).replaceAll("$1");
    String plain = MARK.matcher(TAG.matcher(words).replaceAll("")).replaceAll("");
    return ESCAPE.matcher(plain).replaceAll("$1");
  }

  /** Whether bars only begin lines, several of them, and part nothing. */
  private static boolean onlyLead(String text) {
    int leading = 0;
    for (int at = text.indexOf('|'); at >= 0; at = text.indexOf('|', at + 1)) {
      if (at > 0 && !isLineEnd(text.charAt(at - 1))) {
        return false;
      }
      leading++;
    }
    return leading > 2;
  }
}
