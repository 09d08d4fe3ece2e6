package lowfirst.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.PublishedTable;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.marking.PrintedReading.Likelihood;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrintedCodeTest {

  static Stream<Map<String, String>> prints() {
    return PublishedTable.rows("printed-codes.csv").stream();
  }

  static Stream<Map<String, String>> chips() {
    return PublishedTable.rows("chip-codes.csv").stream();
  }

  static Stream<Map<String, String>> letters() {
    return PublishedTable.rows("tolerance-letters.csv").stream();
  }

  static Stream<Map<String, String>> voltages() {
    return PublishedTable.rows("voltage-codes.csv").stream();
  }

  static Stream<Map<String, String>> dielectrics() {
    return PublishedTable.rows("dielectric-codes.csv").stream();
  }

  static Stream<Map<String, String>> dates() {
    return PublishedTable.rows("date-codes.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("prints")
  void a_published_print_reads_as_published(Map<String, String> row) {
    PrintedReading reading = reading(row.get("print"), Carrier.valueOf(row.get("on")));
    assertEquals(row.get("value"), reading.value().orElseThrow().toString());
    assertEquals(row.get("tolerance"), reading.tolerance().map(Tolerance::toString).orElse(""));
    assertEquals(row.get("voltage"), reading.voltage().map(Quantity::toString).orElse(""));
    assertFalse(reading.rule().isEmpty());
  }

  /** What somebody with the part in hand would think of first: common practice. */
  @ParameterizedTest
  @CsvSource({
    "10KB, POTENTIOMETER RESISTOR",
    "100m, RESISTOR FUSE INDUCTOR CAPACITOR",
    "4m7, CAPACITOR RESISTOR INDUCTOR",
    "7852, REGULATOR RESISTOR",
    "2A, FUSE CAPACITOR",
    "7807, RESISTOR"
  })
  void all_that_a_print_can_mean_is_said_the_likeliest_first(String print, String carriers) {
    assertEquals(
        carriers,
        PrintedCode.readings(print).stream()
            .map(reading -> reading.on().name())
            .collect(Collectors.joining(" ")));
  }

  @ParameterizedTest
  @MethodSource("chips")
  void a_three_character_code_is_read_but_never_taken_for_a_through_hole_part(
      Map<String, String> row) {
    List<PrintedReading> readings = PrintedCode.readings(row.get("print"));
    assertTrue(
        readings.stream()
            .filter(reading -> reading.likelihood() == Likelihood.NOT_THROUGH_HOLE)
            .anyMatch(reading -> reading.value().orElseThrow().toString().equals(row.get("value"))),
        readings::toString);
    assertEquals(Likelihood.NOT_THROUGH_HOLE, readings.get(readings.size() - 1).likelihood());
  }

  @ParameterizedTest
  @MethodSource("letters")
  void a_tolerance_letter_means_what_the_tables_say(Map<String, String> row) {
    Quantity value = Quantity.parse(row.get("value"), Dimension.CAPACITANCE).orThrow();
    assertEquals(
        row.get("tolerance"),
        ToleranceLetter.of(row.get("letter").charAt(0))
            .orElseThrow()
            .tolerance(value)
            .orElseThrow()
            .toString());
  }

  @ParameterizedTest
  @MethodSource("voltages")
  void a_voltage_code_means_what_the_maker_says(Map<String, String> row) {
    assertEquals(row.get("voltage"), VoltageCode.of(row.get("code")).orElseThrow().toString());
  }

  @ParameterizedTest
  @MethodSource("dielectrics")
  void a_dielectric_code_means_what_the_tables_say(Map<String, String> row) {
    Dielectric read = Dielectric.of(row.get("print")).orElseThrow();
    assertEquals(row.get("code"), read.code());
    assertEquals(row.get("words"), read.words());
  }

  @ParameterizedTest
  @MethodSource("dates")
  void a_date_code_never_says_one_year_only(Map<String, String> row) {
    DateCode date = DateCode.of(row.get("code")).orElseThrow();
    assertEquals(
        List.of(Integer.valueOf(row.get("first year")), Integer.valueOf(row.get("second year"))),
        date.years());
    assertEquals(Integer.parseInt(row.get("month")), date.month());
  }

  @Test
  void the_same_print_is_read_for_every_kind_of_part() {
    List<PrintedReading> readings = PrintedCode.readings("473");
    assertEquals(
        List.of("47 kΩ", "47 nF", "47 mH"),
        readings.stream().map(reading -> reading.value().orElseThrow().toString()).toList());
  }

  @Test
  void a_letter_that_ends_a_resistor_print_is_its_unit() {
    assertEquals("470 kΩ", value("470K", Carrier.RESISTOR));
    assertEquals("47 pF", value("470K", Carrier.CAPACITOR));
    assertEquals("47 µH", value("470K", Carrier.INDUCTOR));
  }

  @Test
  void a_cement_resistor_prints_its_power_first() {
    PrintedReading reading = reading("5W10RJ", Carrier.RESISTOR);
    assertEquals("10 Ω", reading.value().orElseThrow().toString());
    assertEquals("5 W", reading.words());
  }

  @ParameterizedTest
  @CsvSource({
    "4R7K, INDUCTOR, R as the decimal mark of µH",
    "4N7K, INDUCTOR, N as the decimal mark of nH",
    "100µH K, INDUCTOR, value in full",
    "470 µF 25 V, CAPACITOR, value in full",
    "470µF 25V, CAPACITOR, value in full",
    "4n7F, CAPACITOR, RKM code (IEC 60062)",
    "470n, CAPACITOR, RKM code (IEC 60062)",
  })
  void a_reading_tells_the_rule_that_it_comes_from(String print, Carrier on, String rule) {
    assertEquals(rule, reading(print, on).rule());
  }

  /** The likeliest meaning of a print on a known kind of part. */
  static PrintedReading reading(String print, Carrier on) {
    return PrintedCode.readings(print).stream()
        .filter(reading -> reading.on() == on)
        .findFirst()
        .orElseThrow();
  }

  private static String value(String print, Carrier on) {
    return reading(print, on).value().orElseThrow().toString();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "BC547", "1N4148", "1n4148", "2n3904", "74HC245N", "hello", "1Z9Q", "2N7000"})
  void a_type_number_is_no_code_of_a_value(String print) {
    assertTrue(
        PrintedCode.readings(print).stream().allMatch(reading -> reading.value().isEmpty()),
        () -> PrintedCode.readings(print).toString());
  }

  @Test
  void a_seventh_power_is_no_capacitor_code() {
    assertTrue(
        PrintedCode.readings("477").stream().noneMatch(read -> read.on() == Carrier.CAPACITOR));
  }

  @Test
  void every_preferred_value_is_written_and_read_back() {
    for (Series series : List.of(Series.E24, Series.E192)) {
      for (int member : series.members()) {
        for (int exponent = -4; exponent <= 6; exponent++) {
          var ohms = BigDecimal.valueOf(member).scaleByPowerOfTen(exponent);
          assertReadBack(new Quantity(ohms, Dimension.RESISTANCE), Carrier.RESISTOR);
          var farads = ohms.scaleByPowerOfTen(-10);
          assertReadBack(new Quantity(farads, Dimension.CAPACITANCE), Carrier.CAPACITOR);
        }
      }
    }
  }

  private static void assertReadBack(Quantity value, Carrier on) {
    var written = RkmCode.write(value).map(code -> code + "M");
    if (!written.isRead()) {
      assertTrue(value.amount().scale() > 3, () -> "not written: " + value);
      return;
    }
    PrintedReading reading = reading(written.orThrow(), on);
    assertEquals(value, reading.value().orElseThrow(), written::toString);
    assertEquals(Tolerance.percent("20"), reading.tolerance().orElseThrow());
  }

  @Test
  void every_E24_capacitor_has_a_digit_code_that_reads_back() {
    for (int member : Series.E24.members()) {
      for (int exponent = -14; exponent <= -6; exponent++) {
        var value =
            new Quantity(
                BigDecimal.valueOf(member).scaleByPowerOfTen(exponent), Dimension.CAPACITANCE);
        String code = DigitCode.write(value).orElseThrow();
        assertEquals(value, DigitCode.read(code, Dimension.CAPACITANCE).orElseThrow());
      }
    }
  }

  @Test
  void no_print_whatsoever_makes_it_throw() {
    var random = new Random(60062);
    String alphabet = "0123456789RKMGTLEpnuµmFJZAX.-/ VWHN\u0000Ω";
    for (int round = 0; round < 100_000; round++) {
      var text = new StringBuilder();
      int length = random.nextInt(9);
      for (int i = 0; i < length; i++) {
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      PrintedCode.readings(text.toString()).forEach(r -> assertFalse(r.rule().isEmpty()));
    }
  }
}
