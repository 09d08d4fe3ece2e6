package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import lowfirst.intake.column.ColumnMap;
import lowfirst.problem.Kind;
import org.junit.jupiter.api.Test;

/** Where two guesses are equally good, the column map is asked for, with the first rows of both. */
class EquallyGoodTest {
  private static List<String> asked(KitReading reading) {
    return reading.problems().stream()
        .filter(problem -> problem.kind() == Kind.COLUMN_AMBIGUOUS)
        .map(problem -> problem.message() + " | " + problem.remedy())
        .toList();
  }

  private static List<String> guessed(KitReading reading) {
    return reading.problems().stream()
        .filter(problem -> problem.kind() == Kind.COLUMN_GUESSED)
        .map(problem -> problem.message())
        .toList();
  }

  @Test
  void two_columns_that_may_be_the_value_are_shown_and_asked_about() {
    String bom = "ref,value,part value\nR1,1k,2k\nR2,3k,3k\nR3,5k,6k\n";
    assertEquals(
        List.of(
            "columns 2 and 3 (\"part value\") may both mean value and differ: from line 2 on they"
                + " have \"1k\", \"5k\", and \"2k\", \"6k\"; column 2 was used | say which you mean"
                + " with --column bom.value=2 or --column bom.value=3"),
        asked(KitTables.read("bom.csv", bom)));
    KitReading told =
        KitReader.read(KitTables.files("bom.csv", bom), new ColumnMap(Map.of("bom.value", "3")));
    assertEquals(List.of(), asked(told));
    assertEquals("2 kΩ resistor", told.kit().boards().get(0).items().get(0).partType().words());
  }

  @Test
  void columns_that_say_the_same_otherwise_are_not_asked_about() {
    String placed =
        "ref,x (mm),x coordinate (mil),y (mm),side,layer\n"
            + "R1,2.54,100,10,top,TopLayer\nR2,25.4,1000,20,bottom,BottomLayer\n";
    assertEquals(List.of(), asked(KitTables.read("placements.csv", placed)));
  }

  @Test
  void sides_and_coordinates_that_differ_are_asked_about() {
    String placed =
        "ref,x (mm),x coordinate (mil),y (mm),side,layer\n"
            + "R1,2.54,140,10,top,BottomLayer\nR2,25.4,1000,20,bottom,BottomLayer\n";
    assertEquals(
        List.of(
            "columns 2 and 3 (\"x coordinate (mil)\") may both mean X and differ: from line 2 on"
                + " they have \"2.54\", and \"140\"; column 2 was used | say which you mean with"
                + " --column placements.x=2 or --column placements.x=3",
            "columns 5 and 6 (\"layer\") may both mean side and differ: from line 2 on they have"
                + " \"top\", and \"BottomLayer\"; column 5 was used | say which you mean with"
                + " --column placements.side=5 or --column placements.side=6"),
        asked(KitTables.read("placements.csv", placed)));
  }

  /** 2,0 is no other quantity than 2, and a cell that names no side contradicts none. */
  @Test
  void the_same_number_written_otherwise_is_no_other() {
    String bom = "ref,value,qty,qty\n\"R1, R2\",1k,2,2.0\nC1,1n,1,1.00\n";
    assertEquals(List.of(), asked(KitTables.read("bom.csv", bom)));
    assertEquals(1, asked(KitTables.read("bom.csv", bom.replace("1.00", "3"))).size());
    String placed = "ref,x (mm),y (mm),side,layer\nR1,1,10,top,signal\nR2,30,20,top,signal\n";
    assertEquals(List.of(), asked(KitTables.read("placements.csv", placed)));
  }

  @Test
  void of_two_quantities_the_one_that_counts_the_designators_is_taken_and_said() {
    String bom = "ref,quantity,value,qty\n\"R1, R2\",20,1k,2\nC1,10,100n,1\n";
    KitReading reading = KitTables.read("bom.csv", bom);
    assertEquals(2, reading.kit().boards().get(0).items().get(0).quantity());
    assertEquals(List.of(), asked(reading));
    assertTrue(
        guessed(reading)
            .contains(
                "of several headers that may mean quantity, \"qty\" was taken: its cells look most"
                    + " like it"));
  }

  /** Ten parts over 400 by 300: 12 000 mm² a part in millimetres, 7.7 mm² in mil. */
  @Test
  void two_units_that_are_equally_likely_are_asked_about_with_the_room_in_both() {
    var placed = new StringBuilder("ref,x,y\n");
    for (int i = 0; i < 10; i++) {
      placed.append("R").append(i).append(',').append(i * 400 / 9).append(',');
      placed.append(i % 2 * 300).append('\n');
    }
    assertEquals(
        List.of(
            "no unit is written, and mm is as likely as mil: the parts would spread over 400 x 300"
                + " mm, or over 10.16 x 7.62 mm; mm was taken | say --column placements.unit=mm or"
                + " --column placements.unit=mil"),
        asked(KitTables.read("placements.csv", placed.toString())));
  }

  @Test
  void two_separators_that_part_equally_well_are_asked_about() {
    String bom = "R1;1k,DIN0207\nR2;2k,DIN0207\nR3;3k,DIN0207\n";
    assertEquals(
        List.of(
            "commas part the cells as well as semicolons: [R1;1k] [DIN0207], or [R1] [1k,DIN0207];"
                + " commas were taken | say --column bom.separator=comma or --column"
                + " bom.separator=semicolon"),
        asked(KitTables.read("bom.csv", bom)));
  }

  @Test
  void x_and_y_in_one_cell_that_two_signs_part_equally_well_are_asked_about() {
    String placed = "Ref;Position (mm)\nR1;12,5 300,0\nR2;7,5 100,5\n";
    KitReading reading = KitTables.read("placements.csv", placed);
    assertEquals(
        List.of(
            "x and y stand in one cell, and commas part them as well as blanks: \"12,5 300,0\" was"
                + " read as x = 12,5 and y = 300,0, but it may be x = 12 and y = 5 300,0 | part x"
                + " and y with a semicolon, or write decimals with a point"),
        asked(reading));
    assertEquals(300, reading.kit().boards().get(0).placements().get(0).yMillimetres(), 1e-9);
  }

  @Test
  void another_row_may_settle_what_parts_x_and_y() {
    String placed = "Ref;Position (mm)\nR1;12,5 300,0\nR2;7,5 10,5\n";
    assertEquals(List.of(), asked(KitTables.read("placements.csv", placed)));
  }

  @Test
  void a_column_of_pairs_may_be_told() {
    String placed = "Ref,Where,Rot,Side\nR1,\"12.5, 30\",0,top\nR2,\"50, 10\",90,top\n";
    KitReading told =
        KitReader.read(
            KitTables.files("placements.csv", placed),
            new ColumnMap(Map.of("placements.position", "Where", "placements.unit", "mm")));
    assertEquals(30, told.kit().boards().get(0).placements().get(0).yMillimetres(), 1e-9);
    assertEquals(List.of(), guessed(told));
  }

  @Test
  void commas_between_digits_are_decimal_where_semicolons_part_as_well() {
    KitReading reading = KitTables.read("bom.csv", "R1;4,7\nR2;10,0\nR3;2,2\n");
    assertEquals(List.of(), asked(reading));
    assertEquals("4.7 Ω resistor", reading.kit().boards().get(0).items().get(0).partType().words());
  }
}
