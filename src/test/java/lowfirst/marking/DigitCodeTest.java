package lowfirst.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;

import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the code of two figures and a number of zeros ends. */
class DigitCodeTest {

  @ParameterizedTest(name = "{0} {1}: {2}")
  @CsvSource({
    "1e-13, CAPACITANCE, 108",
    "9e-14, CAPACITANCE, ''",
    "4.7e-12, CAPACITANCE, 479",
    "10e-12, CAPACITANCE, 100",
    "99e-6, CAPACITANCE, 996",
    "100e-6, CAPACITANCE, ''",
    "1.23e-9, CAPACITANCE, ''",
    "10, RESISTANCE, 100",
    "9.1, RESISTANCE, ''",
    "1e-6, INDUCTANCE, ''",
    "10e-6, INDUCTANCE, 100",
    "0, RESISTANCE, ''",
    "-10, RESISTANCE, ''",
  })
  void a_value_of_two_figures_has_a_code_within_limits(
      String amount, Dimension dimension, String code) {
    assertEquals(code, DigitCode.write(Quantity.of(amount, dimension)).orElse(""));
  }

  @ParameterizedTest(name = "{0} {1}: {2}")
  @CsvSource({
    "476, CAPACITANCE, 47 µF",
    "477, CAPACITANCE, ''",
    "478, CAPACITANCE, 470 fF",
    "479, CAPACITANCE, 4.7 pF",
    "477, RESISTANCE, 470 MΩ",
    "1001, RESISTANCE, 1 kΩ",
    "047, RESISTANCE, ''",
    "4a7, RESISTANCE, ''",
    "4/7, RESISTANCE, ''",
    "47, RESISTANCE, ''",
    "10000, RESISTANCE, ''",
  })
  void the_last_digit_is_the_number_of_zeros(String code, Dimension dimension, String value) {
    assertEquals(value, DigitCode.read(code, dimension).map(Quantity::toString).orElse(""));
  }
}
