package lowfirst.bench.screen;

import java.util.List;
import java.util.OptionalInt;
import lowfirst.assembly.Batch;
import lowfirst.assembly.Step;
import lowfirst.bench.page.FoundScreen.Hit;
import lowfirst.bench.page.JobScreen;
import lowfirst.board.Designator;
import lowfirst.board.Unit;
import lowfirst.progress.Progress;
import lowfirst.progress.SpotRecord;
import lowfirst.progress.State;
import lowfirst.progress.Tally;
import lowfirst.progress.WorkingTime;
import lowfirst.sheet.html.SvgWriter;
import lowfirst.sheet.map.Skyline;
import lowfirst.sheet.progress.ProgressWords;
import lowfirst.sheet.wording.Sentence;
import lowfirst.sheet.wording.StepWording;

/** Puts the whole job on the screen. */
public final class JobScreens {
  private final Progress progress;

  private JobScreens(Progress progress) {
    this.progress = progress;
  }

  /** The whole job as it stands. */
  public static JobScreen of(Progress progress) {
    var screens = new JobScreens(progress);
    return new JobScreen(
        progress
            .next()
            .map(next -> Sentence.of(ProgressWords.next(next)))
            .orElse(
                progress.setAside().isEmpty()
                    ? "Every part is inspected. First power comes next."
                    : "Nothing is left but what was set aside."),
        progress.next().isPresent() ? "/" : "/power",
        SvgWriter.write(
            Skyline.of(
                progress,
                progress
                    .next()
                    .map(next -> OptionalInt.of(next.step().number()))
                    .orElse(OptionalInt.empty())),
            "The job, step by step"),
        progress.plan().batches().stream().map(screens::batch).toList(),
        progress.units().stream().map(screens::unit).toList(),
        progress.setAside().stream().map(JobScreens::aside).toList(),
        ProgressWords.duration(WorkingTime.of(progress.log().events()).time()));
  }

  private JobScreen.Batch batch(Batch batch) {
    return new JobScreen.Batch(
        "Batch " + batch.number() + " on " + batch.board(),
        counts(progress.tally(batch)),
        batch.steps().stream().map(this::step).toList());
  }

  private Hit step(Step step) {
    return step(progress, step);
  }

  /** A step as something to go to. */
  static Hit step(Progress progress, Step step) {
    return new Hit(
        "/step/" + step.number(),
        "Step " + step.number() + ": " + StepWording.shortName(step.partType()),
        String.join(", ", step.designators().stream().map(Designator::text).toList())
            + " on "
            + step.board()
            + " – "
            + counts(progress.tally(step)));
  }

  private JobScreen.Unit unit(Unit unit) {
    return new JobScreen.Unit(
        unit.serial(), counts(progress.tally(unit)) + " – first power", View.power(unit.serial()));
  }

  private static Hit aside(SpotRecord record) {
    return new Hit(
        View.spot(record.spot()),
        record.spot().toString(),
        record.reasonSetAside().orElse("no reason given"));
  }

  /** For example {@code 3 to do, 5 seated}; states without parts are left out. */
  static String counts(Tally tally) {
    List<String> parts =
        java.util.stream.Stream.of(State.values())
            .filter(state -> tally.in(state) > 0)
            .map(state -> tally.in(state) + " " + state.words())
            .toList();
    return String.join(", ", parts);
  }
}
