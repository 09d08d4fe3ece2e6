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

  private static final int PLAIN_TERMINAL = 80;

  /**
   * How many columns of text fit: for a file what the text likes best, for a person no more than
   * the terminal shows, as {@code COLUMNS} says, else 80.
   */
  int columns(int liked) {
    if (terminal == Terminal.FILE) {
      return liked;
    }
    String stated = environment.getOrDefault("COLUMNS", "");
    int shown = stated.matches("[1-9][0-9]{1,3}") ? Integer.parseInt(stated) : PLAIN_TERMINAL;
    return Math.min(liked, Math.max(shown, PLAIN_TERMINAL));
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
