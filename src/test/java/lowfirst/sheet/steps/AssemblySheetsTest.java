package lowfirst.sheet.steps;

import static lowfirst.sheet.document.Said.assertSays;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.board.Board;
import lowfirst.board.Kit;
import lowfirst.board.Unit;
import lowfirst.progress.Event;
import lowfirst.progress.Progress;
import lowfirst.progress.SmallPlan;
import lowfirst.progress.State;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Said;
import lowfirst.sheet.wording.StepWording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Steps and assembly book of a board built twice, with something of everything, and of a lamp. */
class AssemblySheetsTest {
  private static final String BOARDS =
      """
      board,count,bom,placements,width mm,height mm
      driver,2,bom.csv,placements.csv,60,40
      lamp,1,lamp.csv,,,
      """;
  private static final String BOM =
      """
      designators,value,package,description,height mm
      R1 R2,4k7 5%,DIN0207,resistor,2.5
      D1,1N4148,DO-35,diode,2
      C1,470u 25V,radial,electrolytic capacitor,12
      Q1,BP-N60L,TO-220,MOSFET,19
      X1,DIP-8,DIP-8,IC socket,5
      U1,NE555,DIP-8,integrated circuit,
      K1,relay,,relay,
      """;
  private static final String PLACEMENTS =
      """
      designator,x mm,y mm,rotation,side
      R1,10,10,0,top
      R2,30,10,90,top
      D1,10,20,0,top
      C1,50,10,0,top
      Q1,50,30,0,top
      X1,30,30,0,top
      U1,30,30,0,top
      """;
  private static final Kit KIT =
      Said.kit(
          "kit.properties",
          "title = Small\nmeter = 0.5 % + 2 of 6000\nsigner = A. Builder\n",
          "boards.csv",
          BOARDS,
          "bom.csv",
          BOM,
          "placements.csv",
          PLACEMENTS,
          "lamp.csv",
          "designators,value,description,height mm\nR1,1k 1%,resistor,2.5\n",
          "swaps.csv",
          "board,designators,part type fitted,reason,who,date\n"
              + "driver,Q1,BP-N100L,only these came,A. Builder,2026-03-14\n");

  private static AssemblyPlan plan(Kit kit) {
    return AssemblyOrder.of(kit, AssemblyOptions.USUAL);
  }

  private static Document steps(Kit kit) {
    return StepsDocument.of(kit, plan(kit), AssemblyOptions.USUAL);
  }

  private static Kit oneResistor() {
    return Said.kit(
        "kit.properties", "title = One\n", "bom.csv", "designators,value,height mm\nR1,1k,2\n");
  }

  private static boolean says(Document document, String start) {
    return Said.lines(document).stream().anyMatch(line -> line.startsWith(start));
  }

