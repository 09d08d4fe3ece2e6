package lowfirst.sheet.pdf;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;
import org.apache.pdfbox.pdmodel.interactive.form.PDTextField;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/**
 * A PDF as a reader program finds it: what stands where on each page, and the structure that a
 * screen reader follows.
 *
 * @param structure one element a line, its children indented, each with its own text
 */
record SeenPdf(List<SeenPage> pages, List<Field> fields, String structure) {

  /** What a run of text shows: points, y downwards from the top to the baseline. */
  record Text(
      String text,
      double x,
      double y,
      double width,
      double size,
      boolean bold,
      int rgb,
      String tag) {
    double right() {
      return x + width;
    }
  }

  /** A painted path with its inks; -1 where it has none. Its curves are broken into lines. */
  record Path(Path2D shape, int stroke, double line, int fill) {
    double left() {
      return shape.getBounds2D().getMinX();
    }

    double top() {
      return shape.getBounds2D().getMinY();
    }

    double right() {
      return shape.getBounds2D().getMaxX();
    }

    double bottom() {
      return shape.getBounds2D().getMaxY();
    }

    /** The box around it, and its inks, for example {@code 10 20 30 40 stroke 0.3 fill f4e3c1}. */
    String told() {
      return String.format(Locale.ROOT, "%.1f %.1f %.1f %.1f", left(), top(), right(), bottom())
          + (stroke < 0 ? "" : String.format(Locale.ROOT, " stroke %06x %.2f", stroke, line))
          + (fill < 0 ? "" : String.format(Locale.ROOT, " fill %06x", fill));
    }
  }

  /** A form field: its box on the page, y downwards; {@code words} are for a screen reader. */
  record Field(
      int page,
      double left,
      double top,
      double right,
      double bottom,
      String words,
      String value,
      boolean severalLines) {}

  /** One page. */
  record SeenPage(double width, double height, List<Text> texts, List<Path> paths) {
    /** The one run of text that reads so. */
    Text text(String words) {
      List<Text> found = texts.stream().filter(text -> text.text().equals(words)).toList();
      if (found.size() != 1) {
        throw new AssertionError(found.size() + " times \"" + words + "\" among " + words());
      }
      return found.get(0);
    }

    /** All runs of text in the order of the file, without the foot line. */
    List<String> words() {
      double foot = height - Paper.MARGIN_MILLIMETRES * Paper.POINTS;
      return texts.stream().filter(text -> text.y() < foot).map(Text::text).toList();
    }
  }

