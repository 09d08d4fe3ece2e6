package lowfirst.cli.verb;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.board.Kit;
import lowfirst.cli.manual.Example;
import lowfirst.cli.option.BatchOptions;
import lowfirst.cli.option.KitArgument;
import lowfirst.cli.option.StoreOption;
import lowfirst.cli.process.ExitStatus;
import lowfirst.cli.process.Surroundings;
import lowfirst.progress.Progress;
import lowfirst.progress.Selection;
import lowfirst.sheet.csv.CsvWriter;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.progress.ProgressDocument;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Where the work stands. */
@Command(
    name = "progress",
    mixinStandardHelpOptions = true,
    header = "where the work stands",
    description = "Says where to go on, how far each unit and batch is, what was set aside.",
    exitCodeListHeading = ExitStatus.HEADING,
    exitCodeList = {"0:done", ExitStatus.NOT_UNDERSTOOD, ExitStatus.UNREADABLE, ExitStatus.OUR_BUG},
    footerHeading = Example.HEADING,
    footer = {
      "  lowfirst progress my-kit",
      "  lowfirst progress my-kit --history R12 --unit driver-2",
      "  lowfirst progress my-kit --csv > progress.csv"
    })
public final class ProgressCommand implements Callable<Integer> {
  private static final int WIDTH = 100;

  private final Surroundings surroundings;

  @Spec private CommandSpec spec;
  @Mixin private KitArgument kit = new KitArgument();
  @Mixin private BatchOptions batches = new BatchOptions();
  @Mixin private StoreOption store = new StoreOption();

  @Option(names = "--csv", description = "a row for each part of each unit, for machines")
  private boolean csv;

  @Option(
      names = "--history",
      paramLabel = "<what>",
      description = "everything that was recorded of a designator, a step or a unit")
  private List<String> history = new ArrayList<>();

  @Option(
      names = "--unit",
      paramLabel = "<serial>",
      description = "with --history: only on this unit")
  private List<String> units = new ArrayList<>();

  /** The verb in these surroundings. */
  public ProgressCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    Kit read = kit.read(surroundings).kit();
    var progress =
        Progress.of(
            AssemblyOrder.of(read, batches.options()),
            store.recorded(surroundings, kit.directory(surroundings)));
    Document document = document(read, progress);
    surroundings.out().print(csv ? CsvWriter.write(document) : surroundings.text(document, WIDTH));
    return ExitStatus.OK;
  }

  private Document document(Kit read, Progress progress) {
    var zone = surroundings.clock().getZone();
    String title = read.settings().title();
    if (!history.isEmpty()) {
      var selection = Selection.parse(progress.plan(), history, units);
      if (!selection.isRead()) {
        throw new ParameterException(
            spec.commandLine(), selection.fault() + "; " + selection.remedy());
      }
      return ProgressDocument.history(selection.orThrow().spots(), progress, zone);
    }
    if (!units.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(),
          "--unit narrows --history; for all of a unit say --history " + units.get(0));
    }
    return csv
        ? ProgressDocument.everyPart(title, progress, zone)
        : ProgressDocument.of(title, progress, zone);
  }
}
