package lowfirst.sheet.power;

/**
 * One check at first power.
 *
 * @param heading what stands over the checks of its stage: what is on, and what is still unplugged
 * @param name short, unique on its sheet; what {@code tick} records a reading under
 * @param how what to do with which instrument
 * @param expect the value to expect
 * @param stop when to stop, and what then
 */
public record PowerCheck(
    Stage stage, String heading, String name, String how, String expect, String stop) {

  /** The stages, in the order to work. */
  public enum Stage {
    BEFORE_POWER,
    RAILS,
    CHIPS,
    DUMMY,
    LOADS
  }
}
