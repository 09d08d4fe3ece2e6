package lowfirst.sheet.pdf;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** The text and lines of a PDF, recorded, to be written again by bare PDFBox. */
final class RecordedInk extends PDFGraphicsStreamEngine {

  /** One thing to write. */
  interface Stroke {
    void write(PDPageContentStream content, PDFont regular, PDFont bold) throws IOException;
  }

  private final List<Stroke> strokes = new ArrayList<>();

  private RecordedInk(PDPage page) {
    super(page);
  }

  /** What stands on each page of a file. */
  static List<List<Stroke>> of(byte[] pdf) throws IOException {
    var pages = new ArrayList<List<Stroke>>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (PDPage page : document.getPages()) {
        var ink = new RecordedInk(page);
        ink.processPage(page);
        pages.add(ink.strokes);
      }
    }
    return pages;
  }

  /** Writes the pages as one file with nothing but PDFBox. */
  static byte[] rewritten(List<List<Stroke>> pages) throws IOException {
    try (var document = new PDDocument()) {
      PDFont regular = font(document, "Regular");
      PDFont bold = font(document, "Bold");
      for (List<Stroke> strokes : pages) {
        var page = new PDPage(PDRectangle.A4);
        document.addPage(page);
        try (var content = new PDPageContentStream(document, page)) {
          for (Stroke stroke : strokes) {
            stroke.write(content, regular, bold);
          }
        }
      }
      var out = new java.io.ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    }
  }

  private static PDFont font(PDDocument document, String weight) throws IOException {
    try (InputStream in =
        RecordedInk.class.getResourceAsStream("/liberation/LiberationSans-" + weight + ".ttf")) {
      return PDType0Font.load(
          document, new java.io.ByteArrayInputStream(IOUtils.toByteArray(in)), true);
    }
  }

  @Override
  protected void showText(byte[] string) throws IOException {
    PDFont font = getGraphicsState().getTextState().getFont();
    float size = getGraphicsState().getTextState().getFontSize();
    float x = getTextMatrix().getTranslateX();
    float y = getTextMatrix().getTranslateY();
    var text = new StringBuilder();
    InputStream in = new java.io.ByteArrayInputStream(string);
    while (in.available() > 0) {
      text.append(font.toUnicode(font.readCode(in)));
    }
    boolean bold = font.getName().contains("Bold");
    strokes.add(
        (content, regular, heavy) -> {
          content.beginText();
          content.setFont(bold ? heavy : regular, size);
          content.newLineAtOffset(x, y);
          content.showText(text.toString());
          content.endText();
        });
  }

  @Override
  public void moveTo(float x, float y) {
    strokes.add((content, regular, bold) -> content.moveTo(x, y));
  }

  @Override
  public void lineTo(float x, float y) {
    strokes.add((content, regular, bold) -> content.lineTo(x, y));
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    strokes.add((content, regular, bold) -> content.curveTo(x1, y1, x2, y2, x3, y3));
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    float x = (float) p0.getX();
    float y = (float) p0.getY();
    float width = (float) (p2.getX() - p0.getX());
    float height = (float) (p2.getY() - p0.getY());
    strokes.add((content, regular, bold) -> content.addRect(x, y, width, height));
  }

  @Override
  public void closePath() {
    strokes.add((content, regular, bold) -> content.closePath());
  }

  @Override
  public void strokePath() throws IOException {
    float width = getGraphicsState().getLineWidth();
    float[] rgb = getGraphicsState().getStrokingColor().getComponents();
    strokes.add(
        (content, regular, bold) -> {
          content.setLineWidth(width);
          content.setStrokingColor(rgb[0], rgb[rgb.length / 2], rgb[rgb.length - 1]);
          content.stroke();
        });
  }

  @Override
  public void fillPath(int windingRule) throws IOException {
    float[] rgb = getGraphicsState().getNonStrokingColor().getComponents();
    strokes.add(
        (content, regular, bold) -> {
          content.setNonStrokingColor(rgb[0], rgb[rgb.length / 2], rgb[rgb.length - 1]);
          content.fill();
        });
  }

  @Override
  public void fillAndStrokePath(int windingRule) throws IOException {
    strokes.add((content, regular, bold) -> content.fillAndStroke());
  }

  @Override
  public Point2D getCurrentPoint() {
    return new Point2D.Float();
  }

  @Override
  public void drawImage(PDImage image) {
    throw new IllegalStateException("no sheet has images");
  }

  @Override
  public void clip(int windingRule) {
    throw new IllegalStateException("no sheet clips");
  }

  @Override
  public void endPath() {
    throw new IllegalStateException("no sheet leaves a path unpainted");
  }

  @Override
  public void shadingFill(COSName shading) {
    throw new IllegalStateException("no sheet shades");
  }
}
