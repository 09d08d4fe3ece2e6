package lowfirst.cli.option;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.cli.file.KitFolder;
import lowfirst.cli.file.RememberedColumns;
import lowfirst.cli.process.Surroundings;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;
import lowfirst.intake.KitReading;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.swap.subject.SwappedKit;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Which kit a verb is about: mixed into every verb that reads one. */
public final class KitArgument {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Parameters(index = "0", arity = "0..1", paramLabel = "<kit>", description = "the kit's folder")
  private Path folder;

  @Option(names = "--bom", paramLabel = "<file>", description = "a BOM alone, instead of a kit")
  private Path bom;

  @Option(
      names = "--placements",
      paramLabel = "<file>",
      description = "a placement list alone; twice for one a side")
  private List<Path> placements = new ArrayList<>();

  @Option(
      names = "--column",
      paramLabel = "<column=header>",
      description =
          "which header, or column number, holds a column: bom.value=Comment, placements.x=3, "
              + "placements.unit=mil. Remembered in the kit's "
              + ColumnMap.FILE
              + ".")
  private Map<String, String> columns = new LinkedHashMap<>();

  /** Reads the kit as it will be built: with its accepted swaps in place. */
  public KitReading read(Surroundings surroundings) {
    KitReading written = readAsWritten(surroundings);
    return written.with(SwappedKit.of(written.kit(), ShippedTables.bodyOutlines()));
  }

  /** Reads the kit as its BOM asks for it; remembers what {@code --column} says of it. */
  public KitReading readAsWritten(Surroundings surroundings) {
    var told = new ColumnMap(columns);
    told.problems("--column").stream()
        .findFirst()
        .ifPresent(
            problem -> {
              throw new ParameterException(
                  spec.commandLine(), "--column: " + problem.message() + "; " + problem.remedy());
            });
    KitReading reading = KitReader.read(files(surroundings), told);
    if (!columns.isEmpty() && folder != null) {
      RememberedColumns.add(directory(surroundings), told, surroundings.err());
    }
    return reading;
  }

  private KitFiles files(Surroundings surroundings) {
    boolean alone = bom != null || !placements.isEmpty();
    if (alone && folder != null) {
      throw new ParameterException(
          spec.commandLine(), "name a kit folder, or --bom and --placements, not both");
    }
    if (alone) {
      return KitFolder.read(surroundings.directory(), Optional.ofNullable(bom), placements);
    }
    return KitFolder.read(directory(surroundings));
  }

  /** The kit's folder; where the command runs when only single files are named. */
  public Path directory(Surroundings surroundings) {
    if (folder != null) {
      return surroundings.at(folder);
    }
    if (bom == null && placements.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "name the kit's folder, or a BOM alone with --bom");
    }
    return surroundings.directory();
  }

  /**
   * Whether every cell, row and file could be used; where not, says so on the error stream. What a
   * fault left out, no verb may pass over in silence.
   */
  public static boolean isSound(KitReading reading, Surroundings surroundings) {
    if (reading.faults() > 0) {
      surroundings
          .err()
          .println(
              "lowfirst: the tables have faults (" + reading.faults() + "): see lowfirst check");
    }
    return reading.faults() == 0;
  }
}
