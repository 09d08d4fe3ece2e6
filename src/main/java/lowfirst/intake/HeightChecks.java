package lowfirst.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartType;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Whether the heights of one board's parts are known: one problem for all parts of one package. */
final class HeightChecks {
  /** So many designators are named, then it says how many there are. */
  private static final int NAMED = 6;

  private final Board board;
  private final Map<Doubt, List<Designator>> doubts = new LinkedHashMap<>();
  private final Map<Doubt, Place> places = new LinkedHashMap<>();

  /** Parts of one package and kind about whose height there is one doubt. */
  private record Doubt(Kind kind, String packageName, String outline, double height) {}

  private HeightChecks(Board board) {
    this.board = board;
  }

  static List<Problem> of(Board board) {
    var checks = new HeightChecks(board);
    for (Item item : board.items()) {
      PartType type = item.partType();
      if (item.isFitted() && type.kind().isOnTheBoard()) {
        item.designators().forEach(part -> checks.part(part, type.packageName(), item.place()));
      }
    }
    if (board.items().isEmpty()) {
      for (Placement placement : board.placements()) {
        checks.part(placement.designator(), placement.packageText(), placement.place());
      }
    }
    return checks.problems();
  }

  private void part(Designator designator, String packageName, Place place) {
    BodyOutline outline = board.outlines().get(designator);
    if (outline == null || outline.height().isEmpty()) {
      add(new Doubt(Kind.HEIGHT_UNKNOWN, packageName, "", 0), designator, place);
    } else if (outline.isAssumed()) {
      add(
          new Doubt(
              Kind.HEIGHT_ASSUMED, packageName, outline.name(), outline.seatedHeightMillimetres()),
          designator,
          place);
    }
  }

  private void add(Doubt doubt, Designator designator, Place place) {
    doubts.computeIfAbsent(doubt, none -> new ArrayList<>()).add(designator);
    places.putIfAbsent(doubt, place);
  }

  private List<Problem> problems() {
    var problems = new ArrayList<Problem>();
    doubts.forEach(
        (doubt, designators) ->
            problems.add(
                doubt.kind() == Kind.HEIGHT_UNKNOWN
                    ? unknown(doubt, named(designators))
                    : assumed(doubt, named(designators))));
    return problems;
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
        "measure the part and write its seated height into a height column of the BOM");
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
    var names = new ArrayList<String>();
    designators.stream().limit(NAMED).forEach(designator -> names.add(designator.text()));
    int more = designators.size() - names.size();
    return String.join(", ", names) + (more > 0 ? " and " + more + " more" : "");
  }
}
