package lowfirst.sheet;

/** A number with its noun. */
final class Counted {
  private Counted() {}

  /** For example {@code 1 part}, {@code 2 parts}. */
  static String of(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
