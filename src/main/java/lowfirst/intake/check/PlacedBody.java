package lowfirst.intake.check;

import java.util.List;
import lowfirst.board.BodyArea;
import lowfirst.board.Placed;
import lowfirst.board.Placement;
import lowfirst.part.BodyOutline;
import lowfirst.part.BodyOutline.BodySize;
import lowfirst.part.PartKind;

/**
 * A body where it sits, as the turned rectangle that it is.
 *
 * @param size its extent along its own x and y
 */
record PlacedBody(Placement placement, PartKind kind, BodyOutline outline, BodySize size) {

  /** Whether the outline of what is placed tells a size. */
  static boolean isOne(Placed placed) {
    return placed.outline().isPresent() && placed.outline().get().body().isPresent();
  }

  /** The body of what is placed, whose outline must tell a size. */
  static PlacedBody of(Placed placed) {
    BodyOutline outline = placed.outline().orElseThrow();
    return new PlacedBody(placed.placement(), kind(placed), outline, outline.body().orElseThrow());
  }

  /** What the BOM says it is. */
  static PartKind kind(Placed placed) {
    return placed.item().isEmpty() ? PartKind.UNKNOWN : placed.item().get().partType().kind();
  }

  /** The upright rectangle around it. */
  BodyArea box() {
    return BodyArea.around(placement, size);
  }

  /** As it may lie: itself or, where its rotation is not known, lying and standing. */
  List<PlacedBody> turns() {
    return isTurnKnown()
        ? List.of(this)
        : List.of(
            this,
            new PlacedBody(
                placement,
                kind,
                outline,
                new BodySize(size.widthMillimetres(), size.lengthMillimetres())));
  }

  /** Whether it is known how the body lies, as it is of a square one. */
  boolean isTurnKnown() {
    return placement.isTurnKnown() || size.lengthMillimetres() == size.widthMillimetres();
  }

  /**
   * Whether both bodies share a patch deeper than {@code depth}. Two convex figures are apart if a
   * line parallel to one of their edges parts them (separating axis theorem), so for rectangles the
   * four edge directions are enough.
   */
  boolean overlaps(PlacedBody other, double depth) {
    return box().overlaps(other.box(), depth)
        && !isParted(this, other, depth)
        && !isParted(other, this, depth);
  }

  private static boolean isParted(PlacedBody one, PlacedBody other, double depth) {
    double angle = Math.toRadians(one.placement.rotationDegrees());
    double between = Math.toRadians(other.placement.rotationDegrees()) - angle;
    double dx = other.placement.xMillimetres() - one.placement.xMillimetres();
    double dy = other.placement.yMillimetres() - one.placement.yMillimetres();
    double alongX = Math.abs(dx * Math.cos(angle) + dy * Math.sin(angle));
    double alongY = Math.abs(dy * Math.cos(angle) - dx * Math.sin(angle));
    double cosine = Math.abs(Math.cos(between));
    double sine = Math.abs(Math.sin(between));
    double length = other.size.lengthMillimetres();
    double width = other.size.widthMillimetres();
    double reachX = (one.size.lengthMillimetres() + length * cosine + width * sine) / 2;
    double reachY = (one.size.widthMillimetres() + length * sine + width * cosine) / 2;
    return reachX - alongX <= depth || reachY - alongY <= depth;
  }
}
