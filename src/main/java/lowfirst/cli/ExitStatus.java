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

  // The same for people: each verb lists them in its help and on its manual page.
  static final String HEADING = "%nExit status:%n";
  static final String NOT_UNDERSTOOD = "2:the command line can't be understood";
  static final String UNREADABLE = "3:something can't be read";
  static final String UNREADABLE_OR_UNWRITABLE = "3:something can't be read or written";
  static final String UNREADABLE_OR_NO_PORT = "3:something can't be read or written, or no port";
  static final String OUR_BUG = "70:a bug of ours";

  private ExitStatus() {}
}
