package lowfirst.sheet.map;

import java.util.List;
import lowfirst.board.Board;
import lowfirst.board.Placement;
import lowfirst.board.Side;
import lowfirst.sheet.drawing.Ink;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sheet.drawing.Shape.Label.Anchor;
import lowfirst.sheet.drawing.Shape.Paint;
import lowfirst.sheet.drawing.Shape.Point;

/** How one place looks on a board's map: faint, filled, or to be filled now. */
record PlaceMarks(Board board, BoardView view, Side seenFrom, Style style) {
  private static final Ink LIT = new Ink(0x123A6B);
  private static final Ink DONE = new Ink(0xB4B4B4);
  private static final Ink DONE_EDGE = new Ink(0x777777);

  /**
   * How a map is drawn for a purpose.
   *
   * @param number height of the places' names, millimetres
   * @param faint colour of what is neither filled nor to be filled
   * @param line width of its outline, millimetres
   */
  record Style(double number, Ink faint, double line) {}

  private Point moved(Point point) {
    return new Point(point.x() + BoardMap.SIDE, point.y() + BoardMap.HEAD);
  }

  /** Thin and grey where it isn't the board's own edge. */
  Shape.Box edge() {
    boolean known = view.knowsEdge();
    Shape.Box edge = view.edge(Paint.stroke(known ? Ink.BLACK : DONE_EDGE, known ? 0.35 : 0.15));
    Point corner = moved(new Point(edge.x(), edge.y()));
    return new Shape.Box(
        corner.x(), corner.y(), edge.width(), edge.height(), edge.radius(), edge.paint());
  }

  private Shape body(Placement placement, Paint paint) {
    if (!isRound(placement)) {
      List<Point> corners = view.body(board, placement).stream().map(this::moved).toList();
      return new Shape.Path(corners, Shape.Path.Closing.CLOSED, paint);
    }
    Point middle = moved(view.middle(placement));
    return new Shape.Circle(
        middle.x(), middle.y(), BoardView.roundWidth(board, placement) / 2, paint);
  }

  /** What is neither filled nor to be filled. */
  Shape faint(Placement placement) {
    return body(placement, Paint.stroke(style.faint(), style.line()));
  }

  /** What is filled already. */
  Shape done(Placement placement) {
    boolean near = placement.side() == seenFrom;
    return body(
        placement, near ? Paint.both(DONE, DONE_EDGE, 0.15) : Paint.stroke(DONE_EDGE, 0.15));
  }

  /** Dark where the body is on this side; only its outline and its leads where it is behind. */
  void lit(Placement placement, List<Shape> shapes) {
    boolean near = placement.side() == seenFrom;
    shapes.add(body(placement, near ? Paint.fill(LIT) : Paint.stroke(LIT, 0.4)));
    if (!near) {
      view.leads(board, placement).stream()
          .map(this::moved)
          .forEach(lead -> shapes.add(new Shape.Circle(lead.x(), lead.y(), 0.6, Paint.fill(LIT))));
    }
  }

  /** The name of a lit place, on top of it. */
  void name(Placement placement, String name, List<Shape> shapes) {
    String text = name + (isPolarised(placement) ? " ±" : "");
    Point middle = moved(view.middle(placement));
    double width = text.length() * style.number() * 0.56 + 0.8;
    shapes.add(
        new Shape.Box(
            middle.x() - width / 2,
            middle.y() - style.number() * 0.58,
            width,
            style.number() * 1.16,
            0.5,
            Paint.fill(LIT)));
    shapes.add(
        new Shape.Label(
            middle.x(),
            middle.y() + style.number() * 0.36,
            style.number(),
            Anchor.MIDDLE,
            Ink.WHITE,
            text));
  }

  private boolean isPolarised(Placement placement) {
    return board
        .itemOf(placement.designator())
        .filter(item -> item.partType().kind().isPolarised())
        .isPresent();
  }

  /** Whether its size is not known, or how it is turned. */
  boolean isRound(Placement placement) {
    return !BoardView.knowsBody(board, placement);
  }
}
