package lowfirst.cli.manual;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;

/**
 * A command line that shows how a verb is used. They stand in the footer of each command, a line
 * each: two blanks, the command, and after at least two more blanks what it is for. The help prints
 * them as they stand, the manual page and the tests read them from there.
 *
 * @param typed what a person types into a shell
 * @param purpose what it is for; empty where the command says so itself
 */
public record Example(String typed, String purpose) {
  /** Stands over the examples in every help. */
  public static final String HEADING = "%nExamples:%n";

  private static final Pattern LINE = Pattern.compile(" {2}(lowfirst .*?)(?: {2,}(.*))?");

  /** The examples of a command, in their order. */
  public static List<Example> of(CommandSpec command) {
    return Stream.of(command.usageMessage().footer()).map(Example::read).toList();
  }

  private static Example read(String line) {
    Matcher parts = LINE.matcher(line.replace("%%", "%"));
    if (!parts.matches()) {
      throw new IllegalStateException("no example: \"" + line + "\"");
    }
    return new Example(parts.group(1), parts.group(2) == null ? "" : parts.group(2));
  }
}
