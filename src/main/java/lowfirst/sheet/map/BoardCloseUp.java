package lowfirst.sheet.map;

import java.util.Collection;
import java.util.Optional;
import lowfirst.board.Board;
import lowfirst.board.BoardPart;
import lowfirst.board.Designator;
import lowfirst.board.Side;
import lowfirst.sheet.drawing.Shape.Point;
import lowfirst.sheet.drawing.Window;

/** Which part of a board map to look at more closely: the part around some places. */
public final class BoardCloseUp {
  /** Around the outermost places, so that their neighbours are seen. */
  private static final double MARGIN = 8;

  /** No closer: a single place without its neighbours can't be found on the board. */
  private static final double SMALLEST = 36;

  /** Below the board's edge; farther down the map's scale would be cut through. */
  private static final double BELOW = 2;

  private BoardCloseUp() {}

  /** The window around places on {@link BoardMap}; empty when none of them is placed. */
  public static Optional<Window> around(Board board, Collection<Designator> places, Side seenFrom) {
    BoardView view = BoardView.of(board, seenFrom);
    double left = Double.MAX_VALUE;
    double top = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    double bottom = -Double.MAX_VALUE;
    for (BoardPart part : board.parts()) {
      if (part.placement().isPresent() && places.contains(part.designator())) {
        for (Point corner : view.body(board, part.placement().get())) {
          left = Math.min(left, corner.x());
          right = Math.max(right, corner.x());
          top = Math.min(top, corner.y());
          bottom = Math.max(bottom, corner.y());
        }
      }
    }
    if (left > right) {
      return Optional.empty();
    }
    double width = Math.max(SMALLEST, right - left + 2 * MARGIN);
    double height = Math.max(SMALLEST, bottom - top + 2 * MARGIN);
    double lowest = view.height() + BELOW - height;
    return Optional.of(
        new Window(
            (left + right - width) / 2 + BoardMap.SIDE,
            Math.min((top + bottom - height) / 2, lowest) + BoardMap.HEAD,
            width,
            height));
  }
}
