package lowfirst.cli.process;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.text.TextWriter;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Everything a command touches outside itself, so that a test can run it in-process.
 *
 * @param out the product, and nothing else
 * @param err problems, progress, advice
 * @param directory where relative paths start
 * @param clock what time it is
 * @param environment environment variables
 * @param terminal whether {@code out} is a person's terminal
 */
public record Surroundings(
    PrintStream out,
    PrintStream err,
    Path directory,
    Clock clock,
    Map<String, String> environment,
    Terminal terminal) {

  /** Whether a person or a file reads the output. */
  public enum Terminal {
    PERSON,
    FILE
  }

  /** Text in fewer columns has no room for its words. */
  public static final int NARROWEST = 40;

  private static final int PLAIN_TERMINAL = 80;

  /** A document as text, as wide as its reader has room for. */
  public String text(Document document, int liked) {
    return TextWriter.write(document, columns(liked));
  }

  /**
   * How many columns of text fit: for a file what the text likes best, for a person no more than
   * the terminal shows, as {@code COLUMNS} or else the terminal says; 80 where neither does.
   */
  public int columns(int liked) {
    if (terminal == Terminal.FILE) {
      return liked;
    }
    String stated = environment.getOrDefault("COLUMNS", "");
    int shown = stated.matches("[1-9][0-9]{1,3}") ? Integer.parseInt(stated) : ofTerminal();
    return Math.min(liked, Math.max(shown, NARROWEST));
  }

  /**
   * What the system says of the terminal. Shells keep {@code COLUMNS} to themselves, and Java has
   * no word for it, so the command line library asks {@code stty}, {@code tput} or {@code mode}; it
   * takes no terminal for narrower than 55.
   */
  private static int ofTerminal() {
    return CommandSpec.create().usageMessage().width(PLAIN_TERMINAL).autoWidth(true).width();
  }

  /** A file that the user names, where it lies relative to the directory. */
  public Path at(Path named) {
    return directory.resolve(named.toString());
  }

  /**
   * The surroundings of a real process. What a file or a program reads is UTF-8 whatever the
   * platform says; a person's console gets what it can show.
   */
  public static Surroundings ofProcess() {
    Terminal terminal = System.console() == null ? Terminal.FILE : Terminal.PERSON;
    return new Surroundings(
        utf8(FileDescriptor.out, codePage(terminal, "stdout")),
        utf8(FileDescriptor.err, codePage(terminal, "stderr")),
        Path.of("").toAbsolutePath(),
        new MachineClock(),
        System.getenv(),
        terminal);
  }

  /**
   * What a console takes. Java 17 says it in a property of its own, and only of a console; from 19
   * on in one with a name for all, but of files too.
   */
  private static Optional<Charset> codePage(Terminal terminal, String stream) {
    String ofConsole = System.getProperty("sun." + stream + ".encoding");
    return terminal == Terminal.FILE
        ? CodePageStream.named(ofConsole)
        : CodePageStream.named(System.getProperty(stream + ".encoding"), ofConsole);
  }

  private static PrintStream utf8(FileDescriptor descriptor, Optional<Charset> codePage) {
    return new PrintStream(
        new BufferedOutputStream(
            CodePageStream.over(new FileOutputStream(descriptor), codePage), 1 << 16),
        false,
        StandardCharsets.UTF_8);
  }
}
