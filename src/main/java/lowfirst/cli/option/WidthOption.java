package lowfirst.cli.option;

import lowfirst.cli.process.Surroundings;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How wide text may be: mixed into every verb whose text a person may want wider or narrower. */
public final class WidthOption {
  private static final int LIKED = 100;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--width",
      paramLabel = "<columns>",
      description = "how wide the text may be: else 100, in a terminal what it shows, or 80")
  private Integer width;

  /** The columns, checked. */
  public int columns(Surroundings surroundings) {
    if (width == null) {
      return surroundings.columns(LIKED);
    }
    if (width < Surroundings.NARROWEST) {
      throw new ParameterException(
          spec.commandLine(), "--width: write " + Surroundings.NARROWEST + " or more columns");
    }
    return width;
  }
}
