package lowfirst.intake.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lowfirst.board.BodyArea;
import lowfirst.board.BodyGrid;
import lowfirst.board.Placed;
import lowfirst.board.Side;
import lowfirst.part.PartKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;

/**
 * Bodies that can't both sit where the placement list puts them. Found with a grid, so that the
 * time grows with the number of parts and of pairs found.
 */
final class Overlaps {
  /** Bodies that touch, or are drawn a little large, don't hinder one another. */
  private static final double DEPTH_MILLIMETRES = 0.5;

  private static final double SQUARE_MILLIMETRES = 15;

  /** When so many overlap, positions or sizes are wrong as a whole. */
  private static final int MOST_FOUND = 200;

  /** So many pairs are counted of which nobody knows how they lie. */
  private static final int MOST_OPEN = 10_000;

  /** Parts that are made to stand over others. */
  private static final Set<PartKind> BRIDGING =
      EnumSet.of(
          PartKind.SOCKET,
          PartKind.MODULE,
          PartKind.DISPLAY,
          PartKind.RELAY,
          PartKind.HEATSINK,
          PartKind.BATTERY,
          PartKind.WIRE_LINK);

  private final List<Placed> bodies;
  private final BodyGrid grid;
  private final List<Problem> problems = new ArrayList<>();

  /**
   * Pairs that overlap or not, as rotations turn out that are not known: how many, and the first.
   */
  private int open;

  private Optional<Pair> firstOpen = Optional.empty();

  private record Pair(PlacedBody before, PlacedBody body) {}

  private Overlaps(List<Placed> bodies) {
    this.bodies = bodies;
    this.grid = new BodyGrid(SQUARE_MILLIMETRES, bodies.size());
  }

  /** Every overlap among bodies of known size, up to a bound. */
  static List<Problem> among(List<Placed> bodies) {
    var overlaps = new Overlaps(bodies);
    for (int i = 0; i < bodies.size() && overlaps.goesOn(); i++) {
      overlaps.place(bodies.get(i));
    }
    overlaps.firstOpen.ifPresent(overlaps::sayOpen);
    return overlaps.problems;
  }

  private boolean goesOn() {
    return problems.size() < MOST_FOUND && open < MOST_OPEN;
  }

  private void place(Placed placed) {
    Side side = placed.placement().side();
    BodyArea area = BodyArea.of(placed.placement(), placed.outline().orElseThrow()).orElseThrow();
    for (int number : grid.overlapping(area, side, DEPTH_MILLIMETRES)) {
      PlacedBody before = PlacedBody.of(bodies.get(number));
      PlacedBody body = PlacedBody.of(placed);
      if (goesOn() && !mayLieUnder(before, body) && !mayLieUnder(body, before)) {
        compare(before, body);
      }
    }
    grid.add(area, side);
  }

  private void compare(PlacedBody before, PlacedBody body) {
    int tried = 0;
    int overlapping = 0;
    for (PlacedBody one : before.turns()) {
      for (PlacedBody other : body.turns()) {
        tried++;
        overlapping += one.overlaps(other, DEPTH_MILLIMETRES) ? 1 : 0;
      }
    }
    if (overlapping == tried) {
      problems.add(overlap(before, body));
    } else if (overlapping > 0) {
      open++;
      firstOpen = firstOpen.or(() -> Optional.of(new Pair(before, body)));
    }
  }

  private void sayOpen(Pair first) {
    boolean both = !first.before().isTurnKnown() && !first.body().isTurnKnown();
    String unturned = name(first.before().isTurnKnown() ? first.body() : first.before());
    problems.add(
        new Problem(
            Kind.BODIES_OVERLAP,
            first.body().placement().place(),
            "the bodies of "
                + name(first.before())
                + " and "
                + name(first.body())
                + (open > 2 ? " (and " + (open - 1) + " more pairs)" : "")
                + (open == 2 ? " (and one more pair)" : "")
                + " may overlap or not: how "
                + (both ? "they are" : unturned + " is")
                + " turned is not known",
            "add the rotation in degrees to the placement list, or try the parts dry"));
  }

  private static String name(PlacedBody body) {
    return body.placement().designator().text();
  }

  private static Problem overlap(PlacedBody before, PlacedBody body) {
    return new Problem(
        Kind.BODIES_OVERLAP,
        body.placement().place(),
        "the bodies of "
            + before.placement().designator()
            + " ("
            + before.outline().name()
            + ") and "
            + body.placement().designator()
            + " ("
            + body.outline().name()
            + ") overlap",
        "check their positions, rotations and packages");
  }

  /** Whether the low part may sit beneath the high one, as under a socket or a raised body. */
  private static boolean mayLieUnder(PlacedBody low, PlacedBody high) {
    double height = low.outline().seatedHeightMillimetres();
    boolean cleared = height > 0 && high.outline().standOffMillimetres() >= height;
    boolean pluggedIn = high.kind() == PartKind.SOCKET && low.kind() != PartKind.SOCKET;
    boolean bridged =
        BRIDGING.contains(high.kind())
            && !BRIDGING.contains(low.kind())
            && height < high.outline().seatedHeightMillimetres();
    return cleared || pluggedIn || bridged || !high.kind().isOnTheBoard();
  }
}
