package lowfirst.sheet.drawing;

import java.util.List;

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
}
