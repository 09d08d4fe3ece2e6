package lowfirst.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lowfirst.problem.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

  @ParameterizedTest(name = "\"{0}\" as {1} is {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          4.7 kΩ      | RESISTANCE  | 4700
          4,7k        | RESISTANCE  | 4700
          4700        | RESISTANCE  | 4700
          1000Ω       | RESISTANCE  | 1000
          1000\u2126  | RESISTANCE  | 1000
          1K Ohms     | RESISTANCE  | 1000
          2.2 MΩ      | RESISTANCE  | 2200000
          3.3 mΩ      | RESISTANCE  | 0.0033
          100n        | CAPACITANCE | 0.0000001
          0.1uF       | CAPACITANCE | 0.0000001
          .001uF      | CAPACITANCE | 0.000000001
          10µF        | CAPACITANCE | 0.00001
          10μF        | CAPACITANCE | 0.00001
          10 pf       | CAPACITANCE | 0.00000000001
          470 µH      | INDUCTANCE  | 0.00047
          -75.2918mm  | LENGTH      | -75.2918
          1048.6mil   | LENGTH      | 26.63444
          +1150th     | LENGTH      | 29.21
          1 inch      | LENGTH      | 25.4
          1 in        | LENGTH      | 25.4
          3 m         | LENGTH      | 3000
          35 µm       | LENGTH      | 0.035
          −4.5        | LENGTH      | -4.5
          1e-3        | VOLTAGE     | 0.001
          2.5E3 V     | VOLTAGE     | 2500
          62 °C/W     | THERMAL_RESISTANCE | 62
          40 C        | TEMPERATURE | 40
          20 kHz      | FREQUENCY   | 20000
          5 %         | PERCENT     | 5
          48 nC       | CHARGE      | 0.000000048
          210 mJ      | ENERGY      | 0.21
          166 A²s     | JOULE_INTEGRAL | 166
          """)
  void an_amount_is_read_as_people_write_it(String text, Dimension dimension, BigDecimal amount) {
    Quantity read = Quantity.parse(text, dimension).orThrow();

    assertEquals(0, read.amount().compareTo(amount), () -> "read " + read.amount());
    assertEquals(dimension, read.dimension());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ''       | RESISTANCE | nothing is written here
          abc      | RESISTANCE | no number stands at the start of "abc"
          1.2.3    | RESISTANCE | no number stands at the start of "1.2.3"
          1,2,3    | RESISTANCE | no number stands at the start of "1,2,3"
          -        | LENGTH     | no number stands at the start of "-"
          12 cm    | VOLTAGE    | the unit "cm" is not known here
          5 A      | VOLTAGE    | the unit "A" is not known here
          4k7      | LENGTH     | the unit "k7" is not known here
          1e99     | VOLTAGE    | no number stands at the start of "1e99"
          """)
  void what_is_no_amount_is_refused_with_the_reason(
      String text, Dimension dimension, String fault) {
    Reading<Quantity> reading = Quantity.parse(text, dimension);

    assertFalse(reading.isRead());
    assertEquals(fault, reading.fault());
    assertTrue(reading.remedy().startsWith("write a number with its unit"), reading.remedy());
  }

  @Test
  void a_text_too_long_to_be_an_amount_is_refused_unread() {
    assertEquals(
        "this is too long to be an amount",
        Quantity.parse("1".repeat(1_000_000), Dimension.VOLTAGE).fault());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e999999999", "9e-999999999", "1e2147483648"})
  void an_absurd_exponent_is_refused_and_costs_nothing(String text) {
    assertFalse(Quantity.parse(text, Dimension.VOLTAGE).isRead());
  }

  /** Every dimension, every significand of three digits, every decade from femto to tera. */
  @ParameterizedTest
  @MethodSource("amountsOfEveryDecade")
  void what_is_written_is_read_back(Dimension dimension, int exponent) {
    IntStream.rangeClosed(1, 999)
        .mapToObj(digits -> new Quantity(BigDecimal.valueOf(digits, -exponent), dimension))
        .forEach(
            amount ->
                assertEquals(
                    amount,
                    Quantity.parse(amount.toString(), dimension).orThrow(),
                    amount::toString));
  }

  static Stream<Arguments> amountsOfEveryDecade() {
    return Arrays.stream(Dimension.values())
        .flatMap(
            dimension ->
                IntStream.rangeClosed(-15, 12)
                    .mapToObj(exponent -> Arguments.of(dimension, exponent)));
  }

  @ParameterizedTest(name = "{0} {1} is written {2}")
  @CsvSource({
    "4700, RESISTANCE, 4.7 kΩ",
    "0.0000001, CAPACITANCE, 100 nF",
    "999, RESISTANCE, 999 Ω",
    "1000, RESISTANCE, 1 kΩ",
    "0, RESISTANCE, 0 Ω",
    "-0.05, VOLTAGE, -50 mV",
    "2.54, LENGTH, 2.54 mm",
    "1234.5, LENGTH, 1234.5 mm",
    "62, THERMAL_RESISTANCE, 62 K/W",
    "5, PERCENT, 5 %",
    "90, ANGLE, 90°",
    "110, RATIO, 110"
  })
  void an_amount_is_written_with_the_prefix_an_engineer_would_take(
      String amount, Dimension dimension, String text) {
    assertEquals(text, Quantity.of(amount, dimension).toString());
  }

  @Test
  void rounding_keeps_significant_figures() {
    assertEquals("4.99 kΩ", Quantity.of("4987.6", Dimension.RESISTANCE).rounded(3));
    assertEquals("1 V", Quantity.of("0.9999", Dimension.VOLTAGE).rounded(3));
  }

  @Test
  void equal_amounts_are_equal_however_written() {
    assertEquals(
        Quantity.of("4700.00", Dimension.RESISTANCE), Quantity.of("4.7E3", Dimension.RESISTANCE));
    assertTrue(Quantity.of("1", Dimension.VOLTAGE).sameAs(Quantity.of("1.0", Dimension.VOLTAGE)));
    assertFalse(Quantity.of("1", Dimension.VOLTAGE).sameAs(Quantity.of("1", Dimension.CURRENT)));
  }

  @Test
  void amounts_and_tolerances_are_the_same_in_a_set_only_by_all_that_they_say() {
    List<Object> different =
        List.of(
            Quantity.of("5", Dimension.VOLTAGE),
            Quantity.of("6", Dimension.VOLTAGE),
            Quantity.of("5", Dimension.CURRENT),
            Tolerance.percent("5"),
            Tolerance.absolute("5"),
            Tolerance.percent("20", "80"),
            Tolerance.percent("80", "20"),
            Tolerance.percent("5", "80"),
            Tolerance.percent("20", "5"),
            "5");
    assertEquals(different.size(), new HashSet<>(different).size());
    for (Object one : different) {
      assertEquals(List.of(one), different.stream().filter(one::equals).toList());
    }
    assertEquals(
        different.size(),
        different.stream().map(Object::hashCode).distinct().count(),
        "each has a slot of its own");
    assertEquals(Tolerance.percent("5"), Tolerance.percent("5.0", "5"));
    assertEquals(Tolerance.percent("5").hashCode(), Tolerance.percent("5.0", "5").hashCode());
    assertEquals(
        Quantity.of("4700.00", Dimension.RESISTANCE).hashCode(),
        Quantity.of("4.7E3", Dimension.RESISTANCE).hashCode());
  }

  @Test
  void a_tolerance_band_is_exact() {
    Quantity nominal = Quantity.of("4700", Dimension.RESISTANCE);
    Tolerance five = Tolerance.percent("5");

    assertEquals(Quantity.of("4465", Dimension.RESISTANCE), five.lowest(nominal));
    assertEquals(Quantity.of("4935", Dimension.RESISTANCE), five.highest(nominal));
    assertTrue(five.encloses(nominal, Tolerance.percent("1"), nominal));
    assertFalse(Tolerance.percent("1").encloses(nominal, five, nominal));
    assertEquals("±5 %", five.toString());
    assertEquals("-20/+80 %", Tolerance.percent("20", "80").toString());
    assertThrows(IllegalArgumentException.class, () -> Tolerance.percent("-1"));
  }

  @Test
  void a_number_from_memory_can_make_nothing_pass() {
    assertFalse(new Source(Source.Origin.MEMORY, "from memory").canPass());
    assertTrue(Source.datasheet("a maker's sheet").canPass());
    assertTrue(Source.computed("U / R", true).canPass());
    assertFalse(Source.computed("U / R", false).canPass());
    assertEquals("U / R", Source.computed("U / R", false).text());
    assertEquals(
        "assumed: 40 °C in the box, change it in kit.properties",
        Source.assumed("40 °C in the box", "kit.properties").text());
  }
}
