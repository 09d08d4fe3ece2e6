package lowfirst.sheet.wording;

/** A number with its noun. */
public final class Counted {
  private Counted() {}

  /** For example {@code 1 part}, {@code 2 parts}. */
  public static String of(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
