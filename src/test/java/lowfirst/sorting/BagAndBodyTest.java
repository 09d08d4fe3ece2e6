package lowfirst.sorting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.board.SampleBoards;
import lowfirst.marking.Colour;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands on bodies, which compartment a label on a bag means, and how bad a mix-up is. */
class BagAndBodyTest {

  // --- bodies

  @Test
  void a_part_is_banded_or_printed_or_bare() {
    PartMarking banded = PartMarking.of(SmallKit.resistor("4k7 5%"));
    assertTrue(banded.isBanded());
    assertFalse(banded.isUnmarked());
    assertEquals(
        List.of(Colour.YELLOW, Colour.VIOLET, Colour.RED, Colour.GOLD),
        banded.bands().get(0).bands());
    PartMarking printed = PartMarking.of(SmallKit.ceramic("100n"));
    assertFalse(printed.isBanded());
    assertFalse(printed.isUnmarked());
    assertEquals(List.of(), printed.bands());
    for (PartKind bare : List.of(PartKind.WIRE_LINK, PartKind.LED)) {
      assertTrue(PartMarking.of(SmallKit.numbered(bare, "red")).isUnmarked(), bare + "");
    }
    assertTrue(PartMarking.of(SampleBoards.type(PartKind.RESISTOR, "?", "")).isUnmarked());
  }

  /** From 3 W on a body is large enough to print on (common practice). */
  @ParameterizedTest
  @CsvSource({"10R 5% 3W, 3W10RJ", "10R 5% 5W, 5W10RJ", "0.47R 5% 10W, 10WR47J", "22R 3W, 3W22R"})
  void a_large_resistor_prints_power_value_and_tolerance(String text, String print) {
    assertEquals(List.of(print), PartMarking.of(SmallKit.resistor(text)).texts());
    assertTrue(PartMarking.of(SmallKit.resistor("10R 5% 2W")).isBanded());
  }

  /** A choke in a resistor's body is banded in µH (IEC 60062 colours), others print figures. */
  @Test
  void a_choke_is_banded_where_its_body_is_a_resistors() {
    PartMarking axial = PartMarking.of(in("0207", choke("270u 10%")));
    assertEquals(
        List.of(Colour.RED, Colour.VIOLET, Colour.BROWN, Colour.SILVER),
        axial.bands().get(0).bands());
    assertEquals(List.of(), axial.texts());
    assertFalse(axial.toleranceAssumed());
    assertTrue(PartMarking.of(in("AXIAL", choke("270u"))).toleranceAssumed());
    PartMarking radial = PartMarking.of(in("radial", choke("270u")));
    assertFalse(radial.isBanded());
    assertEquals(List.of("271"), radial.texts());
  }

  @Test
  void a_network_prints_its_number_and_its_code() {
    PartType plain = SmallKit.valued(PartKind.RESISTOR_NETWORK, Dimension.RESISTANCE, "4k7");
    assertEquals(List.of("472"), PartMarking.of(plain).texts());
    assertEquals(List.of("4609X", "472"), PartMarking.of(numbered("4609X", plain)).texts());
    assertEquals(
        List.of("4609X"),
        PartMarking.of(SmallKit.numbered(PartKind.RESISTOR_NETWORK, "4609X")).texts());
  }

  @ParameterizedTest
  @CsvSource({"10k, 103, 10K", "470, 471, 470R", "2M2, 225, 2M2"})
  void a_trimmer_prints_either_code(String ohms, String digits, String letters) {
    PartType type = SmallKit.valued(PartKind.TRIMMER, Dimension.RESISTANCE, ohms);
    assertEquals(List.of(digits, letters), PartMarking.of(type).texts());
  }

  @Test
  void a_film_box_prints_value_tolerance_and_voltage_and_microfarads_without_the_nought() {
    PartType type = SmallKit.valued(PartKind.FILM_CAPACITOR, Dimension.CAPACITANCE, "100n 5% 63V");
    assertEquals(List.of("100nJ63", "104J", ".1J"), PartMarking.of(type).texts());
    assertEquals(
        List.of("1µ", "105"),
        PartMarking.of(SmallKit.valued(PartKind.FILM_CAPACITOR, Dimension.CAPACITANCE, "1u"))
            .texts());
  }

  @Test
  void a_capacitor_of_unknown_kind_from_one_microfarad_on_prints_its_value_in_full() {
    assertEquals(
        "1 µF",
        PartMarking.of(SmallKit.valued(PartKind.CAPACITOR, Dimension.CAPACITANCE, "1u"))
            .texts()
            .get(0));
    assertEquals(
        "474",
        PartMarking.of(SmallKit.valued(PartKind.CAPACITOR, Dimension.CAPACITANCE, "470n"))
            .texts()
            .get(0));
    assertFalse(PartMarking.of(SmallKit.ceramic("100p")).texts().contains("100"), "from 100 pF on");
    assertTrue(PartMarking.of(SmallKit.ceramic("82p")).texts().contains("82"));
  }

