package lowfirst.sheet.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a line may not end; an underscore stands for what joins two words. */
class UnpartedTest {
  @ParameterizedTest
  @CsvSource({
    "84.5 µF to 114.1 µF, 84.5_µF to 114.1_µF",
    "'667 Ω (±1 %), 4.7 kΩ.', '667_Ω (±1_%), 4.7_kΩ.'",
    "260 °C for 10 s at 9.5 mm from, 260_°C for 10_s at 9.5_mm from",
    "no. 9 and no. 16, no._9 and no._16",
    "orange in band 3; go on, orange in band_3; go on",
    "solder as in step 30, solder as in step_30",
    // Words and numbers that only stand beside one another.
    "3 × 1N4148, 3 × 1N4148",
    "all 8 parts, all 8 parts",
    "pin A 12, pin A 12",
    "a V, a V",
    "2 Vs, 2 Vs",
    "'', ''",
    "5, 5",
    "5  V, 5  V"
  })
  void what_belongs_together_is_joined(String text, String joined) {
    assertEquals(joined.replace('_', Unparted.JOINT), Unparted.joined(text));
  }
}
