package lowfirst.intake;

import java.util.List;
import lowfirst.board.Kit;
import lowfirst.problem.Problem;

/**
 * What came of reading a kit: the good part, and every problem in source order.
 *
 * @param kit what could be read
 * @param problems everything wrong in single tables and between them
 */
public record KitReading(Kit kit, List<Problem> problems) {

  public KitReading {
    problems = problems.stream().sorted().toList();
  }
}
