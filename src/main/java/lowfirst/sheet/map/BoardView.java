package lowfirst.sheet.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.board.Board;
import lowfirst.board.Placement;
import lowfirst.board.Side;
import lowfirst.part.BodyOutline;
import lowfirst.part.BodyOutline.BodySize;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sheet.drawing.Shape.Paint;
import lowfirst.sheet.drawing.Shape.Point;

/**
 * A board seen from one side: turns positions of the placement list (y upwards, seen from the top)
 * into positions on a drawing (y downwards from the upper left corner). From the bottom, left and
 * right are exchanged, as when the board is turned over about its upright middle line.
 */
final class BoardView {
  /** Free space around the parts when the board's own outline is not known. */
  private static final double MARGIN = 5;

  /** Shown for a part whose body size is not known. */
  private static final BodySize UNKNOWN = new BodySize(3, 3);

  /** Of a part of which only the holes are known, as a wire link: a line from hole to hole. */
  private static final double LINE = 0.8;

  /** A part may overhang the edge so far; what lies farther out is misplaced, and not shown. */
  private static final double OVERHANG = 25;

  private final double left;
  private final double bottom;
  private final double width;
  private final double height;
  private final Optional<Board.Size> outline;
  private final Side seenFrom;

  private BoardView(
      double left,
      double bottom,
      double width,
      double height,
      Optional<Board.Size> outline,
      Side seenFrom) {
    this.left = left;
    this.bottom = bottom;
    this.width = width;
    this.height = height;
    this.outline = outline;
    this.seenFrom = seenFrom;
  }

  /** The board's outline and what overhangs it or, without one, a margin around its parts. */
  static BoardView of(Board board, Side seenFrom) {
    Optional<Board.Size> outline = board.outline();
    double left = outline.map(Board.Size::left).orElse(Double.MAX_VALUE);
    double bottom = outline.map(Board.Size::bottom).orElse(Double.MAX_VALUE);
    double right =
        outline.map(size -> size.left() + size.widthMillimetres()).orElse(-Double.MAX_VALUE);
    double top =
        outline.map(size -> size.bottom() + size.heightMillimetres()).orElse(-Double.MAX_VALUE);
    for (Placement placement : board.placements()) {
      if (isShown(outline, placement)) {
        for (Point corner : corners(placement, bodyOf(board, placement))) {
          left = Math.min(left, corner.x());
          right = Math.max(right, corner.x());
          bottom = Math.min(bottom, corner.y());
          top = Math.max(top, corner.y());
        }
      }
    }
    double margin = outline.isPresent() ? 0 : MARGIN;
    return left > right
        ? new BoardView(0, 0, 2 * MARGIN, 2 * MARGIN, outline, seenFrom)
        : new BoardView(
            left - margin,
            bottom - margin,
            right - left + 2 * margin,
            top - bottom + 2 * margin,
            outline,
            seenFrom);
  }

  /** Whether a part lies on the board or near its edge. */
  boolean isShown(Placement placement) {
    return isShown(outline, placement);
  }

  private static boolean isShown(Optional<Board.Size> outline, Placement placement) {
    return outline
        .map(
            size ->
                new Board.Size(
                    size.left() - OVERHANG,
                    size.bottom() - OVERHANG,
                    size.widthMillimetres() + 2 * OVERHANG,
                    size.heightMillimetres() + 2 * OVERHANG))
        .filter(around -> !around.holds(placement))
        .isEmpty();
  }

  /** Whether it is known where the board ends. */
  boolean knowsEdge() {
    return outline.isPresent();
  }

  /** The board's edge on the drawing or, where that isn't known, the frame around its parts. */
  Shape.Box edge(Paint paint) {
    double wide = outline.map(Board.Size::widthMillimetres).orElse(width);
    double high = outline.map(Board.Size::heightMillimetres).orElse(height);
    double x = outline.map(Board.Size::left).orElse(left);
    double y = outline.map(Board.Size::bottom).orElse(bottom);
    Point upperLeft = at(seenFrom == Side.TOP ? x : x + wide, y + high);
    return new Shape.Box(upperLeft.x(), upperLeft.y(), wide, high, 0.5, paint);
  }

  double width() {
    return width;
  }

  double height() {
    return height;
  }

  /** Where a position of the placement list stands on the drawing. */
  Point at(double x, double y) {
    double fromLeft = x - left;
    return new Point(seenFrom == Side.TOP ? fromLeft : width - fromLeft, height - (y - bottom));
  }

  /** Where a part's middle stands on the drawing. */
  Point middle(Placement placement) {
    return at(placement.xMillimetres(), placement.yMillimetres());
  }

  /** The corners of a part's body on the drawing, in turn. */
  List<Point> body(Board board, Placement placement) {
    return corners(placement, bodyOf(board, placement)).stream()
        .map(corner -> at(corner.x(), corner.y()))
        .toList();
  }

  /** The two outermost leads on the drawing; none when it is not known where they are. */
  List<Point> leads(Board board, Placement placement) {
    OptionalDouble pitch =
        board
            .outlineOf(placement.designator())
            .map(BodyOutline::pitch)
            .orElse(OptionalDouble.empty());
    if (pitch.isEmpty() || !placement.isTurnKnown()) {
      return List.of();
    }
    double half = pitch.getAsDouble() / 2;
    return List.of(turned(placement, -half, 0), turned(placement, half, 0)).stream()
        .map(lead -> at(lead.x(), lead.y()))
        .toList();
  }

  /** Whether the board map knows how large the body is and how it lies. */
  static boolean knowsBody(Board board, Placement placement) {
    return knownBody(board, placement)
        .filter(body -> placement.isTurnKnown() || body.isSquare())
        .isPresent();
  }

  /** The width of a part that is drawn round: what it covers however it is turned. */
  static double roundWidth(Board board, Placement placement) {
    BodySize body = bodyOf(board, placement);
    return Math.min(body.lengthMillimetres(), body.widthMillimetres());
  }

  private static BodySize bodyOf(Board board, Placement placement) {
    return knownBody(board, placement).orElse(UNKNOWN);
  }

  private static Optional<BodySize> knownBody(Board board, Placement placement) {
    Optional<BodyOutline> outline = board.outlineOf(placement.designator());
    return outline
        .flatMap(BodyOutline::body)
        .or(() -> outline.filter(o -> o.pitch().isPresent()).map(o -> line(o.pitchMillimetres())));
  }

  private static BodySize line(double pitchMillimetres) {
    return new BodySize(pitchMillimetres, LINE);
  }

  private static List<Point> corners(Placement placement, BodySize body) {
    double x = body.lengthMillimetres() / 2;
    double y = body.widthMillimetres() / 2;
    var corners = new ArrayList<Point>();
    corners.add(turned(placement, -x, -y));
    corners.add(turned(placement, x, -y));
    corners.add(turned(placement, x, y));
    corners.add(turned(placement, -x, y));
    return corners;
  }

  /** A point of the unturned body, turned anticlockwise and moved to its place. */
  private static Point turned(Placement placement, double x, double y) {
    double angle = Math.toRadians(placement.rotationDegrees());
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return new Point(
        placement.xMillimetres() + x * cos - y * sin, placement.yMillimetres() + x * sin + y * cos);
  }
}
