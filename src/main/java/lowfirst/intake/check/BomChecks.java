package lowfirst.intake.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import lowfirst.board.Board;
import lowfirst.board.BoardPart;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Placed;
import lowfirst.board.Placement;
import lowfirst.intake.bom.SocketLines;
import lowfirst.part.PartKind;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * Holds the BOM of one board against its placement list: what is missing, double, or miscounted.
 */
final class BomChecks {
  /** More of them in one line would hide it. */
  private static final int HINTS = 3;

  /** So many lines that name a part again are told. */
  private static final int LINES_NAMED = 4;

  private final Board board;
  private final List<Problem> problems = new ArrayList<>();
  private AlikeDesignators alike;

  private BomChecks(Board board) {
    this.board = board;
  }

  static List<Problem> of(Board board) {
    var checks = new BomChecks(board);
    int named = 0;
    int placed = 0;
    int both = 0;
    for (BoardPart part : board.parts()) {
      boolean isNamed = part.item().isPresent();
      boolean isPlaced = part.placement().isPresent();
      named += isNamed ? 1 : 0;
      placed += isPlaced ? 1 : 0;
      both += isNamed && isPlaced ? 1 : 0;
    }
    checks.namedTwice(named);
    checks.placedTwice(placed);
    if (named > 0 && placed > 0) {
      if (both < named) {
        checks.notPlaced();
      }
      if (both < placed || !board.items().stream().allMatch(Item::isFitted)) {
        checks.notInBom();
      }
    }
    return checks.problems;
  }

  /** That lines were taken for what is no part, so nobody sorts or solders it; empty without. */
  static Optional<Problem> features(Board board) {
    List<Item> lines =
        board.bomLines().stream()
            .filter(item -> item.isFitted() && item.partType().kind() == PartKind.BOARD_FEATURE)
            .toList();
    List<Designator> names = lines.stream().flatMap(item -> item.designators().stream()).toList();
    return lines.stream()
        .findFirst()
        .map(
            first ->
                new Problem(
                    Kind.COLUMN_GUESSED,
                    first.place(),
                    Excerpt.of(names, LINES_NAMED)
                        + (names.size() == 1 ? " was" : " were")
                        + " taken for holes or marks of the board, where nothing is soldered in",
                    "if one is a part, write its body as its package, such as pin header 1x01"));
  }

  private void namedTwice(int different) {
    int named = board.items().stream().mapToInt(item -> item.designators().size()).sum();
    if (named == different) {
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
        } else if (before != null && !SocketLines.are(before, item)) {
          add(
              Kind.DESIGNATOR_TWICE,
              item,
              designator + " is named here and in line " + before.place().line(),
              "give it to one line; of a socket and what sits in it, name the socket apart; of"
                  + " variants, keep the lines of the one that you build");
        }
      }
    }
  }

  private void placedTwice(int different) {
    if (board.placements().size() == different) {
      return;
    }
    Map<Designator, List<Placement>> places = new LinkedHashMap<>();
    for (Placement one : board.placements()) {
      places.computeIfAbsent(one.designator(), none -> new ArrayList<>()).add(one);
    }
    long again = places.values().stream().filter(same -> same.size() > 1).count();
    boolean panel = again > 1 && again * 2 > places.size();
    for (List<Placement> same : places.values()) {
      if (same.size() > 1 && !isFeature(same.get(0).designator())) {
        problems.add(
            new Problem(
                Kind.PLACED_TWICE,
                same.get(1).place(),
                same.get(0).designator() + placedIn(same),
                panel
                    ? "if the list is of a panel of boards, export that of one board; else give"
                        + " each part a designator of its own"
                    : "give each part a designator of its own"));
      }
    }
  }

  /** Of several holes or marks under one name nobody asks which. */
  private boolean isFeature(Designator designator) {
    return board
        .itemOf(designator)
        .filter(item -> item.partType().kind() == PartKind.BOARD_FEATURE)
        .isPresent();
  }

  private static String placedIn(List<Placement> same) {
    String file = same.get(1).place().file();
    var others = new ArrayList<>(same.stream().map(one -> line(one.place(), file)).toList());
    others.remove(1);
    String lines = Excerpt.of(others, LINES_NAMED);
    return others.size() == 1
        ? " is placed here and in line " + lines
        : " is placed " + same.size() + " times, here and in lines " + lines;
  }

  private static String line(Place place, String file) {
    return place.line() + (place.file().equals(file) ? "" : " of " + place.file());
  }

  private void notPlaced() {
    for (Item item : board.items()) {
      var missing = new StringJoiner(", ");
      for (Designator designator : item.designators()) {
        if (board.find(designator).flatMap(BoardPart::placement).isEmpty()) {
          missing.add(designator.text());
        }
      }
      if (missing.length() > 0 && item.isFitted() && item.partType().kind().isOnTheBoard()) {
        add(
            Kind.NOT_PLACED,
            item,
            missing + ": no position in the placement list" + alike(item),
            "add it there, or mark the line as not fitted");
      }
    }
  }

  private void notInBom() {
    Set<Designator> said = new HashSet<>();
    for (Placed placed : board.placed()) {
      Placement placement = placed.placement();
      Optional<Item> item = placed.item();
      if (item.isEmpty() && said.add(placement.designator())) {
        problems.add(
            new Problem(
                Kind.NOT_IN_BOM,
                placement.place(),
                placement.designator()
                    + " is placed, but no BOM line names it"
                    + alike().inBom(placement.designator()),
                "add it to the BOM, or take it out here"));
      } else if (!placed.isFitted()) {
        problems.add(
            new Problem(
                Kind.PLACED_BUT_NOT_FITTED,
                placement.place(),
                placement.designator()
                    + (board.isOnlyPlaced(item.orElseThrow())
                        ? " has a position, but its row says it is not fitted"
                        : " has a position, but the BOM says it is not fitted"),
                "nothing, it is left out"));
      }
    }
  }

  private String alike(Item item) {
    return item.designators().stream()
        .filter(designator -> board.find(designator).flatMap(BoardPart::placement).isEmpty())
        .map(alike()::placed)
        .filter(hint -> !hint.isEmpty())
        .limit(HINTS)
        .collect(Collectors.joining());
  }

  /** Made only when something is missing. */
  private AlikeDesignators alike() {
    if (alike == null) {
      alike = AlikeDesignators.of(board.parts());
    }
    return alike;
  }

  private void add(Kind kind, Item item, String message, String remedy) {
    problems.add(new Problem(kind, item.place(), message, remedy));
  }
}
