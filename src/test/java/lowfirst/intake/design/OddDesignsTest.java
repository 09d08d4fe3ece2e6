package lowfirst.intake.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Placement;
import lowfirst.intake.Dialects;
import lowfirst.intake.KitReading;
import lowfirst.intake.KitTables;
import lowfirst.intake.column.ColumnMap;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * IPC-2581 files that are written otherwise than usual, within the standard or a step beside it. By
 * hand, like what is expected of them: R1 at 10, 20 on the top, C1 at 30, 40 turned by 90 degrees
 * on the bottom.
 */
class OddDesignsTest {
  private static final String PLAIN =
      """
      <IPC-2581 revision="B" xmlns="http://webstds.ipc.org/2581">
      <Content roleRef="o"><StepRef name="s"/><BomRef name="b"/></Content>
      <Bom name="b"><BomHeader><StepRef name="s"/></BomHeader>
      <BomItem OEMDesignNumberRef="n1" quantity="1"><RefDes name="R1" packageRef="P"/>
      <Characteristics><Textual textualCharacteristicName="Value" textualCharacteristicValue="10k"/>
      </Characteristics></BomItem>
      <BomItem OEMDesignNumberRef="n2" quantity="1"><RefDes name="C1" packageRef="P"/>
      <Characteristics><Textual textualCharacteristicName="Value" textualCharacteristicValue="1n"/>
      </Characteristics></BomItem></Bom>
      <Ecad name="e"><CadHeader units="MILLIMETER"/><CadData>
      <Layer name="L1" side="TOP"/><Layer name="L2" side="BOTTOM"/>
      <Step name="s" type="BOARD"><Package name="P" height="2"/>
      <Component refDes="R1" packageRef="P" layerRef="L1"><Location x="10" y="20"/></Component>
      <Component refDes="C1" packageRef="P" layerRef="L2">
      <Xform rotation="90" mirror="true"/><Location x="30" y="40"/></Component>
      </Step></CadData></Ecad>
      </IPC-2581>
      """;

  private static final String OTHER_BOM =
      "<Bom name=\"x\"><BomHeader><StepRef name=\"panel\"/></BomHeader>"
          + "<BomItem quantity=\"9\"><RefDes name=\"R1\"/></BomItem></Bom>\n";

  private static final String OTHER_BOARD =
      "<Step name=\"t\" type=\"BOARD\"><Component refDes=\"R9\" layerRef=\"L1\">"
          + "<Location x=\"1\" y=\"1\"/></Component></Step>";

  private static final List<String> READ =
      List.of(
          "item | C1 | 1 | capacitor | 1 nF | | fitted",
          "item | R1 | 1 | resistor | 10 kΩ | | fitted",
          "place | C1 | 30 | 40 | 90 | bottom",
          "place | R1 | 10 | 20 | 0 | top");

  @TestFactory
  Stream<DynamicTest> what_is_written_otherwise_is_read_alike() {
    Map<String, UnaryOperator<String>> ways =
        Map.ofEntries(
            Map.entry("as it stands", text -> text),
            Map.entry("with a prefix", OddDesignsTest::prefixed),
            Map.entry("as revision A names things", OddDesignsTest::ofRevisionA),
            Map.entry(
                "with a prefix that nobody declared",
                text -> prefixed(text).replaceFirst(" xmlns:i=\"[^\"]*\"", "")),
            Map.entry("without a namespace", text -> text.replaceFirst(" xmlns=\"[^\"]*\"", "")),
            Map.entry(
                "with comments and instructions",
                text ->
                    "<?xml version=\"1.0\"?>\n<!-- <Bom> -->\n<?style <Ecad> ?>\n"
                        + text.replace("<Location", "<!-- <Location x=\"7\"/> --><Location")),
            Map.entry("with XML Schema's other true", text -> text.replace("\"true\"", "\"1\"")),
            Map.entry("turned backwards", text -> text.replace("\"90\"", "\"-270.0\"")),
            Map.entry("turned more than once", text -> text.replace("\"90\"", "\"4.5E+2\"")),
            Map.entry("with its units in small letters", text -> text.replace("METER", "meter")),
            Map.entry("with its units shortened", text -> text.replace("MILLIMETER", "mm")),
            Map.entry(
                "in microns",
                text -> text.replace("MILLIMETER", "MICRON").replaceAll("( [xy]=\"\\d+)", "$1000")),
            Map.entry(
                "with units in a dictionary",
                text -> text.replace("<BomRef", "<DictionaryStandard units=\"INCH\"/><BomRef")),
            Map.entry(
                "after another bill", text -> text.replaceFirst("<Bom ", OTHER_BOM + "<Bom ")),
            Map.entry(
                "after an empty bill",
                text -> text.replaceFirst("<Bom ", "<Bom name=\"y\"/><Bom ")),
            Map.entry(
                "after a bill that is not referred to",
                text ->
                    text.replace("<BomHeader><StepRef name=\"s\"/></BomHeader>", "")
                        .replaceFirst("<Bom ", OTHER_BOM + "<Bom ")),
            Map.entry(
                "after another board", text -> text.replaceFirst("<Step ", OTHER_BOARD + "<Step ")),
            Map.entry(
                "after a panel with a part of its own",
                text ->
                    text.replaceFirst("<Step ", OTHER_BOARD.replace("BOARD", "PANEL") + "<Step ")));
    return ways.entrySet().stream()
        .map(
            way ->
                DynamicTest.dynamicTest(
                    way.getKey(),
                    () -> assertEquals(READ, shown(way.getValue().apply(PLAIN)), way.getKey())));
  }

