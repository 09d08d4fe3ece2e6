package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import lowfirst.board.Placement;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where parts are: units, mirrored bottoms, the board's edge, and bodies in one another's way. */
class PositionsTest {

  // --- units

  /** Ten parts over so many by so many units; the room a part is known: 4 to 20 000 mm². */
  @ParameterizedTest(name = "{0} x {1}: {2}")
  @CsvSource({
    "100, 50, mm, UNIT_GUESSED", // 500 mm² a part
    "3000, 2000, mil, UNIT_GUESSED", // 600 000 mm², or 387 in mil
    "4, 3, inch, UNIT_GUESSED", // 1.2 mm², or 774 in inches
    "100000, 50000, µm, UNIT_GUESSED", // 500 mm² in micrometres
  })
  void a_unit_that_is_not_written_is_the_one_that_leaves_usual_room(
      double width, double height, String unit, Kind kind) {
    var placed = new StringBuilder("ref,x,y\n");
    for (int i = 0; i < 10; i++) {
      placed.append("R").append(i).append(',').append(number(width * i / 9));
      placed.append(',').append(number(i % 2 * height)).append('\n');
    }
    KitReading reading = KitTables.read("placements.csv", placed.toString());
    List<Problem> said =
        reading.problems().stream()
            .filter(p -> p.kind() == Kind.UNIT_GUESSED || p.kind() == Kind.COLUMN_AMBIGUOUS)
            .toList();
    assertEquals(1, said.size());
    assertEquals(kind, said.get(0).kind());
    assertTrue(said.get(0).message().endsWith("read as " + unit), said.get(0).message());
    double scale =
        unit.equals("mm") ? 1 : unit.equals("mil") ? 0.0254 : unit.equals("inch") ? 25.4 : 1e-3;
    assertEquals(
        width * scale, reading.kit().boards().get(0).placements().get(9).xMillimetres(), 1e-6);
  }

  private static String number(double number) {
    return String.format(Locale.ROOT, "%.4f", number);
  }

  @Test
  void what_is_told_as_a_unit_and_is_none_is_said_and_changes_nothing() {
    KitReading reading =
        KitTables.read(
            "columns.properties",
            "placements.unit = volt\n",
            "placements.csv",
            "ref,x (V),y (V)\nR1,10,20\nR2,60,70\n");
    assertEquals(1, count(reading, Kind.CELL_UNREADABLE));
    assertEquals(10, reading.kit().boards().get(0).placements().get(0).xMillimetres());
  }

  @Test
  void a_line_of_parts_tells_no_area_and_is_read_in_millimetres() {
    KitReading reading = KitTables.read("placements.csv", "ref,x,y\nR1,0,5\nR2,2000,5\n");
    assertEquals(2000, reading.kit().boards().get(0).placements().get(1).xMillimetres());
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvSource({
    "x (mil), y (mil), 2.54, 5.08",
    "x (mil), y, 2.54, 5.08",
    "x, y (mil), 2.54, 5.08",
    "x (mil), y (mm), 2.54, 200",
    "x (mm), y (inch), 100, 5080",
  })
  void each_axis_has_the_unit_of_its_header_and_else_that_of_the_other(
      String x, String y, double millimetresX, double millimetresY) {
    Placement placement = placements("ref," + x + "," + y + "\nR1,100,200\nR2,150,210\n").get(0);
    assertEquals(millimetresX, placement.xMillimetres(), 1e-9);
    assertEquals(millimetresY, placement.yMillimetres(), 1e-9);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"10000, true", "-10000, true", "10000.1, false", "-10000.1, false"})
  void a_part_is_within_ten_metres_of_the_origin(String x, boolean read) {
    assertEquals(read ? 2 : 1, placements("ref,x mm,y mm\nR1," + x + ",1\nR2,1,1\n").size());
  }

  // --- angles and sides

