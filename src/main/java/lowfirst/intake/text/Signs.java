package lowfirst.intake.text;

/**
 * Which signs stand in a text. Of a long one that is asked for many signs, and going through it
 * once is cheaper than once for each.
 */
public final class Signs {
  /** Signs beyond ASCII are not told apart. */
  private static final int BEYOND = 128;

  /** Characters gone through at a time. */
  private static final int PART = 1 << 12;

  private final boolean[] seen = new boolean[BEYOND + 1];

  private Signs() {}

  /** The signs of a text. */
  static Signs of(String text) {
    var signs = new Signs();
    var part = new char[Math.min(PART, text.length())];
    for (int start = 0; start < text.length(); start += PART) {
      int length = Math.min(PART, text.length() - start);
      text.getChars(start, start + length, part, 0);
      for (int at = 0; at < length; at++) {
        signs.seen[Math.min(part[at], BEYOND)] = true;
      }
    }
    return signs;
  }

  /** Whether one of these signs may stand there: surely not where the answer is no. */
  public boolean mayBeAnyOf(String wanted) {
    return wanted.chars().anyMatch(sign -> seen[Math.min(sign, BEYOND)]);
  }
}
