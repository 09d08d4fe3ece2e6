package lowfirst.assembly;

import static lowfirst.assembly.Plans.board;
import static lowfirst.assembly.Plans.first;
import static lowfirst.assembly.Plans.firsts;
import static lowfirst.assembly.Plans.plan;
import static lowfirst.assembly.Plans.stage;
import static lowfirst.assembly.Plans.step;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lowfirst.board.Designator;
import lowfirst.board.SampleBoards;
import lowfirst.board.Side;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.quantity.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The limits of a batch, and every way in which a kit tells of sockets and heatsinks. */
class AssemblyDetailsTest {

  // --- limits

  @Test
  void a_batch_may_hold_one_part_and_no_spread_but_not_less() {
    assertEquals(1, new AssemblyOptions(1, 0).partsPerBatch());
    assertThrows(IllegalArgumentException.class, () -> new AssemblyOptions(0, 1));
    assertThrows(IllegalArgumentException.class, () -> new AssemblyOptions(1, -0.1));
    assertThrows(IllegalArgumentException.class, () -> new AssemblyOptions(1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new Batch(1, "b", List.of()));
  }

  /** Each line: heights, parts a batch, spread; then the fewest batches, counted by hand. */
  @ParameterizedTest
  @CsvSource({
    "'1 2 3', 24, 2, 1",
    "'1 2 3', 24, 1.9, 2",
    "'1 2 3', 2, 9, 2",
    "'1 2 3', 1, 9, 3",
    "'1 2 3 4', 2, 1, 2",
    "'1 3 5', 24, 0, 3",
    "'2 2 2', 3, 0, 1",
    "'2 2 2 2', 3, 0, 2",
  })
  void as_many_parts_share_a_batch_as_hand_and_height_allow(
      String heights, int most, double spread, int batches) {
    var board = board();
    int number = 1;
    for (String height : heights.split(" ")) {
      board.part("C" + number, PartKind.FILM_CAPACITOR, "C" + number++, Double.parseDouble(height));
    }
    AssemblyPlan plan =
        AssemblyOrder.of(SampleBoards.kit(board), new AssemblyOptions(most, spread));
    assertEquals(batches, plan.batches().size());
    plan.batches().forEach(batch -> assertTrue(batch.partsPerUnit() <= most));
    assertEquals(
        number - 1, plan.batches().stream().mapToInt(Batch::partsPerUnit).sum(), "none is lost");
    plan.batches().forEach(batch -> assertFalse(batch.isPluggedIn()));
  }

  @Test
  void a_type_of_more_parts_than_a_batch_holds_comes_in_pieces() {
    AssemblyPlan plan =
        AssemblyOrder.of(
            SampleBoards.kit(board().part("R1 R2 R3 R4 R5", PartKind.RESISTOR, "1k", 2.5)),
            new AssemblyOptions(2, 1));
    assertEquals(List.of(2, 2, 1), plan.batches().stream().map(Batch::partsPerUnit).toList());
  }

  @Test
  void steps_are_found_by_number_and_by_part() {
    AssemblyPlan plan =
        plan(
            board()
                .part("R1", PartKind.RESISTOR, "1k", 2.5)
                .part("C1", PartKind.FILM_CAPACITOR, "1u", 10));
    assertEquals("C1", first(plan.step(2).orElseThrow()));
    assertEquals(Optional.empty(), plan.step(3));
    assertEquals(1, step(plan, "R1").number());
    assertEquals(Optional.empty(), plan.stepOf("other", Designator.of("R1")));
    assertEquals(Optional.empty(), plan.stepOf("b", Designator.of("R2")));
  }

  // --- heights

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "MEASURED | 2.5 mm; lowest first",
        "ASSUMED | about 2.5 mm, assumed; lowest first",
      })
  void a_step_says_how_sure_its_height_is(String origin, String why) {
    var source =
        origin.equals("ASSUMED")
            ? Source.assumed("resistors lie flat", "bom.csv")
            : Source.datasheet("a maker's drawing");
    var axial = new BodyOutline("axial", 2.5, 0, 6.3, 2.5, 0, 2, source);
    SampleBoards board = board().part("R1", PartKind.RESISTOR, "1k").outline("R1", axial);
    assertEquals(why, step(plan(board), "R1").why());
  }

  // --- words

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "R1 | R1",
        "R2 R1 | R1 and R2",
        "R3 R10 R1 | R1, R3 and R10",
        "R1 R2 R3 R4 R5 R6 | R1, R2, R3, R4, R5 and R6",
        "R1 R2 R3 R4 R5 R6 R7 | R1, R2, R3, R4, R5, R6 and 1 more",
        "R1 R2 R3 R4 R5 R6 R7 R8 R9 | R1, R2, R3, R4, R5, R6 and 3 more",
      })
  void up_to_six_parts_are_named_and_more_are_counted(String names, String words) {
    assertEquals(words, Words.list(Stream.of(names.split(" ")).map(Designator::of).toList()));
  }

  @Test
  void every_rule_has_its_words_and_no_two_the_same() {
    assertEquals("", Words.list(List.of()));
    assertEquals("2.5 mm", Words.millimetres(2.5));
    assertEquals(
        Rule.values().length, Arrays.stream(Rule.values()).map(Rule::words).distinct().count());
    Arrays.stream(Rule.values()).forEach(rule -> assertFalse(rule.words().isBlank()));
  }

  // --- sockets

  @ParameterizedTest
  @ValueSource(strings = {"XU1", "SKU1", "SOU1", "U1_SOCKET", "U1-SOCKET", "U1S"})
  void a_socket_with_the_circuits_designator_and_a_mark_is_its(String name) {
    AssemblyPlan plan =
        plan(
            board()
                .part("U1", PartKind.INTEGRATED_CIRCUIT, "NE555", 3.7)
                .part("U2", PartKind.INTEGRATED_CIRCUIT, "LM358", 3.7)
                .part(name, PartKind.SOCKET, "8-pin", 4.6));
    assertEquals(Step.Stage.PLUG_IN, stage(plan, "U1"));
    assertEquals(Step.Stage.SOLDER, stage(plan, "U2"));
  }

  @Test
  void a_part_that_only_looks_like_a_socket_by_name_is_none() {
    AssemblyPlan plan =
        plan(
            board()
                .part("U1", PartKind.INTEGRATED_CIRCUIT, "NE555", 3.7)
                .part("XU1", PartKind.CRYSTAL, "8 MHz", 4.6)
                .part("J9", PartKind.SOCKET, "40-pin", 4.6));
    assertEquals(Step.Stage.SOLDER, stage(plan, "U1"));
  }

  @Test
  void a_socket_that_shares_its_circuits_line_gets_a_name_of_its_own() {
    AssemblyPlan plan =
        plan(
            board()
                .part("U1", PartKind.SOCKET, "8-pin", 4.6)
                .part("U1", PartKind.INTEGRATED_CIRCUIT, "NE555", 3.7));
    assertEquals(List.of("XU1", "U1"), firsts(plan));
    Step socket = plan.step(1).orElseThrow();
    assertEquals(PartKind.SOCKET, socket.partType().kind());
    assertEquals(OptionalDouble.of(4.6), socket.seatedHeightMillimetres());
  }

  @Test
  void a_socket_that_two_circuits_name_or_that_a_line_of_two_names_is_nobodys() {
    AssemblyPlan twoSockets =
        plan(
            board()
                .part("U1", PartKind.INTEGRATED_CIRCUIT, "NE555", "DIP-8", "plugged into J7 or J8")
                .part("J7 J8", PartKind.SOCKET, "8-pin", "", ""));
    assertEquals(Step.Stage.SOLDER, stage(twoSockets, "U1"));
    AssemblyPlan twoCircuits =
        plan(
            board()
                .part("U1 U2", PartKind.INTEGRATED_CIRCUIT, "NE555", "DIP-8", "plugged into J7")
                .part("J7", PartKind.SOCKET, "8-pin", "", ""));
    assertEquals(Step.Stage.SOLDER, stage(twoCircuits, "U1"));
  }

  @ParameterizedTest
  @CsvSource({
    "10.1, 20.1, TOP, PLUG_IN",
    "10, 22, TOP, SOLDER",
    "12, 20, TOP, SOLDER",
    "10.6, 20, TOP, SOLDER",
    "10, 20.6, TOP, SOLDER",
    "10, 20, BOTTOM, SOLDER",
  })
  void a_socket_on_the_same_spot_of_the_same_side_is_the_circuits(
      double x, double y, Side side, Step.Stage stage) {
    AssemblyPlan plan =
        plan(
            board()
                .part("U1", PartKind.INTEGRATED_CIRCUIT, "NE555", "DIP-8", "")
                .part("J7", PartKind.SOCKET, "8-pin", "", "")
                .at("U1", 10, 20)
                .at("J7", x, y, 0, side));
    assertEquals(stage, stage(plan, "U1"));
  }

  @Test
  void a_resistor_is_plugged_into_nothing() {
    AssemblyPlan plan =
        plan(
            board()
                .part("R1", PartKind.RESISTOR, "1k", 2.5)
                .part("J7", PartKind.SOCKET, "8-pin", "", "socket for R1"));
    assertEquals(Step.Stage.SOLDER, stage(plan, "R1"));
  }

  @Test
  void a_socket_made_of_words_is_about_as_tall_as_sockets_are_and_says_what_it_is_for() {
    AssemblyPlan plan =
        plan(
            board()
                .part("U1", PartKind.INTEGRATED_CIRCUIT, "NE555", "DIP-8", "in socket")
                .part("K1", PartKind.RELAY, "G5V", "", "in socket"));
    Step eight = step(plan, "XU1");
    assertEquals("8-pin", eight.partType().text());
    assertEquals(OptionalDouble.of(4.6), eight.seatedHeightMillimetres());
    assertEquals("for G5V", step(plan, "XK1").partType().text());
  }

  /** A socket's footprint tells the socket's height; words beside the chip's own tell nothing. */
  @ParameterizedTest
  @CsvSource({"DIP-8_W7.62mm_Socket, '', 5.1", "DIP-8_W7.62mm, in socket, 4.6"})
  void only_a_footprint_of_a_socket_tells_how_tall_the_socket_is(
      String packageName, String description, double height) {
    AssemblyPlan plan =
        plan(
            board()
                .part("U1", PartKind.INTEGRATED_CIRCUIT, "NE555", packageName, description)
                .at("U1", 10, 10)
                .body("U1", 10, 8, 5.1, 0));
    assertEquals(OptionalDouble.of(height), step(plan, "XU1").seatedHeightMillimetres());
  }

  // --- heatsinks

  @ParameterizedTest
  @ValueSource(strings = {"HSQ3", "KKQ3", "HEATSINKQ3", "HS_Q3", "KK-Q3"})
  void a_heatsink_may_bear_the_name_of_its_part(String name) {
    AssemblyPlan plan =
        plan(
            board()
                .part("Q3 Q4", PartKind.MOSFET, "type M", 18.8)
                .part(name, PartKind.HEATSINK, "32 x 14", 25.6));
    assertEquals(Step.Stage.FASTEN_AND_SOLDER, stage(plan, "Q3"));
    assertEquals(Step.Stage.SOLDER, stage(plan, "Q4"));
  }

  @Test
  void a_heatsink_without_a_place_is_bolted_to_the_part_that_its_value_names() {
    AssemblyPlan plan =
        plan(
            board()
                .part("Q3", PartKind.MOSFET, "type M", 18.8)
                .part("", PartKind.HEATSINK, "for Q3"));
    Step bolted = step(plan, "Q3");
    assertEquals(Step.Stage.FASTEN_AND_SOLDER, bolted.stage());
    assertTrue(bolted.why().contains("bolt it to its heatsink first, then solder"), bolted.why());
  }

  @ParameterizedTest
  @CsvSource({"3, 3, ''", "6, 6, ''", "8, 6, '; 2 more alike'"})
  void up_to_six_heatsinks_of_one_step_are_named(int parts, int named, String rest) {
    SampleBoards board = board().part("Q1 Q2 Q3 Q4 Q5 Q6 Q7 Q8", PartKind.MOSFET, "type M", 18.8);
    for (int i = 1; i <= parts; i++) {
      board.part("HSQ" + i, PartKind.HEATSINK, "32 x 14", 25.6);
    }
    String why = step(plan(board), "Q1").why();
    assertEquals(named, why.split("bolt it to HSQ", -1).length - 1, why);
    assertTrue(why.endsWith("bolt it to HSQ" + named + " first" + rest), why);
  }

  @ParameterizedTest
  @CsvSource({
    "on heatsink, MOSFET, FASTEN_AND_SOLDER",
    "with heat sink, REGULATOR, FASTEN_AND_SOLDER",
    "bolted to a heat-sink, SCHOTTKY_DIODE, FASTEN_AND_SOLDER",
    "heatsink compound, MOSFET, SOLDER",
    "on heatsink, RESISTOR, SOLDER",
  })
  void a_parts_own_words_may_say_that_it_is_bolted(String words, PartKind kind, Step.Stage stage) {
    assertEquals(stage, stage(plan(board().part("Q3", kind, "type M", "", words)), "Q3"));
  }

  @ParameterizedTest
  @CsvSource({
    "MOSFET, 4, TOP, FASTEN_AND_SOLDER",
    "FILM_CAPACITOR, 4, TOP, SOLDER",
    "MOSFET, 40, TOP, SOLDER",
    "MOSFET, 4, BOTTOM, SOLDER",
  })
  void a_heatsink_and_the_part_that_stands_in_it_belong_together(
      PartKind kind, double away, Side side, Step.Stage stage) {
    AssemblyPlan plan =
        plan(
            board()
                .part("Q3", kind, "type M", 18.8)
                .part("HS9", PartKind.HEATSINK, "32 x 14", 25.6)
                .at("Q3", 10, 10)
                .at("HS9", 10 + away, 10, 0, side)
                .body("Q3", 10, 4.6, 18.8, 0)
                .body("HS9", 32, 14, 25.6, 0));
    assertEquals(stage, stage(plan, "Q3"));
  }
}
