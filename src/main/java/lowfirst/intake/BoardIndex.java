package lowfirst.intake;

import java.util.Map;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Placement;

/**
 * A board with its items and placements by designator, made once for all checks.
 *
 * @param items every designator of the BOM with the first item that names it
 * @param placements every placed designator with its first placement
 */
record BoardIndex(Board board, Map<Designator, Item> items, Map<Designator, Placement> placements) {

  static BoardIndex of(Board board) {
    return new BoardIndex(board, board.itemsByDesignator(), board.placementsByDesignator());
  }
}
