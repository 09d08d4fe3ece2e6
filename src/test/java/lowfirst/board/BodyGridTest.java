package lowfirst.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BodyGridTest {
  private static final double SQUARE = 15;

  private static List<Integer> found(BodyGrid grid, BodyArea area, Side side) {
    return List.copyOf(grid.overlapping(area, side, 0.5));
  }

  /** Held against trying every pair; grows past what was expected where that is little. */
  @ParameterizedTest
  @ValueSource(ints = {0, 10, 600})
  void what_is_found_is_what_trying_every_pair_finds(int expected) {
    var random = new Random(1);
    var areas = new ArrayList<BodyArea>();
    var sides = new ArrayList<Side>();
    var grid = new BodyGrid(SQUARE, expected);
    for (int i = 0; i < 500; i++) {
      double x = 500 * random.nextDouble() - 250;
      double y = 500 * random.nextDouble() - 250;
      areas.add(new BodyArea(x, y, x + 40 * random.nextDouble(), y + 20 * random.nextDouble()));
      sides.add(random.nextBoolean() ? Side.TOP : Side.BOTTOM);
      grid.add(areas.get(i), sides.get(i));
    }
    int pairs = 0;
    for (int i = 0; i < areas.size(); i++) {
      var overlapping = new ArrayList<Integer>();
      for (int j = 0; j < areas.size(); j++) {
        if (sides.get(i) == sides.get(j) && areas.get(i).overlaps(areas.get(j), 0.5)) {
          overlapping.add(j);
        }
      }
      assertEquals(overlapping, found(grid, areas.get(i), sides.get(i)), "near " + i);
      pairs += overlapping.size();
    }
    // Each with itself; a body meets another of its side with a chance of 40 * 20 / 500 / 500.
    assertTrue(pairs > 700 && pairs < 1200, "pairs: " + pairs);
  }

  @Test
  void only_a_patch_deeper_than_asked_on_the_same_side_counts() {
    var grid = new BodyGrid(SQUARE, 1);
    grid.add(new BodyArea(0, 0, 10, 10), Side.BOTTOM);
    assertEquals(List.of(0), found(grid, new BodyArea(9.4, 0, 20, 10), Side.BOTTOM));
    assertEquals(List.of(), found(grid, new BodyArea(9.5, 0, 20, 10), Side.BOTTOM));
    assertEquals(List.of(), found(grid, new BodyArea(0, 9.5, 10, 20), Side.BOTTOM));
    assertEquals(List.of(0), found(grid, new BodyArea(0, 9.4, 10, 20), Side.BOTTOM));
    assertEquals(List.of(), found(grid, new BodyArea(9.4, 0, 20, 10), Side.TOP));
  }

  @ParameterizedTest
  @CsvSource({"500, 1, true", "1, 500, true", "500.1, 1, false", "1, 500.1, false"})
  void half_a_metre_is_the_largest_body_believed(double width, double height, boolean believed) {
    var large = new BodyArea(0, 0, width, height);
    var corner = new BodyArea(0, 0, 1, 1);
    assertEquals(believed, BodyGrid.isBelievable(large));
    var grid = new BodyGrid(SQUARE, 1);
    grid.add(large, Side.TOP);
    grid.add(corner, Side.TOP);
    assertEquals(believed ? List.of(0, 1) : List.of(1), found(grid, corner, Side.TOP));
    assertEquals(believed ? List.of(0, 1) : List.of(), found(grid, large, Side.TOP));
  }
}
