package lowfirst.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import lowfirst.board.Kit;
import lowfirst.intake.KitReading;
import lowfirst.intake.ShippedTables;
import lowfirst.sheet.Document;
import lowfirst.sheet.SwapDocument;
import lowfirst.sheet.csv.CsvWriter;
import lowfirst.sheet.text.TextWriter;
import lowfirst.swap.SwapFinding;
import lowfirst.swap.SwapTarget;
import lowfirst.swap.SwapVerdict;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Whether one part fits in place of another. */
@Command(
    name = "swap",
    mixinStandardHelpOptions = true,
    description = "Tells whether a part fits in place of another: on this board, for these loads.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  lowfirst swap my-kit Q3 IRL540N",
      "  lowfirst swap my-kit BP-N60L BP-N100L",
      "  lowfirst swap my-kit R17 \"10k 1%% 0.5W\"",
      "  lowfirst swap my-kit Q3 --from drawer.csv",
      "  lowfirst swap my-kit Q16 BP-N100L --accept --why \"none left\" --who \"A. Builder\"",
      "Exit status: 0 it fits, 1 it does not fit or is undecided, 2 usage, 3 can't read or write."
    })
final class SwapCommand implements Callable<Integer> {
  private static final int WIDTH = 140;

  private final Surroundings surroundings;

  @Spec private CommandSpec spec;

  @Mixin private KitArgument kit = new KitArgument();

  @Parameters(index = "1", paramLabel = "<part>", description = "a designator, or a part type")
  private String part;

  @Parameters(
      index = "2",
      arity = "0..1",
      paramLabel = "<candidate>",
      description = "the part to fit instead: a type number, or a value with its ratings")
  private String candidate;

  @Option(names = "--board", paramLabel = "<board>", description = "on this board alone")
  private String board;

  @ArgGroup(exclusive = false)
  private AcceptOptions acceptance;

  @Option(names = "--csv", description = "every reason and check as one table for machines")
  private boolean csv;

  SwapCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    KitReading reading = kit.readAsWritten(surroundings);
    List<SwapTarget> targets = targets(reading.kit());
    if (candidate == null) {
      throw new ParameterException(
          spec.commandLine(), "name the part to fit instead, or a parts list with --from");
    }
    List<SwapFinding> findings =
        targets.stream().map(target -> finding(reading.kit(), target)).toList();
    Document document = csv ? SwapDocument.table(findings) : SwapDocument.of(findings);
    surroundings.out().print(csv ? CsvWriter.write(document) : TextWriter.write(document, WIDTH));
    if (acceptance != null) {
      acceptance.accept(kit.directory(surroundings), reading.kit(), findings, surroundings);
    }
    boolean fits = findings.stream().allMatch(f -> f.verdict() == SwapVerdict.FITS);
    return fits ? ExitStatus.OK : ExitStatus.FINDINGS;
  }

  private List<SwapTarget> targets(Kit read) {
    List<SwapTarget> targets = SwapTarget.named(read, part, Optional.ofNullable(board));
    if (targets.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(),
          "no part of the kit is called \"" + part + "\"; name a designator or a BOM value");
    }
    if (SwapTarget.isAmbiguous(targets, part)) {
      String boards =
          targets.stream()
              .map(target -> target.board().name())
              .distinct()
              .collect(Collectors.joining(", "));
      throw new ParameterException(
          spec.commandLine(),
          part + " is on several boards (" + boards + "): say which with --board");
    }
    return targets;
  }

  private SwapFinding finding(Kit read, SwapTarget target) {
    return SwapFinding.of(
        target.with(read, candidate, ShippedTables.bodyOutlines()), ShippedTables.bodyOutlines());
  }
}
