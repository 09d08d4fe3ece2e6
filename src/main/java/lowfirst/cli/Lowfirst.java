package lowfirst.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import lowfirst.cli.file.LostLetters;
import lowfirst.cli.manual.Example;
import lowfirst.cli.process.CannotReadOrWrite;
import lowfirst.cli.process.ExitStatus;
import lowfirst.cli.process.Surroundings;
import lowfirst.sheet.pdf.MissingFont;
import lowfirst.store.StoreFailure;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The root command: finds the verb, and turns whatever happens into an exit status. */
@Command(
    name = "lowfirst",
    version = "lowfirst 0.1.0",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "<verb>",
    header = "assemble and check a kit of circuit boards",
    commandListHeading = "%nVerbs:%n",
    description =
        "From a bill of materials and a bag of loose parts to a signed-off, load-checked board.",
    exitCodeListHeading = ExitStatus.HEADING,
    exitCodeList = {
      "0:nothing found",
      "1:findings",
      ExitStatus.NOT_UNDERSTOOD,
      ExitStatus.UNREADABLE_OR_UNWRITABLE,
      ExitStatus.OUR_BUG
    },
    footerHeading = Example.HEADING,
    footer = {
      "  lowfirst demo            the whole job on a sample kit",
      "  lowfirst check my-kit    what is wrong in the tables of yours",
      "  lowfirst steps --help    how a verb is used"
    })
final class Lowfirst implements Runnable {
  private static final int HELP = 80;

  /** picocli refuses to set its help in fewer columns. */
  private static final int NARROWEST_HELP = 55;

  @Spec private CommandSpec spec;

  private Lowfirst() {}

  /** Runs one command line; never throws. Flushes both streams. */
  public static int run(String[] arguments, Surroundings surroundings) {
    try {
      CommandLine line = commandLine(Verb.called(arguments), surroundings);
      line.setUsageHelpWidth(Math.max(NARROWEST_HELP, surroundings.columns(HELP)));
      int status = line.execute(arguments);
      return surroundings.out().checkError() ? outputLost(surroundings) : status;
    } catch (Error broken) {
      return bug(broken, surroundings);
    } finally {
      surroundings.out().flush();
      surroundings.err().flush();
    }
  }

  /** The whole command tree, for generating its manual. */
  static CommandLine commandLine(Surroundings surroundings) {
    return commandLine(Verb.all(), surroundings);
  }

  private static CommandLine commandLine(List<Verb> verbs, Surroundings surroundings) {
    var line = new CommandLine(new Lowfirst());
    for (Verb verb : verbs) {
      line.addSubcommand(verb.command(surroundings));
    }
    line.setOut(new PrintWriter(surroundings.out(), true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(surroundings.err(), true, StandardCharsets.UTF_8));
    line.registerConverter(Path.class, LostLetters::path);
    line.setParameterExceptionHandler((wrong, arguments) -> refused(wrong));
    line.setExecutionExceptionHandler(
        (exception, command, parsed) -> reported(exception, surroundings));
    return line;
  }

  /** What was wrong, in few lines: a whole manual page would push it off the screen. */
  private static int refused(ParameterException wrong) {
    CommandLine command = wrong.getCommandLine();
    PrintWriter err = command.getErr();
    if (command.getParent() == null) {
      command.usage(err);
      err.println();
    }
    err.println(
        wrong
            .getMessage()
            .replaceAll("is not a (double|float)$", "is no number")
            .replaceAll("is not an? (int|long)$", "is no whole number"));
    if (!UnmatchedArgumentException.printSuggestions(wrong, err) && command.getParent() != null) {
      err.println("How to say it: " + command.getCommandSpec().qualifiedName() + " --help");
    }
    return ExitStatus.USAGE;
  }

  private static int reported(Exception exception, Surroundings surroundings) {
    if (exception instanceof CannotReadOrWrite
        || exception instanceof StoreFailure
        || exception instanceof MissingFont) {
      surroundings.err().println("lowfirst: " + exception.getMessage());
      return ExitStatus.CANNOT_READ_OR_WRITE;
    }
    return bug(exception, surroundings);
  }

  /** A full disk, or a reader that went away: what was printed did not all arrive. */
  private static int outputLost(Surroundings surroundings) {
    surroundings
        .err()
        .println(
            "lowfirst: not all of the output could be written: the disk is full, or its reader"
                + " stopped early");
    return ExitStatus.CANNOT_READ_OR_WRITE;
  }

  private static int bug(Throwable broken, Surroundings surroundings) {
    var trace = new StringWriter();
    broken.printStackTrace(new PrintWriter(trace));
    surroundings.err().println("lowfirst: this is a bug of ours, please report it:");
    surroundings.err().print(trace);
    return ExitStatus.BUG;
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "a verb is missing, for example: demo");
  }
}
