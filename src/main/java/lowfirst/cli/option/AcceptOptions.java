package lowfirst.cli.option;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import lowfirst.board.Kit;
import lowfirst.cli.file.SwapsFile;
import lowfirst.cli.process.Surroundings;
import lowfirst.swap.SwapFinding;
import lowfirst.swap.rule.SwapVerdict;
import picocli.CommandLine.Option;

/** Who accepts a swap, and why; recorded as rows of {@code swaps.csv}. */
public final class AcceptOptions {
  @Option(
      names = "--accept",
      required = true,
      description = "record the swap in the kit's swaps.csv; refused where it does not fit")
  @SuppressWarnings("UnusedVariable") // that it is there says it all
  private boolean accept;

  @Option(names = "--why", required = true, paramLabel = "<reason>", description = "the reason")
  private String why;

  @Option(
      names = "--who",
      paramLabel = "<name>",
      description = "who accepts it (default: the kit's signer)")
  private String who;

  /** Adds a row for each finding; nothing where one does not fit or nobody signs. */
  public void accept(Path folder, Kit kit, List<SwapFinding> findings, Surroundings surroundings) {
    if (findings.stream().anyMatch(f -> f.verdict() == SwapVerdict.DOES_NOT_FIT)) {
      surroundings.err().println("lowfirst: not recorded, since it does not fit");
      return;
    }
    String signer = who == null ? kit.settings().signer() : who;
    if (signer.isBlank()) {
      surroundings.err().println("lowfirst: not recorded; say who accepts it with --who");
      return;
    }
    LocalDate today = LocalDate.now(surroundings.clock());
    var table = SwapsFile.of(folder);
    for (SwapFinding finding : findings) {
      String reason =
          finding.verdict() == SwapVerdict.UNDECIDED ? why + "; undecided when accepted" : why;
      table.add(finding.swap(), reason, signer, today.toString());
    }
    table.write();
    surroundings.err().println("lowfirst: recorded in " + SwapsFile.NAME);
  }
}
