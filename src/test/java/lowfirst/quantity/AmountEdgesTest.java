package lowfirst.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Amounts at the edges of what can be written, and what is said of their origin. */
class AmountEdgesTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1e3   | 1000",
        "1E+3  | 1000",
        "1e-3  | 0.001",
        "1e0   | 1",
        "1e9   | 1000000000",
        "1e3V  | 1000",
        "5e-1 V | 0.5",
        "+4    | 4",
        ".5    | 0.5",
        "5.    | 5",
        "0     | 0",
      })
  void an_exponent_belongs_to_its_number(String text, BigDecimal volts) {
    assertEquals(
        0, volts.compareTo(Quantity.parse(text, Dimension.VOLTAGE).orThrow().amount()), text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"e3", "1e", "1e+", "1e-V", "5ee3", "1e3e3", "V", "+-1"})
  void an_exponent_without_its_digits_is_none(String text) {
    assertFalse(Quantity.parse(text, Dimension.VOLTAGE).isRead(), text);
  }

  @Test
  void sixty_four_signs_are_read_and_one_more_is_not() {
    String most = "0".repeat(63) + "1";
    assertEquals(1, Quantity.parse(most, Dimension.VOLTAGE).orThrow().asDouble(), 0);
    assertFalse(Quantity.parse("0" + most, Dimension.VOLTAGE).isRead());
  }

  @Test
  void thirty_places_before_or_after_the_point_are_the_limit() {
    assertTrue(Quantity.parse("1e29", Dimension.VOLTAGE).isRead());
    assertFalse(Quantity.parse("1e30", Dimension.VOLTAGE).isRead());
    assertTrue(Quantity.parse("1e-31", Dimension.VOLTAGE).isRead());
    assertFalse(Quantity.parse("1e-32", Dimension.VOLTAGE).isRead());
  }

  @Test
  void the_rule_says_whether_a_unit_was_written() {
    assertEquals("number without a unit", Quantity.parse("5", Dimension.VOLTAGE).rule());
    assertEquals("number with unit", Quantity.parse("5 V", Dimension.VOLTAGE).rule());
  }

  @Test
  void the_example_in_the_remedy_is_of_what_is_asked_for() {
    assertEquals(
        "write a number with its unit, such as 4.7 Ω",
        Quantity.parse("x", Dimension.RESISTANCE).remedy());
    assertEquals(
        "write a number with its unit, such as 3", Quantity.parse("x", Dimension.RATIO).remedy());
  }

  @Test
  void an_amount_can_be_computed_with() {
    Quantity half = Quantity.of(0.5, Dimension.VOLTAGE);
    assertEquals(0.5, half.asDouble(), 0);
    assertFalse(half.isZero());
    assertTrue(Quantity.of("0", Dimension.VOLTAGE).isZero());
  }

  /** SI: femto is the smallest of our prefixes and tera the largest (SI Brochure, table 7). */
  @ParameterizedTest
  @CsvSource({
    "1e-15, 1 fF",
    "1e-16, 0.1 fF",
    "999e-15, 999 fF",
    "1e-12, 1 pF",
    "1e-3, 1000 µF",
    "1, 1 F",
  })
  void beyond_the_prefixes_the_last_one_stays(String farads, String text) {
    assertEquals(text, Quantity.of(farads, Dimension.CAPACITANCE).toString());
  }

  @ParameterizedTest
  @CsvSource({"1e12, 1 TΩ", "1e15, 1000 TΩ", "999e9, 999 GΩ", "12345, 12.345 kΩ"})
  void beyond_tera_the_number_grows(String ohms, String text) {
    assertEquals(text, Quantity.of(ohms, Dimension.RESISTANCE).toString());
  }

  /** Common practice: a long time is counted in seconds, a short one with prefixes. */
  @ParameterizedTest
  @CsvSource({"3600, 3600 s", "1, 1 s", "0.0306, 30.6 ms"})
  void no_time_is_counted_in_kiloseconds(String seconds, String text) {
    assertEquals(text, Quantity.of(seconds, Dimension.TIME).toString());
  }

  // --- tolerances

  @Test
  void nothing_is_a_distance_and_less_than_nothing_is_not() {
    assertEquals("±0 %", Tolerance.percent("0").toString());
    assertEquals("-0/+5 %", Tolerance.percent("0", "5").toString());
    assertThrows(IllegalArgumentException.class, () -> Tolerance.percent("0", "-1"));
    assertThrows(IllegalArgumentException.class, () -> Tolerance.percent("-1", "0"));
  }

  /** IEC 60062: below 10 pF a capacitor's letter means picofarads, not per cent. */
  @Test
  void an_absolute_tolerance_is_in_the_values_own_unit() {
    Quantity fivePicofarads = Quantity.of("5e-12", Dimension.CAPACITANCE);
    Tolerance quarter = Tolerance.absolute("0.25e-12");
    assertEquals(Quantity.of("4.75e-12", Dimension.CAPACITANCE), quarter.lowest(fivePicofarads));
    assertEquals(Quantity.of("5.25e-12", Dimension.CAPACITANCE), quarter.highest(fivePicofarads));
  }

  @Test
  void a_band_encloses_itself_and_none_that_reaches_further_on_either_side() {
    Quantity nominal = Quantity.of("100", Dimension.RESISTANCE);
    Tolerance five = Tolerance.percent("5");
    assertTrue(five.encloses(nominal, five, nominal));
    assertFalse(five.encloses(nominal, Tolerance.percent("5.1", "5"), nominal));
    assertFalse(five.encloses(nominal, Tolerance.percent("5", "5.1"), nominal));
    assertFalse(
        five.encloses(nominal, Tolerance.percent("1"), Quantity.of("105", Dimension.RESISTANCE)));
    assertFalse(
        five.encloses(nominal, Tolerance.percent("1"), Quantity.of("95", Dimension.RESISTANCE)));
  }

  // --- where a number came from

  @Test
  void an_amount_shows_its_source() {
    Sourced sourced =
        Sourced.of(Quantity.of("24", Dimension.VOLTAGE), Source.kit("rails.csv:2, column 2"));
    assertEquals(24, sourced.asDouble(), 0);
    assertEquals("24 V [rails.csv:2, column 2]", sourced.toString());
  }

  @Test
  void each_origin_is_named_and_only_memory_can_make_nothing_pass() {
    assertEquals(Source.Origin.KIT, Source.kit("a cell").origin());
    assertEquals(Source.Origin.STANDARD, Source.standard("IEC 60062").origin());
    assertEquals("IEC 60062", Source.standard("IEC 60062").toString());
    assertEquals(Source.Origin.COMPUTED, Source.computed("U = R I").origin());
    assertEquals(Source.Origin.ASSUMED, Source.assumed("hot", "kit.properties").origin());
    for (Source.Origin origin : Source.Origin.values()) {
      assertEquals(origin != Source.Origin.MEMORY, new Source(origin, "").canPass(), origin + "");
    }
  }
}
