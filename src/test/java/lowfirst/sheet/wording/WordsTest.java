package lowfirst.sheet.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.board.SampleBoards;
import lowfirst.part.PartKind;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.sheet.document.Said;
import lowfirst.sorting.Meter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists, amounts and readings in words. */
class WordsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "R1 | R1",
        "R1 R2 | R1, R2",
        "R1 R2 R3 | R1-R3",
        "R1 R2 R3 R5 R6 | R1-R3, R5, R6",
        "R3 R2 R1 | R3, R2, R1",
        "R9 R10 R11 C12 | R9-R11, C12",
        "R1 R02 R3 | R1, R02, R3",
        "R1 R2 R2 R3 | R1, R2, R2, R3",
        "IN OUT R1A | IN, OUT, R1A",
      })
  void runs_of_three_and_more_designators_are_joined(String names, String words) {
    assertEquals(
        words, DesignatorWords.list(Stream.of(names.split(" ")).map(Designator::of).toList()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "R12: 4.7 kΩ ±1 % | R 12: 4.7 kiloohms plus or minus 1 per cent",
        "100 nF at 63V | 100 nanofarads at 63 volts",
        "3 × 2.5 mm | 3 times 2.5 millimetres",
        "5 mA, 5 MW | 5 milliamperes, 5 megawatts",
        "10–20 Hz | 10 to 20 hertz",
        "4 Values | 4 Values",
      })
  void a_voice_says_units_in_full_and_figures_apart(String text, String spoken) {
    assertEquals(spoken, Spoken.of(text));
  }

  @ParameterizedTest
  @CsvSource({"0.001, 1000 µF", "0.0047, 4700 µF", "0.00047, 470 µF", "1e-7, 100 nF"})
  void capacitors_are_in_microfarads_however_large(String farads, String words) {
    assertEquals(words, MarkingWords.value(Quantity.of(farads, Dimension.CAPACITANCE)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "RESISTOR | 4k7 | '' ",
        "MOSFET | BP-N60L | printed BP-N60L",
        "LED | red | ''",
        "UNKNOWN | X1 | ''",
        "SOCKET | 8-pin | ''",
      })
  void what_stands_on_a_part_is_said_where_it_bears_anything(
      PartKind kind, String text, String words) {
    assertEquals(
        words.equals("''") ? "" : words, MarkingWords.of(SampleBoards.type(kind, text, "")));
  }

  @Test
  void a_reading_to_accept_is_said_with_what_it_rests_on() {
    Kit kit =
        Said.kit(
            "kit.properties",
            "meter = 0 % + 3 of 1000\n",
            "bom.csv",
            "designators,value,tolerance\nR1,50,10 %\nR2,5,\nR3,10,2 %\nD1,1N4148,\nF1,2 A fuse,\nU1,NE555,\n");
    // 3 counts of 0.1 Ω are w = 0.346 Ω about the limits of 45 and 55 Ω.
    assertEquals(
        "44.6 Ω to 55.4 Ω (±10 % and the meter's own error); surely within ±10 % from 45.4 Ω to"
            + " 54.6 Ω",
        reading(kit, 0));
    assertTrue(reading(kit, 1).contains("±5 %, assumed"), reading(kit, 1));
    assertTrue(reading(kit, 1).endsWith("; take off what the joined probes read"), reading(kit, 1));
    assertTrue(reading(kit, 3).startsWith("diode test: about 0.5 to 0.8 V"), reading(kit, 3));
    assertEquals("next to 0 Ω", reading(kit, 4));
    assertEquals("", reading(kit, 5));
  }

  /**
   * 3 counts of 10 pF, the last digit of 10 nF in 1000 counts, are w = 35 pF about 20.9 and 23.1.
   */
  @Test
  void a_value_below_what_the_meter_shows_has_no_lower_reading() {
    Kit kit =
        Said.kit(
            "kit.properties",
            "meter capacitance = 0 % + 3 of 1000\n",
            "bom.csv",
            "designators,value,tolerance\nC1,22p,5 %\n");
    assertEquals(
        "up to 60 pF (±5 % and the meter's own error); this meter can't prove ±5 %",
        reading(kit, 0));
  }

  private static String reading(Kit kit, int item) {
    return ReadingWords.of(
        kit.boards().get(0).items().get(item).partType(), Meter.of(kit.settings()));
  }
}
