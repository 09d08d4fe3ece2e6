package lowfirst.intake.text;

import java.util.regex.Pattern;

/** A list as a mail quotes it: each line begins with {@code >}. */
final class MailQuotes {
  /** Without it nothing is changed. */
  static final String SIGN = ">";

  private static final Pattern QUOTE = Pattern.compile("(?m)^[ \\t]*>[> \\t]*");
  private static final Pattern LINE = Pattern.compile("(?m)^[^\\n\\r]*\\S");

  /** So many lines are quoted, or it is no quoted list. */
  private static final double NEARLY_ALL = 0.8;

  private MailQuotes() {}

  /** The text without them; the text itself where most lines have none. */
  static String dropped(String text) {
    boolean quoted =
        QUOTE.matcher(text).results().count() > NEARLY_ALL * LINE.matcher(text).results().count();
    return quoted ? QUOTE.matcher(text).replaceAll("") : text;
  }
}
