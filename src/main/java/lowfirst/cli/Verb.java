package lowfirst.cli;

import java.util.List;
import java.util.Locale;
import lowfirst.cli.process.Surroundings;
import lowfirst.cli.verb.BenchCommand;
import lowfirst.cli.verb.CheckCommand;
import lowfirst.cli.verb.CodeCommand;
import lowfirst.cli.verb.LoadsCommand;
import lowfirst.cli.verb.ProgressCommand;
import lowfirst.cli.verb.SheetsCommand;
import lowfirst.cli.verb.SortCommand;
import lowfirst.cli.verb.StepsCommand;
import lowfirst.cli.verb.SwapCommand;
import lowfirst.cli.verb.TickCommand;

/** The verbs, in the order of the job. A new one is a constant here, and a case below. */
enum Verb {
  CHECK,
  SORT,
  CODE,
  STEPS,
  SHEETS,
  TICK,
  PROGRESS,
  BENCH,
  LOADS,
  SWAP,
  DEMO;

  private static final List<Verb> ALL = List.of(values());

  /** All of them. */
  static List<Verb> all() {
    return ALL;
  }

  /**
   * The verb that a command line starts with; all of them where it starts otherwise. Building a
   * verb's options takes longer than most of what is done with them, so only the called one is.
   */
  static List<Verb> called(String[] arguments) {
    if (arguments.length > 0) {
      for (Verb verb : ALL) {
        if (verb.word().equals(arguments[0])) {
          return List.of(verb);
        }
      }
    }
    return ALL;
  }

  /** As it is written on a command line. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The command that it runs. */
  Object command(Surroundings surroundings) {
    return switch (this) {
      case CHECK -> new CheckCommand(surroundings);
      case SORT -> new SortCommand(surroundings);
      case CODE -> new CodeCommand(surroundings);
      case STEPS -> new StepsCommand(surroundings);
      case SHEETS -> new SheetsCommand(surroundings);
      case TICK -> new TickCommand(surroundings);
      case PROGRESS -> new ProgressCommand(surroundings);
      case BENCH -> new BenchCommand(surroundings);
      case LOADS -> new LoadsCommand(surroundings);
      case SWAP -> new SwapCommand(surroundings);
      case DEMO -> new DemoCommand(surroundings);
    };
  }
}
