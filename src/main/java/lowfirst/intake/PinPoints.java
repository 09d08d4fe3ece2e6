package lowfirst.intake;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import lowfirst.board.Board;
import lowfirst.board.Item;
import lowfirst.board.Placed;
import lowfirst.board.Placement;
import lowfirst.part.PartKind;
import lowfirst.part.SurfaceMount;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;

/**
 * Leaded parts whose packages are drawn around pin 1: exported positions may be that pin's, and a
 * row of pins lie along y where it is not turned. Which of both a list gives it doesn't say.
 *
 * <p>Names: a public library of packages with its pitch in the name, whose conventions set the
 * origin of leaded parts on pin 1 (KiCad Library Convention F7.2).
 */
final class PinPoints {
  private static final Pattern LIBRARY_NAME =
      Pattern.compile("(?:.*:)?(?:DIP-\\d+_W\\d\\S*|\\p{L}\\S*_P\\d+(?:\\.\\d+)?mm(?:_\\S*)?)");

  /** So many are named. */
  private static final int NAMED = 6;

  private PinPoints() {}

  /** That the map may show them beside their holes; empty without such parts. */
  static Optional<Problem> said(Board board) {
    List<Placement> parts =
        board.placed().stream().filter(PinPoints::isOne).map(Placed::placement).toList();
    return parts.stream()
        .findFirst()
        .map(
            first ->
                new Problem(
                    Kind.COLUMN_GUESSED,
                    first.place(),
                    "positions were taken as the middles of bodies; the packages of "
                        + Excerpt.of(parts.stream().map(Placement::designator).toList(), NAMED)
                        + " are drawn around pin 1, so where the list gives that, maps show them"
                        + " beside their holes, and rows of pins perhaps across",
                    "find the place by the name that is printed on the board"));
  }

  private static boolean isOne(Placed placed) {
    PartKind kind = placed.item().map(item -> item.partType().kind()).orElse(PartKind.UNKNOWN);
    String listed = placed.placement().packageText();
    String name = listed.isEmpty() ? placed.item().map(PinPoints::packageName).orElse("") : listed;
    return placed.isFitted()
        && kind.isOnTheBoard()
        && LIBRARY_NAME.matcher(name).matches()
        && !SurfaceMount.isNamed(name, kind);
  }

  private static String packageName(Item item) {
    return item.partType().packageName();
  }
}
