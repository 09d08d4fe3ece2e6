package lowfirst.intake.cell;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How many designators a cell itself says that it lists, before or behind them: {@code 2x C1, C2};
 * {@code (2) C1, C2}; {@code C1, C2 (2x)}; {@code C1, C2, 2x}.
 *
 * @param parts how many
 * @param designators the cell without this count
 */
record StatedCount(int parts, String designators) {
  private static final Pattern BEFORE =
      Pattern.compile(
          "(?iu)(?:\\((\\d{1,4})\\s?[x×]?\\)\\s*|(\\d{1,4})\\s?(?:[x×*:]\\s*|pcs?\\.?\\s+|st(?:k|ück)?\\.?\\s+))(?=\\p{L}{1,4}\\d)");

  private static final Pattern BEHIND =
      Pattern.compile(
          "(?:[\\s,;]*\\((?:(\\d{1,4})\\s?[xX×]|[x×]\\s?(\\d{1,4}))\\)|[\\s,;]+(\\d{1,4})\\s?[x×])$");

  /** The count in a cell; most have none, which their first and last signs tell. */
  static Optional<StatedCount> in(String cell) {
    char first = cell.isEmpty() ? ' ' : cell.charAt(0);
    char last = cell.isEmpty() ? ' ' : cell.charAt(cell.length() - 1);
    boolean before = first == '(' || (first >= '0' && first <= '9');
    boolean behind = last == ')' || last == 'x' || last == '×';
    if (!before && !behind) {
      return Optional.empty();
    }
    Matcher count = (before ? BEFORE : BEHIND).matcher(cell);
    if (!(before ? count.lookingAt() : count.find())) {
      return Optional.empty();
    }
    String rest = before ? cell.substring(count.end()) : cell.substring(0, count.start());
    return Optional.of(new StatedCount(number(count), rest));
  }

  /** Each way to write it has a group of its own. */
  private static int number(Matcher count) {
    int group = 1;
    while (count.group(group) == null) {
      group++;
    }
    return Integer.parseInt(count.group(group));
  }
}
