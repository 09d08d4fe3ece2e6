package lowfirst.sheet.progress;

import java.util.Optional;
import lowfirst.board.Unit;

/**
 * What the code beside a step says: the address of the step on the bench page or, without one, the
 * step and the unit in words.
 *
 * @param bench where the bench page is, for example {@code http://192.168.1.20:7000}
 */
public record StepAddress(Optional<String> bench) {
  /** Just the step and the unit. */
  public static final StepAddress IN_WORDS = new StepAddress(Optional.empty());

  String of(int step, Unit unit) {
    return bench
        .map(address -> address.replaceFirst("/+$", "") + "/step/" + step)
        .orElse("step " + step + " of " + unit.serial());
  }
}