  /** By hand: 8 parts twice and one; of 7 batches one is plugged in. */
  @Test
  void the_steps_say_how_many_of_everything_then_tell_each_step() {
    Document steps = steps(KIT);
    assertSays(
        steps,
        "Assembly steps of Small",
        "17 parts in 8 steps, 6 flips: as few as possible with at most 24 parts and 1.5 mm of height"
            + " between them before each. Lowest first is good practice, no standard: turned over, a"
            + " board rests on its tallest parts.",
        "! " + StepsDocument.BENCH,
        "! " + StepsDocument.LEAD_ENDS,
        "# Board driver, 2 built side by side",
        "# Batch 1: 3 parts, 2.0 to 2.5 mm, top side",
        "Positions are right/up, in mm from the board's lower left corner seen from the top.",
        "## Step 1: 1N4148 diode",
        "pick: 2 × 1N4148 diode, DO-35 (1 for each of 2 boards)",
        "marked: printed 1N4148 or 4148",
        "where: D1 (top side) at 10.0/20.0 mm",
        "way round: the band is the cathode: over the bar printed on the board",
        "seat: lying flat and centred; bend the leads 0.8 mm or more from the body",
        "solder: 2 to 3 s a joint; trim so that the end shows, about 1 mm; 2.5 mm at most",
        "look for: mounting: parallel to the board, centred; orientation: checked before soldering;"
            + " joint: wetted all round, the hole filled, no bridge; lead end: visible; part: no"
            + " crack, marking readable",
        "why now: 2 mm by the BOM; lowest first",
        "## Step 2: 4.7 kΩ resistor",
        "pick: 4 × 4.7 kΩ resistor, ±5 %, DIN0207 (2 for each of 2 boards)",
        "marked: bands yellow violet red gold",
        "where: R1, R2 (top side) at 10.0/10.0, 30.0/10.0 mm",
        "Flip now: with all 3 parts seated, lay a stiff card or foam over them, turn each of the 2"
            + " boards over and solder. Then turn back and inspect.",
        "# Batch 2: 1 part, 5.0 mm, top side",
        "Flip now: with the part seated, lay a stiff card or foam over it, turn each of the 2 boards"
            + " over and solder. Then turn back and inspect.",
        "## Step 5: BP-N60L MOSFET",
        "swapped: in place of what the BOM asks for: only these came (A. Builder 2026-03-14)",
        "# Batch 5: 1 part, height not known, top side",
        "## Step 6: relay",
        "where: K1 (top side); not in the placement list: find it by the print on the board",
        "# Batch 6: 1 part to plug in, top side",
        StepsDocument.RAIL_CHECK,
        "## Step 7: NE555 integrated circuit",
        "solder: nothing to solder",
        "# Board lamp",
        "pick: 1 × 1 kΩ resistor, ±1 %",
        "Flip now: with the part seated, lay a stiff card or foam over it, turn the board over and"
            + " solder. Then turn back and inspect.",
        "# Heights to measure",
        ": step | part | board | places | height",
        "6 | relay | driver | K1 | not known");
    List<String> lines = Said.lines(steps);
    assertEquals(6, lines.stream().filter(line -> line.startsWith("Flip now")).count());
    assertEquals(1, lines.stream().filter(StepsDocument.RAIL_CHECK::equals).count());
    assertEquals(1, lines.stream().filter(line -> line.startsWith("swapped: ")).count());
    // A socket bears no print, and nothing is measured on it; "relay" is no print either.
    int socket = lines.indexOf("## Step 3: DIP-8 IC socket");
    assertTrue(lines.get(socket + 2).startsWith("where: "), lines.get(socket + 2));
    int relay = lines.indexOf("## Step 6: relay");
    assertTrue(lines.get(relay + 2).startsWith("where: "), lines.get(relay + 2));
    assertTrue(lines.stream().noneMatch(line -> line.startsWith("<")), "no pictures in a terminal");
  }

  @Test
  void one_of_everything_is_told_in_the_singular_and_nothing_is_told_so() {
    assertTrue(says(steps(oneResistor()), "1 part in 1 step, 1 flip: as few as possible"));
    Kit none =
        Said.kit("kit.properties", "title = None\n", "bom.csv", "designators,value\nR1,DNP\n");
    if (plan(none).steps().isEmpty()) {
      assertSays(steps(none), "Nothing in this kit is to be fitted.");
    }
    Document empty =
        StepsDocument.of(none, new AssemblyPlan(List.of(), List.of()), AssemblyOptions.USUAL);
    assertSays(empty, "Nothing in this kit is to be fitted.");
    assertFalse(says(empty, "! "));
    assertFalse(says(empty, "# "));
  }

  @Test
  void parts_without_places_are_no_steps_but_are_to_be_fitted() {
    Document steps = steps(Said.kit("bom.csv", "qty,part\n4,4k7 resistor\n1,BC547\n"));
    assertTrue(says(steps, "The BOM lists parts, but names no place for them on a board"));
    assertFalse(says(steps, "Nothing in this kit"));
  }

