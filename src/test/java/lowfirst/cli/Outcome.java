package lowfirst.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;

/** What one command line gave, run in this process from the project's own folder. */
record Outcome(int status, String out, String err) {

  /** Runs a command line as a file would read it: no terminal, no input, no environment. */
  static Outcome of(String... arguments) {
    var out = new ByteArrayOutputStream();
    var err = new ByteArrayOutputStream();
    int status =
        Lowfirst.run(
            arguments,
            new Surroundings(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                new ByteArrayInputStream(new byte[0]),
                Path.of("").toAbsolutePath(),
                Clock.systemUTC(),
                Map.of(),
                Surroundings.Terminal.FILE));
    return new Outcome(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
