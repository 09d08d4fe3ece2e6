package lowfirst.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import lowfirst.marking.MarkingLookup.Question;
import lowfirst.marking.MarkingLookup.Start;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.marking.PrintedReading.Likelihood;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One marking looked up whole: bands, print, written value, and how the value is written again. */
class MarkingLookupTest {

  // --- what is asked decides what is answered

  @Test
  void bands_are_read_as_a_resistors_and_as_an_inductors_unless_one_is_named() {
    String bands = "red violet brown gold";
    MarkingLookup both = MarkingLookup.of(bands, Question.plain());
    assertEquals("270 Ω", both.resistor().orElseThrow().readings().get(0).value() + "");
    assertEquals("270 µH", both.inductor().orElseThrow().readings().get(0).value() + "");
    assertEquals(both.resistor(), both.bands());

    MarkingLookup resistor = MarkingLookup.of(bands, on(Carrier.RESISTOR));
    assertTrue(resistor.resistor().isPresent());
    assertEquals(Optional.empty(), resistor.inductor());

    MarkingLookup inductor = MarkingLookup.of(bands, on(Carrier.INDUCTOR));
    assertEquals(Optional.empty(), inductor.resistor());
    assertEquals(inductor.inductor(), inductor.bands());
    assertFalse(inductor.isUnknown());

    MarkingLookup capacitor = MarkingLookup.of(bands, on(Carrier.CAPACITOR));
    assertEquals(Optional.empty(), capacitor.bands());
    assertTrue(capacitor.isUnknown());
  }

  @Test
  void a_known_first_band_leaves_one_direction() {
    String bands = "brown black black red brown";
    assertTrue(
        MarkingLookup.of(bands, Question.plain()).resistor().orElseThrow().readings().size() > 1);
    var question =
        new Question(
            Optional.of(Carrier.RESISTOR),
            Edition.IEC_60062_2016,
            Start.KNOWN,
            Optional.empty(),
            OptionalInt.empty());
    BandDecoding known = MarkingLookup.of(bands, question).resistor().orElseThrow();
    assertEquals("10 kΩ", known.readings().get(0).value().toString());
    assertEquals(List.of(), known.others());
  }

  /** Read from the other end, brown red black black brown is 120 Ω ±1 %: a second meaning. */
  @Test
  void the_other_meanings_are_those_that_differ_in_value_or_tolerance() {
    BandDecoding decoding =
        MarkingLookup.of("brown black black red brown", on(Carrier.RESISTOR))
            .resistor()
            .orElseThrow();
    assertEquals(
        List.of("120 Ω"),
        decoding.others().stream().map(reading -> reading.value().toString()).toList());
  }

  @Test
  void a_print_is_read_as_on_the_part_that_is_named() {
    assertEquals(List.of("100 kΩ"), values(MarkingLookup.of("104", on(Carrier.RESISTOR))));
    assertEquals(List.of("100 nF"), values(MarkingLookup.of("104", on(Carrier.CAPACITOR))));
    assertEquals(List.of("100 mH"), values(MarkingLookup.of("104", on(Carrier.INDUCTOR))));
  }

  @Test
  void nothing_understood_is_said_to_be_unknown() {
    for (String nonsense : List.of("", "-", "zzzz", "?", "x".repeat(41))) {
      assertTrue(MarkingLookup.of(nonsense, Question.plain()).isUnknown(), nonsense);
    }
    for (String sense : List.of("104K", "brown black red", "4k7", "X7R", "47")) {
      assertFalse(MarkingLookup.of(sense, Question.plain()).isUnknown(), sense);
    }
  }

  // --- how a value is written again

  /**
   * IEC 60062: 4.7 kΩ is yellow violet red gold at ±5 %, yellow violet black brown brown at ±1 %.
   */
  @Test
  void a_value_without_a_tolerance_is_written_at_the_two_usual_ones() {
    ValueCodes codes = MarkingLookup.of("4.7k", on(Carrier.RESISTOR)).codes().orElseThrow();
    assertEquals(
        List.of(
            BandSequence.of(Colour.YELLOW, Colour.VIOLET, Colour.RED, Colour.GOLD),
            BandSequence.of(
                Colour.YELLOW, Colour.VIOLET, Colour.BLACK, Colour.BROWN, Colour.BROWN)),
        codes.bands().stream().map(ValueCodes.Banded::bands).toList());
    assertEquals(List.of("4K7", "472"), codes.prints());
    assertEquals(List.of(), codes.refusals());
  }

