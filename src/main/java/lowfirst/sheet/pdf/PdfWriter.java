package lowfirst.sheet.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import lowfirst.sheet.document.Document;

/**
 * Documents as PDF: fillable, tagged, fit for the archive (PDF/A-2, level A), the same bytes each
 * time. One writer reads its fonts once and writes any number of documents, one after the other.
 */
public final class PdfWriter {
  private final Typeface regular = Typeface.regular();
  private final Typeface bold = Typeface.bold();

  /** The document on this paper. */
  public byte[] write(Document document, Paper paper) {
    var bytes = new ByteArrayOutputStream(1 << 16);
    try {
      write(document, paper, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /**
   * Writes the document on this paper; leaves the stream open.
   *
   * @throws IOException when the stream can't be written
   */
  public void write(Document document, Paper paper, OutputStream out) throws IOException {
    try (var open = new OpenDocument(paper, regular, bold)) {
      Flow.set(new BlockPieces(open).of(document), open);
      foot(open, document.title());
      open.save(bold.printable(document.title()), out);
    }
  }

  /** The title and "page x of y" at the foot of each page. */
  private static void foot(OpenDocument open, String title) {
    Paper paper = open.paper();
    EmbeddedFont font = open.regular();
    double left = Paper.MARGIN_MILLIMETRES * Paper.POINTS;
    double right = paper.widthPoints() - left;
    double y = paper.heightPoints() - left * 0.55;
    List<Page> pages = open.pages();
    for (int number = 1; number <= pages.size(); number++) {
      PageContent content = pages.get(number - 1).content();
      String count = "page " + number + " of " + pages.size();
      double width = font.face().width(count) * Style.FOOT;
      content.beginArtifact();
      content.text(font, Style.FOOT, right - width, y, Style.SOFT, count);
      content.text(
          font, Style.FOOT, left, y, Style.SOFT, shortened(title, font, right - left - width - 20));
      content.endMarked();
    }
  }

  /** The first line of a title, with dots where it goes on: the whole one stands on page 1. */
  private static String shortened(String title, EmbeddedFont font, double width) {
    double dots = font.face().width("…") * Style.FOOT;
    List<Lines.Line> lines = Lines.of(font.face(), Style.FOOT, title).within(width - dots);
    return lines.get(0).text() + (lines.size() > 1 ? "…" : "");
  }
}
