package lowfirst.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import lowfirst.board.SampleBoards;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What kinds of parts ask of the hand, datasheet lines by type number, bodies by their names. */
class PartDetailsTest {
  private static final BodyOutlines TABLE = ShippedTables.bodyOutlines();

  // --- kinds

  @Test
  void what_conducts_one_way_has_one_right_way_round() {
    Set<PartKind> eitherWay =
        EnumSet.of(
            PartKind.RESISTOR,
            PartKind.CERAMIC_CAPACITOR,
            PartKind.FILM_CAPACITOR,
            PartKind.INDUCTOR,
            PartKind.WIRE_LINK,
            PartKind.CRYSTAL,
            PartKind.FUSE,
            PartKind.VARISTOR,
            PartKind.THERMISTOR,
            PartKind.PHOTORESISTOR);
    Set<PartKind> oneWay =
        EnumSet.of(
            PartKind.DIODE,
            PartKind.SCHOTTKY_DIODE,
            PartKind.ZENER_DIODE,
            PartKind.LED,
            PartKind.ELECTROLYTIC_CAPACITOR,
            PartKind.TANTALUM_CAPACITOR,
            PartKind.MOSFET,
            PartKind.BIPOLAR_TRANSISTOR,
            PartKind.INTEGRATED_CIRCUIT,
            PartKind.BRIDGE_RECTIFIER);
    eitherWay.forEach(kind -> assertFalse(kind.isPolarised(), kind + ""));
    oneWay.forEach(kind -> assertTrue(kind.isPolarised(), kind + ""));
  }

  @Test
  void gates_of_metal_oxide_and_integrated_circuits_fear_a_touch_and_lenses_fear_heat() {
    assertTrue(PartKind.MOSFET.isStaticSensitive());
    assertTrue(PartKind.INTEGRATED_CIRCUIT.isStaticSensitive());
    assertFalse(PartKind.RESISTOR.isStaticSensitive());
    assertTrue(PartKind.LED.isHeatSensitive());
    assertTrue(PartKind.CRYSTAL.isHeatSensitive());
    assertFalse(PartKind.RESISTOR.isHeatSensitive());
  }

  @Test
  void families_of_kinds_are_complete() {
    assertEquals(
        EnumSet.of(
            PartKind.CAPACITOR,
            PartKind.CERAMIC_CAPACITOR,
            PartKind.FILM_CAPACITOR,
            PartKind.ELECTROLYTIC_CAPACITOR,
            PartKind.TANTALUM_CAPACITOR),
        all(PartKind::isCapacitor));
    assertEquals(
        EnumSet.of(PartKind.DIODE, PartKind.SCHOTTKY_DIODE, PartKind.ZENER_DIODE),
        all(PartKind::isDiode));
    assertEquals(
        EnumSet.of(PartKind.BOARD_FEATURE, PartKind.HARDWARE), all(kind -> !kind.isOnTheBoard()));
    Arrays.stream(PartKind.values()).forEach(kind -> assertFalse(kind.words().isBlank()));
  }

  @Test
  void a_part_is_called_by_its_value_or_else_its_number_or_else_its_text() {
    assertEquals("4.7 kΩ resistor", type(PartKind.RESISTOR, "4k7", "4700", "").words());
    assertEquals("1N4148 diode", type(PartKind.DIODE, "fast", "", "1N4148").words());
    assertEquals("red LED", type(PartKind.LED, "red", "", "").words());
    assertEquals("LED", type(PartKind.LED, "", "", "").words());
  }

  // --- heat

  @Test
  void the_published_limits_of_a_kind_are_given_whole_and_none_is_made_up() {
    HeatLimit rectifier = HeatLimit.of(type(PartKind.DIODE, "1n4007", "", "")).get(0);
    assertEquals(260, rectifier.celsius());
    assertEquals(10, rectifier.seconds());
    assertEquals(9.5, rectifier.distanceMillimetres(), "0.375 inch from the case");
    assertEquals(1, HeatLimit.of(type(PartKind.DIODE, "fast", "", "1N4001")).size());
    assertEquals(List.of(), HeatLimit.of(type(PartKind.DIODE, "1N4148", "", "")));
    assertEquals(List.of(), HeatLimit.of(type(PartKind.RESISTOR, "1N4007", "", "")));
    assertEquals(2, HeatLimit.of(type(PartKind.LED, "red", "", "")).size());
    HeatLimit transistor = HeatLimit.of(type(PartKind.MOSFET, "type M", "", "")).get(0);
    assertFalse(transistor.source().canPass(), "it is from memory, and says so");
  }

  // --- datasheets

