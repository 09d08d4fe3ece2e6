package lowfirst.intake.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.board.Side;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;
import lowfirst.intake.KitReading;
import lowfirst.intake.KitTables;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.table.Understanding;
import lowfirst.part.BodyOutline;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Boards in one file, as IPC-2581 has them. The samples were written by hand from the standard's
 * element names; what is expected of them was worked out by hand, too.
 */
class DesignTest {
  private static String lampBoard() {
    try (var in = DesignTest.class.getResourceAsStream("/designs/lamp-board-b.xml")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }

  /** A board of one resistor and one diode in revision {@code revision}, in {@code unit}. */
  private static String small(String revision, String unit, double scale) {
    return String.format(
        Locale.ROOT,
        """
        <IPC-2581 revision="%s" xmlns="http://webstds.ipc.org/2581">
        <Content roleRef="Owner"><FunctionMode mode="ASSEMBLY"/><StepRef name="s"/></Content>
        <Bom name="b">
        <BomItem OEMDesignNumberRef="n1" quantity="1" category="ELECTRICAL">
        <RefDes name="R1" packageRef="P" populate="true" layerRef="L1"/>
        <Characteristics category="ELECTRICAL">
        <Textual textualCharacteristicName="Val" textualCharacteristicValue="10k"/>
        </Characteristics></BomItem>
        <BomItem OEMDesignNumberRef="1N4148" quantity="1" category="ELECTRICAL">
        <RefDes name="D1" packageRef="P" populate="true" layerRef="L2"/></BomItem>
        </Bom>
        <Ecad name="e"><CadHeader units="%s"/><CadData>
        <Layer name="L1" side="TOP"/><Layer name="L2" side="BOTTOM"/>
        <Step name="s">
        <Package name="P" height="%f"/>
        <Component refDes="R1" packageRef="P" layerRef="L1"><Location x="%f" y="%f"/></Component>
        <Component refDes="D1" packageRef="P" layerRef="L2"><Location x="%f" y="%f"/></Component>
        </Step></CadData></Ecad>
        </IPC-2581>
        """,
        revision,
        unit,
        2 * scale,
        10 * scale,
        20 * scale,
        -30 * scale,
        40 * scale);
  }

  private static Board board(KitReading reading) {
    return reading.kit().boards().get(0);
  }

  private static List<String> problems(KitReading reading, Kind kind) {
    return reading.problems().stream()
        .filter(problem -> problem.kind() == kind)
        .map(Problem::message)
        .toList();
  }

  @Test
  void the_bill_of_materials_becomes_items() {
    List<String> items =
        board(KitTables.read("board.xml", lampBoard())).items().stream()
            .map(
                item ->
                    item.designators()
                        + " "
                        + item.quantity()
                        + " "
                        + item.partType().words()
                        + " "
                        + item.partType().typeNumber()
                        + " "
                        + item.partType().packageName()
                        + " "
                        + item.fitting())
            .toList();
    assertEquals(
        List.of(
            "[R1, R2] 2 4.7 kΩ resistor BP-R-4K7 AXIAL-0207 FITTED",
            "[R3] 1 4.7 kΩ resistor BP-R-4K7 AXIAL-0207 NOT_FITTED",
            "[C1] 1 100 nF capacitor BP-C-100N DISC-5 FITTED",
            "[Q1] 1 BP-N60L MOSFET BP-N60L UPRIGHT-3 FITTED",
            "[C2] 1 1 µF capacitor BP-U FLAT-2 (surface-mount) FITTED",
            "[] 4 screw M3x10 hardware screw M3x10  FITTED"),
        items);
  }

  @Test
  void tolerance_power_and_voltage_are_taken_from_the_characteristics() {
    List<Item> items = board(KitTables.read("board.xml", lampBoard())).items();
    assertEquals("±1 %", items.get(0).partType().tolerance().orElseThrow().toString());
    assertEquals("250 mW", items.get(0).partType().ratedPower().orElseThrow().toString());
    assertEquals("50 V", items.get(2).partType().ratedVoltage().orElseThrow().toString());
  }

  /** R1 starts at its first pin: its middle is 5.08 mm on; turned over it is 5.08 mm back. */
  @Test
  void a_component_becomes_a_placement_at_the_middle_of_its_body() {
    List<String> placements =
        board(KitTables.read("board.xml", lampBoard())).placements().stream()
            .map(DesignTest::shown)
            .toList();
    assertEquals(
        List.of(
            "R1 7.08 5.00 0 top",
            "R2 20.00 10.08 90 top",
            "R3 34.92 12.00 0 bottom",
            "C1 10.00 20.00 270 bottom",
            "Q1 30.00 23.75 0 top",
            "C2 38.00 25.00 0 top"),
        placements);
  }

  /** Q1's body reaches from -1 to 3.5 along y: turned by 90 degrees its middle is 1.25 mm left. */
  @ParameterizedTest
  @CsvSource({"0, 30.00, 23.75", "90, 28.75, 22.50", "180, 30.00, 21.25", "30, 29.38, 23.58"})
  void a_body_beside_its_origin_is_turned_about_it(String degrees, String x, String y) {
    String file =
        lampBoard()
            .replace(
                "<Location x=\"3.0E+1\"",
                "<Xform rotation=\"" + degrees + "\"/><Location x=\"3.0E+1\"");
    assertEquals(
        "Q1 " + x + " " + y + " " + degrees + " top",
        shown(board(KitTables.read("board.xml", file)).placements().get(4)));
  }

  private static String shown(Placement placement) {
    return String.format(
        Locale.ROOT,
        "%s %.2f %.2f %.0f %s",
        placement.designator(),
        placement.xMillimetres(),
        placement.yMillimetres(),
        placement.rotationDegrees(),
        placement.side().words());
  }

  @Test
  void a_package_becomes_a_body_with_its_height_size_and_pitch() {
    Board board = board(KitTables.read("board.xml", lampBoard()));
    BodyOutline resistor = board.outlineOf(Designator.of("R1")).orElseThrow();
    assertEquals(2.6, resistor.height().orElseThrow());
    assertEquals(6.3, resistor.lengthMillimetres(), 1e-9);
    assertEquals(2.5, resistor.widthMillimetres(), 1e-9);
    assertEquals(10.16, resistor.pitch().orElseThrow(), 1e-9);
    assertEquals(2, resistor.pins());
    // A height of 0 is none; an arc reaches further than its ends.
    BodyOutline disc = board.outlineOf(Designator.of("C1")).orElseThrow();
    assertTrue(disc.height().isEmpty());
    assertEquals(5, disc.widthMillimetres(), 1e-9);
    // The component's own height wins over its package's.
    BodyOutline transistor = board.outlineOf(Designator.of("Q1")).orElseThrow();
    assertEquals(19.2, transistor.height().orElseThrow());
    assertEquals(3.6, transistor.standOffMillimetres());
    assertFalse(board.outlineOf(Designator.of("C2")).isPresent());
  }

  @Test
  void the_profile_becomes_the_boards_size_without_its_cutouts() {
    assertEquals(
        Optional.of(new Board.Size(-5, 0, 50, 30)),
        board(KitTables.read("board.xml", lampBoard())).size());
  }

  @Test
  void what_the_pins_say_is_flat_is_said_to_be_surface_mount() {
    KitReading reading = KitTables.read("board.xml", lampBoard());
    assertEquals(1, problems(reading, Kind.SURFACE_MOUNT).size());
    assertEquals(
        List.of("how high C1 will stand is not known: \"DISC-5\" tells no height"),
        problems(reading, Kind.HEIGHT_UNKNOWN));
    assertEquals(
        List.of("the file has no height for 1 of 6 components"),
        problems(reading, Kind.DESIGN_INCOMPLETE));
    assertEquals(0, reading.faults());
  }

  @Test
  void problems_stand_at_the_line_and_column_of_the_element() {
    KitReading reading = KitTables.read("board.xml", lampBoard());
    Problem problem =
        reading.problems().stream()
            .filter(p -> p.kind() == Kind.PLACED_BUT_NOT_FITTED)
            .findFirst()
            .orElseThrow();
    assertEquals("board.xml:118, column 9 \"Component refDes\" (R3)", problem.place().toString());
  }

  @ParameterizedTest(name = "revision {0} in {1}")
  @CsvSource({
    "A, MILLIMETER, 1",
    "B, INCH, 0.03937007874015748",
    "B1, MICRON, 1000",
    "C, MILLIMETER, 1"
  })
  void every_revision_and_unit_gives_the_same_board(String revision, String unit, double scale) {
    Board board = board(KitTables.read("any.xml", small(revision, unit, scale)));
    assertEquals(
        List.of("R1 10.00 20.00 0 top", "D1 -30.00 40.00 0 bottom"),
        board.placements().stream().map(DesignTest::shown).toList());
    assertEquals(
        2.0, board.outlineOf(Designator.of("D1")).orElseThrow().height().orElseThrow(), 1e-4);
    assertEquals(
        List.of("10 kΩ resistor", "1N4148 diode"),
        board.items().stream().map(item -> item.partType().words()).toList());
  }

  @Test
  void a_prefix_an_encoding_and_a_missing_namespace_make_no_difference() {
    String plain = small("C", "MILLIMETER", 1);
    String prefixed = plain.replaceAll("<(/?)([A-Z])", "<$1b:$2").replace(" xmlns=", " xmlns:b=");
    var wide = new TreeMap<String, byte[]>();
    wide.put(
        "board.xml",
        ("\ufeff<?xml version=\"1.0\" encoding=\"UTF-16\"?>" + plain)
            .getBytes(StandardCharsets.UTF_16LE));
    Board expected = board(KitTables.read("board.xml", plain));
    for (KitReading reading :
        List.of(
            KitTables.read("board.xml", prefixed),
            KitTables.read("board.xml", plain.replaceFirst(" xmlns=\"[^\"]*\"", "")),
            KitReader.read(new KitFiles("kit", wide, List.of())))) {
      assertEquals(2, board(reading).items().size());
      assertEquals(
          expected.placements().stream().map(DesignTest::shown).toList(),
          board(reading).placements().stream().map(DesignTest::shown).toList());
    }
  }

  @Test
  void a_qualifier_before_a_name_says_only_what_it_names() {
    String plain = small("C", "MILLIMETER", 1);
    String qualified =
        plain
            .replace("refDes=\"", "refDes=\"CMP:")
            .replace("RefDes name=\"", "RefDes name=\"CMP:")
            .replace("packageRef=\"", "packageRef=\"PKG:")
            .replace("Package name=\"", "Package name=\"PKG:")
            .replace("layerRef=\"", "layerRef=\"LAYER:")
            .replace("Layer name=\"", "Layer name=\"LAYER:");
    Board board = board(KitTables.read("board.xml", qualified));
    assertEquals(
        List.of("R1 10.00 20.00 0 top", "D1 -30.00 40.00 0 bottom"),
        board.placements().stream().map(DesignTest::shown).toList());
    assertEquals(2.0, board.outlineOf(Designator.of("R1")).orElseThrow().height().orElseThrow());
    assertEquals(List.of(Designator.of("R1")), board.items().get(0).designators());
  }

  @Test
  void a_board_is_read_and_not_the_panel_that_repeats_it() {
    String panel =
        small("B", "MILLIMETER", 1)
            .replace(
                "<Step name=\"s\">",
                "<Step name=\"panel\"><Component refDes=\"X1\" packageRef=\"P\" layerRef=\"L1\">"
                    + "<Location x=\"0\" y=\"0\"/></Component>"
                    + "<StepRepeat stepRef=\"s\" x=\"0\" y=\"0\" nx=\"2\" ny=\"2\" dx=\"9\" dy=\"9\"/>"
                    + "</Step><Step name=\"s\" type=\"BOARD\">");
    KitReading reading = KitTables.read("board.xml", panel);
    assertEquals(2, board(reading).placements().size());
    assertTrue(
        problems(reading, Kind.DESIGN_INCOMPLETE)
            .contains("several steps hold components, of which \"s\" was read"));
  }

  @Test
  void the_users_own_tables_count_and_the_file_fills_in_the_rest() {
    KitReading reading =
        KitTables.read(
            "board.xml",
            lampBoard(),
            "bom.csv",
            "designators,quantity,value,height mm\nR1,1,47k,3.1\nR2,1,4k7,\n");
    Board board = board(reading);
    assertEquals(2, board.items().size());
    assertEquals(6, board.placements().size());
    assertEquals("47 kΩ resistor", board.items().get(0).partType().words());
    // The BOM's own height wins, the package's is used where it has none.
    assertEquals(3.1, board.outlineOf(Designator.of("R1")).orElseThrow().height().orElseThrow());
    assertEquals(2.6, board.outlineOf(Designator.of("R2")).orElseThrow().height().orElseThrow());
    assertEquals(
        List.of(
            "bom.csv counts for what to fit, not this file, which only fills in outlines and"
                + " heights"),
        problems(reading, Kind.TABLE_NOT_USED));
    assertEquals(List.of(), problems(reading, Kind.TABLE_MISSING));
  }

  @Test
  void a_list_with_an_origin_of_its_own_is_not_held_against_the_profile() {
    String near = "designator,x mm,y mm\nR1,2,5\nR2,20,5\nQ1,30,22\n";
    String far = "designator,x mm,y mm\nR1,102,105\nR2,120,105\nQ1,130,122\n";
    assertTrue(
        board(KitTables.read("board.xml", lampBoard(), "placements.csv", near)).size().isPresent());
    assertTrue(
        board(KitTables.read("board.xml", lampBoard(), "placements.csv", far)).size().isEmpty());
  }

  @Test
  void a_file_named_alone_or_in_the_list_of_boards_is_read_too() {
    Map<String, byte[]> bytes = Map.of("lamp.xml", lampBoard().getBytes(StandardCharsets.UTF_8));
    var given = new KitFiles.Given(Optional.of("lamp.xml"), List.of());
    KitReading alone = KitReader.read(new KitFiles("kit", bytes, List.of(), Optional.of(given)));
    assertEquals(6, board(alone).placements().size());
    KitReading listed =
        KitTables.read("boards.csv", "board,count,bom\nlamp,2,lamp.xml\n", "lamp.xml", lampBoard());
    assertEquals(6, board(listed).items().size());
    assertEquals(2, board(listed).count());
  }

  @Test
  void how_it_was_understood_names_elements_and_characteristics() {
    KitReading reading = KitTables.read("board.xml", lampBoard());
    Understanding bom = reading.understood().get(0);
    assertEquals("XML (IPC-2581 revision B)", bom.encoding());
    assertEquals(6, bom.rows());
    assertEquals(3, bom.firstRows().size());
    assertTrue(bom.firstRows().get(0).toString().contains("BP-R-4K7"), bom.firstRows() + "");
    assertEquals(
        Map.of("value", "characteristic Value, RESISTANCE", "power", "characteristic POWER"),
        bom.columns().stream()
            .filter(column -> column.meaning().equals("value") || column.meaning().equals("power"))
            .collect(Collectors.toMap(c -> c.meaning(), c -> c.header())));
    assertEquals(
        Map.of("value", "bom.value its name", "designators", " IPC-2581 says so"),
        bom.columns().stream()
            .filter(c -> c.meaning().equals("value") || c.meaning().equals("designators"))
            .collect(Collectors.toMap(c -> c.meaning(), c -> c.key() + " " + c.basis())));
    Understanding placements = reading.understood().get(1);
    assertTrue(placements.notes().contains("coordinates in mm, as the header says"));
  }

  /** A panel repeats the board and has no components of its own. */
  @Test
  void the_step_with_components_is_the_board_and_an_empty_one_is_not_asked_about() {
    String file = small("B", "MILLIMETER", 1);
    KitReading reading =
        KitTables.read(
            "board.xml",
            file.replace("<Step name=\"s\">", "<Step name=\"panel\"></Step><Step name=\"s\">"));
    assertEquals(2, board(reading).placements().size());
    assertEquals(
        KitTables.problems(KitTables.read("board.xml", file)), KitTables.problems(reading));
  }

  @Test
  void a_column_map_names_the_characteristic_that_holds_the_value() {
    String file =
        small("B", "MILLIMETER", 1)
            .replace(
                "</Characteristics>",
                "<Textual textualCharacteristicName=\"Colour\" textualCharacteristicValue=\"22k\"/>"
                    + "</Characteristics>");
    KitReading reading =
        KitReader.read(
            KitTables.files("board.xml", file), new ColumnMap(Map.of("bom.value", "colour")));
    assertEquals("22 kΩ resistor", board(reading).items().get(0).partType().words());
  }

  @Test
  void a_cell_that_cannot_be_read_is_a_fault_at_its_place() {
    String file = small("B", "MILLIMETER", 1).replace("x=\"10.000000\"", "x=\"ten\"");
    KitReading reading = KitTables.read("board.xml", file);
    List<String> faults =
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.CELL_UNREADABLE)
            .map(problem -> problem.place().toString())
            .toList();
    assertEquals(List.of("board.xml:16, column 53 \"Location x (mm)\" (ten)"), faults);
    assertEquals(1, board(reading).placements().size());
  }

