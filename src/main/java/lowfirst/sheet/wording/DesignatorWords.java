package lowfirst.sheet.wording;

import java.util.ArrayList;
import java.util.List;
import lowfirst.board.Designator;

/** Lists of designators as people write them: runs of three and more are joined. */
public final class DesignatorWords {
  private static final int MOST_DIGITS = 6;
  private static final int SHORTEST_RUN = 3;

  private DesignatorWords() {}

  /** For example {@code R1-R16, R20, R22}, in the order given. */
  public static String list(List<Designator> designators) {
    var words = new ArrayList<String>();
    int from = 0;
    while (from < designators.size()) {
      int to = from + 1;
      while (to < designators.size() && follows(designators.get(to - 1), designators.get(to))) {
        to++;
      }
      if (to - from >= SHORTEST_RUN) {
        words.add(designators.get(from) + "-" + designators.get(to - 1));
      } else {
        designators.subList(from, to).forEach(one -> words.add(one.text()));
      }
      from = to;
    }
    return String.join(", ", words);
  }

  /** The same, sorted. */
  public static String sorted(List<Designator> designators) {
    return list(designators.stream().sorted().toList());
  }

  /** Whether the second has the same letters and the next number, without a zero before it. */
  private static boolean follows(Designator one, Designator next) {
    if (one.isUsual() && next.isUsual()) {
      return one.isJustBefore(next);
    }
    int letters = letters(one.text());
    if (letters == 0
        || letters != letters(next.text())
        || !one.text().regionMatches(0, next.text(), 0, letters)
        || next.text().charAt(letters) == '0') {
      return false;
    }
    int number = Integer.parseInt(one.text(), letters, one.text().length(), 10);
    return number + 1 == Integer.parseInt(next.text(), letters, next.text().length(), 10);
  }

  /** How many signs stand before a number of up to six digits at the end; 0 when none is there. */
  private static int letters(String text) {
    int letters = text.length();
    while (letters > 0 && text.charAt(letters - 1) >= '0' && text.charAt(letters - 1) <= '9') {
      letters--;
    }
    int digits = text.length() - letters;
    boolean elsewhere = false;
    for (int at = 0; at < letters; at++) {
      elsewhere |= text.charAt(at) >= '0' && text.charAt(at) <= '9';
    }
    return digits == 0 || digits > MOST_DIGITS || elsewhere ? 0 : letters;
  }
}
