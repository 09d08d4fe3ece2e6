package lowfirst.cli.process;

/** What the process tells its caller. */
public final class ExitStatus {
  /** Nothing found. */
  public static final int OK = 0;

  /** Findings: faults, disagreements, overloaded or undecided channels. */
  public static final int FINDINGS = 1;

  /** The command line could not be understood. */
  public static final int USAGE = 2;

  /** Something could not be read or written. */
  public static final int CANNOT_READ_OR_WRITE = 3;

  /** A bug of ours. */
  public static final int BUG = 70;

  // The same for people: each verb lists them in its help and on its manual page.

  /** Stands over them. */
  public static final String HEADING = "%nExit status:%n";

  /** {@link #USAGE}. */
  public static final String NOT_UNDERSTOOD = "2:the command line can't be understood";

  /** {@link #CANNOT_READ_OR_WRITE}, of a verb that only reads. */
  public static final String UNREADABLE = "3:something can't be read";

  /** {@link #CANNOT_READ_OR_WRITE}, of a verb that writes files. */
  public static final String UNREADABLE_OR_UNWRITABLE = "3:something can't be read or written";

  /** {@link #CANNOT_READ_OR_WRITE}, of a verb that serves a page. */
  public static final String UNREADABLE_OR_NO_PORT =
      "3:something can't be read or written, or no port";

  /** {@link #BUG}. */
  public static final String OUR_BUG = "70:a bug of ours";

  private ExitStatus() {}
}
