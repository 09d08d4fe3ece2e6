package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What can be wrong with a table: the text, then kind, line, column and exact message. */
class TableProblemsTest {
  private static final String PLACED =
      "designator,x mm,y mm,rotation,side\nR1,1,2,0,top\nR2,9,9,0,top\n";
  private static final String BOM =
      "designators,quantity,value,package\nR1,1,1k,DIN0207\nR2,1,2k,DIN0207\n";

  static Stream<Arguments> boms() {
    return Stream.of(
        bom("", Kind.FILE_EMPTY, 0, 0, "the file is empty"),
        bom(" \n\n", Kind.FILE_EMPTY, 0, 0, "the file holds nothing but blanks"),
        bom(
            "designators,value,package\n",
            Kind.NO_ROWS,
            0,
            0,
            "the table has a header and no rows"),
        bom(
            "nothing,like,it\nat,all,here\n",
            Kind.HEADER_NOT_FOUND,
            1,
            0,
            "from here on no line names parts on the board, such as R1, so nobody knows where they"
                + " go"),
        bom(
            "designators,value\nR1,\"1k\nR2,2k\n",
            Kind.QUOTE_UNBALANCED,
            2,
            0,
            "a quote is opened and never closed"),
        bom(
            "designators,quantity,value\nR1,12 cm,1k\nR2,1,2k\n",
            Kind.CELL_UNREADABLE,
            2,
            2,
            "\"12 cm\" is no whole number of parts"),
        bom(
            "designators,quantity,value\nR1-R2,3,1k\n",
            Kind.QUANTITY_DISAGREES,
            2,
            2,
            "the quantity is 3, but 2 designators are named"),
        bom(
            "designators,quantity,value\nR1,2,1k\nR2,1,1k\n",
            Kind.QUANTITY_DISAGREES,
            2,
            2,
            "the quantity is 2, but one designator is named"),
        bom(
            "designators,value\nR1,1k\nR2,2k\nR1,3k\n",
            Kind.DESIGNATOR_TWICE,
            4,
            1,
            "R1 is named here and in line 2"),
        bom(
            "designators,value\n\"R1, R2, R1\",1k\n",
            Kind.DESIGNATOR_TWICE,
            2,
            1,
            "R1 is named twice in this line"),
        bom(
            "designators,value\nR1,lots\nR2,2k\n",
            Kind.VALUE_NOT_UNDERSTOOD,
            2,
            2,
            "\"lots\" was not understood as a resistance"),
        bom(
            "designators,value,height\nR1,1k,3 parsec\nR2,2k,2\n",
            Kind.UNIT_UNKNOWN,
            2,
            3,
            "the unit \"parsec\" is not known here"),
        bom(
            "designators,value,height\nR1,1k,0\nR2,2k,2\n",
            Kind.OUT_OF_RANGE,
            2,
            3,
            "a part is not 0 mm high"),
        bom(
            "designators,value,fitted\nR1,1k,perhaps\nR2,2k,yes\n",
            Kind.CELL_UNREADABLE,
            2,
            3,
            "\"perhaps\" does not say whether the part is fitted"),
        bom(
            "designators,value\nR9-R4,1k\nR1,2k\n",
            Kind.DESIGNATOR_UNREADABLE,
            2,
            1,
            "the range \"R9-R4\" runs from 9 to 4"),
        bom(
            "designators,value\nR1,1k,more\nR2,2k\n",
            Kind.ROW_LENGTH,
            2,
            3,
            "the row has 3 cells where 2 are usual"),
        bom(
            "designators,comment\nR1,1k\nR2,2k\n",
            Kind.COLUMN_GUESSED,
            1,
            2,
            "\"comment\" was taken for the column value"),
        bom(
            "designators,value,value\nR1,1k,2k\nR2,3k,4k\n",
            Kind.COLUMN_AMBIGUOUS,
            1,
            2,
            "columns 2 and 3 are both headed so and differ: from line 2 on they have \"1k\", \"3k\", and"
                + " \"2k\", \"4k\"; column 2 was used"),
        bom(
            "designators,quantity,value\nR1,1,1k\nR2,1,2k\nTotal,2,\n",
            Kind.ROW_IGNORED,
            4,
            0,
            "this looks like a total (\"Total\"), it was not read as a row"),
        bom(
            "designators,value\nR1,1k\ufffd\nR2,2k\n",
            Kind.TEXT_DAMAGED,
            2,
            0,
            "a character was lost before this file was saved (it reads \ufffd)"));
  }

  static Stream<Arguments> placements() {
    return Stream.of(
        placed(
            "R1,here,2,0,top\n",
            Kind.CELL_UNREADABLE,
            2,
            2,
            "no number stands at the start of \"here\""),
        placed("R1,,2,0,top\n", Kind.CELL_UNREADABLE, 2, 2, "nothing is written here"),
        placed(
            "R1,1 furlong,2,0,top\n",
            Kind.UNIT_UNKNOWN,
            2,
            2,
            "the unit \"furlong\" is not known here"),
        placed(
            "R1,1e9,2,0,top\n", Kind.OUT_OF_RANGE, 2, 2, "this is more than 10 m from the origin"),
        placed(
            "R1,1,2,round,top\n",
            Kind.CELL_UNREADABLE,
            2,
            4,
            "\"round\" is no angle; the part was kept, its body as if it were not turned"),
        placed(
            "R1,1,2,0,edge\n", Kind.CELL_UNREADABLE, 2, 5, "\"edge\" names no side of the board"),
        placed(",1,2,0,top\n", Kind.CELL_EMPTY, 2, 1, "the row names no part, so it was left out"),
        placed(
            "R1,1,2,0,top\nR1,5,5,0,top\n",
            Kind.PLACED_TWICE,
            3,
            1,
            "R1 is placed here and in line 2"),
        placed("Q1,1,2,0,top\n", Kind.NOT_IN_BOM, 2, 1, "Q1 is placed, but no BOM line names it"));
  }

