package lowfirst.cli.verb;

import java.util.concurrent.Callable;
import lowfirst.cli.manual.Example;
import lowfirst.cli.option.KitArgument;
import lowfirst.cli.process.ExitStatus;
import lowfirst.cli.process.Surroundings;
import lowfirst.intake.KitReading;
import lowfirst.sheet.check.CheckDocument;
import lowfirst.sheet.csv.CsvWriter;
import lowfirst.sheet.document.Document;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Every fault in the tables, and every disagreement between them. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    header = "every fault in the tables, each with its place and a remedy",
    description = "Shows every fault in the tables of a kit, each with its place and a remedy.",
    exitCodeListHeading = ExitStatus.HEADING,
    exitCodeList = {
      "0:nothing to look at",
      "1:faults or cautions",
      ExitStatus.NOT_UNDERSTOOD,
      ExitStatus.UNREADABLE,
      ExitStatus.OUR_BUG
    },
    footerHeading = Example.HEADING,
    footer = {
      "  lowfirst check my-kit",
      "  lowfirst check my-kit --explain",
      "  lowfirst check --bom parts.csv --placements top.csv --placements bottom.csv",
      "  lowfirst check --bom parts.csv --column bom.value=Comment --csv"
    })
public final class CheckCommand implements Callable<Integer> {
  private static final int WIDTH = 100;

  private final Surroundings surroundings;

  @Mixin private KitArgument kit = new KitArgument();

  @Option(names = "--csv", description = "as one table for machines")
  private boolean csv;

  @Option(
      names = "--explain",
      description = "also how every column and unit was understood, with the first rows")
  private boolean explain;

  /** The verb in these surroundings. */
  public CheckCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    KitReading reading = kit.readAsWritten(surroundings);
    Document document =
        explain ? CheckDocument.explained(reading, extent()) : CheckDocument.of(reading, extent());
    surroundings.out().print(csv ? CsvWriter.write(document) : surroundings.text(document, WIDTH));
    return reading.needsALook() ? ExitStatus.FINDINGS : ExitStatus.OK;
  }

  private CheckDocument.Extent extent() {
    return csv ? CheckDocument.Extent.ALL : CheckDocument.Extent.FIRST_OF_A_KIND;
  }
}