  /** The attributes of public test case 3 of the standard's consortium, which is of revision A. */
  private static String ofRevisionA(String text) {
    return text.replace("revision=\"B\"", "revision=\"A\"")
        .replace("<BomHeader><StepRef name=\"s\"/></BomHeader>", "<BomHeader stepRef=\"s\"/>")
        .replace(
            " packageRef=\"P\"/>\n<Characteristics>", " populate=\"TRUE\"/>\n<Characteristics>")
        .replace("OEMDesignNumberRef=", "numberIO=\"2\" packageRef=\"P\" internalPartNumber=");
  }

  private static String prefixed(String text) {
    return text.replaceAll("<(/?)(?=[A-Z])", "<$1i:").replace("xmlns=", "xmlns:i=");
  }

  private static List<String> shown(String file) {
    return Dialects.shown(KitTables.read("board.xml", file)).stream()
        .filter(line -> !line.startsWith("problem"))
        .toList();
  }

  @Test
  void a_document_type_is_refused_where_it_stands_with_its_remedy() {
    assertEquals(
        List.of(
            "board.xml:3, column 2 (empty): it has a document type, which could hide what is in it,"
                + " so nothing of this file was used; export it again without one, or delete it:"
                + " from <!DOCTYPE to its >"),
        KitTables.problems(
                KitTables.read(
                    "board.xml",
                    "<?xml version=\"1.0\"?>\n<!DOCTYPE IPC-2581 [<!ENTITY a \"b\">\n]>" + PLAIN))
            .stream()
            .map(problem -> problem.replaceFirst("column \\d+", "column 2"))
            .filter(problem -> problem.startsWith("board.xml:"))
            .toList());
  }

  @Test
  void a_name_behind_a_hash_is_said_once_for_bill_and_component() {
    List<Problem> said =
        KitTables.read("board.xml", PLAIN.replace("\"R1\"", "\"#R1\"")).problems().stream()
            .filter(problem -> problem.kind() == Kind.OPTIONAL_PART)
            .toList();
    assertEquals(1, said.size());
    // The line of the RefDes.
    assertEquals(4, said.get(0).place().line());
    assertEquals("take the part out if it is not fitted, else delete the #", said.get(0).remedy());
  }

  @Test
  void a_hash_in_a_file_without_a_bill_is_said_of_the_component() {
    String bare = PLAIN.replaceFirst("(?s)<Bom .*</Bom>", "").replace("\"R1\"", "\"#R1\"");
    assertEquals(
        1,
        KitTables.read("board.xml", bare).problems().stream()
            .filter(problem -> problem.kind() == Kind.OPTIONAL_PART)
            .count());
  }

  @Test
  void each_thing_that_is_missing_has_its_own_remedy() {
    List<Problem> said =
        KitTables.read("board.xml", PLAIN.replaceFirst("<Package [^>]*>", "")).problems().stream()
            .filter(problem -> problem.kind() == Kind.DESIGN_INCOMPLETE)
            .toList();
    assertEquals(
        List.of(
            "the file has no height for 2 of 2 components",
            "the file has no package for 2 of 2 components",
            "the file has no profile of the board"),
        said.stream().map(Problem::message).sorted().toList());
    assertEquals(3, said.stream().map(Problem::remedy).distinct().count());
  }

