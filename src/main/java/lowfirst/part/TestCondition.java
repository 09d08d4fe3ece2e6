package lowfirst.part;

import java.util.Collections;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The test condition of a datasheet line, read from its text: {@code VGS=10V, ID=25A, TJ=25C}. What
 * isn't of the form name = number is left in the text. A letter is a prefix only before a unit or
 * alone: {@code VGS=10 pulsed} is no ten picovolts. A range, {@code VGS=4.5...10V}, is two numbers:
 * who asks for one of them says which.
 */
public final class TestCondition {
  private static final String NUMBER = "([-+]?\\d+(?:[.,]\\d+)?(?:[eE][-+]?\\d+)?)";
  private static final String PREFIX =
      "(?:\\s*([munpkµμ])(?=(?:V|A|s|H|F|J|W|Hz|Ω|Ohm)(?![A-Za-z])|[\\s,;)]|$))?";
  private static final Pattern PAIR =
      Pattern.compile("([A-Za-z][A-Za-z()]*)\\s*[=≥>≤<]+\\s*" + NUMBER + PREFIX);

  /** What makes a range of the number before it. */
  private static final Pattern OTHER_END =
      Pattern.compile(
          "(?:\\s*+(V|A|s|Hz|H|F|J|W|Ω|Ohm|[°º]?C|K|%)(?![A-Za-z]))?+"
              + "\\s*+(?:\\.{2,3}|[…–—~/-]|(?:to|or|and)\\b)\\s*+"
              + NUMBER
              + PREFIX);

  /** What is left of a unit behind a number that was read. */
  private static final Pattern UNIT =
      Pattern.compile("(?<![A-Za-z])(?:V|A|s|Hz|H|F|J|W|Ω|Ohm|[°º]?C|K|%)(?![A-Za-z])");

  private static final Map<String, Double> PREFIXES =
      Map.of("", 1.0, "m", 1e-3, "u", 1e-6, "µ", 1e-6, "μ", 1e-6, "n", 1e-9, "p", 1e-12, "k", 1e3);

  /** Conditions read before: the same text always reads the same. */
  private static final Map<String, TestCondition> KNOWN = new ConcurrentHashMap<>();

  private static final int MOST_KNOWN = 4096;

  /** Two ends, the one nearer to zero first; of a single number both are the same. */
  private record Ends(double near, double far) {}

  private final String text;
  private final Map<String, Ends> values = new HashMap<>();
  private final String words;

  private TestCondition(String text) {
    this.text = text.toLowerCase(Locale.ROOT);
    Matcher pair = PAIR.matcher(text);
    Matcher other = OTHER_END.matcher(text);
    var left = new StringBuilder();
    int read = 0;
    while (pair.find()) {
      other.region(pair.end(), text.length());
      boolean isRange = other.lookingAt();
      values.put(key(pair.group(1)), isRange ? range(pair, other) : single(pair));
      left.append(text, read, pair.start());
      read = isRange ? other.end() : pair.end();
    }
    left.append(text, read, text.length());
    words = UNIT.matcher(left).replaceAll("").replaceAll("[\\s,;]+", " ").strip();
  }

  private static Ends single(Matcher pair) {
    double value = number(pair.group(2)) * scale(pair.group(3));
    return new Ends(value, value);
  }

  /** A unit that stands once, behind both numbers, is that of both. */
  private static Ends range(Matcher pair, Matcher other) {
    boolean bare = pair.group(3) == null && other.group(1) == null;
    double one = number(pair.group(2)) * scale(bare ? other.group(3) : pair.group(3));
    double two = number(other.group(2)) * scale(other.group(3));
    return Math.abs(one) <= Math.abs(two) ? new Ends(one, two) : new Ends(two, one);
  }

  private static double number(String digits) {
    return Double.parseDouble(digits.replace(',', '.'));
  }

  private static double scale(String prefix) {
    return PREFIXES.get(prefix == null ? "" : prefix);
  }

  /** Reads a condition; never fails. A drawer of parts repeats few conditions very often. */
  public static TestCondition parse(String text) {
    TestCondition known = KNOWN.get(text);
    if (known == null) {
      known = new TestCondition(text);
      if (KNOWN.size() < MOST_KNOWN) {
        KNOWN.put(text, known);
      }
    }
    return known;
  }

  /**
   * The one number given for a name, in volts, amperes, seconds, henries or degrees Celsius;
   * nothing where a range is given.
   */
  public OptionalDouble value(String name) {
    Ends ends = values.get(key(name));
    return ends == null || ends.near != ends.far
        ? OptionalDouble.empty()
        : OptionalDouble.of(ends.near);
  }

  /** The number given for a name; of a range the end that is nearer to zero. */
  public OptionalDouble nearest(String name) {
    Ends ends = values.get(key(name));
    return ends == null ? OptionalDouble.empty() : OptionalDouble.of(ends.near);
  }

  /** The number given for a name; of a range the end that is farther from zero. */
  public OptionalDouble farthest(String name) {
    Ends ends = values.get(key(name));
    return ends == null ? OptionalDouble.empty() : OptionalDouble.of(ends.far);
  }

  /** The names that it gives a number or a range for, in capitals. */
  public Set<String> names() {
    return Collections.unmodifiableSet(values.keySet());
  }

  /** What is left of the text beside its numbers: {@code pulsed}; may be empty. */
  public String words() {
    return words;
  }

  /** Whether the condition's words contain this text. */
  public boolean says(String words) {
    return text.contains(words.toLowerCase(Locale.ROOT));
  }

  private static String key(String name) {
    return name.toUpperCase(Locale.ROOT);
  }
}
