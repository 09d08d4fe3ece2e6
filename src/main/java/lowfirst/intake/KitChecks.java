package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import lowfirst.board.Board;
import lowfirst.board.Kit;
import lowfirst.problem.Problem;

/** Holds the tables of a kit against each other. To add a check, add it to one of these groups. */
final class KitChecks {
  private KitChecks() {}

  /** Every disagreement between the tables, whose cells stand where {@code cells} knows. */
  static List<Problem> of(Kit kit, NamedCells cells) {
    var problems = new ArrayList<Problem>();
    for (Board board : kit.boards()) {
      BoardIndex index = BoardIndex.of(board);
      problems.addAll(BomChecks.of(index));
      problems.addAll(AgreementChecks.of(index));
      problems.addAll(PlacementChecks.of(index));
      problems.addAll(HeightChecks.of(index));
    }
    problems.addAll(ReferenceChecks.of(kit, cells));
    return problems;
  }
}
