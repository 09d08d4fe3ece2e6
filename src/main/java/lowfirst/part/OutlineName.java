package lowfirst.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A package or footprint name, taken apart into what such names tell: words, measures and posture.
 *
 * <p>Measures stand as a letter with millimetres, {@code L6.3mm} or {@code L6.3}: L body length, W
 * width, D diameter, BD body diameter (and then D is the lead's), H height, P pitch.
 *
 * @param text in capitals, without a library's name before a colon, decimal commas as points
 * @param words its parts between underscores, blanks, slashes and brackets
 */
record OutlineName(String text, List<String> words) {
  /** Longer names are not read: no package is called so. */
  static final int LONGEST = 200;

  private static final Pattern MEASURE =
      Pattern.compile(
          "(?<![A-WYZ0-9.])(?<![^0-9]X)(BD|[DLWHP])(\\d{1,3}(?:\\.\\d{1,3})?)(?:MM)?"
              + "(?![A-WYZ0-9.]|X(?![0-9]|[DLWHP][0-9]))");
  private static final Pattern SIZE =
      Pattern.compile(
          "(?<![0-9.])(\\d{1,2}(?:\\.\\d{1,2})?)X(\\d{1,3}(?:\\.\\d{1,2})?)(?:MM)?(?![0-9.X])");
  private static final Pattern ROWS = Pattern.compile("(?<![0-9.])([1-4])X0?(\\d{1,2})(?![0-9.])");

  /** How a body lies. */
  enum Posture {
    LYING,
    STANDING,
    NOT_STATED
  }

  OutlineName {
    words = List.copyOf(words);
  }

  static OutlineName of(String name) {
    String text = name.strip();
    if (text.length() > LONGEST) {
      return new OutlineName("", List.of());
    }
    text = text.substring(text.lastIndexOf(':') + 1).toUpperCase(Locale.ROOT);
    text = text.replaceAll("(?<=\\d),(?=\\d)", ".").replace('×', 'X');
    var words = new ArrayList<String>();
    for (String word : text.split("[_\\s/()\\[\\]|]+")) {
      if (!word.isEmpty()) {
        words.add(word);
      }
    }
    return new OutlineName(text, words);
  }

  /** Whether one of these stands in the name. */
  boolean has(String... pieces) {
    return List.of(pieces).stream().anyMatch(text::contains);
  }

  /**
   * The first measure of this letter. A pitch or height at the very start is a name, not a measure.
   */
  OptionalDouble measure(String letter) {
    Matcher matcher = MEASURE.matcher(text);
    while (matcher.find()) {
      boolean named = "PH".contains(letter) && matcher.start() == 0;
      if (matcher.group(1).equals(letter) && !named) {
        return OptionalDouble.of(Double.parseDouble(matcher.group(2)));
      }
    }
    return OptionalDouble.empty();
  }

  /** The body's diameter: BD where that stands, else D. */
  OptionalDouble diameter() {
    OptionalDouble body = measure("BD");
    return body.isPresent() ? body : measure("D");
  }

  /** The two numbers of a size such as {@code 8x11.5}, in the order written; empty without one. */
  List<Double> size() {
    Matcher matcher = SIZE.matcher(text);
    return matcher.find()
        ? List.of(Double.parseDouble(matcher.group(1)), Double.parseDouble(matcher.group(2)))
        : List.of();
  }

  /** Rows and pins a row of a connector such as {@code 2x05}; empty without them. */
  List<Integer> rows() {
    Matcher matcher = ROWS.matcher(text);
    return matcher.find()
        ? List.of(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)))
        : List.of();
  }

  /** The first number that {@code pattern}'s first group finds. */
  OptionalInt number(Pattern pattern) {
    Matcher matcher = pattern.matcher(text);
    return matcher.find()
        ? OptionalInt.of(Integer.parseInt(matcher.group(1)))
        : OptionalInt.empty();
  }

  /** How the body lies, where the name tells; {@code 0414V} is a 0414 standing. */
  Posture posture() {
    if (has(
        "HORIZONTAL",
        "LYING",
        "FLAT",
        "TABDOWN",
        "TAB-DOWN",
        "RIGHTANGLE",
        "RIGHT-ANGLE",
        "RIGHT ANGLE",
        "ANGLED",
        "SIDE-ENTRY")) {
      return Posture.LYING;
    }
    boolean bodySizeWithV = text.matches(".*\\b0\\d{3}(?:/\\d+)?V\\b.*");
    return bodySizeWithV || has("VERTICAL", "STANDING", "UPRIGHT")
        ? Posture.STANDING
        : Posture.NOT_STATED;
  }
}
