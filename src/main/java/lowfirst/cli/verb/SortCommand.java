package lowfirst.cli.verb;

import java.util.concurrent.Callable;
import lowfirst.cli.manual.Example;
import lowfirst.cli.option.KitArgument;
import lowfirst.cli.option.WidthOption;
import lowfirst.cli.process.ExitStatus;
import lowfirst.cli.process.Surroundings;
import lowfirst.intake.KitReading;
import lowfirst.sheet.csv.CsvWriter;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.sort.SortDocument;
import lowfirst.sheet.text.TextWriter;
import lowfirst.sorting.SortPlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

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
public final class SortCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Mixin private KitArgument kit = new KitArgument();
  @Mixin private WidthOption width = new WidthOption();

  @Option(names = "--csv", description = "as one table for machines")
  private boolean csv;

  @Option(names = "--labels", description = "labels for the tray's compartments instead")
  private boolean labels;

  /** The verb in these surroundings. */
  public SortCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    int columns = width.columns(surroundings);
    KitReading reading = kit.read(surroundings);
    SortPlan plan = SortPlan.of(reading.kit());
    String title = reading.kit().settings().title();
    Document document = labels ? SortDocument.labels(plan, title) : SortDocument.of(plan, title);
    surroundings.out().print(csv ? CsvWriter.write(document) : TextWriter.write(document, columns));
    boolean sound = KitArgument.isSound(reading, surroundings);
    return sound && !plan.needsALook() ? ExitStatus.OK : ExitStatus.FINDINGS;
  }
}
