package lowfirst.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Programs started as processes, and the processor time that they take. */
final class Started {
  private static final Path OWN_TIMES = Path.of("/proc/self/stat");
  private static final int LONGEST_SECONDS = 300;

  /** Where the time of ended children stands behind the program's name in parentheses. */
  private static final int CHILDREN_USER = 13;

  private static final int TICKS_A_SECOND = 100;

  private Started() {}

  /** Whether processor time can be read here; else the clock on the wall is. */
  static boolean countsProcessorTime() {
    return Files.isReadable(OWN_TIMES);
  }

  /**
   * Seconds that {@code java} with these words takes: of all processors, user and system; its
   * output is thrown away.
   *
   * @throws IllegalStateException when it does not end well: what failed has no time
   */
  static double seconds(List<String> words) throws IOException {
    return seconds(java(), words);
  }

  /** The same of another program. */
  static double seconds(Path program, List<String> words) throws IOException {
    double start = seconds();
    int status = status(program, words);
    if (status != 0) {
      throw new IllegalStateException(status + " from " + program + " " + words);
    }
    return seconds() - start;
  }

  private static Path java() {
    return Path.of(System.getProperty("java.home"), "bin", "java");
  }

  /** How {@code java} with these words ends. */
  static int status(List<String> words) throws IOException {
    return status(java(), words);
  }

  private static int status(Path program, List<String> words) throws IOException {
    var command = new ArrayList<String>();
    command.add(program.toString());
    command.addAll(words);
    var builder = new ProcessBuilder(command);
    builder.environment().keySet().removeAll(List.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS"));
    builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
    Process process = builder.redirectError(ProcessBuilder.Redirect.DISCARD).start();
    process.getOutputStream().close();
    try {
      if (!process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly().waitFor();
      }
      return process.exitValue();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(interrupted);
    }
  }

  private static double seconds() throws IOException {
    if (!countsProcessorTime()) {
      return System.nanoTime() / 1e9;
    }
    String text = Files.readString(OWN_TIMES);
    String[] fields = text.substring(text.lastIndexOf(')') + 2).split(" ");
    long ticks = Long.parseLong(fields[CHILDREN_USER]) + Long.parseLong(fields[CHILDREN_USER + 1]);
    return (double) ticks / TICKS_A_SECOND;
  }
}
