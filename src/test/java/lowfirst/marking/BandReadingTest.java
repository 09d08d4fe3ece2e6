package lowfirst.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lowfirst.marking.BandReading.Direction;
import lowfirst.quantity.Tolerance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which of several legal readings a person most likely holds in the hand. */
class BandReadingTest {
  private static BandReading reading(
      Layout layout, Direction direction, int figures, int exponent, String percent) {
    return new BandReading(
        layout,
        direction,
        figures,
        exponent,
        Optional.of(Tolerance.percent(percent)),
        OptionalInt.empty(),
        "");
  }

  private static BandReading reading(Layout layout, int figures, int exponent) {
    return reading(layout, Direction.AS_GIVEN, figures, exponent, "5");
  }

  /** Shops sell 0.1 Ω to 22 MΩ, of high-voltage ones to 68 MΩ, and 0.1 µH to 100 mH. */
  @ParameterizedTest(name = "{1}e{2} as {0}: {3}")
  @CsvSource({
    "FOUR, 10, -2, true",
    "FOUR, 91, -3, false",
    "FOUR, 22, 6, true",
    "FOUR, 24, 6, false",
    "FIVE, 221, 5, false",
    "FOUR_HIGH_VOLTAGE, 68, 6, true",
    "FOUR_HIGH_VOLTAGE, 75, 6, false",
    "INDUCTOR_FOUR, 10, -8, true",
    "INDUCTOR_FOUR, 91, -9, false",
    "INDUCTOR_THREE, 10, -2, true",
    "INDUCTOR_THREE, 11, -2, false",
    "INDUCTOR_MILITARY, 22, 6, false",
    "LINK, 0, 0, true",
    "FOUR, 0, 0, false",
  })
  void the_range_that_shops_sell_is_ordinary(
      Layout layout, int figures, int exponent, boolean ordinary) {
    assertEquals(ordinary, reading(layout, figures, exponent).isOrdinary());
  }

  /** 47 x 100 and 470 x 10 are 4.7 kΩ; 47 µH is no resistance. */
  @ParameterizedTest
  @CsvSource({
    "FOUR, 47, 2, true",
    "FIVE, 470, 1, true",
    "FIVE, 470, 2, false",
    "FIVE, 475, 1, false",
    "FOUR, 47, 1, false",
    "FOUR, 56, 2, false",
    "INDUCTOR_FOUR, 47, 2, false",
  })
  void two_and_three_figures_may_say_the_same(
      Layout layout, int figures, int exponent, boolean same) {
    BandReading other = reading(layout, figures, exponent);
    BandReading known = reading(Layout.FOUR, 47, 2);
    assertEquals(same, known.sameValueAs(other));
    assertEquals(same, other.sameValueAs(known));
    assertEquals(same, known.meansTheSameAs(other));
  }

  /** Each is less likely than the one before: one more thing speaks against it. */
  @Test
  void what_speaks_against_a_reading_puts_it_behind_the_others() {
    List<BandReading> likelier =
        List.of(
            reading(Layout.FOUR, Direction.AS_GIVEN, 47, 2, "5"),
            reading(Layout.FOUR, Direction.FROM_THE_OTHER_END, 47, 2, "5"),
            reading(Layout.FOUR_AND_FAILURE_RATE, Direction.AS_GIVEN, 47, 2, "5"),
            reading(Layout.FOUR_HIGH_VOLTAGE, Direction.FROM_THE_OTHER_END, 47, 2, "5"),
            reading(Layout.FIVE, Direction.AS_GIVEN, 470, 1, "0.5"),
            reading(Layout.FIVE, Direction.AS_GIVEN, 473, 1, "1"),
            reading(Layout.FOUR, Direction.AS_GIVEN, 47, 2, "0.5"),
            reading(Layout.FOUR, Direction.AS_GIVEN, 47, 8, "5"),
            reading(Layout.FOUR, Direction.AS_GIVEN, 47, 8, "0.5"));
    for (int i = 1; i < likelier.size(); i++) {
      BandReading before = likelier.get(i - 1);
      BandReading after = likelier.get(i);
      assertTrue(before.unlikeliness() < after.unlikeliness(), before + " before " + after);
    }
  }
}