  @ParameterizedTest(name = "{1}: {4}")
  @MethodSource("boms")
  void a_fault_in_a_bom_is_found_where_it_stands(
      String text, Kind kind, int line, int column, String message) {
    assertFound("bom.csv", KitTables.read("bom.csv", text), kind, line, column, message);
  }

  @ParameterizedTest(name = "{1}: {4}")
  @MethodSource("placements")
  void a_fault_in_a_placement_list_is_found_where_it_stands(
      String text, Kind kind, int line, int column, String message) {
    String table = "designator,x mm,y mm,rotation,side\n" + text + "R2,30,30,0,top\n";
    KitReading reading = KitTables.read("bom.csv", BOM, "placements.csv", table);
    assertFound("placements.csv", reading, kind, line, column, message);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          rails.csv    | rail,voltage            | logic,5 V        | logic,6 V         | 3 | 1 | rail
          loads.csv    | kind,rail,load          | lamp,bels,lamp 1 | lamp,,lamp 2      | 2 | 2 | rail
          drivers.csv  | driver,supply           | pin,nowhere      | pin 2,            | 2 | 2 | supply
          channels.csv | channel,mosfet,fuse     | ch 1,Q9,         | ch 2,,            | 2 | 2 | mosfet
          channels.csv | channel,load            | ch 1,nothing     | ch 2,             | 2 | 2 | load
          swaps.csv    | board,designators,fitted| kit,R7,1k        | kit,R1,1k         | 2 | 2 | designators
          boards.csv   | bom,board               | bom.csv,twice    | bom.csv,twice     | 3 | 2 | board
          """)
  void what_names_nothing_or_twice_is_found_in_its_cell(
      String file, String header, String row, String more, int line, int column, String name) {
    KitReading reading =
        KitTables.read("bom.csv", BOM, file, header + "\n" + row + "\n" + more + "\n");
    Place place =
        reading.problems().stream()
            .filter(p -> p.kind() == Kind.REFERENCE_UNKNOWN || p.kind() == Kind.NAME_TWICE)
            .findFirst()
            .orElseThrow()
            .place();
    assertEquals(
        file + ":" + line + " " + column + " " + name,
        place.file() + ":" + place.line() + " " + place.column() + " " + place.header());
  }

  @Test
  void clean_tables_have_no_problems() {
    assertEquals(
        List.of(), KitTables.problems(KitTables.read("bom.csv", BOM, "placements.csv", PLACED)));
  }

  @Test
  void all_faults_of_a_file_are_found_in_one_run_and_the_good_part_is_used() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            BOM,
            "placements.csv",
            "designator,x mm,y mm,rotation,side\nR1,a,2,0,top\nR2,5,b,0,top\nR1,1,2,0,top\n");
    List<Integer> lines = new ArrayList<>();
    reading.problems().stream()
        .filter(problem -> problem.kind() == Kind.CELL_UNREADABLE)
        .forEach(problem -> lines.add(problem.place().line()));
    assertEquals(List.of(2, 3), lines);
    assertEquals(1, reading.kit().boards().get(0).placements().size());
  }

  @Test
  void every_problem_says_what_to_do() {
    KitReading reading = KitTables.read("bom.csv", "designators,quantity,value\nR1,9 m,?\n,,\n");
    assertTrue(reading.problems().stream().noneMatch(problem -> problem.remedy().isBlank()));
    assertEquals(
        "bom.csv:2, column 2 \"quantity\" (9 m): \"9 m\" is no whole number of parts; write a whole"
            + " number, here the designators were counted",
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.CELL_UNREADABLE)
            .findFirst()
            .orElseThrow()
            .toString());
  }

  private static void assertFound(
      String file, KitReading reading, Kind kind, int line, int column, String message) {
    List<Problem> found =
        reading.problems().stream()
            .filter(problem -> problem.kind() == kind && problem.place().file().equals(file))
            .toList();
    assertEquals(1, found.size(), () -> kind + " in " + KitTables.problems(reading));
    assertEquals(message, found.get(0).message());
    assertEquals(line, found.get(0).place().line(), "line");
    assertEquals(column, found.get(0).place().column(), "column");
  }

  private static Arguments bom(String text, Kind kind, int line, int column, String message) {
    return Arguments.of(text, kind, line, column, message);
  }

  /** Design tools place logos and fiducial marks like parts, often without a designator. */
  @Test
  void a_mark_without_a_designator_is_no_fault() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            BOM,
            "placements.csv",
            "designator,value,x mm,y mm,side\nR1,,1,2,top\n,LOGO,3,4,top\nR2,,9,9,top\n");
    Problem problem = reading.problems().get(0);
    assertEquals(Kind.ROW_IGNORED, problem.kind());
    assertEquals(3, problem.place().line());
    assertEquals(1, reading.problems().size(), "" + reading.problems());
  }

  private static Arguments placed(String text, Kind kind, int line, int column, String message) {
    return Arguments.of(text, kind, line, column, message);
  }
}
