package lowfirst.sheet.document;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Words that stay on one line: a number and its unit, and a word that a number only names, such as
 * {@code band 3}. On paper, in a terminal and on a page a number read without its unit is a wrong
 * number.
 */
public final class Unparted {
  /** What joins them where a line may not end. */
  public static final char JOINT = '\u00a0';

  private static final Set<String> UNITS =
      Stream.concat(
              Stream.of("", "f", "p", "n", "µ", "μ", "m", "k", "M", "G")
                  .flatMap(
                      prefix ->
                          Stream.of("Ω", "F", "H", "V", "A", "W", "s", "Hz", "J", "C")
                              .map(unit -> prefix + unit)),
              Stream.of("m", "cm", "mm", "µm", "mm²", "K/W", "°", "°C", "%", "V/µs", "A²s", "AWG"))
          .collect(Collectors.toUnmodifiableSet());

  private static final Set<String> NAMED = Set.of("no.", "band", "step", "batch", "Step", "Batch");

  private Unparted() {}

  /** Whether a line may not end between two words. */
  public static boolean binds(String before, String word) {
    if (before.isEmpty() || word.isEmpty()) {
      return false;
    }
    return isDigit(before.charAt(before.length() - 1))
        ? UNITS.contains(bare(word))
        : isDigit(word.charAt(0)) && NAMED.contains(before);
  }

  /** A text in which what belongs together is joined; all else is as it was. */
  public static String joined(String text) {
    StringBuilder joined = null;
    int start = 0;
    for (int blank = text.indexOf(' '); blank >= 0; blank = text.indexOf(' ', blank + 1)) {
      int end = text.indexOf(' ', blank + 1);
      String next = text.substring(blank + 1, end < 0 ? text.length() : end);
      if (binds(text.substring(start, blank), next)) {
        joined = joined == null ? new StringBuilder(text) : joined;
        joined.setCharAt(blank, JOINT);
      }
      start = blank + 1;
    }
    return joined == null ? text : joined.toString();
  }

  /** A word without the brackets and stops around it. */
  private static String bare(String word) {
    int from = "±(".indexOf(word.charAt(0)) >= 0 ? 1 : 0;
    int to = word.length();
    while (to > from && ",.;:)".indexOf(word.charAt(to - 1)) >= 0) {
      to--;
    }
    return word.substring(from, to);
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
