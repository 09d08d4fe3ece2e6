package lowfirst.assembly;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.board.Placement;
import lowfirst.board.Side;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.problem.Problem;

/**
 * In what order to fit the parts of a kit. Start reading here.
 *
 * <p>Board by board: {@link Seats} are everything to fit; {@link Sockets} and {@link Heatsinks}
 * find what is plugged in or bolted; {@link Covers} what lies under what. Each side of the board
 * then gets its groups, their {@link PreferredOrder}, and the fewest {@link Batches}. The side
 * whose tallest part is lower goes first, since the board rests on what is fitted already. Circuits
 * are plugged into their sockets last, after the rail check.
 */
public final class AssemblyOrder {
  private final AssemblyOptions options;
  private final List<Batch> batches = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private int steps = 0;

  private AssemblyOrder(AssemblyOptions options) {
    this.options = options;
  }

  /** The plan for every board of a kit, in the order of its boards. */
  public static AssemblyPlan of(Kit kit, AssemblyOptions options) {
    var order = new AssemblyOrder(options);
    kit.boards().forEach(order::add);
    return new AssemblyPlan(order.batches, order.problems);
  }

  private void add(Board board) {
    Seats fitted = Seats.of(board);
    Set<Designator> flat = fitted.surfaceMount();
    if (!flat.isEmpty()) {
      problems.add(OrderProblems.leftOut(board, new ArrayList<>(flat)));
    }
    Seats placed = Sockets.applied(board, fitted.without(flat));
    Heatsinks.Bolted bolted = Heatsinks.applied(board, placed);
    List<Seat> seats = bolted.seats().all();
    List<Covers.Pair> covers =
        Covers.in(seats).stream().filter(pair -> !areBolted(pair, bolted.heatsinkOf())).toList();
    var demands = new ArrayList<Precedence.Demand>();
    covers.forEach(
        pair ->
            demands.add(new Precedence.Demand(pair.one().designator(), pair.other().designator())));
    bolted.heatsinkOf().forEach((part, sink) -> demands.add(new Precedence.Demand(sink, part)));
    Set<Seat> covering = covers.stream().map(Covers.Pair::other).collect(Collectors.toSet());
    for (List<Group> side : sides(seats, covering)) {
      Precedence precedence = Precedence.of(side, demands);
      precedence.rings().forEach(ring -> problems.add(OrderProblems.ring(board, ring)));
      List<Ranked> ordered = PreferredOrder.of(side, precedence);
      problems.addAll(OrderProblems.linksThatWait(board, ordered, covers));
      Batches.of(Reasons.given(ordered, covers), options).forEach(batch -> add(board, batch));
    }
    plugIn(board, seats);
  }

  private static boolean areBolted(Covers.Pair pair, Map<Designator, Designator> heatsinkOf) {
    Designator one = pair.one().designator();
    Designator other = pair.other().designator();
    return other.equals(heatsinkOf.get(one))
        || one.equals(heatsinkOf.get(other))
        || Objects.equals(heatsinkOf.get(one), heatsinkOf.getOrDefault(other, other));
  }

  /**
   * What makes parts one step: type, height, kind of work, who says how tall they are, and whether
   * a wire link has to wait for what it lies over.
   */
  private record Sort(
      PartType type,
      OptionalDouble height,
      Step.Stage stage,
      Seat.StatedBy statedHeight,
      boolean waits) {
    static Sort of(Seat seat, Set<Seat> covering) {
      boolean waits = seat.type().kind() == PartKind.WIRE_LINK && covering.contains(seat);
      return new Sort(seat.type(), seat.height(), seat.stage(), seat.statedHeight(), waits);
    }

    /** Field by field, as of a part type: a record's own is put together at each start. */
    @Override
    public boolean equals(Object other) {
      return other instanceof Sort that
          && type.equals(that.type)
          && height.equals(that.height)
          && stage == that.stage
          && statedHeight == that.statedHeight
          && waits == that.waits;
    }

    @Override
    public int hashCode() {
      return 31 * (31 * type.hashCode() + height.hashCode()) + stage.hashCode();
    }
  }

  private static List<Group> groups(Collection<Seat> seats, Set<Seat> covering) {
    Map<Sort, List<Seat>> bySort = new LinkedHashMap<>();
    Optional<Seat> before = Optional.empty();
    List<Seat> alike = List.of();
    for (Seat seat : seats) {
      // Of a line of the BOM one seat is like the other.
      if (before.isEmpty() || !seat.isOfTheSameLine(before.get())) {
        alike = bySort.computeIfAbsent(Sort.of(seat, covering), none -> new ArrayList<>());
      }
      alike.add(seat);
      before = Optional.of(seat);
    }
    var groups = new ArrayList<Group>();
    for (List<Seat> list : bySort.values()) {
      list.sort(Comparator.comparing(Seat::designator));
      groups.add(new Group(list));
    }
    return groups;
  }

  /** The groups to solder on each side, the lower side first, the top first when that is open. */
  private static List<List<Group>> sides(Collection<Seat> seats, Set<Seat> covering) {
    Map<Side, List<Seat>> bySide = new EnumMap<>(Side.class);
    seats.stream()
        .filter(seat -> seat.stage() != Step.Stage.PLUG_IN)
        .forEach(seat -> bySide.computeIfAbsent(seat.side(), none -> new ArrayList<>()).add(seat));
    return bySide.values().stream()
        .sorted(Comparator.comparingDouble(AssemblyOrder::tallest))
        .map(side -> groups(side, covering))
        .toList();
  }

  private static double tallest(List<Seat> seats) {
    return seats.stream()
        .mapToDouble(seat -> seat.height().orElse(Double.POSITIVE_INFINITY))
        .max()
        .orElse(0);
  }

  private void plugIn(Board board, Collection<Seat> seats) {
    List<Ranked> groups =
        groups(seats.stream().filter(seat -> seat.stage() == Step.Stage.PLUG_IN).toList(), Set.of())
            .stream()
            .sorted(Comparator.comparing(group -> group.first().designator()))
            .map(AssemblyOrder::pluggedIn)
            .toList();
    if (!groups.isEmpty()) {
      add(board, groups);
    }
  }

  private static Ranked pluggedIn(Group group) {
    String where = group.size() == 1 ? group.first().remark() : "into their sockets";
    return new Ranked(
        group, 0, 0, Set.of(), Rule.AFTER_RAIL_CHECK, where + ", after the rail check");
  }

  private void add(Board board, List<Ranked> batch) {
    var made = new ArrayList<Step>();
    batch.forEach(ranked -> made.add(step(board, ranked)));
    batches.add(new Batch(batches.size() + 1, board.name(), made));
  }

  private Step step(Board board, Ranked ranked) {
    Group group = ranked.group();
    var placements = new ArrayList<Placement>();
    group.seats().forEach(seat -> seat.placement().ifPresent(placements::add));
    return new Step(
        ++steps,
        board.name(),
        board.count(),
        group.type(),
        group.designators(),
        placements,
        group.first().side(),
        group.height(),
        ranked.rule(),
        ranked.why(),
        group.first().stage());
  }
}
