package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Kit;
import lowfirst.intake.ShippedTables;
import org.junit.jupiter.api.Test;

class SwappedKitTest {
  private static final String HEADER = "board,designators,part type fitted,reason,who,date\n";

  private static Kit swapped(String... rows) {
    Kit kit = BellPlayer.with(Map.of("swaps.csv", HEADER + String.join("\n", rows) + "\n"));
    return SwappedKit.of(kit, ShippedTables.bodyOutlines());
  }

  private static Item at(Kit kit, String board, String place) {
    return kit.board(board).orElseThrow().itemOf(Designator.of(place)).orElseThrow();
  }

  private static List<Designator> places(Kit kit) {
    return kit.boards().stream()
        .map(Board::items)
        .flatMap(List::stream)
        .map(Item::designators)
        .flatMap(List::stream)
        .sorted()
        .toList();
  }

  @Test
  void a_kit_without_swaps_stays_as_it_is() {
    Kit kit = BellPlayer.with(Map.of("swaps.csv", HEADER));
    assertSame(kit, SwappedKit.of(kit, ShippedTables.bodyOutlines()));
  }

  @Test
  void a_swapped_place_holds_the_part_that_is_fitted_and_says_why() {
    Kit kit = swapped("driver,Q16,BP-N100L,none left,A. Builder,2026-03-14");
    assertEquals("BP-N100L", at(kit, "driver", "Q16").partType().typeNumber());
    assertEquals("BP-N60L", at(kit, "driver", "Q15").partType().typeNumber());
    assertTrue(at(kit, "driver", "Q16").description().contains("none left"));
  }

  @Test
  void no_place_is_lost_or_doubled_and_quantities_add_up() {
    Kit before = BellPlayer.with(Map.of("swaps.csv", HEADER));
    Kit after = swapped("driver,\"Q1, Q2, Q16\",BP-N100L,,,", "controller,R1,750R 1% 0.25W,,,");
    assertEquals(places(before), places(after));
    assertEquals(pieces(before), pieces(after));
  }

  private static int pieces(Kit kit) {
    return kit.boards().stream()
        .flatMap(board -> board.items().stream())
        .mapToInt(Item::quantity)
        .sum();
  }

  @Test
  void a_swap_without_a_board_is_on_every_board_that_has_the_place() {
    Kit kit = swapped(",R1,750R 1% 0.25W,,,");
    assertEquals("750R 1% 0.25W", at(kit, "driver", "R1").partType().text());
    assertEquals("750R 1% 0.25W", at(kit, "controller", "R1").partType().text());
  }

  @Test
  void a_taller_substitute_moves_its_step() {
    Kit before = BellPlayer.with(Map.of("swaps.csv", HEADER));
    Kit after = swapped("driver,D1,1N4007,shorter and thinner,,");
    assertNotEquals(height(before), height(after));
    assertTrue(height(after) < height(before), height(before) + " and " + height(after));
  }

  private static double height(Kit kit) {
    return AssemblyOrder.of(kit, AssemblyOptions.USUAL)
        .stepOf("driver", Designator.of("D1"))
        .orElseThrow()
        .seatedHeightMillimetres()
        .orElseThrow();
  }

  @Test
  void a_named_makers_lines_are_the_only_ones_found_afterwards() {
    Kit kit = swapped("driver,Q1,IRF540N (Intersil),,,");
    String name = at(kit, "driver", "Q1").partType().typeNumber();
    assertFalse(kit.datasheets().about(name).isEmpty());
    assertTrue(
        kit.datasheets().about(name).stream().allMatch(line -> line.maker().equals("Intersil")));
  }

  @Test
  void accepting_a_swap_changes_the_fingerprint() {
    String none = BellPlayer.with(Map.of("swaps.csv", HEADER)).fingerprint();
    String one =
        BellPlayer.with(Map.of("swaps.csv", HEADER + "driver,Q16,BP-N100L,,,\n")).fingerprint();
    assertNotEquals(none, one);
    assertEquals(
        1, Stream.of(one, swapped("driver,Q16,BP-N100L,,,").fingerprint()).distinct().count());
  }
}