  @Test
  void a_temperature_coefficient_asks_for_six_bands_and_a_tolerance_for_its_letter() {
    ValueCodes codes =
        ValueCodes.of(
            Quantity.of("4700", Dimension.RESISTANCE),
            Optional.of(Tolerance.percent("1")),
            OptionalInt.of(50));
    assertEquals(
        List.of(Layout.FIVE, Layout.SIX),
        codes.bands().stream().map(ValueCodes.Banded::layout).toList());
    assertEquals(Colour.RED, codes.bands().get(1).bands().bands().get(5), "50 ppm/K is red");
    assertEquals(List.of("4K7F", "472F"), codes.prints());
  }

  @Test
  void an_inductor_is_banded_in_microhenry_and_a_capacitor_not_at_all() {
    ValueCodes coil =
        ValueCodes.of(
            Quantity.of("0.00027", Dimension.INDUCTANCE), Optional.empty(), OptionalInt.empty());
    assertEquals(
        List.of(BandSequence.of(Colour.RED, Colour.VIOLET, Colour.BROWN, Colour.SILVER)),
        coil.bands().stream().map(ValueCodes.Banded::bands).toList());
    ValueCodes capacitor =
        ValueCodes.of(
            Quantity.of("4.7e-9", Dimension.CAPACITANCE),
            Optional.of(Tolerance.percent("10")),
            OptionalInt.empty());
    assertEquals(List.of(), capacitor.bands());
    assertEquals(List.of("4n7K", "472K"), capacitor.prints());
  }

  @Test
  void a_value_of_too_many_figures_is_refused_with_the_reason() {
    ValueCodes codes =
        ValueCodes.of(
            Quantity.of("12345", Dimension.RESISTANCE), Optional.empty(), OptionalInt.empty());
    assertEquals(List.of(), codes.bands());
    assertFalse(codes.refusals().isEmpty());
    assertEquals(List.of(), codes.prints());
  }

  // --- the letter code (IEC 60062, RKM)

  @ParameterizedTest
  @CsvSource({
    "0, RESISTANCE, 0R",
    "0.1, RESISTANCE, R1",
    "0.47, RESISTANCE, R47",
    "0.005, RESISTANCE, R005",
    "0.0005, RESISTANCE, L5",
    "1, RESISTANCE, 1R",
    "4.7, RESISTANCE, 4R7",
    "470, RESISTANCE, 470R",
    "1000, RESISTANCE, 1K",
    "2.2e6, RESISTANCE, 2M2",
    "1e9, RESISTANCE, 1G",
    "3.3e-13, CAPACITANCE, p33",
    "4.7e-12, CAPACITANCE, 4p7",
    "4.7e-9, CAPACITANCE, 4n7",
    "1e-5, CAPACITANCE, 10µ",
    "1e-3, CAPACITANCE, 1m",
  })
  void a_value_is_written_with_its_letter_as_the_point(
      String amount, Dimension dimension, String code) {
    assertEquals(code, RkmCode.write(Quantity.of(amount, dimension)).orThrow());
  }

  @Test
  void what_the_letter_code_lacks_is_refused() {
    assertFalse(RkmCode.write(Quantity.of("12345", Dimension.RESISTANCE)).isRead());
    assertTrue(RkmCode.write(Quantity.of("1234", Dimension.RESISTANCE)).isRead());
    assertFalse(RkmCode.write(Quantity.of("0", Dimension.CAPACITANCE)).isRead());
    assertFalse(RkmCode.write(Quantity.of("-1", Dimension.RESISTANCE)).isRead());
    assertFalse(RkmCode.write(Quantity.of("1", Dimension.VOLTAGE)).isRead());
  }

  // --- prints of all sorts

  @ParameterizedTest
  @CsvSource({"R, RESISTOR", "K, RESISTOR", "., RESISTOR", "N, INDUCTOR"})
  void a_lone_letter_is_no_value(String print, Carrier on) {
    assertEquals(
        List.of(),
        PrintedCode.readings(print).stream()
            .filter(reading -> reading.on() == on && reading.value().isPresent())
            .toList());
  }