  /** Three resistors alike: the second and third are worked like the first. */
  @Test
  void work_that_was_told_in_this_batch_is_not_told_again() {
    Kit kit =
        Said.kit(
            "bom.csv",
            """
            designators,value,description,height mm
            R1,1k,resistor,2
            R2,2k2,resistor,2
            Q1,BC547,transistor,5
            Q2,T1,MOSFET TO-92,5
            Q3,T2,MOSFET TO-92,5
            """);
    List<String> lines = Said.lines(steps(kit));
    assertSays(
        steps(kit),
        "## Step 1: 1 kΩ resistor",
        "## Step 2: 2.2 kΩ resistor",
        "work: seat, solder and look as in step 1",
        "why now: 2 mm by the BOM; lowest first");
    assertEquals(
        1, lines.stream().filter(line -> line.startsWith("! Static can destroy it")).count());
  }

  @Test
  void a_socket_that_no_list_names_is_marked_where_its_circuit_goes() {
    Kit kit =
        Said.kit(
            "kit.properties",
            "title = One\n",
            "bom.csv",
            "designators,value,package\nU1,NE555,DIP-8_W7.62mm_Socket\n",
            "placements.csv",
            "designator,x mm,y mm,rotation,side\nU1,10,10,0,top\n");
    assertSays(
        StepsDocument.illustrated(kit, plan(kit), AssemblyOptions.USUAL),
        "<Board kit: seen from the top; marked: 1 at U1> ",
        "where: XU1 (top side) at 10.0/10.0 mm",
        "<Board kit: seen from the top; marked: 2 at U1; filled already: 1 place> ");
  }

  @Test
  void on_paper_each_batch_has_its_map_and_each_part_its_picture() {
    Document paper = StepsDocument.illustrated(KIT, plan(KIT), AssemblyOptions.USUAL);
    assertSays(
        paper,
        "# Batch 1: 3 parts, 2.0 to 2.5 mm, top side",
        "<Board driver: seen from the top; marked: 1 at D1, 2 at R1, 2 at R2> ",
        "## Step 1: 1N4148 diode",
        "<diode with the print 1N4148; the band is at the cathode, K> ",
        "## Step 2: 4.7 kΩ resistor",
        "<resistor with bands yellow violet red gold> ",
        "# Batch 2: 1 part, 5.0 mm, top side",
        "<Board driver: seen from the top; marked: 3 at X1; filled already: 3 places> ",
        "# Batch 5: 1 part, height not known, top side",
        "<Board driver: seen from the top; marked: 6 at K1; filled already: 6 places; not in the"
            + " placement list: K1> ");
    // The lamp has no placements, so no maps.
    List<String> lines = Said.lines(paper);
    int lamp = lines.indexOf("# Board lamp");
    assertTrue(
        lines.subList(lamp, lines.size()).stream().noneMatch(line -> line.startsWith("<Board")));
  }

  @Test
  void machines_get_a_row_a_step_with_every_cell() {
    List<String> rows = Said.rows(StepsDocument.table(KIT, plan(KIT)), "");
    assertEquals(8, rows.size());
    String resistors = rows.get(1);
    assertTrue(
        resistors.startsWith(
            "1 | 2 | driver | 2 | top | solder | 4.7 kΩ resistor, ±5 %, DIN0207 | resistor | 4 | bands"
                + " yellow violet red gold | "),
        resistors);
    assertTrue(
        resistors.contains(
            " | R1 R2 | 2.5 | either way round; turn all tolerance bands to one side, then they are"
                + " easy to check | lying flat and centred; bend the leads 0.8 mm or more from the"
                + " body | 2 to 3 s a joint; trim so that the end shows, about 1 mm; 2.5 mm at most |"
                + " mounting: parallel to the board, centred; joint: "),
        resistors);
    assertTrue(
        resistors.endsWith(" |  | lowest seated height first | 2.5 mm by the BOM; lowest first"),
        resistors);
    assertTrue(rows.get(6).startsWith("6 | 7 | driver | 2 | top | plug in | NE555 "), rows.get(6));
    assertTrue(rows.get(6).contains(" | static can destroy it unnoticed: "), rows.get(6));
    assertTrue(rows.get(5).contains(" | K1 |  | "), rows.get(5));
    assertTrue(rows.get(1).contains(" from 4.494 kΩ to 4.904 kΩ | "), rows.get(1));
  }

