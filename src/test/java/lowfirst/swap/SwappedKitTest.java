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
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.swap.subject.SwappedKit;
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
  void a_swapped_place_holds_the_part_that_is_fitted() {
    Kit kit = swapped("driver,Q16,BP-N100L,none left,A. Builder,2026-03-14");
    assertEquals("BP-N100L", at(kit, "driver", "Q16").partType().typeNumber());
    assertEquals("BP-N60L", at(kit, "driver", "Q15").partType().typeNumber());
  }

  /** A fuse is rated by its own words, not by those of the one that it stands in for. */
  @Test
  void nothing_that_is_said_of_the_asked_part_or_as_a_reason_describes_the_fitted_one() {
    Kit kit = swapped("driver,F1,BP-T9,\"was 2A, UL 248-14\",A. Builder,2026-03-14");
    assertEquals("", at(kit, "driver", "F1").description());
  }

  @Test
  void of_two_swaps_of_a_place_the_later_one_sits_there_now() {
    Kit kit = swapped("driver,Q16,BP-N100L,,,", "driver,\"Q15,Q16\",IRL540N,,,");
    assertEquals("IRL540N", at(kit, "driver", "Q16").partType().typeNumber());
    Kit back = swapped("driver,Q16,IRL540N,,,", ",Q16,BP-N60L,,,");
    assertEquals("BP-N60L", at(back, "driver", "Q16").partType().typeNumber());
    assertEquals("NEW-2", driver("U2", "main,U2,NEW-1,,,", "main,U2,NEW-2,,,"));
    assertEquals("NEW-1", driver("U2", "main,U2,NEW-2,,,", "main,U2,NEW-1,,,"));
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
    String none = BellPlayer.with(Map.of("swaps.csv", HEADER)).fingerprint().hexadecimal();
    String one =
        BellPlayer.with(Map.of("swaps.csv", HEADER + "driver,Q16,BP-N100L,,,\n"))
            .fingerprint()
            .hexadecimal();
    assertNotEquals(none, one);
    assertEquals(
        1,
        Stream.of(one, swapped("driver,Q16,BP-N100L,,,").fingerprint().hexadecimal())
            .distinct()
            .count());
  }

  /** Two arrays of one type, and drivers that name their place or only that type. */
  private static String driver(String name, String... rows) {
    Kit kit =
        SmallKit.of(
            Map.of(
                "boards.csv",
                "board,count,bom,placements\nmain,1,main.csv,\nside,1,side.csv,\n",
                "main.csv",
                "designators,quantity,part type,description\n"
                    + "\"U1,U2\",2,ULN2003A,Darlington array\n",
                "side.csv",
                "designators,quantity,part type,description\nU1,1,ULN2803A,Darlington array\n",
                "drivers.csv",
                "driver,kind,part type\nouts,Darlington array,ULN2003A\n"
                    + "U2,Darlington array,ULN2003A\nplain,logic pin,\n",
                "swaps.csv",
                HEADER + String.join("\n", rows) + "\n"));
    return SwappedKit.of(kit, SmallKit.OUTLINES).driver(name).orElseThrow().partType();
  }

  @Test
  void a_driver_is_of_the_type_that_now_does_its_work() {
    String first = "main,U1,NEW-1,,,";
    String second = "main,U2,NEW-1,,,";
    assertEquals("NEW-1", driver("U2", second));
    assertEquals("ULN2003A", driver("U2", first), "it names its place, and that stays");
    assertEquals("ULN2003A or NEW-1", driver("outs", second), "either may be meant");
    assertEquals("NEW-1", driver("outs", first, second));
    assertEquals("NEW-1", driver("outs", ",U1,NEW-1,,,", second));
    assertEquals("NEW-1 or NEW-2", driver("outs", first, "main,U2,NEW-2,,,"));
    assertEquals("ULN2003A", driver("outs", "side,U1,NEW-1,,,"), "another board's U1");
    assertEquals("", driver("plain", first));
  }

  @Test
  void an_accepted_swap_tells_what_the_bom_asks_for_on_its_board() {
    Kit kit = swapped("driver,R1,750R 1% 0.25W,,,", "controller,R1,750R 1% 0.25W,,,", ",R99,1k,,,");
    assertEquals(
        List.of("330 Ω resistor", "680 Ω resistor", ""),
        kit.swaps().stream().map(swap -> swap.asked()).toList());
  }

  private static Kit withSpares(String fitted) {
    Kit kit =
        SmallKit.of(
            Map.of(
                "boards.csv",
                "board,count,bom,placements\nmain,1,bom.csv,\n",
                "bom.csv",
                "designators,quantity,part type,package,description,height\n"
                    + "\"D1,D2,D3\",5,1N4004,DO-41 P10.16,diode,9 mm\n",
                "swaps.csv",
                HEADER + "main,D2," + fitted + ",,,\n"));
    return SwappedKit.of(kit, SmallKit.OUTLINES);
  }

  /** Five were to be bought for three places: four for the two that stay. */
  @Test
  void spares_stay_with_the_part_that_they_are_spares_of() {
    Kit kit = withSpares("NEW-1");
    assertEquals(4, at(kit, "main", "D1").quantity());
    assertEquals(1, at(kit, "main", "D2").quantity());
  }

  @Test
  void the_boms_height_holds_for_another_part_only_in_the_same_package() {
    assertEquals(9, at(withSpares("NEW-1"), "main", "D2").heightMillimetres().orElse(0));
    assertTrue(at(withSpares("1N5404"), "main", "D2").heightMillimetres().isEmpty());
    assertEquals(9, at(withSpares("1N5404"), "main", "D1").heightMillimetres().orElse(0));
  }
}
