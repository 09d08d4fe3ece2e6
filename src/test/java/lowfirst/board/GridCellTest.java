package lowfirst.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import org.junit.jupiter.api.Test;

class GridCellTest {

  @Test
  void squares_are_counted_from_zero_both_ways_and_hold_their_lower_edge() {
    assertEquals(0, GridCell.at(0, 15));
    assertEquals(0, GridCell.at(14.9, 15));
    assertEquals(1, GridCell.at(15, 15));
    assertEquals(-1, GridCell.at(-0.1, 15));
    assertEquals(-2, GridCell.at(-15.1, 15));
  }

  @Test
  void a_square_is_the_same_only_in_column_row_and_side() {
    var cell = new GridCell(3, 7, Side.TOP);
    assertEquals(new GridCell(3, 7, Side.TOP), cell);
    assertEquals(new GridCell(3, 7, Side.TOP).hashCode(), cell.hashCode());
    assertNotEquals(new GridCell(4, 7, Side.TOP), cell);
    assertNotEquals(new GridCell(3, 8, Side.TOP), cell);
    assertNotEquals(new GridCell(3, 7, Side.BOTTOM), cell);
    assertNotEquals(cell, (Object) "3 7 TOP");
  }

  /**
   * With a record's own hash 31 rows and one column fall together, and a large board is one list.
   */
  @Test
  void squares_of_a_large_board_rarely_share_a_hash() {
    var hashes = new HashSet<Integer>();
    for (int column = 0; column < 200; column++) {
      for (int row = 0; row < 200; row++) {
        hashes.add(new GridCell(column, row, Side.TOP).hashCode());
        hashes.add(new GridCell(column, row, Side.BOTTOM).hashCode());
      }
    }
    assertTrue(hashes.size() > 79_000, hashes.size() + " of 80,000");
  }
}