  @Test
  void what_is_wrong_with_the_plan_stands_before_the_work() {
    var problem =
        new lowfirst.problem.Problem(
            lowfirst.problem.Kind.values()[0],
            lowfirst.problem.Place.ofFile("bom.csv"),
            "two parts want one place",
            "move one");
    var plan = new AssemblyPlan(SmallPlan.PLAN.batches(), List.of(problem));
    assertSays(
        StepsDocument.of(KIT, plan, AssemblyOptions.USUAL),
        "! two parts want one place; move one.");
    Board driver = KIT.board("driver").orElseThrow();
    assertSays(
        AssemblyBook.of(KIT, driver, Progress.of(plan, List.of()), 180),
        "! two parts want one place; move one.",
        "Batches: Batch | Steps | What | Done");
  }

  /** The usual body of an electrolytic capacitor is an assumption until its height is measured. */
  @Test
  void a_height_that_is_only_assumed_is_to_be_measured_too() {
    Kit kit =
        Said.kit("bom.csv", "designators,value,description\nC1,470u,electrolytic capacitor\n");
    List<String> rows = Said.rows(steps(kit), "");
    assertEquals(1, rows.size(), rows.toString());
    assertTrue(
        rows.get(0)
            .matches(
                "1 \\| 470 µF electrolytic capacitor \\| \\w+ \\| C1 \\| (about [\\d.]+ mm assumed|not known)"),
        rows.get(0));
    assertFalse(says(steps(oneResistor()), "# Heights to measure"));
  }

  // --- the book

  private static Document book(String board, double width, Event... events) {
    return AssemblyBook.of(
        KIT, KIT.board(board).orElseThrow(), Progress.of(plan(KIT), List.of(events)), width);
  }

  @Test
  void the_book_of_a_board_opens_with_its_sums_and_goes_on_batch_by_batch() {
    Document book = book("driver", 180);
    assertSays(
        book,
        "Assembly book: driver",
        "Small · 2 units side by side",
        "Parts: 8 on each board",
        "Batches: 6, lowest first",
        "Flips: 5, one after each batch that is soldered",
        "Meter: ±(0.5 % + 2 of 6000), kit.properties, meter",
        "Input fingerprint: " + KIT.fingerprint(),
        "! " + StepsDocument.BENCH,
        "! " + StepsDocument.LEAD_ENDS,
        "Batches: Batch | Steps | What | Done",
        "Batch 1: 3 parts, 2.0 to 2.5 mm, top side | 1 to 2 | diode, resistor | [ ]",
        "Batch 2: 1 part, 5.0 mm, top side | 3 | IC socket | [ ]",
        "----",
        "# Batch 1: 3 parts, 2.0 to 2.5 mm, top side",
        ": Step | Pick | Where, which way round | Unit | Seated | Soldered | Inspected | Accept |"
            + " Reading | Initials",
        "2 | 4 × 4.7 kΩ resistor, ±5 %, DIN0207 (2 for each of 2 boards) | R1, R2 | 1 | [ ] | [ ] |"
            + " [ ] | 4.437 kΩ to 4.966 kΩ | __ | __",
        " |  |  | 2 | [ ] | [ ] | [ ] |  | __ | __",
        "Flip now: with all 3 parts seated, lay a stiff card or foam over them, turn each of the 2"
            + " boards over and solder. Then turn back and inspect.",
        "----",
        "# Batch 3: 1 part, 12.0 mm, top side",
        "! Electrolytic capacitor: wrong way round it can burst: check + twice. Once powered it stays"
            + " charged: discharge it through a resistor before you touch the board.",
        "----",
        "# Batch 6: 1 part to plug in, top side",
        StepsDocument.RAIL_CHECK,
        "<Board driver: seen from the top; marked: 7 at U1; filled already: 7 places> ",
        "7 | 2 × NE555 integrated circuit, DIP-8 (1 for each of 2 boards) | U1\n"
            + "the notch or dot is the pin 1 end: over the notch printed on the board; then read the"
            + " type number again | 1 | [ ] | – | [ ] | __");
    List<String> lines = Said.lines(book);
    assertEquals(5, lines.stream().filter(line -> line.startsWith("Flip now: ")).count());
    assertEquals(6, lines.stream().filter("----"::equals).count());
    assertEquals(1, lines.stream().filter(StepsDocument.RAIL_CHECK::equals).count());
    assertEquals(
        5, lines.stream().filter(line -> line.contains("; beside it: Board driver: seen")).count());
  }

