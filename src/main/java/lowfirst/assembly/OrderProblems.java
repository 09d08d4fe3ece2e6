package lowfirst.assembly;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Demands on the order that can't all be met, worded where they are found. */
final class OrderProblems {
  private OrderProblems() {}

  /** Parts each of which must go before the next, and the last before the first. */
  static Problem ring(Board board, List<Designator> ring) {
    var chain = new StringBuilder();
    ring.forEach(name -> chain.append(name).append(" before "));
    chain.append(ring.get(0));
    return new Problem(
        Kind.ORDER_CYCLE,
        place(board),
        "on board " + board.name() + " no order is possible: " + chain,
        "correct the heights, positions or heatsink descriptions of "
            + Words.list(ring)
            + "; the plan starts with "
            + ring.get(0)
            + " meanwhile");
  }

  /** Parts that these steps don't lead through. */
  static Problem leftOut(Board board, List<Designator> flat) {
    String names = String.join(", ", flat.stream().sorted().map(Designator::text).toList());
    return new Problem(
        Kind.SURFACE_MOUNT,
        place(board),
        "on board "
            + board.name()
            + " these are surface-mount parts and not among the steps: "
            + names,
        "solder them flat to their pads before the first step");
  }

  /** Wire links go first, unless one lies over another part: that is a ring of two rules. */
  static List<Problem> linksThatWait(Board board, List<Ranked> ordered, List<Covers.Pair> covers) {
    Map<Designator, Set<Designator>> under = new HashMap<>();
    for (Covers.Pair pair : covers) {
      under
          .computeIfAbsent(pair.other().designator(), none -> new TreeSet<>())
          .add(pair.one().designator());
    }
    var problems = new ArrayList<Problem>();
    for (Ranked ranked : ordered) {
      if (ranked.group().isWireLink() && ranked.rank() > 0) {
        var below = new TreeSet<Designator>();
        ranked
            .group()
            .designators()
            .forEach(link -> below.addAll(under.getOrDefault(link, Set.of())));
        problems.add(waits(board, ranked.group().designators(), below));
      }
    }
    return problems;
  }

  private static Problem waits(Board board, List<Designator> links, Set<Designator> below) {
    return new Problem(
        Kind.ORDER_CYCLE,
        place(board),
        "on board "
            + board.name()
            + " wire link "
            + Words.list(links)
            + " should go first, but lies over "
            + Words.list(below)
            + ", which must be there before it",
        "lead the link around, or fit it after " + Words.list(below) + " as the plan has it");
  }

  private static Place place(Board board) {
    return board.items().stream()
        .findFirst()
        .map(item -> Place.ofFile(item.place().file()))
        .orElse(Place.ofFile(board.name()));
  }
}
