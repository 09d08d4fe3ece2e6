package lowfirst.assembly;

import java.util.List;

/**
 * The steps seated together on one board before it is flipped once.
 *
 * @param number from 1, over the whole kit
 * @param board the board design's name
 * @param steps in the order to work; never empty
 */
public record Batch(int number, String board, List<Step> steps) {

  public Batch {
    steps = List.copyOf(steps);
    if (steps.isEmpty()) {
      throw new IllegalArgumentException("a batch has steps");
    }
  }

  /** Whether its parts are plugged in, so that nothing is soldered and the board isn't flipped. */
  public boolean isPluggedIn() {
    return steps.get(0).stage() == Step.Stage.PLUG_IN;
  }

  /** How many parts are seated on one unit before the flip. */
  public int partsPerUnit() {
    int parts = 0;
    for (Step step : steps) {
      parts += step.designators().size();
    }
    return parts;
  }
}
