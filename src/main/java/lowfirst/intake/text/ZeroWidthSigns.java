package lowfirst.intake.text;

/**
 * Signs that take no room and that nobody sees, as pages of the web leave them in what is copied.
 */
final class ZeroWidthSigns {
  static final String SIGNS = "\u200b\u200c\u200d\u2060\ufeff\u00ad";

  private ZeroWidthSigns() {}

  /** The text without them; the text itself where none stands in it. */
  static String dropped(String text) {
    String plain = text;
    for (int i = 0; i < SIGNS.length(); i++) {
      plain = plain.replace(SIGNS.substring(i, i + 1), "");
    }
    return plain;
  }
}