  @ParameterizedTest(name = "{0}")
  @CsvSource({"0, 0", "-0, 0", "359.9, 359.9", "-360, 0", "-0.5, 359.5", "720, 0", "-450, 270"})
  void an_angle_is_brought_between_nothing_and_a_full_turn(String text, double degrees) {
    Placement placement =
        placements("ref,x mm,y mm,rotation\nR1,1,2," + text + "\nR2,9,9,0\n").get(0);
    assertEquals(degrees + "", placement.rotationDegrees() + "");
  }

  @ParameterizedTest(name = "{0} {1} {2}: {3}")
  @CsvSource({
    "'', '', 0, top",
    "'', yes, 0, bottom",
    "'', no, 0, top",
    "'', '', MR90, bottom",
    "'', '', R90, top",
    "'', perhaps, 0, top",
    "top, yes, 0, top",
    "bottom, no, MR90, bottom",
  })
  void a_side_is_what_its_cell_says_else_what_mirroring_says(
      String side, String mirror, String angle, String read) {
    Placement placement =
        placements(
                "ref,x mm,y mm,rotation,side,mirror\nR1,1,2,%s,%s,%s\nR2,9,9,0,top,no\n"
                    .formatted(angle, side, mirror))
            .get(0);
    assertEquals(read, placement.side().words());
  }

  @Test
  void unknown_sides_are_said_twenty_times_at_most_and_their_parts_left_out() {
    var placed = new StringBuilder("ref,x mm,y mm,side\nR99,1,1,top\nR98,5,5,bottom\n");
    for (int i = 1; i <= 25; i++) {
      placed.append("R").append(i).append(",").append(i).append(",1,edge\n");
    }
    KitReading reading = KitTables.read("placements.csv", placed.toString());
    assertEquals(20, count(reading, Kind.CELL_UNREADABLE));
    assertEquals(2, reading.kit().boards().get(0).placements().size());
  }

