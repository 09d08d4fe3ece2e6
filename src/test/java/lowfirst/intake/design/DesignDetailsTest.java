package lowfirst.intake.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.intake.KitReading;
import lowfirst.intake.KitTables;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartType;
import lowfirst.problem.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Single constructs of IPC-2581 in files written by hand: ranges, tolerances, pads, moved polygons.
 * The figures were worked out by hand, each beside its case.
 */
class DesignDetailsTest {
  private static String file(String items, String step) {
    return "<IPC-2581 revision=\"C\"><Bom name=\"b\">"
        + items
        + "</Bom><Ecad><CadHeader units=\"MILLIMETER\"/><CadData><Layer name=\"T\" side=\"TOP\"/>"
        + "<Step name=\"s\">"
        + step
        + "</Step></CadData></Ecad></IPC-2581>";
  }

  private static PartType type(KitReading reading) {
    return reading.kit().boards().get(0).items().get(0).partType();
  }

  private static KitReading item(String designator, String characteristics) {
    return KitTables.read(
        "board.xml",
        file(
            "<BomItem OEMDesignNumberRef=\"\" quantity=\"1\"><RefDes name=\""
                + designator
                + "\" populate=\"true\"/><Characteristics>"
                + characteristics
                + "</Characteristics></BomItem>",
            ""));
  }

  private static String measured(
      String name, String value, String unit, String minus, String plus) {
    return "<Measured measuredCharacteristicName=\"%s\" measuredCharacteristicValue=\"%s\""
            .formatted(name, value)
        + " engineeringUnitOfMeasure=\"%s\" engineeringNegativeTolerance=\"%s\""
            .formatted(unit, minus)
        + " engineeringPositiveTolerance=\"%s\"/>".formatted(plus);
  }

  private static String ranged(String name, String lower, String upper, String unit) {
    return "<Ranged rangedCharacteristicName=\"%s\" rangedCharacteristicLowerValue=\"%s\""
            .formatted(name, lower)
        + " rangedCharacteristicUpperValue=\"%s\" engineeringUnitOfMeasure=\"%s\"/>"
            .formatted(upper, unit);
  }

  /**
   * 500 of 10 000 are 5 %; 20 and 80 of 100 differ; a limit above the value can't be in its unit.
   */
  @ParameterizedTest(name = "{1} {2} -{3} +{4} is {5}")
  @CsvSource({
    "R1, 10000, OHM, 500, 500, ±5 %",
    "R1, 10000, OHM, -500, 500, ±5 %",
    "C1, 100, NF, 20, 80, -20/+80 %",
    "R1, 47, KOHM, 0.47, 0.47, ±1 %",
    "R1, 4.7, OHM, 5, 5, none",
    "R1, 4.7, OHM, '', 0.47, none",
    "R1, 4.7, OHM, 0, 0, none"
  })
  void a_tolerance_in_engineering_units_is_one_of_the_value(
      String designator, String value, String unit, String minus, String plus, String tolerance) {
    KitReading reading = item(designator, measured("Value", value, unit, minus, plus));
    assertEquals(tolerance, type(reading).tolerance().map(Object::toString).orElse("none"));
  }

  /** Of numbers that written out would fill a page, the bound is shown as it stands. */
  @Test
  void a_number_with_hundreds_of_zeros_is_not_written_out() {
    assertEquals("3e300 Ω", type(item("R1", ranged("Value", "1e300", "3e300", "OHM"))).text());
    assertEquals("3e-300 Ω", type(item("R1", ranged("Value", "1e-300", "3e-300", "OHM"))).text());
  }

  /** 0.5 of 10 are 5 %. */
  @Test
  void a_tolerance_beside_the_value_is_named_with_the_others_and_is_nothing_else() {
    String with =
        "<BomItem OEMDesignNumberRef=\"\" quantity=\"1\"><RefDes name=\"R%d\"/><Characteristics>%s"
            + "</Characteristics></BomItem>";
    String height = ranged("Height", "2", "3", "MILLIMETER");
    KitReading reading =
        KitTables.read(
            "board.xml",
            file(
                with.formatted(1, measured("Value", "10", "KOHM", "0.5", "0.5"))
                    + with.formatted(2, height + ranged("Tolerance", "-1", "1", "PERCENT")),
                ""));
    assertEquals("±5 %", type(reading).tolerance().orElseThrow().toString());
    assertEquals(
        List.of("characteristic Tolerance, engineering tolerance of the value"),
        reading.understood().get(0).columns().stream()
            .filter(column -> column.meaning().equals("tolerance"))
            .map(column -> column.header())
            .toList());
    assertEquals(0, reading.faults(), reading.problems() + "");
  }

