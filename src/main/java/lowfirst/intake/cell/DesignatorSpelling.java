package lowfirst.intake.cell;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.intake.kind.PartKindWords;

/**
 * How one designator is spelt: which spelling is the usual one, and how it stands on the board
 * where someone wrote it with small letters, with a blank in it, or on a Cyrillic keyboard.
 */
public final class DesignatorSpelling {
  private static final char FIRST_CYRILLIC = '\u0400';
  private static final String CYRILLIC = "АВСЕНКМОРТХ";
  private static final String LATIN = "ABCEHKMOPTX";

  /** Letters in small, which the standards of designators have in capitals. */
  private static final Pattern SMALL = Pattern.compile("[a-z]{1,3}\\d{1,5}");

  private static final Pattern NAMED_AND_NUMBERED = Pattern.compile("[A-Z]{1,3}_[A-Z]+\\d{1,3}");
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}_+-]+");
  private static final Pattern NUMBERED = Pattern.compile("[\\p{L}_]+\\d[\\p{L}\\p{N}_.+-]*");
  private static final Pattern APART = Pattern.compile("(\\p{L}{1,4})\\s+(\\d{1,4})");

  private DesignatorSpelling() {}

  /** The usual designator, which needs no further look: up to four letters and six digits. */
  public static boolean isPlain(String text) {
    int letters = 0;
    while (letters < text.length() && Character.isLetter(text.charAt(letters))) {
      letters++;
    }
    int at = letters;
    while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
    int digits = at - letters;
    return at == text.length() && letters >= 1 && letters <= 4 && digits >= 1 && digits <= 6;
  }

  /** Letters, a digit, and whatever else names have: R1, LED_2, J1-A. */
  static boolean isNumbered(String word) {
    return NUMBERED.matcher(word).matches();
  }

  /** LED_RED2: the letters of a kind of part, a word and a number. */
  static boolean isNamedAndNumbered(String word) {
    return NAMED_AND_NUMBERED.matcher(word).matches();
  }

  /** With a number, or behind the letters of a kind of part and a stroke: SW_A. */
  static boolean isName(String word) {
    int stroke = word.indexOf('_');
    return isNumbered(word)
        || stroke > 0
            && PartKindWords.byLetters(word.substring(0, stroke)).isPresent()
            && WORD.matcher(word.substring(stroke + 1)).matches();
  }

  /** {@code C 2} is C2; empty where the text is not letters and a number with blanks between. */
  static Optional<String> together(String text) {
    Matcher apart = APART.matcher(text);
    return apart.matches() ? Optional.of(apart.group(1) + apart.group(2)) : Optional.empty();
  }

  /** c2 is C2 on the board; a name with capitals or other signs stays as it is. */
  static String inCapitals(String written) {
    String text = written.charAt(0) >= FIRST_CYRILLIC ? inLatin(written) : written;
    char first = text.charAt(0);
    return first >= 'a' && first <= 'z' && SMALL.matcher(text).matches()
        ? text.toUpperCase(Locale.ROOT)
        : text;
  }

  /** Cyrillic letters that look like those of a designator are typed in their place. */
  private static String inLatin(String text) {
    var latin = new StringBuilder(text);
    for (int at = 0; at < latin.length() && !Character.isDigit(latin.charAt(at)); at++) {
      int alike = CYRILLIC.indexOf(latin.charAt(at));
      if (alike < 0) {
        return text;
      }
      latin.setCharAt(at, LATIN.charAt(alike));
    }
    return latin.toString();
  }
}
