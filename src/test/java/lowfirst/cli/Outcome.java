package lowfirst.cli;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import lowfirst.cli.process.Surroundings;

/** What one command line gave, run in this process. */
record Outcome(int status, String out, String err) {

  /** Runs a command line in the project's own folder, read as by a file: no terminal, no input. */
  static Outcome of(String... arguments) {
    return in(Path.of("").toAbsolutePath(), Clock.systemUTC(), arguments);
  }

  /** The same from another folder, at another time. */
  static Outcome in(Path folder, Clock clock, String... arguments) {
    var out = new ByteArrayOutputStream();
    var err = new ByteArrayOutputStream();
    int status = Lowfirst.run(arguments, surroundings(out, err, folder, clock));
    return new Outcome(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  /** What a command touches: these streams, this folder and clock, no environment. */
  static Surroundings surroundings(OutputStream out, OutputStream err, Path folder, Clock clock) {
    return new Surroundings(
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8),
        folder,
        clock,
        Map.of(),
        Surroundings.Terminal.FILE);
  }
}
