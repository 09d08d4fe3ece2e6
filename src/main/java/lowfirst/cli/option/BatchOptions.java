package lowfirst.cli.option;

import lowfirst.assembly.AssemblyOptions;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How large a batch may be: mixed into every verb that orders the assembly. */
public final class BatchOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--parts-per-batch",
      paramLabel = "<number>",
      description = "at most so many parts on a board before it is flipped, default 24")
  private int parts = AssemblyOptions.USUAL.partsPerBatch();

  @Option(
      names = "--height-spread",
      paramLabel = "<mm>",
      description = "at most so many mm of height between parts seated before a flip, default 1.5")
  private double spreadMillimetres = AssemblyOptions.USUAL.heightSpreadMillimetres();

  /** The options, checked. */
  public AssemblyOptions options() {
    if (parts < 1) {
      throw refused("--parts-per-batch: at least one part is seated, so write 1 or more");
    }
    if (!(spreadMillimetres >= 0) || spreadMillimetres > 100) {
      throw refused("--height-spread: write millimetres from 0 to 100");
    }
    return new AssemblyOptions(parts, spreadMillimetres);
  }

  private ParameterException refused(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
