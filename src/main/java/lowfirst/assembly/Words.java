package lowfirst.assembly;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import lowfirst.board.Designator;
import lowfirst.problem.Excerpt;

/** The few words that reasons and problems of this room are made of. */
final class Words {
  private static final int MOST_NAMED = 6;

  private Words() {}

  /** For example {@code R1, R2 and R7}, at most six of them. */
  static String list(Collection<Designator> designators) {
    List<String> names = designators.stream().sorted().map(Designator::text).toList();
    if (names.size() > MOST_NAMED) {
      return Excerpt.of(names, MOST_NAMED);
    }
    if (names.size() < 2) {
      return String.join("", names);
    }
    return String.join(", ", names.subList(0, names.size() - 1))
        + " and "
        + names.get(names.size() - 1);
  }

  /** For example {@code 2.5 mm}. */
  static String millimetres(double height) {
    return BigDecimal.valueOf(height)
            .setScale(2, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString()
        + " mm";
  }
}
