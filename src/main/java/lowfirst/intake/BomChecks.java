package lowfirst.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;

/**
 * Holds the BOM of one board against its placement list: what is missing, double, or miscounted.
 */
final class BomChecks {
  private final BoardIndex index;
  private final Board board;
  private final Map<Designator, Item> items;
  private final Map<Designator, Placement> placements;
  private final List<Problem> problems = new ArrayList<>();

  private BomChecks(BoardIndex index) {
    this.index = index;
    this.board = index.board();
    this.items = index.items();
    this.placements = index.placements();
  }

  static List<Problem> of(BoardIndex index) {
    var checks = new BomChecks(index);
    checks.namedTwice();
    checks.placedTwice();
    if (!checks.items.isEmpty() && !checks.placements.isEmpty()) {
      checks.notPlaced();
      checks.notInBom();
    }
    return checks.problems;
  }

  private void namedTwice() {
    int named = board.items().stream().mapToInt(item -> item.designators().size()).sum();
    if (named == items.size()) {
      return;
    }
    var first = new HashMap<Designator, Item>();
    for (Item item : board.items()) {
      var inLine = new HashSet<Designator>();
      for (Designator designator : item.designators()) {
        Item before = first.putIfAbsent(designator, item);
        if (!inLine.add(designator)) {
          add(
              Kind.DESIGNATOR_TWICE,
              item,
              designator + " is named twice in this line",
              "delete one");
        } else if (before != null) {
          add(
              Kind.DESIGNATOR_TWICE,
              item,
              designator + " is named here and in line " + before.place().line(),
              "give it to one line; of a socket and what sits in it, name the socket apart");
        }
      }
    }
  }

  private void placedTwice() {
    if (board.placements().size() == placements.size()) {
      return;
    }
    var first = new HashMap<Designator, Placement>();
    for (Placement placement : board.placements()) {
      Placement before = first.putIfAbsent(placement.designator(), placement);
      if (before != null) {
        problems.add(
            new Problem(
                Kind.PLACED_TWICE,
                placement.place(),
                placement.designator() + " is placed here and in line " + before.place().line(),
                "give each part a designator of its own"));
      }
    }
  }

  private void notPlaced() {
    for (Item item : board.items()) {
      var missing = new StringJoiner(", ");
      for (Designator designator : item.designators()) {
        if (!placements.containsKey(designator)) {
          missing.add(designator.text());
        }
      }
      if (missing.length() > 0 && item.isFitted() && item.partType().kind().isOnTheBoard()) {
        add(
            Kind.NOT_PLACED,
            item,
            missing + ": no position in the placement list",
            "add it there, or mark the line as not fitted");
      }
    }
  }

  private void notInBom() {
    Set<Designator> said = new HashSet<>();
    for (BoardIndex.Joined joined : index.joined()) {
      Placement placement = joined.placement();
      Optional<Item> item = joined.item();
      if (item.isEmpty() && said.add(placement.designator())) {
        problems.add(
            new Problem(
                Kind.NOT_IN_BOM,
                placement.place(),
                placement.designator() + " is placed, but no BOM line names it",
                "add it to the BOM, or delete the row"));
      } else if (item.isPresent() && !item.get().isFitted()) {
        problems.add(
            new Problem(
                Kind.PLACED_BUT_NOT_FITTED,
                placement.place(),
                placement.designator() + " has a position, but the BOM says it is not fitted",
                "nothing, it is left out"));
      }
    }
  }

  private void add(Kind kind, Item item, String message, String remedy) {
    problems.add(new Problem(kind, item.place(), message, remedy));
  }
}
