package lowfirst.sheet.drawing;

import java.util.List;
import java.util.stream.Stream;

/**
 * A picture made of shapes, in millimetres, x to the right, y downwards from the top left corner.
 *
 * @param widthMillimetres real width when printed at 1:1
 * @param heightMillimetres real height when printed at 1:1
 * @param shapes painted in this order
 * @param words what it shows, in words
 */
public record Drawing(
    double widthMillimetres, double heightMillimetres, List<Shape> shapes, String words) {

  public Drawing {
    shapes = List.copyOf(shapes);
  }

  /** The same picture at another size; below 1 it is smaller. */
  public Drawing scaled(double scale) {
    var moved = new Moved(scale, 0, 0);
    return new Drawing(
        widthMillimetres * scale,
        heightMillimetres * scale,
        shapes.stream().map(shape -> shape.fold(moved)).toList(),
        words);
  }

  /** The same picture without stamps: what they show stands in it itself. */
  public Drawing flat() {
    return new Drawing(
        widthMillimetres,
        heightMillimetres,
        shapes.stream().flatMap(Drawing::flattened).toList(),
        words);
  }

  private static Stream<Shape> flattened(Shape shape) {
    if (!(shape instanceof Shape.Stamp stamp)) {
      return Stream.of(shape);
    }
    var moved = new Moved(stamp.scale(), stamp.x(), stamp.y());
    return stamp.drawing().flat().shapes().stream().map(part -> part.fold(moved));
  }

  /** The same picture with its upper left corner at x, y: to be put onto a larger one. */
  public Drawing movedTo(double x, double y) {
    var moved = new Moved(1, x, y);
    return new Drawing(
        x + widthMillimetres,
        y + heightMillimetres,
        shapes.stream().map(shape -> shape.fold(moved)).toList(),
        words);
  }

  /** This picture with another to its right, their upper edges level. */
  public Drawing beside(Drawing other, double gapMillimetres) {
    Drawing moved = other.movedTo(widthMillimetres + gapMillimetres, 0);
    return new Drawing(
        moved.widthMillimetres,
        Math.max(heightMillimetres, moved.heightMillimetres),
        Stream.concat(shapes.stream(), moved.shapes.stream()).toList(),
        words + "; beside it: " + other.words);
  }
}
