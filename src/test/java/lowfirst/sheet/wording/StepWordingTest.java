package lowfirst.sheet.wording;

import static lowfirst.board.SampleBoards.type;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lowfirst.assembly.Rule;
import lowfirst.assembly.Step;
import lowfirst.board.Designator;
import lowfirst.board.Settings;
import lowfirst.board.Side;
import lowfirst.part.HeatLimit;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;
import lowfirst.sorting.Meter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a step says to the hand. */
class StepWordingTest {

  @Test
  void a_stripe_is_minus_on_an_aluminium_capacitor_and_plus_on_a_tantalum_one() {
    String aluminium = StepWording.wayRound(step(type(PartKind.ELECTROLYTIC_CAPACITOR, "", "")));
    String tantalum = StepWording.wayRound(step(type(PartKind.TANTALUM_CAPACITOR, "", "")));
    assertTrue(aluminium.contains("the stripe on the can marks minus"), aluminium);
    assertTrue(tantalum.contains("the stripe or + and the longer lead are plus"), tantalum);
  }

  @Test
  void the_arrows_on_an_axial_can_point_to_minus() {
    String words =
        StepWording.wayRound(
            step(type(PartKind.ELECTROLYTIC_CAPACITOR, "", "CP_Axial_L18.0mm_D6.5mm")));
    assertTrue(words.contains("arrows point to the minus lead"), words);
  }

  @ParameterizedTest
  @CsvSource({"2N3904, E-B-C", "2SC1815, E-C-B", "BC547, C-B-E"})
  void the_same_small_transistor_outline_comes_with_three_pin_orders(String number, String order) {
    String words =
        StepWording.wayRound(step(type(PartKind.BIPOLAR_TRANSISTOR, number, "TO-92_Inline")));
    assertTrue(words.contains(order), words);
    assertTrue(words.contains("check it in the sheet"), words);
  }

  @Test
  void the_letters_of_a_bipolar_transistor_are_never_told_of_a_mosfet() {
    String words = StepWording.wayRound(step(type(PartKind.MOSFET, "2N7000", "TO-92")));
    assertFalse(words.contains("E-B-C"), words);
    assertTrue(words.contains("check it in the sheet"), words);
  }

  /** The body decides, whatever is inside. */
  @ParameterizedTest
  @CsvSource({
    "INTEGRATED_CIRCUIT, TO-220-5_P3.4x3.7mm_StaggerOdd_Lead3.8mm_Vertical",
    "SCHOTTKY_DIODE, TO-220-2",
    "REGULATOR, Package_TO_SOT_THT:TO-220-3_Vertical"
  })
  void a_body_with_a_tab_is_told_by_its_tab(PartKind kind, String body) {
    Step step = step(type(kind, "ABC", body));
    assertTrue(StepWording.wayRound(step).startsWith("the metal tab to"), kind.words());
    assertTrue(StepWording.seat(step).startsWith("upright, leads not forced"), kind.words());
    assertTrue(StepWording.solder(step).contains("trim"), kind.words());
    assertFalse(StepWording.solder(step).contains("don't trim"), kind.words());
    assertTrue(StepWording.lookFor(step).startsWith("mounting: upright"), kind.words());
  }

  @Test
  void a_tab_that_lies_down_has_its_leads_bent() {
    Step step = step(type(PartKind.REGULATOR, "7805", "TO-220-3_Horizontal_TabDown"));
    assertTrue(StepWording.seat(step).contains("bend the leads first"), StepWording.seat(step));
    assertTrue(StepWording.wayRound(step).contains("hole of the tab"), StepWording.wayRound(step));
  }

