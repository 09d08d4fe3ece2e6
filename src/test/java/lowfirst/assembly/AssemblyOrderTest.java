package lowfirst.assembly;

import static lowfirst.assembly.Plans.board;
import static lowfirst.assembly.Plans.firsts;
import static lowfirst.assembly.Plans.plan;
import static lowfirst.assembly.Plans.stage;
import static lowfirst.assembly.Plans.step;
import static lowfirst.assembly.Plans.texts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.SampleBoards;
import lowfirst.board.Side;
import lowfirst.part.PartKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import org.junit.jupiter.api.Test;

/** What goes before what, told on boards of a few parts. */
class AssemblyOrderTest {

  @Test
  void the_lowest_part_goes_first() {
    var plan =
        plan(
            board()
                .part("C1", PartKind.FILM_CAPACITOR, "100n", 10)
                .part("D1", PartKind.DIODE, "1N4148", 1.9)
                .part("R1", PartKind.RESISTOR, "4k7", 2.5));
    assertEquals(List.of("D1", "R1", "C1"), firsts(plan));
    assertEquals(Rule.LOWEST_FIRST, plan.steps().get(0).rule());
    assertEquals("1.9 mm by the BOM; lowest first", plan.steps().get(0).why());
  }

  @Test
  void wire_links_go_before_anything_lower() {
    var plan =
        plan(
            board()
                .part("D1", PartKind.DIODE, "1N4148", 0.5)
                .part("J1 J2", PartKind.WIRE_LINK, "5 mm", 0.7));
    assertEquals(List.of("J1", "D1"), firsts(plan));
    assertEquals(Rule.WIRE_LINKS_FIRST, plan.steps().get(0).rule());
  }

  @Test
  void heights_within_three_tenths_of_a_millimetre_are_equal_and_the_sturdy_go_first() {
    var plan =
        plan(
            board()
                .part("LED1", PartKind.LED, "red", 5.1)
                .part("C1", PartKind.CERAMIC_CAPACITOR, "100n", 5.3)
                .part("C2", PartKind.CERAMIC_CAPACITOR, "10n", 5.5));
    assertEquals(List.of("C1", "LED1", "C2"), firsts(plan));
    assertEquals(Rule.STURDY_BEFORE_DELICATE, plan.steps().get(1).rule());
  }

  @Test
  void among_equals_what_fits_either_way_round_goes_before_what_fits_only_one() {
    var plan =
        plan(
            board()
                .part("D1", PartKind.DIODE, "1N4007", 2.4)
                .part("R1", PartKind.RESISTOR, "1k", 2.5));
    assertEquals(List.of("R1", "D1"), firsts(plan));
  }

  @Test
  void the_order_does_not_depend_on_the_order_of_the_rows() {
    var one =
        board()
            .part("R1", PartKind.RESISTOR, "1k", 2.5)
            .part("R2", PartKind.RESISTOR, "2k", 2.4)
            .part("R3", PartKind.RESISTOR, "3k", 2.6);
    var other =
        board()
            .part("R3", PartKind.RESISTOR, "3k", 2.6)
            .part("R2", PartKind.RESISTOR, "2k", 2.4)
            .part("R1", PartKind.RESISTOR, "1k", 2.5);
    assertEquals(firsts(plan(one)), firsts(plan(other)));
  }

  @Test
  void one_part_type_is_one_step_and_identical_boards_are_built_side_by_side() {
    var plan =
        plan(
            SampleBoards.board("driver")
                .count(2)
                .part("R10 R2", PartKind.RESISTOR, "1k", 2.5)
                .part("R1", PartKind.RESISTOR, "1k", 2.5));
    Step step = plan.steps().get(0);
    assertEquals(1, plan.steps().size());
    assertEquals(List.of("R1", "R2", "R10"), texts(step));
    assertEquals(2, step.units());
    assertEquals(6, step.partsToPick());
  }