  @Test
  void lines_are_found_however_the_type_number_is_written() {
    Datasheets sheets = Datasheets.of(List.of(line("BP-N60/L", "VDS"), line("BP-N60/L", "ID")));
    for (String written : List.of("BP-N60/L", "bpn60l", "BP N60 L", "BP_N60_L")) {
      assertTrue(sheets.know(written), written);
      assertEquals(2, sheets.about(written).size(), written);
      assertEquals(1, sheets.about(written, "ID").size(), written);
    }
    assertFalse(sheets.know("BP-N60"));
    assertEquals(List.of(), sheets.about("BP-N60"));
    assertEquals(List.of(), sheets.about("BP-N60/L", "RDSon"));
    assertFalse(Datasheets.none().know("BP-N60/L"));
    assertEquals(2, sheets.lines().size());
  }

  @Test
  void a_kits_own_lines_win_symbol_by_symbol_over_what_is_shipped() {
    Datasheets own = Datasheets.of(List.of(line("A", "VDS", "own")));
    Datasheets shipped =
        Datasheets.of(
            List.of(
                line("A", "VDS", "shipped"),
                line("a", "ID", "shipped"),
                line("B", "VDS", "shipped")));
    Datasheets both = own.over(() -> shipped);
    assertEquals(
        List.of("own", "shipped"),
        both.about("A").stream().map(line -> line.source().text()).toList());
    assertEquals(1, both.about("B").size());
    assertEquals(2, both.byPartType().size());
    assertEquals(2, both.byPartType().get(0).size());
  }

  @Test
  void what_is_shipped_is_gathered_once_and_not_before_a_line_is_asked_for() {
    var asked = new AtomicInteger();
    Datasheets both =
        Datasheets.none()
            .over(
                () -> {
                  asked.incrementAndGet();
                  return Datasheets.of(List.of(line("A", "VDS", "shipped")));
                });
    assertEquals(0, asked.get());
    assertTrue(both.know("A"));
    assertEquals(1, both.lines().size());
    assertEquals(1, asked.get());
  }

  /** Many are looked up: those that say the same in other columns must not share a place. */
  @Test
  void part_types_are_told_apart_by_which_text_stands_where() {
    var hashes = new HashSet<Integer>();
    for (String text : List.of("", "A", "B")) {
      for (String number : List.of("", "A", "B")) {
        for (String body : List.of("", "A", "B")) {
          hashes.add(PartType.named(PartKind.UNKNOWN, text, number, body).hashCode());
        }
      }
    }
    assertEquals(27, hashes.size());
  }

  // --- outlines

  @Test
  void a_body_is_known_when_both_its_measures_are() {
    assertEquals(Optional.empty(), outline(1, 0, 5, 0).body());
    assertEquals(Optional.empty(), outline(1, 5, 0, 0).body());
    assertEquals(Optional.of(new BodyOutline.BodySize(5, 2)), outline(1, 5, 2, 0).body());
    assertEquals(OptionalDouble.empty(), outline(1, 5, 2, 0).pitch());
    assertEquals(OptionalDouble.of(2.54), outline(1, 5, 2, 2.54).pitch());
    assertEquals(OptionalDouble.empty(), outline(0, 5, 2, 0).height());
    assertEquals(OptionalDouble.of(499.9), outline(499.9, 5, 2, 0).height());
    assertThrows(IllegalArgumentException.class, () -> outline(500, 5, 2, 0));
    assertThrows(IllegalArgumentException.class, () -> outline(-1, 5, 2, 0));
    assertThrows(IllegalArgumentException.class, () -> outline(Double.NaN, 5, 2, 0));
  }

