package lowfirst.sheet.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sheet.drawing.Shape.Box;
import lowfirst.sheet.drawing.Shape.Circle;
import lowfirst.sheet.drawing.Shape.Label;
import lowfirst.sheet.drawing.Shape.Line;
import lowfirst.sheet.drawing.Shape.Paint;
import lowfirst.sheet.drawing.Shape.Path;
import lowfirst.sheet.drawing.Shape.Point;

/** Gathers the shapes of one part picture; lengths in millimetres. */
public final class Strokes {
  static final Ink LEAD = new Ink(0x8A9096);
  static final Ink OUTLINE = new Ink(0x2B2F33);
  static final double THIN = 0.15;
  static final double LEAD_WIDTH = 0.6;

  private final List<Shape> shapes = new ArrayList<>();

  Strokes lead(double x1, double y1, double x2, double y2) {
    shapes.add(new Line(x1, y1, x2, y2, Paint.stroke(LEAD, LEAD_WIDTH)));
    return this;
  }

  Strokes thin(double x1, double y1, double x2, double y2) {
    shapes.add(new Line(x1, y1, x2, y2, Paint.stroke(OUTLINE, THIN)));
    return this;
  }

  Strokes box(double x, double y, double width, double height, double radius, Ink fill) {
    shapes.add(new Box(x, y, width, height, radius, Paint.both(fill, OUTLINE, THIN)));
    return this;
  }

  Strokes circle(double x, double y, double radius, Ink fill) {
    shapes.add(new Circle(x, y, radius, Paint.both(fill, OUTLINE, THIN)));
    return this;
  }

  Strokes path(Ink fill, double... coordinates) {
    var points = new ArrayList<Point>();
    for (int i = 0; i < coordinates.length; i += 2) {
      points.add(new Point(coordinates[i], coordinates[i + 1]));
    }
    shapes.add(new Path(points, Path.Closing.CLOSED, Paint.both(fill, OUTLINE, THIN)));
    return this;
  }

  Strokes open(double... coordinates) {
    var points = new ArrayList<Point>();
    for (int i = 0; i < coordinates.length; i += 2) {
      points.add(new Point(coordinates[i], coordinates[i + 1]));
    }
    shapes.add(
        new Path(
            points, Path.Closing.OPEN, new Paint(Optional.of(LEAD), LEAD_WIDTH, Optional.empty())));
    return this;
  }

  Strokes label(double x, double y, double size, Ink ink, String text) {
    if (!text.isBlank()) {
      shapes.add(new Label(x, y, size, Label.Anchor.MIDDLE, ink, text));
    }
    return this;
  }

  /** A label as large as fits into a width, at most {@code size} high, its middle at x and y. */
  Strokes fitted(double x, double y, double width, double size, Ink ink, String text) {
    double fitting = text.isEmpty() ? size : Math.min(size, width / Label.width(text, 1));
    return label(x, y + fitting * 0.36, fitting, ink, text);
  }

  Drawing drawing(double width, double height, String words) {
    return new Drawing(width, height, shapes, words);
  }
}
