package lowfirst.intake.cell;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.board.Side;
import lowfirst.intake.column.PlainNumber;

/**
 * Angles that some exports write as R90, or MR90 on a mirrored part, and those that say which way
 * they turn: 90 CCW, 270° clockwise.
 */
public final class TurnSigns {
  private static final Pattern TURN =
      Pattern.compile("(?i)[SM]{0,2}R([+-]?\\d{1,3}(?:[.,]\\d{1,6})?)");

  /** The way round, after words such as degrees; without counter or anti it is clockwise. */
  private static final String WAY = "(?:(c|counter-?|anti-?)?\\s?c(?:lock)?-?w(?:ise)?)";

  private static final Pattern WITH_WAY =
      Pattern.compile("(?i)([+-]?\\d{1,3}(?:[.,]\\d{1,6})?)\\s*(?:°|deg(?:rees?)?\\.?)?\\s*" + WAY);

  private static final Pattern HEADED = Pattern.compile("(?i).*?\\b" + WAY + "\\b\\W*");

  private TurnSigns() {}

  /** Whether a cell is such a sign, or says which way it turns. */
  public static boolean isOne(String text) {
    return TURN.matcher(text).matches() || saysWay(text);
  }

  /** The degrees that a cell names; NaN when it holds no such sign. */
  public static double angle(String text) {
    Matcher turn = TURN.matcher(text);
    if (turn.matches()) {
      return PlainNumber.orNan(turn.group(1));
    }
    Matcher way = WITH_WAY.matcher(text);
    return way.matches()
        ? PlainNumber.orNan(way.group(1)) * (way.group(2) == null ? -1 : 1)
        : Double.NaN;
  }

  /** Whether a cell says which way round its angle is. */
  public static boolean saysWay(String text) {
    return WITH_WAY.matcher(text).matches();
  }

  /** Whether a header says that its bare angles are clockwise. */
  public static boolean areClockwise(String header) {
    Matcher way = HEADED.matcher(header);
    return way.matches() && way.group(1) == null;
  }

  /** The bottom for a mirrored part. */
  public static Optional<Side> side(String text) {
    return !text.isEmpty() && Character.toUpperCase(text.charAt(0)) == 'M' && isOne(text)
        ? Optional.of(Side.BOTTOM)
        : Optional.empty();
  }
}
