package lowfirst.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import lowfirst.cli.manual.ManualPage;
import lowfirst.cli.process.Surroundings;
import picocli.AutoComplete;
import picocli.CommandLine;

/**
 * Writes the manual pages and the shell completion of all verbs, for the packages: {@code
 * man/man1/*.1} and {@code bash-completion/completions/lowfirst} below a folder.
 */
public final class Manual {
  private Manual() {}

  /**
   * Writes them; run when the image is built.
   *
   * @param arguments the folder, and the date of the program as year-month-day
   */
  public static void main(String[] arguments) throws IOException {
    write(Path.of(arguments[0]), arguments[1], Lowfirst.commandLine(Surroundings.ofProcess()));
  }

  static void write(Path folder, String date, CommandLine program) throws IOException {
    Path pages = Files.createDirectories(folder.resolve("man/man1"));
    page(pages, date, program);
    for (CommandLine verb : program.getSubcommands().values()) {
      page(pages, date, verb);
    }
    Path completions = Files.createDirectories(folder.resolve("bash-completion/completions"));
    String name = program.getCommandName();
    // A shell reads it, nobody runs it: without the line that names an interpreter.
    text(completions.resolve(name), AutoComplete.bash(name, program).replaceFirst("^#!.*\\R", ""));
  }

  private static void page(Path folder, String date, CommandLine line) throws IOException {
    text(
        folder.resolve(ManualPage.name(line.getCommandSpec()) + ".1"),
        ManualPage.of(line.getCommandSpec(), date));
  }

  private static void text(Path file, String text) throws IOException {
    Files.write(file, text.replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8));
  }
}
