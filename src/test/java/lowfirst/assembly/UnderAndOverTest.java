package lowfirst.assembly;

import static lowfirst.assembly.Plans.board;
import static lowfirst.assembly.Plans.firsts;
import static lowfirst.assembly.Plans.plan;
import static lowfirst.assembly.Plans.step;
import static lowfirst.assembly.Plans.texts;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lowfirst.board.SampleBoards;
import lowfirst.part.PartKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which of two bodies that overlap in plan lies under the other. */
class UnderAndOverTest {

  /** A part near the middle of another: lower kind and height, then upper kind, height and gap. */
  @ParameterizedTest
  @CsvSource({
    "RESISTOR, 2.5, SOCKET, 4.6, 0, UNDER_ANOTHER",
    "RESISTOR, 4.6, SOCKET, 4.6, 0, LOWEST_FIRST",
    "RESISTOR, 2.5, FILM_CAPACITOR, 10, 0, LOWEST_FIRST",
    "SOCKET, 4.6, DISPLAY, 12, 0, LOWEST_FIRST",
    "SOCKET, 4.6, DISPLAY, 12, 4.6, UNDER_ANOTHER",
    "SOCKET, 4.6, DISPLAY, 12, 4.5, LOWEST_FIRST",
  })
  void a_part_lies_under_one_that_bridges_it_or_stands_clear_above_it(
      PartKind low, double lowHeight, PartKind high, double highHeight, double gap, Rule rule) {
    AssemblyPlan plan =
        plan(
            board()
                .part("P1", low, "low", lowHeight)
                .part("P2", high, "high", highHeight)
                .at("P1", 20, 20)
                .at("P2", 23, 20)
                .body("P1", 6, 3)
                .body("P2", 25, 15, highHeight, gap));
    assertEquals(rule, step(plan, "P1").rule());
    assertEquals(Rule.LOWEST_FIRST, step(plan, "P2").rule());
  }

  @Test
  void bodies_of_two_types_that_are_drawn_into_one_another_wait_for_nothing() {
    AssemblyPlan plan =
        plan(
            board()
                .part("C1", PartKind.FILM_CAPACITOR, "1u", 11)
                .part("XU1", PartKind.SOCKET, "8-pin", 4.6)
                .at("C1", 20, 20)
                .at("XU1", 22, 20)
                .body("C1", 10, 10)
                .body("XU1", 10, 10));
    assertEquals(List.of("XU1", "C1"), firsts(plan));
    assertEquals(
        List.of(Rule.LOWEST_FIRST, Rule.LOWEST_FIRST),
        plan.steps().stream().map(Step::rule).toList());
  }

  @Test
  void only_links_are_parted_by_what_they_lie_over() {
    AssemblyPlan plan =
        plan(
            board()
                .part("R1", PartKind.RESISTOR, "1k", 2.5)
                .part("XU1 XU2", PartKind.SOCKET, "8-pin", 4.6)
                .at("R1", 20, 20)
                .at("XU1", 20, 20)
                .at("XU2", 50, 20)
                .body("R1", 6.3, 2.5)
                .body("XU1", 10, 10)
                .body("XU2", 10, 10));
    assertEquals(List.of("XU1", "XU2"), texts(step(plan, "XU1")));
  }

  @Test
  void a_delicate_part_waits_only_for_sturdier_ones_of_its_own_height() {
    SampleBoards board =
        board()
            .part("LED1", PartKind.LED, "red", 5.1)
            .part("C1", PartKind.FILM_CAPACITOR, "1u", 10);
    assertEquals(Rule.LOWEST_FIRST, step(plan(board), "LED1").rule());
  }

  /** A link lies flat: which of the two is above, only heights can tell. */
  @Test
  void a_link_does_not_wait_for_a_part_of_unknown_height() {
    AssemblyPlan plan =
        plan(
            board()
                .part("R1", PartKind.RESISTOR, "1k")
                .part("J1", PartKind.WIRE_LINK, "insulated", 5)
                .at("R1", 20, 20)
                .at("J1", 20, 20)
                .body("R1", 6.3, 2.5)
                .body("J1", 15, 0.8));
    assertEquals(List.of("J1", "R1"), firsts(plan));
    assertEquals(List.of(), plan.problems());
  }
}
