package lowfirst.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitTest {

  @ParameterizedTest
  @CsvSource({
    "mΩ,RESISTANCE",
    "Ω,RESISTANCE",
    "kohm,RESISTANCE",
    "nC,CHARGE",
    "pF,CAPACITANCE",
    "V,VOLTAGE",
    "mA,CURRENT",
    "µA,CURRENT",
    "K/W,THERMAL_RESISTANCE",
    "°C/W,THERMAL_RESISTANCE",
    "°C,TEMPERATURE",
    "C,TEMPERATURE",
    "mJ,ENERGY",
    "ns,TIME",
    "min,TIME",
    "W,POWER",
    "%,PERCENT",
    "mm,LENGTH",
    "mil,LENGTH",
    "A²s,JOULE_INTEGRAL",
    "ppm/K,TEMPERATURE_COEFFICIENT",
    "ppm/°C,TEMPERATURE_COEFFICIENT",
    "MHz,FREQUENCY",
    "mH,INDUCTANCE",
    "g,MASS"
  })
  void a_unit_says_what_it_measures(String unit, Dimension dimension) {
    assertEquals(Optional.of(dimension), Quantity.measuredIn(unit));
  }

  @Test
  void no_unit_is_a_ratio() {
    assertEquals(Optional.of(Dimension.RATIO), Quantity.measuredIn(""));
  }

  @ParameterizedTest
  @CsvSource({"furlong", "mm/s", "k"})
  void other_texts_measure_nothing(String unit) {
    assertEquals(Optional.empty(), Quantity.measuredIn(unit));
  }
}
