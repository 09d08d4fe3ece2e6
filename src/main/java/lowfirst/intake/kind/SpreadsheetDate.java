package lowfirst.intake.kind;

import java.util.regex.Pattern;

/** A date, which a spreadsheet makes of a designator such as DEC1 or of a value such as 1-2. */
public final class SpreadsheetDate {
  /** 01-Feb, Feb 24, 2026-02-01, 1/2/2026. */
  private static final Pattern DATE =
      Pattern.compile(
          "(?i)(\\d{1,2}[-. /]{1,2})?(jan|feb|m[aä]r|apr|ma[iy]|jun|jul|aug|sep|o[ck]t|nov|de[cz])\\p{L}*\\.?([-. /]\\d{2,4})?"
              + "|\\d{4}-\\d{2}-\\d{2}|\\d{1,2}[./]\\d{1,2}[./]\\d{2,4}");

  /** The longest such text. */
  private static final int LONGEST = 20;

  private SpreadsheetDate() {}

  static boolean is(String text) {
    return text.length() <= LONGEST && DATE.matcher(text).matches();
  }

  /** Whether a designator became a date: it has a number, and no name is all in capitals then. */
  public static boolean wasDesignator(String text) {
    // Asked of every part of a list.
    boolean parted =
        text.indexOf('-') > 0
            || text.indexOf('.') > 0
            || text.indexOf('/') > 0
            || text.indexOf(' ') > 0;
    return parted
        && text.chars().anyMatch(Character::isDigit)
        && is(text)
        && (text.chars().noneMatch(Character::isLetter)
            || text.chars().anyMatch(Character::isLowerCase));
  }
}
