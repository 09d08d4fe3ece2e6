package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import lowfirst.board.Placement;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A list of several boards alike in one piece, and what is none. */
class PanelTest {
  private static final String HEADER = "ref,x mm,y mm,rotation,side\n";

  /** R1 at 10, 5 and R2 at 20, 8, each again 40 mm to the right. */
  private static final String TWO =
      HEADER + "R2,60,8,90,top\nR1,10,5,0,top\nR1,50,5,0,top\nR2,20,8,90,top\n";

  @Test
  void of_boards_alike_the_leftmost_is_read_and_the_others_are_said() {
    KitReading reading = KitTables.read("placements.csv", TWO);
    assertEquals(List.of("R1 10.0 5.0", "R2 20.0 8.0"), places(reading));
    List<Problem> said = of(reading, Kind.ROW_IGNORED);
    assertEquals(1, said.size());
    assertEquals(
        "the list holds the board 2 times, as a panel has it: R2 and the others stand again 40, 0"
            + " mm away, and so on; one of them was read",
        said.get(0).message());
    assertEquals(List.of(), of(reading, Kind.PLACED_TWICE));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    // what rounding does, to either side of what is still taken for a copy
    "'R2,60,8,90', 'R2,60.04,8,90', true",
    "'R2,60,8,90', 'R2,60.06,8,90', false",
    "'R2,60,8,90', 'R2,60,7.94,90', false",
    // turned over, turned round, only one of two again, another one as often
    "'R2,60,8,90,top', 'R2,60,8,90,bottom', false",
    "'R2,60,8,90', 'R2,60,8,0', false",
    "'R2,60,8,90,top\n', '', false",
    "'R1,50,5,0,top\n', 'R1,50,5,0,top\nR3,1,1,0,top\nR3,2,1,0,top\n', false",
    // one or two of the panel's own, but not more than those that recur
    "'R1,50,5,0,top\n', 'R1,50,5,0,top\nF1,-5,-5,0,top\nF2,90,90,0,top\n', true",
    "'R1,50,5,0,top\n', 'R1,50,5,0,top\nF1,-5,-5,0,top\nF2,90,9,0,top\nF3,9,90,0,top\n', false"
  })
  void copies_stand_the_same_ways_apart(String from, String to, boolean panel) {
    String list = TWO.replace(from.replace("\\n", "\n"), to.replace("\\n", "\n"));
    assertEquals(
        panel ? 0 : 1,
        Math.min(1, of(KitTables.read("placements.csv", list), Kind.PLACED_TWICE).size()));
  }

  @Test
  void a_list_that_stands_twice_in_one_file_is_no_panel() {
    String rows = "R1,10,5,0,top\nR2,20,8,90,top\n";
    KitReading reading = KitTables.read("placements.csv", HEADER + rows + rows);
    assertEquals(
        List.of("R1 is placed here and in line 2", "R2 is placed here and in line 3"),
        of(reading, Kind.PLACED_TWICE).stream().map(Problem::message).toList());
  }

  @Test
  void a_part_that_is_placed_many_times_is_said_once() {
    var list = new StringBuilder(HEADER + "R9,1,1,0,top\n");
    for (int i = 0; i < 7; i++) {
      list.append("Q2,").append(10 * i + i * i).append(",5,0,top\n");
    }
    List<Problem> said = of(KitTables.read("placements.csv", list.toString()), Kind.PLACED_TWICE);
    assertEquals(1, said.size());
    assertEquals(4, said.get(0).place().line());
    assertEquals(
        "Q2 is placed 7 times, here and in lines 3, 5, 6, 7 and 2 more", said.get(0).message());
  }

  /** Of the designators that recur, four of five must do so alike, whichever stands first. */
  @ParameterizedTest(name = "{0} alike and one otherwise: {1}")
  @CsvSource({"4, true", "3, false"})
  void a_part_that_is_placed_twice_by_mistake_hides_no_panel(int alike, boolean panel) {
    var copies = new StringBuilder();
    for (int i = 1; i <= alike; i++) {
      copies.append("R%d,%d,5,0,top\nR%d,%d,5,0,top\n".formatted(i, 10 * i, i, 10 * i + 100));
    }
    String twice = "C1,5,50,0,top\nC1,6,60,0,top\n";
    for (String rows : List.of(copies + twice, twice + copies)) {
      KitReading reading = KitTables.read("placements.csv", HEADER + rows);
      assertEquals(panel ? 1 : 0, of(reading, Kind.ROW_IGNORED).size(), rows);
    }
  }

  @ParameterizedTest(name = "{0} times: {1}")
  @CsvSource({"64, true", "65, false"})
  void more_than_sixty_four_boards_are_no_panel(int times, boolean panel) {
    var list = new StringBuilder(HEADER);
    for (int i = 0; i < times; i++) {
      list.append("R1,%d,5,0,top\nR2,%d,9,0,top\n".formatted(50 * i, 50 * i + 10));
    }
    KitReading reading = KitTables.read("placements.csv", list.toString());
    assertEquals(panel ? 1 : 0, of(reading, Kind.ROW_IGNORED).size());
  }

  @Test
  void a_panel_is_found_whatever_the_order_of_its_rows() {
    var rows = new ArrayList<>(List.of(TWO.substring(HEADER.length()).split("\n")));
    for (int turn = 0; turn < rows.size(); turn++) {
      rows.add(rows.remove(0));
      KitReading reading =
          KitTables.read("placements.csv", HEADER + String.join("\n", rows) + "\n");
      assertEquals(List.of("R1 10.0 5.0", "R2 20.0 8.0"), places(reading), rows.toString());
      assertTrue(of(reading, Kind.PLACED_TWICE).isEmpty());
    }
  }

  private static List<String> places(KitReading reading) {
    return reading.kit().boards().get(0).placements().stream()
        .map(PanelTest::place)
        .sorted()
        .toList();
  }

  private static String place(Placement placement) {
    return placement.designator() + " " + placement.xMillimetres() + " " + placement.yMillimetres();
  }

  private static List<Problem> of(KitReading reading, Kind kind) {
    return reading.problems().stream().filter(problem -> problem.kind() == kind).toList();
  }
}
