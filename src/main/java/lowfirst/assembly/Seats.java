package lowfirst.assembly;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
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
 * only in the placement list, with the words that stand there. Each designator once.
 */
final class Seats {
  private final List<Seat> all;

  /** Made when the first seat is looked up: most boards have neither sockets nor heatsinks. */
  private Map<Designator, Seat> byName;

  private Seats(List<Seat> all) {
    this.all = all;
  }

  /** The seats of a board, in the order of the tables. */
  static Seats of(Board board) {
    var seats = new ArrayList<Seat>(board.parts().size());
    Height height = null;
    for (BoardPart part : board.parts()) {
      Seat seat = part.item().isEmpty() ? onlyPlaced(part) : null;
      for (Item item : part.items()) {
        if (item.isFitted() && item.partType().kind().isOnTheBoard()) {
          height =
              height != null && height.isOf(item, part.outline())
                  ? height
                  : Height.of(item, part.outline());
          Seat named = seat(part, height);
          // A socket that shares its circuit's designator is added by Sockets under its own.
          seat = seat == null ? named : theCircuit(seat, named);
        }
      }
      if (seat != null) {
        seats.add(seat);
      }
    }
    return new Seats(seats);
  }

  /** All of them, in order. */
  List<Seat> all() {
    return Collections.unmodifiableList(all);
  }

  /** The seat of a designator; null when there is none. */
  Seat find(Designator designator) {
    if (byName == null) {
      byName = new HashMap<>(2 * all.size());
      all.forEach(seat -> byName.put(seat.designator(), seat));
    }
    return byName.get(designator);
  }

  /** The same with other seats in their places, and new ones at the end. */
  Seats with(Map<Designator, Seat> others) {
    if (others.isEmpty()) {
      return this;
    }
    var left = new LinkedHashMap<>(others);
    var changed = new ArrayList<Seat>(all.size() + others.size());
    for (Seat seat : all) {
      Seat other = left.remove(seat.designator());
      changed.add(other == null ? seat : other);
    }
    changed.addAll(left.values());
    return new Seats(changed);
  }

  /** The same without these. */
  Seats without(Set<Designator> gone) {
    return gone.isEmpty()
        ? this
        : new Seats(all.stream().filter(seat -> !gone.contains(seat.designator())).toList());
  }

  private static Seat theCircuit(Seat first, Seat second) {
    return first.type().kind() == PartKind.SOCKET && second.type().kind() != PartKind.SOCKET
        ? second
        : first;
  }

  /** How tall the parts of a BOM line with one body are: found once for all of them. */
  private record Height(
      Item item, Optional<BodyOutline> outline, OptionalDouble millimetres, StatedBy statedBy) {

    static Height of(Item item, Optional<BodyOutline> outline) {
      OptionalDouble known = outline.map(BodyOutline::height).orElse(OptionalDouble.empty());
      return item.heightMillimetres().isPresent()
          ? new Height(item, outline, item.heightMillimetres(), StatedBy.BOM)
          : new Height(item, outline, known, Seats.statedBy(outline, known));
    }

    @SuppressWarnings("ReferenceEquality") // quick to tell; an equal one may be made anew
    boolean isOf(Item line, Optional<BodyOutline> body) {
      return item == line && outline.equals(body);
    }
  }

  private static Seat seat(BoardPart part, Height height) {
    return new Seat(
        part.designator(),
        height.item().partType(),
        part.placement(),
        part.side(),
        part.outline(),
        height.millimetres(),
        height.statedBy(),
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
    var type = PartType.named(PartKind.UNKNOWN, placement.valueText(), "", placement.packageText());
    return new Seat(
        part.designator(),
        type,
        part.placement(),
        part.side(),
        outline,
        known,
        statedBy(outline, known),
        Step.Stage.SOLDER,
        "not in the BOM, only in the placement list");
  }

  /** The parts among these that are soldered flat, which needs no order by height. */
  Set<Designator> surfaceMount() {
    var asked = new HashMap<PartType, Boolean>();
    var flat = new LinkedHashSet<Designator>();
    for (Seat seat : all) {
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
