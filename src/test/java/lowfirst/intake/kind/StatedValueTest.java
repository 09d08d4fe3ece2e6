package lowfirst.intake.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;

import lowfirst.quantity.Dimension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StatedValueTest {
  /** Chip sizes by IEC 60115-8: hundredths of an inch, no resistance. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({"1%/0402, ''", "0805, ''", "4k7 0603, 4.7 kΩ", "402, 402 Ω", "0.402, 402 mΩ"})
  void the_size_of_a_chip_is_no_value(String cell, String value) {
    assertEquals(
        value,
        StatedValue.of(cell, "", Dimension.RESISTANCE)
            .map(found -> found.value().toString())
            .orElse(""));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "crystal 16 MHz, 2 pins | FREQUENCY | 16 MHz",
        "crystal, 2 pins | FREQUENCY | ''",
        "metal film 4k7 1 % | RESISTANCE | 4.7 kΩ",
        "metal film, 2 pieces | RESISTANCE | ''",
        "ceramic 100nF 50V | CAPACITANCE | 100 nF",
        "film, box 7 | CAPACITANCE | ''"
      })
  void a_bare_number_in_prose_is_no_value(String prose, Dimension measured, String value) {
    assertEquals(
        value,
        StatedValue.inProse(prose, measured).map(found -> found.value().toString()).orElse(""));
  }
}