  @Test
  void a_resistor_under_a_socket_goes_before_it_and_says_so() {
    var plan =
        plan(
            board()
                .part("XU1", PartKind.SOCKET, "16-pin", 4.6)
                .part("R5 R6", PartKind.RESISTOR, "1k", 2.5)
                .at("XU1", 20, 20)
                .at("R5", 20, 20, 90, Side.TOP)
                .at("R6", 60, 20)
                .body("XU1", 20, 10)
                .body("R5", 6.3, 2.5)
                .body("R6", 6.3, 2.5));
    assertEquals(List.of("R5", "XU1"), firsts(plan));
    assertEquals(Rule.UNDER_ANOTHER, plan.steps().get(0).rule());
    assertEquals("2.5 mm by the BOM; under XU1", plan.steps().get(0).why());
  }

  @Test
  void a_part_of_unknown_height_under_a_display_goes_before_it() {
    var plan =
        plan(
            board()
                .part("DS1", PartKind.DISPLAY, "two digits", 12)
                .part("R1", PartKind.RESISTOR, "1k")
                .part("K1", PartKind.RELAY, "reed", 20)
                .at("DS1", 20, 20)
                .at("R1", 22, 20)
                .body("DS1", 25, 15, 12, 8)
                .body("R1", 6.3, 2.5));
    assertEquals(List.of("R1", "DS1", "K1"), firsts(plan));
    assertEquals("height not known; under DS1", step(plan, "R1").why());
  }

  @Test
  void parts_on_the_other_side_are_not_under_anything_on_this_one() {
    var plan =
        plan(
            board()
                .part("XU1", PartKind.SOCKET, "16-pin", 4.6)
                .part("R5", PartKind.RESISTOR, "1k", 2.5)
                .at("XU1", 20, 20)
                .at("R5", 20, 20, 0, Side.BOTTOM)
                .body("XU1", 20, 10)
                .body("R5", 6.3, 2.5));
    assertTrue(plan.steps().stream().noneMatch(step -> step.rule() == Rule.UNDER_ANOTHER));
    assertEquals(2, plan.batches().size());
  }

  @Test
  void sides_never_share_a_batch_and_the_lower_side_goes_first() {
    var plan =
        plan(
            board()
                .part("C1", PartKind.FILM_CAPACITOR, "1u", 10)
                .part("R1 R2", PartKind.RESISTOR, "1k", 2.5)
                .at("C1", 5, 5)
                .at("R1", 20, 20)
                .at("R2", 30, 20, 0, Side.BOTTOM));
    assertEquals(List.of("R2", "R1", "C1"), firsts(plan));
    for (Batch batch : plan.batches()) {
      assertEquals(1, batch.steps().stream().map(Step::side).distinct().count());
    }
  }

  @Test
  void a_circuit_is_plugged_into_its_socket_after_everything_is_soldered() {
    var plan =
        plan(
            board()
                .part("U1", PartKind.INTEGRATED_CIRCUIT, "NE555", 3.7)
                .part("XU1", PartKind.SOCKET, "8-pin", 4.6)
                .part("C1", PartKind.FILM_CAPACITOR, "1u", 10));
    assertEquals(List.of("XU1", "C1", "U1"), firsts(plan));
    Step last = plan.steps().get(2);
    assertEquals(Step.Stage.PLUG_IN, last.stage());
    assertEquals(Rule.AFTER_RAIL_CHECK, last.rule());
    assertEquals("into its socket XU1, after the rail check", last.why());
    assertTrue(plan.batches().get(plan.batches().size() - 1).isPluggedIn());
  }

  @Test
  void a_socket_may_be_told_by_its_description_its_spot_or_the_circuits_own_footprint() {
    var byDescription =
        board()
            .part("U1", PartKind.INTEGRATED_CIRCUIT, "NE555", "DIP-8", "")
            .part("SO9", PartKind.SOCKET, "8-pin", "", "socket for U1");
    var bySpot =
        board()
            .part("U1", PartKind.INTEGRATED_CIRCUIT, "NE555", "DIP-8", "")
            .part("J7", PartKind.SOCKET, "8-pin", "", "")
            .at("U1", 10, 10)
            .at("J7", 10, 10);
    var byFootprint =
        board().part("U1", PartKind.INTEGRATED_CIRCUIT, "NE555", "DIP-8_W7.62mm_Socket", "");
    var byOwnWords = board().part("U1", PartKind.INTEGRATED_CIRCUIT, "NE555", "", "in socket");
    var byItsOwnDescription =
        board()
            .part("U1", PartKind.INTEGRATED_CIRCUIT, "NE555", "DIP-8", "plugged into J7")
            .part("J7", PartKind.SOCKET, "8-pin", "", "");
    assertEquals("into its socket J7, after the rail check", whyOf("U1", byItsOwnDescription));
    assertEquals("into its socket SO9, after the rail check", whyOf("U1", byDescription));
    assertEquals("into its socket J7, after the rail check", whyOf("U1", bySpot));
    assertEquals("into its socket XU1, after the rail check", whyOf("U1", byFootprint));
    assertEquals("into its socket XU1, after the rail check", whyOf("U1", byOwnWords));
  }

