package lowfirst.channel;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The test condition of a datasheet line, read from its text: {@code VGS=10V, ID=25A, TJ=25C}. What
 * isn't of the form name = number is left in the text. A letter is a prefix only before a unit or
 * alone: {@code VGS=10 pulsed} is no ten picovolts.
 */
final class TestCondition {
  private static final Pattern PAIR =
      Pattern.compile(
          "([A-Za-z][A-Za-z()]*)\\s*[=≥>≤<]+\\s*([-+]?\\d+(?:[.,]\\d+)?(?:[eE][-+]?\\d+)?)"
              + "(?:\\s*([munpkµμ])(?=(?:V|A|s|H|F|J|W|Hz|Ω|Ohm)(?![A-Za-z])|[\\s,;)]|$))?");
  private static final Map<String, Double> PREFIXES =
      Map.of("", 1.0, "m", 1e-3, "u", 1e-6, "µ", 1e-6, "μ", 1e-6, "n", 1e-9, "p", 1e-12, "k", 1e3);

  /** Conditions read before: the same text always reads the same. */
  private static final Map<String, TestCondition> KNOWN = new ConcurrentHashMap<>();

  private static final int MOST_KNOWN = 4096;

  private final String text;
  private final Map<String, Double> values = new HashMap<>();

  private TestCondition(String text) {
    this.text = text.toLowerCase(Locale.ROOT);
    Matcher pair = PAIR.matcher(text);
    while (pair.find()) {
      double number = Double.parseDouble(pair.group(2).replace(',', '.'));
      String prefix = pair.group(3) == null ? "" : pair.group(3);
      values.put(key(pair.group(1)), number * PREFIXES.get(prefix));
    }
  }

  /** Reads a condition; never fails. A drawer of parts repeats few conditions very often. */
  static TestCondition parse(String text) {
    TestCondition known = KNOWN.get(text);
    if (known == null) {
      known = new TestCondition(text);
      if (KNOWN.size() < MOST_KNOWN) {
        KNOWN.put(text, known);
      }
    }
    return known;
  }

  /** The number given for a name, in volts, amperes, seconds, henries or degrees Celsius. */
  OptionalDouble value(String name) {
    Double value = values.get(key(name));
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  /** Whether the condition's words contain this text. */
  boolean says(String words) {
    return text.contains(words.toLowerCase(Locale.ROOT));
  }

  private static String key(String name) {
    return name.toUpperCase(Locale.ROOT);
  }
}
