package lowfirst.intake;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lowfirst.board.BodyArea;
import lowfirst.board.GridCell;
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

  private static final double CELL_MILLIMETRES = 15;

  /** A body over more cells than this is not believed. */
  private static final int MOST_CELLS = 400;

  /** When so many overlap, positions or sizes are wrong as a whole. */
  private static final int MOST_FOUND = 200;

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

  private final Map<GridCell, List<PlacedBody>> grid = new HashMap<>();
  private final Set<List<PlacedBody>> found = new HashSet<>();
  private final List<Problem> problems = new ArrayList<>();

  private Overlaps() {}

  /** Every overlap among these bodies, up to a bound. */
  static List<Problem> among(List<PlacedBody> bodies) {
    var overlaps = new Overlaps();
    for (PlacedBody body : bodies) {
      overlaps.place(body);
      if (overlaps.problems.size() >= MOST_FOUND) {
        break;
      }
    }
    return overlaps.problems;
  }

  private void place(PlacedBody body) {
    BodyArea box = body.box();
    long left = GridCell.at(box.left(), CELL_MILLIMETRES);
    long right = GridCell.at(box.right(), CELL_MILLIMETRES);
    long bottom = GridCell.at(box.bottom(), CELL_MILLIMETRES);
    long top = GridCell.at(box.top(), CELL_MILLIMETRES);
    if ((right - left + 1) * (top - bottom + 1) > MOST_CELLS) {
      return;
    }
    for (long column = left; column <= right; column++) {
      for (long row = bottom; row <= top; row++) {
        List<PlacedBody> here =
            grid.computeIfAbsent(new GridCell(column, row, body.side()), none -> new ArrayList<>());
        for (int i = 0; i < here.size() && problems.size() < MOST_FOUND; i++) {
          compare(here.get(i), body);
        }
        here.add(body);
      }
    }
  }

  private void compare(PlacedBody before, PlacedBody body) {
    boolean hinder =
        before.overlaps(body, DEPTH_MILLIMETRES)
            && !before.placement().designator().equals(body.placement().designator())
            && !mayLieUnder(before, body)
            && !mayLieUnder(body, before);
    if (hinder && found.add(List.of(before, body))) {
      problems.add(
          new Problem(
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
              "check their positions, rotations and packages"));
    }
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