  static SeenPdf of(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      var pages = new ArrayList<SeenPage>();
      var marked = new HashMap<COSDictionary, Map<Integer, String>>();
      for (PDPage page : document.getPages()) {
        var eye = new Eye(page);
        eye.look();
        pages.add(eye.seen());
        marked.put(page.getCOSObject(), eye.marked);
      }
      var lines = new StringBuilder();
      COSDictionary root = document.getDocumentCatalog().getStructureTreeRoot().getCOSObject();
      describe((COSDictionary) root.getDictionaryObject(COSName.K), "", marked, lines);
      return new SeenPdf(pages, fields(document), lines.toString());
    }
  }

  private static List<Field> fields(PDDocument document) {
    var fields = new ArrayList<Field>();
    PDAcroForm form = document.getDocumentCatalog().getAcroForm();
    if (form == null) {
      return fields;
    }
    for (PDField field : form.getFields()) {
      PDAnnotationWidget widget = field.getWidgets().get(0);
      int page = document.getPages().indexOf(widget.getPage());
      double height = widget.getPage().getMediaBox().getHeight();
      PDRectangle box = widget.getRectangle();
      fields.add(
          new Field(
              page + 1,
              box.getLowerLeftX(),
              height - box.getUpperRightY(),
              box.getUpperRightX(),
              height - box.getLowerLeftY(),
              field.getAlternateFieldName(),
              field.getValueAsString(),
              field instanceof PDTextField text && text.isMultiline()));
    }
    return fields;
  }

  private static void describe(
      COSDictionary element,
      String indent,
      Map<COSDictionary, Map<Integer, String>> marked,
      StringBuilder out) {
    var words = new ArrayList<String>();
    var below = new StringBuilder();
    for (COSBase raw : (COSArray) element.getDictionaryObject(COSName.K)) {
      COSBase kid = raw instanceof COSObject reference ? reference.getObject() : raw;
      if (kid instanceof COSInteger id) {
        words.add(marked.get(element.getCOSDictionary(COSName.PG)).get(id.intValue()));
      } else if (kid instanceof COSDictionary child) {
        String type = child.getNameAsString(COSName.TYPE);
        if ("MCR".equals(type)) {
          words.add(marked.get(child.getCOSDictionary(COSName.PG)).get(child.getInt(COSName.MCID)));
        } else if ("OBJR".equals(type)) {
          if (!child.getCOSDictionary(COSName.PG).getNameAsString(COSName.TYPE).equals("Page")) {
            throw new AssertionError("a field on no page");
          }
          words.add("field " + child.getCOSDictionary(COSName.OBJ).getString(COSName.TU));
        } else {
          if (child.getCOSDictionary(COSName.P) != element) {
            throw new AssertionError(child + " doesn't know its parent");
          }
          describe(child, indent + "  ", marked, below);
        }
      }
    }
    String alt = element.getString(COSName.ALT);
    out.append(indent).append(element.getNameAsString(COSName.S));
    if (alt != null) {
      out.append(" (").append(alt).append(')');
    }
    words.removeIf(text -> text == null || text.isEmpty());
    if (alt == null && !words.isEmpty()) {
      out.append(": ").append(String.join(" ", words));
    }
    out.append('\n').append(below);
  }

  /** Walks over a page, what is stamped onto it, and its form fields. */
  private static final class Eye extends PDFGraphicsStreamEngine {
    private final PDPage page;
    private final List<Text> texts = new ArrayList<>();
    private final List<Path> paths = new ArrayList<>();
    private final Map<Integer, String> marked = new HashMap<>();
    private final Deque<String> tags = new ArrayDeque<>();
    private final Deque<Integer> ids = new ArrayDeque<>();
    private final Path2D path = new Path2D.Double();
    private Text run;

    Eye(PDPage page) {
      super(page);
      this.page = page;
    }

    void look() throws IOException {
      processPage(page);
      for (PDAnnotation field : page.getAnnotations()) {
        tags.push("field");
        ids.push(-1);
        showAnnotation(field);
        tags.pop();
        ids.pop();
      }
      if (!tags.isEmpty()) {
        throw new AssertionError("marked content never ends: " + tags);
      }
    }

    SeenPage seen() {
      return new SeenPage(
          page.getMediaBox().getWidth(), page.getMediaBox().getHeight(), texts, paths);
    }

    private double down(double y) {
      return page.getMediaBox().getHeight() - y;
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
      tags.push(tag.getName());
      ids.push(properties == null ? -1 : properties.getInt(COSName.MCID));
    }

    @Override
    public void endMarkedContentSequence() {
      tags.pop();
      ids.pop();
    }

    @Override
    protected void showText(byte[] string) throws IOException {
      run = null;
      super.showText(string);
      texts.add(run);
      if (!ids.isEmpty() && ids.peek() >= 0) {
        marked.merge(ids.peek(), run.text(), (a, b) -> a + " " + b);
      }
    }

    @Override
    protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement)
        throws IOException {
      double size = matrix.getScalingFactorY();
      double wide = displacement.getX() * size;
      String glyph = font.toUnicode(code);
      run =
          run == null
              ? new Text(
                  glyph,
                  matrix.getTranslateX(),
                  down(matrix.getTranslateY()),
                  wide,
                  size,
                  font.getName().contains("Bold"),
                  rgb(getGraphicsState().getNonStrokingColor()),
                  tags.isEmpty() ? "" : tags.peek())
              : new Text(
                  run.text() + glyph,
                  run.x(),
                  run.y(),
                  run.width() + wide,
                  run.size(),
                  run.bold(),
                  run.rgb(),
                  run.tag());
    }

    private static int rgb(PDColor colour) throws IOException {
      return colour.toRGB();
    }

    private void painted(boolean stroked, boolean filled) throws IOException {
      double line =
          getGraphicsState().getLineWidth()
              * getGraphicsState().getCurrentTransformationMatrix().getScalingFactorX();
      var straight = new Path2D.Double();
      straight.append(path.getPathIterator(null, 0.001), false);
      paths.add(
          new Path(
              straight,
              stroked ? rgb(getGraphicsState().getStrokingColor()) : -1,
              stroked ? line : 0,
              filled ? rgb(getGraphicsState().getNonStrokingColor()) : -1));
      path.reset();
    }

    @Override
    public void moveTo(float x, float y) {
      path.moveTo(x, down(y));
    }

    @Override
    public void lineTo(float x, float y) {
      path.lineTo(x, down(y));
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
      path.curveTo(x1, down(y1), x2, down(y2), x3, down(y3));
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
      path.moveTo(p0.getX(), down(p0.getY()));
      path.lineTo(p1.getX(), down(p1.getY()));
      path.lineTo(p2.getX(), down(p2.getY()));
      path.lineTo(p3.getX(), down(p3.getY()));
      path.closePath();
    }

    @Override
    public void strokePath() throws IOException {
      painted(true, false);
    }

    @Override
    public void fillPath(int windingRule) throws IOException {
      painted(false, true);
    }

    @Override
    public void fillAndStrokePath(int windingRule) throws IOException {
      painted(true, true);
    }

    @Override
    public void closePath() {
      path.closePath();
    }

    @Override
    public Point2D getCurrentPoint() {
      return path.getCurrentPoint();
    }

    @Override
    public void clip(int windingRule) {
      // The engine clips a stamp to its box by itself.
    }

    @Override
    public void endPath() {
      path.reset();
    }

    @Override
    public void drawImage(PDImage image) {
      throw new AssertionError("no sheet has images");
    }

    @Override
    public void shadingFill(COSName shading) {
      throw new AssertionError("no sheet shades");
    }
  }
}