  /** Three packages whose heights nobody knows are three flips, which need one page and one map. */
  @Test
  void batches_of_unknown_height_stand_under_one_heading() {
    Kit kit =
        Said.kit(
            "bom.csv",
            """
            designators,value,package,description,height mm
            R1,1k,DIN0207,resistor,2.5
            K1,5 V,box A,relay,
            J1,2-pole,terminal A,screw terminal,
            K2,12 V,box A,relay,
            J2,3-pole,terminal B,screw terminal,
            """,
            "placements.csv",
            "designator,x mm,y mm\nR1,5,5\nK1,15,5\nJ1,25,5\nK2,35,5\nJ2,45,5\n");
    Document steps = steps(kit);
    List<String> lines = Said.lines(steps);
    assertTrue(says(steps, "5 parts in 5 steps, 4 flips: "), lines.toString());
    assertEquals(
        List.of(
            "# Batch 1: 1 part, 2.5 mm, top side",
            "# Batches 2 to 4: 4 parts, height not known, top side"),
        lines.stream().filter(line -> line.startsWith("# Batch")).toList());
    String each =
        ": each time with all parts of the step seated, lay a stiff card or foam over them, turn the"
            + " board over and solder. Then turn back and inspect.";
    Document book =
        AssemblyBook.of(kit, kit.boards().get(0), Progress.of(plan(kit), List.of()), 180);
    for (Document document : List.of(steps, book)) {
      List<String> flips =
          Said.lines(document).stream().filter(line -> line.startsWith("Flip ")).toList();
      assertEquals(2, flips.size());
      assertTrue(
          flips
              .get(1)
              .matches(
                  "Flip after (steps 2, 4 and 5|steps 2, 3 and 5|each of steps 3 to 5)" + each),
          flips.get(1));
    }
    // The overview still has each batch to tick.
    assertEquals(4, Said.rows(book, "Batches").size());
    assertEquals(2, book.blocks().stream().filter(Block.Figure.class::isInstance).count(), "maps");
  }

  /** Turned over between them, parts of the two sides are no one heading's. */
  @Test
  void unknown_heights_of_two_sides_stand_apart() {
    Kit kit =
        Said.kit(
            "bom.csv",
            "designators,value,package\nK1,relay,box A\nK2,relay,box B\n",
            "placements.csv",
            "designator,x mm,y mm,side\nK1,15,5,top\nK2,35,5,bottom\n");
    assertEquals(
        List.of(
            "# Batch 1: 1 part, height not known, top side",
            "# Batch 2: 1 part, height not known, bottom side"),
        Said.lines(steps(kit)).stream().filter(line -> line.startsWith("# Batch")).toList());
  }

