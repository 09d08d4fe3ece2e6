package lowfirst.bench.page;

import java.util.List;

/**
 * The whole job: where to go on, each batch, each unit, what was set aside.
 *
 * @param next where to go on
 * @param goOn the address of it
 * @param skyline every step as a bar as tall as its part, as SVG
 * @param batches in the order to work
 * @param units with the address of their first-power page
 * @param aside what was set aside
 * @param timeSpent how long was worked so far
 */
public record JobScreen(
    String next,
    String goOn,
    String skyline,
    List<Batch> batches,
    List<Unit> units,
    List<FoundScreen.Hit> aside,
    String timeSpent) {

  /**
   * A batch.
   *
   * @param title for example {@code Batch 2 on driver}
   * @param words how it stands
   * @param steps its steps
   */
  public record Batch(String title, String words, List<FoundScreen.Hit> steps) {}

  /** A unit with how it stands. */
  public record Unit(String serial, String words, String power) {}
}