  private static String whyOf(String designator, SampleBoards board) {
    return step(plan(board), designator).why();
  }

  @Test
  void as_many_loose_sockets_as_circuits_with_as_many_pins_are_theirs() {
    var sockets =
        new Item(
            List.of(),
            2,
            SampleBoards.type(PartKind.SOCKET, "DIP-8 socket", ""),
            "",
            OptionalDouble.empty(),
            Item.Fitting.FITTED,
            Place.ofLine("b/bom.csv", 9));
    var plan =
        plan(
            board()
                .part("U1 U2", PartKind.INTEGRATED_CIRCUIT, "NE555", "DIP-8", "")
                .part("U3", PartKind.INTEGRATED_CIRCUIT, "CD4026", "DIP-16", "")
                .item(sockets));
    assertEquals(List.of("XU1", "XU2"), texts(step(plan, "XU1")));
    assertEquals(Step.Stage.PLUG_IN, stage(plan, "U2"));
    assertEquals(Step.Stage.SOLDER, stage(plan, "U3"));
  }

  @Test
  void no_socket_is_made_of_words_that_deny_it() {
    var plan = plan(board().part("U1", PartKind.INTEGRATED_CIRCUIT, "NE555", "DIP-8", "no socket"));
    assertEquals(List.of("U1"), firsts(plan));
  }

  @Test
  void a_transistor_is_bolted_to_its_heatsink_before_it_is_soldered() {
    var plan =
        plan(
            board()
                .part("Q3 Q4", PartKind.MOSFET, "type M", 18.8)
                .line(
                    "HS1",
                    SampleBoards.type(PartKind.HEATSINK, "32 x 14", ""),
                    "heatsink for Q3",
                    OptionalDouble.of(25.6)));
    assertEquals(List.of("Q4", "HS1", "Q3"), firsts(plan));
    Step bolted = step(plan, "Q3");
    assertEquals(Step.Stage.FASTEN_AND_SOLDER, bolted.stage());
    assertEquals(Rule.FASTENED_FIRST, bolted.rule());
    assertEquals(25.6, bolted.seatedHeightMillimetres().orElseThrow());
    assertEquals(
        "25.6 mm by the BOM; bolted before soldering, so that no strain stays in the leads;"
            + " bolt it to HS1 first",
        bolted.why());
    // Bolted together they are seated together: no flip between them.
    assertEquals(2, plan.batches().size());
  }

  @Test
  void unknown_heights_go_last_and_two_of_them_share_a_batch_only_in_one_package() {
    var plan =
        plan(
            board()
                .part("K1", PartKind.RELAY, "relay", "RL-A", "")
                .part("K2", PartKind.RELAY, "other relay", "RL-A", "")
                .part("SW1", PartKind.SWITCH, "switch", "SW-B", "")
                .part("C1", PartKind.FILM_CAPACITOR, "1u", 30));
    assertEquals("C1", firsts(plan).get(0));
    assertEquals(3, plan.batches().size());
    assertEquals(Rule.HEIGHT_NOT_KNOWN, plan.steps().get(1).rule());
    assertEquals(
        "height not known; late, so that it can't prop the board up", plan.steps().get(1).why());
  }

  @Test
  void surface_mount_parts_are_said_to_be_left_out_and_are_no_step() {
    var plan =
        plan(
            board()
                .part("R1", PartKind.RESISTOR, "1k", 2.5)
                .part("R2", PartKind.RESISTOR, "1k", "R_0805_2012Metric", "")
                .part("Q1", PartKind.BIPOLAR_TRANSISTOR, "2N3904", "SOT-23", ""));
    assertEquals(List.of("R1"), firsts(plan));
    assertEquals(
        List.of(
            "on board b these are surface-mount parts and not among the steps: Q1, R2; solder them"
                + " flat to their pads before the first step"),
        plan.problems().stream()
            .map(problem -> problem.message() + "; " + problem.remedy())
            .toList());
  }

