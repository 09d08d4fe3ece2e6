package lowfirst.sheet.pdf;

import java.util.Optional;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;
import lowfirst.sheet.drawing.Shape;

/** Paints the shapes of a drawing onto a page. */
final class DrawingPainter implements Shape.Pen<Void> {
  private final PageContent content;
  private final EmbeddedFont font;
  private final Stamps stamps;
  private final double left;
  private final double top;
  private final double scale;

  private DrawingPainter(
      PageContent content, Stamps stamps, double left, double top, double scale) {
    this.content = content;
    this.stamps = stamps;
    this.font = stamps.font();
    this.left = left;
    this.top = top;
    this.scale = scale * Paper.POINTS;
  }

  /**
   * Paints a drawing.
   *
   * @param left of its left edge, points
   * @param top of its upper edge, points
   * @param scale 1 for real size
   */
  static void paint(
      Drawing drawing, PageContent content, Stamps stamps, double left, double top, double scale) {
    var painter = new DrawingPainter(content, stamps, left, top, scale);
    drawing.shapes().forEach(shape -> shape.fold(painter));
  }

  private double x(double millimetres) {
    return left + millimetres * scale;
  }

  private double y(double millimetres) {
    return top + millimetres * scale;
  }

  private void paint(Shape.Paint paint, Runnable path) {
    Optional<Ink> stroke = paint.stroke().filter(ink -> paint.strokeMillimetres() > 0);
    paint.fill().ifPresent(ink -> content.fill(ink.rgb()));
    stroke.ifPresent(ink -> content.stroke(ink.rgb(), paint.strokeMillimetres() * scale));
    if (stroke.isPresent() || paint.fill().isPresent()) {
      path.run();
      content.paint(stroke.isEmpty() ? 'f' : paint.fill().isEmpty() ? 'S' : 'B');
    }
  }

  @Override
  public Void line(Shape.Line line) {
    paint(
        new Shape.Paint(line.paint().stroke(), line.paint().strokeMillimetres(), Optional.empty()),
        () -> {
          content.moveTo(x(line.x1()), y(line.y1()));
          content.lineTo(x(line.x2()), y(line.y2()));
        });
    return null;
  }

  @Override
  public Void box(Shape.Box box) {
    paint(
        box.paint(),
        () -> {
          double width = box.width() * scale;
          double height = box.height() * scale;
          if (box.radius() > 0) {
            content.roundBox(x(box.x()), y(box.y()), width, height, box.radius() * scale);
          } else {
            content.box(x(box.x()), y(box.y()), width, height);
          }
        });
    return null;
  }

  @Override
  public Void circle(Shape.Circle circle) {
    paint(
        circle.paint(),
        () -> content.circle(x(circle.x()), y(circle.y()), circle.radius() * scale));
    return null;
  }

  @Override
  public Void path(Shape.Path path) {
    if (path.points().size() < 2) {
      return null;
    }
    paint(
        path.paint(),
        () -> {
          boolean first = true;
          for (Shape.Point point : path.points()) {
            if (first) {
              content.moveTo(x(point.x()), y(point.y()));
            } else {
              content.lineTo(x(point.x()), y(point.y()));
            }
            first = false;
          }
          if (path.closing() == Shape.Path.Closing.CLOSED) {
            content.close();
          }
        });
    return null;
  }

  @Override
  public Void label(Shape.Label label) {
    String text = font.face().printable(label.text()).replace('\n', ' ');
    // What a sign is spelled out by takes no more room than was left for the sign.
    double spelled = Math.max(1, text.length() / (double) Math.max(1, label.text().length()));
    double size = label.size() * scale / spelled;
    double width = font.face().width(text) * size;
    double start =
        switch (label.anchor()) {
          case START -> 0;
          case MIDDLE -> width / 2;
          case END -> width;
        };
    content.text(font, size, x(label.x()) - start, y(label.y()), label.ink().rgb(), text);
    return null;
  }

  @Override
  public Void stamp(Shape.Stamp stamp) {
    content.stamp(
        stamps.name(stamp.drawing()),
        x(stamp.x()),
        y(stamp.y()),
        stamp.scale() * scale / Paper.POINTS,
        stamp.drawing().heightMillimetres() * Paper.POINTS);
    return null;
  }
}
