package lowfirst.intake.check;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import lowfirst.board.Board;
import lowfirst.board.BoardPart;
import lowfirst.board.Item;
import lowfirst.board.Placed;
import lowfirst.board.Placement;
import lowfirst.intake.column.Numbers;
import lowfirst.part.PartKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Whether the positions of one board can be true. */
final class PlacementChecks {
  private final Board board;
  private final List<Problem> problems = new ArrayList<>();

  private PlacementChecks(Board board) {
    this.board = board;
  }

  static List<Problem> of(Board board) {
    var checks = new PlacementChecks(board);
    if (checks.areAllTheSame()) {
      checks.sayAllTheSame();
    } else {
      checks.atTheOrigin();
      checks.outside();
      checks.problems.addAll(Overlaps.among(checks.bodies()));
    }
    return checks.problems;
  }

  private boolean areAllTheSame() {
    List<Placement> placements = board.placements();
    if (placements.size() < 2) {
      return false;
    }
    Placement first = placements.get(0);
    return placements.stream()
        .allMatch(
            placement ->
                placement.xMillimetres() == first.xMillimetres()
                    && placement.yMillimetres() == first.yMillimetres());
  }

  private void sayAllTheSame() {
    Placement first = board.placements().get(0);
    problems.add(
        new Problem(
            Kind.POSITIONS_ALL_THE_SAME,
            Place.ofFile(first.place().file()),
            "all "
                + board.placements().size()
                + " parts are at x = "
                + Numbers.plain(first.xMillimetres())
                + ", y = "
                + Numbers.plain(first.yMillimetres())
                + " mm: these are no real positions",
            "export the positions from the finished layout"));
  }

  /** Several parts in one spot at 0, 0 were never placed. */
  private void atTheOrigin() {
    List<Placement> there =
        board.placements().stream()
            .filter(placement -> placement.xMillimetres() == 0 && placement.yMillimetres() == 0)
            .toList();
    if (there.size() > 1) {
      problems.add(
          new Problem(
              Kind.POSITIONS_ALL_THE_SAME,
              there.get(0).place(),
              there.size()
                  + " parts are at 0, 0, among them "
                  + there.get(0).designator()
                  + " and "
                  + there.get(1).designator()
                  + ": they may never have been placed",
              "export the positions from the finished layout"));
    }
  }

  private void outside() {
    Optional<Board.Size> size = board.size();
    if (size.isEmpty()) {
      return;
    }
    List<Placement> outside =
        board.placements().stream().filter(placement -> !size.get().holds(placement)).toList();
    if (board.outline().isEmpty()) {
      problems.add(
          new Problem(
              Kind.OUTSIDE_THE_OUTLINE,
              Place.ofFile(outside.get(0).place().file()),
              outside.size()
                  + " of "
                  + board.placements().size()
                  + " parts lie outside the board: the list has another origin, or another unit; its"
                  + " parts reach from "
                  + reach("x", Placement::xMillimetres)
                  + " and from "
                  + reach("y", Placement::yMillimetres)
                  + " mm",
              "give the board's lower left corner in the list's own origin as left and bottom in"
                  + " boards.csv, or the list's unit with --column placements.unit=...; until then"
                  + " maps show no edge"));
      return;
    }
    for (Placement placement : outside) {
      problems.add(
          new Problem(
              Kind.OUTSIDE_THE_OUTLINE,
              placement.place(),
              placement.designator()
                  + " at x = "
                  + Numbers.plain(placement.xMillimetres())
                  + ", y = "
                  + Numbers.plain(placement.yMillimetres())
                  + " mm lies outside the board of "
                  + Numbers.plain(size.get().widthMillimetres())
                  + " x "
                  + Numbers.plain(size.get().heightMillimetres())
                  + " mm",
              "check its position, or the board's size in boards.csv"));
    }
  }

  private String reach(String axis, ToDoubleFunction<Placement> middle) {
    DoubleSummaryStatistics all =
        board.placements().stream().mapToDouble(middle).summaryStatistics();
    return axis + " = " + Numbers.plain(all.getMin()) + " to " + Numbers.plain(all.getMax());
  }

  /** Bodies that sit on the board itself; what is plugged into a socket sits above it. */
  private List<Placed> bodies() {
    Set<String> sockets = sockets();
    var bodies = new ArrayList<Placed>(board.placed().size());
    for (Placed placed : board.placed()) {
      // A part that is placed twice is said to be; its second place is no body of its own.
      if (placed.isPlacedAgain() || !placed.isFitted() || !PlacedBody.isOne(placed)) {
        continue;
      }
      if (sockets.isEmpty()
          || PlacedBody.kind(placed) == PartKind.SOCKET
          || !sockets.contains(spot(placed.placement()))) {
        bodies.add(placed);
      }
    }
    return bodies;
  }

  /** Where sockets sit; most boards have none. */
  private Set<String> sockets() {
    var spots = new HashSet<String>();
    for (Item item : board.items()) {
      if (item.partType().kind() == PartKind.SOCKET) {
        item.designators().stream()
            .flatMap(name -> board.find(name).flatMap(BoardPart::placement).stream())
            .forEach(placement -> spots.add(spot(placement)));
      }
    }
    return spots;
  }

  private static String spot(Placement placement) {
    return Math.round(placement.xMillimetres())
        + " "
        + Math.round(placement.yMillimetres())
        + placement.side();
  }
}
