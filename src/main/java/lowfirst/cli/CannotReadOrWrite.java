package lowfirst.cli;

/** Something wrong with the machine, worded for the user; caught once, in {@link Lowfirst}. */
final class CannotReadOrWrite extends RuntimeException {
  private static final long serialVersionUID = 1L;

  CannotReadOrWrite(String message) {
    super(message);
  }

  CannotReadOrWrite(String message, Throwable cause) {
    super(message, cause);
  }
}
