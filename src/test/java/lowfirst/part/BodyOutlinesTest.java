package lowfirst.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.problem.Reading;
import lowfirst.quantity.Source;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Package and footprint names, as people and design tools write them, become body outlines. */
class BodyOutlinesTest {
  private static final BodyOutlines TABLE = ShippedTables.bodyOutlines();

  @TestFactory
  Stream<DynamicTest> heights_lie_within_the_published_limits() throws IOException {
    var stream = getClass().getResourceAsStream("/published/body-heights.csv");
    var format = CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader().get();
    try (var reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
      return format.parse(reader).getRecords().stream()
          .skip(1)
          .map(
              row ->
                  DynamicTest.dynamicTest(
                      row.get("name") + ", " + row.get("document"),
                      () -> {
                        double height = height(row.get("name"), PartKind.valueOf(row.get("kind")));
                        assertTrue(
                            height >= Double.parseDouble(row.get("lowest mm"))
                                && height <= Double.parseDouble(row.get("highest mm")),
                            row.get("name") + ": " + height + " mm");
                      }));
    }
  }

  @ParameterizedTest(name = "{0} of a {1} is {2} mm tall")
  @CsvSource({
    // name, kind, height, length, width, pitch: read off the name itself or the table row it names
    "RES-TH_BD2.3-L6.5-P10.50-D0.5, RESISTOR, 2.3, 6.5, 2.3, 10.5",
    "R_Axial_DIN0204_L3.6mm_D1.6mm_P5.08mm_Horizontal, RESISTOR, 1.6, 3.6, 1.6, 5.08",
    "R_Axial_DIN0207_L6.3mm_D2.5mm_P2.54mm_Vertical, RESISTOR, 9.5, 2.5, 2.5, 2.54",
    "0207/7, RESISTOR, 2.5, 6.3, 2.5, 0",
    "0414V, RESISTOR, 15.5, 4.5, 4.5, 0",
    "0207/5V, RESISTOR, 9.5, 2.5, 2.5, 0",
    "C_Radial_D8.0mm_H11.5mm_P3.50mm, CAPACITOR, 11.5, 8, 8, 3.5",
    "CP_Axial_L18.0mm_D6.5mm_P25.00mm_Horizontal, INDUCTOR, 6.5, 18, 6.5, 25",
    "Radial THT (8x11.5mm), CAPACITOR, 11.5, 8, 8, 0",
    "LED_D3.0mm, LED, 5.3, 3.8, 3.8, 2.54",
    "JST_EH_B2B-EH-A_1x02_P2.50mm_Vertical, CONNECTOR, 6.0, 5.0, 3.8, 2.5",
    "HDR1X2, CONNECTOR, 8.5, 5.08, 2.54, 2.54",
    "PinHeader_2x05_P2.54mm_Horizontal, PIN_HEADER, 5.1, 12.7, 5.08, 2.54",
    "IDC-Header_2x05_P2.54mm_Vertical, CONNECTOR, 9.1, 12.7, 8.9, 2.54",
    "BarrelJack_Horizontal, CONNECTOR, 10.0, 14, 9, 0",
    "DIP-16_L20.3-W10.2-P2.54-LS10.2-BL, INTEGRATED_CIRCUIT, 3.7, 20.32, 6.4, 10.2",
    "Crystal_HC49-4H_Vertical, CRYSTAL, 4.1, 11, 4.5, 4.88",
    "QS, CRYSTAL, 4.1, 11, 4.5, 4.88",
    "C_Disc_D5.0mm_W2.5mm_P5.00mm, CERAMIC_CAPACITOR, 7.0, 5, 2.5, 5",
    "C_Rect_L7.2mm_W5.5mm_P5.00mm_FKS2_FKP2, FILM_CAPACITOR, 10, 7.2, 5.5, 5",
    "SW_PUSH_6mm_H9.5mm, SWITCH, 9.5, 0, 0, 0",
  })
  void the_measures_in_a_name_are_read(
      String name, PartKind kind, double height, double length, double width, double pitch) {
    BodyOutline outline = TABLE.find(name, kind).orThrow();
    assertEquals(height, outline.seatedHeightMillimetres(), 1e-9, outline.toString());
    assertEquals(length, outline.lengthMillimetres(), 1e-9, outline.toString());
    assertEquals(width, outline.widthMillimetres(), 1e-9, outline.toString());
    assertEquals(pitch, outline.pitchMillimetres(), 1e-9, outline.toString());
    assertFalse(outline.isAssumed());
  }

