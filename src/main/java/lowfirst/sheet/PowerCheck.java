package lowfirst.sheet;

/**
 * One check at first power.
 *
 * @param name short, unique on its sheet; what {@code tick} records a reading under
 * @param how what to do with which instrument
 * @param expect the value to expect
 * @param stop when to stop, and what then
 */
public record PowerCheck(Stage stage, String name, String how, String expect, String stop) {

  /** The stages, in the order to work. */
  public enum Stage {
    BEFORE_POWER("Before power: meter only, ICs out of their sockets, loads unplugged"),
    RAILS("Stage 1: rails only, ICs out of their sockets, loads unplugged"),
    CHIPS("Stage 2: ICs in, loads unplugged"),
    DUMMY("Stage 3: one channel on a dummy load"),
    LOADS("Stage 4: each load in turn");

    private final String words;

    Stage(String words) {
      this.words = words;
    }

    /** The heading over its checks. */
    public String words() {
      return words;
    }
  }
}
