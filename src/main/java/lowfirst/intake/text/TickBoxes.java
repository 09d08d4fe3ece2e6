package lowfirst.intake.text;

import java.util.regex.Pattern;

/** Boxes to tick before the lines of a list: [x] R1 33k. A tick tells what is done, not what is. */
public final class TickBoxes {
  /** Without one of them nothing is changed. */
  static final String SIGNS = "[☐☑";

  private static final Pattern BOX =
      Pattern.compile("(?m)^([ \\t]*(?:[-*+•] +)?)(?:\\[[ xX✓✔]?]|[☐☑☒]) ?(?= *[^\\s,;|])");

  /** Of a list, and not of a table with its own separators, a box is the bullet. */
  private static final Pattern BULLET =
      Pattern.compile("(?m)^([ \\t]*)(?:\\[[ xX✓✔]?]|[☐☑☒])(?= [^,;|\\t\\n\\r]*$)");

  /** Fewer may be anything. */
  private static final int FEWEST = 3;

  private TickBoxes() {}

  /** The text without them; the text itself where they don't stand before several lines. */
  public static String dropped(String text) {
    boolean any =
        text.contains("[x]")
            || text.contains("[X]")
            || text.contains("[ ]")
            || text.indexOf('☐') >= 0
            || text.indexOf('☑') >= 0;
    return any && BOX.matcher(text).results().limit(FEWEST).count() == FEWEST
        ? BOX.matcher(BULLET.matcher(text).replaceAll("$1-")).replaceAll("$1")
        : text;
  }
}
