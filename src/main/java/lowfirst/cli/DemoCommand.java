package lowfirst.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.board.Kit;
import lowfirst.channel.ChannelStudy;
import lowfirst.channel.KitInputs;
import lowfirst.cli.file.KitFolder;
import lowfirst.cli.manual.Example;
import lowfirst.cli.option.StoreOption;
import lowfirst.cli.process.ExitStatus;
import lowfirst.cli.process.Surroundings;
import lowfirst.intake.KitReader;
import lowfirst.intake.KitReading;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.part.BodyOutlines;
import lowfirst.progress.Progress;
import lowfirst.sheet.DemoDocument;
import lowfirst.sheet.DemoDocument.Chapter;
import lowfirst.sheet.document.Block.Facts.Fact;
import lowfirst.sorting.SortPlan;
import lowfirst.swap.SwapFinding;
import lowfirst.swap.SwapTarget;
import lowfirst.swap.subject.SwappedKit;
import picocli.CommandLine.Command;

/** The whole job on the sample kit, with the very commands that a builder types. */
@Command(
    name = "demo",
    mixinStandardHelpOptions = true,
    header = "the whole job on a sample kit",
    description =
        "Does the whole job on the sample kit, and writes every report into reports/. "
            + "Uses sample-boms/bell-player where the command runs; where there is none, a copy is put "
            + "below reports/.",
    exitCodeListHeading = ExitStatus.HEADING,
    exitCodeList = {
      "0:done",
      ExitStatus.NOT_UNDERSTOOD,
      ExitStatus.UNREADABLE_OR_UNWRITABLE,
      ExitStatus.OUR_BUG
    },
    footerHeading = Example.HEADING,
    footer = {
      "  lowfirst demo",
      "  lowfirst progress reports/sample-boms/bell-player    the evening so far"
    })
final class DemoCommand implements Callable<Integer> {
  private static final int WIDTH = 100;
  private static final String BUILDER = "A. Builder";

  /** The place that the sample kit's accepted swap is about, and the part that went in there. */
  private static final String AT = "Q15";

  private static final String INSTEAD = "BP-N100L";

  private final Surroundings surroundings;
  private final List<Chapter> chapters = new ArrayList<>();

  DemoCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    String checkout = "sample-boms/" + SampleKit.NAME;
    boolean here = Files.exists(surroundings.directory().resolve(checkout + "/boards.csv"));
    String kit = here ? checkout : "reports/" + checkout;
    Path folder = surroundings.directory().resolve(kit);
    List<String> kept = here ? List.of() : SampleKit.unpackInto(folder);
    walk(folder, new DemoRun(surroundings, kit, "reports/" + SampleKit.NAME));
    surroundings.out().print(surroundings.text(DemoDocument.of(kit, kept, chapters), WIDTH));
    return ExitStatus.OK;
  }

  private void walk(Path folder, DemoRun run) {
    KitReading reading = KitReader.read(KitFolder.read(folder));
    Kit built = SwappedKit.of(reading.kit(), ShippedTables.bodyOutlines());
    AssemblyPlan plan = AssemblyOrder.of(built, AssemblyOptions.USUAL);
    saved(run, "Are the lists in order?", DemoDocument.check(reading), List.of(), "check");
    saved(run, "What came in the bag?", DemoDocument.sort(SortPlan.of(built)), List.of(), "sort");
    saved(run, "In what order do the parts go in?", DemoDocument.steps(plan), List.of(), "steps");
    List<ChannelStudy> studies = ChannelStudy.of(KitInputs.of(built));
    saved(
        run,
        "Do the outputs carry their loads?",
        DemoDocument.loads(studies),
        DemoDocument.notCarried(studies),
        "loads");
    saved(
        run,
        "May another part go in instead?",
        DemoDocument.swap(swaps(reading.kit())),
        List.of(),
        "swap",
        AT,
        INSTEAD);
    bench(folder, plan, run);
    paper(run);
  }

  private static List<SwapFinding> swaps(Kit asWritten) {
    BodyOutlines outlines = ShippedTables.bodyOutlines();
    return SwapTarget.named(asWritten, AT, Optional.empty()).stream()
        .map(target -> SwapFinding.of(target.with(asWritten, INSTEAD, outlines), outlines))
        .toList();
  }

  private void saved(
      DemoRun run,
      String question,
      String answer,
      List<Fact> findings,
      String verb,
      String... further) {
    String file = verb + ".txt";
    run.save(file, verb, further);
    chapters.add(
        new Chapter(
            question,
            answer,
            findings,
            List.of(run.typed(verb, further)),
            List.of(run.report(file))));
  }

  /** Some first ticks, unless this store has some already. */
  private void bench(Path folder, AssemblyPlan plan, DemoRun run) {
    var store = new StoreOption();
    String[] seated = {"1", "--state", "seated", "--by", BUILDER};
    if (store.recorded(surroundings, folder).isEmpty()) {
      run.run("tick", seated);
      run.run("tick", "1", "--state", "soldered", "--by", BUILDER);
      run.run("tick", "1", "--state", "inspected", "--by", BUILDER);
      run.run("tick", "R11", "--unit", "controller-1", "--state", "seated", "--measured", "469.1");
      run.run(
          "tick", "D4", "--unit", "controller-1", "--state", "set-aside", "--reason", "band gone");
    }
    run.save("progress.txt", "progress");
    var progress = Progress.of(plan, store.recorded(surroundings, folder));
    chapters.add(
        new Chapter(
            "Where was I?",
            DemoDocument.progress(progress),
            List.of(),
            List.of(run.typed("tick", seated), run.typed("progress")),
            List.of(run.report("progress.txt"))));
  }

  private void paper(DemoRun run) {
    List<String> sheets = run.run("sheets").lines().map(line -> line.replace('\\', '/')).toList();
    chapters.add(
        new Chapter(
            "What goes on paper?",
            DemoDocument.PAPER,
            List.of(),
            List.of(run.typed("sheets")),
            sheets));
  }
}