  @ParameterizedTest
  @CsvSource({"2SC1815, C1815", "2SK30A, K30A", "1N5819, 5819"})
  void small_bodies_leave_out_what_the_registers_begin_with(String number, String shorter) {
    assertEquals(
        List.of(number, shorter),
        PartMarking.of(SmallKit.numbered(PartKind.BIPOLAR_TRANSISTOR, number)).texts());
    assertEquals(
        List.of("BC547"),
        PartMarking.of(SmallKit.numbered(PartKind.BIPOLAR_TRANSISTOR, "BC547")).texts());
  }

  /** What a library calls a drawing is no print; a crystal's can bears its frequency. */
  @Test
  void the_name_of_a_drawing_is_no_print() {
    assertEquals(
        List.of(),
        PartMarking.of(PartType.named(PartKind.CAPACITOR, "C5/3", "C5/3", "C5B3")).texts());
    assertEquals(
        List.of(), PartMarking.of(SmallKit.numbered(PartKind.BATTERY, "CONN-TH_2P-P5.00")).texts());
    assertEquals(
        List.of("BC547"),
        PartMarking.of(SmallKit.numbered(PartKind.BIPOLAR_TRANSISTOR, "BC547_TO92")).texts());
    // The letter of a gain group is printed (Pro Electron).
    assertEquals(
        List.of("BC557C"),
        PartMarking.of(SmallKit.numbered(PartKind.BIPOLAR_TRANSISTOR, "BC557_C")).texts());
    // Ratings alone are printed beside a number, if at all.
    assertEquals(
        List.of(),
        PartMarking.of(PartType.named(PartKind.BRIDGE_RECTIFIER, "600V / 6A", "", "")).texts());
    // IEC 60127-1: the letter of the characteristic, then the rated current.
    assertEquals(
        List.of("T1.6A"),
        PartMarking.of(PartType.named(PartKind.FUSE, "T1.6A slow 5x20", "", "")).texts());
    assertEquals(
        List.of(),
        PartMarking.of(PartType.named(PartKind.TRIMMER_CAPACITOR, "4-40p", "", "")).texts());
    var crystal =
        new PartType(
            PartKind.CRYSTAL,
            "16MHz",
            Optional.of(Quantity.of("16000000", Dimension.FREQUENCY)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "XTAL/S",
            "QS");
    assertEquals(List.of("16 MHz"), PartMarking.of(crystal).texts());
  }

  /** A dealer's order number has the maker's inside it; the body carries the maker's. */
  @Test
  void the_number_on_the_body_is_the_makers_and_not_the_dealers() {
    PartType ordered = SmallKit.numbered(PartKind.BIPOLAR_TRANSISTOR, "TIP120");
    assertEquals(List.of("TIP120"), PartMarking.of(numbered("863-TIP120G", ordered)).texts());
    assertEquals(List.of("BD139"), PartMarking.of(numbered("BD139", ordered)).texts());
  }

  // --- labels on bags

  private static final Kit KIT =
      new SmallKit()
          .item(SmallKit.resistor("4k7 5%"), "R1")
          .item(SmallKit.resistor("47k 5%"), "R2")
          .item(SmallKit.ceramic("100n"), "C1")
          .item(
              SmallKit.valued(PartKind.ELECTROLYTIC_CAPACITOR, Dimension.CAPACITANCE, "100u 25V"),
              "C2")
          .item(SmallKit.numbered(PartKind.MOSFET, "BP-N60L"), "Q1")
          .item(SmallKit.numbered(PartKind.DIODE, "1N4148"), "D1")
          .described(SmallKit.numbered(PartKind.SWITCH, "SW-6"), "reset button", "S1")
          .item(SampleBoards.type(PartKind.HARDWARE, "Spacer M3-10", ""), "H1")
          .kit();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "4k7 | 4k7 5%",
        "4.7 kΩ 5 % | 4k7 5%",
        "4700 | 4k7 5%",
        "yellow violet red gold | 4k7 5%",
        "yellow violet orange gold | 47k 5%",
        "104 | 100n",
        "0.1u | 100n",
        "100 µF 25 V | 100u 25V",
        "BP-N60L | BP-N60L",
        "bp n60l | BP-N60L",
        "1n4148 | 1N4148",
        "reset button | SW-6",
        "tact button | SW-6",
        "spacer m3 10 | Spacer M3-10",
      })
  void a_label_means_the_compartment_that_it_fits_best(String label, String type) {
    assertEquals(type, meant(label), label);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "4k7 1% | another tolerance",
        "4k8 | another value",
        "100 µF 50 V | another voltage",
        "brown black brown gold | other bands",
        "BP-N60 | another number",
        "green banana | words of nothing in the kit",
        "reset the green machine | one word of four",
        "1mH resistor 5% | an inductance, whatever words stand beside it",
      })
  void a_label_that_states_something_else_means_nothing_here(String label, String why) {
    assertEquals("", meant(label), why);
  }

  private static String meant(String label) {
    List<Compartment> compartments = Compartments.of(KIT);
    Kit bagged = new SmallKit().bag(label, 1, "A").kit();
    return BagMatch.of(bagged.bag().get(0), compartments).stream()
        .map(compartment -> compartment.type().text())
        .collect(Collectors.joining(", "));
  }

  // --- how bad a mix-up is

  @ParameterizedTest
  @CsvSource({
    "R1, R9, SWITCHING_SPOILT",
    "R2, R9, LOAD_OUT_OF_CONTROL",
    "Q1, D1, LOAD_OUT_OF_CONTROL",
    "D1, R9, PART_DESTROYED",
    "U1, U2, PART_DESTROYED",
    "F1, R9, PROTECTION_LOST",
    "L1, L2, HARMLESS",
    "L1, R9, CIRCUIT_MISBEHAVES",
    "R9, R3, CIRCUIT_MISBEHAVES",
    "R8, R9, HARMLESS",
    "R3, R4, HARMLESS",
    "C1, C2, PROTECTION_LOST",
    "C2, C1, HARMLESS",
    "R5, R3, PROTECTION_LOST",
    "C1, C3, CIRCUIT_MISBEHAVES",
    "D2, D1, PROTECTION_LOST",
    "X1, D1, PROTECTION_LOST",
  })
  void the_worst_that_can_happen_decides(String meant, String fitted, Consequence consequence) {
    Kit kit =
        new SmallKit()
            .item(SmallKit.resistor("100R 5%"), "R1")
            .item(SmallKit.resistor("10k 5%"), "R2")
            .item(SmallKit.resistor("1k 5% 0.25W"), "R3")
            .item(SmallKit.resistor("1k 1% 0.25W"), "R4")
            .item(SmallKit.resistor("2k 5% 0.5W"), "R5")
            .described(SmallKit.resistor("330R 5%"), "LED resistor", "R8")
            .item(SmallKit.resistor("47k 5%"), "R9")
            .item(SmallKit.numbered(PartKind.MOSFET, "BP-N60L"), "Q1")
            .item(SmallKit.numbered(PartKind.DIODE, "1N4148"), "D1")
            .item(SmallKit.numbered(PartKind.INTEGRATED_CIRCUIT, "NE555"), "U1")
            .item(SmallKit.numbered(PartKind.INTEGRATED_CIRCUIT, "LM358"), "U2")
            .item(SmallKit.numbered(PartKind.FUSE, "2 A"), "F1")
            .item(SmallKit.numbered(PartKind.LED, "red"), "L1")
            .item(SmallKit.numbered(PartKind.LED, "green"), "L2")
            .item(SmallKit.ceramic("100n 63V"), "C1")
            .item(SmallKit.ceramic("100n 25V"), "C2")
            .item(SmallKit.ceramic("47n 63V"), "C3")
            .item(SmallKit.numbered(PartKind.DIODE, "1N4007"), "D2")
            .item(SmallKit.numbered(PartKind.UNKNOWN, "resettable"), "X1")
            .channel(
                "Q1",
                "R1",
                "R2",
                Optional.of(Designator.of("D2")),
                Optional.of(Designator.of("X1")))
            .kit();
    assertEquals(consequence, Consequence.of(of(kit, fitted), of(kit, meant)));
  }

  private static Compartment of(Kit kit, String designator) {
    return Compartments.of(kit).stream()
        .filter(
            compartment -> compartment.uses().toString().matches(".*\\b" + designator + "\\b.*"))
        .findFirst()
        .orElseThrow();
  }

  private static PartType choke(String text) {
    return SmallKit.valued(PartKind.INDUCTOR, Dimension.INDUCTANCE, text);
  }

  private static PartType in(String packageName, PartType type) {
    return new PartType(
        type.kind(),
        type.text(),
        type.value(),
        type.tolerance(),
        Optional.<Quantity>empty(),
        Optional.<Quantity>empty(),
        "",
        packageName);
  }

  private static PartType numbered(String number, PartType type) {
    return new PartType(
        type.kind(),
        type.text(),
        type.value(),
        type.tolerance(),
        type.ratedVoltage(),
        type.ratedPower(),
        number,
        "");
  }
}
