package lowfirst.channel;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * The circuit simulator ngspice as an independent referee. Where it is not installed tests are
 * skipped, visibly; with {@code LOWFIRST_NGSPICE=required} in the environment its absence fails.
 */
final class Simulator {
  private static final Pattern MEASURED =
      Pattern.compile("^\\s*([a-z_][\\w()]*)\\s*=\\s*([-+]?\\d[\\d.]*(?:e[-+]?\\d+)?)");
  private static final int LONGEST_SECONDS = 30;

  private Simulator() {}

  /** Skips the test, or fails it where the simulator is a must. */
  static void needed() {
    boolean there = isInstalled();
    if (!there && "required".equals(System.getenv("LOWFIRST_NGSPICE"))) {
      Assertions.fail("ngspice is required here and is not installed");
    }
    Assumptions.assumeTrue(there, "ngspice is not installed: apt-get install ngspice");
  }

  private static boolean isInstalled() {
    for (String folder : System.getenv("PATH").split(java.io.File.pathSeparator)) {
      if (Files.isExecutable(Path.of(folder, "ngspice"))) {
        return true;
      }
    }
    return false;
  }

  /** Runs a netlist in batch mode; every {@code name = value} that it prints. */
  static Map<String, Double> run(String netlist) {
    try {
      Path file = Files.createTempFile("channel", ".cir");
      Path output = Files.createTempFile("channel", ".out");
      try {
        Files.writeString(file, netlist);
        Process process =
            new ProcessBuilder("ngspice", "-b", file.toString())
                .redirectErrorStream(true)
                .redirectOutput(output.toFile())
                .start();
        if (!process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)) {
          process.destroyForcibly();
          throw new AssertionError("the simulator did not finish:\n" + netlist);
        }
        return measured(Files.readString(output, StandardCharsets.ISO_8859_1), netlist);
      } finally {
        Files.delete(file);
        Files.delete(output);
      }
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new AssertionError(stopped);
    }
  }

  private static Map<String, Double> measured(String output, String netlist) {
    var values = new HashMap<String, Double>();
    output
        .lines()
        .forEach(
            line -> {
              Matcher found = MEASURED.matcher(line.toLowerCase(Locale.ROOT));
              if (found.find()) {
                values.put(found.group(1), Double.parseDouble(found.group(2)));
              }
            });
    if (values.isEmpty()) {
      throw new AssertionError("the simulator measured nothing:\n" + netlist + "\n" + output);
    }
    return values;
  }
}
