package lowfirst.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.board.Designator;

/** Lists of designators as people write them: runs of three and more are joined. */
final class DesignatorWords {
  private static final Pattern NUMBERED = Pattern.compile("(\\D+?)(\\d{1,6})");
  private static final int SHORTEST_RUN = 3;

  private DesignatorWords() {}

  /** For example {@code R1-R16, R20, R22}, in the order given. */
  static String list(List<Designator> designators) {
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

  private static boolean follows(Designator one, Designator next) {
    Optional<Matcher> first = numbered(one);
    Optional<Matcher> second = numbered(next);
    return first.isPresent()
        && second.isPresent()
        && first.get().group(1).equals(second.get().group(1))
        && !second.get().group(2).startsWith("0")
        && Integer.parseInt(first.get().group(2)) + 1 == Integer.parseInt(second.get().group(2));
  }

  private static Optional<Matcher> numbered(Designator designator) {
    Matcher matcher = NUMBERED.matcher(designator.text());
    return matcher.matches() ? Optional.of(matcher) : Optional.empty();
  }
}