  /** Bending is for leads at both ends, coating for dipped bodies. */
  @ParameterizedTest
  @CsvSource({
    "RESISTOR, R_Axial_DIN0207_L6.3mm_D2.5mm_P10.16mm_Horizontal, lying flat, parallel",
    "RESISTOR, R_Axial_DIN0207_L6.3mm_D2.5mm_P2.54mm_Vertical, standing, upright",
    "INDUCTOR, L_Radial_D8.7mm_P5.00mm, 'upright, down on', upright",
    "ELECTROLYTIC_CAPACITOR, CP_Axial_L18.0mm_D6.5mm, lying flat, parallel",
    "ELECTROLYTIC_CAPACITOR, CP_Radial_D5.0mm, 'upright, down on', upright",
    "FILM_CAPACITOR, C_Rect_L13.0mm_W5.0mm_P10.00mm, 'upright, down on', upright",
    "CERAMIC_CAPACITOR, C_Disc_D5.0mm, 'upright, 0.3 to 2 mm above the board, no coating', upright",
    "CRYSTAL, HC-49/US, 'upright, 0.3 to 2 mm above the board, so that its can', upright"
  })
  void a_part_is_seated_as_its_body_asks(PartKind kind, String body, String seat, String look) {
    Step step = step(type(kind, "", body));
    assertTrue(StepWording.seat(step).startsWith(seat), StepWording.seat(step));
    assertTrue(
        StepWording.lookFor(step).startsWith("mounting: " + look), StepWording.lookFor(step));
  }

  /** A capacitor of unknown kind may be a can; a terminal may face inwards. */
  @ParameterizedTest
  @CsvSource({
    "CAPACITOR, true",
    "RESISTOR_NETWORK, true",
    "SCREW_TERMINAL, true",
    "PIN_HEADER, true",
    "TRIMMER, true",
    "RESISTOR, false",
    "CERAMIC_CAPACITOR, false",
    "WIRE_LINK, false"
  })
  void what_can_go_in_wrongly_has_its_way_round_in_the_book(PartKind kind, boolean told) {
    assertEquals(told, OrientationWords.matters(type(kind, "", "")));
  }

