package lowfirst.cli;

/** What the process tells its caller. */
final class ExitStatus {
  /** Nothing found. */
  static final int OK = 0;

  /** Findings: faults, disagreements, overloaded or undecided channels. */
  static final int FINDINGS = 1;

  /** The command line could not be understood. */
  static final int USAGE = 2;

  /** Something could not be read or written. */
  static final int CANNOT_READ_OR_WRITE = 3;

  /** A bug of ours. */
  static final int BUG = 70;

  private ExitStatus() {}
}
