package lowfirst.cli;

import java.util.concurrent.Callable;
import lowfirst.intake.KitReading;
import lowfirst.sheet.Document;
import lowfirst.sheet.SortDocument;
import lowfirst.sheet.csv.CsvWriter;
import lowfirst.sheet.text.TextWriter;
import lowfirst.sorting.SortPlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How to sort the bag: part by part, with meter limits, shortages and look-alikes. */
@Command(
    name = "sort",
    mixinStandardHelpOptions = true,
    header = "how to sort the bag of parts",
    description =
        "Shows how to sort the bag, and what could be mistaken for what. Each part type comes with "
            + "its marking, the quantity for all boards, the meter reading to accept, and what is "
            + "short or over.",
    exitCodeListHeading = ExitStatus.HEADING,
    exitCodeList = {
      "0:nothing is short",
      "1:something is short or unknown",
      ExitStatus.NOT_UNDERSTOOD,
      ExitStatus.UNREADABLE,
      ExitStatus.OUR_BUG
    },
    footerHeading = Example.HEADING,
    footer = {
      "  lowfirst sort my-kit",
      "  lowfirst sort my-kit --csv > sorting.csv",
      "  lowfirst sort my-kit --labels"
    })
final class SortCommand implements Callable<Integer> {
  private static final int NARROWEST = 40;

  private final Surroundings surroundings;

  @Spec private CommandSpec spec;

  @Mixin private KitArgument kit = new KitArgument();

  @Option(names = "--csv", description = "as one table for machines")
  private boolean csv;

  @Option(names = "--labels", description = "labels for the tray's compartments instead")
  private boolean labels;

  @Option(
      names = "--width",
      paramLabel = "<columns>",
      description = "how wide the text may be, default 100")
  private int width = 100;

  SortCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    if (width < NARROWEST) {
      throw new ParameterException(spec.commandLine(), "--width: write 40 or more columns");
    }
    KitReading reading = kit.read(surroundings);
    SortPlan plan = SortPlan.of(reading.kit());
    String title = reading.kit().settings().title();
    Document document = labels ? SortDocument.labels(plan, title) : SortDocument.of(plan, title);
    surroundings.out().print(csv ? CsvWriter.write(document) : TextWriter.write(document, width));
    boolean sound = KitArgument.isSound(reading, surroundings);
    return sound && !plan.needsALook() ? ExitStatus.OK : ExitStatus.FINDINGS;
  }
}
