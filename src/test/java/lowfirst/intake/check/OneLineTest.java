package lowfirst.intake.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.intake.KitReading;
import lowfirst.intake.KitTables;
import lowfirst.part.PartKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One BOM line held against itself. The part numbers are made up as makers put them together. */
class OneLineTest {
  private static List<Problem> said(String name, String value, String number, String description) {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "Reference,Value,Part Number,Description\n%s,%s,%s,%s\n"
                .formatted(name, value, number, description));
    return reading.problems().stream()
        .filter(problem -> problem.kind() == Kind.VALUE_DISAGREES)
        .toList();
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "R1 R2 RV1, 1",
    "R1 C2, 1",
    "C1 Q2, 1",
    "R1 R2, 0",
    "D1 LED2, 0",
    "J1 JP2, 0",
    // of letters that nobody knows, nothing is said
    "R1 RB2, 0"
  })
  void letters_of_different_parts_in_one_line_are_said(String names, int problems) {
    assertEquals(problems, said(names, "10k", "", "").size());
  }

  @ParameterizedTest(name = "{1} and {2}")
  @CsvSource({
    // letter codes after IEC 60062, with what makers put around them
    "R1, 10k, XYF-25-4K7",
    "R1, 10k, XY0805FQ-074K7L",
    "R1, 4k7, XF14JT47K0",
    "R1, 470, QQ25S-4R7",
    "R1, 10k, 1M-XY",
    "Q1, BC547, IRF540N",
    "Q1, BC547B, BC557B",
    "U1, TL072, TL082CP",
    "D1, 1N4148, 1N4007",
    "U2, 7805, LM7812CT",
    "U1, PIC18LF2XK45, PIC16LF25K45-I/P"
  })
  void a_value_and_a_part_number_of_other_types_are_said(String name, String value, String number) {
    List<Problem> said = said(name, value, number, "");
    assertEquals(1, said.size(), said.toString());
    assertTrue(said.get(0).toString().contains(number), said.toString());
  }

  @ParameterizedTest(name = "{1} and {2}")
  @CsvSource({
    "R1, 4k7, XYF-25-4K7",
    "R1, 4.7k, XY0805FQ-074K7L",
    "R1, 10k, XY0805FQ-0710KL",
    "R1, 4k7, XF14JT4K70",
    "R1, 1k, XY-1K00-F",
    "R1, 100, QQ01000101000JR500",
    "R1, 4k7, XX-472J",
    "R1, 4.99k, XX-4991F",
    "R1, 0.01, XX2512R0100FEA",
    // no code stands out
    "R1, 10k, 71-XY25",
    "R1, 10k, C25804",
    "Q1, 2N3904, MMBT3904",
    "Q1, BC547, BC547BTA",
    "U1, 74HC595, SN74HC595N",
    "U1, 7805, L7805CV",
    "U1, NE555, TLC555CP",
    "U1, PIC18LF2XK45, PIC18LF25K45-I/P",
    "U1, ATTINYx4, ATTINY84A-PU",
    "Q1, BC547, 4711",
    "Q1, BC547, see the list"
  })
  void a_part_number_that_says_the_same_or_nothing_is_no_fault(
      String name, String value, String number) {
    assertEquals(List.of(), said(name, value, number, ""));
  }

  @ParameterizedTest(name = "{0} and {1}")
  @CsvSource({
    "1N4001, ショットキーダイオード",
    "1N4148, Schottky diode",
    "UF4007, Zener 5V1",
    "1N5819, zener diode",
    "BC547, N-channel MOSFET",
    "IRF540, NPN transistor"
  })
  void a_description_of_another_kind_is_said(String number, String description) {
    assertEquals(1, said(number.startsWith("1") ? "D1" : "X1", number, "", description).size());
  }

  @ParameterizedTest(name = "{0} and {1}")
  @CsvSource({
    "D1, 1N4001, rectifier diode",
    "D1, 1N5819, Schottky diode",
    "D1, 1N4148, LED protection diode",
    "Q1, BC547, NPN transistor",
    "Q1, BC547, MOSFET driver",
    "D1, 1N6263, Schottky"
  })
  void a_description_that_fits_is_no_fault(String name, String number, String description) {
    assertEquals(List.of(), said(name, number, "", description));
  }

  @Test
  void the_type_number_of_a_rectifier_tells_more_than_words_about_it() {
    for (String words : List.of("ショットキー", "Zener", "LED protection diode")) {
      KitReading reading =
          KitTables.read("bom.csv", "Reference,Value,Description\nD1,1N4001," + words);
      assertEquals(
          PartKind.DIODE, reading.kit().boards().get(0).items().get(0).partType().kind(), words);
    }
  }
}
