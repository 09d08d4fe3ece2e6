package lowfirst.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Optional;
import lowfirst.board.Settings;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.quantity.Tolerance;
import lowfirst.sorting.Meter;
import lowfirst.sorting.MeterLimits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a person typed off the meter: 4.7 kΩ ±5 % lies from 4465 to 4935 Ω, and a meter of 1 % and 2
 * counts guards the ends by 2 (44.65 + 2)/√3 = 54 Ω and 2 (49.35 + 2)/√3 = 59 Ω.
 */
class MeasuredReadingTest {
  private static final MeterLimits LIMITS =
      MeterLimits.of(
          Quantity.of("4700", Dimension.RESISTANCE),
          Tolerance.percent("5"),
          Source.kit("the BOM"),
          Meter.of(new Settings("kit", Optional.empty(), "1 % + 2 of 6000", "", "")));

  private static Reading<MeasuredReading> reading(String typed) {
    return MeasuredReading.parse(typed, LIMITS);
  }

  @ParameterizedTest
  @CsvSource({
    "4k7, ACCEPT, 4.7 kΩ",
    "4.68 kOhm, ACCEPT, 4.68 kΩ",
    "4480, CANNOT_TELL, 4.48 kΩ",
    "4.2k, REJECT, 4.2 kΩ",
    "5.1k, REJECT, 5.1 kΩ"
  })
  void a_reading_is_judged_against_the_part_in_the_hand(
      String typed, MeterLimits.Judgement judgement, String value) {
    MeasuredReading found = reading(typed).orThrow();
    assertEquals(judgement, found.judgement());
    assertEquals(value, found.value().toString());
  }

  @ParameterizedTest
  @CsvSource({"OL", "4.7 nF", "' hm '"})
  void what_is_no_resistance_is_no_reading_of_a_resistor(String typed) {
    Reading<MeasuredReading> found = reading(typed);
    assertFalse(found.isRead());
    assertEquals("\"" + typed.strip() + "\" is no reading", found.fault());
    assertEquals("type it as the meter shows it, such as 4.7 kΩ", found.remedy());
  }
}
