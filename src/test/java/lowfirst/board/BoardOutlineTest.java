package lowfirst.board;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.problem.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether the edge that a kit states can be that of its placement list. */
class BoardOutlineTest {
  private static final Board.Size SIZE = new Board.Size(10, 20, 30, 40);

  private static Placement at(int number, double x, double y) {
    return new Placement(
        Designator.of("R" + number),
        x,
        y,
        0,
        true,
        Side.TOP,
        "",
        "",
        "",
        Place.ofLine("placements.csv", number + 1));
  }

  @ParameterizedTest
  @CsvSource({
    "10, 20, true",
    "40, 60, true",
    "9.9, 30, false",
    "40.1, 30, false",
    "20, 19.9, false",
    "20, 60.1, false"
  })
  void a_part_lies_on_a_board_up_to_its_edge(double x, double y, boolean holds) {
    assertEquals(holds, SIZE.holds(at(1, x, y)));
  }

  /** Up to three, or half of all, may be misplaced; more are in other coordinates. */
  @ParameterizedTest
  @CsvSource({"0, 3, true", "0, 4, false", "4, 4, true", "4, 5, false", "5, 4, true"})
  void an_edge_that_most_parts_lie_beyond_is_of_another_origin(int on, int off, boolean known) {
    var placements = new ArrayList<Placement>();
    for (int i = 1; i <= on + off; i++) {
      placements.add(at(i, i <= on ? 20 : 500, 30));
    }
    Board board =
        new Board("driver", 1, Optional.of(SIZE), List.of(), placements, part -> Optional.empty());
    assertEquals(known ? Optional.of(SIZE) : Optional.empty(), board.outline());
    assertEquals(Optional.of(SIZE), board.size());
  }

  @Test
  void a_board_of_no_stated_size_has_no_outline() {
    Board board =
        new Board("driver", 1, Optional.empty(), List.of(), List.of(), part -> Optional.empty());
    assertEquals(Optional.empty(), board.outline());
  }
}
