package lowfirst.cli;

import lowfirst.assembly.AssemblyOptions;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How large a batch may be: mixed into every verb that orders the assembly. */
final class BatchOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--batch-parts",
      paramLabel = "<n>",
      defaultValue = "24",
      description = "at most so many parts seated before a flip (default ${DEFAULT-VALUE})")
  private int parts;

  @Option(
      names = "--batch-spread",
      paramLabel = "<mm>",
      defaultValue = "1.5",
      description = "at most so many millimetres between the lowest and the tallest of a batch")
  private double spreadMillimetres;

  /** The options, checked. */
  AssemblyOptions options() {
    if (parts < 1 || !(spreadMillimetres >= 0)) {
      throw new ParameterException(
          spec.commandLine(),
          "a batch has at least 1 part and a spread of 0 mm or more; say --batch-parts 24"
              + " --batch-spread 1.5");
    }
    return new AssemblyOptions(parts, spreadMillimetres);
  }
}