  @Test
  void without_units_the_unit_is_guessed_and_said() {
    KitReading reading =
        KitTables.read(
            "board.xml", small("B", "MILLIMETER", 1).replace(" units=\"MILLIMETER\"", ""));
    assertEquals(1, problems(reading, Kind.UNIT_GUESSED).size());
    assertTrue(
        problems(reading, Kind.DESIGN_INCOMPLETE)
            .contains("the file has no units in its CadHeader"));
  }

  @Test
  void a_file_for_the_bare_board_is_said_to_hold_no_parts() {
    KitReading reading =
        KitTables.read(
            "board.xml",
            "<IPC-2581 revision=\"C\"><Ecad><CadHeader units=\"INCH\"/></Ecad></IPC-2581>");
    assertEquals(
        List.of("the file has neither a bill of materials nor components"),
        problems(reading, Kind.TABLE_MISSING));
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "<IPC-2581><Bom><BomItem></Bom></IPC-2581>",
        "<IPC-2581><Bom>",
        "<IPC-2581",
        "<IPC-2581><Bom name=\"a\" name=\"b\"/></IPC-2581>",
        "<IPC-2581>&nothing;</IPC-2581>",
        "<!DOCTYPE IPC-2581 SYSTEM \"file:///etc/passwd\"><IPC-2581/>",
        "<!DOCTYPE IPC-2581 [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;\">]><IPC-2581>&b;</IPC-2581>"
      })
  void a_broken_file_or_one_with_a_document_type_is_refused_with_its_place(String text) {
    KitReading reading = KitTables.read("board.xml", text);
    Problem fault =
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.DESIGN_UNREADABLE)
            .findFirst()
            .orElseThrow();
    assertEquals(1, fault.place().line());
    assertTrue(fault.place().column() >= 1);
    assertEquals(0, board(reading).items().size());
  }

  @Test
  void a_file_that_is_too_deep_or_has_too_long_a_tag_is_refused() {
    String deep = "<IPC-2581>" + "<a>".repeat(5000) + "</a>".repeat(5000) + "</IPC-2581>";
    String longTag = "<IPC-2581 revision=\"" + "B".repeat(2 << 20) + "\"/>";
    var many = new StringBuilder("<IPC-2581><Bom name=\"b\"><BomItem quantity=\"1\">");
    many.append("<RefDes name=\"R1\"/>".repeat(200_001)).append("</BomItem></Bom></IPC-2581>");
    for (String text : List.of(deep, longTag, many.toString())) {
      KitReading reading = KitTables.read("board.xml", text);
      assertEquals(1, problems(reading, Kind.DESIGN_UNREADABLE).size());
    }
  }

  @Test
  void no_cut_of_the_file_throws_or_looks_whole() {
    String text = lampBoard();
    for (int end = text.indexOf("<Content"); end < text.indexOf("</IPC-2581>"); end += 97) {
      KitReading reading = KitTables.read("board.xml", text.substring(0, end));
      assertEquals(1, problems(reading, Kind.DESIGN_UNREADABLE).size(), "cut at " + end);
      assertEquals(0, board(reading).items().size());
    }
  }

  @Test
  void other_xml_files_are_no_boards() {
    assertFalse(Design.isOne("<?xml version=\"1.0\"?><board/>".getBytes(StandardCharsets.UTF_8)));
    assertFalse(Design.isOne("IPC-2581,a,b\n".getBytes(StandardCharsets.UTF_8)));
    assertFalse(Design.isOne(new byte[0]));
    assertTrue(
        Design.isOne(
            "<?xml version=\"1.0\"?>\n<!-- <board> -->\n<i:IPC-2581 revision='C'>"
                .getBytes(Charset.forName("windows-1252"))));
  }

  @Test
  void sides_are_told_by_the_layer_and_by_nothing_else() {
    var sides = new ArrayList<Side>();
    String file = small("B", "MILLIMETER", 1).replace("<Layer name=\"L2\" side=\"BOTTOM\"/>", "");
    KitReading reading = KitTables.read("board.xml", file);
    board(reading).placements().forEach(placement -> sides.add(placement.side()));
    // L2 reads as a second layer's name, which SideWords knows as the bottom.
    assertEquals(List.of(Side.TOP, Side.BOTTOM), sides);
    KitReading unknown = KitTables.read("board.xml", file.replace("L2", "inner"));
    assertEquals(
        List.of("\"inner\" names no side of the board"), problems(unknown, Kind.CELL_UNREADABLE));
  }
}
