package lowfirst.intake;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.board.Side;

/** Angles that some exports write as R90, or MR90 on a mirrored part. */
final class TurnSigns {
  private static final Pattern TURN =
      Pattern.compile("(?i)[SM]{0,2}R([+-]?\\d{1,3}(?:[.,]\\d{1,6})?)");

  private TurnSigns() {}

  static boolean isOne(String text) {
    return TURN.matcher(text).matches();
  }

  /** The degrees that a cell names; NaN when it holds no such sign. */
  static double angle(String text) {
    Matcher turn = TURN.matcher(text);
    return turn.matches() ? PlainNumber.orNan(turn.group(1)) : Double.NaN;
  }

  /** The bottom for a mirrored part. */
  static Optional<Side> side(String text) {
    return !text.isEmpty() && Character.toUpperCase(text.charAt(0)) == 'M' && isOne(text)
        ? Optional.of(Side.BOTTOM)
        : Optional.empty();
  }
}
