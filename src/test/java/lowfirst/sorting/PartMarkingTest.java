package lowfirst.sorting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import lowfirst.marking.BandReading;
import lowfirst.marking.BandSequence;
import lowfirst.marking.ColourCode;
import lowfirst.marking.PrintedCode;
import lowfirst.marking.PrintedReading;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.marking.Series;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PartMarkingTest {

  @ParameterizedTest
  @CsvSource({
    "4k7 5%, [YE VT RD GD]",
    "4k7 1%, [YE VT BK BN BN] [YE VT RD BN]",
    "4k7, [YE VT RD GD] [YE VT BK BN BN]",
    "4k75 1%, [YE VT GN BN BN]",
    "0R, [BK]",
    "10k 20%, [BN BK OG]"
  })
  void a_resistor_carries_bands(String text, String bands) {
    PartMarking marking = PartMarking.of(SmallKit.resistor(text));
    assertEquals(
        bands, String.join(" ", marking.bands().stream().map(BandSequence::toString).toList()));
    assertEquals(
        !text.contains("%") && !text.equals("0R"),
        marking.toleranceAssumed() && !text.equals("0R"));
  }

  @Test
  void a_power_resistor_carries_text() {
    assertEquals(List.of("5W10RJ"), PartMarking.of(SmallKit.resistor("10R 5% 5W")).texts());
  }

  @Test
  void a_ceramic_capacitor_carries_its_digit_code_first() {
    assertEquals(List.of("104", "100n"), PartMarking.of(SmallKit.ceramic("100n")).texts());
    assertEquals(List.of("220", "22p", "22"), PartMarking.of(SmallKit.ceramic("22p")).texts());
    assertEquals("104K", PartMarking.of(SmallKit.ceramic("100n 10%")).texts().get(0));
  }

  @Test
  void an_electrolytic_capacitor_carries_value_and_voltage_in_full() {
    PartType type =
        SmallKit.valued(PartKind.ELECTROLYTIC_CAPACITOR, Dimension.CAPACITANCE, "1500u/100V");
    assertEquals(List.of("1500 µF 100 V"), PartMarking.of(type).texts());
  }

  @Test
  void a_small_diode_may_leave_out_1N() {
    assertEquals(
        List.of("1N4148", "4148"),
        PartMarking.of(SmallKit.numbered(PartKind.DIODE, "1N4148")).texts());
  }

  /** Law: whatever is expected on a part reads back as that part. */
  @Test
  void every_expected_marking_of_every_shop_value_reads_back() {
    for (int member : Series.E24.members()) {
      for (int exponent = -1; exponent <= 5; exponent++) {
        var value =
            new Quantity(
                BigDecimal.valueOf(member).scaleByPowerOfTen(exponent), Dimension.RESISTANCE);
        for (String percent : List.of("1", "2", "5", "10", "20")) {
          Tolerance tolerance = Tolerance.percent(percent);
          var type =
              new PartType(
                  PartKind.RESISTOR,
                  "",
                  Optional.of(value),
                  Optional.of(tolerance),
                  Optional.empty(),
                  Optional.empty(),
                  "",
                  "");
          for (BandSequence bands : PartMarking.of(type).bands()) {
            assertTrue(
                ColourCode.decode(bands).readings().stream()
                    .anyMatch(reading -> says(reading, value, tolerance)),
                () -> value + " as " + bands);
          }
        }
      }
    }
  }

  private static boolean says(BandReading reading, Quantity value, Tolerance tolerance) {
    return reading.value().sameAs(value)
        && reading.tolerance().filter(tolerance::equals).isPresent();
  }

  @Test
  void every_expected_print_of_every_capacitor_reads_back() {
    for (int member : Series.E24.members()) {
      for (int exponent = -12; exponent <= -7; exponent++) {
        var value =
            new Quantity(
                BigDecimal.valueOf(member).scaleByPowerOfTen(exponent), Dimension.CAPACITANCE);
        for (PartKind kind : List.of(PartKind.CERAMIC_CAPACITOR, PartKind.FILM_CAPACITOR)) {
          var type =
              new PartType(
                  kind,
                  "",
                  Optional.of(value),
                  Optional.of(Tolerance.percent("5")),
                  Optional.of(Quantity.of("63", Dimension.VOLTAGE)),
                  Optional.empty(),
                  "",
                  "");
          for (String print : PartMarking.of(type).texts()) {
            assertTrue(
                PrintedCode.readings(print).stream()
                    .filter(reading -> reading.on() == Carrier.CAPACITOR)
                    .map(PrintedReading::value)
                    .flatMap(Optional::stream)
                    .anyMatch(value::sameAs),
                () -> value + " as " + print);
          }
        }
      }
    }
  }
}
