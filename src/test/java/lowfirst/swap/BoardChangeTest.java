package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lowfirst.assembly.Step;
import lowfirst.board.Kit;
import lowfirst.sorting.LookAlike;
import lowfirst.swap.subject.SwapCase;
import org.junit.jupiter.api.Test;

/** What a swap does to the rest of the evening's work. */
class BoardChangeTest {
  private static final String HEADER = "designators,quantity,value,package,part type,description\n";

  /** On the main board every capacitor has a height of its own, and so a batch of its own. */
  private static final Kit KIT =
      SmallKit.of(
          Map.of(
              "boards.csv",
              "board,count,bom,placements\nmain,1,main.csv,\nside,1,side.csv,\n",
              "main.csv",
              HEADER
                  + "R1,1,100k,DIN0207 P10.16,,resistor 1 %\n"
                  + "D1,1,,DO-41 P10.16,1N4007,diode\nD2,1,,DO-41 P10.16,1N4004,diode\n"
                  + "XU1,1,28-way,DIP-28 socket 600 mil,,IC socket 28-way 600 mil\n"
                  + "C1,1,100n,disc D5 W2.5 P5.08,,ceramic X7R 50 V\n"
                  + "C2,1,10uF,radial D5 L11 P2,,electrolytic 25 V\n"
                  + "C3,1,1000uF,radial D16 L25 P7.5,,electrolytic 50 V\n",
              "side.csv",
              HEADER
                  + "R1,1,10k,DIN0207 P10.16,,resistor 1 %\n"
                  + "C1,1,10uF,radial D5 L11 P2,,electrolytic 25 V\n",
              "datasheets.csv",
              "part type,symbol,condition,min,typ,max,unit,source\n"
                  + "LOW,kind,ceramic capacitor,,,,,test sheet\n"
                  + "LOW,C,,,100,,nF,test sheet\n"
                  + "LOW,package,disc D3 W2.5 P5.08,,,,,test sheet\n"));

  private static BoardChange change(String place, String candidate) {
    SwapTarget target = SwapTarget.named(KIT, place, Optional.of("main")).get(0);
    return BoardChange.of(target.with(KIT, candidate, SmallKit.OUTLINES), SmallKit.OUTLINES);
  }

  private static double height(Optional<Step> step) {
    return step.orElseThrow().seatedHeightMillimetres().orElseThrow();
  }

  private static String told(BoardChange.Moved moved) {
    return moved.designators() + " " + moved.fromBatch() + " to " + moved.toBatch();
  }

  /**
   * The disc sits alone in batch 3, after the socket. As low as the socket, it joins that, and each
   * later batch of its board comes one earlier; the other board is not its business.
   */
  @Test
  void a_lower_part_joins_an_earlier_batch_and_the_later_ones_close_up() {
    BoardChange change = change("C1", "LOW");
    assertEquals(7, height(change.before()));
    assertEquals(5, height(change.after()));
    assertEquals(
        List.of("[C2] 4 to 3", "[C3] 5 to 4"),
        change.others().stream().map(BoardChangeTest::told).toList());
  }

  @Test
  void each_part_has_its_own_body_and_one_without_a_package_that_of_its_place() {
    SwapCase lower = SmallKit.swap(KIT, "C2", "LOW");
    assertEquals(11, lower.asked().outline().orElseThrow().seatedHeightMillimetres());
    assertEquals(5, lower.offered().outline().orElseThrow().seatedHeightMillimetres());
    SwapCase unknown = SmallKit.swap(KIT, "D2", "ZZ-9");
    assertEquals(unknown.asked().outline(), unknown.offered().outline());
    assertTrue(unknown.offered().outline().isPresent());
  }

  @Test
  void a_part_of_the_same_body_moves_nothing() {
    BoardChange change = change("D1", "1N4004");
    assertEquals(height(change.before()), height(change.after()));
    assertEquals(List.of(), change.others());
  }

  private static Set<String> names(List<LookAlike> pairs) {
    return pairs.stream()
        .map(
            pair ->
                String.join(
                    " and ",
                    new TreeSet<>(List.of(pair.one().type().words(), pair.other().type().words()))))
        .collect(Collectors.toSet());
  }

  /** By IEC 60062 100 kΩ and 10 kΩ at 1 % differ in one band, orange for red. */
  @Test
  void look_alikes_that_come_and_go_are_told_and_those_that_stay_are_not() {
    BoardChange gone = change("R1", "10k 1%");
    assertEquals(Set.of("10 kΩ resistor and 100 kΩ resistor"), names(gone.goneLookAlikes()));
    assertTrue(gone.newLookAlikes().isEmpty());
    BoardChange other = change("D1", "1N5819");
    assertEquals(Set.of("1N4004 diode and 1N5819 Schottky diode"), names(other.newLookAlikes()));
    assertEquals(Set.of("1N4004 diode and 1N4007 diode"), names(other.goneLookAlikes()));
  }

  /** A second 100 kΩ, of another rating, is one more thing to take for the 10 kΩ. */
  @Test
  void a_second_pair_of_the_same_values_is_new() {
    Kit kit =
        SmallKit.of(
            Map.of(
                "boards.csv",
                "board,count,bom,placements\nmain,1,main.csv,\n",
                "main.csv",
                HEADER
                    + "R1,1,100k,DIN0207 P10.16,,resistor 1 %\n"
                    + "R2,1,10k,DIN0207 P10.16,,resistor 1 %\n"
                    + "R3,1,560,DIN0207 P10.16,,resistor 1 %\n"));
    BoardChange change =
        BoardChange.of(SmallKit.swap(kit, "R3", "100k 1% 0.25W"), SmallKit.OUTLINES);
    assertTrue(
        names(change.newLookAlikes()).contains("10 kΩ resistor and 100 kΩ resistor"),
        () -> names(change.newLookAlikes()).toString());
    assertEquals(Set.of(), names(change.goneLookAlikes()));
  }
}
