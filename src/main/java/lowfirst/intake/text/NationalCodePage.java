package lowfirst.intake.text;

import java.nio.charset.Charset;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.TableKind;

/**
 * A code page for letters that Windows-1252 lacks. It is taken where it turns cells into header
 * words of the trade that read as no word otherwise.
 *
 * @param words what a person calls it
 * @param text the file in it
 * @param known the first header word that shows it
 */
record NationalCodePage(String words, String text, String known) {

  /** Its name for the machine, and for people. */
  private enum Page {
    CENTRAL_EUROPEAN("windows-1250", "Windows-1250 (Central European)"),
    CYRILLIC("windows-1251", "Windows-1251 (Cyrillic)"),
    CYRILLIC_DOS("IBM866", "code page 866 (Cyrillic, DOS)"),
    JAPANESE("windows-31j", "Shift JIS"),
    CHINESE("GB18030", "GB 18030");

    private final String charset;
    private final String words;

    Page(String charset, String words) {
      this.charset = charset;
      this.words = words;
    }
  }

  /** Bytes looked at to find header words. */
  private static final int SAMPLE = 4096;

  private static final Pattern BETWEEN_CELLS = Pattern.compile("[,;|\t\r\n\"]+");

  /** The one whose header words are known; empty where {@code western} reads as well. */
  static Optional<NationalCodePage> of(byte[] bytes, String western) {
    if (known(western).isPresent()) {
      return Optional.empty();
    }
    int end = Math.min(bytes.length, SAMPLE);
    for (Page page : Page.values()) {
      if (Charset.isSupported(page.charset)) {
        Charset charset = Charset.forName(page.charset);
        Optional<String> known = known(new String(bytes, 0, end, charset));
        if (known.isPresent()) {
          return Optional.of(
              new NationalCodePage(page.words, new String(bytes, charset), known.get()));
        }
      }
    }
    return Optional.empty();
  }

  /** The first cell that is a sure header word with letters beyond ASCII. */
  private static Optional<String> known(String text) {
    return BETWEEN_CELLS
        .splitAsStream(text.substring(0, Math.min(text.length(), SAMPLE)))
        .filter(cell -> cell.chars().anyMatch(c -> c > 127 && Character.isLetter(c)))
        .filter(
            cell ->
                Stream.of(TableKind.BOM, TableKind.PLACEMENTS)
                    .flatMap(kind -> HeaderWords.matches(kind, cell).stream())
                    .anyMatch(match -> !match.isWeak()))
        .findFirst();
  }
}
