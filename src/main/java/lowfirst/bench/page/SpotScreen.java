package lowfirst.bench.page;

import java.util.List;
import java.util.Optional;

/**
 * One part on one unit: its state, what can be done with it alone, and its history.
 *
 * @param designator what the board calls it
 * @param serial the unit
 * @param partType what the BOM asks for
 * @param state how it stands
 * @param fitted what was fitted instead; empty when nothing was
 * @param step the address of its step; empty when the plan no longer has it
 * @param round the controls for it alone
 * @param history its life, newest first
 */
public record SpotScreen(
    String designator,
    String serial,
    String partType,
    String state,
    Optional<String> fitted,
    Optional<String> step,
    StepScreen.Round round,
    List<Line> history) {

  /**
   * An event.
   *
   * @param when when, at the bench
   * @param who who; may be empty
   * @param words what happened
   * @param standing {@code undone} when it no longer counts, else empty
   */
  public record Line(String when, String who, String words, String standing) {}

  public SpotScreen {
    history = List.copyOf(history);
  }
}