  @ParameterizedTest
  @CsvSource({
    "47G5, RARE",
    "4T7, RARE",
    "4L7, RARE",
    "4E7, RARE",
    "4K7, USUAL",
    "4R7, USUAL",
    "4M7, USUAL",
  })
  void letters_that_hobby_parts_hardly_carry_are_said_to_be_rare(
      String print, Likelihood likelihood) {
    assertEquals(likelihood, PrintedCodeTest.reading(print, Carrier.RESISTOR).likelihood());
  }

  @Test
  void a_print_may_name_a_dielectric_a_rated_voltage_a_date_or_a_tolerance() {
    assertTrue(words("X7R").anyMatch(words -> words.startsWith("dielectric X7R")));
    assertTrue(
        PrintedCode.readings("1H").stream()
            .anyMatch(r -> r.voltage().equals(Optional.of(Quantity.of("50", Dimension.VOLTAGE)))),
        "1H is 50 V (EIA voltage code)");
    assertTrue(
        PrintedCode.readings("J").stream()
            .anyMatch(
                r ->
                    r.tolerance().equals(Optional.of(Tolerance.percent("5")))
                        || r.words().contains("5 %")),
        "J is ±5 % (IEC 60062)");
  }

  @Test
  void a_power_before_a_resistors_code_is_kept_with_it() {
    PrintedReading reading = PrintedCodeTest.reading("5W 10RJ", Carrier.RESISTOR);
    assertEquals("10 Ω", reading.value().orElseThrow().toString());
    assertEquals("5 W", reading.words());
  }

  @Test
  void forty_signs_may_be_a_print_and_more_are_none() {
    assertEquals(List.of(), PrintedCode.readings("1".repeat(41)));
    assertEquals(PrintedCode.readings("104"), PrintedCode.readings("  104 "));
  }

  @Test
  void what_no_part_carries_is_no_print() {
    assertEquals(List.of(), PrintedCode.readings("zzzz"));
  }

  @Test
  void parts_are_called_what_people_call_them() {
    assertEquals(
        List.of(
            "resistor",
            "resistor network",
            "capacitor",
            "inductor",
            "Zener diode",
            "regulator",
            "fuse",
            "trimmer",
            "potentiometer",
            "crystal",
            "varistor",
            "thermistor",
            "any part"),
        Arrays.stream(Carrier.values()).map(Carrier::words).toList());
  }

  // --- series

  /** IEC 60063: E24 is meant for ±5 %, E48 for ±2 %, E96 for ±1 %, E192 for closer ones. */
  @ParameterizedTest
  @CsvSource({
    "20, E24",
    "5, E24",
    "4.9, E48",
    "2, E48",
    "1.9, E96",
    "1, E96",
    "0.9, E192",
    "0.1, E192",
  })
  void a_tolerance_suggests_the_series_that_is_sold_at_it(String percent, Series series) {
    assertEquals(series, Series.soldAt(Tolerance.percent(percent)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"BNBKRDGD", "bn bk rd gd", "brown,black;red/gold", "[brown] (black) red gold"})
  void bands_may_be_written_in_many_ways(String text) {
    assertEquals(
        BandSequence.of(Colour.BROWN, Colour.BLACK, Colour.RED, Colour.GOLD),
        BandSequence.parse(text).orThrow());
  }

  @Test
  void up_to_six_bands_are_read_and_a_last_none_is_left_out() {
    assertEquals(6, BandSequence.parse("BNBNBNBNBNBN").orThrow().bands().size());
    assertEquals(2, BandSequence.parse("BNBN").orThrow().bands().size());
    assertFalse(BandSequence.parse("BNBNBNBNBNBNBN").isRead());
    assertFalse(BandSequence.parse("BNB").isRead());
    assertEquals(3, BandSequence.parse("brown black red none").orThrow().bands().size());
    assertFalse(BandSequence.parse("none").isRead());
    assertFalse(BandSequence.parse("brown none red").isRead());
  }

  private static Question on(Carrier carrier) {
    Question plain = Question.plain();
    return new Question(
        Optional.of(carrier),
        plain.edition(),
        plain.start(),
        plain.tolerance(),
        plain.ppmPerKelvin());
  }

  private static List<String> values(MarkingLookup lookup) {
    return lookup.prints().stream()
        .filter(reading -> reading.likelihood() == Likelihood.USUAL)
        .flatMap(reading -> reading.value().stream())
        .map(Quantity::toString)
        .toList();
  }

  private static Stream<String> words(String print) {
    return PrintedCode.readings(print).stream().map(PrintedReading::words);
  }
}
