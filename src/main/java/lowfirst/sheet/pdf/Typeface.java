package lowfirst.sheet.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * A font file, read once for any number of documents, with its glyphs and widths at hand.
 *
 * <p>Not safe for several threads at once.
 */
final class Typeface {
  private static final int PLAIN = 0x0250;

  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final double unitsPerEm;

  /** Glyph and width of the characters below U+0250, which nearly all text consists of. */
  private final int[] plainGlyphs = new int[PLAIN];

  private final double[] plainWidths = new double[PLAIN];
  private final Map<Integer, Double> otherWidths = new ConcurrentHashMap<>();

  private Typeface(TrueTypeFont font) throws IOException {
    this.font = font;
    this.glyphs = font.getUnicodeCmapLookup();
    this.unitsPerEm = font.getUnitsPerEm();
    Arrays.setAll(plainGlyphs, glyphs::getGlyphId);
    for (int codePoint = 0; codePoint < PLAIN; codePoint++) {
      plainWidths[codePoint] = font.getAdvanceWidth(plainGlyphs[codePoint]) / unitsPerEm;
    }
  }

  /** Liberation Sans upright, regular weight. */
  static Typeface regular() {
    return read("/liberation/LiberationSans-Regular.ttf");
  }

  /** Liberation Sans upright, bold. */
  static Typeface bold() {
    return read("/liberation/LiberationSans-Bold.ttf");
  }

  private static Typeface read(String resource) {
    try (var in = Typeface.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new MissingFont(resource);
      }
      return new Typeface(new TTFParser().parse(new RandomAccessReadBuffer(in)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  TrueTypeFont font() {
    return font;
  }

  /** The glyph of a character; 0 when this face has none. */
  int glyph(int codePoint) {
    return codePoint < PLAIN ? plainGlyphs[codePoint] : glyphs.getGlyphId(codePoint);
  }

  /** Width of a text in ems. */
  double width(String text) {
    double width = 0;
    int at = 0;
    while (at < text.length()) {
      int codePoint = text.codePointAt(at);
      width += width(codePoint);
      at += Character.charCount(codePoint);
    }
    return width;
  }

  /** Width of a character in ems. */
  double width(int codePoint) {
    return codePoint < PLAIN
        ? plainWidths[codePoint]
        : otherWidths.computeIfAbsent(codePoint, this::measured);
  }

  private double measured(int codePoint) {
    try {
      return font.getAdvanceWidth(glyph(codePoint)) / unitsPerEm;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The text with everything that this face can't print replaced by its code in angle brackets, for
   * example {@code ‹U+4E2D›}: nothing is lost silently. Tabs become spaces; characters that are
   * invisible by definition are dropped; line feeds stay.
   */
  String printable(String text) {
    boolean plain = true;
    for (int i = 0; i < text.length() && plain; i++) {
      char c = text.charAt(i);
      plain = c >= ' ' && c < 0x7F || c == '\n';
    }
    return plain ? text : replaced(Normalizer.normalize(text, Normalizer.Form.NFC));
  }

  private String replaced(String text) {
    var shown = new StringBuilder(text.length() + 16);
    text.replace("\r\n", "\n")
        .codePoints()
        .forEach(
            codePoint -> {
              if (codePoint == '\n' || codePoint == '\r' || codePoint == 0x2028) {
                shown.append('\n');
              } else if (codePoint == '\t') {
                shown.append(' ');
              } else if (Character.getType(codePoint) == Character.FORMAT) {
                return;
              } else if (glyph(codePoint) != 0 && !Character.isISOControl(codePoint)) {
                shown.appendCodePoint(codePoint);
              } else {
                shown.append(String.format(Locale.ROOT, "‹U+%04X›", codePoint));
              }
            });
    return shown.toString();
  }
}
