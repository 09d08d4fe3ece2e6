package lowfirst.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How wide text may be: mixed into every verb whose text a person may want wider or narrower. */
final class WidthOption {
  private static final int NARROWEST = 40;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--width",
      paramLabel = "<columns>",
      description = "how wide the text may be, default 100")
  private int width = 100;

  /** The columns, checked. */
  int columns() {
    if (width < NARROWEST) {
      throw new ParameterException(
          spec.commandLine(), "--width: write " + NARROWEST + " or more columns");
    }
    return width;
  }
}
