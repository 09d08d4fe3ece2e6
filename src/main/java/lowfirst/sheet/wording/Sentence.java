package lowfirst.sheet.wording;

import java.util.Locale;

/** Words as a sentence begins and ends. */
public final class Sentence {
  private Sentence() {}

  /** A whole sentence of these words: a capital in front, a full stop behind. */
  public static String of(String words) {
    return begun(words) + ".";
  }

  /** The same words with a capital in front; they may not be empty. */
  public static String begun(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