  /** The map is 64 mm wide; beside it the solder side needs 5 and at least 36: 105 in all. */
  @ParameterizedTest
  @CsvSource({"180, true", "105, true", "104.9, false", "80, false"})
  void the_solder_side_stands_beside_the_map_or_below_the_flip(double width, boolean beside) {
    List<String> lines = Said.lines(book("driver", width));
    assertEquals(
        beside,
        lines.contains(
            "<Board driver: seen from the top; marked: 3 at X1; filled already: 3 places; beside it:"
                + " Board driver: seen from the bottom, mirrored; marked: 3 at X1; filled already: 3"
                + " places> "));
    assertEquals(
        !beside,
        lines.contains(
            "<Board driver: seen from the bottom, mirrored; marked: 3 at X1; filled already: 3 places>"
                + " "));
  }

  /**
   * 64 mm beside 64 mm: life size fits in 133 mm; in less it is made to fit, never beyond 75 mm.
   */
  @Test
  void the_solder_side_is_as_large_as_there_is_room() {
    assertEquals(64 + 5 + 64, figureWidth(180), 1e-9);
    assertEquals(120, figureWidth(120), 1e-9);
    assertEquals(105, figureWidth(105), 1e-9);
  }

  private static double figureWidth(double paper) {
    return book("driver", paper).blocks().stream()
        .filter(Block.Figure.class::isInstance)
        .map(block -> ((Block.Figure) block).drawing().widthMillimetres())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_board_built_once_has_no_column_of_units_and_one_without_placements_no_map() {
    Document book = book("lamp", 180);
    assertSays(
        book,
        "Small · one unit",
        "Parts: 1 on each board",
        "Batch 7: 1 part, 2.5 mm, top side | 8 | resistor | [ ]",
        ": Step | Pick | Where, which way round | Seated | Soldered | Inspected | Accept | Reading |"
            + " Initials");
    assertTrue(Said.lines(book).stream().noneMatch(line -> line.startsWith("<")));
    assertTrue(
        Said.rows(book, "").get(0).startsWith("8 | 1 × 1 kΩ resistor, ±1 % | R1 | [ ] | [ ]"));
  }

  /** Up to four units have a row each. */
  @ParameterizedTest
  @CsvSource({"1, 1", "2, 2", "4, 4", "5, 1"})
  void few_units_have_rows_of_their_own(int units, int rows) {
    Kit kit =
        Said.kit(
            "boards.csv",
            "board,count,bom\nb," + units + ",bom.csv\n",
            "bom.csv",
            "designators,value,height mm\nR1,1k,2\n");
    Document book =
        AssemblyBook.of(kit, kit.boards().get(0), Progress.of(plan(kit), List.of()), 180);
    assertEquals(rows, Said.rows(book, "").size());
  }

  /** 22 pF on a meter that may be 5 of 2000 digits off, of 20 nF: nothing at all may be shown. */
  @Test
  void a_reading_that_may_be_nothing_has_no_lower_end() {
    Kit kit = Said.kit("bom.csv", "designators,value,description\nC1,22p,ceramic capacitor\n");
    Document book =
        AssemblyBook.of(kit, kit.boards().get(0), Progress.of(plan(kit), List.of()), 180);
    String row = Said.rows(book, "").get(0);
    assertTrue(row.contains(" | up to "), row);
    assertFalse(row.contains("0 F"), row);
  }

  /** An empty map alone would leave the hand searching. */
  @Test
  void a_part_that_is_not_on_the_map_is_to_be_found_by_the_print() {
    Kit kit =
        Said.kit(
            "bom.csv",
            "designators,value,height mm\nR1,1k,2\nR2,2k2,2\n",
            "placements.csv",
            "designator,x mm,y mm,rotation,side\nR1,10,10,0,top\n");
    List<String> rows =
        Said.rows(
            AssemblyBook.of(kit, kit.boards().get(0), Progress.of(plan(kit), List.of()), 180), "");
    String words = "not in the placement list: find it by the print on the board";
    assertEquals(1, rows.stream().filter(row -> row.contains("R2\n" + words)).count(), "" + rows);
    assertEquals(1, rows.stream().filter(row -> row.contains(words)).count(), "" + rows);
  }

  private static Event.Tick tick(
      int minute, int unit, State state, String measured, String... names) {
    return new Event.Tick(
        "t" + minute,
        new Unit("driver", unit),
        SmallPlan.designators(names),
        state,
        "Ada",
        SmallPlan.minute(minute),
        Optional.ofNullable(measured),
        Optional.empty());
  }

  @Test
  void what_was_ticked_comes_out_filled_in() {
    Document book =
        book(
            "driver",
            180,
            tick(1, 1, State.SEATED, "4.68k", "R1", "R2"),
            tick(2, 2, State.INSPECTED, null, "R1", "R2", "D1"),
            tick(3, 1, State.SEATED, null, "D1"),
            tick(4, 1, State.SOLDERED, null, "D1"),
            tick(5, 1, State.INSPECTED, null, "D1"));
    List<String> rows = Said.rows(book, "");
    assertTrue(rows.get(0).endsWith(" | 1 | [x] | [x] | [x] |  | __ | _Ada_"), rows.get(0));
    assertEquals(" |  |  | 2 | [ ] | [ ] | [x] |  | __ | _Ada_", rows.get(1));
    assertTrue(
        rows.get(2).endsWith(" | 1 | [x] | [ ] | [ ] | 4.437 kΩ to 4.966 kΩ | _4.68k_ | __"),
        rows.get(2));
    assertTrue(Said.rows(book, "Batches").get(0).endsWith("[ ]"));
    Document done =
        book(
            "driver",
            180,
            tick(1, 1, State.INSPECTED, null, "R1", "R2", "D1"),
            tick(2, 2, State.INSPECTED, null, "R1", "R2", "D1"));
    assertTrue(Said.rows(done, "Batches").get(0).endsWith("[x]"));
  }

  // --- words of single steps

  @Test
  void many_places_have_no_positions_in_figures() {
    String placements =
        "designator,x mm,y mm,rotation,side\n"
            + IntStream.rangeClosed(1, 5)
                .mapToObj(i -> "R" + i + "," + 10 * i + ",5,0,bottom")
                .collect(Collectors.joining("\n"));
    for (int places : List.of(4, 5)) {
      Kit kit =
          Said.kit(
              "bom.csv",
              "designators,value,height mm\n"
                  + IntStream.rangeClosed(1, places)
                      .mapToObj(i -> "R" + i)
                      .collect(Collectors.joining(" "))
                  + ",1k,2\n",
              "placements.csv",
              placements);
      String where =
          Said.lines(steps(kit)).stream()
              .filter(line -> line.startsWith("where: "))
              .findFirst()
              .orElseThrow();
      assertEquals(
          places == 4
              ? "where: R1-R4 (bottom side) at 10.0/5.0, 20.0/5.0, 30.0/5.0, 40.0/5.0 mm"
              : "where: R1-R5 (bottom side)",
          where);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "driver,Q1,X,because,Ada,2026-03-14 | in place of what the BOM asks for: because (Ada"
            + " 2026-03-14)",
        "driver,Q1,X,because,, | in place of what the BOM asks for: because",
        "driver,Q1,X,,Ada, | in place of what the BOM asks for (Ada)",
        ",Q1,X,because,, | in place of what the BOM asks for: because",
        "lamp,Q1,X,because,, | ''",
        "driver,Q2,X,because,, | ''",
      })
  void an_accepted_swap_is_told_at_its_own_step(String row, String words) {
    Kit kit =
        Said.kit(
            "boards.csv",
            BOARDS,
            "bom.csv",
            BOM,
            "lamp.csv",
            "designators,value,height mm\nR1,1k,2\n",
            "swaps.csv",
            "board,designators,part type fitted,reason,who,date\n" + row + "\n");
    assertEquals(
        words.equals("''") ? "" : words,
        StepWording.swapped(
            kit, plan(kit).stepOf("driver", SmallPlan.designators("Q1").get(0)).orElseThrow()));
  }
}
