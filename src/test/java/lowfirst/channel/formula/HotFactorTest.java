package lowfirst.channel.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import lowfirst.channel.formula.HotFactor.Point;
import lowfirst.quantity.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The hot factor by straight lines, by hand. */
class HotFactorTest {
  private static HotFactor of(Point... points) {
    return HotFactor.of(List.of(points), Source.standard("test"));
  }

  @ParameterizedTest
  @CsvSource({"-40, 1", "25, 1", "62.5, 1.3", "100, 1.6", "125, 1.9", "150, 2.2"})
  void between_points_it_runs_straight(double celsius, double factor) {
    HotFactor curve = of(new Point(150, 2.2), new Point(100, 1.6), new Point(0, 9));
    assertEquals(factor, curve.at(celsius), 1e-12, "a point below 25 °C is left out");
  }

  @Test
  void beyond_its_last_point_it_goes_on_at_the_steeper_slope() {
    assertEquals(1.6 + 100 * 0.0168, of(new Point(100, 1.6)).at(200), 1e-12, "the default's");
    assertEquals(5, of(new Point(100, 3)).at(175), 1e-12, "its own, 2 in 75 K");
  }

  @Test
  void without_a_point_above_25_degrees_it_is_the_default() {
    assertSame(HotFactor.DEFAULT, of());
    assertSame(HotFactor.DEFAULT, of(new Point(25, 1)));
  }

  /** With k(T) = 0.8 + 0.008·T up to 100 °C and 1.6 + 0.0168·(T − 100) beyond. */
  @ParameterizedTest
  @CsvSource({
    "-50, 50,   0,        below 25 °C it resists as at 25 °C",
    "15,  10,   25,       just there",
    "40,  12.5, 55.55556, 40 + 10 over 1 − 0.1",
    "40,  37.5, 100,      40 + 30 over 1 − 0.3",
    "40,  45,   149.18033, 40 − 45 · 0.08 over 1 − 0.756",
  })
  void heat_made_and_heat_carried_away_balance(
      double base, double rise, double celsius, String why) {
    assertEquals(celsius, of(new Point(100, 1.6)).balance(base, rise), 1e-4, why);
  }

  @Test
  void where_heat_outruns_cooling_there_is_no_balance() {
    assertEquals(Double.POSITIVE_INFINITY, of(new Point(100, 1.6)).balance(60, 80));
    assertEquals(Double.NaN, of(new Point(100, 1.6)).balance(Double.NaN, 80));
  }
}
