package lowfirst.cli.verb;

import java.util.concurrent.Callable;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.cli.manual.Example;
import lowfirst.cli.option.BatchOptions;
import lowfirst.cli.option.KitArgument;
import lowfirst.cli.option.WidthOption;
import lowfirst.cli.process.ExitStatus;
import lowfirst.cli.process.Surroundings;
import lowfirst.intake.KitReading;
import lowfirst.sheet.csv.CsvWriter;
import lowfirst.sheet.steps.StepsDocument;
import lowfirst.sheet.text.TextWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The assembly order, batch by batch, each step with the rule that put it there. */
@Command(
    name = "steps",
    mixinStandardHelpOptions = true,
    header = "in what order to fit the parts, lowest first",
    description = "Shows in what order to fit the parts, lowest first, and when to flip the board.",
    exitCodeListHeading = ExitStatus.HEADING,
    exitCodeList = {
      "0:every step is planned",
      "1:faults in the tables or the order",
      ExitStatus.NOT_UNDERSTOOD,
      ExitStatus.UNREADABLE,
      ExitStatus.OUR_BUG
    },
    footerHeading = Example.HEADING,
    footer = {
      "  lowfirst steps my-kit",
      "  lowfirst steps my-kit --parts-per-batch 12 --height-spread 1.0",
      "  lowfirst steps --bom parts.csv --placements top.csv --csv > steps.csv"
    })
public final class StepsCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Mixin private KitArgument kit = new KitArgument();
  @Mixin private BatchOptions batches = new BatchOptions();
  @Mixin private WidthOption width = new WidthOption();

  @Option(names = "--csv", description = "as one table for machines, a row a step")
  private boolean csv;

  /** The verb in these surroundings. */
  public StepsCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    int columns = width.columns(surroundings);
    AssemblyOptions options = batches.options();
    KitReading reading = kit.read(surroundings);
    AssemblyPlan plan = AssemblyOrder.of(reading.kit(), options);
    if (csv) {
      surroundings.out().print(CsvWriter.write(StepsDocument.table(reading.kit(), plan)));
    } else {
      TextWriter.write(
          StepsDocument.of(reading.kit(), plan, options), columns, surroundings.out()::print);
    }
    boolean sound = KitArgument.isSound(reading, surroundings);
    boolean planned = plan.problems().isEmpty() && !plan.batches().isEmpty();
    return sound && planned ? ExitStatus.OK : ExitStatus.FINDINGS;
  }
}
