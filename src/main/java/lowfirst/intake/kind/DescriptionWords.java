package lowfirst.intake.kind;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a description in one cell tells beside the value: the package, and a maker's type number.
 */
public final class DescriptionWords {
  private static final Pattern PACKAGE =
      Pattern.compile(
          "(?i)(?<![A-Z0-9-])((?:DO|TO|SOT|SOD)-?\\d{2,3}[A-Z]{0,2}(?:-\\d)?|P?DI[PL]-?\\d{1,2}|SIP-?\\d{1,2}"
              + "|DIN ?0[2-9]\\d{2}|HC-?\\d{2}[A-Z/]*|AXIAL|RADIAL)(?![A-Z0-9])");

  /** Measures of a body, which are no values. */
  private static final Pattern MEASURE =
      Pattern.compile(
          "(?i)(?<![A-Z0-9.,])(\\d+([.,]\\d+)?\\s?mm|\\d+([.,]\\d+)?\\s?x\\s?\\d+([.,]\\d+)?(mm)?|P\\s?\\d+([.,]\\d+)?(mm)?"
              + "|[DLWH]\\d+([.,]\\d+)?(mm)?|[XYZ]\\d[A-Z]|C0G|NP0)(?![A-Z0-9])");

  /** A longer text is prose. */
  private static final int LONGEST = 200;

  private DescriptionWords() {}

  /** The first package that a text names; empty when it names none. */
  public static String packageIn(String text) {
    if (text.length() > LONGEST || text.indexOf(' ') < 0) {
      return "";
    }
    Matcher name = PACKAGE.matcher(text);
    return name.find() ? name.group(1) : "";
  }

  /** The word that is a known maker's type number, where a text is more than that word. */
  public static Optional<String> typeNumberIn(String text) {
    if (text.length() > LONGEST || text.indexOf(' ') < 0) {
      return Optional.empty();
    }
    for (String word : text.split("[\\s,;()\\[\\]]+")) {
      boolean mixed =
          word.length() > 3
              && word.chars().anyMatch(Character::isDigit)
              && word.chars().anyMatch(Character::isLetter)
              && !PACKAGE.matcher(word).matches();
      if (mixed && PartKindWords.byTypeNumber(word).isPresent()) {
        return Optional.of(word);
      }
    }
    return Optional.empty();
  }

  /** The text without measures and packages, whose numbers could be taken for values. */
  static String withoutMeasures(String text) {
    return text.length() > LONGEST
        ? text
        : PACKAGE.matcher(MEASURE.matcher(text).replaceAll(" ")).replaceAll(" ").strip();
  }
}
