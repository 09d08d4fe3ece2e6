package lowfirst.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import lowfirst.PublishedTable;
import lowfirst.marking.BandDecoding.Certainty;
import lowfirst.marking.BandReading.Direction;
import lowfirst.marking.ColourCode.Body;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ColourCodeTest {

  static Stream<Map<String, String>> colours() {
    return PublishedTable.rows("colour-table.csv").stream();
  }

  static Stream<Map<String, String>> resistors() {
    return PublishedTable.rows("resistor-bands.csv").stream();
  }

  static Stream<Map<String, String>> inductors() {
    return PublishedTable.rows("inductor-bands.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("colours")
  void each_colour_means_what_the_makers_card_says(Map<String, String> row) {
    Colour colour = Colour.named(row.get("colour")).orElseThrow();
    assertEquals(row.get("code"), colour.code());
    assertEquals(row.get("digit"), colour.isDigit() ? "" + colour.digit() : "");
    assertEquals(Integer.parseInt(row.get("exponent")), colour.exponent());
    assertEquals(
        row.get("tolerance percent").isEmpty()
            ? Optional.empty()
            : Optional.of(Tolerance.percent(row.get("tolerance percent"))),
        colour.tolerance(Edition.IEC_60062_2016));
    assertEquals(
        row.get("ppm per kelvin").isEmpty()
            ? OptionalInt.empty()
            : OptionalInt.of(Integer.parseInt(row.get("ppm per kelvin"))),
        colour.ppmPerKelvin());
  }

  @Test
  void the_table_lists_every_colour_once() {
    assertEquals(
        Arrays.stream(Colour.values()).map(Colour::word).toList(),
        colours().map(row -> row.get("colour")).toList());
  }

  @ParameterizedTest
  @MethodSource("resistors")
  void a_published_resistor_reads_as_published_from_both_ends(Map<String, String> row) {
    BandSequence bands = BandSequence.parse(row.get("bands")).orThrow();
    List<BandReading> readings = ColourCode.decode(bands).readings();
    assertTrue(
        readings.stream()
            .filter(reading -> reading.direction() == Direction.AS_GIVEN)
            .anyMatch(reading -> says(reading, row.get("value"), row.get("tolerance"))),
        readings::toString);
    List<BandReading> backwards =
        readings.stream()
            .filter(reading -> reading.direction() == Direction.FROM_THE_OTHER_END)
            .toList();
    if (!row.get("from the other end").isEmpty()) {
      assertTrue(
          backwards.stream()
              .anyMatch(
                  reading ->
                      says(reading, row.get("from the other end"), row.get("other tolerance"))),
          backwards::toString);
    } else {
      assertEquals(List.of(), backwards);
    }
  }

  @ParameterizedTest
  @MethodSource("inductors")
  void a_published_inductor_reads_as_published(Map<String, String> row) {
    BandSequence bands = BandSequence.parse(row.get("bands")).orThrow();
    BandDecoding decoding =
        ColourCode.decodeFromStart(bands, Body.INDUCTOR, Edition.IEC_60062_2016);
    assertTrue(
        decoding.readings().stream()
            .anyMatch(reading -> says(reading, row.get("value"), row.get("tolerance"))),
        decoding::toString);
  }

  private static boolean says(BandReading reading, String value, String tolerance) {
    return reading.value().toString().equals(value)
        && reading.tolerance().map(Tolerance::toString).orElse("").equals(tolerance);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "yellow violet red gold",
        "YE VT RD GD",
        "ye-vt-rd-gd",
        "YEVTRDGD",
        "[YE VT RD GD]",
        "yellow, purple, red, gold",
        "yel/vio/red/gld"
      })
  void bands_are_read_from_names_abbreviations_and_codes(String text) {
    assertEquals(
        BandSequence.of(Colour.YELLOW, Colour.VIOLET, Colour.RED, Colour.GOLD),
        BandSequence.parse(text).orThrow());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "yellow mauve red", "none", "RD RD RD RD RD RD RD", "YEVTRDG", "4k7"})
  void other_words_are_no_bands(String text) {
    assertFalse(BandSequence.parse(text).isRead());
  }

  @Test
  void a_last_band_called_none_is_left_out() {
    assertEquals(
        BandSequence.of(Colour.RED, Colour.RED, Colour.RED),
        BandSequence.parse("red red red none").orThrow());
  }

  @Test
  void a_gold_band_in_fourth_place_means_five_percent() {
    BandDecoding decoding = decoded("brown black orange gold");
    BandReading reading = decoding.readings().get(0);
    assertEquals("10 kΩ", reading.value().toString());
    assertEquals(Optional.of(Tolerance.percent("5")), reading.tolerance());
    assertEquals(Certainty.CERTAIN, decoding.certainty());
  }

  @ParameterizedTest
  @CsvSource({
    "brown black black brown brown, AMBIGUOUS, 1 kΩ",
    "brown brown black black brown, AMBIGUOUS, 110 Ω",
    "brown black black black brown, CERTAIN, 100 Ω",
    "green blue black gold brown, CERTAIN, 56 Ω",
    "brown gold black blue green, CERTAIN, 56 Ω",
    "yellow violet black brown brown, LIKELY, 4.7 kΩ",
    "brown brown black violet yellow, LIKELY, 4.7 kΩ",
    "orange orange black black brown, AMBIGUOUS, 330 Ω",
    "brown black black orange orange, AMBIGUOUS, 330 Ω",
    "brown black red gold brown, AMBIGUOUS, 10.2 Ω",
    "red violet green yellow, LIKELY, 2.7 MΩ",
    "grey white white gold, DOUBTFUL, 89 GΩ",
    "yellow violet red, AMBIGUOUS, 4.7 kΩ",
    "black, CERTAIN, 0 Ω",
  })
  void the_bands_settle_the_value_only_as_far_as_they_can(
      String bands, Certainty certainty, String value) {
    BandDecoding decoding = decoded(bands);
    assertEquals(value, decoding.readings().get(0).value().toString(), decoding::toString);
    assertEquals(certainty, decoding.certainty(), decoding::toString);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "gold",
        "red",
        "red red",
        "black red black",
        "gold silver gold gold",
        "pink red red gold",
        "black brown black black black",
        "black red red red red black"
      })
  void what_is_no_code_is_said_to_be_none(String bands) {
    assertEquals(Certainty.NOT_A_CODE, decoded(bands).certainty());
  }

  @Test
  void six_bands_tell_the_temperature_coefficient() {
    BandReading reading = decoded("orange orange black black brown red").readings().get(0);
    assertEquals("330 Ω", reading.value().toString());
    assertEquals(OptionalInt.of(50), reading.ppmPerKelvin());
  }

  @Test
  void pink_is_a_thousandth_since_2016_and_nothing_before() {
    BandSequence bands = BandSequence.parse("red red pink gold").orThrow();
    assertEquals("22 mΩ", ColourCode.decode(bands).readings().get(0).value().toString());
    assertEquals(List.of(), ColourCode.decode(bands, Body.RESISTOR, Edition.OLDER).readings());
  }

  @Test
  void grey_is_narrower_now_than_on_older_charts() {
    BandSequence bands = BandSequence.parse("red red black brown grey").orThrow();
    assertEquals(
        Optional.of(Tolerance.percent("0.01")), toleranceIn(bands, Edition.IEC_60062_2016));
    assertEquals(Optional.of(Tolerance.percent("0.05")), toleranceIn(bands, Edition.OLDER));
  }

  private static Optional<Tolerance> toleranceIn(BandSequence bands, Edition edition) {
    return ColourCode.decodeFromStart(bands, Body.RESISTOR, edition).readings().get(0).tolerance();
  }

  @Test
  void special_fifth_bands_are_named() {
    assertEquals("wirewound", extra("brown black red gold black"));
    assertEquals("fusible", extra("brown black red gold white"));
    assertEquals("failure rate M, 1 % per 1000 h", extra("brown black red gold brown"));
  }

  private static String extra(String bands) {
    return decoded(bands).readings().stream()
        .map(BandReading::extra)
        .filter(extra -> !extra.isEmpty())
        .findFirst()
        .orElse("");
  }

  /** 22 x 10 µH, with and without a tolerance; three bands are no military code. */
  @ParameterizedTest
  @CsvSource({
    "silver red red brown gold, '220 µH, ±5 %'",
    "silver red red brown, '220 µH, ±20 %'",
    "silver red gold red brown, '2.2 µH, ±1 %'",
    "silver red red, ''",
  })
  void a_wide_silver_band_starts_a_military_inductor(String bands, String value) {
    assertEquals(
        value,
        ColourCode.decodeFromStart(
                BandSequence.parse(bands).orThrow(), Body.INDUCTOR, Edition.IEC_60062_2016)
            .readings()
            .stream()
            .filter(reading -> reading.layout() == Layout.INDUCTOR_MILITARY)
            .map(reading -> reading.value() + ", " + reading.tolerance().orElseThrow())
            .findFirst()
            .orElse(""));
  }

  @ParameterizedTest
  @CsvSource({
    "'', no band is named",
    "'- -', no band is named",
    "mauve, '\"mauve\" is not a colour'"
  })
  void what_is_no_band_is_named(String text, String fault) {
    assertEquals(fault, BandSequence.parse(text).fault());
  }

  @ParameterizedTest
  @CsvSource({
    "4700, 5, YE VT RD GD",
    "4700, 1, YE VT BK BN BN",
    "4750, 1, YE VT GN BN BN",
    "4700, 20, YE VT RD",
    "0, 5, BK",
    "0.47, 5, YE VT SR GD",
    "4.7, 10, YE VT GD SR",
    "0.047, 5, YE VT PK GD",
    "4750, 5, YE VT GN BN GD",
    "1000000, 2, BN BK BK YE RD",
    "10, 0.05, BN BK BK GD OG"
  })
  void a_value_is_written_as_bands(String ohms, String percent, String bands) {
    assertEquals(
        "[" + bands + "]",
        BandEncoding.encode(Quantity.of(ohms, Dimension.RESISTANCE), Tolerance.percent(percent))
            .orThrow()
            .toString());
  }

  @ParameterizedTest
  @CsvSource({"4755.5, 1", "4700, 7", "0.0001, 5", "-1, 5", "1E14, 5", "4701, 1"})
  void what_the_code_cannot_write_is_refused(String ohms, String percent) {
    var encoded =
        BandEncoding.encode(Quantity.of(ohms, Dimension.RESISTANCE), Tolerance.percent(percent));
    assertFalse(encoded.isRead(), encoded::toString);
    assertFalse(encoded.remedy().isEmpty());
  }

  private static BandDecoding decoded(String bands) {
    return ColourCode.decode(BandSequence.parse(bands).orThrow());
  }
}
