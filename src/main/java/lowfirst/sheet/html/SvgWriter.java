package lowfirst.sheet.html;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sheet.drawing.Window;

/**
 * Drawings as SVG 1.1, in millimetres, to stand alone or inside a page. The drawing's words are its
 * accessible name.
 */
public final class SvgWriter implements Shape.Pen<String> {
  private static final SvgWriter PEN = new SvgWriter();

  private SvgWriter() {}

  /** The drawing at real size, under a short title; its words describe it. */
  public static String write(Drawing drawing, String title) {
    return write(drawing, title, Window.whole(drawing));
  }

  /** The part of the drawing that a window shows, at real size. */
  public static String write(Drawing drawing, String title, Window window) {
    String width = number(window.widthMillimetres());
    String height = number(window.heightMillimetres());
    var svg = new StringBuilder();
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"")
        .append(width)
        .append("mm\" height=\"")
        .append(height)
        .append("mm\" viewBox=\"")
        .append(number(window.x()))
        .append(' ')
        .append(number(window.y()))
        .append(' ')
        .append(width)
        .append(' ')
        .append(height)
        .append("\" font-family=\"'Liberation Sans', Arial, Helvetica, sans-serif\">\n");
    String name = title.isBlank() ? drawing.words() : title;
    svg.append("<title>").append(Escaped.of(name)).append("</title>\n");
    if (!title.isBlank()) {
      svg.append("<desc>").append(Escaped.of(drawing.words())).append("</desc>\n");
    }
    drawing.shapes().forEach(shape -> svg.append(shape.fold(PEN)).append('\n'));
    return svg.append("</svg>\n").toString();
  }

  @Override
  public String line(Shape.Line line) {
    return "<line"
        + attribute("x1", line.x1())
        + attribute("y1", line.y1())
        + attribute("x2", line.x2())
        + attribute("y2", line.y2())
        + painted(line.paint())
        + "/>";
  }

  @Override
  public String box(Shape.Box box) {
    return "<rect"
        + attribute("x", box.x())
        + attribute("y", box.y())
        + attribute("width", box.width())
        + attribute("height", box.height())
        + (box.radius() > 0 ? attribute("rx", box.radius()) : "")
        + painted(box.paint())
        + "/>";
  }

  @Override
  public String circle(Shape.Circle circle) {
    return "<circle"
        + attribute("cx", circle.x())
        + attribute("cy", circle.y())
        + attribute("r", circle.radius())
        + painted(circle.paint())
        + "/>";
  }

  @Override
  public String path(Shape.Path path) {
    var points = new StringBuilder();
    for (Shape.Point point : path.points()) {
      points.append(points.isEmpty() ? "" : " ");
      points.append(number(point.x())).append(',').append(number(point.y()));
    }
    String name = path.closing() == Shape.Path.Closing.CLOSED ? "polygon" : "polyline";
    return "<" + name + " points=\"" + points + "\"" + painted(path.paint()) + "/>";
  }

  @Override
  public String label(Shape.Label label) {
    String anchor =
        switch (label.anchor()) {
          case START -> "";
          case MIDDLE -> " text-anchor=\"middle\"";
          case END -> " text-anchor=\"end\"";
        };
    return "<text"
        + attribute("x", label.x())
        + attribute("y", label.y())
        + attribute("font-size", label.size())
        + anchor
        + " fill=\""
        + label.ink().hex()
        + "\">"
        + Escaped.of(label.text())
        + "</text>";
  }

  @Override
  public String stamp(Shape.Stamp stamp) {
    var group = new StringBuilder("<g transform=\"translate(");
    group.append(number(stamp.x())).append(' ').append(number(stamp.y()));
    group.append(") scale(").append(number(stamp.scale())).append(")\">\n");
    stamp.drawing().shapes().forEach(shape -> group.append(shape.fold(PEN)).append('\n'));
    return group.append("</g>").toString();
  }

  private static String painted(Shape.Paint paint) {
    String fill = paint.fill().map(Ink::hex).orElse("none");
    Optional<Ink> stroke = paint.stroke().filter(ink -> paint.strokeMillimetres() > 0);
    return " fill=\""
        + fill
        + "\""
        + stroke
            .map(
                ink ->
                    " stroke=\""
                        + ink.hex()
                        + "\""
                        + attribute("stroke-width", paint.strokeMillimetres()))
            .orElse("");
  }

  private static String attribute(String name, double value) {
    return " " + name + "=\"" + number(value) + "\"";
  }

  /** At most three decimals, a micrometre; no exponent, no locale. */
  private static String number(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
