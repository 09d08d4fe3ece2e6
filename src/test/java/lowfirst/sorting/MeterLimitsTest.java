package lowfirst.sorting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lowfirst.PublishedTable;
import lowfirst.board.Settings;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.quantity.Tolerance;
import lowfirst.sorting.MeterLimits.Judgement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeterLimitsTest {

  static Stream<Map<String, String>> accuracies() {
    return PublishedTable.rows("meter-accuracy.csv").stream();
  }

  static Stream<Map<String, String>> decisions() {
    return PublishedTable.rows("guard-band.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("accuracies")
  void a_meter_is_off_by_as_much_as_its_maker_works_out(Map<String, String> row) {
    var accuracy = new MeterAccuracy(number(row, "percent"), (int) number(row, "counts"), 6000);
    assertEquals(
        number(row, "limit"),
        accuracy.limit(number(row, "reading"), number(row, "resolution")),
        1e-12);
  }

  /** The worked example has a guard band that moves with the reading; ours is solved for it. */
  @ParameterizedTest
  @MethodSource("decisions")
  void the_worked_example_is_decided_as_published(Map<String, String> row) {
    Meter meter = meter("0.5 % + 2 of 6000");
    double reading = number(row, "reading");
    double resolution = meter.resolution(reading, Dimension.RESISTANCE).doubleValue();
    assertEquals(1, resolution);
    double a = meter.ohms().limit(reading, resolution);
    assertEquals(number(row, "a"), a, 0.0005);
    double u = a / Math.sqrt(3);
    assertEquals(number(row, "u"), u, 0.00005);
    assertEquals(number(row, "w"), 2 * u, 0.0001);

    MeterLimits limits = limits("4700", "5", meter);
    Judgement expected =
        row.get("guarded").equals("pass") ? Judgement.ACCEPT : Judgement.CANNOT_TELL;
    assertEquals(expected, limits.judge(ohms(row.get("reading"))));
    if (!row.get("accept low").isEmpty()) {
      boolean inside =
          reading >= number(row, "accept low") && reading <= number(row, "accept high");
      assertEquals(inside, limits.accept().orElseThrow().includes(ohms(row.get("reading"))));
    }
  }

  private static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /** Law: the ends of the band are the outermost readings that the guard rule accepts. */
  @ParameterizedTest
  @CsvSource({
    "4700, 5, 0.5 % + 2 of 6000",
    "4700, 1, 0.5 % + 2 of 6000",
    "10, 5, 0.5 % + 2 of 6000",
    "5900, 5, 0.5 % + 2 of 6000",
    "1900, 5, 0.8 % + 3 of 2000",
    "1000000, 1, 0.09 % + 5 of 60000",
    "220, 20, 1 % + 5 of 2000"
  })
  void every_reading_of_the_display_is_judged_by_the_guard_rule(
      String nominal, String percent, String accuracy) {
    Meter meter = meter(accuracy);
    MeterLimits limits = limits(nominal, percent, meter);
    double value = Double.parseDouble(nominal);
    double lowest = value * (1 - Double.parseDouble(percent) / 100);
    double highest = value * (1 + Double.parseDouble(percent) / 100);
    double step = meter.resolution(value, Dimension.RESISTANCE).doubleValue();
    for (double reading = value * 0.7; reading < value * 1.3; reading += step) {
      double resolution = meter.resolution(reading, Dimension.RESISTANCE).doubleValue();
      double shown = Math.rint(reading / resolution) * resolution;
      double w = 2 * meter.ohms().limit(shown, resolution) / Math.sqrt(3);
      Judgement expected =
          lowest + w <= shown + 1e-9 && shown - 1e-9 <= highest - w
              ? Judgement.ACCEPT
              : shown < lowest - w - resolution || shown > highest + w + resolution
                  ? Judgement.REJECT
                  : Judgement.CANNOT_TELL;
      Judgement judged = limits.judge(displayed(shown));
      boolean nearTheEdge =
          Math.min(Math.abs(shown - lowest + w), Math.abs(shown - highest - w)) <= 2 * resolution;
      boolean onAnotherRange = resolution != step;
      if (!nearTheEdge && !onAnotherRange) {
        assertEquals(expected, judged, nominal + " reads " + shown);
      }
      if (judged == Judgement.ACCEPT) {
        assertTrue(shown - w >= lowest - 1e-6 && shown + w <= highest + 1e-6, "accepts " + shown);
      }
      if (judged == Judgement.REJECT) {
        assertTrue(shown + w < lowest + 1e-6 || shown - w > highest - 1e-6, "rejects " + shown);
      }
    }
  }

  /** A display shows no binary rounding. */
  private static Quantity displayed(double shown) {
    return new Quantity(
        new BigDecimal(shown).setScale(3, java.math.RoundingMode.HALF_EVEN), Dimension.RESISTANCE);
  }

  @Test
  void a_meter_too_coarse_for_the_tolerance_accepts_nothing_and_says_so() {
    MeterLimits limits = limits("1", "1", meter("0.5 % + 2 of 6000"));
    assertEquals(Optional.empty(), limits.accept());
    assertEquals(Judgement.CANNOT_TELL, limits.judge(ohms("1")));
    assertEquals(Judgement.REJECT, limits.judge(ohms("10")));
    assertTrue(limits.leadsMatter());
  }

  @Test
  void neighbours_in_E96_at_one_per_cent_are_not_told_apart() {
    Meter meter = meter("0.5 % + 2 of 6000");
    assertFalse(limits("4640", "1", meter).tellsApartFrom(limits("4750", "1", meter)));
    assertTrue(limits("4700", "5", meter).tellsApartFrom(limits("47000", "5", meter)));
  }

  /**
   * By hand: 3 counts of 0.1 Ω, so w = 2 · 0.3/√3 = 0.346 Ω. 50 Ω ± 10 % is 45 to 55 Ω: accepted
   * from 45.346 up to 54.654, rejected below 44.654 and above 55.346, as tenths inwards or
   * outwards.
   */
  @ParameterizedTest
  @CsvSource({
    "44.5, REJECT",
    "44.6, CANNOT_TELL",
    "45.3, CANNOT_TELL",
    "45.4, ACCEPT",
    "54.6, ACCEPT",
    "54.7, CANNOT_TELL",
    "55.4, CANNOT_TELL",
    "55.5, REJECT",
  })
  void a_reading_on_the_edge_is_judged_with_the_inner_side(String reading, Judgement judgement) {
    MeterLimits limits = limits("50", "10", meter("0 % + 3 of 1000"));
    assertEquals(judgement, limits.judge(ohms(reading)));
  }

  /** 62 Ω is rejected below 55.8 - 0.346, shown 55.4, which 50 Ω may read too; 63 Ω below 56.3. */
  @Test
  void parts_that_share_a_single_reading_are_not_told_apart() {
    Meter meter = meter("0 % + 3 of 1000");
    MeterLimits low = limits("50", "10", meter);
    assertFalse(low.tellsApartFrom(limits("62", "10", meter)));
    assertFalse(limits("62", "10", meter).tellsApartFrom(low));
    assertTrue(low.tellsApartFrom(limits("63", "10", meter)));
    assertTrue(limits("63", "10", meter).tellsApartFrom(low));
  }

  /** 10 Ω ± 2 % and w = 0.115 Ω: from 9.915 to 10.085 only 10.0 is shown. */
  @Test
  void a_single_reading_may_be_all_that_is_accepted() {
    MeterLimits limits = limits("10", "2", meter("0 % + 1 of 1000"));
    assertEquals(Judgement.ACCEPT, limits.judge(ohms("10.0")));
    assertEquals(Judgement.CANNOT_TELL, limits.judge(ohms("9.9")));
    assertEquals(Judgement.CANNOT_TELL, limits.judge(ohms("10.1")));
  }

  @ParameterizedTest
  @CsvSource({"600, 0.1", "600.1, 1", "-600.1, 1", "6000, 1", "6001, 10", "0, 0.1"})
  void a_reading_is_shown_on_the_finest_range_whose_end_is_not_passed(
      double reading, String resolution) {
    assertEquals(
        0,
        new BigDecimal(resolution)
            .compareTo(meter("0.5 % + 2 of 6000").resolution(reading, Dimension.RESISTANCE)));
  }

  @Test
  void an_accuracy_may_be_nothing_but_not_less_and_a_display_counts_to_a_thousand_at_least() {
    assertEquals(new MeterAccuracy(0, 0, 1000), MeterAccuracy.parse("0 % + 0 of 1000").orThrow());
    assertFalse(MeterAccuracy.parse("1 % + 2 of 0999").isRead());
    assertThrows(IllegalArgumentException.class, () -> new MeterAccuracy(-0.1, 0, 1000));
    assertThrows(IllegalArgumentException.class, () -> new MeterAccuracy(Double.NaN, 0, 1000));
    assertThrows(IllegalArgumentException.class, () -> new MeterAccuracy(0, -1, 1000));
    assertThrows(IllegalArgumentException.class, () -> new MeterAccuracy(0, 0, 999));
  }

  @Test
  void a_part_without_tolerance_is_judged_by_an_assumption_that_says_so() {
    Meter meter = meter("");
    MeterLimits limits = MeterLimits.of(resistor(Optional.empty()), meter).orElseThrow();
    assertEquals(Source.Origin.ASSUMED, limits.toleranceSource().origin());
    assertEquals(Tolerance.percent("5"), limits.tolerance());
    assertEquals(Source.Origin.ASSUMED, meter.ohmsSource().origin());
    assertTrue(meter.ohmsSource().text().contains("kit.properties"));
  }

  private static PartType resistor(Optional<Tolerance> tolerance) {
    return new PartType(
        PartKind.RESISTOR,
        "4k7",
        Optional.of(ohms("4700")),
        tolerance,
        Optional.empty(),
        Optional.empty(),
        "",
        "");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0.5 % + 2 of 6000",
        "0.5%+2 of 6000",
        "±(0.5 % + 2 digits) of 6000 counts",
        "0,5 % + 2 dgt of 6000"
      })
  void an_accuracy_is_read_as_manuals_write_it(String text) {
    assertEquals(new MeterAccuracy(0.5, 2, 6000), MeterAccuracy.parse(text).orThrow());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "good", "0.5", "0.5 %", "0.5 % + 2", "-1 % + 2 of 6000", "1 % + 2 of 1"})
  void other_texts_are_no_accuracy(String text) {
    assertFalse(MeterAccuracy.parse(text).isRead());
  }

  @Test
  void an_accuracy_reads_back_what_it_writes() {
    var accuracy = new MeterAccuracy(0.8, 3, 2000);
    assertEquals(accuracy, MeterAccuracy.parse(accuracy.toString()).orThrow());
  }

  private static MeterLimits limits(String ohms, String percent, Meter meter) {
    return MeterLimits.of(ohms(ohms), Tolerance.percent(percent), Source.kit("the BOM"), meter);
  }

  private static Quantity ohms(String amount) {
    return Quantity.of(amount, Dimension.RESISTANCE);
  }

  static Meter meter(String accuracy) {
    return Meter.of(new Settings("kit", Optional.empty(), accuracy, "", ""));
  }
}
