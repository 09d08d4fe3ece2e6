package lowfirst.intake.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lowfirst.board.Board;
import lowfirst.board.BoardPart;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.intake.column.Numbers;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.part.SurfaceMount;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Whether the heights of one board's parts are known: one problem for all parts of one package. */
final class HeightChecks {
  /** So many designators are named, then it says how many there are. */
  private static final int NAMED = 6;

  private final Map<Doubt, List<Designator>> doubts = new LinkedHashMap<>();
  private final Map<Doubt, Place> places = new LinkedHashMap<>();
  private final Map<PartType, Boolean> flat = new HashMap<>();
  private final Map<String, Boolean> flatByPlacement = new HashMap<>();

  /** Parts of one package and kind about whose height there is one doubt. */
  private record Doubt(Kind kind, String packageName, String outline, double height) {}

  static List<Problem> of(Board board) {
    var checks = new HeightChecks();
    for (BoardPart part : board.parts()) {
      for (Item item : part.items()) {
        PartType type = item.partType();
        if (item.isFitted() && type.kind().isOnTheBoard()) {
          checks.part(part, type, item.place());
        }
      }
    }
    return checks.problems();
  }

  private void part(BoardPart part, PartType type, Place place) {
    BodyOutline outline = part.outline().orElse(null);
    String name = type.packageName();
    if (outline == null && isSurfaceMount(part, type)) {
      add(new Doubt(Kind.SURFACE_MOUNT, name, "", 0), part.designator(), place);
    } else if (outline == null || outline.height().isEmpty()) {
      add(new Doubt(Kind.HEIGHT_UNKNOWN, name, "", 0), part.designator(), place);
    } else if (outline.isAssumed()) {
      double height = outline.seatedHeightMillimetres();
      add(new Doubt(Kind.HEIGHT_ASSUMED, name, outline.name(), height), part.designator(), place);
    }
  }

  private boolean isSurfaceMount(BoardPart part, PartType type) {
    String name = part.placement().map(Placement::packageText).orElse("");
    return flat.computeIfAbsent(type, SurfaceMount::isNamed)
        || flatByPlacement.computeIfAbsent(
            name, text -> SurfaceMount.isNamed(text, PartKind.UNKNOWN));
  }

  private void add(Doubt doubt, Designator designator, Place place) {
    doubts.computeIfAbsent(doubt, none -> new ArrayList<>()).add(designator);
    places.putIfAbsent(doubt, place);
  }

  private List<Problem> problems() {
    var problems = new ArrayList<Problem>();
    doubts.forEach((doubt, designators) -> problems.add(problem(doubt, named(designators))));
    return problems;
  }

  private Problem problem(Doubt doubt, String names) {
    return switch (doubt.kind()) {
      case SURFACE_MOUNT -> surfaceMount(doubt, names);
      case HEIGHT_ASSUMED -> assumed(doubt, names);
      default -> unknown(doubt, names);
    };
  }

  private Problem surfaceMount(Doubt doubt, String names) {
    String told =
        doubt.packageName().isEmpty() ? "so the BOM says" : "\"" + doubt.packageName() + "\"";
    return new Problem(
        doubt.kind(),
        places.get(doubt),
        names
            + (areSeveral(names) ? " are surface-mount parts (" : " is a surface-mount part (")
            + told
            + "): soldered flat, with no leads through the board",
        "solder them before the through-hole parts, this program does not lead through that; if"
            + " yours have leads, name their package");
  }

  private Problem unknown(Doubt doubt, String names) {
    String why =
        doubt.packageName().isEmpty()
            ? "no package is named"
            : "\"" + doubt.packageName() + "\" tells no height";
    return new Problem(
        doubt.kind(),
        places.get(doubt),
        "how high " + names + " will stand is not known: " + why,
        areSeveral(names)
            ? "measure the parts and write the seated height of each into a height column of the BOM"
            : "measure the part and write its seated height into a height column of the BOM");
  }

  private static boolean areSeveral(String names) {
    return names.contains(",") || names.contains(" and ");
  }

  private Problem assumed(Doubt doubt, String names) {
    return new Problem(
        doubt.kind(),
        places.get(doubt),
        "the height of "
            + names
            + " was taken as "
            + Numbers.plain(doubt.height())
            + " mm ("
            + doubt.outline()
            + ")",
        "if that is wrong, write the height of the seated part into a height column");
  }

  private static String named(List<Designator> designators) {
    return Excerpt.of(designators.stream().distinct().toList(), NAMED);
  }
}
