package lowfirst.sheet.drawing;

import java.util.List;
import java.util.Optional;

/**
 * One shape of a drawing; all lengths in millimetres. Closed; writers handle each by {@link #fold}.
 */
public sealed interface Shape {

  /** Calls the one method of {@code pen} that fits this shape. */
  <R> R fold(Pen<R> pen);

  /** What a writer must be able to draw. */
  interface Pen<R> {
    R line(Line line);

    R box(Box box);

    R circle(Circle circle);

    R path(Path path);

    R label(Label label);

    R stamp(Stamp stamp);
  }

  /**
   * How an outline and its inside are painted.
   *
   * @param strokeMillimetres line width; 0 with no stroke
   */
  record Paint(Optional<Ink> stroke, double strokeMillimetres, Optional<Ink> fill) {
    /** An outline only. */
    public static Paint stroke(Ink ink, double millimetres) {
      return new Paint(Optional.of(ink), millimetres, Optional.empty());
    }

    /** An inside only. */
    public static Paint fill(Ink ink) {
      return new Paint(Optional.empty(), 0, Optional.of(ink));
    }

    /** An inside with an outline. */
    public static Paint both(Ink fill, Ink stroke, double millimetres) {
      return new Paint(Optional.of(stroke), millimetres, Optional.of(fill));
    }
  }

  /** A straight line. */
  record Line(double x1, double y1, double x2, double y2, Paint paint) implements Shape {
    @Override
    public <R> R fold(Pen<R> pen) {
      return pen.line(this);
    }
  }

  /** An upright rectangle, its corners rounded by {@code radius}. */
  record Box(double x, double y, double width, double height, double radius, Paint paint)
      implements Shape {
    @Override
    public <R> R fold(Pen<R> pen) {
      return pen.box(this);
    }
  }

  /** A circle. */
  record Circle(double x, double y, double radius, Paint paint) implements Shape {
    @Override
    public <R> R fold(Pen<R> pen) {
      return pen.circle(this);
    }
  }

  /** A line through points, closed or open. */
  record Path(List<Point> points, Closing closing, Paint paint) implements Shape {
    public Path {
      points = List.copyOf(points);
    }

    /** Whether the last point joins the first. */
    public enum Closing {
      OPEN,
      CLOSED
    }

    @Override
    public <R> R fold(Pen<R> pen) {
      return pen.path(this);
    }
  }

  /** A point. */
  record Point(double x, double y) {}

  /**
   * A line of text.
   *
   * @param x where {@code anchor} stands
   * @param y the baseline
   * @param size height of the type, millimetres
   */
  record Label(double x, double y, double size, Anchor anchor, Ink ink, String text)
      implements Shape {
    /** Width of a capital in type of height 1, roughly, for the sans faces that writers use. */
    private static final double CAPITAL = 0.72;

    /** Which point of the text stands at x. */
    public enum Anchor {
      START,
      MIDDLE,
      END
    }

    /** About how wide a text is in type of this height, and hardly ever wider; both in mm. */
    public static double width(String text, double size) {
      return CAPITAL * size * text.length();
    }

    @Override
    public <R> R fold(Pen<R> pen) {
      return pen.label(this);
    }
  }

  /**
   * Another drawing set onto this one. Writers may keep it once and show it wherever the same value
   * stands: so a board under many batches costs little.
   *
   * @param x of its upper left corner
   * @param y of its upper left corner
   * @param scale 1 for its own size
   */
  record Stamp(Drawing drawing, double x, double y, double scale) implements Shape {
    @Override
    public <R> R fold(Pen<R> pen) {
      return pen.stamp(this);
    }
  }
}
