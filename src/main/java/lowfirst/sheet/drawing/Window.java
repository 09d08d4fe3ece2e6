package lowfirst.sheet.drawing;

/**
 * A part of a drawing to look at more closely, in the drawing's millimetres.
 *
 * @param x its left edge
 * @param y its upper edge
 */
public record Window(double x, double y, double widthMillimetres, double heightMillimetres) {

  /** The whole of a drawing. */
  public static Window whole(Drawing drawing) {
    return new Window(0, 0, drawing.widthMillimetres(), drawing.heightMillimetres());
  }
}