  @ParameterizedTest(name = "{0} {1} {2}")
  @CsvSource({
    "top, bottom, -, top, 1",
    "top, bottom, –, top, 1",
    "top, bottom, —, top, 1",
    "top, bottom, n/a, top, 1",
    "top, bottom, '', top, 1",
    "+, +, -, bottom, 0",
    "-, -, -, top, 1",
  })
  void a_dash_names_no_side_but_beside_a_plus(
      String one, String other, String side, String read, long said) {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "ref,x mm,y mm,side\nR1,1,1,%s\nR2,9,9,%s\nR3,20,9,%s\n".formatted(one, other, side));
    assertEquals(
        read, reading.kit().boards().get(0).placements().get(2).side().words(), side + " read");
    assertEquals(said, count(reading, Kind.COLUMN_GUESSED));
    assertEquals(0, count(reading, Kind.CELL_UNREADABLE));
  }

  /**
   * Top from 0 on to the right, bottom all left of 0, as far as the top begins at least and no
   * further than half as much again as it ends.
   */
  @ParameterizedTest(name = "top {0} {1}, bottom {2} {3}: {4}")
  @CsvSource({
    "10, 40, -10, -30, 10",
    "0, 40, -10, -30, 10",
    "-1, 40, -10, -30, -10",
    "10, 40, -10, -60, 10",
    "10, 40, -10, -61, -10",
    "10, 40, -10, 0, -10",
    "10, 40, -4, -9, -4",
    "10, 40, -10, 5, -10",
  })
  void a_bottom_that_lies_left_of_the_top_was_seen_from_below(
      String top1, String top2, String bottom1, String bottom2, double read) {
    String list =
        "ref,x mm,y mm,rotation,side\nR1,%s,1,0,top\nR2,%s,2,0,top\nR3,%s,3,30,bottom\nR4,%s,4,0,bottom\n"
            .formatted(top1, top2, bottom1, bottom2);
    KitReading reading = KitTables.read("placements.csv", list);
    Placement placement = reading.kit().boards().get(0).placements().get(2);
    assertEquals(read, placement.xMillimetres());
    // Seen in a mirror, 30 degrees against the clock from the right are 150.
    assertEquals(read > 0 ? 150 : 30, placement.rotationDegrees());
    assertEquals(read > 0 ? 1 : 0, count(reading, Kind.UNIT_GUESSED));
  }

  /** The second part lies left of the first, seen from below. */
  @ParameterizedTest(name = "{0} {1}: {2}")
  @CsvSource({
    "bottom, -10, 10",
    "bottom, 0, 0",
    "bottom, 30, 30",
    "top, -10, -10",
  })
  void a_bottom_that_stands_alone_was_seen_from_below_where_each_x_is_negative(
      String side, String x, double read) {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "ref,x mm,y mm,side\nR1,%s,1,%s\nR2,-40,2,bottom\n".formatted(x, side));
    assertEquals(read, reading.kit().boards().get(0).placements().get(0).xMillimetres());
    assertEquals(read > 0 && !x.equals("30") ? 1 : 0, count(reading, Kind.UNIT_GUESSED));
  }

  @Test
  void of_two_lists_a_negative_bottom_is_only_mirrored_where_the_top_is_not() {
    KitReading reading =
        KitTables.read(
            "a-top.csv", "ref,x mm,y mm\nR1,-10,1\nR3,-35,8\n",
            "b-bottom.csv", "ref,x mm,y mm\nR2,-40,2\nR4,-12,9\n");
    assertEquals(
        List.of(-10.0, -35.0, -40.0, -12.0),
        reading.kit().boards().get(0).placements().stream().map(Placement::xMillimetres).toList());
  }

  @ParameterizedTest
  @CsvSource({"mirrored, 10", "as-is, -10"})
  void what_is_told_of_the_bottom_counts(String told, double x) {
    KitReading reading =
        KitTables.read(
            "columns.properties",
            "placements.bottom-x = " + told + "\n",
            "placements.csv",
            "ref,x mm,y mm,side\nR1,10,1,top\nR2,40,2,top\nR3,-10,3,bottom\n");
    assertEquals(x, reading.kit().boards().get(0).placements().get(2).xMillimetres());
    assertEquals(0, count(reading, Kind.UNIT_GUESSED));
  }

  // --- what the position is of

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "PinSocket_1x06_P2.54mm_Vertical, 1",
    "Own:DIP-8_W7.62mm, 1",
    "SOIC-8_3.9x4.9mm_P1.27mm, 0",
    "1X06, 0",
  })
  void packages_drawn_around_pin_one_are_said(String packageName, int said) {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package\nJ1,6 pins,%s\nR2,1k,DIN0207\n".formatted(packageName),
            "placements.csv",
            "ref,x mm,y mm,rotation,side\nJ1,10,10,0,top\nR2,40,30,0,top\n");
    assertEquals(
        said,
        reading.problems().stream()
            .filter(p -> p.message().contains("the packages of J1 are drawn around pin 1"))
            .count());
  }

  /** Two rows of 10 pins, 15 mm apart; upright where their names say so, else lying in line. */
  @ParameterizedTest(name = "{0} {1}: {2}")
  @CsvSource({
    "PinHeader_1x10_P2.54mm_Vertical, 0, 0",
    "PinHeader_1x10_P2.54mm_Vertical, 90, 1",
    "Own:DIP-20_W7.62mm, 0, 0",
    "Own:DIP-20_W7.62mm, 270, 1",
    "pin header 1x10, 0, 1",
    "pin header 1x10, 90, 0",
  })
  void rows_of_pins_lie_as_their_library_draws_them(String name, int angle, int overlaps) {
    String rows = "J1,10,10,%1$d,top%2$s\nJ2,25,10,%1$d,top%2$s\n";
    KitReading told =
        KitTables.read(
            "bom.csv",
            "designators,value,package\n\"J1, J2\",pins,%s\n".formatted(name),
            "placements.csv",
            "ref,x mm,y mm,rotation,side\n" + rows.formatted(angle, ""));
    KitReading listed =
        KitTables.read(
            "placements.csv",
            "ref,x mm,y mm,rotation,side,package\n" + rows.formatted(angle, "," + name));
    assertEquals(overlaps, count(told, Kind.BODIES_OVERLAP));
    assertEquals(overlaps, count(listed, Kind.BODIES_OVERLAP));
  }

  // --- the board's edge

  @ParameterizedTest(name = "{0}, {1}")
  @CsvSource({
    "-5, 2, false",
    "-5.1, 2, true",
    "-5, 1.9, true",
    "75, 62, false",
    "75.1, 62, true",
    "75, 62.1, true",
  })
  void a_part_may_lie_on_the_edge_and_not_beyond(String x, String y, boolean outside) {
    KitReading reading = edged("R1," + x + "," + y + "\nR2,10,10\nR3,20,20\nR4,30,30\n");
    assertEquals(outside ? 1 : 0, count(reading, Kind.OUTSIDE_THE_OUTLINE));
  }

  @ParameterizedTest(name = "{0} of {1} outside: {2}")
  @CsvSource({"3, 3, 3", "4, 8, 4", "4, 7, 1", "5, 9, 1"})
  void where_most_lie_outside_the_list_is_said_once(int outside, int all, int said) {
    var rows = new StringBuilder();
    for (int i = 0; i < all; i++) {
      rows.append("R").append(i).append(i < outside ? ",200," : ",20,").append(5 + i).append('\n');
    }
    assertEquals(said, count(edged(rows.toString()), Kind.OUTSIDE_THE_OUTLINE));
  }

  /** A board of 80 by 60 mm whose lower left corner is at -5, 2. */
  private static KitReading edged(String rows) {
    return KitTables.read(
        "boards.csv",
        "board,placements,width,height,left,bottom\nmain,placements.csv,80,60,-5,2\n",
        "placements.csv",
        "ref,x mm,y mm\n" + rows);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"1, 0", "2, 1", "3, 1"})
  void several_parts_at_the_origin_were_never_placed(int there, int said) {
    var rows = new StringBuilder("ref,x mm,y mm\nR8,20,0\nR9,0,20\n");
    for (int i = 0; i < there; i++) {
      rows.append("R").append(i).append(",0,0\n");
    }
    assertEquals(
        said,
        count(KitTables.read("placements.csv", rows.toString()), Kind.POSITIONS_ALL_THE_SAME));
  }

  @ParameterizedTest
  @CsvSource({"'R1,5,5', 0", "'R1,5,5;R2,5,5', 1", "'R1,5,5;R2,5,6', 0", "'R1,5,5;R2,6,5', 0"})
  void all_in_one_place_is_no_real_list_unless_there_is_one_part(String rows, int said) {
    String list = "ref,x mm,y mm\n" + rows.replace(';', '\n') + "\n";
    assertEquals(said, count(KitTables.read("placements.csv", list), Kind.POSITIONS_ALL_THE_SAME));
  }

  // --- bodies

  /** Two parts 3 mm apart: kind words, package and height of each, and whether they hinder. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "R1,1k,DIN0207,2.5 | R2,1k,DIN0207,2.5 | 1",
        "R1,1k,DIN0207,2.5 | U1,IC socket,DIP-8 socket,4.6 | 0",
        "U1,IC socket,DIP-8 socket,4.6 | R1,1k,DIN0207,2.5 | 0",
        "R1,1k,DIN0207,2.5 | K1,relay,DIP-14,7 | 0",
        "R1,1k,DIN0207,9 | K1,relay,DIP-14,7 | 1",
        "R1,1k,DIN0207,7 | K1,relay,DIP-14,7 | 1",
        "U1,IC socket,DIP-8 socket,4.6 | U2,IC socket,DIP-8 socket,4.6 | 1",
      })
  void a_low_part_may_lie_under_one_that_bridges_it(String one, String other, int said) {
    String bom = "designators,value,package,height\n" + one + "\n" + other + "\n";
    String placed =
        "ref,x mm,y mm\n%s,50,50\n%s,53,50\nC9,150,150\n"
            .formatted(one.substring(0, 2), other.substring(0, 2));
    KitReading reading = KitTables.read("bom.csv", bom, "placements.csv", placed);
    assertEquals(said, count(reading, Kind.BODIES_OVERLAP), () -> KitTables.problems(reading) + "");
  }

  @Test
  void a_part_that_is_not_fitted_or_on_the_other_side_is_in_nobodys_way() {
    String bom =
        "designators,value,package,fitted\nR1,1k,DIN0207,yes\nR2,1k,DIN0207,no\nR3,1k,DIN0207,yes\n";
    KitReading reading =
        KitTables.read(
            "bom.csv",
            bom,
            "placements.csv",
            "ref,x mm,y mm,side\nR1,50,50,top\nR2,51,50,top\nR3,51,50,bottom\n");
    assertEquals(0, count(reading, Kind.BODIES_OVERLAP));
  }

  @Test
  void bodies_are_found_across_the_cells_of_the_search_and_said_once() {
    // 6.3 mm long about x = 14 and 16: both reach over 15, where a cell ends.
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package\nR1-R3,1k,DIN0207\n",
            "placements.csv",
            "ref,x mm,y mm\nR1,14,15\nR2,16,15\nR3,90,90\n");
    assertEquals(1, count(reading, Kind.BODIES_OVERLAP));
  }

  /**
   * Resistors of 6.3 by 2.5 mm, by hand: 3 mm apart along x they overlap if one lies, 4.2 mm apart
   * if both do; 1.9 mm apart however they are turned; 6.5 mm apart never: none reaches past 3.15
   * mm.
   */
  @ParameterizedTest(name = "R2 {0} mm right of R1, turned by {1} and {2}: {3}")
  @CsvSource({
    "3, '', '', the bodies of R1 and R2 may overlap or not: how they are turned is not known",
    "4.2, 0, '', the bodies of R1 and R2 may overlap or not: how R2 is turned is not known",
    "4.2, '', 0, the bodies of R1 and R2 may overlap or not: how R1 is turned is not known",
    "3, 0, '', the bodies of R1 and R2 overlap",
    "3, 0, 0, the bodies of R1 and R2 overlap",
    "3, 90, 90, ''",
    "1.9, '', '', the bodies of R1 and R2 overlap",
    "6.5, '', '', ''",
    "5, 90, '', ''",
  })
  void bodies_whose_turn_is_not_known_are_tried_lying_and_standing(
      double x, String one, String other, String said) {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package\nR1-R3,1k,DIN0207\n",
            "placements.csv",
            "ref,x mm,y mm,rotation\nR1,50,50,%s\nR2,%s,50,%s\nR3,90,90,\n"
                .formatted(one, 50 + x, other));
    assertEquals(
        said.isEmpty() ? List.of() : List.of(said),
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.BODIES_OVERLAP)
            .map(problem -> problem.message().replaceAll(" \\([^)]*\\)", ""))
            .toList());
  }

  @Test
  void pairs_that_may_overlap_or_not_are_said_once() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package\nR1-R4,1k,DIN0207\n",
            "placements.csv",
            "ref,x mm,y mm\nR1,50,50\nR2,53,50\nR3,50,80\nR4,50,83\n");
    assertEquals(1, count(reading, Kind.BODIES_OVERLAP));
    assertTrue(
        reading.problems().stream()
            .anyMatch(
                p -> p.message().contains("R1 and R2 (and one more pair) may overlap or not")),
        () -> KitTables.problems(reading) + "");
  }

  @Test
  void where_everything_overlaps_two_hundred_are_said() {
    var placed = new StringBuilder("ref,x mm,y mm\n");
    for (int i = 1; i <= 30; i++) {
      placed.append("R").append(i).append(",50,").append(50 + i / 100.0).append('\n');
    }
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators,value,package\nR1-R30,1k,DIN0207\n",
            "placements.csv",
            placed + "");
    assertEquals(200, count(reading, Kind.BODIES_OVERLAP));
  }

  private static List<Placement> placements(String list) {
    return KitTables.read("placements.csv", list).kit().boards().get(0).placements();
  }

  private static long count(KitReading reading, Kind kind) {
    return reading.problems().stream().filter(problem -> problem.kind() == kind).count();
  }
}
