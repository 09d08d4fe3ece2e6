package lowfirst.intake.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lowfirst.board.Board;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.intake.KitReading;
import lowfirst.intake.KitTables;
import lowfirst.intake.cell.GroupedNumber;
import lowfirst.intake.column.HeaderUnit;
import lowfirst.intake.column.HeaderWords;
import lowfirst.intake.column.Numbers;
import lowfirst.intake.column.PlainNumber;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.Separator;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.column.WholeNumber;
import lowfirst.intake.text.Rows;
import lowfirst.intake.text.TextOfFile;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import lowfirst.problem.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a text becomes rows of cells, and which column holds what. */
class RowsAndHeadersTest {

  // --- quotes

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "=\"R1\",1k | \"R1\",1k",
        "a,=\"R1\";=\"2\" | a,\"R1\";\"2\"",
        "a=\"b | a=\"b",
        "“R1, R2”,1k | \"R1, R2\",1k",
        "„R1“,1k | \"R1\",1k",
        "„R1”,1k | \"R1\",1k",
        "say “no” here | say “no” here",
        "'R1','1k' | \"R1\",\"1k\"",
        "a,'R1' | a,'R1'",
        "'R1',\"1k\" | 'R1',\"1k\"",
        "'it''s' | 'it''s'",
      })
  void odd_quotes_around_cells_are_made_plain_and_others_stay(String text, String plain) {
    assertEquals(
        plain, TextOfFile.of("bom.csv", text.getBytes(StandardCharsets.UTF_8)).plain().text());
  }

  @ParameterizedTest(name = "{0} line ends")
  @CsvSource({"30, 0", "31, 1"})
  void a_quoted_cell_of_more_than_thirty_line_ends_has_lost_its_quote(int lines, int said) {
    String bom = "designators,value\nR1,\"1k" + "\n.".repeat(lines) + "\"\nR2,2k\nR3,3k\n";
    assertEquals(said > 0, count(read(bom), Kind.QUOTE_UNBALANCED) > 0);
    assertTrue(items(bom).stream().anyMatch(item -> item.designators().toString().equals("[R3]")));
  }

  /** Three of five rows, or two of four, are quoted as one cell. */
  @ParameterizedTest(name = "{0} wrapped of {1}")
  @CsvSource({"5, 5, 4", "3, 5, 4", "2, 4, 1"})
  void rows_that_were_quoted_whole_are_read_again_where_most_are(int wrapped, int all, int items) {
    var bom = new StringBuilder();
    for (int i = 0; i < all; i++) {
      String row = i == 0 ? "designators,value,package" : "R" + i + ",1k,DIN0207";
      bom.append(i < wrapped ? "\"" + row + "\"" : row).append('\n');
    }
    assertEquals(
        items,
        Rows.separated("bom.csv", bom.toString(), Separator.COMMA).rows().stream()
                .skip(1)
                .filter(row -> row.cells().size() == 3)
                .count()
            - (wrapped * 2 <= all ? 1 : 0));
  }

  // --- columns of blanks

  @Test
  void columns_that_stand_under_their_headers_are_cut_there_whatever_rule_is_drawn() {
    String bom =
        """
        Designator   Qty   Value        Package
        ------------ ----- ------------ --------
        R1 R2        2     4k7 metal    DIN0207
        C1           1     100n         DISC-5

        that is all
        """;
    List<Item> items = items(bom);
    assertEquals("[R1, R2] 2 DIN0207", shown(items.get(0)));
    assertEquals("[C1] 1 DISC-5", shown(items.get(1)));
    assertEquals(2, items.size());
  }

  @Test
  void columns_one_blank_apart_are_cut_where_every_line_is_blank_but_a_rule() {
    String bom =
        """
        Designator Qty Value Package
        ----------------------------
        R1 R2        2 4k7   DIN0207
        C1           1 100n  DISC-5
        """;
    List<Item> items = items(bom);
    assertEquals("[R1, R2] 2 DIN0207", shown(items.get(0)));
    assertEquals("[C1] 1 DISC-5", shown(items.get(1)));
  }

  private static String shown(Item item) {
    return item.designators() + " " + item.quantity() + " " + item.partType().packageName();
  }

  // --- numbers

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "0, 0",
    "12.5, 12.5",
    "'12,5', 12.5",
    "-.5, -0.5",
    "+7., 7",
    "999999999999999, 999999999999999",
    "0.00000000000001, 1e-14",
  })
  void a_plain_number_is_read_to_its_last_digit(String text, double number) {
    assertEquals(OptionalDouble.of(number), PlainNumber.in(text));
  }

  @ParameterizedTest(name = "\"{0}\"")
  @CsvSource({"''", "-", ".", "1.2.3", "'1,2.3'", "1e5", "1 2", "--1", "1000000000000000", "٤"})
  void what_is_more_than_a_plain_number_is_left_to_others(String text) {
    assertEquals(OptionalDouble.empty(), PlainNumber.in(text));
  }

  @ParameterizedTest
  @CsvSource({
    "5, true",
    "'5,', true",
    "5., true",
    "-.5, true",
    "5e3, true",
    "'', false",
    "., false",
    "5 mm, false",
    "12 in., false",
    "5.., false"
  })
  void a_bare_number_ends_in_a_digit_or_in_its_point(String text, boolean bare) {
    assertEquals(bare, PlainNumber.isBare(text));
  }

  @ParameterizedTest(name = "\"{0}\"")
  @CsvSource({
    "0, 0",
    "09, 9",
    "999999999, 999999999",
    "1000000000, -1",
    "'', -1",
    "-1, -1",
    "1/, -1",
    "1:, -1"
  })
  void a_whole_number_has_nine_digits_at_most_and_nothing_else(String text, int number) {
    assertEquals(number < 0 ? OptionalInt.empty() : OptionalInt.of(number), WholeNumber.in(text));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "'1,234.5', false, true, 1234.5",
    "'1.234,5', true, false, 1234.5",
    "'1.234.567', true, false, 1234567",
    "'1,234', false, false, '1,234'",
    "'12 700 mil', false, false, '12700 mil'",
    "'1 2', false, false, '1 2'",
    "'12,34', false, true, '12,34'",
  })
  void digits_in_groups_are_joined_where_the_sign_groups(
      String text, boolean point, boolean comma, String joined) {
    assertEquals(joined, GroupedNumber.without(text, point, comma));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "X (mm), mm, X",
    "Mid X [mil], mil, Mid X",
    "PosX_inch, inch, PosX",
    "X\", inch, X",
    "Width in Inches, inch, Width in",
    "Height (Millimetres), mm, Height",
    "R (Ω), Ω, R",
    "Rotation deg, °, Rotation",
    "Origin, '', Origin",
    "mm, '', mm",
  })
  void a_header_carries_its_unit_set_apart(String header, String unit, String without) {
    assertEquals(unit, HeaderUnit.of(header).orElse(""));
    assertEquals(without, HeaderUnit.without(header));
  }

  @ParameterizedTest
  @CsvSource({
    "2.54, 2.54",
    "150, 150",
    "0.1, 0.1",
    "0.004, 0",
    "-0.001, 0",
    "1e3, 1000",
    "2.545, 2.54"
  })
  void a_length_in_a_message_has_two_decimals_at_most(double number, String plain) {
    assertEquals(plain, Numbers.plain(number));
  }

  // --- columns

  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource({
    "#, #",
    "' # ', #",
    "#pcs, pcs",
    "Part #, part#",
    "Ref. Des., refdes",
    "Größe, große",
    "'', ''",
    "'-', ''"
  })
  void a_header_is_compared_without_case_signs_and_accents(String header, String key) {
    assertEquals(key, HeaderWords.key(header));
  }

  @Test
  void a_column_may_be_told_by_name_or_number_and_a_wrong_one_is_said() {
    String bom = "ref,value,odd name\nR1,1k,2k\nR2,3k,4k\n";
    assertEquals(List.of("2 kΩ", "4 kΩ"), values("bom.value = Odd-Name", bom));
    assertEquals(List.of("2 kΩ", "4 kΩ"), values("bom.value = 3", bom));
    KitReading wrong = KitTables.read("columns.properties", "bom.value = 4\n", "bom.csv", bom);
    assertEquals(1, count(wrong, Kind.COLUMN_MISSING), () -> KitTables.problems(wrong) + "");
    KitReading none = KitTables.read("columns.properties", "bom.value = none\n", "bom.csv", bom);
    assertEquals(0, count(none, Kind.COLUMN_MISSING));
  }

  @Test
  void what_is_told_of_a_column_bars_every_guess() {
    String strange = "this,that,other\nR1,1k,2k\nR2,3k,4k\nR3,5k,6k\n";
    assertEquals(List.of("2 kΩ", "4 kΩ", "6 kΩ"), values("bom.value = Other", strange));
    assertEquals(List.of("2 kΩ", "4 kΩ", "6 kΩ"), values("bom.value = 3", strange));
    for (String wrong : List.of("4", "0", "else")) {
      KitReading reading =
          KitTables.read("columns.properties", "bom.value = " + wrong, "bom.csv", strange);
      assertEquals(1, count(reading, Kind.COLUMN_MISSING), wrong);
    }
  }

  @Test
  void the_last_column_of_a_table_without_header_may_be_told_by_its_number() {
    assertEquals(
        List.of("2 kΩ", "4 kΩ", "6 kΩ"), values("bom.value = 3", "R1,1k,2k\nR2,3k,4k\nR3,5k,6k\n"));
  }

  private static List<String> values(String map, String bom) {
    return KitTables.read("columns.properties", map + "\n", "bom.csv", bom)
        .kit()
        .boards()
        .get(0)
        .items()
        .stream()
        .map(item -> item.partType().value().orElseThrow().toString())
        .toList();
  }

  @Test
  void without_a_header_a_column_that_numbers_the_rows_is_no_quantity() {
    String bom =
        "1,R1,1k,DIN0207,1\n2,\"R2, R3\",2k,DIN0207,2\n3,C1,100n,DISC,1\n4,C2,10n,DISC,1\n5,D1,1N4148,DO-35,1\n";
    KitReading reading = read(bom);
    assertEquals(
        List.of(1, 2, 1, 1, 1),
        reading.kit().boards().get(0).items().stream().map(Item::quantity).toList());
    assertTrue(
        KitTables.problems(reading).stream()
            .anyMatch(
                text -> text.startsWith("bom.csv:1, column 5 (1)") && text.contains("quantity")),
        () -> KitTables.problems(reading).toString());
  }

  @Test
  void a_column_that_numbers_the_rows_is_no_quantity_where_none_is_written_either() {
    String bom = "1,R1,1k,DIN0207\n2,R2,2k,DIN0207\n3,R3,3k,DIN0207\n4,C1,1n,DISC\n5,C2,2n,DISC\n";
    assertEquals(List.of(1, 1, 1, 1, 1), items(bom).stream().map(Item::quantity).toList());
    assertEquals(0, count(read(bom), Kind.QUANTITY_DISAGREES));
  }

  /** A package that only the long row has may as well be words of its value. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "C3 8 60.5 270 100n X7R D5P5, 100n X7R | D5P5, 1",
    "C3 8 60.5 270 100n 50 V D5P5, 100n 50 V | D5P5, 1",
    "C3 8 60.5 270 100n D5P5, 100n | D5P5, 0",
    "C3 8 60.5 270 100n D7P5 late, 100n | D7P5, 0",
  })
  void a_value_of_several_words_between_blanks_ends_before_a_known_package(
      String row, String told, int joined) {
    KitReading reading =
        KitTables.read(
            "placements.txt",
            "R1 12.5 20.5 90 1k A0207\nR2 30 25.5 0 1k A0207\nC1 50 31.2 180 220n D5P5\n"
                + row
                + "\n");
    Placement last = reading.kit().boards().get(0).placements().get(3);
    assertEquals(told, last.valueText() + " | " + last.packageText());
    assertEquals(
        joined,
        reading.problems().stream().filter(p -> p.message().contains("as one cell of")).count());
  }

  @Test
  void without_a_header_coordinates_and_the_angle_are_told_by_their_numbers() {
    Board board =
        KitTables.read(
                "placements.csv",
                "R1,12.5,20,90,top,1k\nR2,30,25.5,0,top,1k\nC1,50,31,180,bottom,100n\nD1,8,60,270,top,1N4148\n")
            .kit()
            .boards()
            .get(0);
    assertEquals(
        List.of(
            "R1 12.5 20.0 90.0 top",
            "R2 30.0 25.5 0.0 top",
            "C1 50.0 31.0 180.0 bottom",
            "D1 8.0 60.0 270.0 top"),
        board.placements().stream()
            .map(
                p ->
                    p.designator()
                        + " "
                        + p.xMillimetres()
                        + " "
                        + p.yMillimetres()
                        + " "
                        + p.rotationDegrees()
                        + " "
                        + p.side().words())
            .toList());
  }

  @Test
  void of_two_headers_the_one_whose_cells_count_the_designators_is_the_quantity() {
    String bom = "ref,qty,value,quantity\n\"R1, R2\",20,1k,2\n\"C1, C2, C3\",30,1n,3\n";
    assertEquals(List.of(2, 3), items(bom).stream().map(Item::quantity).toList());
  }

  private static List<Item> items(String bom) {
    return read(bom).kit().boards().get(0).items();
  }

  private static KitReading read(String bom) {
    return KitTables.read("bom.csv", bom);
  }

  private static long count(KitReading reading, Kind kind) {
    return reading.problems().stream().filter(problem -> problem.kind() == kind).count();
  }

  // --- placement lists without a header, and with another one

  /** The one text of a row is a value if some resistor's, capacitor's or coil's is a number. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "R1 10k, U1 LM358, value",
    "C1 0.1uF, U1 LM358, value",
    "C1 4u7, U1 LM358, value",
    "L1 10, U1 LM358, value",
    "R1 RES400, U1 LM358, package",
    "R1 501-BY, U1 LM358, package",
    "R1 10mm, U1 LM358, package",
    "J1 POWER, U1 LM358, value",
    "J1 POWER, U1 TO92, package",
  })
  void a_lone_text_beside_positions_is_a_value_or_a_package(
      String first, String second, String taken) {
    String list =
        "%s %s 0 %s%n%s %s 90 %s%n"
            .formatted(
                first.split(" ")[0],
                "10.5 20.5",
                first.split(" ")[1],
                second.split(" ")[0],
                "60.5 70.5",
                second.split(" ")[1]);
    assertEquals(
        List.of("designator", "X", "Y", "rotation", taken),
        KitTables.read("placements.txt", list).understood().get(0).columns().stream()
            .map(Understanding.UnderstoodColumn::meaning)
            .toList());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "'UNITS = MILS\n', mil",
    "'UUNITS = MICRONS\n', µm",
    "'Placement list\n\nunits: inches\n', inch",
    "'Placement list of 1 board\nunits: mm\n', mm",
  })
  void lines_above_rows_without_a_header_state_the_unit(String above, String unit) {
    KitReading reading =
        KitTables.read("placements.txt", above + "R1 1.5 2.5 0 X1\nR2 3.5 4.5 0 X1\n");
    assertTrue(
        reading
            .understood()
            .get(0)
            .notes()
            .contains("coordinates in " + unit + ", as a line beside" + " the rows says"),
        reading.understood().toString());
    assertEquals(2, reading.kit().boards().get(0).placements().size());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "'# X,Y in mils.  rotation in degrees.', mil",
    "'# X, Y are in inches', inch",
    "'## Unit = mm, Angle = deg.', mm",
  })
  void a_comment_below_the_header_states_the_unit(String comment, String unit) {
    String list =
        "# RefDes, Value, X, Y, rotation, top/bottom\n%s\n# ----------\nR1,\"1k\",1.5,2.5,0,top\n"
            .formatted(comment);
    assertTrue(
        KitTables.read("placements.csv", list)
            .understood()
            .get(0)
            .notes()
            .contains("coordinates in " + unit + ", as a line beside the rows says"));
  }

  @Test
  void a_mark_behind_the_angle_is_found_under_a_header_that_lacks_it() {
    KitReading reading =
        KitTables.read(
            "placements.txt",
            "REF X Y ROT PACKAGE\nR1 10.5 20.5 0 RES\nC1 30.5 20.5 90 m CAP\nC2 50.5 20.5 90 CAP\n");
    assertEquals(
        List.of("R1 top RES", "C1 bottom CAP", "C2 top CAP"),
        reading.kit().boards().get(0).placements().stream()
            .map(one -> one.designator() + " " + one.side().words() + " " + one.packageText())
            .toList());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "Ref,X1,Y1,X2,Y2,Rotation,Side | 1 | X or Y | x",
        "Ref,Mid X,Height,Rotation,Side | 1 | Y | y",
        "Number of the part,Mid X,Mid Y,Rotation,Side | 1 | designator | designator",
        "a list,of parts | 1 | |",
      })
  void of_a_header_that_lacks_a_column_the_missing_one_is_named(
      String header, int line, String missing, String key) {
    int cells = header.split(",").length;
    String row = "lamp one" + ",1.5".repeat(Math.max(0, cells - 2)) + ",top\n";
    Problem said =
        KitTables.read("placements.csv", header + "\n" + row + row).problems().stream()
            .filter(problem -> problem.kind() == Kind.HEADER_NOT_FOUND)
            .findFirst()
            .orElseThrow();
    assertEquals(line, said.place().line());
    assertEquals(
        missing == null
            ? "from here on no line could be read as a header with: designator, X, Y"
            : "this looks like a header, but nothing in it names " + missing,
        said.message());
    assertTrue(
        said.remedy().contains(key == null ? "=1 for the first" : "placements." + key + "=HEADER"));
  }

  @Test
  void a_word_above_rows_without_a_header_is_a_title() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "[PARTS]\nR1,10.5,20.5,0,TOP\nR2,30.5,20.5,0,TOP\nR3,50.5,20.5,0,TOP\n"
                + "R4,70.5,20.5,0,BOT\n[MARKS]\nF1,1,1\n");
    assertEquals(5, reading.kit().boards().get(0).placements().size());
    assertEquals(0, count(reading, Kind.ROW_LENGTH));
    assertEquals(2, count(reading, Kind.ROW_IGNORED));
  }

  @Test
  void rows_below_another_header_without_coordinates_are_not_read() {
    KitReading reading =
        KitTables.read(
            "placements.csv",
            "ref,x mm,y mm,side\nR1,1,2,top\nref,side,value\nD1,top,1N4148\nD2,top,1N4148\n"
                + "ref,y mm,x mm,side\nC1,8,9,bottom\n");
    assertEquals(
        List.of("R1 1.0 2.0", "C1 9.0 8.0"),
        reading.kit().boards().get(0).placements().stream()
            .map(one -> one.designator() + " " + one.xMillimetres() + " " + one.yMillimetres())
            .toList());
    List<Problem> said =
        reading.problems().stream()
            .filter(problem -> problem.kind().severity() == Severity.FAULT)
            .toList();
    assertEquals(
        List.of("another header stands here, without X and Y; the rows below it were not read"),
        said.stream().map(Problem::message).toList());
    assertEquals(3, said.get(0).place().line());
    assertEquals("name those columns as in line 1", said.get(0).remedy());
  }

  /** The first line of the text and 29 after it may be one cell. */
  @ParameterizedTest(name = "{0} line ends, then {1}")
  @CsvSource({
    "1, '\"', true",
    "29, '\"', true",
    "30, '\"', false",
    "1, '\" ', true",
    "1, '\"x', false",
  })
  void a_quoted_text_between_blanks_may_run_over_lines(int lines, String end, boolean joined) {
    String list =
        "REF X Y ROT NOTE\nR1 10.5 20.5 0 \"seen"
            + "\n.".repeat(lines)
            + end
            + "\nR2 30.5 20.5 0 ok\nR3 40.5 20.5 0 \"5 mm\"\n";
    List<Row> rows = BlankRows.of(TableKind.PLACEMENTS, list, Separator.BLANKS);
    assertEquals(joined ? 4 : 4 + lines, rows.size());
    assertEquals(2 + lines + 1, rows.get(rows.size() - 2).line());
    assertEquals("5 mm", rows.get(rows.size() - 1).cell(4));
  }

  // --- no header that anybody knows

  private static List<String> parts(String bom) {
    return items(bom).stream()
        .map(i -> i.quantity() + " " + i.designators() + " " + i.partType().text())
        .toList();
  }

  @Test
  void a_strange_header_may_stand_below_lines_about_the_file() {
    String bom =
        "* Parts of relay.x / 23.10.2018\n*\n* Nr\tSort\tValue\tWhere\n*\n"
            + "1\tC1\t22pF\ttop\n2\tR1\t470\ttop\n3\tQ1\tBC547\ttop\n";
    assertEquals(List.of("1 [C1] 22pF", "1 [R1] 470", "1 [Q1] BC547"), parts(bom));
  }

  @Test
  void a_row_with_a_designator_is_no_header() {
    String bom = "U1,LM358,dual\nR1,10k,1\nR2,22k,1\nC1,100n,1\nC2,47n,1\nC3,10n,1\n";
    assertEquals("[U1]", items(bom).get(0).designators().toString());
    assertEquals(6, items(bom).size());
  }

  /** 1206 is a size, and 470 a value; 10 and 20 are enough for ten boards. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "'R1,68ohm,1206\nR2,470ohm,1206\nR3,1k,1206\n', '1 [R1] 68ohm'",
    "'R1,470\nR2,220\nR3,1000\n', '1 [R1] 470'",
    "'R1,1k,10\n\"R2 R3\",22k,20\nC1,1n,10\n', '10 [R1] 1k'",
    "'R1,1k,51\n\"R2 R3\",22k,102\nC1,1n,51\n', '1 [R1] 1k'",
    "'R1,1k,50\n\"R2 R3\",22k,100\nC1,1n,50\n', '50 [R1] 1k'",
    "'R1,1k,10\n\"R2 R3\",22k,20\nC1,1n,7\n', '1 [R1] 1k'"
  })
  void without_a_header_only_what_counts_designators_is_a_quantity(String bom, String first) {
    assertEquals(first, parts(bom.replace("\\n", "\n")).get(0));
  }

  @Test
  void a_row_with_nothing_in_the_columns_that_are_read_is_said_and_is_no_part() {
    String bom = "Ref,Value,Shop\n,,A-Parts\nR1,10k,A 1\nR2,22k,A 2\n";
    assertEquals(List.of("1 [R1] 10k", "1 [R2] 22k"), parts(bom));
    assertEquals(1, count(read(bom), Kind.ROW_IGNORED));
  }

  /** Where tabs only bring the columns below each other, their number tells nothing. */
  @Test
  void runs_of_tabs_part_two_cells() {
    String bom =
        "QTY\tPART NUMBER\t\tDESCRIPTION\t\tLOCATION\n"
            + "2x\tDILB32P-223TLF\tDIP SOCKET\t\tU2, U5\n"
            + "1x\t208-5\t\t\tDIP SWITCH 5 POS\tSW1\n"
            + "8x\tK104K15X7RF\t\t.1UF CERAMIC CAPACITORS\tC1-C8\n";
    assertEquals(
        List.of(
            "2 [U2, U5] DIP SOCKET",
            "1 [SW1] DIP SWITCH 5 POS",
            "8 [C1, C2, C3, C4, C5, C6, C7, C8] .1UF CERAMIC CAPACITORS"),
        parts(bom));
  }

  @Test
  void tabs_that_part_cells_may_leave_one_empty() {
    String bom = "Qty\tValue\tCase\tRef\n1\t\t\tJ1\n2\t10k\t0207\tR1, R2\n1\t1n\t\tC1\n";
    assertEquals(List.of("1 [J1] ", "2 [R1, R2] 10k", "1 [C1] 1n"), parts(bom));
  }

  /** No two rows are of a length here, three of five there; parts stand in half of the lines. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "'- LED1 - LED8 / 3MM BL / 8\n- R9 - R16 / 220 / 0.1 / 8\n- J1 - J16 / SL 1X36G / 1\n/ PLUG SW / 16\n"
        + "- S1 - S8 / KEY / 0.2 / 8 / 1\nShop\n- PCB 20 /10x10cm\n6.038', 0",
    "'R1 10k 0207 x\nR2 22k 0207\nR3 1k 0207\nC1 1n\nC2 2n2 disc', 5"
  })
  void words_between_blanks_are_no_table_where_rows_have_any_length(String bom, int items) {
    assertEquals(items, items(bom.replace("\\n", "\n")).size());
  }

  @Test
  void where_few_rows_name_a_part_nothing_is_guessed() {
    String notes =
        "Panel\nuse pins, 3 options:\nempty, open\nlast, one\nQ1 or so, R23\nmore\nand more\n";
    assertEquals(List.of(), items(notes));
  }

  @Test
  void a_package_alone_is_no_part() {
    String bom = "Qty,Ref,Value,Case,Shop\n1,R1,1k,0207,A\n,,,https://b/1,B 1\n1,R2,2k,0207,C\n";
    assertEquals(List.of("1 [R1] 1k", "1 [R2] 2k"), parts(bom));
  }
}
