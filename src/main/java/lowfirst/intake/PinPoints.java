package lowfirst.intake;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Placed;
import lowfirst.board.Placement;
import lowfirst.part.PartKind;
import lowfirst.part.SurfaceMount;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;

/**
 * Leaded parts whose packages are drawn around pin 1, so that exported positions may be that pin's,
 * which the list doesn't say, and whose rows of pins lie along y where they are not turned.
 *
 * <p>Names: a public library of packages has the pitch in the name; its published conventions set
 * the origin of leaded parts on pin 1, so that its rows run down from there (common practice).
 */
final class PinPoints {
  private static final Pattern LIBRARY_NAME =
      Pattern.compile("(?:.*:)?(?:DIP-\\d+_W\\d\\S*|\\p{L}\\S*_P\\d+(?:\\.\\d+)?mm(?:_\\S*)?)");

  private static final Pattern ROW_OF_PINS =
      Pattern.compile("(?:.*:)?(?:DIP-\\d+_W|Pin_?(?:Header|Socket)_|IDC-Header_)\\S*");

  private static final double QUARTER = 90;

  /** So many are named. */
  private static final int NAMED = 6;

  private PinPoints() {}

  /** The placements of a list, rows of pins turned as bodies that lie along x. */
  static List<Placement> lying(List<Placement> listed, List<Item> items) {
    var rows = new HashSet<Designator>();
    items.stream()
        .filter(item -> isRow(packageName(item)))
        .forEach(item -> rows.addAll(item.designators()));
    var names = new HashMap<String, Boolean>();
    UnaryOperator<Placement> lying =
        placement ->
            (placement.packageText().isEmpty()
                    ? rows.contains(placement.designator())
                    : names.computeIfAbsent(placement.packageText(), PinPoints::isRow))
                ? placement.turned(QUARTER)
                : placement;
    return listed.stream().map(lying).toList();
  }

  private static boolean isRow(String packageName) {
    return ROW_OF_PINS.matcher(packageName).matches();
  }

  /** That the map may show them beside their holes; empty without such parts. */
  static Optional<Problem> said(Board board) {
    // Many parts bear few names.
    var known = new EnumMap<PartKind, Map<String, Boolean>>(PartKind.class);
    List<Placement> parts =
        board.placed().stream()
            .filter(placed -> isOne(placed, known))
            .map(Placed::placement)
            .toList();
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
                        + " beside their holes",
                    "find the place by the name that is printed on the board"));
  }

  private static boolean isOne(Placed placed, Map<PartKind, Map<String, Boolean>> known) {
    PartKind kind = placed.item().map(item -> item.partType().kind()).orElse(PartKind.UNKNOWN);
    String listed = placed.placement().packageText();
    String name = listed.isEmpty() ? placed.item().map(PinPoints::packageName).orElse("") : listed;
    return placed.isFitted()
        && kind.isOnTheBoard()
        && known
            .computeIfAbsent(kind, first -> new HashMap<>())
            .computeIfAbsent(
                name,
                text -> LIBRARY_NAME.matcher(text).matches() && !SurfaceMount.isNamed(text, kind));
  }

  private static String packageName(Item item) {
    return item.partType().packageName();
  }
}
