package lowfirst.cli.verb;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import lowfirst.board.Kit;
import lowfirst.cli.manual.Example;
import lowfirst.cli.option.AcceptOptions;
import lowfirst.cli.option.KitArgument;
import lowfirst.cli.process.CannotReadOrWrite;
import lowfirst.cli.process.ExitStatus;
import lowfirst.cli.process.Surroundings;
import lowfirst.intake.DrawerReader;
import lowfirst.intake.KitReading;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.sheet.csv.CsvWriter;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.swap.DrawerDocument;
import lowfirst.sheet.swap.SwapDocument;
import lowfirst.swap.DrawerResult;
import lowfirst.swap.DrawerSearch;
import lowfirst.swap.SwapFinding;
import lowfirst.swap.SwapTarget;
import lowfirst.swap.rule.SwapVerdict;
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
    header = "whether one part fits in place of another",
    description = "Tells whether a part fits in place of another: on this board, for these loads.",
    exitCodeListHeading = ExitStatus.HEADING,
    exitCodeList = {
      "0:it fits",
      "1:it does not fit, or is undecided",
      ExitStatus.NOT_UNDERSTOOD,
      ExitStatus.UNREADABLE_OR_UNWRITABLE,
      ExitStatus.OUR_BUG
    },
    footerHeading = Example.HEADING,
    footer = {
      "  lowfirst swap my-kit BP-N60L BP-N100L",
      "  lowfirst swap my-kit R17 \"10k 1%% 0.5W\" --board driver",
      "  lowfirst swap my-kit Q3 --board driver --from drawer.csv",
      "  lowfirst swap my-kit Q15 BP-N100L --accept --why \"none left\" --who Ada"
    })
public final class SwapCommand implements Callable<Integer> {
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

  @Option(
      names = "--from",
      paramLabel = "<parts list>",
      description =
          "look through a parts list (a table like datasheets.csv) for what fits, "
              + "the best margin first")
  private Path drawer;

  @Option(
      names = "--show",
      paramLabel = "<count>",
      description = "how many part types of each sort to show (default: ${DEFAULT-VALUE})")
  private int shown = 20;

  @ArgGroup(exclusive = false)
  private AcceptOptions acceptance;

  @Option(names = "--csv", description = "every reason and check as one table for machines")
  private boolean csv;

  /** The verb in these surroundings. */
  public SwapCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    KitReading reading = kit.readAsWritten(surroundings);
    List<SwapTarget> targets = targets(reading.kit());
    if (drawer != null) {
      return search(reading.kit(), targets);
    }
    if (candidate == null) {
      throw new ParameterException(
          spec.commandLine(), "name the part to fit instead, or a parts list with --from");
    }
    List<SwapFinding> findings =
        targets.stream().map(target -> finding(reading.kit(), target)).toList();
    Document document = csv ? SwapDocument.table(findings) : SwapDocument.of(findings);
    surroundings.out().print(csv ? CsvWriter.write(document) : surroundings.text(document, WIDTH));
    if (acceptance != null) {
      acceptance.accept(kit.directory(surroundings), reading.kit(), findings, surroundings);
    }
    boolean fits = findings.stream().allMatch(f -> f.verdict() == SwapVerdict.FITS);
    return fits ? ExitStatus.OK : ExitStatus.FINDINGS;
  }

  private int search(Kit read, List<SwapTarget> targets) {
    if (candidate != null || acceptance != null || shown < 1) {
      throw new ParameterException(
          spec.commandLine(), "--from looks for candidates: name none, accept none, show some");
    }
    DrawerReader.Drawer found = DrawerReader.read(drawer.toString(), bytes());
    found.problems().forEach(surroundings.err()::println);
    boolean fits = false;
    for (SwapTarget target : targets) {
      DrawerResult result =
          DrawerSearch.of(target, read, found.parts(), ShippedTables.bodyOutlines(), shown);
      Document document = csv ? DrawerDocument.table(result) : DrawerDocument.of(result);
      surroundings.out().print(csv ? CsvWriter.write(document) : surroundings.text(document, 100));
      fits |= result.fitting() > 0;
    }
    return fits ? ExitStatus.OK : ExitStatus.FINDINGS;
  }

  private byte[] bytes() {
    try {
      return Files.readAllBytes(surroundings.at(drawer));
    } catch (IOException e) {
      throw new CannotReadOrWrite("can't read " + drawer + ": " + e.getMessage(), e);
    }
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
