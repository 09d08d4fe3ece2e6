package lowfirst.intake.check;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Whether two descriptions of one part can't both be true: they name other type numbers, colours or
 * polarities, or count otherwise. Other words may say of one part what it is, and of the other what
 * it is for: a jack that is "Line in" in the layout is bought as any jack.
 */
final class Contradiction {
  /** A word with a letter, and two digits at least; or a number as long as those of circuits. */
  private static final Pattern TYPE_NUMBER =
      Pattern.compile(
          "(?U)(?<![\\w.])(?=[\\w.+/-]*\\p{L})(?=[^\\d\\s]*\\d[^\\d\\s]*\\d)[\\p{L}\\p{N}][\\p{L}\\p{N}.+/-]{3,}"
              + "|(?<![\\w.])\\d{4,5}(?![\\w.])");

  /** Words of which a part is one or the other. */
  private static final List<Pattern> OPPOSITES =
      List.of(
          words("red|green|blue|white|yellow|amber|orange|rot|grün|blau|weiß|gelb"),
          words("npn|pnp"),
          Pattern.compile("(?iu)(?<!\\p{L})([np])[- ]?ch(?:annel)?(?!\\p{L})"),
          words("male|female"));

  private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.,]\\d+)?");

  private Contradiction() {}

  /** One of these, parted by anything but letters: also LED_red. */
  private static Pattern words(String alternatives) {
    return Pattern.compile("(?iu)(?<!\\p{L})(" + alternatives + ")(?!\\p{L})");
  }

  static boolean between(String one, String other) {
    Set<String> types = all(TYPE_NUMBER, one);
    Set<String> otherTypes = all(TYPE_NUMBER, other);
    if (!types.isEmpty() && !otherTypes.isEmpty()) {
      return types.stream()
          .noneMatch(type -> otherTypes.stream().anyMatch(t -> SameOrNot.resemble(type, t)));
    }
    return OPPOSITES.stream().anyMatch(words -> areApart(all(words, one), all(words, other)))
        || (SameOrNot.resemble(wordsOf(one), wordsOf(other))
            && areApart(all(NUMBER, one), all(NUMBER, other)));
  }

  private static boolean areApart(Set<String> some, Set<String> others) {
    return !some.isEmpty() && !others.isEmpty() && some.stream().noneMatch(others::contains);
  }

  private static String wordsOf(String text) {
    return NUMBER.matcher(text).replaceAll(" ");
  }

  private static Set<String> all(Pattern pattern, String text) {
    var found = new HashSet<String>();
    pattern
        .matcher(text)
        .results()
        .map(match -> (match.groupCount() > 0 ? match.group(1) : match.group()))
        .forEach(word -> found.add(word.toLowerCase(Locale.ROOT)));
    return found;
  }
}
