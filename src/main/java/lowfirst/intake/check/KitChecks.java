package lowfirst.intake.check;

import java.util.ArrayList;
import java.util.List;
import lowfirst.board.Board;
import lowfirst.board.Kit;
import lowfirst.problem.Problem;

/** Holds the tables of a kit against each other. To add a check, add it to one of these groups. */
public final class KitChecks {
  private KitChecks() {}

  /** What names a part or a row twice or in vain; cells stand where {@code cells} knows. */
  public static List<Problem> of(Kit kit, NamedCells cells) {
    var problems = new ArrayList<Problem>();
    for (Board board : kit.boards()) {
      problems.addAll(BomChecks.of(board));
    }
    problems.addAll(ReferenceChecks.of(kit, cells));
    return problems;
  }

  /**
   * Where tables disagree, and what can't be true or isn't known: cautions and notes, no faults.
   */
  public static List<Problem> doubts(Kit kit) {
    var problems = new ArrayList<Problem>();
    for (Board board : kit.boards()) {
      problems.addAll(OneLine.of(board.items()));
      BomChecks.features(board).ifPresent(problems::add);
      problems.addAll(AgreementChecks.of(board));
      problems.addAll(PlacementChecks.of(board));
      problems.addAll(HeightChecks.of(board));
    }
    return problems;
  }
}
