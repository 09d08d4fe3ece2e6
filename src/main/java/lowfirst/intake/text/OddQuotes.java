package lowfirst.intake.text;

import java.util.regex.Pattern;

/**
 * Quotes that RFC 4180 does not know, made plain: formulas of a text ({@code ="R1"}), typographic
 * quotes around cells, single quotes around every cell, and a lone one before it.
 */
final class OddQuotes {
  /** Without one of them nothing is changed. */
  static final String SIGNS = "\"“„'";

  private static final Pattern FORMULA = Pattern.compile("(^|[,;\\t|]|\\n|\\r)=\"");
  private static final Pattern OPENING = Pattern.compile("(^|[,;\\t|]|\\n|\\r)[“„‟]");
  private static final Pattern CLOSING = Pattern.compile("[”“](?=$|[,;\\t|]|\\n|\\r)");
  private static final Pattern SINGLE =
      Pattern.compile("(^|[,;\\t|]|\\n|\\r)'([^'\\n\\r]*)'(?=$|[,;\\t|]|\\n|\\r)");

  /** By which a spreadsheet keeps a text from becoming a number. */
  private static final Pattern LONE =
      Pattern.compile("(^|[,;\\t|]|\\n|\\r)'(?=[^',;\\t|\\n\\r\"]+(?:$|[,;\\t|\\n\\r]))");

  private OddQuotes() {}

  /** The text with such quotes made plain; the text itself when it has none. */
  static String plain(String text) {
    String plain = text;
    if (plain.indexOf('"') >= 0 && plain.contains("=\"")) {
      plain = FORMULA.matcher(plain).replaceAll("$1\"");
    }
    if (plain.indexOf('“') >= 0 || plain.indexOf('„') >= 0) {
      plain = OPENING.matcher(plain).replaceAll("$1\"");
      plain = CLOSING.matcher(plain).replaceAll("\"");
    }
    if (plain.startsWith("'") && plain.indexOf('"') < 0) {
      plain = SINGLE.matcher(plain).replaceAll("$1\"$2\"");
    }
    if (plain.indexOf('\'') >= 0) {
      plain = LONE.matcher(plain).replaceAll("$1");
    }
    return plain;
  }
}
