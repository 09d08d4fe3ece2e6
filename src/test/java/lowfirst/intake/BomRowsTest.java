package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.text.TextOfFile;
import lowfirst.part.BodyOutline;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import lowfirst.quantity.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a row of a BOM says: whether it is fitted, how many, how high, or that it is no part. */
class BomRowsTest {

  // --- a value that stands above

  private static List<String> parts(String bom) {
    return items(bom).stream()
        .map(item -> item.quantity() + " " + item.designators() + " " + item.partType().text())
        .toList();
  }

  @Test
  void below_a_merged_cell_the_value_above_counts_and_is_said() {
    List<String> merged = List.of("3 [R1, R2, R3] 10k", "2 [C1, C2] 100n", "1 [R4] 22k");
    String bare = "Value,Ref\n10k,R1\n,R2\n,R3\n100n,C1\n,C2\n22k,R4\n";
    assertEquals(merged, parts(bare));
    assertEquals(List.of(3, 4, 6), lines(bare, Kind.COLUMN_GUESSED));
    String counted =
        "Value,Case,Qty,Ref\n10k,0207,1,R1\n,,1,R2\n,0207,1,R3\n100n,disc,1,C1\n,,1,C2\n22k,,1,R4\n";
    assertEquals(merged, parts(counted));
    assertEquals(0, count(counted, Kind.QUANTITY_DISAGREES));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // one only, behind the designators, of other letters, another package, a value twice
    "'Value,Ref\n10k,R1\n,R2\n22k,R3\n', 3",
    "'Ref,Value\nR1,10k\nR2,\nR3,\n', 3 4",
    "'Value,Ref\n10k,R1\n,C1\n,C2\n', 3 4",
    "'Value,Ref,Case\n10k,R1,0207\n,R2,0414\n,R3,0414\n', 3 4",
    "'Value,Ref\n10k,R1\n,R2\n,R3\n10k,R4\n', 3 4",
    "'Value,Ref\n,R1\n,R2\n10k,R4\n', 2 3",
    "'Value,Ref,Case\n10k,R1,\n,R2,\nResistors,,\n,R3,\n', 3 5",
    "'Value,Ref,Qty\n10k,R1,1\n,R2,\n,R3,\n', 3 4"
  })
  void where_a_value_may_as_well_be_forgotten_it_is_missing(String bom, String missing) {
    String text = bom.replace("\\n", "\n");
    assertEquals(
        missing,
        lines(text, Kind.VALUE_NOT_UNDERSTOOD).stream()
            .map(line -> line + "")
            .collect(Collectors.joining(" ")));
    assertTrue(items(text).stream().allMatch(item -> item.designators().size() == 1));
  }

  @Test
  void a_part_of_which_nothing_is_said_is_a_problem_where_types_differ() {
    String bom = "ref,qty,value\nQ1,1,BC547\nQ2,1,\nJ1,1,\nJ2,1,x\n";
    assertEquals(List.of(3), lines(bom, Kind.VALUE_NOT_UNDERSTOOD));
  }

  /** 4,7k without quotes falls into two cells; it must not become 4 ohm. */
  @Test
  void a_value_that_its_decimal_comma_parts_is_put_together_again() {
    String bom = "ref,qty,value,case\nR1,1,4,7k,0207\nR2,1,1k,0207\nC1,1,2,2 µF,disc\n";
    assertEquals(
        List.of("4.7 kΩ", "1 kΩ", "2.2 µF"),
        items(bom).stream().map(item -> item.partType().value().orElseThrow().toString()).toList());
    assertEquals("0207", items(bom).get(0).partType().packageName());
    assertEquals(List.of(2, 4), lines(bom, Kind.COLUMN_GUESSED));
    assertEquals(List.of(2), lines("ref,value\nR1,4,7\nR2,1k\n", Kind.ROW_LENGTH));
  }

  @Test
  void one_table_may_hold_parts_and_positions() {
    String table = "ref,qty,value,x (mm),y (mm)\nR1,1,1k,10,20\nC1,1,1n,30,20\n";
    var board = KitTables.read("parts.csv", table).kit().boards().get(0);
    assertEquals(2, board.items().size());
    assertEquals(2, board.placements().size());
    var placed = KitTables.read("parts.csv", table.replace("qty", "note")).kit().boards().get(0);
    assertEquals(0, placed.bomLines().size(), "a list of positions often has values, too");
  }

  // --- fitted or not

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "fitted, yes, FITTED",
    "fitted, X, FITTED",
    "fitted, '', FITTED",
    "fitted, perhaps, FITTED",
    "fitted, no, NOT_FITTED",
    "fitted, '-', NOT_FITTED",
    "fitted, not fitted, NOT_FITTED",
    "fitted, optional, OPTIONAL",
    "dnp, '', FITTED",
    "dnp, no, FITTED",
    "dnp, x, NOT_FITTED",
    "dnp, DNP, NOT_FITTED",
    "description, do not fit, NOT_FITTED",
    "description, (DNF), NOT_FITTED",
    "description, donation box, FITTED",
    "description, leave empty, NOT_FITTED",
    "description, entfällt, NOT_FITTED",
    "description, omitted, NOT_FITTED",
    "description, 'Not needed, comes with the board', NOT_FITTED",
    "description, 'metal film, heatsink not needed', FITTED",
    "description, only if needed, OPTIONAL",
    "part type, not mounted, NOT_FITTED",
    "description, 10k *DNP*, NOT_FITTED",
    "description, 10k_DNP, NOT_FITTED",
    "description, DNPX, FITTED",
    "package, 0207 DNP, NOT_FITTED",
    "description, nie montować, NOT_FITTED",
    "description, не устанавливать, NOT_FITTED",
    "description, 未実装, NOT_FITTED",
    "description, 不贴, NOT_FITTED",
    "description, takılı değil, NOT_FITTED",
    "description, no montado, NOT_FITTED",
    "description, não montar, NOT_FITTED",
    "description, non installato, NOT_FITTED",
    "description, non câblé, NOT_FITTED",
    "description, niet geplaatst, NOT_FITTED",
    "description, nicht montiert, NOT_FITTED",
    "description, neosazeno, NOT_FITTED",
    "description, ej monterad, NOT_FITTED",
    "description, ikke monteret, NOT_FITTED",
    "description, ei asenneta, NOT_FITTED",
    "description, nem beültetett, NOT_FITTED",
    "description, nu se montează, NOT_FITTED",
    "description, не встановлювати, NOT_FITTED",
    "description, 실장 안함, NOT_FITTED",
    "description, not loaded, NOT_FITTED",
    "description, monte edilir, FITTED",
    "description, osazeno, FITTED",
    "tolerance, DNP, NOT_FITTED",
    "height, not fitted, NOT_FITTED",
    "fitted, nie, NOT_FITTED",
    "Einbau, nein, NOT_FITTED",
    "verbaut, ja, FITTED",
    "fitted, да, FITTED",
    "instalar, não, NOT_FITTED",
    "実装, 無, NOT_FITTED",
  })
  void words_say_whether_a_part_is_fitted(String column, String text, Item.Fitting fitting) {
    assertEquals(
        fitting, item("ref,qty,value," + column + "\nR1,1,1k," + text + "\nR2,1,2k,\n").fitting());
  }

  private static List<String> ambiguous(String bom) {
    return KitTables.read("bom.csv", bom).problems().stream()
        .filter(problem -> problem.kind() == Kind.COLUMN_AMBIGUOUS)
        .map(problem -> problem.place().line() + " " + problem.message())
        .toList();
  }

  @Test
  void a_lone_column_of_which_every_cell_speaks_of_fitting_is_taken_and_said() {
    String bom = "ref,value,assembly\nR1,1k,Fitted\nR2,2k,Not Fitted\nR3,3k,\nR4,4k,nie montować\n";
    assertEquals(
        List.of(true, false, true, false), items(bom).stream().map(Item::isFitted).toList());
    assertEquals(1, count(bom, Kind.COLUMN_GUESSED));
    assertEquals(List.of(), ambiguous(bom));
  }

  @Test
  void yes_may_be_a_word_that_no_has_too() {
    assertEquals(
        List.of(true, false),
        items("Referans,Adet,Değer,Durum\nR1,1,47k,takılı\nR2,1,100R,takılı değil\n").stream()
            .map(Item::isFitted)
            .toList());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Reference,Antal,Værdi",
        "Viittaus,Määrä,Arvo",
        "Jelölés,Darab,Érték",
        "Referință,Cantitate,Valoare",
        "Позначення,Кількість,Номінал"
      })
  void headers_of_more_languages_name_their_columns(String header) {
    String bom = header + "\nR1,1,2k7\nR2,1,68k\n";
    assertEquals("2k7", items(bom).get(0).partType().text());
    assertEquals(0, count(bom, Kind.COLUMN_GUESSED));
  }

  /** In a language that nobody here knows, one word may still deny the other. */
  @Test
  void a_word_and_the_same_with_another_may_say_what_is_fitted() {
    String bom = "ref,qty,value,cyflwr\nR1,1,1k,gosodwyd\nR2,1,2k,heb ei gosodwyd\n";
    assertEquals(1, count(bom, Kind.OPTIONAL_PART));
    assertEquals(0, count(bom.replace("heb ei gosodwyd", "arall"), Kind.OPTIONAL_PART));
  }

  @Test
  void words_of_other_languages_in_a_column_that_is_not_read_are_said() {
    assertEquals(
        List.of(
            "3 this may say that the part is not fitted, but nothing is read from the column"
                + " \"Durum\""),
        ambiguous("ref,qty,value,Durum\nR1,1,1k,\nR2,1,2k,takılı değil\nR3,1,2k,acil\n"));
  }

  /** A part that one variant lacks must not be soldered because nobody asked which is built. */
  @Test
  void of_variants_none_is_taken_and_the_builder_is_asked() {
    String bom =
        "ref,value,small,large\nR1,1k,Fitted,Fitted\nR2,2k,Not Fitted,Fitted\nR3,3k,Fitted,DNP\n";
    assertEquals(
        List.of(
            "3 this may say that the part is not fitted, but nothing is read from the columns"
                + " \"small\", \"large\""),
        ambiguous(bom));
    KitReading told =
        KitReader.read(
            KitTables.files("bom.csv", bom), new ColumnMap(Map.of("bom.fitted", "large")));
    assertEquals(
        List.of(true, true, false),
        told.kit().boards().get(0).items().stream().map(Item::isFitted).toList());
  }

  @Test
  void a_remark_that_leaves_a_part_out_is_not_passed_over_among_others() {
    String bom =
        "ref,value,description,info\nR1,1k,film,see page 2\nR2,2k,film,do not fit\nR3,3k,film,ok\n";
    assertEquals(
        List.of(
            "3 this may say that the part is not fitted, but nothing is read from the column"
                + " \"info\""),
        ambiguous(bom));
    assertEquals(List.of(), ambiguous(bom.replace("do not fit", "no")));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"0, NOT_FITTED", "1, FITTED", "0x, NOT_FITTED"})
  void a_quantity_of_nought_is_not_fitted_and_disagrees_with_nothing(
      String quantity, Item.Fitting fitting) {
    String bom = "ref,qty,value\nR1," + quantity + ",1k\nR2,1,2k\n";
    assertEquals(fitting, item(bom).fitting());
    assertEquals(0, count(bom, Kind.QUANTITY_DISAGREES));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"NC, RESISTOR, false", "n.c., RESISTOR, false", "NC, SWITCH, true"})
  void not_connected_leaves_out_a_plain_part_and_no_contact(
      String value, String kind, boolean fitted) {
    String ref = kind.equals("SWITCH") ? "SW1" : "R1";
    assertEquals(fitted, item("ref,qty,value\n" + ref + ",1," + value + "\nR2,1,2k\n").isFitted());
  }

  @Test
  void the_rows_below_a_heading_are_not_fitted_unless_a_column_says_so() {
    String bom = "ref,qty,value,fitted\nR1,1,1k,\nNot fitted,,,\nR2,1,2k,\nR3,1,3k,yes\n";
    assertEquals(List.of(true, false, true), items(bom).stream().map(Item::isFitted).toList());
    assertEquals(List.of(3), lines(bom, Kind.OPTIONAL_PART), "nothing shows where it ends");
    String last = "ref,qty,value\nR1,1,1k\nR2,1,2k\nNot fitted,,\n";
    assertEquals(List.of(), lines(last, Kind.OPTIONAL_PART), "it heads nothing");
  }

  /** F fitted, N not, O optional, row by row. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Not fitted, COLUMN_GUESSED, FNNF",
    "Do not populate:, COLUMN_GUESSED, FNNF",
    "Nicht bestückt, COLUMN_GUESSED, FNNF",
    "OPTIONAL:, OPTIONAL_PART, FOOF",
    "Optional parts, OPTIONAL_PART, FOOF",
    "Optional for the bell:, OPTIONAL_PART, FOOF",
    "Only for the bell:, OPTIONAL_PART, FOOF",
    "Fitted, '', FFFF",
    "Optional but of great use in wet cellars, '', FFFF"
  })
  void a_heading_over_rows_holds_up_to_the_next_heading_or_blank_row(
      String heading, String kind, String fitted) {
    for (String end : List.of(",,\n", "Clamps,,\n", "\n", ",,\nClamps,,\n")) {
      String bom =
          "ref,qty,value\nR1,1,1k\n%s,,\nR2,1,2k\nR3,1,3k\n%sJ1,1,2-pole\n".formatted(heading, end);
      assertEquals(fitted, fittings(bom), bom);
      assertEquals(
          kind.isEmpty() ? List.of() : List.of(3),
          kind.isEmpty() ? lines(bom, Kind.OPTIONAL_PART) : lines(bom, Kind.valueOf(kind)),
          bom);
    }
  }

  private static String fittings(String bom) {
    return items(bom).stream()
        .map(item -> item.fitting().name().substring(0, 1))
        .collect(Collectors.joining());
  }

  @Test
  void the_end_of_the_table_ends_a_heading_that_is_set_off() {
    String bom = "ref,qty,value\nR1,1,1k\n\nNot fitted,,\n\nR2,1,2k\nR3,1,3k\n";
    assertEquals("FNN", fittings(bom));
    assertEquals(List.of(4), lines(bom, Kind.COLUMN_GUESSED));
    assertEquals(List.of(), lines(bom, Kind.OPTIONAL_PART));
  }

  @Test
  void blank_rows_between_all_others_end_no_heading_and_that_is_asked() {
    String bom = "ref,qty,value\n\nR1,1,1k\n\nOptional,,\n\nR2,1,2k\n\nR3,1,3k\n";
    assertEquals("FOO", fittings(bom));
    assertEquals(List.of(5), lines(bom, Kind.OPTIONAL_PART));
  }

  @Test
  void a_cell_of_several_lines_is_no_blank_row() {
    String bom =
        "ref,qty,value\nR1,1,1k\nNot fitted,,\n\"R2\nR3\",2,2k\nR4,1,3k\n\nR5,1,1k\nR6,1,1k\nR7,1,1k\n";
    assertEquals("FNNFFF", fittings(bom));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "1k or 2k2, OPTIONAL_PART",
    "1k (optional), OPTIONAL_PART",
    "1k, ''",
  })
  void what_a_bom_leaves_open_is_said(String value, String kind) {
    String bom = "ref,qty,value\nR1,1," + value + "\nR2,1,2k\n";
    assertEquals(kind.isEmpty() ? 0 : 1, count(bom, Kind.OPTIONAL_PART));
  }

  @Test
  void what_a_column_says_is_fitted_is_not_left_open() {
    assertEquals(
        0,
        count("ref,qty,value,fitted\nR1,1,1k (optional),yes\nR2,1,2k,yes\n", Kind.OPTIONAL_PART));
  }

  // --- how many, how high

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "2.5, 2.5",
    "0.1 in, 2.54",
    "499.9, 499.9",
    "500, ''",
    "0, ''",
    "-1, ''",
    "high, ''",
    "n/a, ''",
  })
  void a_height_lies_between_nothing_and_half_a_metre(String text, String height) {
    Item item = item("ref,qty,value,height (mm)\nR1,1,1k," + text + "\nR2,1,2k,2.5\n");
    assertEquals(
        height.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(height)),
        item.heightMillimetres());
  }

  @Test
  void a_bare_height_is_in_the_unit_of_its_header() {
    assertEquals(
        OptionalDouble.of(2.54),
        item("ref,qty,value,height (mil)\nR1,1,1k,100\nR2,1,2k,100\n").heightMillimetres());
    assertEquals(
        OptionalDouble.of(2.54),
        item("ref,qty,value,height (mil)\nR1,1,1k,100.\nR2,1,2k,100\n").heightMillimetres());
  }

  @Test
  void a_line_without_designators_is_as_many_as_it_says_and_one_when_it_does_not() {
    List<Item> items = items("ref,qty,value\n,4,M3 screw\nsome wire,,1 m\nR1,1,1k\n");
    assertEquals(List.of(4, 1, 1), items.stream().map(Item::quantity).toList());
    assertEquals("some wire", items.get(1).description());
  }

  @ParameterizedTest(name = "\"{0}\"")
  @CsvSource({
    "'R1, R2', '[R1, R2]', 0",
    "'R1,', '[R1]', 0",
    "'R1,,R2', '[R1, R2]', 0",
    "R1 to R3, '[R1, R2, R3]', 0",
    "R1-R2001, '2001', 1",
    "R1-R2000, '2000', 0",
    "',', '[]', 1",
    "the wire of R7, '[]', 1",
    "the wire, '[]', 0",
  })
  void designators_are_listed_and_what_is_lost_is_said(String cell, String read, int faults) {
    String bom = "ref,value,note\n\"" + cell + "\",1k,x\nC9,1n,y\nC8,2n,z\n";
    int named = item(bom).designators().size();
    assertEquals(
        read.startsWith("[") ? read : faults > 0 ? "0" : read,
        read.startsWith("[") ? item(bom).designators().toString() : named + "");
    assertEquals(faults, count(bom, Kind.DESIGNATOR_UNREADABLE));
  }

  // --- rows that are no parts

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "Total,3, | 1",
        "Grand total:,,3 | 1",
        ",3, | 1",
        "**Sum**,3, | 1",
        "TOT1,1,1k | 0",
        "shipping,1, | 0",
        "Thank you for your order,, | 1",
        "Resistors (2),2, | 1",
        "Resistors (2),3, | 0",
      })
  void a_total_a_heading_or_a_remark_is_no_part(String row, int ignored) {
    String bom = "ref,qty,value\n\"R1, R2\",2,1k\nC1,1,1n\n" + row + "\n";
    assertEquals(ignored, count(bom, Kind.ROW_IGNORED), () -> problems(bom));
    assertEquals(3 - ignored, items(bom).size());
  }

  // --- ratings and values in other columns

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "tolerance, 5 %, ±5 %",
    "tolerance, '±0,5', ±0.5 %",
    "tolerance, close, ''",
    "voltage, 250 V, 250 V",
    "power, 0.25 W, 250 mW",
  })
  void a_rating_may_have_a_column_of_its_own(String column, String text, String read) {
    Item item = item("ref,qty,value," + column + "\nR1,1,1k,\"" + text + "\"\nR2,1,2k,\n");
    var type = item.partType();
    assertEquals(
        read,
        switch (column) {
          case "tolerance" -> type.tolerance().map(Object::toString).orElse("");
          case "voltage" -> type.ratedVoltage().map(Object::toString).orElse("");
          default -> type.ratedPower().map(Object::toString).orElse("");
        });
  }

  @ParameterizedTest
  @CsvSource({
    "C1, 9.8u, capacitor",
    "C1, 9.9u, electrolytic capacitor",
    "C1, 10u, electrolytic capacitor"
  })
  void a_capacitor_of_unknown_kind_is_electrolytic_from_ten_microfarads_on(
      String ref, String value, String kind) {
    assertEquals(
        kind,
        item("ref,qty,value\n" + ref + ",1," + value + "\nR2,1,2k\n").partType().kind().words());
  }

  @Test
  void what_the_bom_lacks_is_taken_from_the_placement_list_and_said() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "ref,qty,value,package\nR1,1,,\nR2,1,2k,DIN0411\n",
            "placements.csv",
            "ref,x mm,y mm,value,package\nR1,1,2,4k7,DIN0207\nR2,50,9,3k,DIN0207\n");
    List<Item> items = reading.kit().boards().get(0).items();
    assertEquals("4.7 kΩ DIN0207", shown(items.get(0)));
    assertEquals("2 kΩ DIN0411", shown(items.get(1)));
    assertTrue(
        reading.problems().stream()
            .anyMatch(p -> p.kind() == Kind.COLUMN_GUESSED && p.place().line() == 0));
  }

  private static String shown(Item item) {
    return item.partType().value().orElseThrow() + " " + item.partType().packageName();
  }

  // --- heights of bodies

  /** A package in the placement list counts where the BOM's tells no height by itself. */
  @ParameterizedTest(name = "{0} in the BOM, {1} placed: {2}")
  @CsvSource({
    "DIN0207, DIN0411, 0207 lying",
    "odd one, DIN0411, 0411 lying",
    "'', DIN0411, 0411 lying",
    "odd one, odder one, 0207 lying",
  })
  void a_body_is_known_by_the_bom_and_else_by_the_placement_list(
      String inBom, String placed, String outline) {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "ref,qty,value,package\nR1,1,1k," + inBom + "\nR2,1,2k,DIN0207\n",
            "placements.csv",
            "ref,x mm,y mm,package\nR1,1,2," + placed + "\nR2,50,9,DIN0207\n");
    assertEquals(
        outline, reading.kit().boards().get(0).outlineOf(Designator.of("R1")).orElseThrow().name());
  }

  @Test
  void the_boms_own_height_stands_even_where_no_body_is_known() {
    KitReading reading =
        KitTables.read("bom.csv", "ref,qty,value,package,height\nZZ1,1,thing,odd one,12\n");
    BodyOutline body = reading.kit().boards().get(0).outlineOf(Designator.of("ZZ1")).orElseThrow();
    assertEquals("odd one 12.0", body.name() + " " + body.seatedHeightMillimetres());
    assertEquals(Source.Origin.KIT, body.source().origin());
  }

  @Test
  void the_remedy_of_several_parts_speaks_of_several() {
    String bom = "ref,value,package\n%s,x,odd one\n";
    assertEquals(
        "measure the part and write its seated height into a height column of the BOM",
        problem(bom.formatted("L1"), Kind.HEIGHT_UNKNOWN).remedy());
    assertEquals(
        "measure the parts and write the seated height of each into a height column of the BOM",
        problem(bom.formatted("L1 L2"), Kind.HEIGHT_UNKNOWN).remedy());
  }

  @ParameterizedTest(name = "{0} parts")
  @CsvSource({"1, 'L1'", "6, 'L1, L2, L3, L4, L5, L6'", "8, 'L1, L2, L3, L4, L5, L6 and 2 more'"})
  void up_to_six_parts_of_unknown_height_are_named(int parts, String named) {
    String refs =
        IntStream.rangeClosed(1, parts).mapToObj(i -> "L" + i).collect(Collectors.joining(","));
    String bom = "ref,qty,value,package\n\"" + refs + "\"," + parts + ",1mH,odd one\n";
    assertEquals(
        "how high " + named + " will stand is not known: \"odd one\" tells no height",
        problem(bom, Kind.HEIGHT_UNKNOWN).message());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"R1, is a", "'R1, R2', are"})
  void surface_mount_parts_are_said_as_one_or_several(String refs, String verb) {
    String bom = "ref,value,package\n\"" + refs + "\",1k,R_0805_2012Metric\n";
    assertTrue(problem(bom, Kind.SURFACE_MOUNT).message().startsWith(refs + " " + verb + " "));
  }

  @Test
  void a_part_without_a_package_says_that_none_is_named() {
    assertTrue(
        problem("ref,qty,value\nL1,1,1mH\nL2,1,1mH\n", Kind.HEIGHT_UNKNOWN)
            .message()
            .endsWith("no package is named"));
  }

  @Test
  void in_a_placement_list_alone_heights_are_asked_for_too() {
    KitReading reading =
        KitTables.read("placements.csv", "ref,x mm,y mm,package\nL1,1,2,odd one\nL2,9,9,odd one\n");
    assertEquals(
        1, reading.problems().stream().filter(p -> p.kind() == Kind.HEIGHT_UNKNOWN).count());
  }

  // --- values in both tables

  @ParameterizedTest(name = "{0} | {1} | {2}")
  @CsvSource({"P-1, P-1, P-9, 0", "P-1, lamp, P-9, 1"})
  void a_bom_of_order_numbers_alone_is_not_held_against_values(
      String one, String other, String placed, int said) {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "ref,qty,value,part type\nU1,1," + one + ",P-1\nU2,1," + other + ",P-1\n",
            "placements.csv",
            "ref,x mm,y mm,value\nU1,1,2," + placed + "\nU2,50,9,lamp\n");
    assertEquals(
        said, reading.problems().stream().filter(p -> p.kind() == Kind.VALUE_DISAGREES).count());
  }

  // --- settings and texts

  @Test
  void what_a_kit_says_of_itself_is_read_and_the_rest_named() {
    KitReading reading =
        KitTables.read(
            "kit.properties",
            "title = Chime\nambient = 50 °C\nmeter = 1 % + 2 of 6000\n"
                + "meter capacitance = 2 % + 5 of 6000\nsigner = Ada\nambiance: cellar\n",
            "bom.csv",
            "ref,qty,value\nR1,1,1k\n");
    var settings = reading.kit().settings();
    assertEquals(
        "Chime 50 °C 1 % + 2 of 6000 2 % + 5 of 6000 Ada",
        String.join(
            " ",
            settings.title(),
            settings.ambient().orElseThrow().quantity().toString(),
            settings.meter(),
            settings.meterCapacitance(),
            settings.signer()));
    assertEquals("kit.properties:2 \"ambient\"", settings.ambient().orElseThrow().source().text());
    assertEquals(
        List.of(
            "kit.properties:6 \"ambiance\": the name \"ambiance\" is none that is known here: not"
                + " used"),
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.COLUMN_NOT_USED)
            .map(problem -> problem.place() + ": " + problem.message())
            .toList());
  }

  @Test
  void a_title_that_is_blank_is_the_kits_name_and_an_odd_temperature_is_said() {
    KitReading reading = KitTables.read("kit.properties", "title =  \nambient = warm\n");
    assertEquals("kit", reading.kit().settings().title());
    assertTrue(reading.kit().settings().ambient().isEmpty());
    assertEquals(
        List.of(2),
        reading.problems().stream()
            .filter(p -> p.kind() == Kind.CELL_UNREADABLE)
            .map(p -> p.place().line())
            .toList());
  }

  /** Two strays in a hundred characters may be; three are no text. */
  @ParameterizedTest(name = "{0} strays")
  @CsvSource({"0, false", "2, false", "3, true"})
  void bytes_that_are_hardly_text_are_refused(int strays, boolean refused) {
    String text = "ref,value\nR1,1k\n" + "\u0001".repeat(strays);
    String whole = text + "#".repeat(100 - text.length());
    assertEquals(
        refused, TextOfFile.of("bom.csv", whole.getBytes(StandardCharsets.UTF_8)).text().isEmpty());
  }

  @Test
  void lost_characters_are_said_once_a_line_and_twenty_times_at_most() {
    String line = "R1,1\ufffd\ufffd\r\n";
    TextOfFile text = TextOfFile.of("bom.csv", line.repeat(25).getBytes(StandardCharsets.UTF_8));
    assertEquals(
        IntStream.rangeClosed(1, 20).boxed().toList(),
        text.problems().stream().map(p -> p.place().line()).toList());
  }

  @ParameterizedTest
  @CsvSource({
    "4.7k&Omega;, 4.7kΩ",
    "&plusmn;1 %, ±1 %",
    "10 &micro;F, 10 µF",
    "4.7k&#937;, 4.7kΩ",
    "4.7k&#x3A9;, 4.7kΩ",
    "4.7k&amp;Omega;, 4.7kΩ",
    "R&amp;D, R&D",
    "&#59;&quot;&#10;, &#59;&quot;&#10;",
    "10 Âµ, 10 µ",
    "2 Ω, 2 Ω"
  })
  void signs_that_an_earlier_program_spelt_out_are_put_back(String saved, String read) {
    TextOfFile text = TextOfFile.of("bom.csv", saved.getBytes(StandardCharsets.UTF_8));
    assertEquals(read, text.text());
    assertEquals(saved.equals(read) ? 0 : 1, text.problems().size());
  }

  /** 20 W is the most that a bare number is believed: 250 would be milliwatts. */
  @ParameterizedTest(name = "{1} below {0}")
  @CsvSource({
    "Power, 1/4, 250 mW",
    "Power, 1/4W, 250 mW",
    "Power, ¼ W, 250 mW",
    "Power, 1½ W, 1.5 W",
    "Power, '1/2 W, wirewound', 500 mW",
    "Power, 0.25, 250 mW",
    "Power, 20, 20 W",
    "Power, 25 W, 25 W",
    "Power, 250, ",
    "Power, 1/0, ",
    "Power (mW), 250, 250 mW",
    "Power [mW], 1 W, 1 W",
    "Power (W), 0.25, 250 mW"
  })
  void a_power_is_read_as_a_fraction_and_in_the_unit_of_its_header(
      String header, String cell, String power) {
    assertEquals(
        Optional.ofNullable(power),
        item("Ref;Qty;Value;" + header + "\nR1;1;1k;" + cell + "\n")
            .partType()
            .ratedPower()
            .map(Object::toString));
  }

  /** 220 is a resistor's value as 220R is, and the words beside it say as much of either. */
  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"220", "220R", "220 Ohm"})
  void ratings_stand_in_the_description_of_a_bare_value_too(String value) {
    var type =
        item("Ref;Qty;Value;Description\nR1;1;" + value + ";metal film 1 % 0.6 W at the gate\n")
            .partType();
    assertEquals(Optional.of("220 Ω"), type.value().map(Object::toString));
    assertEquals(Optional.of("±1 %"), type.tolerance().map(Object::toString));
    assertEquals(Optional.of("600 mW"), type.ratedPower().map(Object::toString));
  }

  /** 0.05 may be 0.05 %, or what a spreadsheet keeps of 5 %. */
  @ParameterizedTest(name = "{1} below {0}")
  @CsvSource({
    "Tol, 5, ±5 %",
    "Tol, 0.5, ±0.5 %",
    "Tol, 0.05, ",
    "Tol, '0,01', ",
    "Tol, 0.05 %, ±0.05 %",
    "Tol (%), 0.1, ±0.1 %",
    "Tol, +80/-20 %, -20/+80 %"
  })
  void a_tolerance_that_may_be_a_share_is_left_open(String header, String cell, String tolerance) {
    assertEquals(
        Optional.ofNullable(tolerance),
        item("Ref;Qty;Value;" + header + "\nR1;1;1k;" + cell + "\n")
            .partType()
            .tolerance()
            .map(Object::toString));
  }

  /** Of screws 1,000 may be one, or a thousand; two designators tell which. */
  @Test
  void a_quantity_that_may_be_a_thousand_is_asked_about_where_nothing_else_tells() {
    String bom = "Ref;Qty;Value\n;1,000;screw\nR1;1,000;1k\n;1,0;knob\n";
    assertEquals(List.of(2), lines(bom, Kind.CELL_UNREADABLE));
  }

  @Test
  void where_blanks_part_the_cells_a_row_of_fewer_cells_is_said() {
    String bom = "Ref Value Package Sheet\nR1 1k 0207 1\nX1 PINHD 1\nR2 2k 0207 1\n";
    assertEquals(List.of(3), lines(bom, Kind.ROW_LENGTH));
  }

  @Test
  void a_page_for_the_web_without_a_table_is_named_as_one() {
    assertTrue(
        problem("<html><div>Ref</div><div>R1</div></html>", Kind.HEADER_NOT_FOUND)
            .message()
            .contains("page for the web"));
  }

  @Test
  void a_column_without_a_header_or_with_another_meaning_is_named_truly() {
    String bom = "Ref,Qty,Value,Sizes,%s\nR1,1,1k,a,\nR2,1,2k,b,DNP\nR3,1,2k,b,\n";
    assertTrue(problems(bom.formatted("")).contains("the column has no header; by its cells"), bom);
    assertTrue(
        problems(bom.formatted("Price"))
            .contains("\"Price\" is no usual header for fitted; by its cells it was taken"),
        bom);
  }

  // --- where a value, or that a part may be left out, stands elsewhere

  private static String value(String bom) {
    return items(bom).stream()
        .map(i -> i.partType().value().map(Object::toString).orElse("-"))
        .collect(Collectors.joining(" "));
  }

  /** A maker's number is none: 4k7 in another's column, 330 where resistors stand. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "R1, 24k, 24 kΩ, ''",
    "R1, 330, 330 Ω, ''",
    "R1, 470ohm PTH, 470 Ω, ''",
    "C1, 100n, 100 nF, ''",
    "R1, 3300, -, 3300",
    "R1, 0805, -, 0805",
    "R1, CF14JT10K0, -, CF14JT10K0",
    "C1, 330, -, 330",
    "R1, 10-30Mohm, -, 10-30Mohm",
    "U1, 24k, -, 24k"
  })
  void a_value_may_stand_where_the_makers_number_belongs(
      String ref, String number, String value, String left) {
    String bom = "Ref,Value,MPN\n%s,part,%s\n".formatted(ref, number);
    assertEquals(value, value(bom));
    assertEquals(left, item(bom).partType().typeNumber());
    if (left.isEmpty()) {
      assertEquals(number, item(bom).partType().text());
    }
  }

  @Test
  void a_value_may_stand_behind_the_designator() {
    String bom = "Qty,Parts,Value,Description\n1,C2(0.1UF),,CAPACITOR\n1,C3,1n,CAPACITOR\n";
    assertEquals("100 nF 1 nF", value(bom));
    assertEquals("0.1UF; CAPACITOR", items(bom).get(0).description());
  }

  /** Ten farads at 25 V would fill a bucket. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "10 F, -, 1",
    "4.7 F 25V, -, 1",
    "99mF, 99000 µF, 0",
    "1F 5.5V, 1 F, 0",
    "1F 6V, 1 F, 0",
    "1F supercap, 1 F, 0",
    "0.1F, -, 1"
  })
  void a_capacitor_of_farads_has_lost_a_sign_unless_it_is_made_for_it(
      String written, String value, int said) {
    String bom = "Ref,Value\nC1,%s\nR1,1k\n".formatted(written);
    assertEquals(value + " 1 kΩ", value(bom));
    assertEquals(said, count(bom, Kind.VALUE_NOT_UNDERSTOOD));
  }

  @Test
  void of_a_part_that_is_left_out_no_value_is_missed() {
    assertEquals(0, count("Ref,Value\nC1,DNP\nR1,1k\n", Kind.VALUE_NOT_UNDERSTOOD));
  }

  @Test
  void a_column_of_how_parts_are_mounted_holds_no_values() {
    String bom = "Ref,Qty,Description,Type\nJ1,1,Power jack,Through-hole\nU1,1,Timer,SMD\n";
    assertEquals(List.of("1 [J1] Power jack", "1 [U1] Timer"), parts(bom));
    String types = "Ref,Qty,Description,Type\nJ1,1,Power jack,DC-5\nU1,1,Timer,NE555\n";
    assertEquals(List.of("1 [J1] DC-5", "1 [U1] NE555"), parts(types));
  }

  @Test
  void a_column_may_say_what_is_optional() {
    String bom = "Identifier,Plain Name,Optional?\nR1,10k,No\nR2,22k,Yes\nR3,1k,\n";
    assertEquals(
        List.of(Item.Fitting.FITTED, Item.Fitting.OPTIONAL, Item.Fitting.FITTED),
        items(bom).stream().map(Item::fitting).toList());
    assertEquals(List.of(3), lines(bom, Kind.OPTIONAL_PART));
    assertEquals("10 kΩ 22 kΩ 1 kΩ", value(bom));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "10k 0.1 % or better, 0",
    "LM358 or similar, 0",
    "LM358 or NE5532, 1",
    "LM358 or MORE5532, 0"
  })
  void better_and_similar_are_no_alternative(String value, int said) {
    assertEquals(said, count("Ref,Value\nU1,%s\nR1,1k\n".formatted(value), Kind.OPTIONAL_PART));
  }

  // --- the same parts listed twice

  private static final String ONE_BY_ONE =
      "Item,Qty,Ref,Value\n,,C1,10n\n,,C2,10n\n,,R1,1k\nTogether\nItem,Qty,Ref,Value\n";

  @Test
  void parts_that_are_listed_again_together_are_read_once() {
    String bom = ONE_BY_ONE + "1,2,\"C1, C2\",10n\n2,1,R1,1k\n";
    assertEquals(List.of("1 [C1] 10n", "1 [C2] 10n", "1 [R1] 1k"), parts(bom));
    assertEquals(List.of(5, 6, 6), lines(bom, Kind.ROW_IGNORED).stream().sorted().toList());
    assertEquals(0, count(bom, Kind.DESIGNATOR_TWICE));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "'1,2,\"C1, C2\",10n\n2,1,R1,2k\n', 3",
    "'1,2,\"C1, C2\",10n\n', 2",
    "'1,2,\"C1, C2\",10n\n2,1,R1,1k\n2,1,R2,1k\n', 3",
    "'1,1,R2,1k\n', 0"
  })
  void others_below_a_second_header_count(String rows, int twice) {
    String bom = ONE_BY_ONE + rows.replace("\\n", "\n");
    assertEquals(twice, count(bom, Kind.DESIGNATOR_TWICE));
    assertEquals(3 + rows.replace("\\n", "\n").lines().count(), items(bom).size());
  }

  private static Item item(String bom) {
    return items(bom).get(0);
  }

  private static List<Item> items(String bom) {
    return KitTables.read("bom.csv", bom).kit().boards().get(0).items();
  }

  private static Problem problem(String bom, Kind kind) {
    return KitTables.read("bom.csv", bom).problems().stream()
        .filter(p -> p.kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  private static List<Integer> lines(String bom, Kind kind) {
    return KitTables.read("bom.csv", bom).problems().stream()
        .filter(p -> p.kind() == kind && p.place().line() > 1)
        .map(p -> p.place().line())
        .toList();
  }

  private static long count(String bom, Kind kind) {
    return KitTables.read("bom.csv", bom).problems().stream().filter(p -> p.kind() == kind).count();
  }

  private static String problems(String bom) {
    return KitTables.problems(KitTables.read("bom.csv", bom)).toString();
  }

  /** Where only the placement list names a body without leads, its height is no question. */
  @Test
  void what_the_list_places_on_the_surface_needs_no_height() {
    String list = "ref,x mm,y mm,package\nL1,1,2,%s\n";
    String bom = "ref,qty,value\nL1,1,1mH\n";
    assertEquals(
        1, heights(KitTables.read("bom.csv", bom, "placements.csv", list.formatted("coil"))));
    assertEquals(
        0, heights(KitTables.read("bom.csv", bom, "placements.csv", list.formatted("1206"))));
  }

  @ParameterizedTest
  @CsvSource({
    "Power/Voltage, 5 W, 35 V, 5 W, 35 V",
    "Voltage/Power, 1/4W, 35V, 250 mW, 35 V",
    "Rated power, 0.5 W, 63 V, 500 mW, 63 V",
    "Voltage, 5, 35, , 35 V",
  })
  void one_column_may_hold_powers_and_voltages_by_their_units(
      String header, String first, String second, String power, String voltage) {
    List<Item> items =
        items("Designator;Value;%s\nR1;4k7;%s\nC1;100n;%s\n".formatted(header, first, second));
    assertEquals(
        Optional.ofNullable(power), items.get(0).partType().ratedPower().map(Object::toString));
    assertEquals(
        Optional.of(voltage), items.get(1).partType().ratedVoltage().map(Object::toString));
    assertEquals(Optional.empty(), items.get(1).partType().ratedPower());
  }

  private static long heights(KitReading reading) {
    return reading.problems().stream().filter(it -> it.kind() == Kind.HEIGHT_UNKNOWN).count();
  }

  /** One column holds whatever limits a part: words, as a description is. */
  @Test
  void a_column_of_ratings_is_read_as_words() {
    List<Item> items = items("Qty;Refs;Part;Rating\n1;R1;470R;1/2W 5%\n1;C1;22u;radial 35 V\n");
    assertEquals("500 mW", items.get(0).partType().ratedPower().orElseThrow().toString());
    assertEquals("±5 %", items.get(0).partType().tolerance().orElseThrow().toString());
    assertEquals("35 V", items.get(1).partType().ratedVoltage().orElseThrow().toString());
  }

  @Test
  void a_column_of_units_stands_behind_bare_numbers() {
    String bom =
        """
        Name,Qty,Value,Unit
        R1,1,4.7,kOhm
        R2,1,2k2,kOhm
        C1,1,100,nF
        L1,1,22,uH
        R3,1,330,pcs
        """;
    assertEquals(
        List.of("4.7 kΩ", "2.2 kΩ", "100 nF", "22 µH", "330 Ω"),
        items(bom).stream().map(it -> it.partType().value().orElseThrow().toString()).toList());
    assertEquals(0, count(bom, Kind.COLUMN_AMBIGUOUS), "nF says nothing of fitting there");
  }

  @Test
  void nc_beside_the_name_of_a_resistor_leaves_it_out_and_of_a_relay_says_how_it_rests() {
    List<Item> items = items("Ref,Qty,Value\nR3 (nc),1,1k\nK1 (NC),1,12V\nR4,1,1k\n");
    assertEquals(List.of(false, true, true), items.stream().map(Item::isFitted).toList());
  }
}
