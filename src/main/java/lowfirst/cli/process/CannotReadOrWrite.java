package lowfirst.cli.process;

/** Something wrong with the machine, worded for the user; caught once, in {@code Lowfirst}. */
public final class CannotReadOrWrite extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** With what a person reads of it. */
  public CannotReadOrWrite(String message) {
    super(message);
  }

  /** The same, and what the machine said. */
  public CannotReadOrWrite(String message, Throwable cause) {
    super(message, cause);
  }
}