  @ParameterizedTest
  @CsvSource({
    "CP_Radial_D6.3mm_P2.50mm, ELECTROLYTIC_CAPACITOR, 6.3",
    "CP_Radial_D10.0mm_P5.00mm, CAPACITOR, 10",
    "'E7,5-18', ELECTROLYTIC_CAPACITOR, 18",
    "KEY-TH_4P-L6.0-W6.0-P3.90-LS6.5, SWITCH, 6",
    "LED-SEG-TH_10P-L17.6-W12.4-P2.54-S15.24-BL, DISPLAY, 17.6",
    "C050-025X075, CAPACITOR, 7.5",
  })
  void a_height_that_the_name_does_not_tell_stays_unknown(
      String name, PartKind kind, double length) {
    BodyOutline outline = TABLE.find(name, kind).orThrow();
    assertTrue(outline.height().isEmpty(), outline.toString());
    assertEquals(length, outline.lengthMillimetres(), 1e-9);
  }

  @Test
  void an_electrolytics_height_is_its_length_and_never_its_diameter() {
    // A published body model set gives D5 -> 5.0 and D10 -> 10.0 mm; a 5 x 11 can is 11 mm tall.
    assertTrue(
        find("CP_Radial_D5.0mm_P2.00mm", PartKind.ELECTROLYTIC_CAPACITOR).height().isEmpty());
    assertEquals(11, height("CP_Radial_D5.0mm_L11.0mm_P2.00mm", PartKind.ELECTROLYTIC_CAPACITOR));
  }

  @Test
  void a_socket_is_lower_than_the_socket_with_its_circuit() {
    double socket = height("DIP-40_W15.24mm_Socket", PartKind.SOCKET);
    assertTrue(socket < 5.2, "socket alone: " + socket);
  }

  @Test
  void a_height_assumed_for_a_kind_says_so_in_its_source() {
    BodyOutline resistor = find("", PartKind.RESISTOR);
    assertTrue(resistor.isAssumed());
    assertEquals(2.5, resistor.seatedHeightMillimetres());
    assertTrue(resistor.source().text().contains("no package is named"), resistor.source().text());
  }

  /** 0.6 W is what the assumed size bears (Vishay Beyschlag 28766, MBB/SMA 0207, standard). */
  @ParameterizedTest
  @CsvSource({"0.25, '', 2.5", "0.6, '', 2.5", "1, '', ", "5, axial 25mm, ", "5, 0207, 2.5"})
  void no_height_is_assumed_for_a_resistor_stronger_than_the_assumed_one(
      String watts, String packageName, Double height) {
    Reading<BodyOutline> found =
        TABLE.find(PartTypes.type(PartKind.RESISTOR, "0.47", packageName, watts));
    assertEquals(
        height == null ? OptionalDouble.empty() : OptionalDouble.of(height),
        found.value().map(BodyOutline::height).orElse(OptionalDouble.empty()));
  }

  /** The row's height is for a part that lies: a standing one is taller. */
  @Test
  void a_body_that_the_name_states_stays_where_only_its_height_is_assumed() {
    BodyOutline lying = find("R_Own_L10mm_W4mm_P7.5mm", PartKind.RESISTOR);
    assertTrue(lying.isAssumed());
    assertEquals(2.5, lying.seatedHeightMillimetres());
    assertEquals(10, lying.lengthMillimetres());
    assertEquals(4, lying.widthMillimetres());
    assertEquals(7.5, lying.pitchMillimetres());
    BodyOutline standing = find("R_Own_L10mm_W4mm_P7.5mm_Vertical", PartKind.RESISTOR);
    assertEquals(OptionalDouble.empty(), standing.height());
    assertEquals(10, standing.lengthMillimetres());
    assertTrue(new BodyOutline.BodySize(5, 5).isSquare());
    assertFalse(lying.body().orElseThrow().isSquare());
  }

  @ParameterizedTest
  @CsvSource({
    "ELECTROLYTIC_CAPACITOR",
    "RELAY",
    "SWITCH",
    "CONNECTOR",
    "LED",
    "DISPLAY",
    "UNKNOWN"
  })
  void nothing_is_assumed_for_kinds_that_come_in_many_heights(PartKind kind) {
    assertFalse(TABLE.find("", kind).isRead());
  }

  @ParameterizedTest
  @CsvSource({
    "LED red 5mm, LED 5 mm",
    "red 3.0 mm clear, LED 3 mm",
    "5 mm, LED 5 mm",
    "LED 2x5mm, ''",
    "P5mm, ''",
    "3mm or 5mm, ''",
    "10 mm, ''"
  })
  void millimetres_said_of_an_led_by_themselves_are_its_lens(String text, String row) {
    assertEquals(
        row,
        TABLE
            .find(PartTypes.type(PartKind.LED, text, ""))
            .value()
            .map(BodyOutline::name)
            .orElse(""));
  }

