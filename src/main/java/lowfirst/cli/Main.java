package lowfirst.cli;

import lowfirst.cli.process.Surroundings;

/** The process: one thin line. */
public final class Main {
  private Main() {}

  /** Runs one command and exits with its status. */
  public static void main(String[] arguments) {
    System.exit(Lowfirst.run(arguments, Surroundings.ofProcess()));
  }
}
