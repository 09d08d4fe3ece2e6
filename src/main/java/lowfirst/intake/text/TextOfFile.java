package lowfirst.intake.text;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * The text of a file, with how its bytes were understood.
 *
 * @param text the characters, without a byte-order mark; empty when the file holds no text
 * @param encoding what a person calls the encoding, for example {@code UTF-16 (little-endian)}
 * @param signs which signs stand in the text
 * @param problems what is wrong with the file as a whole
 */
public record TextOfFile(String text, String encoding, Signs signs, List<Problem> problems) {

  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

  /** What every mending looks for. */
  private static final String MENDED = "&\u00c2\u00ce\u00e2";

  private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");

  /** Bytes looked at to tell text from other things. */
  private static final int SAMPLE = 4096;

  /** The text of these bytes; never throws. */
  public static TextOfFile of(String file, byte[] bytes) {
    if (bytes.length == 0) {
      return faulty(
          new Problem(
              Kind.FILE_EMPTY,
              Place.ofFile(file),
              "the file is empty",
              "export it again, or delete it"));
    }
    if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
      return decoded(file, bytes, 3, StandardCharsets.UTF_8, "UTF-8 with mark");
    }
    if (startsWith(bytes, 0xFF, 0xFE)) {
      return decoded(file, bytes, 2, StandardCharsets.UTF_16LE, "UTF-16 (little-endian)");
    }
    if (startsWith(bytes, 0xFE, 0xFF)) {
      return decoded(file, bytes, 2, StandardCharsets.UTF_16BE, "UTF-16 (big-endian)");
    }
    return unmarked(file, bytes);
  }

  private TextOfFile(String text, String encoding, List<Problem> problems) {
    this(text, encoding, Signs.of(text), problems);
  }

  /**
   * The same with its text changed, which is left alone where none of these signs can stand in it;
   * an unreadable file stays as it is.
   */
  TextOfFile with(String changed, UnaryOperator<String> change) {
    if (!signs.mayBeAnyOf(changed)) {
      return this;
    }
    String text = change.apply(this.text);
    return text.equals(this.text) ? this : new TextOfFile(text, encoding, problems);
  }

  /**
   * The same with what mails, notes, pages of the web and hands put around cells and lines made
   * plain; an unreadable file stays as it is.
   */
  public TextOfFile plain() {
    return with(ZeroWidthSigns.SIGNS, ZeroWidthSigns::dropped)
        .with(WideSigns.DIGITS, WideSigns::plain)
        .with(OddQuotes.SIGNS, OddQuotes::plain)
        .with(MailQuotes.SIGN, MailQuotes::dropped)
        .with(PipeTable.SIGNS, PipeTable::plain)
        .with(TickBoxes.SIGNS, TickBoxes::dropped)
        .with(LeaderDots.SIGN, LeaderDots::blanked);
  }

  private static TextOfFile unmarked(String file, byte[] bytes) {
    int[] zeros = zerosAtEvenAndOddPlaces(bytes);
    int pairs = Math.min(bytes.length, SAMPLE) / 2;
    // Digits, separators and line ends in UTF-16 have a zero, always on the same side.
    if (zeros[1] > pairs * 0.2 && zeros[0] < pairs * 0.1) {
      return decoded(file, bytes, 0, StandardCharsets.UTF_16LE, "UTF-16 (little-endian, no mark)");
    }
    if (zeros[0] > pairs * 0.2 && zeros[1] < pairs * 0.1) {
      return decoded(file, bytes, 0, StandardCharsets.UTF_16BE, "UTF-16 (big-endian, no mark)");
    }
    if (zeros[0] + zeros[1] > 0) {
      return notText(file);
    }
    var text = new String(bytes, StandardCharsets.UTF_8);
    // What is no UTF-8 became U+FFFD; so did what an earlier program had lost.
    boolean isWhole = text.indexOf('\ufffd') < 0;
    if (!isWhole && !isUtf8(bytes)) {
      return ofOneByteEach(file, bytes);
    }
    return checked(file, text, "UTF-8");
  }

  private static TextOfFile ofOneByteEach(String file, byte[] bytes) {
    var western = new String(bytes, WINDOWS_1252);
    Optional<NationalCodePage> national = NationalCodePage.of(bytes, western);
    if (national.isPresent()) {
      return ofNationalCodePage(file, national.get());
    }
    // What can be mended was UTF-8 once, and no old code page.
    Optional<OldCodePage> old =
        mended(western).equals(western) ? OldCodePage.of(bytes, western) : Optional.empty();
    return old.map(page -> ofOldCodePage(file, western, page))
        .orElseGet(() -> checked(file, western, "Windows-1252"));
  }

  private static TextOfFile ofNationalCodePage(String file, NationalCodePage page) {
    TextOfFile text = checked(file, page.text(), page.words() + ", guessed");
    if (text.text().isEmpty()) {
      return text;
    }
    var problems = new ArrayList<>(text.problems());
    problems.add(
        new Problem(
            Kind.COLUMN_GUESSED,
            Place.ofFile(file),
            "the file was read in "
                + page.words()
                + ", in which \""
                + page.known()
                + "\" stands in it",
            "if words look wrong, save the file as UTF-8"));
    return new TextOfFile(text.text(), text.encoding(), problems);
  }

  private static TextOfFile ofOldCodePage(String file, String western, OldCodePage page) {
    int line = 1 + (int) LINE_END.matcher(western.substring(0, page.at())).results().count();
    TextOfFile text = checked(file, page.text(), page.words() + ", guessed");
    return text.text().isEmpty()
        ? text
        : new TextOfFile(
            text.text(),
            text.encoding(),
            List.of(
                new Problem(
                    Kind.TEXT_DAMAGED,
                    Place.ofLine(file, line),
                    "the file was read in "
                        + page.words()
                        + ", in which \""
                        + OldCodePage.around(page.text(), page.at())
                        + "\" stands here; as Windows-1252 it would be \""
                        + OldCodePage.around(western, page.at())
                        + "\"",
                    "compare a value with the original, or save the file as UTF-8")));
  }

  private static boolean isUtf8(byte[] bytes) {
    try {
      StandardCharsets.UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPORT)
          .onUnmappableCharacter(CodingErrorAction.REPORT)
          .decode(ByteBuffer.wrap(bytes));
      return true;
    } catch (CharacterCodingException notUtf8) {
      return false;
    }
  }

  private static TextOfFile decoded(
      String file, byte[] bytes, int from, Charset charset, String encoding) {
    return checked(file, new String(bytes, from, bytes.length - from, charset), encoding);
  }

  private static TextOfFile checked(String file, String text, String encoding) {
    if (text.startsWith("\ufeff")) {
      return checked(file, text.substring(1), encoding);
    }
    if (text.isBlank()) {
      return faulty(
          new Problem(
              Kind.FILE_EMPTY,
              Place.ofFile(file),
              "the file holds nothing but blanks",
              "export it again, or delete it"));
    }
    int end = Math.min(text.length(), SAMPLE);
    long controls = text.substring(0, end).chars().filter(TextOfFile::isStray).count();
    if (controls > end * 0.02) {
      return notText(file);
    }
    var saved = new TextOfFile(text, encoding, damage(file, text));
    TextOfFile mended = saved.with(MENDED, TextOfFile::mended);
    if (mended.text().equals(text)) {
      return saved;
    }
    var problems = new ArrayList<>(saved.problems());
    problems.add(
        new Problem(
            Kind.TEXT_DAMAGED,
            Place.ofFile(file),
            "signs such as µ, Ω or ± stood there as other letters (of a wrong encoding, or as for"
                + " the web) and were put back",
            "compare a value with the original"));
    return new TextOfFile(mended.text(), encoding, mended.signs(), problems);
  }

  /** Signs spelt as for the web, and UTF-8 that a program took for Windows-1252 and saved. */
  private static String mended(String saved) {
    return WebSigns.plain(saved)
        .replace("\u00c2\u00b5", "µ")
        .replace("\u00ce\u00bc", "µ")
        .replace("\u00ce\u00a9", "Ω")
        .replace("\u00e2\u201e\u00a6", "Ω")
        .replace("\u00c2\u00b1", "±")
        .replace("\u00c2\u00b0", "°");
  }

  private static boolean isStray(int character) {
    return character < ' ' && "\t\n\r\f\u000b\u001a".indexOf(character) < 0;
  }

  /** Characters that an earlier program could not keep are stored as U+FFFD: say where. */
  private static List<Problem> damage(String file, String text) {
    if (text.indexOf('\ufffd') < 0) {
      return List.of();
    }
    var problems = new ArrayList<Problem>();
    int line = 1;
    boolean said = false;
    for (int at = 0; at < text.length() && problems.size() < 20; at++) {
      char c = text.charAt(at);
      if (c == '\n' || (c == '\r' && (at + 1 == text.length() || text.charAt(at + 1) != '\n'))) {
        line++;
        said = false;
      } else if (c == '\ufffd' && !said) {
        said = true;
        problems.add(
            new Problem(
                Kind.TEXT_DAMAGED,
                Place.ofLine(file, line),
                "a character was lost before this file was saved (it reads \ufffd)",
                "compare the line with the original, often Ω, µ or ± stood there"));
      }
    }
    return List.copyOf(problems);
  }

  private static TextOfFile notText(String file) {
    return faulty(
        new Problem(
            Kind.NOT_TEXT,
            Place.ofFile(file),
            "this is not a text file",
            "export the table as CSV (comma-separated text)"));
  }

  private static TextOfFile faulty(Problem problem) {
    return new TextOfFile("", "none", List.of(problem));
  }

  private static boolean startsWith(byte[] bytes, int... start) {
    for (int i = 0; i < start.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != start[i]) {
        return false;
      }
    }
    return true;
  }

  private static int[] zerosAtEvenAndOddPlaces(byte[] bytes) {
    int[] zeros = new int[2];
    for (int i = 0; i < Math.min(bytes.length, SAMPLE); i++) {
      if (bytes[i] == 0) {
        zeros[i % 2]++;
      }
    }
    return zeros;
  }
}
