package lowfirst.sorting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.stream.Stream;
import lowfirst.PublishedTable;
import lowfirst.sorting.ColourDifference.Lab;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

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

  /**
   * Primaries and white of sRGB (IEC 61966-2-1, which takes them from ITU-R BT.709): chromaticities
   * x, y and luminance, found again from L*, a*, b* by the inverse of ISO/CIE 11664-4.
   */
  @ParameterizedTest
  @CsvSource({
    "FF0000, 0.640, 0.330, 0.2126",
    "00FF00, 0.300, 0.600, 0.7152",
    "0000FF, 0.150, 0.060, 0.0722",
    "FFFFFF, 0.3127, 0.3290, 1",
    "808080, 0.3127, 0.3290, 0.2159",
  })
  void a_colour_on_the_screen_has_the_chromaticity_of_its_standard(
      String colour, double x, double y, double luminance) {
    Lab lab = Lab.of(Integer.parseInt(colour, 16));
    double fy = (lab.lightness() + 16) / 116;
    double bigX = 0.95047 * Math.pow(fy + lab.a() / 500, 3);
    double bigY = Math.pow(fy, 3);
    double bigZ = 1.08883 * Math.pow(fy - lab.b() / 200, 3);
    double sum = bigX + bigY + bigZ;
    assertEquals(x, bigX / sum, 0.0005);
    assertEquals(y, bigY / sum, 0.0005);
    assertEquals(luminance, bigY, 0.0005);
  }

  /** Near black L* is 903.3 Y (ISO/CIE 11664-4), and a linear value is a 12.92nd of the code's. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void near_black_lightness_grows_in_a_straight_line(int level) {
    Lab lab = Lab.of(level << 16 | level << 8 | level);
    assertEquals(903.3 * level / 255 / 12.92, lab.lightness(), 0.001);
    assertEquals(0, lab.a(), 0.001);
    assertEquals(0, lab.b(), 0.001);
  }

  private static Lab lab(Map<String, String> row, String which) {
    return new Lab(
        Double.parseDouble(row.get("L" + which)),
        Double.parseDouble(row.get("a" + which)),
        Double.parseDouble(row.get("b" + which)));
  }
}
