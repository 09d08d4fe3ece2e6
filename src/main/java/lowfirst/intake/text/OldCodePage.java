package lowfirst.intake.text;

import java.nio.charset.Charset;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A code page from before Windows, in which {@code 10 µF} is other bytes. It is taken only where
 * Windows-1252 makes no sense of the very signs, such as {@code 10 æF}, and it does of all.
 *
 * @param words what a person calls it
 * @param text the file in it
 * @param at where the first sign stands that is nonsense in Windows-1252
 */
record OldCodePage(String words, String text, int at) {

  /** Its name for the machine, and for people; of two that fit as well the first is taken. */
  private enum Page {
    DOS_AMERICAN("IBM437", "code page 437 (DOS)"),
    DOS_WESTERN("IBM850", "code page 850 (DOS)"),
    MACINTOSH("x-MacRoman", "Mac Roman");

    private final String charset;
    private final String words;

    Page(String charset, String words) {
      this.charset = charset;
      this.words = words;
    }
  }

  /** Signs of the trade where they belong: 10 µF, 4µ7, 4.7 kΩ, ±5 %, 90°, 25 °C. */
  private static final Pattern SIGN =
      Pattern.compile(
          "\\d\\s?[µμ](?:[FHAVWSsmlg]|\\d{1,2})?(?![\\p{L}\\d])"
              + "|\\d\\s?[kKMGm]?[ΩΩ](?!\\p{L})"
              + "|±\\s?\\d"
              + "|\\d°(?![\\p{L}\\d])|\\d\\s?°\\s?[CFK](?!\\p{L})"
              + "|\\d\\s?[½¼¾](?!\\p{L})|(?<![\\p{L}\\d.,])[½¼¾]"
              + "|(?<=[\\p{L}\\d])[²³]|(?<=[\\d\\s])×(?=[\\d\\s])"
              + "|[–—…•·®©™€£§]|(?<![\\p{L}\\d])[„“‘‚«»¿¡Ø]|[”’“‘»«](?![\\p{L}\\d])"
              + "|(?<=\\p{L})[’´`](?=\\p{L})");

  /** Letters of a word, with another letter beside them and no digit. */
  private static final Pattern WORD =
      Pattern.compile("(?<![\\p{L}\\d])\\p{L}{2,}(?![\\p{L}\\d])|(?<!\\S)[àÀéÉóÓ](?!\\S)");

  /** What looks like a word or a fraction and is none: 10 æF, 4.7 kê, 25 øC, 4.7½. */
  private static final Pattern NO_WORD =
      Pattern.compile("\\d\\s?(?:æ[FHAVWSsm]|[kKMGm]?ê|øC|[kKMG]½)(?!\\p{L})|\\d[.,]\\d+\\s?½");

  /**
   * The one that makes sense of all where {@code western}, the text in Windows-1252, makes none.
   */
  static Optional<OldCodePage> of(byte[] bytes, String western) {
    int at = nonsense(western);
    return at < 0
        ? Optional.empty()
        : Stream.of(Page.values())
            .filter(page -> Charset.isSupported(page.charset))
            .map(
                page ->
                    new OldCodePage(
                        page.words, new String(bytes, Charset.forName(page.charset)), at))
            .filter(page -> nonsense(page.text) < 0)
            .findFirst();
  }

  /** The sign with what stands around it in its cell. */
  static String around(String text, int at) {
    int from = at;
    while (from > 0 && at - from < 8 && isInCell(text.charAt(from - 1))) {
      from--;
    }
    int to = at;
    while (to < text.length() && to - at < 8 && isInCell(text.charAt(to))) {
      to++;
    }
    return text.substring(from, to).strip();
  }

  private static boolean isInCell(char c) {
    return c >= ' ' && c != ',' && c != ';' && c != '"' && c != '|';
  }

  /** Where the first sign stands that makes no sense there; -1 when all do. */
  private static int nonsense(String text) {
    var sensible = new boolean[text.length()];
    mark(SIGN.matcher(text), sensible, true);
    mark(WORD.matcher(text), sensible, true);
    mark(NO_WORD.matcher(text), sensible, false);
    for (int at = 0; at < sensible.length; at++) {
      if (text.charAt(at) > 126 && !sensible[at] && text.charAt(at) != '\u00a0') {
        return at;
      }
    }
    return -1;
  }

  private static void mark(Matcher found, boolean[] sensible, boolean makesSense) {
    while (found.find()) {
      for (int at = found.start(); at < found.end(); at++) {
        sensible[at] = makesSense;
      }
    }
  }
}
