package lowfirst.assembly;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lowfirst.board.BodyArea;
import lowfirst.board.BodyGrid;
import lowfirst.board.Side;
import lowfirst.part.PartKind;

/**
 * Which parts sit under which: bodies on one side of the board that overlap in plan, where the
 * upper one is of a kind that bridges others and is taller, or its stand-off clears the lower one.
 * A body of unknown height that overlaps one that bridges can only be under it.
 *
 * <p>Found with a grid, so that the time grows with the number of parts and of pairs found.
 */
final class Covers {
  /** Bodies that touch or are drawn a little large don't cover one another. */
  private static final double DEPTH_MILLIMETRES = 0.5;

  private static final double SQUARE_MILLIMETRES = 20;

  /** More bodies than this around one point are placeholders, not places. */
  private static final int MOST_ON_A_SPOT = 4;

  private static final Set<PartKind> BRIDGING =
      Set.of(
          PartKind.SOCKET,
          PartKind.MODULE,
          PartKind.DISPLAY,
          PartKind.RELAY,
          PartKind.HEATSINK,
          PartKind.BATTERY);

  private Covers() {}

  /** A lower and an upper seat, or any two that overlap. */
  record Pair(Seat one, Seat other) {}

  private record Placed(Seat seat, BodyArea area) {}

  /** Where a part sits, to the last digit. */
  private record Spot(double x, double y, Side side) {
    static Optional<Spot> of(Seat seat) {
      return seat.placement()
          .map(place -> new Spot(place.xMillimetres(), place.yMillimetres(), place.side()));
    }
  }

  /** Every pair of a part and one that covers it. */
  static List<Pair> in(List<Seat> seats) {
    List<Seat> upper = seats.stream().filter(Covers::mayCover).toList();
    return overlapping(seats, upper).stream()
        .filter(pair -> isUnder(pair.one(), pair.other()))
        .toList();
  }

  private static boolean mayCover(Seat seat) {
    return BRIDGING.contains(seat.type().kind())
        || (seat.type().kind() == PartKind.WIRE_LINK && seat.statedHeight() == Seat.StatedBy.BOM);
  }

  private static boolean isUnder(Seat low, Seat high) {
    boolean cleared = low.height().isPresent() && high.standOff() >= low.height().getAsDouble();
    if (cleared || BRIDGING.contains(low.type().kind())) {
      return cleared;
    }
    if (low.height().isEmpty()) {
      return BRIDGING.contains(high.type().kind());
    }
    return high.height().isPresent() && low.height().getAsDouble() < high.height().getAsDouble();
  }

  /**
   * Every pair of one of {@code seats} and a different one of {@code over} whose bodies overlap.
   */
  @SuppressWarnings("ReferenceEquality") // a seat stands in both lists as one object
  static List<Pair> overlapping(List<Seat> seats, List<Seat> over) {
    if (over.isEmpty()) {
      return List.of();
    }
    Set<Spot> placeholders = placeholders(seats);
    List<Placed> upper = new ArrayList<>();
    over.forEach(
        seat -> believed(seat, placeholders).ifPresent(area -> upper.add(new Placed(seat, area))));
    var grid = new BodyGrid(SQUARE_MILLIMETRES, upper.size());
    upper.forEach(placed -> grid.add(placed.area(), placed.seat().side()));
    var pairs = new ArrayList<Pair>();
    for (Seat seat : upper.isEmpty() ? List.<Seat>of() : seats) {
      believed(seat, placeholders)
          .ifPresent(
              area ->
                  grid.overlapping(area, seat.side(), DEPTH_MILLIMETRES).stream()
                      .map(number -> upper.get(number).seat())
                      .filter(other -> other != seat)
                      .forEach(other -> pairs.add(new Pair(seat, other))));
    }
    return pairs;
  }

  private static Optional<BodyArea> believed(Seat seat, Set<Spot> placeholders) {
    return seat.stage() == Step.Stage.PLUG_IN
        ? Optional.empty()
        : seat.area().filter(area -> !placeholders.contains(Spot.of(seat).orElseThrow()));
  }

  private static Set<Spot> placeholders(List<Seat> seats) {
    var counts = new HashMap<Spot, Integer>();
    seats.forEach(seat -> Spot.of(seat).ifPresent(spot -> counts.merge(spot, 1, Integer::sum)));
    var crowded = new HashSet<Spot>();
    counts.forEach(
        (spot, count) -> {
          if (count > MOST_ON_A_SPOT) {
            crowded.add(spot);
          }
        });
    return crowded;
  }
}
