package lowfirst.assembly;

import java.util.List;
import lowfirst.board.Designator;
import lowfirst.board.SampleBoards;

/** The plan of one small board named {@code b}, and what one asks of it. */
final class Plans {
  private Plans() {}

  /** A board to be planned. */
  static SampleBoards board() {
    return SampleBoards.board("b");
  }

  /** Its plan with the usual batches. */
  static AssemblyPlan plan(SampleBoards board) {
    return AssemblyOrder.of(SampleBoards.kit(board), AssemblyOptions.USUAL);
  }

  /** The step that fits a part. */
  static Step step(AssemblyPlan plan, String designator) {
    return plan.stepOf("b", Designator.of(designator)).orElseThrow();
  }

  /** Whether a part is soldered, bolted or plugged in. */
  static Step.Stage stage(AssemblyPlan plan, String designator) {
    return step(plan, designator).stage();
  }

  /** The first part of each step, in the order to work. */
  static List<String> firsts(AssemblyPlan plan) {
    return plan.steps().stream().map(Plans::first).toList();
  }

  /** The first part of a step. */
  static String first(Step step) {
    return texts(step).get(0);
  }

  /** The parts of a step. */
  static List<String> texts(Step step) {
    return step.designators().stream().map(Designator::text).toList();
  }
}