  @Test
  void a_single_black_band_has_no_other_end() {
    var link =
        new PartType(
            PartKind.RESISTOR,
            "0R",
            Optional.of(Quantity.of("0", Dimension.RESISTANCE)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "",
            "DIN0207");
    assertEquals("either way round", StepWording.wayRound(step(link)));
    assertEquals("bands black", StepWording.marking(step(link)));
  }

  @ParameterizedTest
  @EnumSource(
      value = PartKind.class,
      names = {"SWITCH", "FUSE_HOLDER", "PIN_HEADER", "SOCKET", "HEATSINK"})
  void what_holds_or_switches_carries_no_name_of_a_drawing(PartKind kind) {
    assertEquals("", StepWording.marking(step(type(kind, "SW_Push", ""))));
  }

  @ParameterizedTest
  @EnumSource(PartKind.class)
  void every_kind_is_told_how_it_goes_in_and_what_to_look_for(PartKind kind) {
    Step step = step(type(kind, "text", "package"));
    assertFalse(StepWording.wayRound(step).isBlank());
    assertFalse(StepWording.seat(step).isBlank());
    assertFalse(StepWording.solder(step).isBlank());
    assertFalse(StepWording.lookFor(step).isBlank());
    if (kind.isPolarised()) {
      assertFalse(StepWording.wayRound(step).startsWith("either"), kind.words());
    }
    assertEquals(
        kind.isStaticSensitive(),
        StepWording.caution(step).filter(text -> text.contains("static")).isPresent());
  }

  @Test
  void a_heat_limit_is_a_temperature_a_time_and_a_distance_with_its_source() {
    // TSC and generic sheets: 260 °C for 10 s at 9.5 mm lead length.
    String words = StepWording.solder(step(type(PartKind.DIODE, "1N4004", "DO-41")));
    assertTrue(words.contains("at most 260 °C for 10 s at 9.5 mm from the body"), words);
    assertTrue(words.contains("250 or 350 °C"), words);
    for (PartKind kind : PartKind.values()) {
      for (HeatLimit limit : HeatLimit.of(type(kind, "1N4001", ""))) {
        assertFalse(limit.source().text().isBlank());
      }
    }
  }

  @Test
  void other_diodes_get_no_limit_that_nobody_published_for_them() {
    assertFalse(StepWording.solder(step(type(PartKind.DIODE, "1N4148", "DO-35"))).contains("Heat"));
  }

  @Test
  void the_reading_to_accept_is_that_of_the_worked_example() {
    // R = 4.7 kΩ ±5 %, meter ±(0.5 % + 2) with 6000 counts: guarded limits 4494.44 to 4905.56 Ω at
    // nominal; solved at the limits themselves, TL + w(y) = y gives 4494 and TU - w(y) = y 4904.
    var settings = new Settings("", Optional.empty(), "0.5 % + 2 of 6000", "", "");
    String words = StepWording.reading(step(resistor("4700", "5")), Meter.of(settings));
    assertTrue(words.contains("from 4.494 kΩ to 4.904 kΩ"), words);
  }

  @Test
  void a_resistor_is_marked_with_its_bands() {
    assertEquals("bands yellow violet red gold", StepWording.marking(step(resistor("4700", "5"))));
  }

  @Test
  void large_capacitances_are_told_in_microfarads_as_they_are_printed() {
    var type =
        new PartType(
            PartKind.ELECTROLYTIC_CAPACITOR,
            "1000u",
            Optional.of(Quantity.of("0.001", Dimension.CAPACITANCE)),
            Optional.empty(),
            Optional.of(Quantity.of("25", Dimension.VOLTAGE)),
            Optional.empty(),
            "",
            "");
    assertEquals("1000 µF electrolytic capacitor", StepWording.shortName(type));
    assertEquals("printed 1000 µF 25 V", StepWording.marking(step(type)));
    assertTrue(StepWording.caution(step(type)).orElseThrow().contains("stays charged"));
  }

  @ParameterizedTest
  @CsvSource({
    "1N4148, '', 1N4148 diode",
    "1N4148, 1N4933, 1N4148 diode",
    "signal diode, 1N4148, 1N4148 diode",
    "'rectifier, fast', UF4007, UF4007 diode",
    "'', '', diode",
  })
  void a_part_goes_by_the_number_in_the_value_column_unless_that_is_prose(
      String text, String number, String name) {
    var type = PartType.named(PartKind.DIODE, text, number, "");
    assertEquals(name, StepWording.shortName(type));
  }

  /** What a hand looks for is what the bag's list says, without the words beside it. */
  @ParameterizedTest
  @CsvSource({
    "BC547B (TO-92), BC547B, printed BC547B",
    "D1N4148, 1N4148, printed 1N4148 or 4148",
    "TL072 opamp, TL072, printed TL072",
    "5V regulator, XR7805, printed XR7805"
  })
  void only_the_number_among_words_is_printed(String text, String number, String marking) {
    PartKind kind = text.contains("regulator") ? PartKind.REGULATOR : PartKind.DIODE;
    assertEquals(marking, StepWording.marking(step(PartType.named(kind, text, number, ""))));
  }

  /** Type numbers have digits; the name of a kind or of a drawing symbol stands on no part. */
  @ParameterizedTest
  @CsvSource({"NPN, ''", "Battery_Cell, ''", "2N3904, printed 2N3904", "J201, printed J201"})
  void a_name_without_a_number_is_no_print(String text, String marking) {
    assertEquals(
        marking,
        StepWording.marking(step(PartType.named(PartKind.BIPOLAR_TRANSISTOR, text, text, ""))));
  }

  @ParameterizedTest
  @CsvSource({
    "R1 R2 R3 R4, R1-R4",
    "R1 R2, 'R1, R2'",
    "R1 R2 R3 R7 R9 R10 R11, 'R1-R3, R7, R9-R11'",
    "L1-In L1-Out, 'L1-In, L1-Out'",
    "R1_1K, R1_1K",
    "R8 R9 R10, R8-R10",
  })
  void runs_of_designators_are_joined(String given, String told) {
    assertEquals(
        told, DesignatorWords.list(Stream.of(given.split(" ")).map(Designator::of).toList()));
  }

  private static PartType resistor(String ohms, String percent) {
    return new PartType(
        PartKind.RESISTOR,
        ohms,
        Optional.of(Quantity.of(ohms, Dimension.RESISTANCE)),
        Optional.of(Tolerance.percent(percent)),
        Optional.empty(),
        Optional.empty(),
        "",
        "");
  }

  private static Step step(PartType type) {
    return new Step(
        1,
        "b",
        1,
        type,
        List.of(Designator.of("X1")),
        List.of(),
        Side.TOP,
        OptionalDouble.of(3),
        Rule.LOWEST_FIRST,
        "3 mm; lowest first",
        Step.Stage.SOLDER);
  }
}
