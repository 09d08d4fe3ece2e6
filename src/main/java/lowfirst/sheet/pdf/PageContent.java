package lowfirst.sheet.pdf;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;

/**
 * The content stream of one page, ISO 32000-1:2008 chapters 8 and 9, written directly: encoding
 * text through the library costs more than everything else together.
 *
 * <p>Lengths are points; x to the right, y downwards from the top of the page.
 */
final class PageContent {
  private static final char[] HEX = "0123456789ABCDEF".toCharArray();

  /** Distance of a circle's control points, of its radius: 4/3 (sqrt 2 - 1). */
  private static final double ROUND = 0.5522847498;

  private static final int UNKNOWN = -1;

  private final StringBuilder out = new StringBuilder(16_384);
  private final double height;
  private EmbeddedFont font;
  private double size = -1;
  private int fill;
  private int stroke;
  private double lineWidth = -1;

  PageContent(double height) {
    this.height = height;
  }

  /** Content to be stamped onto pages, whatever inks and widths are set there. */
  static PageContent ofStamp(double height) {
    var content = new PageContent(height);
    content.fill = UNKNOWN;
    content.stroke = UNKNOWN;
    return content;
  }

  /**
   * Shows stamped content.
   *
   * @param name what the page's resources call it
   * @param y of its upper edge
   * @param stampHeight its height at its own size
   */
  void stamp(String name, double x, double y, double scale, double stampHeight) {
    out.append("q ");
    out.append(new BigDecimal(scale).setScale(6, RoundingMode.HALF_UP).toPlainString());
    out.append(" 0 0 ");
    out.append(new BigDecimal(scale).setScale(6, RoundingMode.HALF_UP).toPlainString()).append(' ');
    number(x);
    number(height - y - stampHeight * scale).append("cm /").append(name).append(" Do Q\n");
  }

  /** What was written, for the page's stream. */
  byte[] bytes() {
    return out.toString().getBytes(StandardCharsets.ISO_8859_1);
  }

  /** Starts a piece of content that an element of the document's structure owns. */
  void beginMarked(String tag, int markedContentId) {
    out.append('/').append(tag).append(" <</MCID ").append(markedContentId).append(">> BDC\n");
  }

  /** Starts a piece of content that is no part of the text: rules, foot lines, repeated headers. */
  void beginArtifact() {
    out.append("/Artifact BMC\n");
  }

  /** Ends what was begun last. */
  void endMarked() {
    out.append("EMC\n");
  }

  /** A line of text, its baseline at {@code y}. Every character must be in the font. */
  void text(EmbeddedFont font, double size, double x, double y, int rgb, String text) {
    if (text.isEmpty()) {
      return;
    }
    fill(rgb);
    out.append("BT ");
    if (this.font != font || this.size != size) {
      out.append('/').append(font.name()).append(' ');
      number(size).append("Tf ");
      this.font = font;
      this.size = size;
    }
    number(x);
    number(height - y).append("Td <");
    int at = 0;
    while (at < text.length()) {
      int codePoint = text.codePointAt(at);
      at += Character.charCount(codePoint);
      glyph(font.glyph(codePoint));
    }
    out.append("> Tj ET\n");
  }

  private void glyph(int glyph) {
    out.append(HEX[glyph >> 12 & 15])
        .append(HEX[glyph >> 8 & 15])
        .append(HEX[glyph >> 4 & 15])
        .append(HEX[glyph & 15]);
  }

  /** A straight line. */
  void line(double x1, double y1, double x2, double y2, double width, int rgb) {
    stroke(rgb, width);
    moveTo(x1, y1);
    lineTo(x2, y2);
    out.append("S\n");
  }

  /** An upright filled rectangle. */
  void fillBox(double x, double y, double width, double height, int rgb) {
    fill(rgb);
    box(x, y, width, height);
    out.append("f\n");
  }

  /** Sets how the next path is filled. */
  void fill(int rgb) {
    if (rgb != fill) {
      colour(rgb).append("rg ");
      fill = rgb;
    }
  }

  /** Sets how the next path is stroked. */
  void stroke(int rgb, double width) {
    if (rgb != stroke) {
      colour(rgb).append("RG ");
      stroke = rgb;
    }
    if (width != lineWidth) {
      number(width).append("w ");
      lineWidth = width;
    }
  }

  void moveTo(double x, double y) {
    number(x);
    number(height - y).append("m ");
  }

  void lineTo(double x, double y) {
    number(x);
    number(height - y).append("l ");
  }

  private void curveTo(double x1, double y1, double x2, double y2, double x3, double y3) {
    number(x1);
    number(height - y1);
    number(x2);
    number(height - y2);
    number(x3);
    number(height - y3).append("c ");
  }

  void close() {
    out.append("h ");
  }

  void box(double x, double y, double width, double height) {
    number(x);
    number(this.height - y - height);
    number(width);
    number(height).append("re ");
  }

  void roundBox(double x, double y, double width, double height, double radius) {
    double r = Math.min(radius, Math.min(width, height) / 2);
    double c = r * (1 - ROUND);
    double right = x + width;
    double bottom = y + height;
    moveTo(x + r, y);
    lineTo(right - r, y);
    curveTo(right - c, y, right, y + c, right, y + r);
    lineTo(right, bottom - r);
    curveTo(right, bottom - c, right - c, bottom, right - r, bottom);
    lineTo(x + r, bottom);
    curveTo(x + c, bottom, x, bottom - c, x, bottom - r);
    lineTo(x, y + r);
    curveTo(x, y + c, x + c, y, x + r, y);
    close();
  }

  void circle(double x, double y, double radius) {
    roundBox(x - radius, y - radius, 2 * radius, 2 * radius, radius);
  }

  /** Paints the path: {@code f} fills, {@code S} strokes, {@code B} does both. */
  void paint(char operator) {
    out.append(operator).append('\n');
  }

  private StringBuilder colour(int rgb) {
    number((rgb >> 16 & 255) / 255.0);
    number((rgb >> 8 & 255) / 255.0);
    return number((rgb & 255) / 255.0);
  }

  /** A number with at most three decimals, and a space; no locale, no exponent. */
  private StringBuilder number(double value) {
    long thousandths = Math.round(value * 1000);
    if (thousandths < 0) {
      out.append('-');
      thousandths = -thousandths;
    }
    out.append(thousandths / 1000);
    int rest = (int) (thousandths % 1000);
    if (rest > 0) {
      out.append('.').append((char) ('0' + rest / 100));
      if (rest % 100 > 0) {
        out.append((char) ('0' + rest / 10 % 10));
        if (rest % 10 > 0) {
          out.append((char) ('0' + rest % 10));
        }
      }
    }
    return out.append(' ');
  }
}
