package lowfirst.sorting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.stream.Stream;
import lowfirst.PublishedTable;
import lowfirst.sorting.ColourDifference.Lab;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ColourVisionTest {

  static Stream<Map<String, String>> seen() {
    return PublishedTable.rows("colour-vision.csv").stream();
  }

  static Stream<Map<String, String>> pairs() {
    return PublishedTable.rows("colour-difference.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("seen")
  void a_deficiency_is_simulated_as_an_independent_implementation_does(Map<String, String> row) {
    int rgb = Integer.parseInt(row.get("colour"), 16);
    int seen = ColourVision.valueOf(row.get("vision")).seen(rgb);
    double tolerance = Double.parseDouble(row.get("tolerance"));
    assertEquals(Double.parseDouble(row.get("red")), seen >> 16 & 0xFF, tolerance);
    assertEquals(Double.parseDouble(row.get("green")), seen >> 8 & 0xFF, tolerance);
    assertEquals(Double.parseDouble(row.get("blue")), seen & 0xFF, tolerance);
  }

  @ParameterizedTest
  @MethodSource("pairs")
  void a_published_pair_of_colours_differs_as_published_both_ways(Map<String, String> row) {
    Lab first = lab(row, "1");
    Lab second = lab(row, "2");
    double published = Double.parseDouble(row.get("difference"));
    assertEquals(published, ColourDifference.ciede2000(first, second), 0.0001);
    assertEquals(published, ColourDifference.ciede2000(second, first), 0.0001);
  }

  private static Lab lab(Map<String, String> row, String which) {
    return new Lab(
        Double.parseDouble(row.get("L" + which)),
        Double.parseDouble(row.get("a" + which)),
        Double.parseDouble(row.get("b" + which)));
  }
}
