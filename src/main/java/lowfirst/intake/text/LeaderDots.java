package lowfirst.intake.text;

import java.util.regex.Pattern;

/** Dots that lead the eye from a name to its value: R1 ........ 10k. */
final class LeaderDots {
  /** Without it nothing is changed. */
  static final String SIGN = ".";

  private static final String FEWEST = "....";

  private static final Pattern RUN = Pattern.compile("\\.{4,}");

  private LeaderDots() {}

  /** The text with as many blanks in their place; the text itself where there are none. */
  static String blanked(String text) {
    return text.contains(FEWEST)
        ? RUN.matcher(text).replaceAll(run -> " ".repeat(run.group().length()))
        : text;
  }
}
