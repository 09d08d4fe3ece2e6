package lowfirst.bench.page;

import java.util.List;

/**
 * First power of one unit, stage by stage.
 *
 * @param serial the unit
 * @param readiness what is still missing before power; may be empty
 * @param cautions what to mind before anything else
 * @param stages in the order to do
 * @param others the other units
 */
public record PowerScreen(
    String serial,
    String readiness,
    List<String> cautions,
    List<Stage> stages,
    List<FoundScreen.Hit> others) {

  /**
   * A check.
   *
   * @param number its place in the order
   * @param check its name, the same as on the sign-off sheet
   * @param how how to do it
   * @param expect what to expect
   * @param action the id of what is about to be recorded
   * @param outcome what is recorded; {@code passed}, {@code failed} or empty
   * @param recorded what is recorded in words; empty when nothing is
   * @param turn {@code now} for the one to do next, else empty
   */
  public record Stage(
      int number,
      String check,
      String how,
      String expect,
      String action,
      String outcome,
      String recorded,
      String turn) {}
}