  @Test
  void a_fault_in_the_only_row_stands_at_its_element() {
    KitReading reading =
        KitTables.read(
            "board.xml",
            file(
                "<BomItem OEMDesignNumberRef=\"\" quantity=\"some\"><RefDes name=\"R1\"/></BomItem>",
                ""));
    assertEquals(
        List.of("board.xml:1, column 38 \"BomItem quantity\" (some)"),
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.CELL_UNREADABLE)
            .map(problem -> problem.place().toString())
            .toList());
  }

  @Test
  void a_tolerance_of_its_own_wins() {
    KitReading reading =
        item(
            "R1",
            measured("Value", "10", "KOHM", "1", "1") + ranged("Tolerance", "-2", "2", "PERCENT"));
    assertEquals("±2 %", type(reading).tolerance().orElseThrow().toString());
    KitReading ohms =
        item("R1", measured("Value", "10", "KOHM", "", "") + ranged("Tolerance", "-2", "2", "OHM"));
    assertEquals(Optional.empty(), type(ohms).tolerance());
  }

  /** The middle of 4.6 and 4.8 is 4.7, and 0.1 of it are 2.128 %; nobody sells 4.55. */
  @ParameterizedTest(name = "{1} to {2} {3} is {4} {5}")
  @CsvSource({
    "R1, 4.6, 4.8, KOHM, 4.7 kΩ, ±2.128 %",
    "R1, 9.5, 10.5, OHM, 10 Ω, ±5 %",
    "RV1, 0, 10, KOHM, 10 kΩ, none",
    "C1, '', 100, NF, 100 nF, none",
    "R1, 4.1, 5.0, OHM, none, none",
    "R1, -1, 5.0, OHM, none, none",
    "Y1, 7.9, 8.1, MHZ, none, none"
  })
  void a_range_is_the_value_in_its_middle_or_the_bound_it_goes_up_to(
      String designator, String lower, String upper, String unit, String value, String tolerance) {
    KitReading reading = item(designator, ranged("Value", lower, upper, unit));
    assertEquals(value, type(reading).value().map(Object::toString).orElse("none"));
    assertEquals(tolerance, type(reading).tolerance().map(Object::toString).orElse("none"));
    boolean doubtful =
        reading.problems().stream().anyMatch(p -> p.kind() == Kind.VALUE_NOT_UNDERSTOOD);
    assertEquals(value.equals("none"), doubtful);
  }

  @Test
  void a_rating_and_a_height_are_the_upper_bound_of_their_range() {
    KitReading reading =
        item(
            "C1",
            measured("Value", "10", "UF", "", "")
                + ranged("Voltage", "0", "63", "V")
                + ranged("Height", "10.5", "12", "MILLIMETER"));
    Item item = reading.kit().boards().get(0).items().get(0);
    assertEquals("63 V", item.partType().ratedVoltage().orElseThrow().toString());
    assertEquals(12, item.heightMillimetres().orElseThrow());
  }

  private static final String STACKS =
      "<PadStackDef name=\"pin\"><PadstackHoleDef diameter=\"0.8\" platingStatus=\"PLATED\"/></PadStackDef>"
          + "<PadStackDef name=\"peg\"><PadstackHoleDef diameter=\"3\" platingStatus=\"NONPLATED\"/></PadStackDef>"
          + "<PadStackDef name=\"via\"><PadstackHoleDef diameter=\"0.3\" platingStatus=\"VIA\"/></PadStackDef>"
          + "<PadStackDef name=\"flat\"><PadstackPadDef layerRef=\"T\"/></PadStackDef>";

  private static String pad(String stack, String pin, double x, double y) {
    return "<Pad padstackDefRef=\"%s\"><Location x=\"%s\" y=\"%s\"/>".formatted(stack, x, y)
        + (pin.isEmpty() ? "" : "<PinRef pin=\"" + pin + "\"/>")
        + "</Pad>";
  }

  /** A board of one part, L1, in a package of this inside. */
  private static Board inductor(String inside) {
    KitReading reading =
        KitTables.read(
            "board.xml",
            file(
                "",
                STACKS
                    + "<Package name=\"P\" height=\"5\">"
                    + inside
                    + "</Package><Component refDes=\"L1\" packageRef=\"P\" layerRef=\"T\">"
                    + "<Location x=\"9\" y=\"9\"/></Component>"));
    assertEquals(0, reading.faults());
    return reading.kit().boards().get(0);
  }

  private static BodyOutline body(Board board) {
    return board.outlineOf(Designator.of("L1")).orElseThrow();
  }

  @Test
  void pads_tell_the_pitch_where_a_package_has_neither_outline_nor_pins() {
    Board board =
        inductor(
            "<LandPattern>"
                + pad("pin", "1", 0, 0)
                + pad("pin", "2", 4.5, 6)
                + pad("peg", "", 90, 90)
                + "</LandPattern>");
    assertEquals(2, body(board).pins());
    // 4.5 and 6 at a right angle are 7.5 apart
    assertEquals(7.5, body(board).pitch().orElseThrow(), 1e-9);
    assertEquals(Optional.empty(), body(board).body());
    assertEquals("P", board.placements().get(0).packageText());
  }

  @Test
  void a_pin_with_several_pads_is_one_pin() {
    Board board =
        inductor(
            "<LandPattern>"
                + pad("pin", "1", 0, 0)
                + pad("pin", "1", 0, 1)
                + pad("flat", "1", 0, 2)
                + pad("pin", "2", 5, 0)
                + "</LandPattern>");
    assertEquals(2, body(board).pins());
  }

  @Test
  void pads_without_a_hole_for_a_pin_are_surface_mount() {
    Board board =
        inductor(
            "<LandPattern>"
                + pad("flat", "1", -2, 0)
                + pad("flat", "2", 2, 0)
                + pad("via", "2", 2, 0)
                + "</LandPattern>");
    assertEquals("P (surface-mount)", board.placements().get(0).packageText());
    assertFalse(board.outlineOf(Designator.of("L1")).isPresent());
  }

  @Test
  void pads_tell_how_pins_are_mounted_that_do_not_say_so() {
    String pins =
        "<Pin number=\"1\"><Location x=\"0\" y=\"0\"/></Pin>"
            + "<Pin number=\"2\"><Location x=\"5.08\" y=\"0\"/></Pin>";
    String lands = pad("%s", "1", 0, 0) + pad("%s", "2", 6, 0);
    Board leaded = inductor("<LandPattern>" + lands.replace("%s", "pin") + "</LandPattern>" + pins);
    assertEquals("P", leaded.placements().get(0).packageText());
    assertEquals(5.08, body(leaded).pitch().orElseThrow(), 1e-9);
    Board flat = inductor("<LandPattern>" + lands.replace("%s", "flat") + "</LandPattern>" + pins);
    assertEquals("P (surface-mount)", flat.placements().get(0).packageText());
    Board unknown = inductor("<LandPattern>" + lands.replace("%s", "?") + "</LandPattern>" + pins);
    assertEquals("P", unknown.placements().get(0).packageText());
  }

  private static String rectangle(double x, double y) {
    return "<PolyBegin x=\"0\" y=\"0\"/><PolyStepSegment x=\"%s\" y=\"0\"/>".formatted(x)
        + "<PolyStepSegment x=\"%s\" y=\"%s\"/><PolyStepSegment x=\"0\" y=\"%s\"/>"
            .formatted(x, y, y);
  }

  private static String sizeAndMiddle(String polygon) {
    Board board =
        inductor(
            "<Outline><Polygon>"
                + polygon
                + "</Polygon></Outline><Pin number=\"1\" type=\"THRU\"/><Pin number=\"2\" type=\"THRU\"/>");
    return "%.4f x %.4f about %.4f %.4f"
        .formatted(
            body(board).lengthMillimetres(),
            body(board).widthMillimetres(),
            board.placements().get(0).xMillimetres() - 9,
            board.placements().get(0).yMillimetres() - 9);
  }

  /** At 45 degrees 4 by 2 is (4 + 2) / root 2 = 4.2426 wide and high. */
  @Test
  void a_turned_polygon_is_as_large_as_its_turned_corners() {
    assertEquals(
        "4.2426 x 4.2426 about 0.7071 2.1213",
        sizeAndMiddle(rectangle(4, 2) + "<Xform rotation=\"45\"/>"));
    assertEquals(
        "2.0000 x 4.0000 about -1.0000 2.0000",
        sizeAndMiddle(rectangle(4, 2) + "<Xform rotation=\"90\"/>"));
    // a square on its corner, as drawn, is no larger than its corners say
    assertEquals(
        "2.0000 x 2.0000 about 0.0000 0.0000",
        sizeAndMiddle(
            "<PolyBegin x=\"1\" y=\"0\"/><PolyStepSegment x=\"0\" y=\"1\"/>"
                + "<PolyStepSegment x=\"-1\" y=\"0\"/><PolyStepSegment x=\"0\" y=\"-1\"/>"));
  }

  /**
   * 0 to 3 mirrored is -3 to 0, doubled -6 to 0, shifted by 1 it is -5 to 1: the middle is -2; of 3
   * to 5, 4.
   */
  @Test
  void a_polygon_may_be_mirrored_scaled_and_shifted() {
    assertEquals(
        "6.0000 x 2.0000 about -2.0000 4.0000",
        sizeAndMiddle(
            rectangle(3, 1) + "<Xform mirror=\"true\" scale=\"2\" xOffset=\"1\" yOffset=\"3\"/>"));
  }

  private static final String HALF_DISC =
      "<PolyBegin x=\"0\" y=\"0\"/><PolyStepCurve x=\"10\" y=\"0\" centerX=\"5\" centerY=\"0\" clockwise=\"true\"/>"
          + "<PolyStepSegment x=\"0\" y=\"0\"/>";

  /**
   * Half a disc of radius 5 over the x axis. Turned by 30 degrees its centre is at 4.3301, 2.5; it
   * reaches 5 to the left and up of that, to its corner at 8.6603, 5 on the right, and to the
   * origin below: from -0.6699 to 8.6603 and from 0 to 7.5. Mirrored, the arc runs the other way.
   */
  @Test
  void an_arc_reaches_as_far_as_it_runs_also_when_it_is_turned() {
    assertEquals("10.0000 x 5.0000 about 5.0000 2.5000", sizeAndMiddle(HALF_DISC));
    // XML Schema, part 2, 3.2.2: a boolean is true, false, 1 or 0.
    assertEquals(
        "10.0000 x 5.0000 about 5.0000 2.5000",
        sizeAndMiddle(HALF_DISC.replace("\"true\"", "\"1\"")));
    assertEquals(
        "10.0000 x 5.0000 about 5.0000 -2.5000",
        sizeAndMiddle(HALF_DISC.replace("\"true\"", "\"0\"")));
    assertEquals(
        "9.3301 x 7.5000 about 3.9952 3.7500",
        sizeAndMiddle(HALF_DISC + "<Xform rotation=\"30\"/>"));
    assertEquals(
        "10.0000 x 5.0000 about -5.0000 2.5000",
        sizeAndMiddle(HALF_DISC + "<Xform mirror=\"true\"/>"));
  }

  @Test
  void a_polygon_of_more_corners_than_a_board_has_is_refused() {
    String many =
        "<PolyBegin x=\"0\" y=\"0\"/>" + "<PolyStepSegment x=\"1\" y=\"1\"/>".repeat(50_001);
    KitReading reading =
        KitTables.read("board.xml", file("", "<Profile><Polygon>" + many + "</Polygon></Profile>"));
    assertEquals(
        List.of("a polygon has more than 50000 corners, so nothing of this file was used"),
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.DESIGN_UNREADABLE)
            .map(problem -> problem.message())
            .toList());
  }
}
