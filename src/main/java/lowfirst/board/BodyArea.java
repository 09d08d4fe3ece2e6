package lowfirst.board;

import java.util.Optional;
import lowfirst.part.BodyOutline;

/**
 * What a body covers of the board, seen from above: an upright rectangle in the placement list's
 * own coordinates. A body turned by other than a right angle is given the rectangle around it, one
 * whose rotation is not known the square that it keeps within lying and standing.
 *
 * <p>The placement's point is taken as the body's middle, and an unturned body's length as lying
 * along x. Placement lists don't say from where their rotation starts, so a body may lie across.
 *
 * @param left smallest x, mm
 * @param bottom smallest y, mm
 * @param right largest x, mm
 * @param top largest y, mm
 */
public record BodyArea(double left, double bottom, double right, double top) {

  /** The area of a placed body, if the outline tells its length and width. */
  public static Optional<BodyArea> of(Placement placement, BodyOutline outline) {
    return outline.body().map(body -> around(placement, body));
  }

  /** The area of a placed body of a known size. */
  public static BodyArea around(Placement placement, BodyOutline.BodySize body) {
    double longest = Math.max(body.lengthMillimetres(), body.widthMillimetres());
    double alongX = placement.isTurnKnown() ? body.lengthMillimetres() : longest;
    double alongY = placement.isTurnKnown() ? body.widthMillimetres() : longest;
    double turned = placement.rotationDegrees() % 180;
    if (turned == 0) {
      return around(placement, alongX / 2, alongY / 2);
    }
    if (Math.abs(turned) == 90) {
      return around(placement, alongY / 2, alongX / 2);
    }
    double angle = Math.toRadians(turned);
    double sine = Math.abs(Math.sin(angle));
    double cosine = Math.abs(Math.cos(angle));
    return around(
        placement, (alongX * cosine + alongY * sine) / 2, (alongX * sine + alongY * cosine) / 2);
  }

  private static BodyArea around(Placement placement, double halfWidth, double halfHeight) {
    double x = placement.xMillimetres();
    double y = placement.yMillimetres();
    return new BodyArea(x - halfWidth, y - halfHeight, x + halfWidth, y + halfHeight);
  }

  /** Whether both areas share a patch deeper than {@code depthMillimetres} along x and y. */
  public boolean overlaps(BodyArea other, double depthMillimetres) {
    return Math.min(right, other.right) - Math.max(left, other.left) > depthMillimetres
        && Math.min(top, other.top) - Math.max(bottom, other.bottom) > depthMillimetres;
  }

  /** Distance from left to right, mm. */
  public double width() {
    return right - left;
  }

  /** Distance from bottom to top, mm. */
  public double height() {
    return top - bottom;
  }
}
