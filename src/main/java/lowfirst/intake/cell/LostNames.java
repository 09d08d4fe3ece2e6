package lowfirst.intake.cell;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Designators among words, where they may be parts that nobody reads. */
public final class LostNames {
  private static final String LETTERS = "(?:R|C|L|D|Q|U|IC|T|J|K|F|SW|LED|CN|RN|VR|TR)";

  /** What looks like a designator among words. */
  private static final Pattern ONE =
      Pattern.compile("(?<![\\p{L}\\p{N}(.-])" + LETTERS + "\\d{1,3}(?![\\p{L}\\p{N}.-])");

  /** Letters that stand before numbers among words, too, where no part is meant. */
  private static final String OTHERS = "(?:P|S|X|JP|TP|RV)";

  private static final String TO = "\\s?\\d{1,3}\\s?[-–.]+\\s?(?:[A-Z]{1,3})?\\d{1,3}\\b";

  /** A range among words, of letters that mean hardly anything else. */
  private static final Pattern RANGE = Pattern.compile("(?<![\\p{L}\\p{N}(.-])" + LETTERS + TO);

  /** A range before words. */
  private static final Pattern RANGE_FIRST = Pattern.compile(OTHERS + TO);

  private LostNames() {}

  /** Whether one stands among words. */
  public static boolean areIn(String text) {
    return ONE.matcher(text).find();
  }

  /** Whether a text is one. */
  public static boolean isOne(String text) {
    return ONE.matcher(text).matches();
  }

  /** The first of them, or the range that words begin with; empty without one. */
  public static String first(String words) {
    if (words.isEmpty()) {
      return "";
    }
    Matcher one = ONE.matcher(words);
    Matcher range = RANGE.matcher(words);
    Matcher first = RANGE_FIRST.matcher(words);
    if (one.find()) {
      return one.group();
    }
    return range.find() ? range.group() : first.lookingAt() ? first.group() : "";
  }
}
