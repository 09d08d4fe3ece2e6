package lowfirst.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lowfirst.cli.file.ReportFolder;
import lowfirst.cli.process.CannotReadOrWrite;
import lowfirst.cli.process.ExitStatus;
import lowfirst.cli.process.Surroundings;

/** Runs the real commands, as a person would type them, and keeps what they print. */
final class DemoRun {
  private final Surroundings surroundings;
  private final String kit;
  private final String reports;

  /**
   * Commands on one kit.
   *
   * @param kit the kit's folder as a person would type it
   * @param reports the folder that gets what the commands print
   */
  DemoRun(Surroundings surroundings, String kit, String reports) {
    this.surroundings = surroundings;
    this.kit = kit;
    this.reports = reports;
  }

  /** A report's file as a person would type it. */
  String report(String name) {
    return reports + "/" + name;
  }

  /** What a person types to run a verb on the kit. */
  String typed(String verb, String... further) {
    var words = new ArrayList<>(List.of("lowfirst", verb, kit));
    for (String word : further) {
      words.add(word.indexOf(' ') < 0 ? word : '"' + word + '"');
    }
    return String.join(" ", words);
  }

  /** Runs a verb on the kit; findings are no failure. */
  String run(String verb, String... further) {
    var words = new ArrayList<>(List.of(verb, kit));
    words.addAll(List.of(further));
    var out = new ByteArrayOutputStream();
    var err = new ByteArrayOutputStream();
    var inside =
        new Surroundings(
            new PrintStream(out, false, StandardCharsets.UTF_8),
            new PrintStream(err, false, StandardCharsets.UTF_8),
            surroundings.directory(),
            surroundings.clock(),
            surroundings.environment(),
            Surroundings.Terminal.FILE);
    int status = Lowfirst.run(words.toArray(String[]::new), inside);
    if (status == ExitStatus.CANNOT_READ_OR_WRITE) {
      throw new CannotReadOrWrite(err.toString(StandardCharsets.UTF_8).strip());
    }
    if (status != ExitStatus.OK && status != ExitStatus.FINDINGS) {
      throw new IllegalStateException(typed(verb, further) + " ended with " + status + ": " + err);
    }
    return out.toString(StandardCharsets.UTF_8);
  }

  /** Runs a verb and keeps what it prints in a report. */
  void save(String name, String verb, String... further) {
    Path file = surroundings.directory().resolve(report(name));
    ReportFolder.put(file, run(verb, further).getBytes(StandardCharsets.UTF_8));
  }
}