  @Test
  void a_circuit_in_a_package_that_nobody_knows_is_not_taken_for_the_usual_one() {
    assertTrue(TABLE.find("", PartKind.INTEGRATED_CIRCUIT).isRead());
    assertFalse(TABLE.find("AMUX1", PartKind.INTEGRATED_CIRCUIT).isRead());
  }

  @Test
  void an_unknown_package_is_a_fault_with_a_remedy() {
    Reading<BodyOutline> reading = TABLE.find("SW-TH_SS-12H01-G020", PartKind.SWITCH);
    assertEquals(Optional.empty(), reading.value());
    assertTrue(reading.remedy().contains("height mm"), reading.remedy());
  }

  @ParameterizedTest
  @CsvSource({
    "603-CFR-25JR-52-270R, RESISTOR, 2.4",
    "863-TIP120G, BIPOLAR_TRANSISTOR, 18.8",
    "621-6A05-T, DIODE, 9.0",
    "782-MCT6H, OPTOCOUPLER, 3.7",
    "926-LM556CN/NOPB, INTEGRATED_CIRCUIT, 3.7",
    "1N4148, DIODE, 1.9",
    "1N5408, DIODE, 5.1",
    "1.5KE36A, DIODE, 5.1",
    "P6KE33CA, DIODE, 3.1",
    // a flat metal case, a three-legged sensor: no small plastic transistor, no DIP
    "2N3055, BIPOLAR_TRANSISTOR, 7.4",
    "TMP36, INTEGRATED_CIRCUIT, 7.3",
  })
  void without_a_package_the_type_number_tells_the_usual_body(
      String number, PartKind kind, double height) {
    var type = PartType.named(kind, number, number, "");
    BodyOutline outline = TABLE.find(type).orThrow();
    assertEquals(height, outline.seatedHeightMillimetres());
    assertEquals(Source.Origin.ASSUMED, outline.source().origin());
  }

  /** H2 at the start counts the pins of a header; pitch 2.54, span 7.62 mm tell a DIP. */
  @Test
  void the_start_of_a_name_is_no_height_and_a_land_of_two_rows_tells_the_body() {
    Optional<BodyOutline> header = TABLE.find("H2-2.0-6X4.5MM", PartKind.CONNECTOR).value();
    assertTrue(header.filter(found -> found.height().isPresent()).isEmpty());
    BodyOutline body = TABLE.find("DIP254P762X533-18", PartKind.INTEGRATED_CIRCUIT).orThrow();
    assertEquals(18, body.pins());
    assertEquals(3.7, body.seatedHeightMillimetres());
    assertEquals(
        4.5,
        TABLE
            .find("DIP254P1524X533-28", PartKind.INTEGRATED_CIRCUIT)
            .orThrow()
            .seatedHeightMillimetres());
    assertEquals(4.5, TABLE.find("TO220BH", PartKind.MOSFET).orThrow().seatedHeightMillimetres());
  }

  /** BUZ begins power transistors. */
  @Test
  void a_word_without_a_digit_is_no_type_number() {
    assertFalse(TABLE.find(PartType.named(PartKind.BUZZER, "Buzzer", "Buzzer", "BZ-12")).isRead());
  }

  /** It may come in any body. */
  @Test
  void nothing_is_assumed_for_a_transistor_that_nobody_knows() {
    assertFalse(TABLE.find("", PartKind.TRANSISTOR).isRead());
  }

  @Test
  void without_a_package_the_value_column_may_name_the_body() {
    var jack = PartType.named(PartKind.CONNECTOR, "BARREL_JACK", "", "");
    assertEquals(10.0, TABLE.find(jack).orThrow().seatedHeightMillimetres());
  }

  @Test
  void every_row_of_the_table_has_a_source_and_finds_itself() {
    for (BodyOutline row : TABLE.all()) {
      assertFalse(row.source().text().isBlank(), row.name());
      assertTrue(row.standOffMillimetres() < row.seatedHeightMillimetres(), row.name());
      assertEquals(row, TABLE.named(row.name()).orElseThrow());
    }
  }

  @Test
  void any_text_is_read_without_harm() {
    for (String text :
        new String[] {
          ":", "::", "D", "x".repeat(100_000), "DIP-", "0x0", "\u0000", "DIP-99", "C000-"
        }) {
      for (PartKind kind : PartKind.values()) {
        TABLE.find(text, kind);
      }
    }
  }

  private static BodyOutline find(String name, PartKind kind) {
    return TABLE.find(name, kind).orThrow();
  }

  private static double height(String name, PartKind kind) {
    return find(name, kind).height().orElseThrow();
  }
}