  /** Neither is named in the content section. */
  @Test
  void of_two_bills_that_of_the_step_is_read() {
    KitReading reading =
        KitTables.read(
            "board.xml",
            PLAIN
                .replace("<BomRef name=\"b\"/>", "")
                .replace("<Bom name", OTHER_BOM + "<Bom name"));
    assertEquals(
        List.of("R1", "C1"),
        reading.kit().boards().get(0).items().stream()
            .flatMap(item -> item.designators().stream())
            .map(Designator::text)
            .toList());
  }

  /** 4 by 3 inches: 101.6 by 76.2 mm. */
  @Test
  void a_board_in_inches_has_its_size_in_millimetres() {
    String file =
        PLAIN
            .replace("MILLIMETER", "INCH")
            .replace(
                "<Package name",
                "<Profile><Polygon><PolyBegin x=\"0\" y=\"0\"/><PolyStepSegment x=\"4\" y=\"0\"/>"
                    + "<PolyStepSegment x=\"4\" y=\"3\"/><PolyStepSegment x=\"0\" y=\"3\"/>"
                    + "</Polygon></Profile><Package name");
    Board.Size size = KitTables.read("board.xml", file).kit().boards().get(0).size().orElseThrow();
    assertEquals(101.6, size.widthMillimetres(), 1e-9);
    assertEquals(76.2, size.heightMillimetres(), 1e-9);
  }

  @Test
  void units_that_nobody_knows_are_a_fault() {
    KitReading reading = KitTables.read("board.xml", PLAIN.replace("MILLIMETER", "FURLONG"));
    assertEquals(
        List.of("10:16 the units \"FURLONG\" of its CadHeader are not known"),
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.UNIT_UNKNOWN)
            .map(it -> it.place().line() + ":" + it.place().column() + " " + it.message())
            .toList());
  }

  @Test
  void letters_in_another_encoding_than_stated_are_pointed_to() {
    String text = PLAIN.replace("1n", "1 µF");
    assertEquals(List.of(8), brokenLines(text, "windows-1252"));
    assertEquals(List.of(), brokenLines(text, "UTF-8"));
    assertEquals(
        List.of(),
        brokenLines("<?xml version=\"1.0\" encoding=\"windows-1252\"?>\n" + text, "windows-1252"));
  }

  private static List<Integer> brokenLines(String text, String encoding) {
    byte[] bytes = text.getBytes(Charset.forName(encoding));
    return Design.read("board.xml", bytes, ColumnMap.empty()).problems().stream()
        .filter(problem -> problem.kind() == Kind.DESIGN_UNREADABLE)
        .filter(problem -> problem.message().contains("another encoding"))
        .map(problem -> problem.place().line())
        .toList();
  }

  @Test
  void a_component_on_a_layer_inside_the_board_is_left_out_and_said() {
    KitReading reading =
        KitTables.read("board.xml", PLAIN.replace("layerRef=\"L1\"", "layerRef=\"INNER3\""));
    assertEquals(
        List.of("\"INNER3\" names no side of the board"),
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.CELL_UNREADABLE)
            .map(problem -> problem.message())
            .toList());
  }

  /** 100,000 segments of copper, which tell nothing of parts. */
  @Test
  void much_copper_is_passed_over() {
    String segment =
        "<Polyline><PolyBegin x=\"1\" y=\"1\"/><PolyStepSegment x=\"2\" y=\"2\"/></Polyline>\n";
    String copper =
        "<LayerFeature layerRef=\"L1\"><Set><Features>"
            + segment.repeat(100_000)
            + "</Features></Set></LayerFeature></Step>";
    String large = PLAIN.replace("</Step>", copper);
    assertEquals(READ, shown(large));
    assertEquals(
        large.length(), large.getBytes(StandardCharsets.US_ASCII).length, "the sample is ASCII");
  }

  /** As public test case 3 of the standard's consortium writes components that lie as drawn. */
  @Test
  void a_component_without_a_transformation_is_not_turned() {
    List<Placement> placements =
        KitTables.read("board.xml", PLAIN).kit().boards().get(0).placements();
    assertEquals(List.of(0.0, 90.0), placements.stream().map(Placement::rotationDegrees).toList());
    assertTrue(placements.stream().allMatch(Placement::isTurnKnown));
  }
}
