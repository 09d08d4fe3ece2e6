package lowfirst.problem;

/** The beginning of a text that may be long. */
public final class Excerpt {
  private Excerpt() {}

  /** The text, or its beginning and dots, at most so many characters. */
  public static String of(String text, int most) {
    return text.length() <= most ? text : text.substring(0, most - 3) + "...";
  }
}