  /** The table's row that each way of naming a body leads to. */
  @ParameterizedTest
  @CsvSource({
    "LED_D3.0mm, UNKNOWN, LED 3 mm",
    "LED_D5.0mm, LED, LED 5 mm",
    "LED-TH_BD3.2, LED, LED 3 mm",
    "L_Radial_D7.0mm_P3.00mm, INDUCTOR, radial choke D7",
    "L_Radial_D10.0mm_P5.00mm, INDUCTOR, radial choke D10",
    "L_Radial_D12.5mm_P7.00mm, INDUCTOR, radial choke D12",
    "R_Array_SIP9, RESISTOR_NETWORK, SIP network low",
    "PinHeader_1x04_P2.54mm_Vertical, PIN_HEADER, pin header",
    "PinHeader_1x04_P2.54mm_Horizontal, PIN_HEADER, pin header right angle",
    "PinHeader_2x04_P2.54mm_Horizontal, PIN_HEADER, pin header right angle two rows",
    "DIP-8_W7.62mm, INTEGRATED_CIRCUIT, PDIP 300 mil",
    "DIP-22, INTEGRATED_CIRCUIT, PDIP 300 mil",
    "DIP-24, INTEGRATED_CIRCUIT, PDIP 600 mil",
    "DIP-28_W7.62mm, INTEGRATED_CIRCUIT, PDIP 300 mil",
    "DIP-28 SLIM, INTEGRATED_CIRCUIT, PDIP 300 mil",
    "DIP-4, BRIDGE_RECTIFIER, DIP bridge",
    "DIP-14, SOCKET, DIP socket",
    "C_Disc_P5.00mm_L4.5mm_W3mm, CERAMIC_CAPACITOR, radial MLCC",
    "C_Rect_L4.6mm_W2mm_P2.50mm, FILM_CAPACITOR, film box pitch 2.5",
    "C_Rect_L10mm_W4mm_P7.50mm, FILM_CAPACITOR, film box pitch 7.5",
    "C_Rect_L13mm_W4mm_P10.00mm, CAPACITOR, film box pitch 10",
    "C_Rect_L18mm_W7mm_P15.00mm, FILM_CAPACITOR, film box pitch 15",
    "C_Rect_L26mm_W7mm_P22.50mm, FILM_CAPACITOR, film box pitch 22.5",
    "C_Rect_L31mm_W9mm_P27.50mm, FILM_CAPACITOR, film box pitch 27.5",
  })
  void a_name_leads_to_the_row_of_its_body(String name, PartKind kind, String row) {
    assertEquals(row, TABLE.find(name, kind).orThrow().name());
  }

  @ParameterizedTest
  @CsvSource({
    "R_Array_SIP9, RESISTOR_NETWORK, 9",
    "PinHeader_2x04_P2.54mm_Vertical, PIN_HEADER, 8",
    "DIP-16, INTEGRATED_CIRCUIT, 16"
  })
  void the_pins_are_counted_from_the_name(String name, PartKind kind, int pins) {
    BodyOutline found = TABLE.find(name, kind).orThrow();
    assertEquals(pins, found.pins());
    int inARow = name.startsWith("R_") ? pins : pins / 2;
    assertEquals(inARow * 2.54, found.lengthMillimetres(), 1e-9);
  }

  /** A footprint's first letters say what it is for, where nothing else does. */
  @ParameterizedTest
  @CsvSource({
    "R_Axial_DIN0207_L6.3mm_D2.5mm_P10.16mm_Horizontal, 2.5",
    "D_DO-41_L5.2mm_D2.7mm_P10mm_Horizontal, 2.7",
    "CP_Radial_D8.0mm_L11.5mm_P3.50mm, 11.5",
    "C_Radial_D8.0mm_H11.5mm_P3.50mm, 11.5",
  })
  void a_name_alone_tells_the_kind(String name, double height) {
    assertEquals(
        height, TABLE.find(name, PartKind.UNKNOWN).orThrow().seatedHeightMillimetres(), 1e-9);
  }

  @Test
  void a_standing_axial_part_is_as_tall_as_its_body_is_long_and_the_bend_above_it() {
    BodyOutline standing =
        TABLE.find("R_Axial_L9mm_D3mm_P5mm_Vertical", PartKind.RESISTOR).orThrow();
    assertEquals(12, standing.seatedHeightMillimetres(), 1e-9, "9 mm and 3 mm of bent lead");
    assertEquals(3, standing.lengthMillimetres(), 1e-9);
  }

  @Test
  void what_no_rule_knows_is_refused_by_name() {
    assertEquals(
        "the package \"QX99\" is not in the package table",
        TABLE.find("QX99", PartKind.SWITCH).fault());
    assertEquals("no package is named", TABLE.find("", PartKind.SWITCH).fault());
  }

  private static Set<PartKind> all(Predicate<PartKind> wanted) {
    return Arrays.stream(PartKind.values())
        .filter(wanted)
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(PartKind.class)));
  }

  private static PartType type(PartKind kind, String text, String ohms, String number) {
    PartType plain = SampleBoards.type(kind, text, "");
    return new PartType(
        kind,
        text,
        ohms.isEmpty() ? Optional.empty() : Optional.of(Quantity.of(ohms, Dimension.RESISTANCE)),
        plain.tolerance(),
        plain.ratedVoltage(),
        plain.ratedPower(),
        number,
        "");
  }

  private static DatasheetLine line(String type, String symbol) {
    return line(type, symbol, "a sheet");
  }

  private static DatasheetLine line(String type, String symbol, String source) {
    return new DatasheetLine(
        type,
        "",
        symbol,
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.of(Quantity.of("60", Dimension.VOLTAGE)),
        Source.datasheet(source));
  }

  private static BodyOutline outline(double height, double length, double width, double pitch) {
    return new BodyOutline("b", height, 0, length, width, pitch, 0, Source.computed("test"));
  }
}
