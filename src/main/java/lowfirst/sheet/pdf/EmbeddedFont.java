package lowfirst.sheet.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.BitSet;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A face inside one document; only the characters used go into the file. */
final class EmbeddedFont {
  private final String name;
  private final Typeface face;
  private final PDType0Font font;
  private final BitSet used = new BitSet();

  /**
   * Puts a face into a document.
   *
   * @param name what content streams call it
   */
  EmbeddedFont(String name, Typeface face, PDDocument document) {
    this.name = name;
    this.face = face;
    try {
      this.font = PDType0Font.load(document, face.font(), true);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  String name() {
    return name;
  }

  Typeface face() {
    return face;
  }

  PDType0Font font() {
    return font;
  }

  /** The glyph of a character, which the file will hold from now on. */
  int glyph(int codePoint) {
    if (!used.get(codePoint)) {
      used.set(codePoint);
      font.addToSubset(codePoint);
    }
    return face.glyph(codePoint);
  }

  /** Writes the characters used; called once, last. */
  void subset() throws IOException {
    if (!used.isEmpty()) {
      font.subset();
    }
  }
}
