package lowfirst.intake.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.board.Designator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DesignatorListTest {

  @ParameterizedTest(name = "{0} lists {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          R1                          | R1
          R1,R2                       | R1 R2
          Q1, 2, 3 and 5              | Q1 Q2 Q3 Q5
          Q3, 3                       | Q3 3
          Q3, 2                       | Q3 2
          1N1, 2                      | 1N1 2
          Test3, 4                    | Test3 Test4
          ß, 2                        | ß 2
          ß1, 2                       | ß1 ß2
          R1, 3-5, R9                 | R1 R3 R4 R5 R9
          R1, R2 ,R3                  | R1 R2 R3
          R4;R5;R6                    | R4 R5 R6
          C4 C5 C6 C8                 | C4 C5 C6 C8
          R1-R4, R7                   | R1 R2 R3 R4 R7
          R1 - R3                     | R1 R2 R3
          R1 -- R3                    | R1 R2 R3
          R1---R3, R7                 | R1 R2 R3 R7
          R1>R3                       | R1 R2 R3
          R[1-3]                      | R1 R2 R3
          R{1..3}, C4                 | R1 R2 R3 C4
          R[1,2,5]                    | R1 R2 R5
          LED 1-3                     | LED1 LED2 LED3
          R1/2/5                      | R1 R2 R5
          R1&2                        | R1 R2
          R1.R2.R5                    | R1 R2 R5
          A1.R5                       | A1.R5
          ~~R4~~, R5                  | R4 R5
          IC1 IC358                   | IC1 IC358
          U$1-3                       | U$1 U$2 U$3
          U$1-U$3                     | U$1 U$2 U$3
          LM358-1, LM358-2            | LM358-1 LM358-2
          PSU_5V,_3W                  | PSU_5V,_3W
          R1-R3/R6                    | R1 R2 R3 R6
          U1A-D                       | U1A U1B U1C U1D
          IC1a/b                      | IC1a IC1b
          D1A-K                       | D1A-K
          (R1, R2)                    | R1 R2
          [R1; R2]                    | R1 R2
          "R1","R2"                   | R1 R2
          R1*, R2                     | R1 R2
          J1-1, J1-2                  | J1-1 J1-2
          R9–R11                      | R9 R10 R11
          R1..R3                      | R1 R2 R3
          R1 to R3                    | R1 R2 R3
          R1-3                        | R1 R2 R3
          R3-R3                       | R3
          R1-R3 R7                    | R1 R2 R3 R7
          R1 - R3 R7                  | R1 R2 R3 R7
          'C6, '                      | C6
          L1-In                       | L1-In
          L1-In, L2-Out               | L1-In L2-Out
          In                          | In
          Tuner_2                     | Tuner_2
          EPROM-SOCKEL                | EPROM-SOCKEL
          In/Out                      | In/Out
          C27C28                      | C27 C28
          C1-                         | C1-
          U?                          | U?
          REF**                       | REF**
          C  2,C  3                   | C2 C3
          1N1                         | 1N1
          SW1_COUNTER,SW2_RESET       | SW1_COUNTER SW2_RESET
          J3,D1                       | J3 D1
          Q1A                         | Q1A
          2x C1, C2                   | C1 C2
          2 x C1 C2                   | C1 C2
          (2) C1, C2                  | C1 C2
          9x C1-C9                    | C1 C2 C3 C4 C5 C6 C7 C8 C9
          C1, C2 (2x)                 | C1 C2
          C1, C2(x2)                  | C1 C2
          C1, C2, 2x                  | C1 C2
          C1 X2                       | C1 X2
          2X1                         | 2X1
          """)
  void a_cell_lists_its_designators_however_they_are_written(String cell, String expected) {
    DesignatorList list = DesignatorList.parse(cell);
    assertEquals(
        expected, String.join(" ", list.designators().stream().map(Designator::text).toList()));
    assertEquals("", list.otherText());
    assertEquals(List.of(), list.faults());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "TP1 (test), TP1, test",
    "C2(100n), C2, 100n",
    "'C2(100n), C3 (220n)', C2 C3, '100n, 220n'",
    "C31 Do-Not-Install, C31, Do-Not-Install",
    "C31 not fitted, C31, not fitted",
    "C31 see text, '', C31 see text",
    "R1 - 4.7k, R1, 4.7k",
    "R1 - 10k - 1/4W - 5%, R1, 10k - 1/4W - 5%",
    "C3 | 100nF | 63V, C3, 100nF | 63V",
    "Q1 / BC547 / NPN, Q1, BC547 / NPN",
    "R1 - R3, R1 R2 R3, ''",
    "R1 / R3, R1 R3, ''",
    "'R1 - R2,R5', R1 R2 R5, ''"
  })
  void a_remark_on_a_designator_is_kept(String cell, String names, String remark) {
    DesignatorList list = DesignatorList.parse(cell);
    assertEquals(
        names, String.join(" ", list.designators().stream().map(Designator::text).toList()));
    assertEquals(remark, list.otherText());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "'R1, R2, etc.', R1 R2, '\"etc.\" stands for designators that are not named'",
    "'R1, R2, ...', R1 R2, '\"...\" stands for designators that are not named'",
    "R1=10k, R1, '\"R1=10k\" holds a value beside the designator'",
  })
  void what_is_no_name_of_a_part_is_a_fault(String cell, String names, String fault) {
    DesignatorList list = DesignatorList.parse(cell);
    assertEquals(
        names, String.join(" ", list.designators().stream().map(Designator::text).toList()));
    assertEquals(List.of(fault), list.faults());
  }

  /** Letters of a kind of part tell, behind a stroke where numbers would stand. */
  @ParameterizedTest
  @CsvSource({
    "SW_A SW_B, SW_A SW_B",
    "C1 C_BULK, C1 C_BULK",
    "C_BLK1/C_BLK2, C_BLK1 C_BLK2",
    "LED0-2 LED_OK, LED0 LED1 LED2 LED_OK",
  })
  void names_with_a_stroke_stand_side_by_side(String cell, String names) {
    DesignatorList list = DesignatorList.parse(cell);
    assertEquals(
        names, String.join(" ", list.designators().stream().map(Designator::text).toList()));
  }

  @ParameterizedTest
  @CsvSource({
    "Pot Knobs",
    "Push Button Cap",
    "MIC HEADER (for enclosure MIC mounting)",
    "MIC_PLUG (for enclosure MIC mounting)",
    "SW_A HOLD"
  })
  void words_in_a_row_are_the_name_of_an_accessory_not_designators(String cell) {
    DesignatorList list = DesignatorList.parse(cell);
    assertEquals(List.of(), list.designators());
    assertEquals(cell, list.otherText());
  }

  @ParameterizedTest
  @CsvSource({"''", "-", "n/a", "none"})
  void a_cell_may_say_that_there_is_none(String cell) {
    DesignatorList list = DesignatorList.parse(cell);
    assertEquals(List.of(), list.designators());
    assertEquals("", list.otherText());
  }

  @Test
  void a_range_that_runs_backwards_is_a_fault_and_the_rest_still_counts() {
    DesignatorList list = DesignatorList.parse("R9-R4, R7");
    assertEquals(List.of(Designator.of("R7")), list.designators());
    assertEquals(List.of("the range \"R9-R4\" runs from 9 to 4"), list.faults());
  }

  @Test
  void a_range_of_millions_is_a_fault_and_takes_no_memory() {
    DesignatorList list = DesignatorList.parse("R1-R999999");
    assertEquals(List.of(), list.designators());
    assertEquals(1, list.faults().size());
    assertEquals(2000, DesignatorList.parse("R2-R2001").designators().size());
    assertEquals(1, DesignatorList.parse("R2-R2002").faults().size());
  }

  @Test
  void thin_and_hard_blanks_are_blanks() {
    assertEquals(
        List.of("R1", "R2", "R3", "R4", "R5"),
        DesignatorList.parse("R1,\u2009R2\u202fR3,\u00a0R4\u2009\u2013\u2009R5")
            .designators()
            .stream()
            .map(Designator::text)
            .toList());
  }

  @Test
  void a_designator_has_forty_signs_at_most() {
    String longest = "X".repeat(39) + "1";
    assertEquals(List.of(Designator.of(longest)), DesignatorList.parse(longest).designators());
    assertEquals(
        List.of("\"X" + longest.substring(0, 39) + "...\" is too long to be a designator"),
        DesignatorList.parse("X" + longest).faults());
  }

  @Test
  void places_that_hold_nothing_are_counted() {
    assertEquals(2, DesignatorList.parse(",,").empties());
    assertEquals(0, DesignatorList.parse("R1,").empties());
  }

  @Test
  void what_was_taken_for_granted_is_said() {
    assertEquals(
        List.of("\"C27C28\" was read as several designators run together"),
        DesignatorList.parse("C27C28").remarks());
    assertEquals(List.of("\"C  2\" was read as C2"), DesignatorList.parse("C  2").remarks());
    assertTrue(DesignatorList.parse("R1-R4").remarks().isEmpty());
    assertEquals(
        List.of("\"R3-5\" was read as a range of 3 designators"),
        DesignatorList.parse("R3-5").remarks());
  }

  @Test
  void a_placement_is_spelt_as_the_bom_spells_it() {
    assertEquals("C2", DesignatorList.spelt("C  2"));
    assertEquals("Rotery Encoder", DesignatorList.spelt("Rotery Encoder"));
    assertEquals("47uf 35v", DesignatorList.spelt("47uf 35v"));
  }

  @Test
  void a_type_number_behind_a_designator_is_a_word_about_it_and_that_is_said() {
    DesignatorList list = DesignatorList.parse("IC1 ZX358N DIP8");
    assertEquals("[IC1]", list.designators().toString());
    assertEquals("ZX358N DIP8", list.otherText());
    assertEquals(List.of("\"IC1 ZX358N DIP8\" was read as IC1 and words about it"), list.remarks());
  }
}
