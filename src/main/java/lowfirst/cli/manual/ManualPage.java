package lowfirst.cli.manual;

import java.util.stream.Collectors;
import lowfirst.cli.option.StoreOption;
import lowfirst.intake.column.ColumnMap;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual page of one command, made of the same words as its {@code --help}. */
public final class ManualPage {
  private final CommandSpec command;
  private final Troff page;

  /** So wide that no synopsis is broken; the reader's program breaks lines. */
  private static final int UNBROKEN = 10_000;

  private ManualPage(CommandSpec command, String date) {
    this.command = command;
    this.page = new Troff(name(command), date, command.root().version()[0]);
  }

  /** What the page is called: {@code lowfirst}, or {@code lowfirst-check}. */
  public static String name(CommandSpec command) {
    return command.qualifiedName("-");
  }

  /**
   * The page as troff.
   *
   * @param date of the program, as year-month-day
   */
  public static String of(CommandSpec command, String date) {
    return new ManualPage(command, date).written();
  }

  private String written() {
    var usage = command.usageMessage();
    page.section("NAME").line(name(command) + " - " + String.join(" ", usage.header()));
    usage.width(UNBROKEN);
    String synopsis = new Help(command, Help.defaultColorScheme(Help.Ansi.OFF)).synopsis(0);
    String typed = command.qualifiedName();
    page.section("SYNOPSIS")
        .synopsis(
            typed, synopsis.strip().substring(typed.length()).replaceAll("\\s+", " ").strip());
    page.section("DESCRIPTION").paragraph(String.join(" ", usage.description()));
    verbs();
    arguments();
    page.section("EXIT STATUS");
    usage.exitCodeList().forEach(page::term);
    files();
    page.section("EXAMPLES");
    Example.of(command).forEach(example -> page.typed(example.purpose(), example.typed()));
    page.section("SEE ALSO").paragraph(seeAlso());
    return page.toString();
  }

  private void verbs() {
    if (!command.subcommands().isEmpty()) {
      page.section("VERBS");
      command
          .subcommands()
          .forEach(
              (verb, line) ->
                  page.term(verb, String.join(" ", line.getCommandSpec().usageMessage().header())));
    }
  }

  private void arguments() {
    page.section("OPTIONS");
    for (PositionalParamSpec positional : command.positionalParameters()) {
      page.term(positional.paramLabel(), described(positional));
    }
    for (OptionSpec option : command.options()) {
      String names = String.join(", ", option.names());
      String value = option.arity().max() == 0 ? "" : "=" + option.paramLabel();
      page.term(names + value, described(option));
    }
  }

  private static String described(ArgSpec argument) {
    return String.format(String.join(" ", argument.description()));
  }

  /** What the command reads and writes beside what it is told on the command line. */
  private void files() {
    if (command.parent() == null) {
      page.section("FILES");
      KitTables.ALL.forEach(table -> page.term(table.name(), table.content()));
      return;
    }
    boolean kit = command.findOption("--column") != null;
    boolean store = command.findOption("--store") != null;
    if (kit) {
      page.section("FILES")
          .term("<kit>/*.csv, <kit>/kit.properties", "the kit's tables; lowfirst(1) lists them")
          .term("<kit>/" + ColumnMap.FILE, "what --column said; read by every verb");
    }
    if (store) {
      page.term(
              "reports/<kit>/progress.db", "what was recorded, where --store names no other place")
          .section("ENVIRONMENT")
          .term(StoreOption.VARIABLE, "the store, where --store does not name it");
    }
  }

  private String seeAlso() {
    if (command.parent() != null) {
      return name(command.root()) + "(1)";
    }
    return command.subcommands().values().stream()
        .map(line -> name(line.getCommandSpec()) + "(1)")
        .collect(Collectors.joining(", "));
  }
}
