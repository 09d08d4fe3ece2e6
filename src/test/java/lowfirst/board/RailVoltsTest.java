package lowfirst.board;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.OptionalInt;
import lowfirst.problem.Place;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.quantity.Sourced;
import org.junit.jupiter.api.Test;

/** How high and how low a rail may be; one without a tolerance may be 10 % off. */
class RailVoltsTest {
  private static Optional<Sourced> stated(double amount, Dimension dimension) {
    return Optional.of(Sourced.of(Quantity.of(amount, dimension), Source.kit("rails.csv")));
  }

  private static Rail rail(Optional<Sourced> voltage, Optional<Sourced> tolerance) {
    return new Rail(
        "power",
        voltage,
        tolerance,
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        "",
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        "",
        Place.ofFile("rails.csv"));
  }

  private static void assertVolts(double lowest, double nominal, double highest, Rail rail) {
    assertEquals(lowest, rail.lowestVolts(), 1e-9);
    assertEquals(nominal, rail.nominalVolts(), 1e-9);
    assertEquals(highest, rail.highestVolts(), 1e-9);
  }

  @Test
  void a_rail_is_as_far_off_as_its_tolerance_says_or_ten_per_cent() {
    Optional<Sourced> volts = stated(24, Dimension.VOLTAGE);
    assertVolts(22.8, 24, 25.2, rail(volts, stated(5, Dimension.RATIO)));
    assertVolts(24, 24, 24, rail(volts, stated(0, Dimension.RATIO)));
    assertVolts(21.6, 24, 26.4, rail(volts, Optional.empty()));
  }

  @Test
  void without_a_voltage_there_is_no_number() {
    Rail unknown = rail(Optional.empty(), stated(5, Dimension.RATIO));
    assertVolts(Double.NaN, Double.NaN, Double.NaN, unknown);
  }
}