  @Test
  void what_is_not_fitted_or_not_on_the_board_is_no_step() {
    var plan =
        plan(
            board()
                .part("R1", PartKind.RESISTOR, "1k", 2.5)
                .part("H1", PartKind.HARDWARE, "M3 screw")
                .part("TP1", PartKind.BOARD_FEATURE, "test pad")
                .item(
                    new Item(
                        List.of(Designator.of("R2")),
                        1,
                        SampleBoards.type(PartKind.RESISTOR, "2k", ""),
                        "",
                        OptionalDouble.empty(),
                        Item.Fitting.NOT_FITTED,
                        Place.ofLine("b/bom.csv", 9)))
                .at("R2", 5, 5)
                .at("H1", 1, 1));
    assertEquals(List.of("R1"), firsts(plan));
  }

  @Test
  void a_placed_part_that_no_bom_line_names_still_gets_a_step_that_says_so() {
    var plan = plan(board().at("X9", 5, 5));
    Step step = plan.steps().get(0);
    assertEquals(List.of("X9"), texts(step));
    assertEquals(PartKind.UNKNOWN, step.partType().kind());
    assertTrue(step.why().contains("not in the BOM"), step.why());
  }

  @Test
  void a_bom_line_that_is_not_placed_still_gets_a_step() {
    var plan = plan(board().part("R1", PartKind.RESISTOR, "1k", 2.5));
    assertEquals(List.of(), plan.steps().get(0).placements());
  }

  @Test
  void a_ring_of_demands_is_a_problem_that_names_its_members_and_the_rest_is_planned() {
    var plan =
        plan(
            board()
                .line(
                    "HS1",
                    SampleBoards.type(PartKind.HEATSINK, "small", ""),
                    "heatsink for HS2",
                    OptionalDouble.of(12))
                .line(
                    "HS2",
                    SampleBoards.type(PartKind.HEATSINK, "large", ""),
                    "heatsink for HS1",
                    OptionalDouble.of(25))
                .part("R1", PartKind.RESISTOR, "1k", 2.5));
    assertEquals(1, plan.problems().size());
    assertEquals(Kind.ORDER_CYCLE, plan.problems().get(0).kind());
    String message = plan.problems().get(0).message();
    assertTrue(message.contains("HS1") && message.contains("HS2"), message);
    assertEquals(Place.ofFile("b/bom.csv"), plan.problems().get(0).place());
    assertEquals(3, plan.steps().size());
  }

  @Test
  void a_wire_link_over_a_resistor_waits_for_it_and_the_other_links_do_not() {
    var plan =
        plan(
            board()
                .part("R1", PartKind.RESISTOR, "1k", 2.5)
                .part("J1 J2", PartKind.WIRE_LINK, "insulated", 5)
                .at("R1", 20, 20)
                .at("J1", 20, 20, 90, Side.TOP)
                .at("J2", 40, 20)
                .body("R1", 6.3, 2.5)
                .body("J1", 15, 0.8)
                .body("J2", 15, 0.8));
    assertEquals(List.of("J2", "R1", "J1"), firsts(plan));
    assertEquals(Rule.COVERS_ANOTHER, plan.steps().get(2).rule());
    assertEquals(Kind.ORDER_CYCLE, plan.problems().get(0).kind());
    assertTrue(plan.problems().get(0).message().contains("J1"));
    assertTrue(plan.problems().get(0).message().contains("R1"));
  }

  @Test
  void a_hundred_parts_on_one_spot_are_placeholders_and_cover_nothing() {
    var board = board();
    for (int i = 1; i <= 100; i++) {
      board.part("R" + i, PartKind.RESISTOR, "1k", 2.5).at("R" + i, 0, 0).body("R" + i, 6, 2.5);
    }
    board.part("X1", PartKind.SOCKET, "8-pin", 4.6).at("X1", 0, 0).body("X1", 10, 10);
    var plan = plan(board);
    assertTrue(plan.steps().stream().noneMatch(step -> step.rule() == Rule.UNDER_ANOTHER));
  }
}
