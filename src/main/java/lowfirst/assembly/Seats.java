package lowfirst.assembly;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.assembly.Seat.StatedBy;
import lowfirst.board.Board;
import lowfirst.board.BoardPart;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.part.SurfaceMount;

/**
 * Everything that is fitted to one board: what the BOM lists and doesn't leave out, and what is
 * only in the placement list, with the words that stand there.
 */
final class Seats {
  private Seats() {}

  /** The seats of a board, each designator once, in the order of the tables. */
  static Map<Designator, Seat> of(Board board) {
    var seats = new LinkedHashMap<Designator, Seat>(2 * board.parts().size());
    for (BoardPart part : board.parts()) {
      Seat seat = part.item().isEmpty() ? onlyPlaced(part) : null;
      for (Item item : part.items()) {
        if (item.isFitted() && item.partType().kind().isOnTheBoard()) {
          // A socket that shares its circuit's designator is added by Sockets under its own.
          seat = seat == null ? seat(part, item) : theCircuit(seat, seat(part, item));
        }
      }
      if (seat != null) {
        seats.put(part.designator(), seat);
      }
    }
    return seats;
  }

  private static Seat theCircuit(Seat first, Seat second) {
    return first.type().kind() == PartKind.SOCKET && second.type().kind() != PartKind.SOCKET
        ? second
        : first;
  }

  private static Seat seat(BoardPart part, Item item) {
    Optional<BodyOutline> outline = part.outline();
    OptionalDouble known = outline.map(BodyOutline::height).orElse(OptionalDouble.empty());
    boolean stated = item.heightMillimetres().isPresent();
    return new Seat(
        part.designator(),
        item.partType(),
        part.placement(),
        outline,
        stated ? item.heightMillimetres() : known,
        stated ? StatedBy.BOM : statedBy(outline, known),
        Step.Stage.SOLDER,
        "");
  }

  private static StatedBy statedBy(Optional<BodyOutline> outline, OptionalDouble known) {
    if (known.isEmpty()) {
      return StatedBy.NOBODY;
    }
    return outline.filter(BodyOutline::isAssumed).isPresent()
        ? StatedBy.ASSUMPTION
        : StatedBy.OUTLINE;
  }

  /** A placement that no BOM line names: fitted, since it is placed, with what the list says. */
  private static Seat onlyPlaced(BoardPart part) {
    Placement placement = part.placement().orElseThrow();
    Optional<BodyOutline> outline = part.outline();
    OptionalDouble known = outline.map(BodyOutline::height).orElse(OptionalDouble.empty());
    var type =
        new PartType(
            PartKind.UNKNOWN,
            placement.valueText(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "",
            placement.packageText());
    return new Seat(
        part.designator(),
        type,
        part.placement(),
        outline,
        known,
        statedBy(outline, known),
        Step.Stage.SOLDER,
        "not in the BOM, only in the placement list");
  }

  /** The parts among these that are soldered flat, which needs no order by height. */
  static List<Designator> surfaceMount(Collection<Seat> seats) {
    var asked = new HashMap<PartType, Boolean>();
    var flat = new ArrayList<Designator>();
    for (Seat seat : seats) {
      if (seat.outline().isEmpty()) {
        String placed = seat.placement().map(Placement::packageText).orElse("");
        if (asked.computeIfAbsent(seat.type(), SurfaceMount::isNamed)
            || SurfaceMount.isNamed(placed, seat.type().kind())) {
          flat.add(seat.designator());
        }
      }
    }
    return flat;
  }

  /** The items of a board that are fitted and have this kind. */
  static List<Item> items(Board board, PartKind kind) {
    var found = new ArrayList<Item>();
    for (Item item : board.items()) {
      if (item.isFitted() && item.partType().kind() == kind) {
        found.add(item);
      }
    }
    return found;
  }
}
