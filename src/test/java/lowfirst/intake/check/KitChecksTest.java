package lowfirst.intake.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Placement;
import lowfirst.board.Side;
import lowfirst.intake.KitReading;
import lowfirst.intake.KitTables;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;
import lowfirst.quantity.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tables of a kit held against each other. */
class KitChecksTest {
  private static final String PLACED_HEADER = "designator,x mm,y mm,rotation,side,value,package\n";

  @ParameterizedTest(name = "{0} and {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          4k7          | 4.7k
          4k7          | 4700
          4,7 kΩ       | 4K7
          100n         | 0.1uF
          100uF 25V    | 100µF
          1N4148       | 1N4148 Signal Diode
          LM7805       | LM7805_TO220
          4k7          | R_Small_US
          1N4148       | ~
          1N4148       | *
          1N4148       | Comment
          1N4148       | =Value
          1N4148       | value
          1N4148       | D_Schottky
          LM jack      | Line in
          LM blue      | Power lamp
          LM NPN       | driver
          """)
  void values_that_mean_the_same_do_not_disagree(String inBom, String placed) {
    assertEquals(List.of(), kinds(agreement(inBom, placed, "", "")));
  }

  @ParameterizedTest(name = "{0} and {1}")
  @CsvSource({
    "4k7,47k",
    "100n,10n",
    "1N4148,1N4007",
    "1N4148,=1N4007",
    "LM blue,white lamp",
    "LM NPN,some pnp",
    "LM clamp 2-pole,LM clamp 3-pole",
    "LM317T,TL431CLP",
    "7805,7812",
    "LM7805,7812",
    "LED red 5 mm,LED_green",
    "1N4148,Value 1N4007"
  })
  void values_that_mean_something_else_disagree(String inBom, String placed) {
    assertEquals(List.of(Kind.VALUE_DISAGREES), kinds(agreement(inBom, placed, "", "")));
  }

  @ParameterizedTest(name = "{0} and {1}")
  @CsvSource({
    "TO-92,TO-92_Inline",
    "Package_DIP:DIP-8_W7.62mm,DIP-8",
    "DIP-8,DIL08",
    "THT 2-pin,THT_2pin",
    "odd thing,quite another"
  })
  void packages_that_are_or_may_be_the_same_do_not_disagree(String inBom, String placed) {
    assertEquals(List.of(), kinds(agreement("BP-1", "BP-1", inBom, placed)));
  }

  @ParameterizedTest(name = "{0} and {1}")
  @CsvSource({"TO-92,TO-220", "DIP-8,DIP-14"})
  void packages_with_other_bodies_or_pins_disagree(String inBom, String placed) {
    assertEquals(List.of(Kind.PACKAGE_DISAGREES), kinds(agreement("BP-1", "BP-1", inBom, placed)));
  }

  private static KitReading agreement(
      String value, String placedValue, String pack, String placedPack) {
    String prefix = value.matches(".*(n|F.*)$") ? "C1" : value.startsWith("1N") ? "D1" : "R1";
    String designator = value.startsWith("BP") || value.startsWith("LM") ? "U1" : prefix;
    return KitTables.read(
        "bom.csv",
        "designators,value,package\n"
            + designator
            + ",\""
            + value
            + "\","
            + pack
            + "\nR99,1k,DIN0207\n",
        "placements.csv",
        PLACED_HEADER
            + designator
            + ",10,10,0,top,"
            + placedValue
            + ","
            + placedPack
            + "\nR99,90,90,0,top,1k,DIN0207\n");
  }

  @Test
  void a_part_on_one_side_only_is_found_on_either_side() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package\n\"R1, R2, R3\",1k,DIN0207\n",
            "placements.csv",
            PLACED_HEADER + "R1,10,10,0,top,,\nR4,90,90,0,top,,\n");
    assertEquals(List.of(Kind.NOT_PLACED, Kind.NOT_IN_BOM), kinds(reading));
    assertEquals(
        "R2, R3: no position in the placement list", problem(reading, Kind.NOT_PLACED).message());
  }

  @Test
  void holes_and_marks_that_the_bom_lacks_are_no_fault_of_it() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package\nR1,1k,DIN0207\n",
            "placements.csv",
            PLACED_HEADER
                + "R1,10,10,0,top,,\nH1,90,90,0,top,,\nFID2,5,5,0,top,,\n"
                + "X9,15,15,0,top,MountingHole,MountingHole_3.2mm\n");
    assertEquals(List.of(), kinds(reading));
    assertEquals(
        "H1, X9, FID2, which no BOM line names, were taken for holes or marks of the board, where"
            + " nothing is soldered in",
        problem(reading, Kind.COLUMN_GUESSED).message());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "TestPoint_Loop_D1.8mm, 'TP3, TP4 were taken for holes or marks of the board, where nothing is soldered in'",
    "pin header 1x01, ''",
  })
  void lines_of_the_bom_that_are_taken_for_no_part_are_said(String packageName, String said) {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package\nR1,1k,DIN0207\n\"TP3, TP4\",5V,%s\n".formatted(packageName),
            "placements.csv",
            PLACED_HEADER + "R1,10,10,0,top,,\nTP3,30,30,0,top,,\nTP4,50,30,0,top,,\n");
    assertEquals(
        said.isEmpty() ? List.of() : List.of(said),
        reading.problems().stream()
            .map(Problem::message)
            .filter(message -> message.contains("taken for holes"))
            .toList());
  }

  @Test
  void copper_and_text_among_the_parts_of_a_list_are_drawn_on_the_board() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package\nR1,1k,DIN0207\n",
            "placements.csv",
            PLACED_HEADER
                + "R1,10,10,0,top,,\nVia4,90,90,0,top,,\nCopper Fill12,5,5,0,top,,\n"
                + "TXT1,15,15,0,top,,\nTXT1,25,15,0,top,,\n");
    assertEquals(List.of(), kinds(reading));
    assertEquals(
        "TXT1, Via4, Copper Fill12, which no BOM line names, were taken for holes or marks of the"
            + " board, where nothing is soldered in",
        problem(reading, Kind.COLUMN_GUESSED).message());
  }

  @Test
  void a_place_in_another_list_is_said_with_its_file() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package\nR1,1k,DIN0207\n",
            "a-placements.csv",
            PLACED_HEADER + "R1,10,10,0,top,,\n",
            "b-placements.csv",
            PLACED_HEADER + "R1,10,10,0,top,,\nR1,20,10,0,top,,\n");
    assertEquals(
        "R1 is placed 3 times, here and in lines 2 of a-placements.csv, 3",
        problem(reading, Kind.PLACED_TWICE).message());
  }

  @Test
  void without_a_bom_a_part_that_nobody_gave_a_name_is_of_unknown_kind() {
    KitReading reading =
        KitTables.read(
            "placements.csv", "Ref,X mm,Y mm,Side,Value\nU$2,10,20,top,BELL-3\nR1,30,20,top,1k\n");
    assertEquals(
        List.of(PartKind.RESISTOR, PartKind.UNKNOWN),
        reading.kit().boards().get(0).items().stream()
            .map(item -> item.partType().kind())
            .sorted()
            .toList());
  }

  @Test
  void without_a_bom_the_placement_list_tells_the_parts_and_what_is_none() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            PLACED_HEADER
                + "R1,10,10,0,top,1k,DIN0207\nR2,20,10,0,top,1k,DIN0207\nH1,90,90,0,top,,\n"
                + "REF**,5,5,0,top,,\nREF**,95,5,0,top,,\nH1,90,10,0,top,,\n"
                + "J**,50,50,0,top,header,PinHeader_1x04\n2N3904,60,60,0,top,,\n");
    assertEquals(
        List.of(
            "[2N3904] bipolar transistor",
            "[H1] board feature",
            "[J**] pin header",
            "[R1, R2] resistor",
            "[REF**] board feature"),
        reading.kit().boards().get(0).items().stream()
            .map(item -> item.designators() + " " + item.partType().kind().words())
            .sorted()
            .toList());
    assertEquals(List.of(), reading.kit().boards().get(0).bomLines());
    // Of several holes under one name nobody asks which.
    assertEquals(
        List.of(), reading.problems().stream().filter(p -> p.kind() == Kind.PLACED_TWICE).toList());
  }

  /** What a placement list says of a part beside its value tells kind, value and body, too. */
  @Test
  void without_a_bom_the_words_of_the_placement_list_tell_the_parts() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "Ref,X mm,Y mm,Side,Comment,Footprint,Description\n"
                + "J1,10,10,top,LED strip,XR-508-04,Terminal Block 4 way\n"
                + "C1,20,10,top,CAP_POL,ALU_16,470µF 35V Aluminium Radial\n"
                + "C2,30,10,top,CAP_POL,FP-T,10uF 16V SMD Tantalum Capacitor\n"
                + "D1,40,10,top,SS14,FP-403,Diode Schottky 40V 1A SMA\n"
                + "R5,50,10,top,optional,DIN0207,\n");
    assertEquals(
        List.of(
            "[C1] electrolytic capacitor 470 µF ALU_16",
            "[C2] tantalum capacitor 10 µF FP-T (SMD)",
            "[D1] Schottky diode SS14 FP-403 (SMD)",
            "[J1] screw terminal LED strip XR-508-04",
            "[R5] resistor optional DIN0207"),
        reading.kit().boards().get(0).items().stream()
            .map(item -> item.designators() + " " + said(item.partType()))
            .sorted()
            .toList());
    assertEquals(
        "the placement list leaves it open whether to fit R5 (\"optional\"); all counts as fitted",
        problem(reading, Kind.OPTIONAL_PART).message());
  }

  private static String said(PartType type) {
    return type.kind().words()
        + " "
        + type.value().map(Object::toString).orElse(type.text())
        + " "
        + type.packageName();
  }

  @Test
  void letters_of_a_designator_alone_tell_no_body() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "ref,x mm,y mm,rotation\nR1,10,10,0\nR2,11,10,90\nU1,12,10,0\nD1,13,10,0\n");
    assertEquals(
        "how high D1, R1, R2, U1 will stand is not known: no package is named",
        problem(reading, Kind.HEIGHT_UNKNOWN).message());
    assertEquals(List.of(Kind.TABLE_MISSING), kinds(reading));
  }

  @Test
  void a_part_outside_the_board_is_found() {
    KitReading reading =
        KitTables.read(
            "boards.csv",
            "board,count,bom,placements,width mm,height mm\nmain,1,bom.csv,placements.csv,80,60\n",
            "bom.csv",
            "designators,value,package\n\"R1, R2, R3, R4\",1k,DIN0207\n",
            "placements.csv",
            PLACED_HEADER
                + "R1,10,10,0,top,,\nR2,30,20,0,top,,\nR3,50,30,0,top,,\nR4,80.5,30,0,top,,\n");
    assertEquals(List.of(Kind.OUTSIDE_THE_OUTLINE), kinds(reading));
    assertEquals(
        "R4 at x = 80.5, y = 30 mm lies outside the board of 80 x 60 mm",
        problem(reading, Kind.OUTSIDE_THE_OUTLINE).message());
  }

  @Test
  void a_list_with_another_origin_is_said_once_not_for_every_part() {
    KitReading reading =
        KitTables.read(
            "boards.csv",
            "board,width mm,height mm,bom,placements\nmain,80,60,bom.csv,placements.csv\n",
            "bom.csv",
            "designators,value,package\nR1-R5,1k,DIN0207\n",
            "placements.csv",
            PLACED_HEADER
                + "R1,10,-10,0,top,,\nR2,30,-10,0,top,,\nR3,50,-10,0,top,,\n"
                + "R4,10,-30,0,top,,\nR5,30,-30,0,top,,\n");
    assertEquals(List.of(Kind.OUTSIDE_THE_OUTLINE), kinds(reading));
    assertEquals(
        "5 of 5 parts lie outside the board: the list has another origin, or another unit; its"
            + " parts reach from x = 10 to 50 and from y = -30 to -10 mm",
        problem(reading, Kind.OUTSIDE_THE_OUTLINE).message());
  }

  @Test
  void positions_that_are_all_the_same_are_said_once_and_nothing_is_said_to_overlap() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package\nR1-R3,1k,DIN0207\n",
            "placements.csv",
            PLACED_HEADER + "R1,0,0,0,top,,\nR2,0,0,0,top,,\nR3,0,0,0,top,,\n");
    assertEquals(List.of(Kind.POSITIONS_ALL_THE_SAME), kinds(reading));
  }

  @Test
  void names_in_other_tables_have_to_exist() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package,part type\nQ1,BP-1,TO-220,BP-1\nR1,1k,DIN0207,\n",
            "placements.csv",
            PLACED_HEADER + "Q1,10,10,0,top,,\nR1,90,90,0,top,,\n",
            "rails.csv",
            "rail,voltage\nbells,24 V\n",
            "drivers.csv",
            "driver\npin\n",
            "loads.csv",
            "load,kind,rail\nbell,solenoid,bels\n",
            "channels.csv",
            "channel,MOSFET,gate resistor,driver,load\n1,Q1,R7,pin,bell\n2,Q1,R1,pim,lamp\n");
    List<String> messages =
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.REFERENCE_UNKNOWN)
            .map(problem -> problem.place().line() + ": " + problem.message())
            .toList();
    assertEquals(
        List.of(
            "2: the gate resistor R7 is not on the board kit",
            "3: there is no driver \"pim\" in drivers.csv",
            "3: there is no load \"lamp\" in loads.csv",
            "2: there is no rail \"bels\" in rails.csv"),
        messages);
  }

  @Test
  void a_part_of_a_channel_has_to_be_fitted() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,fitted\nD1,1N4007,no\nD2,1N4007,optional\nD3,1N4007,yes\n",
            "channels.csv",
            "channel,flyback diode\n1,D1\n2,D2\n3,D3\n");
    assertEquals(
        List.of("2: the flyback diode D1 is not fitted by the BOM of kit"),
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.REFERENCE_UNKNOWN)
            .map(problem -> problem.place().line() + ": " + problem.message())
            .toList());
  }

  @Test
  void the_rails_of_a_supply_unit_have_to_exist() {
    KitReading reading =
        KitTables.read(
            "rails.csv",
            "rail,voltage\n3V3,3.3 V\n5V,5 V\n",
            "supplies.csv",
            "supply unit,rails,power limit\nPC,\"3V3; 5V\",120 W\nPC,\"3V3, 12V\",0 W\nall,,\n");
    assertEquals(List.of("3V3", "5V"), reading.kit().supplies().get(0).rails());
    assertEquals(120, reading.kit().supplies().get(0).powerLimit().orElseThrow().asDouble());
    assertEquals(
        List.of(
            "3: there is no rail \"12V\" in rails.csv",
            "3: the power limit can't be zero",
            "4: the rails that share the supply \"all\" are missing"),
        reading.problems().stream()
            .filter(problem -> problem.place().file().equals("supplies.csv"))
            .map(problem -> problem.place().line() + ": " + problem.message())
            .toList());
  }

  @Test
  void a_load_says_on_which_rail_it_hangs() {
    String loads = "load,kind,rail\nbell,solenoid,bells\nlamp,lamp,\n";
    KitReading reading = KitTables.read("rails.csv", "rail\nlights\nbells\n", "loads.csv", loads);
    Problem problem = problem(reading, Kind.CELL_EMPTY);
    assertEquals(Place.ofCell("loads.csv", 3, 3, "rail", ""), problem.place());
    assertEquals(
        "the rail of the load \"lamp\" is missing: it may hang on any, so no rail's sum is complete",
        problem.message());
    assertEquals("write one of: bells, lights", problem.remedy());
    KitReading bare =
        KitTables.read(
            "channels.csv", "channel,load\n1,bell\n", "loads.csv", "load,kind\nbell,relay\n");
    assertEquals(
        "write its name, and add it to rails.csv", problem(bare, Kind.CELL_EMPTY).remedy());
    assertFalse(kinds(KitTables.read("loads.csv", loads)).contains(Kind.CELL_EMPTY));
  }

  // Two bodies of 10 x 2 mm; the second one's middle at x, y, turned.
  @ParameterizedTest(name = "at {0}, {1} turned by {2}: {3}")
  @CsvSource({
    "0, 0, 0, true",
    "9, 0, 0, true",
    "9.6, 0, 0, false", // shares 0.4 mm, less than the depth of 0.5 mm
    "10.1, 0, 0, false",
    "0, 1.4, 0, true",
    "0, 1.6, 0, false",
    "5.4, 0, 90, true", // reaches from 4.4 to 6.4 and is 10 high
    "5.6, 0, 90, false",
    "0, 5.4, 90, true",
    // By hand: at 45 degrees the half extent across is (10 + 2) / 2 * sin 45 = 4.243 mm.
    "0, 4.7, 45, true",
    "0, 4.8, 45, false",
    // The rectangles around both overlap, the bodies do not: the corner is empty.
    "8.5, 4.0, 45, false"
  })
  void turned_bodies_overlap_where_they_really_do(
      double x, double y, double degrees, boolean overlap) {
    PlacedBody one = body("R1", 0, 0, 0);
    PlacedBody other = body("R2", x, y, degrees);
    assertEquals(overlap, one.overlaps(other, 0.5));
    assertEquals(overlap, other.overlaps(one, 0.5));
  }

  private static PlacedBody body(String name, double x, double y, double degrees) {
    var outline = new BodyOutline("bar", 3, 0, 10, 2, 0, 2, Source.kit("test"));
    var placement =
        new Placement(
            Designator.of(name),
            x,
            y,
            degrees,
            true,
            Side.TOP,
            "",
            "",
            "",
            Place.ofFile("placements.csv"));
    return new PlacedBody(placement, PartKind.UNKNOWN, outline, outline.body().orElseThrow());
  }

  @Test
  void an_ic_in_its_socket_and_a_part_beneath_the_socket_hinder_nothing() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package\nU1,LM358,DIP-8\nXU1,IC socket,DIP-8 socket\n\"R1, R2\",1k,DIN0207\n",
            "placements.csv",
            PLACED_HEADER
                + "U1,50,50,0,top,,\nXU1,50,50,0,top,,\nR1,50,50,90,top,,\nR2,9,9,0,top,,\n");
    assertEquals(List.of(), kinds(reading));
  }

  @Test
  void two_parts_in_one_place_are_found() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package\nR1-R3,1k,DIN0207\n",
            "placements.csv",
            PLACED_HEADER + "R1,50,50,0,top,,\nR2,51,50,90,top,,\nR3,90,50,0,top,,\n");
    assertEquals(List.of(Kind.BODIES_OVERLAP), kinds(reading));
    assertEquals(
        "the bodies of R1 (0207 lying) and R2 (0207 lying) overlap",
        problem(reading, Kind.BODIES_OVERLAP).message());
  }

  @Test
  void the_boms_own_height_wins_over_the_package_table() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package,height\nR1,1k,DIN0207,9.5 mm\nR2,1k,DIN0207,\n",
            "placements.csv",
            PLACED_HEADER + "R1,10,10,0,top,,\nR2,50,50,0,top,,\n");
    Board board = reading.kit().boards().get(0);
    assertEquals(9.5, board.outlineOf(Designator.of("R1")).orElseThrow().seatedHeightMillimetres());
    assertEquals(
        Source.Origin.KIT, board.outlineOf(Designator.of("R1")).orElseThrow().source().origin());
    assertEquals(2.5, board.outlineOf(Designator.of("R2")).orElseThrow().seatedHeightMillimetres());
  }

  @Test
  void a_height_that_nothing_tells_is_said_once_for_all_parts_of_a_package() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package\nL1,1mH,odd one\nL2,1mH,odd one\n",
            "placements.csv",
            PLACED_HEADER + "L1,10,10,0,top,,\nL2,90,90,0,top,,\n");
    assertEquals(
        "how high L1, L2 will stand is not known: \"odd one\" tells no height",
        problem(reading, Kind.HEIGHT_UNKNOWN).message());
  }

  private static Problem problem(KitReading reading, Kind kind) {
    return reading.problems().stream()
        .filter(found -> found.kind() == kind)
        .findFirst()
        .orElseThrow(() -> new AssertionError(KitTables.problems(reading)));
  }

  /** What was found, heights that were assumed aside. */
  private static List<Kind> kinds(KitReading reading) {
    return reading.problems().stream()
        .map(lowfirst.problem.Problem::kind)
        .filter(kind -> kind != Kind.HEIGHT_ASSUMED && kind != Kind.HEIGHT_UNKNOWN)
        .filter(kind -> kind != Kind.COLUMN_GUESSED)
        .toList();
  }
}
