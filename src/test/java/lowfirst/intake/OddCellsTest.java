package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Board;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.board.Side;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.cell.SideWords;
import lowfirst.intake.cell.TurnSigns;
import lowfirst.intake.kind.DescriptionWords;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cells as exports and people write them: sides, angles, lengths, counts. */
class OddCellsTest {
  private static Board board(String... namesAndTexts) {
    return KitTables.read(namesAndTexts).kit().boards().get(0);
  }

  @ParameterizedTest(name = "{0} and {1}")
  @CsvSource({
    "1, 2",
    "0, 1",
    "A, B",
    "N, Y",
    "T, B",
    "F, B",
    "F., B.",
    "L1, L4",
    "CS, SS",
    "+, -",
    "Vorderseite, Rückseite",
    "Bestückungsseite, Lötseite",
    "Oberseite, Unterseite",
    "上, 下",
    "顶层, 底层",
    "表, 裏",
    "верх, низ",
    "Recto, Verso",
    "Face avant, Face arrière",
    "Top Overlay, Bottom Overlay",
    "COMPONENT_TOP, COMPONENT_BOTTOM",
    "1 - Top, 2 - Bottom",
    "Top (1), Bottom (2)",
    "top, bot.",
    "Component Side, Solder Side",
    "Primary, Secondary"
  })
  void sides_of_a_column_are_told_apart(String top, String bottom) {
    String list =
        "Ref,X mm,Y mm,Rot,Side\nR1,10,20,0,%s\nR2,50,10,0,%s\nC1,30,10,0,%s\n"
            .formatted(top, top, bottom);
    assertEquals(
        List.of(Side.TOP, Side.TOP, Side.BOTTOM),
        board("placements.csv", list).placements().stream().map(Placement::side).toList());
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "Top or bottom, ''",
    "edge, ''",
    "top, TOP",
    "solder bottom, BOTTOM",
    "component bottom, BOTTOM",
    "solder mask top, TOP"
  })
  void a_side_is_told_only_where_the_words_agree(String text, String side) {
    assertEquals(
        side.isEmpty() ? Optional.empty() : Optional.of(Side.valueOf(side)), SideWords.side(text));
  }

  @Test
  void a_guessed_pair_of_signs_is_said() {
    KitReading reading =
        KitTables.read(
            "placements.csv", "Ref,X mm,Y mm,Side\nR1,10,20,0\nR2,50,10,0\nC1,30,10,1\n");
    assertEquals(
        List.of("of the sides \"0\" and \"1\" the first was taken for the top"),
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.COLUMN_GUESSED)
            .map(problem -> problem.message())
            .toList());
  }

  @ParameterizedTest(name = "{0} is {1} mm")
  @CsvSource(
      delimiter = '|',
      value = {
        "12.7mm | 12.7",
        "500mil | 12.7",
        "0.5in | 12.7",
        "0.5\" | 12.7",
        "12700um | 12.7",
        "12700000nm | 12.7",
        "1,27 | 1.27",
        "-0 | 0",
        "1.2E+01 | 12",
        ".5 | 0.5",
        "+2.5 | 2.5",
        "1 234.5 | 1234.5",
        "1'234.5 | 1234.5"
      })
  void a_length_is_read(String text, double millimetres) {
    String list =
        "Ref;X (mm);Y (mm)\nR1;\"%s\";2\nR2;70;40\n".formatted(text.replace("\"", "\"\""));
    assertEquals(
        millimetres, board("placements.csv", list).placements().get(0).xMillimetres(), 1e-9);
  }

  @ParameterizedTest(name = "{0} is x {1} mm, y {2} mm")
  @CsvSource(
      delimiter = '!',
      value = {
        "12.5, 30.0 ! 12.5 ! 30",
        "12.5,30 ! 12.5 ! 30",
        "(12.5;30) ! 12.5 ! 30",
        "[12.5 | -30] ! 12.5 ! -30",
        "X12.5Y30 ! 12.5 ! 30",
        "x = 12.5, y = 30 ! 12.5 ! 30",
        "12.5mm x 30mm ! 12.5 ! 30",
        "12,5; 30 ! 12.5 ! 30",
        "12,5 30,25 ! 12.5 ! 30.25",
        "12,5, 30,25 ! 12.5 ! 30.25",
        "12,5,30,25 ! 12.5 ! 30.25",
        "12.5/30 ! 12.5 ! 30",
        "500 x 1000 mil ! 12.7 ! 25.4",
        "(0.5, 1.0) in ! 12.7 ! 25.4",
        "(12,5 30,25)mm ! 12.5 ! 30.25",
        "1 234,5; 2 000 ! 1234.5 ! 2000"
      })
  void x_and_y_are_read_from_one_cell_and_the_guess_is_said(String text, double x, double y) {
    KitReading reading =
        KitTables.read("placements.csv", "Ref\tPosition (mm)\tRot\nR1\t%s\t90\n".formatted(text));
    Placement placement = reading.kit().boards().get(0).placements().get(0);
    assertEquals(x, placement.xMillimetres(), 1e-9);
    assertEquals(y, placement.yMillimetres(), 1e-9);
    assertEquals(90, placement.rotationDegrees());
    assertEquals(
        List.of("placements.csv:1, column 2 (Position (mm))"),
        reading.problems().stream()
            .filter(problem -> problem.message().startsWith("x and y stand in one cell, \""))
            .map(problem -> problem.place().toString())
            .toList());
  }

  @Test
  void a_cell_of_which_two_pairs_can_be_made_is_asked_about_and_left_out() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "Ref;Coordinates (mm)\nR1;12,5,30\nR2;1,5,2,5\nR3;;\nR4;one\nR5;3,4\n");
    assertEquals(
        List.of("R2", "R5"),
        reading.kit().boards().get(0).placements().stream()
            .map(placement -> placement.designator().text())
            .toList());
    assertEquals(
        List.of(
            "placements.csv:2 \"12,5,30\" may be x = 12 and y = 5,30, or x = 12,5 and y = 30",
            "placements.csv:4 the cell that holds x and y is empty",
            "placements.csv:5 \"one\" is no x and y as the other cells of the column have them"),
        reading.problems().stream()
            .filter(problem -> problem.kind().name().startsWith("CELL_"))
            .map(p -> p.place().file() + ":" + p.place().line() + " " + p.message())
            .toList());
  }

  /** Each cell has one reading only, though no sign parts most of them. */
  @Test
  void cells_parted_by_different_signs_are_read_where_each_is_sure_and_the_odd_one_is_said() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "Ref\tPosition (mm)\tSide\nR1\t(12.5, 30.0)\ttop\nR2\t20.25 / 41\ttop\nR3\t7;8\ttop\nR4\t12,5\ttop\n");
    assertEquals(
        List.of("R1 12.5 30.0", "R2 20.25 41.0", "R3 7.0 8.0", "R4 12.0 5.0"), places(reading));
    assertEquals(
        List.of(
            "x and y stand in one cell, \"(12.5, 30.0)\" was read as x = 12.5 and y = 30.0, and"
                + " \"20.25 / 41\" was read as x = 20.25 and y = 41"),
        messages(reading, Kind.COLUMN_GUESSED));
  }

  /** Of 12,5 where the others have 20,5; 41,0 the y is missing: it is no pair of 12 and 5. */
  @Test
  void a_lone_decimal_among_pairs_is_no_pair() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "Ref\tPosition (mm)\nR1\t20,5; 41,0\nR2\t12,5\nR3\t1 / 2\nR4\t3; 4\n");
    assertEquals(List.of("R1 20.5 41.0", "R3 1.0 2.0", "R4 3.0 4.0"), places(reading));
    assertEquals(
        List.of("\"12,5\" is no x and y as the other cells of the column have them"),
        messages(reading, Kind.CELL_UNREADABLE));
  }

  @Test
  void a_column_of_positions_that_holds_none_is_named_with_its_cells() {
    KitReading reading =
        KitTables.read("placements.csv", "Ref;Position;Rot\nR1;A1;90\nR2;B2;0\nR3;15 5;0\n");
    assertEquals(
        List.of(
            "there are no columns for x and y, and this one does not hold both: \"A1\", \"B2\""),
        messages(reading, Kind.HEADER_NOT_FOUND));
    assertEquals(
        "placements.csv:1, column 2 (Position)",
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.HEADER_NOT_FOUND)
            .findFirst()
            .orElseThrow()
            .place()
            .toString());
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '!',
      value = {
        "Ref,Position,Rot ! R1,10.5,20.0,90 ! 10.5 ! 20",
        "Ref,Position,Rot ! R1,(10.5,20.0),90 ! 10.5 ! 20",
        "Ref,Rot,Position ! R1,90,10.5,20.0 ! 10.5 ! 20",
        "Ref,Position,Rot ! R1,10,5,20,25,90 ! 10.5 ! 20.25",
        "Ref;Position;Rot ! R1;10,5;20,25;90 ! 10.5 ! 20.25",
        "Ref Position Rot ! R1 10,5 20,25 90 ! 10.5 ! 20.25",
        "List of parts~Ref,Position,Rot ! R1,10.5,20.0,90 ! 10.5 ! 20",
        "R9,(7.5,8.0),90 ! R1,(10.5,20.0),90 ! 10.5 ! 20",
        "R9 1k (1.5, 2.0) in 0 ! R1 2k (0.5, 1.0) in 90 ! 12.7 ! 25.4",
        "R9,(1.5,2.0) in,0 ! R1,(0.5,1.0) in,90 ! 12.7 ! 25.4",
        "Ref,Value,Position,Rot ! R1,2k,(0.5, 1.0) in,90 ! 12.7 ! 25.4",
        "R9,7.5,90,[7,2] ! R1,x,90,[10.5,20] ! 10.5 ! 20",
        "R9,a,[7,2],90 ! R1,[b],[10.5,20],90 ! 10.5 ! 20",
        "R9,[b],[7,2],90 ! R1,a,[10.5,20],90 ! 10.5 ! 20"
      })
  void a_pair_without_quotes_falls_into_cells_and_is_put_together_again(
      String before, String row, double x, double y) {
    Placement placement =
        KitTables.read("placements.csv", before.replace("~", "\n") + "\n" + row + "\n")
            .kit()
            .boards()
            .get(0)
            .placements()
            .stream()
            .filter(placed -> placed.designator().text().equals("R1"))
            .findFirst()
            .orElseThrow();
    assertEquals(x, placement.xMillimetres(), 1e-9);
    assertEquals(y, placement.yMillimetres(), 1e-9);
    assertEquals(90, placement.rotationDegrees());
  }

  /** The third cell may be the end of y or the start of it. */
  @Test
  void a_pair_without_quotes_that_can_be_cut_in_two_ways_is_asked_about() {
    KitReading reading =
        KitTables.read("placements.csv", "Ref,Position,Rot\nR1,10,5,20,25,90\nR2,20,25,20,0\n");
    assertEquals(List.of("R1 10.5 20.25"), places(reading));
    assertEquals(
        List.of("\"20,25,20\" may be x = 20 and y = 25,20, or x = 20,25 and y = 20"),
        messages(reading, Kind.CELL_UNREADABLE));
  }

  /** The position is whole, and what the comma parts is the value behind it. */
  @Test
  void a_row_that_is_too_long_for_another_reason_keeps_its_position() {
    KitReading reading =
        KitTables.read(
            "placements.csv", "Ref,Position,Rot,Value\nR1,10;20,90,4,7k\nR2,30;40,0,2,2k\n");
    assertEquals(List.of("R1 10.0 20.0", "R2 30.0 40.0"), places(reading));
    assertEquals(2, messages(reading, Kind.ROW_LENGTH).size());
  }

  private static List<String> places(KitReading reading) {
    return reading.kit().boards().get(0).placements().stream()
        .map(p -> p.designator().text() + " " + p.xMillimetres() + " " + p.yMillimetres())
        .toList();
  }

  private static List<String> messages(KitReading reading, Kind kind) {
    return reading.problems().stream()
        .filter(problem -> problem.kind() == kind)
        .map(problem -> problem.message())
        .toList();
  }

  /**
   * Drawers are numbered so, too: whole numbers under a word that may mean anything are no pair.
   */
  @Test
  void places_on_a_shelf_are_no_coordinates() {
    String parts = "Part,Value,Location\nR1,1k,1/2\nR2,2k,3/12\n";
    Board board = board("parts.csv", parts);
    assertEquals(2, board.items().size());
    assertEquals(List.of(), board.placements());
  }

  @Test
  void a_list_without_a_header_may_hold_pairs() {
    Board board = board("placements.csv", "R1;(12,5 30);90\nR2;(50 10,25);0\nR3;(7 8);180\n");
    assertEquals(
        List.of("12.5 30.0 90.0", "50.0 10.25 0.0", "7.0 8.0 180.0"),
        board.placements().stream()
            .map(p -> p.xMillimetres() + " " + p.yMillimetres() + " " + p.rotationDegrees())
            .toList());
  }

  @Test
  void parts_left_at_the_origin_are_said() {
    String list = "Ref,X mm,Y mm\nR1,0,0\nR2,0,0\nR3,10,20\nR4,30,5\n";
    assertEquals(
        List.of("2 parts are at 0, 0, among them R1 and R2: they may never have been placed"),
        KitTables.read("placements.csv", list).problems().stream()
            .filter(problem -> problem.kind() == Kind.POSITIONS_ALL_THE_SAME)
            .map(problem -> problem.message())
            .toList());
  }

  @ParameterizedTest(name = "\"{0}\"")
  @CsvSource({"Parts marked DNP are not fitted", "do not place near heat", "Mechanical"})
  void a_heading_that_only_speaks_of_fitting_leaves_nothing_out(String heading) {
    String bom = "Ref,Qty,Value\nR1,1,1k\n" + heading + ",,\nR2,1,2k\n";
    assertEquals(
        List.of(true, true),
        board("bom.csv", bom).items().stream().map(item -> item.isFitted()).toList());
  }

  @Test
  void a_zero_has_no_sign() {
    Placement placement =
        board("placements.csv", "Ref,X (mm),Y (mm)\nR1,-0,2\nR2,9,9\n").placements().get(0);
    assertEquals("0.0", placement.xMillimetres() + "");
  }

  @ParameterizedTest(name = "{0} is {1} degrees on the {2} side")
  @CsvSource({
    "90°, 90, TOP",
    "R270, 270, TOP",
    "MR90, 90, BOTTOM",
    "-90, 270, TOP",
    "450, 90, TOP",
    "360, 0, TOP",
    "90., 90, TOP",
    "90 deg, 90, TOP",
    "'22,5', 22.5, TOP",
    "90 CCW, 90, TOP",
    "90 CW, 270, TOP",
    "270° cw, 90, TOP",
    "45 deg. clockwise, 315, TOP",
    "45 anticlockwise, 45, TOP",
    "30 counter-clockwise, 30, TOP",
    "-90 CW, 90, TOP"
  })
  void an_angle_is_read(String text, double degrees, Side side) {
    String list = "Ref;X (mm);Y (mm);Rot\nR1;1;2;%s\nR2;70;40;0\n".formatted(text);
    Placement placement = board("placements.csv", list).placements().get(0);
    assertEquals(degrees + " " + side, placement.rotationDegrees() + " " + placement.side());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Rotation (CW), 270 0 90",
    "Rotation (CCW), 90 0 90",
    "Rotation clockwise, 270 0 90",
    "Rotation anticlockwise, 90 0 90",
    "Rotation (counter clockwise), 90 0 90",
    "Rotation, 90 0 90"
  })
  void a_header_says_which_way_round_bare_angles_are(String header, String degrees) {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "Ref,X (mm),Y (mm),%s\nR1,1,2,90\nR2,70,40,0\nR3,50,40,90 CCW\n".formatted(header));
    assertEquals(degrees, angles(reading));
  }

  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource({
    "2, 2",
    "2x, 2",
    "x2, 2",
    "2 pcs, 2",
    "2 Stk., 2",
    "2 St, 2",
    "2 off, 2",
    "2.0, 2",
    "2 (two), 2",
    "2 EA, 2",
    "2 pieces, 2"
  })
  void a_quantity_is_read(String text, int quantity) {
    KitReading reading =
        KitTables.read("bom.csv", "Ref,Qty,Value\n\"R1,R2\",%s,1k\nR3,1,2k\n".formatted(text));
    assertEquals(0, reading.faults());
    assertEquals(quantity, reading.kit().boards().get(0).items().get(0).quantity());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"12 cm", "one", "~1", "1+1", "1/board", "2𝟜"})
  void what_is_no_count_is_a_fault_and_the_designators_count(String text) {
    KitReading reading =
        KitTables.read("bom.csv", "Ref,Qty,Value\n\"R1,R2\",%s,1k\nR3,1,2k\n".formatted(text));
    assertEquals(1, reading.faults());
    assertEquals(2, reading.kit().boards().get(0).items().get(0).quantity());
  }

  @Test
  void groups_of_digits_are_told_from_decimals_by_the_other_cells_of_the_list() {
    String american = "Ref;X (mil);Y (mil)\nR1;1,234.5;2,000\nR2;100;300\n";
    String european = "Ref;X (mil);Y (mil)\nR1;1.234,5;2.000\nR2;100;300\n";
    String twice = "Ref;X (nm);Y (nm)\nR1;31.356.300;50.800.000\nR2;101;300.000\n";
    String onlyInY = "Ref;X (mil);Y (mil)\nR1;1234.5;2,000\nR2;100;1,300.5\n";
    for (String list : List.of(american, european, onlyInY, twice)) {
      Placement placement = board("placements.csv", list).placements().get(0);
      assertEquals(31.3563, placement.xMillimetres(), 1e-9);
      assertEquals(50.8, placement.yMillimetres(), 1e-9);
    }
  }

  @Test
  void the_unit_may_stand_before_the_header_in_many_words() {
    for (String line :
        List.of(
            "Units = inches",
            "# Unit: inch",
            "Units used: inch / deg",
            "Measurement: imperial (inch)")) {
      Placement placement =
          board("placements.csv", line + "\nRef,X,Y,Rot\nR1,1,2,0\nR2,3,4,0\n").placements().get(0);
      assertEquals(25.4, placement.xMillimetres(), 1e-9, line);
    }
  }

  @Test
  void signs_saved_in_a_wrong_encoding_are_put_back_and_said() {
    String text = "Ref,Qty,Value\nR1,1,4.7 kΩ\nC1,1,10 µF\n";
    String twice =
        new String(text.getBytes(StandardCharsets.UTF_8), Charset.forName("windows-1252"));
    KitReading reading = KitTables.read("bom.csv", twice);
    assertEquals(
        List.of("4.7 kΩ resistor", "10 µF electrolytic capacitor"),
        reading.kit().boards().get(0).items().stream()
            .map(item -> item.partType().words())
            .toList());
    assertEquals(1, reading.problems().stream().filter(p -> p.kind() == Kind.TEXT_DAMAGED).count());
  }

  @Test
  void words_with_designators_in_them_are_not_lost_in_silence() {
    KitReading reading =
        KitTables.read("bom.csv", "Ref,Qty,Value\nsee R7 there,1,1k\nR1,1,2k\nR2,1,2k\n");
    assertEquals(
        Map.of(Kind.DESIGNATOR_UNREADABLE, 1L),
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.DESIGNATOR_UNREADABLE)
            .collect(
                java.util.stream.Collectors.groupingBy(
                    problem -> problem.kind(), java.util.stream.Collectors.counting())));
  }

  @ParameterizedTest(name = "{0}, {1} is {2}")
  @CsvSource({
    "'', CRYSTAL 16MHZ, 16 MHz crystal",
    "'', CRYSTAL 16.000MHZ 20PF HC49S, 16 MHz crystal",
    "XTAL, quartz 8 mhz, 8 MHz crystal",
    "CRYSTAL 16MHZ, '', 16 MHz crystal",
    "ABC-16.000MHZ-B2, '', 16 MHz crystal"
  })
  void the_frequency_of_a_crystal_is_in_megahertz_however_it_is_spelt(
      String value, String description, String words) {
    KitReading reading =
        KitTables.read(
            "bom.csv", "Ref;Qty;Value;Description\nY1;1;%s;%s\n".formatted(value, description));
    assertEquals(
        words, reading.kit().boards().get(0).items().get(0).partType().words().split(",")[0]);
    assertEquals(
        0, reading.problems().stream().filter(p -> p.kind() == Kind.VALUE_NOT_UNDERSTOOD).count());
  }

  private static List<String> messages(Kind kind, String bom, String placements) {
    return messages(KitTables.read("bom.csv", bom, "placements.csv", placements), kind);
  }

  @ParameterizedTest(name = "{0} and {1}")
  @CsvSource({
    "Led1, LED1",
    "R01, R1",
    "J-3, J3",
    "sw 1, SW1",
    "Q_2, Q2",
    "J2, J2_FAN",
    "J02_FAN, J2"
  })
  void a_designator_spelt_otherwise_in_the_other_table_is_pointed_to(String inBom, String placed) {
    String bom = "Ref,Qty,Value\n%s,1,1k\nC9,1,1n\n".formatted(inBom);
    String list = "Ref,X (mm),Y (mm)\n%s,10,20\nC9,40,20\n".formatted(placed);
    String read = DesignatorList.parse(inBom).designators().get(0).text();
    boolean same = read.equals(placed);
    assertEquals(
        same
            ? List.of()
            : List.of(
                read
                    + ": no position in the placement list; "
                    + read
                    + " is probably "
                    + placed
                    + " at placements.csv:2, column 1 \"Ref\" ("
                    + placed
                    + ")"),
        messages(Kind.NOT_PLACED, bom, list));
    assertEquals(
        same
            ? List.of()
            : List.of(
                placed
                    + " is placed, but no BOM line names it; "
                    + placed
                    + " is probably "
                    + read
                    + " at bom.csv:2, column 1 \"Ref\" ("
                    + inBom
                    + ")"),
        messages(Kind.NOT_IN_BOM, bom, list));
  }

  @Test
  void names_that_only_say_more_are_not_pointed_to_from_each_other() {
    String bom = "Ref,Qty,Value\nJ2_FAN,1,2-pole\nC9,1,1n\n";
    for (String other : List.of("J2_PUMP", "J2A", "J22 FAN")) {
      String list = "Ref,X (mm),Y (mm)\n" + other + ",10,20\nC9,40,20\n";
      assertEquals(
          List.of("J2_FAN: no position in the placement list"),
          messages(Kind.NOT_PLACED, bom, list));
    }
    String two = "Ref,X (mm),Y (mm)\nJ2 A,10,20\nJ2 B,20,20\nC9,40,20\n";
    assertEquals(
        List.of("J2: no position in the placement list"),
        messages(Kind.NOT_PLACED, bom.replace("J2_FAN", "J2"), two));
  }

  @Test
  void words_that_are_placed_name_a_part() {
    String bom =
        "Ref,Qty,Value\n\"SW LEFT, SW RIGHT, S3\",3,push\nINPUT BATT,1,2-pole\nthe lid,1,box\n";
    String list = "Ref,X (mm),Y (mm)\nSW LEFT,10,20\nSW RIGHT,20,20\nINPUT BATT,30,20\nS3,40,20\n";
    Board read = board("bom.csv", bom, "placements.csv", list);
    assertEquals(
        List.of("[S3, SW LEFT, SW RIGHT]", "[INPUT BATT]", "[]"),
        read.items().stream().map(item -> item.designators().toString()).toList());
    assertEquals("the lid", read.items().get(2).description());
    assertEquals(
        0,
        KitTables.read("bom.csv", bom, "placements.csv", list).problems().stream()
            .filter(p -> p.kind() == Kind.NOT_IN_BOM || p.kind() == Kind.NOT_PLACED)
            .count());
  }

  @Test
  void of_two_that_are_spelt_nearly_so_neither_is_pointed_to() {
    String bom = "Ref,Qty,Value\nR1,1,1k\nC9,1,1n\n";
    String list = "Ref,X (mm),Y (mm)\nR01,10,20\nR001,30,20\nC9,40,20\n";
    assertEquals(
        List.of("R1: no position in the placement list"), messages(Kind.NOT_PLACED, bom, list));
    String three = list.replace("C9,", "R0001,40,30\nC9,");
    assertEquals(
        List.of("R1: no position in the placement list"), messages(Kind.NOT_PLACED, bom, three));
    String other = "Ref,X (mm),Y (mm)\nR11,10,20\nC9,40,20\n";
    assertEquals(
        List.of("R1_1: no position in the placement list"),
        messages(Kind.NOT_PLACED, bom.replace("R1", "R1_1"), other));
  }

  private static List<String> joined(String bom, String placed) {
    String list = "Ref,X (mm),Y (mm)\n%s,10,20\nC9,40,20\n".formatted(placed);
    Board read = board("bom.csv", "Ref;Qty;Value\n" + bom, "placements.csv", list);
    return read.items().stream().map(item -> item.quantity() + " " + item.designators()).toList();
  }

  @Test
  void units_are_one_part_unless_something_contradicts() {
    assertEquals(List.of("1 [U1]"), joined("U1A, U1B;1;LM358\n", "U1"));
    assertEquals(List.of("1 [U1]"), joined("U1A;1;LM358\nU1B;1;LM358\n", "U1"));
    assertEquals(List.of("1 [U1]"), joined("U1a U1b;;LM358\n", "U1"));
    assertEquals(List.of("1 [U1]", "1 [U2A]"), joined("U1A;1;X9\nU2A;1;X9\nU1B;1;X9\n", "U1"));
    // two counted, a unit placed, another value, the part itself named, one unit alone
    assertEquals(List.of("2 [U1A, U1B]"), joined("U1A, U1B;2;LM358\n", "U1"));
    assertEquals(List.of("1 [U1A]", "1 [U1B]"), joined("U1A;1;LM358\nU1B;1;LM393\n", "U1"));
    assertEquals(List.of("3 [U1, U1A, U1B]"), joined("U1, U1A, U1B;3;LM358\n", "U1"));
    assertEquals(List.of("1 [U1A]"), joined("U1A;1;LM358\n", "U1"));
    assertEquals(List.of("2 [U1A, U1B]"), joined("U1A, U1B;2;LM358\n", "U1A"));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "U1A-D;1;TL074 | 1 [U1]",
        "'U1A,U1B,U2A,U2B;2;TL072' | 2 [U1, U2]",
        "'U1A,U1B,IC3;2;TL072' | 2 [U1, IC3]",
        // the quantity counts units, or something else, or two places for one of two sizes
        "U1A-D;4;TL074 | 4 [U1A, U1B, U1C, U1D]",
        "U1A-D;2;TL074 | 2 [U1A, U1B, U1C, U1D]",
        "'U1,U1A;1;TL072' | 1 [U1, U1A]",
        "'C1A,C1B;1;1u' | 1 [C1A, C1B]",
      })
  void the_quantity_tells_units_where_no_list_places_parts(String row, String items) {
    Board read = board("bom.csv", "Ref;Qty;Value\nR1;1;1k\n" + row + "\n");
    Item item = read.items().get(1);
    assertEquals(items, item.quantity() + " " + item.designators());
  }

  /** Longer cells are prose; 10 mm is the measure of a body. */
  @Test
  void the_value_is_found_in_prose_of_two_hundred_signs_and_in_no_longer_one() {
    String prose = "resistor 4.7k, body 10 mm, ";
    String longest = prose + "x".repeat(200 - prose.length());
    assertEquals(Optional.of("4.7 kΩ"), valueIn(longest));
    assertEquals(Optional.empty(), valueIn(longest + "x"));
  }

  private static Optional<String> valueIn(String description) {
    return board("bom.csv", "Ref;Qty;Description\nR1;1;%s\nR2;1;1k\n".formatted(description))
        .items()
        .get(0)
        .partType()
        .value()
        .map(Object::toString);
  }

  @Test
  void packages_and_type_numbers_are_found_in_prose() {
    assertEquals("DO-41", DescriptionWords.packageIn("DIODE 1N4007 DO-41"));
    assertEquals("DIP-8", DescriptionWords.packageIn("IC NE555, DIP-8 body"));
    assertEquals("", DescriptionWords.packageIn("goes into the box"));
    assertEquals("", DescriptionWords.packageIn("TODO 22 things".toLowerCase(Locale.ROOT)));
    assertEquals(Optional.of("1N4007"), DescriptionWords.typeNumberIn("DIODE 1N4007 DO-41"));
    assertEquals(Optional.empty(), DescriptionWords.typeNumberIn("1N4007"));
    assertEquals(Optional.empty(), DescriptionWords.typeNumberIn("plain words only"));
  }

  // --- what only all cells together tell

  /** As decimals the two parts would be 0.03 mm apart. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Ref;X (mil);Y (mil) | R1;1,200;3,400 | R2;500;2,000",
        "Ref;Position (mil);Rot | R1;1,200,3,400;0 | R2;1,500,2,000;90"
      })
  void commas_that_can_only_part_thousands_are_so_read_and_said(
      String header, String first, String second) {
    KitReading reading =
        KitTables.read("placements.csv", header + "\n" + first + "\n" + second + "\n");
    assertEquals("R1 30.48 86.36", places(reading).get(0));
    assertEquals(
        1,
        messages(reading, Kind.COLUMN_GUESSED).stream()
            .filter(said -> said.startsWith("\"1,200\" was read as 1200"))
            .count());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Ref;X (mm);Y (mm) | R1;1,200;3,400 | R2;50,500;2,000",
        "Ref;X (mil);Y (mil) | R1;1,200;3,400 | R2;0,500;2,000",
        "Ref;X (mil);Y (mil) | R1;1,200;3,400 | R2;1,25;2,000"
      })
  void other_commas_stay_decimal(String header, String first, String second) {
    KitReading reading =
        KitTables.read("placements.csv", header + "\n" + first + "\n" + second + "\n");
    assertEquals(
        List.of(),
        messages(reading, Kind.COLUMN_GUESSED).stream()
            .filter(said -> said.contains("was read as 1200"))
            .toList());
  }

  @ParameterizedTest(name = "{0}, {1}, {2}")
  @CsvSource({
    "0, 900, 2700, 0 90 270, 1",
    "9000, 0, 27000, 90 0 270, 1",
    "180000, 0, 90000, 180 0 90, 1",
    "90, 450, -90, 90 90 270, 0",
    // one part went round and round, and the others show what the numbers count
    "180, 810, 270, 180 90 270, 0",
    "300, 3150, 0, 30 315 0, 1",
    "720, 0, 360, 0 0 0, 0"
  })
  void angles_in_parts_of_a_degree_are_read_and_said(
      String one, String two, String three, String degrees, int said) {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "Ref,X mm,Y mm,Rot\nR1,10,20,%s\nR2,50,10,%s\nC1,30,10,%s\n"
                .formatted(one, two, three));
    assertEquals(
        degrees,
        String.join(
            " ",
            reading.kit().boards().get(0).placements().stream()
                .map(placed -> Math.round(placed.rotationDegrees()) + "")
                .toList()));
    assertEquals(
        said,
        messages(reading, Kind.COLUMN_GUESSED).stream()
            .filter(message -> message.contains("so all were divided by"))
            .count());
  }

  // --- sides that are none of the two

  @ParameterizedTest
  @CsvSource({"both", "all", "Multi-Layer", "Top/Bottom", "beide", "両面"})
  void a_part_on_both_sides_is_taken_for_one_on_the_top_and_said(String side) {
    KitReading reading =
        KitTables.read(
            "placements.csv", "Ref,X mm,Y mm,Side\nR1,10,20,bottom\nR2,50,10," + side + "\n");
    assertEquals(
        List.of(Side.BOTTOM, Side.TOP),
        reading.kit().boards().get(0).placements().stream().map(Placement::side).toList());
    assertEquals(
        List.of("the row names no side, or both, so the part was taken for one on the top"),
        messages(reading, Kind.COLUMN_GUESSED));
  }

  @Test
  void a_part_that_is_not_on_the_board_is_left_out_and_said() {
    KitReading reading =
        KitTables.read("placements.csv", "Ref,X mm,Y mm,Side\nR1,10,20,top\nM1,50,10,off-board\n");
    assertEquals(List.of("R1 10.0 20.0"), places(reading));
    assertEquals(
        List.of("\"off-board\" says that the part is not on the board, so its row was left out"),
        messages(reading, Kind.ROW_IGNORED));
  }

  // --- angles and sides that no header names, or that look like something else

  @ParameterizedTest
  @CsvSource({
    "1.571, 0, -3.142, 90 0 180, 1",
    "0.785398, 4.712389, 6.283185, 45 270 0, 1",
    "0.5236, -0.2618, 1.0472, 30 345 60, 1",
    "1.5708, 90, 0, 2 90 0, 0",
    "1, 2, 7, 1 2 7, 0",
    "0, 0, 0, 0 0 0, 0"
  })
  void angles_in_radians_are_read_and_said(
      String one, String two, String three, String degrees, int said) {
    assertTurns(one, two, three, degrees, said, "so all were read as radians");
  }

  @ParameterizedTest
  @CsvSource({"0, 1, 3, 0 90 270, 1", "2, 2, 0, 180 180 0, 1", "0, 3, 45, 0 3 45, 0"})
  void small_whole_angles_alone_are_quarter_turns_and_that_is_said(
      String one, String two, String three, String degrees, int said) {
    assertTurns(one, two, three, degrees, said, "so all were read as quarter turns");
  }

  @ParameterizedTest
  @CsvSource({"MR90, true", "mr90, true", "R90, false", "M90, false", "'', false"})
  void a_turn_with_m_and_r_is_on_the_bottom(String cell, boolean bottom) {
    assertEquals(bottom ? Optional.of(Side.BOTTOM) : Optional.empty(), TurnSigns.side(cell));
  }

  private static void assertTurns(
      String one, String two, String three, String degrees, int said, String words) {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "Ref,X mm,Y mm,Rot\nR1,10,20,%s\nR2,50,10,%s\nC1,30,10,%s\n"
                .formatted(one, two, three));
    assertEquals(degrees, angles(reading));
    assertEquals(
        said,
        messages(reading, Kind.COLUMN_GUESSED).stream()
            .filter(message -> message.endsWith(words))
            .count());
  }

  private static String angles(KitReading reading) {
    return String.join(
        " ",
        reading.kit().boards().get(0).placements().stream()
            .map(placed -> Math.round(placed.rotationDegrees()) + "")
            .toList());
  }

  private static List<Side> sides(KitReading reading) {
    return reading.kit().boards().get(0).placements().stream().map(Placement::side).toList();
  }

  @Test
  void turns_with_an_r_are_angles_without_a_header() {
    KitReading reading =
        KitTables.read(
            "placements.txt", "R1 4k7 10.5 20 R90\nR2 47k 31.5 22 MR0\nC1 1n 40.5 12 R180\n");
    assertEquals("90 0 180", angles(reading));
    assertEquals(List.of(Side.TOP, Side.BOTTOM, Side.TOP), sides(reading));
  }

  @Test
  void front_and_back_by_a_letter_are_sides_without_a_header() {
    KitReading reading = KitTables.read("placements.txt", "R1,10.5,20.5,90,F\nC1,30.5,12.5,0,B\n");
    assertEquals("90 0", angles(reading));
    assertEquals(List.of(Side.TOP, Side.BOTTOM), sides(reading));
  }

  @Test
  void sides_and_quarter_turns_below_unknown_words_are_told_by_their_cells_and_said() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "Ref,X mm,Y mm,Heading,Sits on\nR1,10,20,90,component side\n"
                + "R2,50,10,0,solder side\nC1,30,10,270,component side\n");
    assertEquals("90 0 270", angles(reading));
    assertEquals(List.of(Side.TOP, Side.BOTTOM, Side.TOP), sides(reading));
    assertEquals(2, messages(reading, Kind.COLUMN_GUESSED).size());
  }

  @Test
  void numbers_that_are_no_quarter_turns_are_no_angles() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "Ref,X mm,Y mm,Pins,Side\nR1,10,20,2,top\nR2,50,10,2,top\nU1,30,10,90,top\n");
    assertEquals("0 0 0", angles(reading));
    assertEquals(List.of(), messages(reading, Kind.COLUMN_GUESSED));
  }

  @Test
  void a_row_that_places_several_parts_is_refused_with_that_remedy() {
    KitReading reading =
        KitTables.read("placements.csv", "Ref,X mm,Y mm\n\"R1, R2\",\"10, 20\",5\nC1,30,10\n");
    assertEquals(List.of("C1 30.0 10.0"), places(reading));
    assertEquals(
        List.of("the row names several parts (\"R1, R2\"), and this is no single number"),
        messages(reading, Kind.CELL_UNREADABLE));
  }

  @Test
  void headers_of_two_words_stand_over_columns_that_blanks_part() {
    KitReading reading =
        KitTables.read(
            "placements.txt",
            "Designator Footprint    Mid X      Mid Y      Pad X     Pad Y TB   Rotation Comment\n\n"
                + "R1         AXIAL-0.4       12.5mm      20mm      12.5mm      25mm  T      90.00"
                + " 4k7 1%\n"
                + "U1         DIP-8             40mm      20mm        44mm      25mm  B     270.00"
                + " NE555\n"
                + "TP1        PIN               60mm      20mm        60mm      20mm  T       0.00 \n");
    assertEquals(List.of("R1 12.5 20.0", "U1 40.0 20.0", "TP1 60.0 20.0"), places(reading));
    assertEquals("90 270 0", angles(reading));
    assertEquals(List.of(Side.TOP, Side.BOTTOM, Side.TOP), sides(reading));
    assertEquals(
        List.of("4k7 1%", "NE555", ""),
        reading.kit().boards().get(0).placements().stream().map(Placement::valueText).toList());
    assertEquals(List.of(), messages(reading, Kind.ROW_LENGTH));
  }

  @Test
  void a_cell_that_is_missing_between_others_is_asked_about() {
    KitReading reading =
        KitTables.read(
            "placements.txt",
            "Ref Footprint Mid X Mid Y TB Rotation Comment\n"
                + "R1 AXIAL 12mm 20mm T 90 4k7\nU1 40mm 20mm B 270 555\nC1 RAD 50mm 20mm B 0 1n\n");
    assertEquals(1, messages(reading, Kind.ROW_LENGTH).size());
  }

  @ParameterizedTest
  @CsvSource({"placements.csv, true", "pick-top.csv, false", "pick_front.csv, false"})
  void a_list_without_any_side_says_that_all_were_taken_for_the_top(String file, boolean said) {
    List<String> guessed =
        messages(KitTables.read(file, "Ref,X mm,Y mm\nR1,10,20\nR2,50,10\n"), Kind.COLUMN_GUESSED);
    assertEquals(
        said
            ? List.of("no column says on which side each part sits; all were taken for the top")
            : List.of(),
        guessed);
  }

  // --- data for programs

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"parts\":[{\"ref\":\"R1\",\"x\":10}]} | 1 | data for programs",
        "[ | 1 | data for programs",
        "[Main board] | 1 | no line could be read as a header",
        "<html> | 1 | with tags",
        "Parts of the board#<table>#<tr><td>R1</td><td>10k</td></tr> | 3 | no line could be read as a header"
      })
  void data_for_programs_is_named_as_such(String text, int line, String words) {
    Problem said =
        KitTables.read("placements.txt", text.replace('#', '\n')).problems().stream()
            .filter(problem -> problem.kind() == Kind.HEADER_NOT_FOUND)
            .findFirst()
            .orElseThrow();
    assertEquals(line, said.place().line());
    assertTrue(said.message().contains(words), said.message());
  }
}
