package lowfirst.intake.check;

import java.util.ArrayList;
import java.util.List;
import lowfirst.board.Board;
import lowfirst.board.Item;
import lowfirst.board.Placed;
import lowfirst.board.Placement;
import lowfirst.part.PartType;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;

/** Whether BOM and placement list of one board name the same values and packages. */
final class AgreementChecks {
  private AgreementChecks() {}

  static List<Problem> of(Board board) {
    var problems = new ArrayList<Problem>();
    var same = new SameOrNot();
    boolean valued = board.items().stream().anyMatch(item -> saysMoreThanANumber(item.partType()));
    for (Placed placed : board.placed()) {
      if (placed.item().isEmpty() || !placed.isFitted()) {
        continue;
      }
      Placement placement = placed.placement();
      Item item = placed.item().get();
      PartType type = item.partType();
      if (valued && same.valueDiffers(type, placement.valueText())) {
        problems.add(
            differing(Kind.VALUE_DISAGREES, placement, item, type.text(), placement.valueText()));
      }
      if (same.packageDiffers(type, placement.packageText())) {
        problems.add(
            differing(
                Kind.PACKAGE_DISAGREES,
                placement,
                item,
                type.packageName(),
                placement.packageText()));
      }
    }
    return problems;
  }

  /** A BOM that has nothing but order numbers can't be compared with values. */
  private static boolean saysMoreThanANumber(PartType type) {
    return type.value().isPresent() || !type.text().equals(type.typeNumber());
  }

  private static Problem differing(
      Kind kind, Placement placement, Item item, String inBom, String placed) {
    return new Problem(
        kind,
        placement.place(),
        placement.designator()
            + " is \""
            + placed
            + "\" here, but \""
            + inBom
            + "\" in line "
            + item.place().line()
            + " of "
            + item.place().file(),
        "find out which is right, and correct the other");
  }
}
