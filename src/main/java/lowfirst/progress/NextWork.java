package lowfirst.progress;

import java.util.List;
import lowfirst.assembly.Batch;
import lowfirst.assembly.Step;

/**
 * Where to go on.
 *
 * @param batch the batch that is on the bench
 * @param step the step that fills the screen
 * @param state what to bring it to
 * @param spots what is left of the step in this round, unit by unit in the order to fill; never
 *     empty
 */
public record NextWork(Batch batch, Step step, State state, List<Spot> spots) {

  public NextWork {
    spots = List.copyOf(spots);
    if (spots.isEmpty()) {
      throw new IllegalArgumentException("nothing is left of step " + step.number());
    }
  }
}
