package lowfirst.intake.cell;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Designators of which only the first and the last are written: {@code R1-R4}, {@code R1 to R4}.
 *
 * @param letters those of all of them
 * @param first the number of the first, 0 to 999999
 * @param last the number of the last, likewise; before the first where the pen slipped
 * @param repeatsLetters whether they stand before the last number, too; {@code R1-4} leaves them
 *     out
 */
public record DesignatorRange(String letters, int first, int last, boolean repeatsLetters) {
  /** A range that holds more is a slip of the pen. */
  private static final int WIDEST = 2000;

  /** To, in the languages of the headers. */
  public static final String TO_WORDS =
      "(?:to|bis|thru|through|à|au|al|do|až|tot|t/m|t\\.?e\\.?m\\.?|по|до)";

  private static final Pattern RANGE =
      Pattern.compile(
          "(?iU)([\\p{L}_]+\\$?)(\\d{1,6})(?:\\s*(?:-{1,3}|–|—|−|\\.{2,3}|…|~|～|〜|:|[-=–]?>|→|至|到|から)\\s*"
              + "|\\s+"
              + TO_WORDS
              + "\\s+)"
              + "([\\p{L}_]*\\$?)(\\d{1,6})");

  /** The range, if the text is nothing else; {@code L1-In} is a name. */
  static Optional<DesignatorRange> in(String text) {
    Matcher range = RANGE.matcher(text);
    if (!range.matches()) {
      return Optional.empty();
    }
    String letters = range.group(1);
    String again = range.group(3);
    return again.isEmpty() || again.equals(letters)
        ? Optional.of(
            new DesignatorRange(
                letters,
                Integer.parseInt(range.group(2)),
                Integer.parseInt(range.group(4)),
                !again.isEmpty()))
        : Optional.empty();
  }

  /** Whether it runs backwards or holds more than any board has in a row. */
  boolean isSlip() {
    return last < first || last - first >= WIDEST;
  }

  /** How many there are, the first and the last among them. */
  int size() {
    return last - first + 1;
  }
}
