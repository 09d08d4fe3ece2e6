package lowfirst.problem;

import java.util.Collection;
import java.util.stream.Collectors;

/** The beginning of a text, or of a list of names, that may be long. */
public final class Excerpt {
  private Excerpt() {}

  /** The text, or its beginning and dots, at most so many characters. */
  public static String of(String text, int most) {
    return text.length() <= most ? text : text.substring(0, most - 3) + "...";
  }

  /** The names, at most so many of them and how many more there are: R1, R2 and 3 more. */
  public static String of(Collection<?> names, int most) {
    String first =
        names.stream().limit(most).map(Object::toString).collect(Collectors.joining(", "));
    return names.size() > most ? first + " and " + (names.size() - most) + " more" : first;
  }
}
