package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Placement;

/**
 * A board with its items and placements by designator, made once for all checks.
 *
 * @param items every designator of the BOM with the first item that names it
 * @param placements every placed designator with its first placement
 * @param joined every placement, in the list's order, with its item: looking that up costs more
 *     than most checks
 */
record BoardIndex(
    Board board,
    Map<Designator, Item> items,
    Map<Designator, Placement> placements,
    List<Joined> joined) {

  /** A placement, and the BOM line that names its designator. */
  record Joined(Placement placement, Optional<Item> item) {}

  static BoardIndex of(Board board) {
    Map<Designator, Item> items = board.itemsByDesignator();
    var joined = new ArrayList<Joined>(board.placements().size());
    for (Placement placement : board.placements()) {
      joined.add(new Joined(placement, Optional.ofNullable(items.get(placement.designator()))));
    }
    return new BoardIndex(board, items, board.placementsByDesignator(), joined);
  }
}
