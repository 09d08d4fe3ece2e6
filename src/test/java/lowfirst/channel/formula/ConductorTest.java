package lowfirst.channel.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Wires between, below and beyond the sizes of the tables. */
class ConductorTest {
  private static double gauge(int number) {
    return Conductor.squareMillimetres("AWG " + number).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "1, 1", "1.2, 0.825", "19, 0.3425", "38, 0.17125"})
  void each_of_many_wires_in_a_bundle_carries_its_share(double wires, double factor) {
    assertEquals(factor, Conductor.bundleFactor(wires), 1e-12, "beyond 19 the sum stays");
  }

  @ParameterizedTest
  @CsvSource({"0.1, 0.14", "0.5, 0.75", "0.6, 0.75", "6, 10", "10, 10", "16, 10"})
  void the_next_size_is_larger_until_there_is_none(double area, double next) {
    assertEquals(next, Conductor.nextSize(area));
  }

  @ParameterizedTest
  @CsvSource({"0.5, 3", "0.6, 3", "2.5, 25", "3.5, 25", "10, 63", "95, 63"})
  void between_sizes_the_smaller_ones_current_counts(double area, double amps) {
    assertEquals(amps, Conductor.amperes(area));
  }

  @ParameterizedTest
  @CsvSource({"20, 10", "30, 10", "60, 5", "70, 0", "90, 0"})
  void warm_air_leaves_less_and_cool_air_lends_nothing(double celsius, double amps) {
    assertEquals(amps, Conductor.amperes(1, celsius, 1), 1e-9, "10 A · √((70 − TA)/40)");
  }

  @Test
  void in_open_air_a_wire_carries_between_its_neighbours() {
    assertEquals(0.86, Conductor.openAirAmperes(gauge(30)), 1e-9);
    assertEquals(0.43, Conductor.openAirAmperes(gauge(30) / 2), 1e-9, "half the copper");
    // half way from 16 A of AWG 18 to 22 A of AWG 16
    assertEquals(19, Conductor.openAirAmperes((gauge(18) + gauge(16)) / 2), 1e-9);
    assertEquals(44, Conductor.openAirAmperes(4 * gauge(16)), 1e-9, "by the root beyond");
  }

  @ParameterizedTest
  @CsvSource({"1.5, 13.7", "0.6, 29.3097", "2.4, 8.21", "12, 1.465485"})
  void between_sizes_a_wire_resists_as_the_larger_or_by_its_copper(double area, double ohms) {
    assertEquals(ohms, Conductor.ohmsPerKilometre(area), 1e-9, "1.02 · 17.241/A at the least");
  }

  @ParameterizedTest
  @CsvSource({
    "'0,75 mm²', 0.75",
    "0.75mm2,    0.75",
    "1.5 qmm,    1.5",
    "' 2.5 mm^2 ', 2.5",
    "6,          6",
    "0.5,        0.5"
  })
  void a_cross_section_is_read_as_people_write_it(String text, double area) {
    assertEquals(area, Conductor.squareMillimetres(text).orElseThrow(), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(strings = {"AWG 18", "awg#18", "18 AWG", "#18awg", "AWG18", "18"})
  void a_gauge_is_read_as_people_write_it(String text) {
    // ASTM B258: 40.30 mils are 1024 mils squared of 6.4516e-4 mm², times π/4
    assertEquals(
        0.8230, Conductor.squareMillimetres(text).orElseThrow(), 0.0003, "and 18 is no 18 mm²");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "thick", "0 mm²", "AWG", "-1 mm²"})
  void what_names_no_size_is_none(String text) {
    assertTrue(Conductor.squareMillimetres(text).isEmpty());
  }

  @Test
  void a_number_without_a_unit_is_said_to_be_one() {
    assertTrue(Conductor.doubt(" 18 ").contains("write the unit"));
    assertEquals("", Conductor.doubt("18 mm²"));
    assertEquals("", Conductor.doubt("0.75"));
  }

  /** 16 A in open air for AWG 18; 1.45 · √((70 − TA)/40) · bundle of it where that is less. */
  @ParameterizedTest
  @CsvSource({
    "30, 1, 16",
    "50, 1, 16", // 1.45 · 0.7071 is more than the whole
    "60, 1, 11.6", // 1.45 · 0.5
    "30, 8, 11.89", // 1.45 · 0.5125
    "60, 8, 5.945",
    "70, 1, 0"
  })
  void in_warm_air_or_a_bundle_a_wire_bears_less_until_its_fuse_opens(
      double celsius, double together, double amps) {
    assertEquals(amps, Conductor.overloadAmperes(gauge(18), celsius, together), 1e-9);
  }
}
