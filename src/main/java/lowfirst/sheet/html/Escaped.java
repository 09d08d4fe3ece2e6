package lowfirst.sheet.html;

/** Text made safe between tags and in quoted attributes of HTML and XML. */
final class Escaped {
  private Escaped() {}

  /**
   * The text with {@code & < > " '} as character references. Characters that XML 1.0 forbids become
   * U+FFFD, and marks that could turn the reading direction of what follows are dropped.
   */
  static String of(String text) {
    var safe = new StringBuilder(text.length() + 16);
    text.codePoints()
        .forEach(
            codePoint -> {
              switch (codePoint) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> {
                  if (!turnsDirection(codePoint)) {
                    safe.appendCodePoint(isLegal(codePoint) ? codePoint : 0xFFFD);
                  }
                }
              }
            });
    return safe.toString();
  }

  private static boolean turnsDirection(int codePoint) {
    return codePoint >= 0x202A && codePoint <= 0x202E || codePoint >= 0x2066 && codePoint <= 0x2069;
  }

  /** XML 1.0, fifth edition, production 2, and no C1 controls. */
  private static boolean isLegal(int codePoint) {
    return codePoint == '\t'
        || codePoint == '\n'
        || codePoint == '\r'
        || codePoint >= 0x20 && codePoint < 0x7F
        || codePoint >= 0xA0 && codePoint <= 0xD7FF
        || codePoint >= 0xE000 && codePoint <= 0xFFFD
        || codePoint >= 0x10000;
  }
}
