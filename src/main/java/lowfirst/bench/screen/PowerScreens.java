package lowfirst.bench.screen;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import lowfirst.bench.page.FoundScreen.Hit;
import lowfirst.bench.page.PowerScreen;
import lowfirst.bench.page.PowerScreen.Stage;
import lowfirst.board.Kit;
import lowfirst.board.Unit;
import lowfirst.channel.LoadFindings;
import lowfirst.progress.Event.PowerReading;
import lowfirst.progress.Event.PowerReading.Outcome;
import lowfirst.progress.Progress;
import lowfirst.progress.State;
import lowfirst.progress.Tally;
import lowfirst.sheet.power.FirstPowerChecks;
import lowfirst.sheet.power.PowerCheck;
import lowfirst.sheet.progress.ProgressWords;
import lowfirst.sheet.wording.Sentence;

/** Puts first power of a unit on the screen. */
public final class PowerScreens {
  private PowerScreens() {}

  /** First power of a unit; {@code findings} of the kit. */
  public static PowerScreen of(
      Kit kit, LoadFindings findings, Progress progress, Unit unit, ZoneId zone) {
    Map<String, PowerReading> readings = progress.powerReadings(unit);
    var stages = new ArrayList<Stage>();
    boolean turnGiven = false;
    for (PowerCheck check : FirstPowerChecks.of(kit, progress.plan(), unit, findings)) {
      Optional<PowerReading> reading = Optional.ofNullable(readings.get(check.name()));
      boolean passed = reading.filter(one -> one.outcome() == Outcome.PASSED).isPresent();
      boolean turn = !turnGiven && !passed;
      turnGiven |= turn;
      stages.add(stage(stages.size() + 1, check, reading, turn ? "now" : "", zone));
    }
    return new PowerScreen(
        unit.serial(),
        readiness(progress.tally(unit), FirstPowerChecks.hasSockets(progress.plan(), unit)),
        FirstPowerChecks.cautions(kit, unit),
        stages,
        progress.units().stream()
            .filter(other -> !other.equals(unit))
            .map(
                other ->
                    new Hit(
                        View.power(other.serial()),
                        "First power of " + other.serial(),
                        JobScreens.counts(progress.tally(other))))
            .toList());
  }

  /** Parts that are plugged in come after the rail check, so they may still be to do. */
  private static String readiness(Tally tally, boolean hasSockets) {
    int open = tally.total() - tally.in(State.INSPECTED);
    return open == 0
        ? ""
        : open
            + " of "
            + tally.total()
            + " parts are not inspected yet."
            + (hasSockets ? " Only those that are plugged in come after the rail check." : "");
  }

  private static Stage stage(
      int number, PowerCheck check, Optional<PowerReading> reading, String turn, ZoneId zone) {
    return new Stage(
        number,
        check.name(),
        check.heading() + ". " + check.how(),
        "Expect: " + check.expect() + ". Stop: " + check.stop(),
        UUID.randomUUID().toString(),
        reading.map(one -> one.outcome().words()).orElse(""),
        reading.map(one -> recorded(one, zone)).orElse(""),
        turn);
  }

  private static String recorded(PowerReading reading, ZoneId zone) {
    return (reading.outcome() == Outcome.PASSED ? "✓ " : "✗ ")
        + Sentence.begun(reading.outcome().words())
        + reading.measured().map(value -> ", measured " + value).orElse("")
        + ", "
        + ProgressWords.time(reading.when(), zone)
        + (reading.who().isBlank() ? "" : ", " + reading.who());
  }
}
