package lowfirst.intake.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.board.Item;
import lowfirst.intake.KitReading;
import lowfirst.intake.KitTables;
import lowfirst.part.PartKind;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import lowfirst.problem.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Lists as people leave them: each is read right, with what was guessed said, or refused with its
 * place and a remedy. What a person reads in them was written down by hand.
 */
class OddListsTest {
  private static KitReading bom(String name, String text) {
    return KitTables.read(name, text);
  }

  private static List<Item> items(KitReading reading) {
    return reading.kit().boards().get(0).items();
  }

  private static String shown(KitReading reading) {
    return items(reading).stream()
        .map(item -> item.quantity() + " " + item.designators() + " " + item.partType().text())
        .toList()
        .toString();
  }

  private static List<Problem> of(KitReading reading, Kind kind) {
    return reading.problems().stream().filter(problem -> problem.kind() == kind).toList();
  }

  private static boolean says(KitReading reading, Kind kind, String words) {
    return of(reading, kind).stream().anyMatch(problem -> problem.toString().contains(words));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ref,value,package\n\"U1,U2\",8 pin DIP socket,DIP-8\n\"U1,U2\",NE555,DIP-8\n",
        "ref,value,package\n\"U1,U2\",NE555,DIP-8\n\"U1,U2\",8 pin DIP socket,DIP-8\n"
      })
  void a_socket_listed_under_the_name_of_its_circuit_is_no_fault(String text) {
    KitReading reading = bom("bom.csv", text);
    assertTrue(of(reading, Kind.DESIGNATOR_TWICE).isEmpty(), reading.problems().toString());
    assertEquals(2, items(reading).size());
    assertEquals(
        PartKind.INTEGRATED_CIRCUIT,
        reading
            .kit()
            .boards()
            .get(0)
            .itemOf(items(reading).get(0).designators().get(0))
            .orElseThrow()
            .partType()
            .kind());
  }

  @Test
  void two_circuits_or_a_socket_and_a_resistor_under_one_name_are_one() {
    for (String second : List.of("LM358", "10k resistor")) {
      KitReading reading =
          bom(
              "bom.csv",
              "ref,value\nU1,"
                  + (second.startsWith("1") ? "DIP socket" : "NE555")
                  + "\nU1,"
                  + second
                  + "\nC1,10n\n");
      assertEquals(1, of(reading, Kind.DESIGNATOR_TWICE).size(), second);
    }
  }

  @Test
  void parts_behind_bullets_and_tabs_below_a_title_are_a_list() {
    KitReading reading =
        bom(
            "bom.txt",
            "Component List\n==============\n\nCapacitors\n----------\n* C1\t330u\tradial\t\n"
                + "* C2\t100nF\tdisc\n\nResistors\n---------\n* R1\t3.9k\t\n* R2\t10k\n"
                + "*\tU1\tL298\t\t\n\nDiodes\n------\n* D1\t1N5819\n");
    assertEquals(
        "[1 [C1] 330u, 1 [C2] 100nF, 1 [R1] 3.9k, 1 [R2] 10k, 1 [U1] L298, 1 [D1] 1N5819]",
        shown(reading));
    assertEquals(0, reading.faults());
  }

  @Test
  void lines_drawn_below_headings_dont_count_against_a_list() {
    KitReading reading =
        bom(
            "bom.txt",
            "BELL BOM\n--------\n\nFLAT\n----\n\nR1, R2, R3 - 220R 5%\n\nR5 - 1K\n\nC2,C4 - 100nF ceramic\n\n"
                + "D1 - 1N4148\n\nTALL\n----\n\nIC2 - 6N138\n\nQ1, Q2 - BC547\n\nsockets for the strikers\n");
    assertEquals(
        "[3 [R1, R2, R3] 220R 5%, 1 [R5] 1K, 2 [C2, C4] 100nF ceramic, 1 [D1] 1N4148, 1 [IC2] 6N138, 2 [Q1, Q2] BC547]",
        shown(reading));
  }

  /** Words between single blanks, a row of which happens to say voltage and reference. */
  @Test
  void a_list_of_what_to_buy_is_not_read_from_its_middle_on() {
    KitReading reading =
        bom(
            "bom.txt",
            "Part            Quantity    Ordering Number         Desc.\n"
                + "AB328           1           AB328-AU-ND             controller\n"
                + "CD4431ILT       1           497-5198-1-ND           1.224 voltage reference\n"
                + "EF373-PL-B      2           EF373-PL-ND             latched hall effect\n"
                + "0ZAB0010        1           507-1477-1-ND           resettable fuse (250 ma trip)\n"
                + "GH73812T        1           GH73812T-420-ND         lithium ion battery charger\n"
                + "114-00841       1           114-00841-68-ND         memory card holder\n");
    assertTrue(items(reading).isEmpty(), shown(reading));
    assertEquals(1, reading.faults());
  }

  /** Which no number of a maker does. */
  @Test
  void words_that_stand_beside_several_values_describe_the_parts() {
    KitReading reading =
        bom(
            "bom.csv",
            "Refs,Value,Type\nR1,33k,1/4W 1% metal film\nR2,150R,1/4W 1% metal film\n"
                + "Q1,BC549,TO-92 low noise\n");
    assertEquals(
        List.of("33 kΩ 250 mW", "150 Ω 250 mW"),
        items(reading).subList(0, 2).stream()
            .map(Item::partType)
            .map(type -> type.value().orElseThrow() + " " + type.ratedPower().orElseThrow())
            .toList());
    assertEquals("", items(reading).get(0).partType().typeNumber());
  }

  @Test
  void a_likely_header_of_values_over_few_gives_way_to_one_over_more() {
    KitReading reading =
        bom(
            "bom.md",
            "| Refs | Component | Description | Part |\n|--|--|--|--|\n| R1 | 33k | resistor | |\n"
                + "| C1 | 22n | film capacitor | |\n| D1 | 1N4001 | rectifier | |\n"
                + "| S1 | SPDT | toggle switch | AB12-CD |\n");
    assertEquals("[1 [R1] 33k, 1 [C1] 22n, 1 [D1] 1N4001, 1 [S1] SPDT]", shown(reading));
  }

  @Test
  void what_is_printed_on_a_part_is_its_number_where_no_header_names_one() {
    KitReading reading =
        bom("bom.csv", "Ref,Part,Marking\nQ1,transistor,BC639\nR1,resistor 33k,orange\n");
    assertEquals("BC639", items(reading).get(0).partType().typeNumber());
  }

  @Test
  void headings_and_sentences_of_a_list_are_no_parts() {
    KitReading reading =
        bom(
            "bom.txt",
            "Push button ladder\n------------------\n2x push buttons\n1x 33k resistor\n1x 22n capacitor\n\n"
                + "Notes\n-----\nEach module wants its own supply.\n");
    assertEquals("[2 [] push buttons, 1 [] 33k resistor, 1 [] 22n capacitor]", shown(reading));
  }

  @Test
  void a_capital_before_words_without_a_name_is_no_unit() {
    KitReading reading =
        bom("bom.csv", "Ref,Value,Qty\nR1,33k,1\nR2,22k,1\n,7M sticky rubber feet,4\n");
    assertEquals(PartKind.UNKNOWN, items(reading).get(2).partType().kind());
  }

  @Test
  void a_known_type_number_alone_in_the_description_is_the_parts() {
    KitReading reading =
        bom("bom.csv", "Ref,Value,Description\nQ1,DSC,BC857\nU1,1n4148 diode,\nR1,33k,\n");
    assertEquals("BC857", items(reading).get(0).partType().typeNumber());
    assertEquals("1n4148", items(reading).get(1).partType().typeNumber());
  }

  @Test
  void a_dealers_number_is_no_print_on_a_part_with_a_value() {
    KitReading reading =
        bom("bom.csv", "Ref,Value,Supplier part\nR1,33k,C28305\nL1,600R/3A,C18305\n");
    assertEquals(
        List.of("", ""),
        items(reading).stream().map(item -> item.partType().typeNumber()).toList());
  }

  @Test
  void parts_in_a_table_of_bars_whose_names_have_a_column_of_their_own_are_values() {
    KitReading reading =
        bom(
            "bom.txt",
            " # |  package |  parts  |\n---+----------+---------+-------------\n"
                + "R1 |0207      |220R     |striker\nU2 |DIP-6     |6N138    |input\nC1 |disc      |0.1uF    |supply\n");
    assertEquals("[1 [R1] 220R, 1 [U2] 6N138, 1 [C1] 0.1uF]", shown(reading));
  }

  @Test
  void a_column_headed_as_the_quantity_holds_no_designators_though_x3_may_be_one() {
    KitReading reading =
        bom(
            "bom.csv",
            "Qty.,Component,Where\nx3,\"Resistor, 120 ohm, 1%\",R1 R2 R3\nx1,Trimmer 5k,VR1\n"
                + "x2,Electrolytic 47u 25V,C1 C2\nx1,Regulator 7808,U1\nx4,M3 screws,-\nx1,PCB,-\n");
    assertEquals(
        "[3 [R1, R2, R3] Resistor, 120 ohm, 1%, 1 [VR1] Trimmer 5k, 2 [C1, C2] Electrolytic 47u 25V,"
            + " 1 [U1] Regulator 7808, 4 [] M3 screws, 1 [] PCB]",
        shown(reading));
    assertEquals(List.of(), of(reading, Kind.QUANTITY_DISAGREES));
  }

  private static String placed(KitReading reading) {
    return reading.kit().boards().get(0).placements().stream()
        .map(
            p ->
                p.designator()
                    + " "
                    + Math.rint(p.xMillimetres() * 100) / 100
                    + "/"
                    + Math.rint(p.yMillimetres() * 100) / 100
                    + " "
                    + Math.round(p.rotationDegrees())
                    + " "
                    + p.side())
        .toList()
        .toString();
  }

  // --- placement lists

  @Test
  void a_header_behind_a_sign_counts_below_a_line_about_positions() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "# component positions, unit mil\n# Ref X Y Rot Side\n"
                + "R1 1000 500 90 top\nC1 2000 500 0 bottom\n");
    assertEquals("[R1 25.4/12.7 90 TOP, C1 50.8/12.7 0 BOTTOM]", placed(reading));
  }

  @Test
  void a_remark_says_the_unit_of_all_numbers() {
    KitReading reading =
        KitTables.read("placements.csv", "; all in mil\nref,x,y\nC1,1000,500\nR1,2000,500\n");
    assertEquals("[C1 25.4/12.7 0 TOP, R1 50.8/12.7 0 TOP]", placed(reading));
  }

  @ParameterizedTest
  @ValueSource(strings = {"T,B", "F,B", "top,bottom"})
  void sides_are_known_by_their_signs_under_a_word_that_nobody_knows(String signs) {
    String[] sides = signs.split(",");
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "Ref,X (mm),Y (mm),Whereabouts\nR1,10,20,%1$s\nR2,10,30,%2$s\nRef,X (mm),Y (mm),Whereabouts\nR3,10,40,%1$s\n"
                .formatted(sides[0], sides[1]));
    assertEquals(
        "[R1 10.0/20.0 0 TOP, R2 10.0/30.0 0 BOTTOM, R3 10.0/40.0 0 TOP]", placed(reading));
    assertTrue(says(reading, Kind.COLUMN_GUESSED, "it was taken for side"));
  }

  @Test
  void designators_under_a_word_for_values_are_known_by_their_cells() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "No.,Device,LocX [mm],LocY [mm],Turn,Lay\n1,J1,78.66,8,180,oben\n2,R1,5,8,90,oben\n3,R2,5,18,90,oben\n");
    assertEquals("[J1 78.66/8.0 180 TOP, R1 5.0/8.0 90 TOP, R2 5.0/18.0 90 TOP]", placed(reading));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Midpoint %s (mm)", "suggest_%s_mm", "%s of middle [mm]"})
  void a_lone_x_or_y_in_a_longer_header_tells_the_column(String header) {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "Designator,Size X,Size Y,%s,%s,Side\nR1,2,7,10,20,Top\nH1,3,3,5,6,Both\nR2,2,7,10,30,Bottom\n"
                .formatted(header.formatted("X"), header.formatted("Y")));
    assertEquals("[R1 10.0/20.0 0 TOP, H1 5.0/6.0 0 TOP, R2 10.0/30.0 0 BOTTOM]", placed(reading));
  }

  @Test
  void a_sure_header_counts_beside_strange_ones_though_some_of_its_cells_are_odd() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "Part;Waagrecht;Senkrecht;Seite\nR1;10;20;oben\nH1;5;6;beide\nR2;10;30;unten\nR3;10;40;unten\n");
    assertEquals(
        "[R1 10.0/20.0 0 TOP, H1 5.0/6.0 0 TOP, R2 10.0/30.0 0 BOTTOM, R3 10.0/40.0 0 BOTTOM]",
        placed(reading));
  }

  @Test
  void words_behind_a_designator_are_passed_over_and_that_is_said() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "Ref,X_mm,Y_mm\nJ2 BELL 1,10,20\nU3 LOGIC SUPPLY,10,30\nD2 JP1 OR,5,5\nSW1 LEFT,1,2\nSW1 RIGHT,3,4\nC 2,7,8\n");
    assertEquals(
        "[J2 10.0/20.0 0 TOP, U3 10.0/30.0 0 TOP, D2 5.0/5.0 0 TOP, SW1 LEFT 1.0/2.0 0 TOP, SW1 RIGHT 3.0/4.0 0 TOP, C2 7.0/8.0 0 TOP]",
        placed(reading));
    assertTrue(
        says(reading, Kind.COLUMN_GUESSED, "\"J2 BELL 1\", \"U3 LOGIC SUPPLY\", \"D2 JP1 OR\""));
  }

  @ParameterizedTest
  @CsvSource({"J2, J2 BELL", "J2 BELL, J2 BELL", "J2 BELL1, J2 BELL1", "'K1, J2 BELL', J2 BELL"})
  void words_behind_a_designator_are_passed_over_where_the_bom_has_them_too(
      String inBom, String placed) {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "Ref;Value\n" + inBom + ";2-pole\nR1;10k\n",
            "placements.csv",
            "Ref;X_mm;Y_mm\nR1;1;2\nK1;5;9\n" + placed + ";10;20\n");
    assertTrue(items(reading).get(0).designators().toString().contains("J2]"));
    assertEquals(List.of(), of(reading, Kind.NOT_PLACED));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Q1-Q4 SINKS", "Q1/Q2 + D4 INPUT", "R1 R2", "R1, R2", "R1-R4"})
  void several_parts_at_one_position_are_refused(String names) {
    KitReading reading =
        KitTables.read("placements.csv", "Ref;X_mm;Y_mm\nC1;1;2\n" + names + ";10;20\n");
    assertEquals("[C1 1.0/2.0 0 TOP]", placed(reading));
    assertTrue(says(reading, Kind.CELL_UNREADABLE, "and one position; write a row for each"));
  }

  @Test
  void places_of_one_part_are_names() {
    KitReading reading =
        KitTables.read("placements.csv", "Ref;X_mm;Y_mm\nJ1-1;1;2\nJ1-2;3;4\nL1-In;5;6\n");
    assertEquals("[J1-1 1.0/2.0 0 TOP, J1-2 3.0/4.0 0 TOP, L1-In 5.0/6.0 0 TOP]", placed(reading));
  }

  @Test
  void a_unit_over_x_and_y_counts_for_both_also_where_all_columns_have_their_words_below() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            ",Center (mil),,,\nRef,X,Y,Rotation,Side\nR1,1000,500,90,top\nR2,2000,500,0,top\n");
    assertEquals("[R1 25.4/12.7 90 TOP, R2 50.8/12.7 0 TOP]", placed(reading));
  }

  @Test
  void parts_in_one_row_have_room_with_decimal_commas() {
    KitReading reading =
        KitTables.read(
            "placements.csv", "Ref;X (mm);Y (mm)\nR1;-125,000;-122,000\nR2;-107,220;-122,000\n");
    assertEquals("[R1 -125.0/-122.0 0 TOP, R2 -107.22/-122.0 0 TOP]", placed(reading));
  }

  @Test
  void rows_of_nothing_but_tabs_are_no_ragged_columns() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "Ref\tLocation X\tLayer\tLocation Y\trot\nR1\t6,27\tTop\t8,5\t90\n\t\t\t\t\n"
                + "Ref\tLocation X\tLayer\tLocation Y\trot\nC1\t22,78\tTop\t8,5\t0\nTotal: 2\n");
    assertEquals("[R1 6.27/8.5 90 TOP, C1 22.78/8.5 0 TOP]", placed(reading));
  }

  // --- rows that all begin with a number

  @Test
  void a_total_and_a_heading_behind_the_number_of_their_row_are_none_of_the_parts() {
    KitReading reading =
        bom(
            "bom.csv",
            ",Value,Bauteile,Count\n0,470,\"R1, R2\",2\n1,1n,C1,1\n2,Do not fit,,\n3,4k7,R3,1\n4,Total,,4\n");
    assertEquals("[2 [R1, R2] 470, 1 [C1] 1n, 1 [R3] 4k7]", shown(reading));
    assertEquals(List.of(true, true, false), items(reading).stream().map(Item::isFitted).toList());
    assertTrue(says(reading, Kind.ROW_IGNORED, "this looks like a total"));
  }

  @Test
  void a_total_may_stand_where_designators_do() {
    KitReading reading = bom("bom.csv", ",Ref,Qty,Value\n0,R1,1,470\n1,C1,1,1n\n2,Total,2,\n");
    assertEquals("[1 [R1] 470, 1 [C1] 1n]", shown(reading));
  }

  // --- ranges in words, and letters with many meanings

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2x 470: R2 to R3\n1x 4k7: R1\n3x 100n: C1 through C3\n",
        "2x 470: R2 à R3\n1x 4k7: R1\n3x 100n: C1 tot C3\n",
        "R2 to R3,2,470,DIN0207\nR1,1,4k7,DIN0207\nC1 through C3,3,100n,P5.08\n",
        "R2 AU R3,2,470,DIN0207\nR1,1,4k7,DIN0207\nC1 až C3,3,100n,P5.08\n",
        "Ref,Qty,Value\nR2 bis R3,2,470\nR1,1,4k7\nC1 - C2 C3,3,100n\n"
      })
  void a_range_in_words_names_all_its_parts(String text) {
    assertEquals("[2 [R2, R3] 470, 1 [R1] 4k7, 3 [C1, C2, C3] 100n]", shown(bom("bom.csv", text)));
  }

  @Test
  void ranges_in_words_may_be_parted_by_blanks() {
    assertEquals(
        "[5 [R1, R2, R3, R6, R7] 470]",
        shown(bom("bom.csv", "Ref,Qty,Value\nR1 to R3 R6 to R7,5,470\n")));
  }

  @Test
  void letters_that_stand_for_several_kinds_name_parts_by_three_digits_too() {
    assertEquals(
        "[1 [R101] 1k, 1 [T101] 2N3904, 1 [T102] 2N3904, 1 [V101] EL84]",
        shown(bom("bom.txt", "R101 1k\nT101 2N3904\nT102 2N3904\nV101 EL84\n")));
  }

  @Test
  void a_screw_terminal_is_one_under_a_letter_for_crystals_too() {
    KitReading reading =
        bom("bom.csv", "Ref,Qty,Value,Package\nX1,1,2-pole,screw terminal P5.08\n");
    assertEquals(PartKind.SCREW_TERMINAL, items(reading).get(0).partType().kind());
  }

  // --- two tables beside each other

  @ParameterizedTest
  @ValueSource(
      strings = {
        "R1\t10k\t\tC1\t100n\nR2\t10k\t\tC2\t100n\nR3\t4k7\t\tC3\t10n\n",
        "Part\tValue\t\tPart\tValue\nR1\t10k\t\tC1\t1n\nR2\t10k\t\tC2\t1n\nR3\t4k7\t\tC3\t2n\n",
      })
  void parts_that_stand_beside_others_are_not_taken_for_what_those_are(String text) {
    KitReading reading = bom("bom.txt", text);
    assertTrue(says(reading, Kind.COLUMN_AMBIGUOUS, "columns 1 and 4 both name parts"));
    assertTrue(
        says(reading, Kind.COLUMN_AMBIGUOUS, "give each part a row of its own"),
        reading.problems().toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Componentes\nResistencia 10k,2\nCapacitor 100nF,1\nLED rojo,1\nTransistor BC547,3\n",
        "Componentes\nResistencia 10k\t2\nCapacitor 100nF\t1\nLED rojo\t1\nRele 5V\t3\n",
        "Componentes\n2 resistencias 10k\n1 capacitor 100nF\n1 LED rojo\n3 reles 5V\n"
      })
  void words_and_counts_under_one_word_name_no_parts_and_that_is_said_once(String text) {
    KitReading reading = bom("bom.txt", text);
    assertTrue(items(reading).stream().allMatch(item -> item.designators().isEmpty()));
    assertEquals(1, of(reading, Kind.HEADER_NOT_FOUND).size(), reading.problems().toString());
    assertTrue(says(reading, Kind.HEADER_NOT_FOUND, "no line names parts on the board"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[x] R1 33k\n[ ] R2, R3 10k\n[X] C1 100n\n",
        "- [x] R1 33k\n- [ ] R2, R3 10k\n- [x] C1 100n\n",
        "☑ R1 33k\n☐ R2, R3 10k\n☐ C1 100n\n",
        "[] R1,1,33k\n[x] \"R2,R3\",2,10k\n[ ] C1,1,100n\n"
      })
  void boxes_to_tick_before_the_lines_are_no_column(String text) {
    KitReading reading = bom("bom.txt", text);
    assertEquals("[1 [R1] 33k, 2 [R2, R3] 10k, 1 [C1] 100n]", shown(reading));
  }

  @Test
  void a_box_makes_a_bullet_so_that_words_in_capitals_name_parts_and_that_is_said() {
    KitReading reading =
        bom("bom.txt", "CAPS\n[x] C1 1n\n[ ] C2 1n\n[x] R1 1k\n\nPOTS\n[ ] LEVEL B100K\n");
    assertEquals("[1 [C1] 1n, 1 [C2] 1n, 1 [R1] 1k, 1 [LEVEL] B100K]", shown(reading));
    assertTrue(says(reading, Kind.COLUMN_GUESSED, "LEVEL was taken for the name of a part"));
  }

  @Test
  void notes_without_parts_are_refused_with_what_to_write() {
    KitReading reading = bom("bom.md", "# Parts\n\n* 2 x Jack | shop 1\n* 1 x Pot 100k | shop 2\n");
    assertTrue(says(reading, Kind.FILE_MISSING, "begin each line with the designators"));
  }

  @Test
  void a_header_that_stands_again_with_one_word_written_otherwise_is_none_of_the_rows() {
    KitReading reading =
        bom(
            "bom.md",
            "|Qty|References (1% 1/4 W)|Value|Notes|\n|-|-|-|-|\n|1|R1|1k5||\n|2|R2, R3|10k||\n\n"
                + "|Qty|References (film, 50 V)|Value|Notes|\n|-|-|-|-|\n|2|C1, C2|100n||\n");
    assertEquals("[1 [R1] 1k5, 2 [R2, R3] 10k, 2 [C1, C2] 100n]", shown(reading));
    assertTrue(says(reading, Kind.ROW_IGNORED, "the header stands here again"));
  }

  @Test
  void dashes_between_blanks_part_cells_where_they_stand_in_the_header_too() {
    KitReading reading =
        bom(
            "bom.txt",
            "Bands - Location - Value\nred red brown - R2, R3 - 220 ohm\n"
                + "brown black red - R1 - 1k\nblack - R4, R5 - 0 ohm link\n");
    assertEquals("[2 [R2, R3] 220 ohm, 1 [R1] 1k, 2 [R4, R5] 0 ohm link]", shown(reading));
  }

  @Test
  void bars_that_only_begin_lines_part_nothing() {
    KitReading reading = bom("bom.lst", "| C1       100n\n| R1       10k\n| U1       ZX358\n");
    assertEquals("[1 [C1] 100n, 1 [R1] 10k, 1 [U1] ZX358]", shown(reading));
  }

  @Test
  void designators_under_a_word_for_part_numbers_are_such_and_the_other_headers_count() {
    KitReading reading =
        bom(
            "bom.csv",
            "Part Number,Description,Qty,MPN\nR1,10k resistor,4,RA10\nC1,100n capacitor,2,CA22\n"
                + "U1,timer,1,ZX555\n");
    assertEquals(
        "4 [R1] RA10, 2 [C1] CA22, 1 [U1] ZX555",
        String.join(
            ", ",
            items(reading).stream()
                .map(
                    item ->
                        item.quantity()
                            + " "
                            + item.designators()
                            + " "
                            + item.partType().typeNumber())
                .toList()));
    assertTrue(says(reading, Kind.COLUMN_GUESSED, "no usual header for designators"));
  }

  @Test
  void type_numbers_under_a_word_for_part_numbers_stay_such() {
    KitReading reading =
        bom("bom.csv", "Part Number,Description,Qty\nBC547,transistor,4\nBC557,transistor,2\n");
    assertEquals("[4 [] transistor, 2 [] transistor]", shown(reading));
    assertEquals("BC547", items(reading).get(0).partType().typeNumber());
  }

  @Test
  void numbers_of_rows_above_a_total_count_nothing() {
    KitReading reading =
        bom(
            "placements.txt",
            "Nr Name X(mm) Y(mm) Angle Side\n1 R1 12 23 90 TOP\n2 C1 13 23 0 BOT\n3 U1 1 3 0 TOP\n"
                + "Total: 3 components\n");
    assertEquals(List.of(), reading.kit().boards().get(0).bomLines());
    assertEquals(3, reading.kit().boards().get(0).placements().size());
  }

  @Test
  void a_unit_behind_a_comma_in_the_header_leaves_no_doubt_about_semicolons() {
    KitReading reading =
        bom("placements.csv", "Ref;X, mm;Y, mm;Rot;Side\nR1;12,5;23,0;90;T\nC1;14,5;3,0;0;B\n");
    assertEquals("R1 12.5 23.0 90.0 TOP", placed(reading, 0));
    assertEquals(List.of(), of(reading, Kind.COLUMN_AMBIGUOUS));
  }

  @Test
  void tags_in_a_table_of_notes_are_no_words() {
    KitReading reading =
        bom(
            "bom.md",
            "|Ref|Value|Description|\n|--|--|--|\n|D1|ZX17|<span style=\"x\">ring up</span>|\n");
    assertEquals("ring up", items(reading).get(0).description());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "|Component|Quantity|Price|\n|--|--|--|\n|**Key switches**|64|$1|\n|**Diodes (small)**|64|$2|\n",
        "|Part|Description|Quantity|\n|-|-|-|\n|ZX48 small diode|one a key|42|\n|Caps of a row|keys|4|\n||Wires||\n|Ply 5 mm|base|1|\n",
      })
  void a_table_of_notes_that_names_no_parts_is_not_cut_at_its_blanks_instead(String table) {
    KitReading reading = bom("bom.md", "# Parts\n\n" + table);
    assertTrue(items(reading).stream().allMatch(item -> item.designators().isEmpty()));
    assertEquals(1, of(reading, Kind.HEADER_NOT_FOUND).size(), reading.problems().toString());
    assertEquals(List.of(), of(reading, Kind.CELL_UNREADABLE));
  }

  @Test
  void lines_between_bars_are_a_table_of_notes_without_a_rule_too() {
    KitReading reading =
        bom("bom.md", "# Parts\n\n| Ref | Qty |\n| R1, R2 | 2 |\n| C1 | 1 |\n| D1 | 1 |\n");
    assertEquals("[2 [R1, R2] , 1 [C1] , 1 [D1] ]", shown(reading));
  }

  @Test
  void designators_that_only_half_of_the_lines_have_are_found_below_an_unknown_word() {
    KitReading reading =
        bom(
            "bom.md",
            "|**Name**|**Mark**|**Case**|**Amount**|\n|:-:|:-:|:-:|:-:|\n|40P header||-|2|\n"
                + "|5V relay||-|1|\n|Switch||-|12|\n|PNP||SOT23|5|\n|Resistor|R1 - R3|0207|3|\n"
                + "|Resistor|R4|0207|1|\n|LED|LED1|5mm|1|\n");
    assertEquals(
        "2 [], 1 [], 12 [], 5 [], 3 [R1, R2, R3], 1 [R4], 1 [LED1]",
        String.join(
            ", ",
            items(reading).stream()
                .map(item -> item.quantity() + " " + item.designators())
                .toList()));
  }

  @Test
  void a_unit_in_square_brackets_is_one() {
    KitReading reading = bom("bom.csv", "Ref,Value\nR1,22 [kΩ]\nC1,33 [pF]\nY1,16[MHz]\n");
    assertEquals(
        "22 kΩ 33 pF 16 MHz",
        String.join(
            " ",
            items(reading).stream()
                .map(item -> item.partType().value().orElseThrow().toString())
                .toList()));
  }

  @Test
  void words_among_designators_are_names_and_that_is_said_unless_they_are_placed() {
    String list = "Ref,Qty,Value\nR1,1,1k\nR2,1,2k\nC1,1,1n\nIn,1,jack\nKnobs,2,\n";
    KitReading alone = bom("bom.csv", list);
    assertEquals(5, items(alone).size());
    assertEquals(
        List.of(
            "bom.csv:5, column 1 \"Ref\" (In): In, Knobs were taken for names of parts on the board; if that is"
                + " wrong, delete the line or empty the cell"),
        of(alone, Kind.COLUMN_GUESSED).stream().map(Object::toString).toList());
    KitReading placed =
        KitTables.read(
            "bom.csv",
            list,
            "placements.csv",
            "Ref,X mm,Y mm\nR1,1,2\nR2,30,2\nC1,9,9\nIn,50,50\n");
    assertTrue(says(placed, Kind.COLUMN_GUESSED, "Knobs was taken for the name of a part"));
    assertTrue(!says(placed, Kind.COLUMN_GUESSED, "In, Knobs"));
    // where most are words, none is odd
    assertEquals(
        List.of(),
        of(bom("bom.csv", "Ref,Value\nIn,jack\nOut,jack\nR1,1k\n"), Kind.COLUMN_GUESSED));
  }

  @Test
  void a_word_over_the_values_of_two_columns_heads_a_section() {
    KitReading reading =
        bom("bom.csv", "Part;Ref\nResistors;\n10k;R1,R2,R3\n4k7;R4\nCapacitors;\n100n;C1,C2\n");
    assertEquals("[3 [R1, R2, R3] 10k, 1 [R4] 4k7, 2 [C1, C2] 100n]", shown(reading));
    assertEquals(2, of(reading, Kind.ROW_IGNORED).size());
  }

  @Test
  void notes_that_are_named_like_a_list_of_parts_and_list_them_line_by_line_are_read() {
    String text = "# Parts\n\n- [ ] R1: 33k\n- [ ] R2, R3: 10k\n- [x] C1: 100n\n\nSolder slowly.\n";
    assertEquals("[1 [R1] 33k, 2 [R2, R3] 10k, 1 [C1] 100n]", shown(bom("parts.md", text)));
    assertEquals(List.of(), bom("notes.md", text).kit().boards());
  }

  // --- rows between blanks that lack a cell

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        // the package, or the value: what the line is about stays
        "J1 1X04 12.0 25.0 90 top | J1 12.0 25.0 90.0 TOP",
        "J1 12.0 25.0 90 top | J1 12.0 25.0 90.0 TOP",
        "J1 1X04 Pin 12.0 25.0 top | J1 12.0 25.0 0.0 TOP",
        "J1 1X04 Pin 12.0 25.0 90 | J1 12.0 25.0 90.0 TOP",
      })
  void of_a_placement_that_lacks_cells_between_blanks_the_others_tell_which(
      String row, String placed) {
    KitReading reading =
        bom(
            "placements.txt",
            "Ref Val Pkg X(mm) Y(mm) Rot Side\nR1 10k 0207 10.0 20.0 0 top\n"
                + row
                + "\nR2 22k 0207 30.0 20.0 0 bottom\n");
    assertEquals(placed, placed(reading, 1));
    assertTrue(says(reading, Kind.ROW_LENGTH, " was taken as empty"));
  }

  @Test
  void where_two_ways_fit_a_short_row_none_is_said_to_be_right() {
    KitReading reading =
        bom(
            "placements.txt",
            "Ref Val Pkg X(mm) Y(mm) Rot Side\nR1 10k 0207 10.0 20.0 0 top\n"
                + "R2 10k 0207 10.0 90 top\nR3 22k 0207 30.0 20.0 0 bottom\n");
    assertTrue(says(reading, Kind.ROW_LENGTH, "one may be empty, and which can't be told"));
  }

  private static String placed(KitReading reading, int index) {
    var one = reading.kit().boards().get(0).placements().get(index);
    return "%s %s %s %s %s"
        .formatted(
            one.designator(),
            one.xMillimetres(),
            one.yMillimetres(),
            one.rotationDegrees(),
            one.side());
  }

  @Test
  void of_bom_lines_that_lack_a_cell_between_blanks_the_designators_stay_such() {
    KitReading reading =
        bom(
            "bom.txt",
            "Qty Value Package Parts\n2 10k 0207 R1,R2\n1 100n C1\n1 ZX072 DIP8 IC1\n"
                + "1 1X04 J1\n2 22p 5mm C2,C3\n");
    assertEquals(
        "[2 [R1, R2] 10k, 1 [C1] 100n, 1 [IC1] ZX072, 1 [J1] 1X04, 2 [C2, C3] 22p]",
        shown(reading));
    assertTrue(says(reading, Kind.ROW_LENGTH, "\"Package\" was taken as empty, but \"Value\" may"));
  }

  @Test
  void names_with_nothing_right_of_them_are_no_parts_beside_others() {
    KitReading reading =
        bom("bom.txt", "Ref\tValue\t\t\nR1\t10k\tby\tC1\nR2\t1k\tby\tC2\nR3\t2k\tby\tC3\n");
    assertEquals(3, items(reading).size());
    assertTrue(!says(reading, Kind.COLUMN_AMBIGUOUS, "both name parts"));
  }

  @Test
  void parts_in_a_column_that_is_headed_otherwise_are_words() {
    KitReading reading =
        bom(
            "bom.csv",
            "Ref,Value,Comment,Notes\nR1,10k,C1,near it\nR2,1k,C2,near it\nR3,2k,C3,near it\n");
    assertEquals(3, items(reading).size());
    assertTrue(!says(reading, Kind.COLUMN_AMBIGUOUS, "both name parts"));
  }

  @Test
  void two_jotted_lists_beside_each_other_are_not_read_as_one_value() {
    KitReading reading =
        bom(
            "bom.txt",
            "Resistors\t\tCapacitors\nR1\t10k\t\tC1\t100n\nR2\t10k\t\tC2\t100n\n"
                + "R3\t4k7\t\tC3\t10n\nR4\t4k7\t\tC4\t10n\n");
    assertTrue(
        items(reading).stream().noneMatch(item -> item.partType().text().contains("C1")),
        shown(reading));
    assertTrue(
        reading.problems().stream().anyMatch(one -> one.severity() == Severity.FAULT),
        reading.problems().toString());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        // two rows may be so by chance
        "R1,10k,,C1,1n;R2,10k,,C2,1n",
        // type numbers that are no designators of a board
        "Q1,10k,,BC547,TO-92;Q2,10k,,BC557,TO-92;Q3,10k,,BC337,TO-92",
        // parts that the first column names as well: what each is near to
        "R1,10k,,R2,near;R2,10k,,R3,near;R3,10k,,R1,near",
      })
  void a_column_that_names_no_other_parts_is_no_second_list(String rows) {
    KitReading reading = bom("bom.csv", "Ref,Value,Package,,\n" + rows.replace(';', '\n') + "\n");
    assertEquals(List.of(), of(reading, Kind.COLUMN_AMBIGUOUS));
  }

  // --- one header over designators and values

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Qty  Part\n1  R1  10k\n2  C1,C2  100n\n1  Q1  ZX9012\n",
        "Qty\tPart\n1\tR1\t10k\n2\tC1,C2\t100n\n1\tQ1\tZX9012\n",
      })
  void a_value_behind_the_last_header_is_read_and_said(String text) {
    KitReading reading = bom("bom.txt", text);
    assertEquals("[1 [R1] 10k, 2 [C1, C2] 100n, 1 [Q1] ZX9012]", shown(reading));
    assertTrue(
        says(reading, Kind.COLUMN_GUESSED, "has no header; by its cells it was taken for value"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // designators that nobody quoted, whose count tells
        "Qty,Part;2,R1,R2;2,C1,C2;2,Q1,Q2 | [2 [R1, R2] , 2 [C1, C2] , 2 [Q1, Q2] ]",
        "Part,Qty;R1,R2,2;C1,C2,2;Q1,Q2,2 | [2 [R1, R2] , 2 [C1, C2] , 2 [Q1, Q2] ]",
      })
  void unquoted_designators_are_no_values(String text, String read) {
    assertEquals(read, shown(bom("bom.csv", text.replace(';', '\n') + "\n")));
  }

  @Test
  void designators_and_values_in_one_cell_are_refused_with_the_remedy() {
    KitReading reading = bom("bom.csv", "Qty,Part\n1,R1 10k\n2,C1 C2 100n\n");
    List<Problem> faults = of(reading, Kind.DESIGNATOR_UNREADABLE);
    assertEquals(List.of(2, 3), faults.stream().map(fault -> fault.place().line()).toList());
    assertTrue(faults.get(0).remedy().endsWith("give values a column of their own"));
  }

  // --- words under two columns

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Part,Value\nR1,10k\nC1,100n\nHardware\nscrews are in the blue bag\n",
        "Part  Value\nR1    10k\nC1    100n\n\nHardware\nUse M3 screws for the heatsink of Q1\n",
      })
  void headings_and_prose_below_two_columns_are_no_parts(String text) {
    KitReading reading = bom("bom.txt", text);
    assertEquals("[1 [R1] 10k, 1 [C1] 100n]", shown(reading));
    assertEquals(2, of(reading, Kind.ROW_IGNORED).size(), reading.problems().toString());
  }

  @Test
  void a_name_without_a_value_below_two_columns_stays_a_part() {
    assertEquals(
        "[1 [R1] 10k, 1 [BOOT] , 1 [SW2] ]",
        shown(bom("bom.csv", "Part,Value\nR1,10k\nBOOT,\nSW2\n")));
  }

  // --- lists with bullets

  @ParameterizedTest
  @ValueSource(
      strings = {
        "- R1, R2: 10k\n- C1: 100n\n- Q1: ZX9012\n",
        "* **R1, R2** - 10k\n* **C1** - 100n\n* **Q1** - ZX9012\n",
        "* `R1`, `R2`: 10k\n* `C1`: 100n\n* `Q1`: ZX9012\n",
        "- [ ] R1, R2: 10k\n- [x] C1: 100n\n- [ ] Q1: ZX9012\n",
      })
  void a_list_with_bullets_is_read_among_prose(String list) {
    KitReading reading =
        bom("bom.txt", "# Parts\n\nThese are all.\n\n" + list + "\n## Notes\n\nR9 is gone.\nSo.\n");
    assertEquals("[2 [R1, R2] 10k, 1 [C1] 100n, 1 [Q1] ZX9012]", shown(reading));
    assertEquals(List.of(), of(reading, Kind.ROW_LENGTH));
  }

  @Test
  void a_list_with_bullets_that_names_no_parts_is_refused_at_its_first_line() {
    KitReading reading = bom("bom.txt", "# Parts\n\n- 2 resistors 10k\n- one capacitor 100n\n");
    Problem refused = of(reading, Kind.HEADER_NOT_FOUND).get(0);
    assertEquals(3, refused.place().line());
    assertTrue(refused.remedy().startsWith("begin each line with the designators of its part"));
  }

  // --- x and y in one cell

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Place | 12 30;1 2 | \"12 30\" is x = 12 and y = 30",
        "Position | 1,2;2,5 | \"1,2\" is x = 1 and y = 2, or one number",
        "Place | 1,2,3;2,5,7 | \"1,2,3\" is x = 1 and y = 2,3 or x = 1,2 and y = 3",
      })
  void a_column_that_may_hold_both_is_named_with_what_it_may_mean(
      String header, String cells, String said) {
    String[] pairs = cells.split(";");
    String placed =
        "Designator;" + header + ";Side\nR1;" + pairs[0] + ";top\nC1;" + pairs[1] + ";top\n";
    KitReading reading = KitTables.read("placements.csv", placed);
    assertTrue(
        says(reading, Kind.HEADER_NOT_FOUND, "this one may hold both, where " + said)
            || says(reading, Kind.CELL_UNREADABLE, "\"1,2,3\" may be x = 1 and y = 2,3"),
        reading.problems().toString());
  }

  // --- lengths in Cyrillic letters

  @ParameterizedTest
  @CsvSource({
    "10 мм, 10",
    "1 см, 10",
    "'5,5мм', 5.5",
    "50 мил, 1.27",
    "1 дюйм, 25.4",
    "9 мкм, 0.009"
  })
  void a_length_may_have_a_cyrillic_unit(String x, double millimetres) {
    KitReading reading =
        KitTables.read("placements.csv", "Designator;X;Y;Side\nR1;" + x + ";1 мм;top\n");
    assertEquals(
        millimetres, reading.kit().boards().get(0).placements().get(0).xMillimetres(), 1e-12);
  }

  // --- variants

  @Test
  void a_column_of_variants_is_not_read_and_said() {
    KitReading reading =
        bom("bom.csv", "Ref,Value,Variant\nR1,10k,A\nR1,22k,B\nC1,100n,\nQ1,ZX9012,A\n");
    assertTrue(
        says(reading, Kind.OPTIONAL_PART, "may say in which variants a part is fitted (A, B)"));
    assertTrue(says(reading, Kind.DESIGNATOR_TWICE, "keep the lines of the one that you build"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "A;A;A",
        ";;",
        "yes;no;yes",
        "A;B;a sentence that goes on about the one or the other",
      })
  void a_column_of_variants_that_parts_no_rows_or_says_yes_and_no_is_no_such(String cells) {
    String[] of = cells.split(";", -1);
    KitReading reading =
        bom(
            "bom.csv",
            "Ref,Value,Variant\nR1,10k," + of[0] + "\nR2,22k," + of[1] + "\nC1,1n," + of[2] + "\n");
    assertTrue(!says(reading, Kind.OPTIONAL_PART, "may say in which variants"));
  }

  @Test
  void one_variant_that_some_parts_lack_is_asked_about_and_a_column_that_is_read_is_not() {
    KitReading some = bom("bom.csv", "Ref,Value,Variant\nR1,10k,A\nR2,22k,\n");
    assertTrue(says(some, Kind.OPTIONAL_PART, "may say in which variants a part is fitted (A)"));
    KitReading heading = bom("bom.csv", "Ref,Value,Variant\nR1,10k,A\nR2,22k,A\nLamps,,\n");
    assertTrue(!says(heading, Kind.OPTIONAL_PART, "variant"));
    KitReading read = bom("bom.csv", "Ref,Variant Value\nR1,10k\nR2,22k\n");
    assertEquals(2, items(read).size());
    assertTrue(!says(read, Kind.OPTIONAL_PART, "variant"));
  }

  // --- what contradicts itself, or names what is plugged in

  @Test
  void a_part_that_its_row_calls_both_fitted_and_not_is_left_out_and_said() {
    KitReading reading = bom("bom.csv", "Ref,Value,Fitted\nR1,DNP,yes\nR2,DNP,no\nR3,10k,yes\n");
    assertEquals(List.of(false, false, true), items(reading).stream().map(Item::isFitted).toList());
    assertEquals(
        List.of(2),
        of(reading, Kind.OPTIONAL_PART).stream().map(said -> said.place().line()).toList());
  }

  @ParameterizedTest
  @CsvSource({
    "K1, DIP-16 socket, relay socket",
    "K1, RS-8P, 'Socket, relay, 8 pin'",
    "K1, '', relay base",
    "K1, Relay socket 8 pin, ''",
    "XK1, '', socket for relay",
  })
  void a_socket_of_a_relay_is_no_relay(String designator, String value, String words) {
    KitReading reading =
        bom("bom.csv", "Ref;Value;Description\n" + designator + ";" + value + ";" + words + "\n");
    assertEquals(PartKind.SOCKET, items(reading).get(0).partType().kind());
  }

  @ParameterizedTest
  @CsvSource({"5V relay, ''", "'', 'relay, socket mounted on request'", "JW2, relay 12 V"})
  void a_relay_stays_one(String value, String words) {
    KitReading reading = bom("bom.csv", "Ref;Value;Description\nK1;" + value + ";" + words + "\n");
    assertEquals(PartKind.RELAY, items(reading).get(0).partType().kind());
  }

  // --- names that hold a sign, and panels

  @Test
  void a_name_that_the_placement_list_has_in_whole_is_one_part() {
    String bom = "Ref,Qty,Value\nL1/L2,1,choke\nR1/R2,2,10k\n";
    String placed = "Designator,X,Y,Side\nL1/L2,1,1,top\nR1,9,9,top\nR2,20,9,top\n";
    KitReading reading = KitTables.read("bom.csv", bom, "placements.csv", placed);
    assertEquals("[1 [L1/L2] choke, 2 [R1, R2] 10k]", shown(reading));
    assertEquals(List.of(), of(reading, Kind.NOT_PLACED));
  }

  @ParameterizedTest
  @ValueSource(strings = {"_", "-"})
  void copies_that_a_panel_numbers_are_said_to_be_such(String sign) {
    var placed = new StringBuilder("Designator,X,Y,Side\n");
    for (int copy = 1; copy <= 3; copy++) {
      placed.append("R1" + sign + copy + "," + 30 * copy + ",5,top\n");
      placed.append("C1" + sign + copy + "," + (30 * copy + 9) + ",5,top\n");
    }
    KitReading reading =
        KitTables.read(
            "bom.csv", "Ref,Value\nR1,10k\nC1,1n\n", "placements.csv", placed.toString());
    assertTrue(
        says(reading, Kind.NOT_PLACED, "R1" + sign + "1 and others like it are placed"),
        reading.problems().toString());
  }

  /** The second copy is turned by half a turn, so nothing tells which parts belong together. */
  @Test
  void turned_copies_of_a_board_are_refused_with_the_remedy() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "Ref,Value\nR1,10k\nC1,1n\n",
            "placements.csv",
            "Designator,X,Y,Rotation,Side\nR1,5,5,0,top\nC1,14,5,0,top\n"
                + "R1,55,15,180,top\nC1,46,15,180,top\n");
    assertEquals(
        List.of(4, 5),
        of(reading, Kind.PLACED_TWICE).stream().map(said -> said.place().line()).toList());
    assertTrue(says(reading, Kind.PLACED_TWICE, "export that of one board"));
  }

  // --- lists that tell what to buy, and not where it goes

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Item,Quantity,Notes\nGeared motor,1,left\nLamp holder,4,\n3 mm LED,4,red\n",
        "Position,Part,Remark\n1,Geared motor,left\n2,Lamp holder,\n3,Resistor,for the lamp\n",
        "Part;Qty;Package\nBC547;3;TO-92\nNE555;1;DIP-8\n1N4148;2;DO-35\nZX9012A;1;TO-92\n",
        "Description,Value,Quantity\nResistor,4k7,3\nCapacitor,100n,2\n",
        "3x lamp holder\n2x geared motor\nresistors\n6x button\n",
      })
  void a_list_that_names_no_parts_is_said_with_its_line_and_the_remedy(String text) {
    KitReading reading = bom("bom.csv", text);
    assertTrue(items(reading).stream().allMatch(item -> item.designators().isEmpty()));
    Problem refused = of(reading, Kind.HEADER_NOT_FOUND).get(0);
    assertEquals(1, refused.place().line());
    assertTrue(refused.message().contains("no line names parts on the board"), refused.message());
    assertTrue(refused.remedy().startsWith("export the BOM with its designators"));
  }

  @Test
  void designators_among_other_words_are_pointed_to() {
    Problem refused =
        of(
                bom(
                    "bom.csv",
                    "Anzahl;Bezeichnung;Wert\n1;R1 Widerstand;390\n2;R2+R3 Widerstand;1k\n"),
                Kind.HEADER_NOT_FOUND)
            .get(0);
    assertEquals("bom.csv:2, column 2 (R1 Widerstand)", refused.place().toString());
    assertTrue(refused.remedy().startsWith("give designators a column of their own"));
  }

  @Test
  void a_column_for_designators_that_stays_empty_is_said() {
    KitReading reading = bom("bom.csv", "Reference,Quantity,Value\n,2,10k\n-,1,100n\n");
    assertEquals("[2 [] 10k, 1 [] 100n]", shown(reading));
    assertTrue(says(reading, Kind.NOT_PLACED, "no row names parts on the board"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Part,Value;R1,10k;BOOT,push;LCD,2x16 | [1 [R1] 10k, 1 [BOOT] push, 1 [LCD] 2x16]",
        "Item,Value;RXD,red;TXD,green;CAM,jack | [1 [RXD] red, 1 [TXD] green, 1 [CAM] jack]",
        "Part,Value;R1001,10k;TP2002,pad;SW1003,push"
            + " | [1 [R1001] 10k, 1 [TP2002] pad, 1 [SW1003] push]",
      })
  void names_under_a_word_that_may_mean_anything_stay_parts(String text, String read) {
    assertEquals(read, shown(bom("bom.csv", text.replace(';', '\n') + "\n")));
  }

  @Test
  void a_strange_header_over_parts_some_of_which_have_no_place_is_no_part() {
    KitReading reading =
        bom(
            "bom.csv",
            "Kennung,Bauteilname,Preis,Laden\nR1,10k,1,north\nC1,100n,2,north\nQ1,BC547,9,south\n"
                + ",lamp holder,80,south\nAnhang,,,\nD1,1N4148,3,north\n");
    assertEquals(
        "[1 [R1] 10k, 1 [C1] 100n, 1 [Q1] BC547, 1 [] lamp holder, 1 [D1] 1N4148]", shown(reading));
    assertTrue(!says(reading, Kind.COLUMN_GUESSED, "\"Preis\""), "a price is no type");
  }

  // --- lines of a list that stand like parts

  @Test
  void names_without_a_number_in_a_list_with_bullets_are_parts_and_said() {
    KitReading reading =
        bom("bom.txt", "POTS\n- R1 10k\n- R2 1M\n- C1 10n\n- VOLUME B100K\n- TONE A5K\n");
    assertEquals(
        "[1 [R1] 10k, 1 [R2] 1M, 1 [C1] 10n, 1 [VOLUME] B100K, 1 [TONE] A5K]", shown(reading));
    assertTrue(says(reading, Kind.COLUMN_GUESSED, "VOLUME, TONE were taken for names of parts"));
  }

  @Test
  void what_stands_behind_a_wide_gap_is_no_value() {
    KitReading reading =
        bom("bom.txt", "R1   330    0207\nR22  10k    0207\nC1   100n\nRXD  red LED\n");
    assertEquals("[1 [R1] 330, 1 [R22] 10k, 1 [C1] 100n, 1 [RXD] red LED]", shown(reading));
    assertEquals("0207", items(reading).get(0).partType().packageName());
  }

  @Test
  void parts_without_a_place_in_a_counted_list_are_kept() {
    assertEquals(
        "[1 [R1] 10k, 2 [C1, C2] 1n, 1 [Q1] ZX9012, 4 [] lamp holder]",
        shown(bom("bom.txt", "1x R1 = 10k\n2x C1, C2 = 1n\n1x Q1 = ZX9012\n4x lamp holder\n")));
  }

  @Test
  void designators_in_brackets_head_a_line_and_a_torn_one_is_refused_with_its_line() {
    KitReading reading =
        bom(
            "bom.txt",
            "* (R1, R2) Resistor 10k\n* (R3 - 4x) Resistor 4k7\n* (C1) Capacitor 1n\n* (Q1) ZX9012\n");
    assertEquals("[2 [R1, R2] Resistor 10k, 1 [C1] Capacitor 1n, 1 [Q1] ZX9012]", shown(reading));
    assertEquals(
        List.of(2),
        of(reading, Kind.DESIGNATOR_UNREADABLE).stream().map(one -> one.place().line()).toList());
  }

  @Test
  void a_heading_of_two_parts_over_a_list_without_a_header_is_no_part() {
    KitReading reading =
        bom(
            "bom.txt",
            "Resistors   (all 1% metal film)\n33R   R7,R8,R21\n560R  R6,R33\n1k2   R9\n");
    assertEquals("[3 [R7, R8, R21] 33R, 2 [R6, R33] 560R, 1 [R9] 1k2]", shown(reading));
  }

  // --- parts above a header that comes again

  @Test
  void a_name_without_a_number_above_the_surer_header_is_not_lost() {
    KitReading reading =
        bom(
            "bom.csv",
            "Item,Qty,Part,Value,Notes\nK1,1,relay,5 V,\nPSU_A,1,converter,12 V,\n"
                + "Ref,Qty,Part,Value,Function\nR1,1,resistor,10k,gate\nC1,1,disc,1n,\n");
    assertEquals(
        List.of("[K1]", "[PSU_A]", "[R1]", "[C1]"),
        items(reading).stream().map(item -> item.designators().toString()).toList());
  }

  // --- columns of blanks

  @Test
  void a_rule_of_dots_and_tabs_in_a_row_leave_the_columns_where_they_are() {
    KitReading reading =
        bom(
            "bom.txt",
            "Qty Value    Package  Parts          Description\n"
                + "................................................\n"
                + "1   27R      DIN0207  R1             RESISTOR, film\n"
                + "3   100n     disc     C102, C11, C3  CAPACITOR, disc\n"
                + "4   10k\t     DIN0207  R2, R3, R4, R5 RESISTOR, film\n");
    assertEquals("[1 [R1] 27R, 3 [C102, C11, C3] 100n, 4 [R2, R3, R4, R5] 10k]", shown(reading));
    assertEquals(List.of(), of(reading, Kind.QUANTITY_DISAGREES));
    assertEquals(List.of(), of(reading, Kind.ROW_LENGTH));
  }

  /** A blank to some, a sign to others. */
  @Test
  void a_control_character_behind_a_name_is_dropped() {
    KitReading reading =
        KitTables.read("placements.txt", "\"C1\u001d \"disc\" \"10mm\" \"20mm\" \"T\"\n".repeat(2));
    assertTrue(reading.faults() > 0);
  }

  // --- signs between the cells

  @ParameterizedTest
  @ValueSource(strings = {"^", " ! ", "~", " / ", " : ", "§", " > "})
  void a_sign_that_stands_between_all_cells_parts_them(String sign) {
    String text = "Ref|Qty|Value|Package\nR1, R2|2|10k|0207\nC1|1|100n/50V|disc\n";
    KitReading reading = bom("bom.txt", text.replace("|", sign));
    assertEquals("[2 [R1, R2] 10k, 1 [C1] 100n/50V]", shown(reading));
    assertEquals("disc", items(reading).get(1).partType().packageName());
  }

  // --- kinds

  @ParameterizedTest
  @CsvSource({
    "J9, LED, PinHeader_1x02, '', PIN_HEADER",
    "J9, LED, '', '', LED",
    "R1, 100, 0207, Generic Resistor Package, RESISTOR",
    "GND, PAD, 3.17, THROUGH-HOLE PAD, BOARD_FEATURE",
    "X1, '', W237, SCREW CLAMP, SCREW_TERMINAL",
    "IC1, 8-pin, DIL08, IC socket, SOCKET",
    "IC1, NE555, DIL08, timer with IC socket, INTEGRATED_CIRCUIT",
    "U3, ICソケット 16pin, '', '', SOCKET",
    "P1, header 1x2 (to the battery holder), '', '', PIN_HEADER",
  })
  void what_a_part_is_may_stand_in_its_package_or_description(
      String designator, String value, String pack, String words, PartKind kind) {
    String text = "Ref;Value;Package;Description\n%s;%s;%s;%s\n";
    KitReading reading = bom("bom.csv", text.formatted(designator, value, pack, words));
    assertEquals(kind, items(reading).get(0).partType().kind());
  }

  @ParameterizedTest
  @ValueSource(strings = {"> R1-R3, R5", ">  R1-R3, R5", "• R1-R3, R5", "► R1-R3, R5"})
  void a_sign_that_leads_the_eye_to_some_rows_is_no_word(String cell) {
    KitReading reading = bom("bom.csv", "Ref,Value\n\"" + cell + "\",10k\nC1,1n\n");
    assertEquals("[4 [R1, R2, R3, R5] 10k, 1 [C1] 1n]", shown(reading));
  }

  @Test
  void a_remark_where_designators_stand_is_no_name() {
    KitReading reading = bom("bom.csv", "Ref,Value\nC1,1n\n(optional),10u\n");
    assertEquals("[1 [C1] 1n, 1 [] 10u]", shown(reading));
    assertTrue(says(reading, Kind.OPTIONAL_PART, "optional"), reading.problems().toString());
  }

  @Test
  void a_kind_behind_the_designator_says_what_the_part_is() {
    KitReading reading =
        bom(
            "bom.txt",
            "Bauteil\tWert\nR1 Widerstand\t390\nC1 Kondensator\t100n\nT1 Transistor\tBC547\n");
    assertEquals("[1 [R1] 390, 1 [C1] 100n, 1 [T1] BC547]", shown(reading));
    assertTrue(says(reading, Kind.COLUMN_GUESSED, "was read as R1 and words about it"));
    assertEquals(
        List.of(),
        items(bom("bom.csv", "Part,Value\nR1 capacitor,390\nR2,1k\n")).get(0).designators(),
        "another kind than its letter tells");
  }

  @ParameterizedTest
  @CsvSource({"2x 470 µF, true", "2 × 4k7, true", "470 µF 2x, false", "2x10k pot, false"})
  void a_count_before_the_value_is_held_against_the_designators(String value, boolean said) {
    String ref = value.contains("k7") ? "R1" : value.contains("pot") ? "RV1" : "C1";
    KitReading reading = bom("bom.csv", "Ref,Value\n" + ref + "," + value + "\nR9,1k\n");
    assertEquals(
        said,
        says(reading, Kind.QUANTITY_DISAGREES, "the quantity is 2, but one designator is named"));
  }

  @Test
  void without_a_header_a_name_in_a_library_is_a_package() {
    KitReading reading =
        bom(
            "bom.txt",
            "R1\t10k\tResistor_SMD:R_0805\nC1\t100n\tCapacitor_SMD:C_0603\n"
                + "U1\tBX12\tPackage_DIP:DIP-14\n");
    assertEquals("Package_DIP:DIP-14", items(reading).get(2).partType().packageName());
  }

  @Test
  void packages_are_told_under_any_word_where_no_column_is_headed_so() {
    KitReading reading =
        bom(
            "bom.csv",
            "Designator,Value,Name\nR1,10k,R_Axial_DIN0207\nC1,1n,C_Disc_D5.0mm\nU1,LM358,DIP-8\n");
    assertEquals(
        List.of("R_Axial_DIN0207", "C_Disc_D5.0mm", "DIP-8"),
        items(reading).stream().map(item -> item.partType().packageName()).toList());
    assertTrue(says(reading, Kind.COLUMN_GUESSED, "by its cells it was taken for package"));
  }

  /** Names of which most have no number, beside angles that look like designators. */
  @Test
  void a_column_of_turns_is_none_of_designators() {
    KitReading reading =
        bom(
            "bom.csv",
            "Part,Value,Package,Orientation\nBELL,2p,HDR,R90\nC1,100n,disc,R0\nLAMP-PIN,2p,HDR,R180\n"
                + "PULLUP,,1X02,R0\nR1,10k,0207,R270\nDRIVER-IC,AB12,DIP-8,R90\n");
    assertEquals(
        List.of("[BELL]", "[C1]", "[LAMP-PIN]", "[PULLUP]", "[R1]", "[DRIVER-IC]"),
        items(reading).stream().map(item -> item.designators().toString()).toList());
  }

  @Test
  void the_number_of_a_sheet_may_stand_before_the_designators() {
    KitReading reading =
        bom(
            "bom.txt",
            "Part     Value   Device        Package  Sheet\n\n"
                + "0.C0     22uF    CPOL-EUE1.5-5 E1.5-5   1\n0.C1     100nF   C-EU050       C050     1\n"
                + "2.R0     1k      R-EU_0207     0207/7   1\n2.R1     10k     R-EU_0207     0207/7   1\n"
                + "IC1      BX232   BX232         DIL16    1\n");
    assertEquals(
        "[1 [0.C0] 22uF, 1 [0.C1] 100nF, 1 [2.R0] 1k, 1 [2.R1] 10k, 1 [IC1] BX232]",
        shown(reading));
    assertEquals(PartKind.RESISTOR, items(reading).get(3).partType().kind());
  }

  @Test
  void a_chinese_header_may_name_a_column_by_either_word() {
    KitReading reading =
        bom("bom.txt", "位号\t数量\t参数或型号\t封装\nR1\t1\t10k\t0207\nU1\t1\tLM358\tDIP-8\n");
    assertEquals("[1 [R1] 10k, 1 [U1] LM358]", shown(reading));
  }

  @Test
  void the_same_word_in_all_rows_is_no_part_type() {
    KitReading reading =
        bom(
            "bom.csv",
            "Reference,Value,Type\nR1,10k,Component\nU1,LM358,Component\nQ1,BC547,Component\n");
    assertEquals(
        List.of("", "LM358", "BC547"),
        items(reading).stream().map(item -> item.partType().typeNumber()).toList());
  }

  @Test
  void a_table_with_other_columns_may_follow_in_the_same_file() {
    KitReading reading =
        bom(
            "bom.csv",
            "Ref,Value,Package\nR1,10k,0207\n,,\nName,Type,Note\nJ1,plug,to the motor\n");
    assertEquals(2, items(reading).size(), shown(reading));
    assertEquals(PartKind.CONNECTOR, items(reading).get(1).partType().kind());
    assertEquals("", items(reading).get(1).partType().packageName());
  }

  @ParameterizedTest
  @CsvSource({"275V X class, 275", "X2 275 VAC, 275", "25V DC, 25", "25 V / 35 V, ''", "X2, ''"})
  void a_rated_voltage_may_stand_among_words(String cell, String volts) {
    KitReading reading = bom("bom.csv", "Ref,Value,Voltage\nC1,100n," + cell + "\nC2,1n,50V\n");
    assertEquals(
        volts,
        items(reading)
            .get(0)
            .partType()
            .ratedVoltage()
            .map(rated -> rated.amount().toPlainString())
            .orElse(""));
  }

  // --- rows that would be lost

  @Test
  void a_row_whose_tabs_became_blanks_is_said_and_prose_is_not() {
    KitReading reading =
        bom(
            "bom.txt",
            "Ref\tQty\tValue\tMaker\nR1\t1\t10k\tAB\nIC7 1 8-pin socket ABC8 AB\nC1\t1\t1n\tAB\n"
                + "R1 is the hot one\n");
    assertEquals("[1 [R1] 10k, 1 [C1] 1n]", shown(reading));
    assertEquals(
        List.of(3),
        of(reading, Kind.ROW_LENGTH).stream().map(said -> said.place().line()).toList());
  }

  @Test
  void a_heading_of_what_is_not_fitted_below_two_columns_is_no_part() {
    KitReading reading = bom("bom.csv", "Part,Value\nR1,1k\nR2,10k\nDNP,\nC1,1n\n");
    assertEquals("[1 [R1] 1k, 1 [R2] 10k, 1 [C1] 1n]", shown(reading));
    assertEquals(List.of(true, true, false), items(reading).stream().map(Item::isFitted).toList());
  }

  @ParameterizedTest
  @CsvSource({
    "'R1-R4: 4', R1-R4",
    "'D1-D8 (not D5)', D5",
    "'R1-R4 except R3', R3",
    "'see R1-R4', R1-R4"
  })
  void a_range_among_words_is_not_lost(String cell, String named) {
    KitReading reading = bom("bom.csv", "Ref,Value\n\"" + cell + "\",10k\nC1,1n\n");
    assertTrue(
        says(reading, Kind.DESIGNATOR_UNREADABLE, "though " + named + " stands in it"),
        reading.problems().toString());
  }

  @Test
  void signs_without_width_are_dropped() {
    assertEquals(
        "[2 [R1, R2] 10k]", shown(bom("bom.csv", "Ref,Value\n\"R1\u200b, \u200bR2\",1\u00ad0k\n")));
  }

  @Test
  void type_numbers_head_no_lines_of_a_list() {
    KitReading reading = bom("bom.txt", "1x MCP602 op-amp\n1x UF4007 diode\n2x LM358 op-amp\n");
    assertEquals("[1 [] MCP602 op-amp, 1 [] UF4007 diode, 2 [] LM358 op-amp]", shown(reading));
    assertTrue(says(reading, Kind.HEADER_NOT_FOUND, "no line names parts on the board"));
  }

  @Test
  void a_name_beside_the_value_is_the_type() {
    KitReading reading =
        bom("bom.csv", "RefDes,Name,Value,Quantity\nQ1,ZX9012,,1\nJ1,Screw Terminal 10P,,1\n");
    assertEquals("ZX9012", items(reading).get(0).partType().typeNumber());
    assertEquals(PartKind.SCREW_TERMINAL, items(reading).get(1).partType().kind());
  }

  @ParameterizedTest
  @CsvSource({
    "RTC, clock module with battery, MODULE",
    "DC_IN, DC jack with internal switch, CONNECTOR",
    "K1, socket for relay, SOCKET",
  })
  void what_a_part_comes_with_is_not_what_it_is(String designator, String words, PartKind kind) {
    KitReading reading =
        bom("bom.csv", "Ref;Value;Description\n" + designator + ";;" + words + "\n");
    assertEquals(kind, items(reading).get(0).partType().kind());
  }

  @Test
  void the_column_with_measures_is_the_value_below_a_table_without_names() {
    KitReading reading =
        bom(
            "bom.md",
            "| | | | |\n|---|---|---|---|\n| XCB104K | Alder | 100nF,25V | C1 C2 |\n"
                + "| XRB472J | Alder | 4k7 | R1 |\n| ZZ9 | Birch | op-amp | U1 |\n");
    assertEquals("[2 [C1, C2] 100nF,25V, 1 [R1] 4k7, 1 [U1] op-amp]", shown(reading));
    assertEquals("XRB472J", items(reading).get(1).partType().typeNumber());
    assertTrue(!says(reading, Kind.COLUMN_GUESSED, "\"---\""), reading.problems().toString());
  }

  @Test
  void tables_one_below_the_other_are_each_read_by_their_own_header() {
    KitReading reading =
        bom(
            "bom.md",
            "## Resistors\n\n| Quantity | References (1/4 W) | Value | Comments |\n"
                + "|---|---|---|---|\n| 1 | R1 | 75R | gain 330 |\n| 2 | R2, R3 | 180R | limit |\n\n"
                + "## Capacitors\n\n| Quantity | References | Type | Value | Comments |\n"
                + "|---|---|---|---|---|\n| 1 | C1 | film | 10n | timing |\n");
    assertEquals("[1 [R1] 75R, 2 [R2, R3] 180R, 1 [C1] 10n]", shown(reading));
    assertTrue(says(reading, Kind.ROW_IGNORED, "the header stands here again"));
  }

  @Test
  void a_second_header_may_have_words_that_nobody_knows() {
    KitReading reading =
        bom(
            "bom.csv",
            "Item,Qty,Value,Notes\nU1,1,NE555,timer\n\nRef,Qty,Purpose,Value\nR1,2,bleeder,47k\n"
                + "F1,1,supply,2A\n");
    assertEquals("[1 [U1] NE555, 2 [R1] 47k, 1 [F1] 2A]", shown(reading));
  }

  @Test
  void colons_part_cells_where_they_part_all_lines_alike() {
    assertEquals(
        "[2 [C1, C2] 100nF, 3 [R1, R2, R3] 10k]",
        shown(
            bom(
                "bom.txt",
                "refdes:device:value:footprint:qty\nC1,C2:CAPACITOR:100nF:RAD5:2\n"
                    + "R1,R2,R3:RESISTOR:10k:AXIAL:3\n")));
  }

  @Test
  void colons_in_prose_part_nothing() {
    assertEquals(
        List.of(), SignRows.of("Board 3: the driver: rev B\nnote: R1 is 10k\nC1: 100n, film\n"));
  }

  @Test
  void dots_that_lead_the_eye_are_blanks() {
    assertEquals(
        "[1 [R1] 10k, 2 [R2, R3] 4k7, 1 [IC1] NE555]",
        shown(
            bom(
                "bom.txt",
                "R1 ............ 10k ............ metal film\n"
                    + "R2,R3 ......... 4k7 ............ carbon\nIC1 ........... NE555\n")));
  }

  @Test
  void bars_in_the_header_alone_part_no_cells() {
    KitReading reading =
        bom(
            "bom.txt",
            "| Value                | Qty  | Ref            | P/N\n"
                + "======================================================\nCapacitors\n"
                + "| 100 nF                3      C2, C3, C4\n| 4.7 uF                1      C1\n\n"
                + "Connectors\n| TRS jack              1      J1                AB-3120\n"
                + "| pin header, 4 pins    1      J3\n| battery holder        1      BT1\n");
    assertEquals(
        "[3 [C2, C3, C4] 100 nF, 1 [C1] 4.7 uF, 1 [J1] TRS jack, 1 [J3] pin header, 4 pins,"
            + " 1 [BT1] battery holder]",
        shown(reading));
  }

  @Test
  void a_row_that_does_not_stand_below_the_header_is_said_to_be_lost() {
    KitReading reading =
        bom(
            "bom.txt",
            "| Value                | Qty  | Ref            | P/N\n"
                + "======================================================\nCapacitors\n"
                + "| 100 nF                3      C2, C3, C4\n\n"
                + "Connectors\n| TRS jack              1      J1               AB-3120\n");
    assertEquals("[3 [C2, C3, C4] 100 nF]", shown(reading));
    assertEquals(
        List.of(7),
        of(reading, Kind.ROW_LENGTH).stream().map(said -> said.place().line()).toList());
  }

  @Test
  void of_designators_over_several_columns_none_are_lost_without_a_header() {
    KitReading reading =
        bom("bom.csv", "resistor,R1,R2,R3\nresistor,R4,R5,R6\ncapacitor,C1,C2,C3\n");
    assertTrue(
        items(reading).stream().mapToInt(item -> item.designators().size()).sum() == 9
            || says(reading, Kind.COLUMN_AMBIGUOUS, "both name parts"),
        reading.problems().toString());
  }

  @Test
  void a_part_beside_another_below_one_header_is_said_to_need_a_row() {
    KitReading reading = bom("bom.csv", "Ref,Value\nR1,10k,R2,4k7\nR3,1k,R4,2k2\n");
    assertEquals(
        List.of(2, 3),
        of(reading, Kind.ROW_LENGTH).stream()
            .filter(said -> said.remedy().startsWith("give each part a row of its own"))
            .map(said -> said.place().line())
            .toList());
  }

  @Test
  void all_designators_of_joined_ranges_are_counted() {
    KitReading reading = bom("bom.csv", "Ref,Value\nR1-R3 & R7,10k\n");
    assertEquals("[4 [R1, R2, R3, R7] 10k]", shown(reading));
    assertTrue(says(reading, Kind.COLUMN_GUESSED, "was read as 4 designators"));
  }

  @Test
  void a_part_of_value_none_counts_as_fitted_with_a_caution() {
    KitReading reading = bom("bom.csv", "Ref,Value,Qty\nR1,10k,1\nR2,None,1\nC1,100n,1\n");
    assertEquals(
        List.of(3),
        of(reading, Kind.OPTIONAL_PART).stream().map(said -> said.place().line()).toList());
  }

  @Test
  void designators_alone_below_a_numbered_line_between_blanks_belong_to_it() {
    KitReading reading =
        bom(
            "bom.txt",
            "Item  Qty  Ref des.        Part no.     Description          Package\n"
                + "1     1    IC1             ZZ-100       Bell timer           DIP-8\n"
                + "2     5    C1,C2,C3,       ZZ-101       CAP .10UF 16V CER    0603\n"
                + "           C10,\n           C11\n"
                + "3     2    R1,R2           ZZ-102-OF-A-LONG-NAME   RES 2.2K OHM 1%   0603\n");
    assertEquals(
        List.of(1, 5, 2), items(reading).stream().map(Item::quantity).toList(), shown(reading));
    assertEquals("[C1, C2, C3, C10, C11]", items(reading).get(1).designators().toString());
    assertEquals(
        List.of("100 nF", "2.2 kΩ"),
        items(reading).stream()
            .flatMap(item -> item.partType().value().stream())
            .map(Object::toString)
            .toList());
  }

  @Test
  void notes_below_a_heading_of_their_own_are_no_part() {
    KitReading reading =
        bom("bom.csv", "Ref,Value,Qty\nR1,10k,1\nC1,100n,1\nNotes:,see the bell,\n");
    assertEquals("[1 [R1] 10k, 1 [C1] 100n]", shown(reading));
  }

  @Test
  void a_bulleted_list_between_slashes_is_refused() {
    KitReading reading =
        bom(
            "bom.txt",
            "# bell shield\n\n- LED1 - LED3   / LED 3 mm   / 0.25   / 3   / 0.75\n"
                + "- R9 - R11      / SMD 220    / 0.10   / 3   / 0.30\n"
                + "- R1 - R8       / SMD 10K    / 0.10   / 8   / 0.80\n");
    assertTrue(
        reading.problems().stream().anyMatch(said -> said.severity() == Severity.FAULT),
        shown(reading));
  }

  @Test
  void turkish_headers_name_their_columns() {
    KitReading reading =
        bom(
            "bom.csv",
            "Ref;İşlev;Değer;Adet;Kılıf;Açıklama\nR1,R2;zil;22 kΩ;2;DIN0207;\nC1;zil;100 nF;1;;film\n");
    assertEquals(
        List.of(2, 1), items(reading).stream().map(Item::quantity).toList(), shown(reading));
    assertTrue(
        of(reading, Kind.COLUMN_GUESSED).isEmpty(), of(reading, Kind.COLUMN_GUESSED).toString());
  }

  @Test
  void no_unit_puts_a_part_a_metre_from_the_origin() {
    KitReading reading =
        bom("placements.csv", "Ref,X,Y,Rot,Side\nU1,102.5,-100.1,0,top\nU2,104,-88,90,top\n");
    assertEquals("U1 102.5 -100.1 0.0 TOP", placed(reading, 0));
  }

  @Test
  void a_suppliers_ref_column_leaves_no_doubt_of_the_designators() {
    KitReading reading =
        bom(
            "bom.csv",
            "Designator;Value;Quantity;Supplier;ref\nR1,R2;10k;2;;\nC1;10u;1;Kemet;T491A106\n"
                + "F1;500mA;1;Bourns;MF-NSMF050\nU1;LM358;1;TI;LM358\n");
    assertEquals(List.of(), of(reading, Kind.COLUMN_AMBIGUOUS));
    assertEquals(4, items(reading).size());
  }

  /** Rows that are numbered and counted have columns of numbers, as x and y would be. */
  @Test
  void a_bom_with_columns_of_numbers_is_no_placement_list() {
    KitReading reading =
        bom(
            "bom.csv",
            "No.\tQuantity\tComment\tDesignator\tFootprint\tValue\tMaker Part\n"
                + "1\t2\t100nF\tC2,C7\tC0603\t100nF\tAB104K\n"
                + "2\t3\tCD31\tQ1,Q2,Q3\tTO-220\t\tCD31\n"
                + "3\t1\t2.2uH\tL1\tL1210\t2.2uH\tEF22\n"
                + "4\t1\t100\tR4\tR0603\t100\tGH100\n");
    assertEquals(
        "[2 [C2, C7] 100nF, 3 [Q1, Q2, Q3] CD31, 1 [L1] 2.2uH, 1 [R4] 100]", shown(reading));
    assertTrue(reading.kit().boards().get(0).placements().isEmpty());
    assertTrue(of(reading, Kind.CELL_UNREADABLE).isEmpty(), reading.problems().toString());
  }

  /** Pieces of a pack are no quantity of the board; those of a variant may well be. */
  @ParameterizedTest
  @CsvSource({"'50,25,100', 0", "'2,2,1', 1"})
  void of_two_quantities_the_one_that_counts_the_designators_is_meant(String pieces, int asked) {
    String[] others = pieces.split(",");
    KitReading reading =
        bom(
            "bom.csv",
            "Ref,Value,Qty,Price,Pieces\n"
                + ("\"R1,R2\",1k,2,0.1," + others[0] + "\n")
                + ("\"C1,C2\",1n,2,0.1," + others[1] + "\n")
                + ("\"D1,D2\",1N4148,2,0.1," + others[2] + "\n"));
    assertEquals(asked, of(reading, Kind.COLUMN_AMBIGUOUS).size(), reading.problems().toString());
  }

  /** Makers' numbers of semiconductors have letters; a number to order by tells nothing at all. */
  @ParameterizedTest
  @CsvSource({
    "D1, M7, C95812, M7",
    "U1, AB27511, 595-AB27511, AB27511",
    "Q1, driver, PN3904TA, PN3904TA",
    "Q1, 2N3904, PN3904TA, 2N3904",
    "U2, timer, C95812, C95812",
    "L1, 10uH, 744040180, 744040180",
  })
  void a_number_to_order_by_is_no_type_number(String ref, String value, String order, String type) {
    KitReading reading =
        bom("bom.csv", "Ref,Value,Supplier Part\n" + ref + "," + value + "," + order + "\n");
    assertEquals(type, items(reading).get(0).partType().typeNumber());
  }

  @Test
  void the_model_of_a_simulator_names_the_type() {
    KitReading reading = bom("bom.csv", "Ref,Value\nD1,D1N4004\nQ1,Q2N2222A\n");
    assertEquals("1N4004", items(reading).get(0).partType().typeNumber());
    assertEquals("2N2222A", items(reading).get(1).partType().typeNumber());
  }

  @ParameterizedTest
  @CsvSource({"330 1206, 330 Ω", "4.7 (0805), 4.7 Ω", "1206, ''", "330 kit, ''"})
  void a_number_before_the_size_of_a_chip_is_a_value(String description, String value) {
    KitReading reading = bom("bom.csv", "Ref,Qty,Description\nR1,1," + description + "\n");
    assertEquals(value, items(reading).get(0).partType().value().map(Object::toString).orElse(""));
  }

  @Test
  void what_is_only_optional_is_not_asked_for_a_value() {
    KitReading reading = bom("bom.csv", "Ref,Value\nR1,optional\nR2,1k\n");
    assertEquals(1, of(reading, Kind.OPTIONAL_PART).size());
    assertTrue(of(reading, Kind.VALUE_NOT_UNDERSTOOD).isEmpty());
  }

  /** Words in capitals may be names, those of an accessory hardly. */
  @Test
  void words_in_capitals_that_name_no_part_are_said() {
    String bom = "Ref,Value\nR1,1k\nR2,2k\nHOLD RUN,toggle\nSide Knobs,red\n";
    assertTrue(says(bom("bom.csv", bom), Kind.COLUMN_GUESSED, "taken for words"));
    String knobs = bom.replace("HOLD RUN", "Left Knobs");
    assertTrue(of(bom("bom.csv", knobs), Kind.COLUMN_GUESSED).isEmpty());
  }

  /** The symbol that the drawing has for a part is no type number beside that of the part. */
  @ParameterizedTest
  @CsvSource({
    "1N4148, 1N4933, 1N4148",
    "MAX31855, MAX6675, MAX31855",
    "27C256/512, IC-EDIT_DIL28, 27C256/512",
    "knob, AB123, AB123"
  })
  void a_value_that_is_a_type_number_outdoes_the_symbol(String value, String device, String type) {
    KitReading reading =
        bom(
            "bom.csv",
            "Part,Value,Device,Package\nZZ1," + value + "," + device + ",DO41\nR1,1k,R-EU,0207\n");
    assertEquals(type, items(reading).get(0).partType().typeNumber());
  }

  /** Rows that were numbered before some were taken out. */
  @Test
  void numbers_that_only_rise_count_no_parts() {
    KitReading reading =
        bom(
            "bom.csv",
            "#;Label;Value\n1;C1, C2;10n\n3;D3;1N4148\n4;R1, R3;1R\n9;R4;10k\n12;R5;1k\n");
    assertEquals(
        "[2 [C1, C2] 10n, 1 [D3] 1N4148, 2 [R1, R3] 1R, 1 [R4] 10k, 1 [R5] 1k]", shown(reading));
    assertTrue(of(reading, Kind.QUANTITY_DISAGREES).isEmpty());
  }

  /** Kinds and values in columns of their own. */
  @Test
  void a_column_of_kinds_says_more_than_letters_that_say_little() {
    List<Item> items =
        items(
            bom(
                "bom.csv",
                "Designator;Component;Value\nK1;Connector;4 positions\nDL1;Diode;Yellow-green\n"
                    + "L5;Resistor;3.3k\nL6;Inductor;10uH\n"));
    assertEquals(
        List.of(PartKind.CONNECTOR, PartKind.LED, PartKind.RESISTOR, PartKind.INDUCTOR),
        items.stream().map(item -> item.partType().kind()).toList());
  }

  /** A maker's number may have the form of a value behind its dash. */
  @Test
  void a_number_behind_letters_and_a_dash_is_no_value() {
    KitReading reading = bom("bom.csv", "Ref,Value\nR1,MFR ABC-19M51\nR2,1k\n");
    assertEquals(1, of(reading, Kind.VALUE_NOT_UNDERSTOOD).size());
  }

  @ParameterizedTest
  @CsvSource({"330, 330 Ω", "0805, ''", "4.7, 4.7 Ω"})
  void a_number_alone_is_the_value_of_a_resistor_without_another(String words, String value) {
    KitReading reading = bom("bom.csv", "Ref,Part Number,Desc\nR1,," + words + "\nR2,,1k\n");
    assertEquals(value, items(reading).get(0).partType().value().map(Object::toString).orElse(""));
  }

  /** What an export writes where the drawing has nothing. */
  @Test
  void unknown_is_no_value() {
    KitReading reading = bom("bom.csv", "refdes,value\nU4,unknown\nR1,1k\n");
    assertTrue(says(reading, Kind.VALUE_NOT_UNDERSTOOD, "nothing says which"));
  }

  @Test
  void headers_of_a_japanese_list_are_usual_ones() {
    KitReading reading =
        bom("bom.csv", "部品,数,記号,フットプリント,メモ\n15kΩ 1/4W,1,R2,DIN0207,\nピンヘッダー 1x4(任意),1,J6,1x4,予備\n");
    assertEquals("DIN0207", items(reading).get(0).partType().packageName());
    assertEquals(1, of(reading, Kind.OPTIONAL_PART).size());
  }

  @Test
  void a_list_that_a_mail_quotes_is_read() {
    assertEquals(
        "[1 [R1] 10k, 2 [C1, C2] 100n]",
        shown(bom("bom.csv", "> Ref,Qty,Value\n> R1,1,10k\n> \"C1,C2\",2,100n\n")));
    assertEquals(
        "[2 [R1, R2] 10k, 1 [C1] 100n, 1 [Q1] BC547]",
        shown(bom("bom.txt", ">> - R1, R2: 10k\n>> - C1: 100n\n>> - Q1: BC547\n")));
  }

  /** The drawing's symbol of a capacitor stands in for no value. */
  @Test
  void a_symbol_beside_an_empty_value_is_none() {
    KitReading reading =
        bom("bom.csv", "Part,Value,Device,Package\nC5,,C-EU025,C025\nR1,1k,R-EU,0207\n");
    assertEquals(1, of(reading, Kind.VALUE_NOT_UNDERSTOOD).size(), reading.problems().toString());
    KitReading numbered = bom("bom.csv", "Ref,Value,MPN\nC5,,AB105K\nR1,1k,CD1\n");
    assertTrue(of(numbered, Kind.VALUE_NOT_UNDERSTOOD).isEmpty());
  }

  /** Kinds have a column beside the descriptions. */
  @Test
  void a_column_of_kinds_tells_beside_a_description() {
    List<Item> items =
        items(
            bom(
                "bom.csv",
                "Ref,Component,Value,Description\nD2,Zener diode,15V 0.5W,BZX55\n"
                    + "D3,LED,Green 5mm,High brightness\nC1,Electrolytic capacitor,1u 63V,coupling\n"));
    assertEquals(
        List.of(PartKind.ZENER_DIODE, PartKind.LED, PartKind.ELECTROLYTIC_CAPACITOR),
        items.stream().map(item -> item.partType().kind()).toList());
  }

  @Test
  void totals_of_sections_and_a_legend_are_no_parts() {
    KitReading reading =
        bom(
            "bom.csv",
            "Ref,Value,Description,Qty,MOQ\nR1,1k,,1,5\nR2,2k,,1,5\n,,RESISTOR SUBTOTAL,,2\n"
                + "C1,1n,,1,5\n,MOQ,least to order,,\n");
    assertEquals("[1 [R1] 1k, 1 [R2] 2k, 1 [C1] 1n]", shown(reading));
    assertEquals(2, of(reading, Kind.ROW_IGNORED).size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"Optional parts:", "Only for the bell:", "Do not populate:"})
  void a_heading_that_blanks_part_is_one_all_the_same(String heading) {
    KitReading reading =
        bom(
            "bom.txt",
            "Part     Value        Package\n\nR1       10k          0207\n\n"
                + heading
                + "\n\nR2       22k          0207\nC1       100n         C050\n\nD1       1N4148       DO35\n");
    assertEquals("[1 [R1] 10k, 1 [R2] 22k, 1 [C1] 100n, 1 [D1] 1N4148]", shown(reading));
    Item.Fitting below = heading.startsWith("Do") ? Item.Fitting.NOT_FITTED : Item.Fitting.OPTIONAL;
    assertEquals(
        List.of(Item.Fitting.FITTED, below, below, Item.Fitting.FITTED),
        items(reading).stream().map(Item::fitting).toList());
  }

  // --- columns that only look like others

  @Test
  void a_folder_of_drawings_called_resistor_makes_no_capacitor_one() {
    KitReading reading =
        bom(
            "bom.csv",
            "Part,Value,Package,Library\nCIN1,1u,C075,resistor\nCF1,15p,C025,resistor\nCS1,u1,C025,resistor\n"
                + "RB1,1k,0204,resistor\nRF1,20k,0204,resistor\nMUTE,,1X03,pinhead\n");
    assertEquals(0, of(reading, Kind.VALUE_NOT_UNDERSTOOD).size(), reading.problems().toString());
    assertEquals(
        List.of(PartKind.CAPACITOR, PartKind.CAPACITOR, PartKind.CAPACITOR),
        items(reading).stream().limit(3).map(item -> item.partType().kind()).toList());
  }

  @Test
  void a_name_beside_a_value_is_no_part_number() {
    KitReading reading =
        bom(
            "bom.csv",
            "Designator,Name,Value,Footprint,Quantity\nR1,R_Gate,10k,0207,1\nQ1,Driver,IRLZ44N,TO-220,1\n"
                + "U1,Main cpu,ATMEGA328P,DIP-28,1\nJ1,Power in,screw terminal,,1\n");
    assertEquals(
        List.of("", "IRLZ44N", "ATMEGA328P", "screw terminal"),
        items(reading).stream().map(item -> item.partType().typeNumber()).toList());
    KitReading typed =
        bom("bom.csv", "Designator,Name,Value,Quantity\nR1,XF25-10K,10k,1\nQ1,IRLZ44N,FET,1\n");
    assertEquals("IRLZ44N", items(typed).get(1).partType().typeNumber(), "numbers they are");
  }

  @Test
  void what_a_dealer_numbers_is_no_part_number_where_only_cells_tell() {
    KitReading reading =
        bom(
            "bom.csv",
            "R1,10k,DIN0207,77123-45\nR2,22k,DIN0207,90881-22\nQ1,BC547,TO-92,41002-99\nR3,1k,DIN0207,11002-99\n");
    assertEquals(
        List.of("", "", "BC547", ""),
        items(reading).stream().map(item -> item.partType().typeNumber()).toList());
    assertEquals("10k", items(reading).get(0).partType().text());
  }

  @Test
  void a_column_of_variants_in_a_placement_list_is_asked() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "variant,designator,part,x mm,y mm,rotation,side\ncommon,R1,10k,1,1,0,top\n"
                + "small,U1,NE555,20,1,0,top\nlarge,U2,LM358,40,1,0,top\n");
    assertTrue(says(reading, Kind.OPTIONAL_PART, "(common, large, small)"));
  }

  @Test
  void a_value_that_few_placements_have_is_read_without_a_header_too() {
    KitReading reading =
        KitTables.read(
            "placements.txt",
            "C1\t25.21\t6.50\t0.00\t\tDISC5\nJ1\t33.82\t18.76\t90.00\t\tSIL4\n"
                + "R1\t2.75\t2.61\t90.00\t\tR0207\nR2\t6.61\t2.61\t90.00\t\tR0207\n"
                + "U1\t6.86\t18.04\t90.00\tATMEGA328P\tDIP28\n");
    assertEquals(
        List.of("", "", "", "", "ATMEGA328P"),
        reading.kit().boards().get(0).placements().stream().map(p -> p.valueText()).toList());
  }

  @Test
  void chinese_words_for_a_model_and_a_note_are_known() {
    KitReading reading =
        KitTables.read(
            "placements.csv", "位号,元件型号,封装,X(mm),Y(mm),旋转角度,层,注释\nQ1,BC547,TO-92,1,2,0,Top,驱动\n");
    assertEquals("BC547", reading.kit().boards().get(0).placements().get(0).valueText());
  }
}
