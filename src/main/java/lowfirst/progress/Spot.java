package lowfirst.progress;

import lowfirst.board.Designator;
import lowfirst.board.Unit;

/**
 * One designator on one unit: where one single part goes. Ticks are keyed by it, so that they
 * outlive every change of the plan.
 */
public record Spot(Unit unit, Designator designator) {

  /** For example {@code R12 on driver-2}. */
  @Override
  public String toString() {
    return designator + " on " + unit.serial();
  }
}
