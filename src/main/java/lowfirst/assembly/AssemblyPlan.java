package lowfirst.assembly;

import java.util.List;
import java.util.Optional;
import lowfirst.board.Designator;
import lowfirst.problem.Problem;

/**
 * The whole assembly, board by board, batch by batch.
 *
 * @param batches in the order to work
 * @param problems what stands in the way of a plan, for example a cycle of constraints
 */
public record AssemblyPlan(List<Batch> batches, List<Problem> problems) {

  public AssemblyPlan {
    batches = List.copyOf(batches);
    problems = List.copyOf(problems);
  }

  /** Every step in the order to work. */
  public List<Step> steps() {
    return batches.stream().flatMap(batch -> batch.steps().stream()).toList();
  }

  /** The step of this number. */
  public Optional<Step> step(int number) {
    return steps().stream().filter(step -> step.number() == number).findFirst();
  }

  /** The step that fits a designator of a board. */
  public Optional<Step> stepOf(String board, Designator designator) {
    return steps().stream()
        .filter(step -> step.board().equals(board) && step.designators().contains(designator))
        .findFirst();
  }
}
