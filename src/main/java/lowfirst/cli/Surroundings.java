package lowfirst.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;

/**
 * Everything a command touches outside itself, so that a test can run it in-process.
 *
 * @param out the product, and nothing else
 * @param err problems, progress, advice
 * @param in standard input
 * @param directory where relative paths start
 * @param clock what time it is
 * @param environment environment variables
 * @param terminal whether {@code out} is a person's terminal
 */
public record Surroundings(
    PrintStream out,
    PrintStream err,
    InputStream in,
    Path directory,
    Clock clock,
    Map<String, String> environment,
    Terminal terminal) {

  /** Whether a person or a file reads the output. */
  public enum Terminal {
    PERSON,
    FILE
  }

  /** The surroundings of a real process; output is UTF-8 whatever the platform says. */
  static Surroundings ofProcess() {
    return new Surroundings(
        utf8(FileDescriptor.out),
        utf8(FileDescriptor.err),
        System.in,
        Path.of("").toAbsolutePath(),
        new MachineClock(),
        System.getenv(),
        System.console() == null ? Terminal.FILE : Terminal.PERSON);
  }

  private static PrintStream utf8(FileDescriptor descriptor) {
    return new PrintStream(
        new java.io.BufferedOutputStream(new FileOutputStream(descriptor), 1 << 16),
        false,
        StandardCharsets.UTF_8);
  }
}
