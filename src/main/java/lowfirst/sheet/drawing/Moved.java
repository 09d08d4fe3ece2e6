package lowfirst.sheet.drawing;

/** Shapes scaled about the origin, then shifted. */
record Moved(double scale, double dx, double dy) implements Shape.Pen<Shape> {

  private double x(double x) {
    return x * scale + dx;
  }

  private double y(double y) {
    return y * scale + dy;
  }

  private Shape.Paint paint(Shape.Paint paint) {
    return new Shape.Paint(paint.stroke(), paint.strokeMillimetres() * scale, paint.fill());
  }

  @Override
  public Shape line(Shape.Line line) {
    return new Shape.Line(
        x(line.x1()), y(line.y1()), x(line.x2()), y(line.y2()), paint(line.paint()));
  }

  @Override
  public Shape box(Shape.Box box) {
    return new Shape.Box(
        x(box.x()),
        y(box.y()),
        box.width() * scale,
        box.height() * scale,
        box.radius() * scale,
        paint(box.paint()));
  }

  @Override
  public Shape circle(Shape.Circle circle) {
    return new Shape.Circle(
        x(circle.x()), y(circle.y()), circle.radius() * scale, paint(circle.paint()));
  }

  @Override
  public Shape path(Shape.Path path) {
    return new Shape.Path(
        path.points().stream().map(p -> new Shape.Point(x(p.x()), y(p.y()))).toList(),
        path.closing(),
        paint(path.paint()));
  }

  @Override
  public Shape label(Shape.Label label) {
    return new Shape.Label(
        x(label.x()),
        y(label.y()),
        label.size() * scale,
        label.anchor(),
        label.ink(),
        label.text());
  }

  @Override
  public Shape stamp(Shape.Stamp stamp) {
    return new Shape.Stamp(stamp.drawing(), x(stamp.x()), y(stamp.y()), stamp.scale() * scale);
  }
}
