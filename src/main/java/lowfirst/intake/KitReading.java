package lowfirst.intake;

import java.util.List;
import lowfirst.board.Kit;
import lowfirst.intake.table.Understanding;
import lowfirst.problem.Problem;
import lowfirst.problem.Severity;

/**
 * What came of reading a kit: the good part, and every problem in source order.
 *
 * @param kit what could be read
 * @param problems everything wrong in single tables and between them
 * @param understood how each table was understood, in the order read
 */
public record KitReading(Kit kit, List<Problem> problems, List<Understanding> understood) {

  public KitReading {
    problems = problems.stream().sorted().toList();
    understood = List.copyOf(understood);
  }

  /** Whether a person has to look at something before soldering. */
  public boolean needsALook() {
    return problems.stream().anyMatch(problem -> problem.severity() != Severity.NOTE);
  }

  /** How many cells, rows or files could not be used as they stand. */
  public long faults() {
    return problems.stream().filter(problem -> problem.severity() == Severity.FAULT).count();
  }
}
