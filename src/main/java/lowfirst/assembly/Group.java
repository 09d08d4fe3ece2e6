package lowfirst.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import lowfirst.board.Designator;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;

/**
 * Parts of one type at one height that one step will fit.
 *
 * @param seats in the order to fill; never empty
 */
record Group(List<Seat> seats) {

  /**
   * The order among groups that are equally tall, to within what makers' tolerances decide: sturdy
   * before delicate, either way round before one way round, then by kind, height and first place.
   */
  static final Comparator<Group> AMONG_EQUALS =
      Comparator.comparing(Group::isDelicate)
          .thenComparing((Group group) -> group.kind().isPolarised())
          .thenComparing(Group::kind)
          .thenComparingDouble(group -> group.height().orElse(Double.MAX_VALUE))
          .thenComparing(group -> group.first().designator());

  Group {
    seats = List.copyOf(seats);
  }

  Seat first() {
    return seats.get(0);
  }

  PartType type() {
    return first().type();
  }

  PartKind kind() {
    return type().kind();
  }

  OptionalDouble height() {
    return first().height();
  }

  int size() {
    return seats.size();
  }

  boolean isWireLink() {
    return kind() == PartKind.WIRE_LINK;
  }

  /** Whether long heat or static could spoil it. */
  boolean isDelicate() {
    return kind().isHeatSensitive() || kind().isStaticSensitive();
  }

  List<Designator> designators() {
    return seats.stream().map(Seat::designator).toList();
  }

  /** This group, or as few as possible of at most {@code most} parts each. */
  List<Group> pieces(int most) {
    var pieces = new ArrayList<Group>();
    for (int from = 0; from < seats.size(); from += most) {
      pieces.add(new Group(seats.subList(from, Math.min(seats.size(), from + most))));
    }
    return pieces;
  }
}
