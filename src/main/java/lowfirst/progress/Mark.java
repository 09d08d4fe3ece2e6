package lowfirst.progress;

import java.time.Instant;
import java.util.Optional;

/**
 * That a state was reached: by whom, when, and what the meter said.
 *
 * @param state the state that was reached
 * @param who who did it; may be empty
 * @param when when it was done
 * @param measured the meter reading as written
 * @param reason why it was set aside, or what was noted with the tick
 */
public record Mark(
    State state, String who, Instant when, Optional<String> measured, Optional<String> reason) {

  static Mark of(Event.Tick tick) {
    return new Mark(tick.state(), tick.who(), tick.when(), tick.measured(), tick.reason());
  }
}
