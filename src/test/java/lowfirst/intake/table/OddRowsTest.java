package lowfirst.intake.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lowfirst.board.Placement;
import lowfirst.intake.KitReading;
import lowfirst.intake.KitTables;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.Header;
import lowfirst.intake.column.HeaderRow;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.workbook.HiddenRows;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows that are no rows of their own: prose, headers again, halves of a row, rules, comments. */
class OddRowsTest {
  private static final Header BOM = header(Column.DESIGNATORS, Column.QUANTITY, Column.VALUE);
  private static final Header PLACED = header(Column.DESIGNATOR, Column.X, Column.Y);

  private static Header header(Column... columns) {
    return new Header(
        0,
        Arrays.stream(columns).map(Column::words).toList(),
        IntStream.range(0, columns.length)
            .mapToObj(i -> new Header.Use(columns[i], i, Header.Basis.HEADER))
            .toList());
  }

  /** A row whose cells a bar parts. */
  private static Row row(String cells) {
    return new Row(7, List.of(cells.split("\\|", -1)));
  }

  private static String shown(KitReading reading) {
    return reading.kit().boards().get(0).items().stream()
        .map(
            item ->
                item.quantity()
                    + " "
                    + item.designators()
                    + " "
                    + item.partType().value().map(Object::toString).orElse("-"))
        .toList()
        .toString();
  }

  private static List<String> said(KitReading reading, Kind kind) {
    return reading.problems().stream()
        .filter(problem -> problem.kind() == kind)
        .map(problem -> problem.place().line() + ": " + problem.message())
        .toList();
  }

  // --- what stands above the header

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Units: mm, mm",
    "Unit = mil, mil",
    "metric (mm), mm",
    "Maßeinheit: mm, mm",
    "unités : mm, mm",
    "unidades: mm, mm",
    "unità: mm, mm",
    "jednotky: mm, mm",
    "Единица измерения: мм, mm",
    "单位：mm, mm",
    "All dimensions are in inches, inch",
    "Coordinates in microns, µm",
    "Units per box: 12, ''",
    "12 mm screws, ''",
    "Community: mm, ''",
    "positions of parts, ''"
  })
  void the_unit_is_stated_in_prose_of_many_languages(String line, String unit) {
    assertEquals(unit, Preamble.unit(List.of(row("List"), row(line))).orElse(""));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Side: Bottom, bottom",
    "layer = F.Cu, f.cu",
    "Layer: top | side: bottom, top",
    "beside: me, ''",
    "Side by side, ''"
  })
  void the_side_of_all_rows_is_what_stands_behind_its_word(String line, String side) {
    assertEquals(side, Preamble.side(List.of(row("List"), row(line))).orElse(""));
  }

  /** A row of numbers, and above it a line that states something: those lines are prose. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Unit: mil/R1|100|200, 1",
    "List/Side: bottom/R1|1.5|-2|0, 2",
    "List/R1|100|200, 0",
    "Unit: mil/R1|100|top, 0",
    "Unit: mil, 0",
    "R1|100|200/Unit: mil, 0"
  })
  void prose_in_front_of_numbers_counts_where_it_states_a_unit_or_side(String text, int lines) {
    List<Row> rows = Arrays.stream(text.split("/")).map(OddRowsTest::row).toList();
    assertEquals(lines, Preamble.before(rows).size());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Page 2 of 3|, true",
    "|Page 2 of 3, true",
    "Page 2 of 3|R1, false",
    "Page 2 of them, false",
    "Bakes 2 pages, false",
    "Part|s 4, true",
    "List 4, false",
    "Kit of R1, false"
  })
  void what_stands_above_the_header_is_known_again_by_its_letters(String line, boolean again) {
    PageHeads heads =
        PageHeads.in(
            List.of(row("Page 1 of 3|"), row("Parts 9"), row("List 9"), row("Kit of|R1|R2")));
    assertEquals(again, heads.have(row(line)));
    assertFalse(PageHeads.in(List.of()).have(row(line)));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"R1|2|1k, true", "R1|two|1k, false", "R1||1k, false", "Board|2|1k, false"})
  void above_a_boms_header_a_part_is_a_designator_and_a_count(String cells, boolean part) {
    assertEquals(part, RowAbove.isPart(TableKind.BOM, BOM, row(cells)));
  }

  /** Where some row is a part, a short word with a count is one, too; by itself it is prose. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "R1|2|1k/Bell|1|brass, 2",
    "Bell|1|brass, 0",
    "R1|2|1k/of brass|1|x, 1",
    "R1|2|1k/Bell|one|brass, 1",
    "R1|2|1k/|1|brass, 1",
    "R1|2|1k/Abcdefghijkl|1|x, 2",
    "R1|2|1k/Abcdefghijklm|1|x, 1"
  })
  void beside_parts_above_the_header_a_named_one_counts(String text, int parts) {
    List<Row> rows = Arrays.stream(text.split("/")).map(OddRowsTest::row).toList();
    assertEquals(parts, RowAbove.parts(TableKind.BOM, BOM, rows).size());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"R1|2|3.5, true", "R1|x|3.5, false", "R1|2|y, false", "Board|2|3.5, false"})
  void above_a_placement_lists_header_it_is_a_designator_and_both_numbers(
      String cells, boolean part) {
    assertEquals(part, RowAbove.isPart(TableKind.PLACEMENTS, PLACED, row(cells)));
    assertFalse(RowAbove.isPart(TableKind.RAILS, PLACED, row(cells)), "our own table has none");
  }

  // --- comments and rules

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "## R1|1k, true, true",
    "# R1|1k, true, true",
    "# R1, true, false",
    "# see R1|1k, true, false",
    "#, true, false",
    "#||, true, false",
    "#|Ref|Value, false, false",
    "#R1|1k, false, true",
    "---, true, false",
    "--, false, false",
    "--|-, true, false",
    "===|:-:|*_+, true, false",
    "---|R1, false, false",
    "|, false, false"
  })
  void comments_and_rules_are_no_rows_and_some_may_be_parts_put_out(
      String cells, boolean comment, boolean part) {
    assertEquals(comment, Comments.are(row(cells)), "comment");
    assertEquals(part, Comments.mayBePart(row(cells)), "part");
  }

  // --- the header again, or more of it

  @Test
  void a_header_again_or_in_another_order_is_no_part() {
    KitReading same = KitTables.read("bom.csv", "Ref,Qty,Value\nR1,1,1k\nRef,Qty,Value\nR2,1,2k\n");
    assertEquals("[1 [R1] 1 kΩ, 1 [R2] 2 kΩ]", shown(same));
    List<String> again = List.of("3: the header stands here again, it was not read as a row");
    assertEquals(again, said(same, Kind.ROW_IGNORED));
    KitReading turned =
        KitTables.read(
            "bom.csv", "Ref,Qty,Value\nR1,1,1k\nQty,Value,Ref\n2,2k,\"R2, R3\"\n1,3k,R4\n");
    assertEquals("[1 [R1] 1 kΩ, 2 [R2, R3] 2 kΩ, 1 [R4] 3 kΩ]", shown(turned));
    assertEquals(again, said(turned, Kind.ROW_IGNORED));
  }

  /**
   * One word alone and a header with a number are rows; so are words that no column is called by,
   * unless the designators' and another's stand among them.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Ref|Qty|Value, true",
    "Value|Ref|Qty, true",
    "Ref||Value, true",
    "Value|Ref, true",
    "|Ref|, false",
    "Value|Qty|Package, false",
    "Value|Ref|nonsense, true",
    "nonsense|Ref|other, false",
    "Value|nonsense|Qty, false",
    "Value|Ref 2|Qty, false"
  })
  void a_header_again_names_the_designators_and_nothing_but_columns(String cells, boolean again) {
    Header header =
        new Header(
            0,
            List.of("RefDes", "Count", "Val"),
            header(Column.DESIGNATORS, Column.QUANTITY, Column.VALUE).uses());
    assertEquals(again, HeaderRow.isAgain(TableKind.BOM, header, row(cells)));
    assertFalse(
        HeaderRow.isAgain(TableKind.BOM, new Header(-1, List.of(), header.uses()), row(cells)),
        "where none stood before");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "|pcs|, true",
    "|each|type, true",
    "|2|, false",
    "|pcs|1k, false",
    "R|pcs|, false",
    "||value, false"
  })
  void a_row_below_the_header_of_words_alone_carries_it_on(String cells, boolean carriesOn) {
    assertEquals(carriesOn, HeaderRow.carriesOn(BOM, row(cells)));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "|mil|mil, mil",
    "|(mil)|mil, mil",
    "|[mm]|(mm), mm",
    "|mm|mil, ''",
    "R1|mm|mm, ''",
    "||, ''",
    "|10|10, ''",
    "|deg|deg, ''"
  })
  void a_row_below_the_header_may_name_the_unit_of_both_coordinates(String cells, String unit) {
    assertEquals(unit, HeaderRow.unit(PLACED, row(cells)).orElse(""));
  }

  /** 1000 mil are 25.4 mm. */
  @Test
  void a_unit_further_down_counts_for_the_bare_numbers_below_it() {
    List<Placement> placed =
        KitTables.read(
                "placements.csv",
                "Ref,X (mm),Y (mm)\nR1,1,2\nRef,X (mil),Y (mil)\nR2,1000,2000\nR3,3 mm,\n"
                    + "R4,4mm,1000\nR5,1000.,3000.\n")
            .kit()
            .boards()
            .get(0)
            .placements();
    assertEquals(
        List.of("R1 1.0 2.0", "R2 25.4 50.8", "R4 4.0 25.4", "R5 25.4 76.2"),
        placed.stream()
            .map(p -> p.designator() + " " + p.xMillimetres() + " " + p.yMillimetres())
            .toList());
  }

  // --- rows that are too long or too short

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "R1|R2|2|1k; R1, R2|2|1k",
        "R1|R2|C3|3|1k; R1, R2, C3|3|1k",
        "R1|1|4|7k; R1|1|4,7k",
        "R1|1|4|7 kΩ; R1|1|4,7 kΩ",
        "R1|1|100|5n; R1|1|100,5n",
        "R1|1|4|7; ''",
        "R1|1|1000|5n; ''",
        "R1|1|4|7000n; ''",
        "R1|1|4k|7k; ''",
        "R1|1|4|7k|9k; ''",
        "R1|see|there|1k; ''"
      })
  void a_row_longer_than_its_header_is_joined_where_that_explains_it(String cells, String joined) {
    Optional<JoinedCells> found = JoinedCells.in(TableKind.BOM, BOM, row(cells), 3);
    assertEquals(joined, found.map(j -> String.join("|", j.row().cells())).orElse(""));
    assertEquals(Optional.empty(), JoinedCells.in(TableKind.PLACEMENTS, BOM, row(cells), 3));
    Header none = new Header(-1, List.of(), BOM.uses());
    assertEquals(Optional.empty(), JoinedCells.in(TableKind.BOM, none, row(cells), 3));
    Header unnamed = header(Column.DESCRIPTION, Column.QUANTITY, Column.VALUE);
    assertEquals(Optional.empty(), JoinedCells.in(TableKind.BOM, unnamed, row(cells), 3));
  }

  @Test
  void designators_in_the_last_column_are_joined_to_the_end_of_the_row() {
    Header last = header(Column.QUANTITY, Column.DESIGNATORS);
    JoinedCells joined = JoinedCells.in(TableKind.BOM, last, row("3|R1|R2|R3"), 2).orElseThrow();
    assertEquals(List.of("3", "R1, R2, R3"), joined.row().cells());
    assertEquals(7, joined.row().line());
    Problem said = joined.said("bom.csv");
    assertTrue(said.message().contains("\"R1, R2, R3\" was read as one cell of designators"));
  }

  @ParameterizedTest(name = "{1} below {0}")
  @CsvSource({
    "'R1, R2|3|1k', R3||, true",
    "'R1, R2|2|1k', R3||, false",
    "'R1, R2||1k', R3||, false",
    "'R1, R2|3|1k', R3|1|, false",
    "'R1, R2|3|1k', note||, false",
    "'R1, R2|3|1k', |R3|, false"
  })
  void designators_alone_belong_to_a_line_above_that_has_too_few(
      String above, String cells, boolean missing) {
    assertEquals(missing, RunOnRow.isMissing(BOM, row(above), row(cells)));
  }

  @Test
  void where_a_row_runs_on_its_place_and_the_reason_are_said() {
    Problem alone = RunOnRow.said("bom.csv", BOM, row("R3||"), false);
    assertEquals(7, alone.place().line());
    assertEquals(1, alone.place().column());
    assertTrue(alone.message().startsWith("the row holds nothing but designators"));
    assertTrue(alone.remedy().contains("write its quantity and value"));
    Problem merged = RunOnRow.said("bom.csv", BOM, row("R3|1|"), true);
    assertTrue(merged.message().contains("as below a merged cell; R3 was added"));
    assertTrue(merged.remedy().contains("write its value into the row"));
  }

  @Test
  void a_row_that_runs_on_adds_its_designators_and_what_it_counts() {
    Row above = row("R1, R2|3|1k");
    assertEquals(
        List.of("R1, R2, R3", "3", "1k"), RunOnRow.joined(BOM, above, row("R3||")).cells());
    assertEquals(
        List.of("R1, R2, R3", "4", "1k"), RunOnRow.joined(BOM, above, row("R3|1|")).cells());
    assertEquals(
        List.of("R1, R2, R3", "1", "1k"),
        RunOnRow.joined(BOM, row("R1, R2|some|1k"), row("R3|1|")).cells());
  }

  // --- designators in several columns

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "'Ref 1,Ref 2,Qty,Value', true",
    "'Ref.1,Ref.2,Qty,Value', true",
    "'Ref (1),Ref (2),Qty,Value', true",
    "'Ref,Ref2,Qty,Value', true",
    "'Ref,,Qty,Value', true",
    "'Ref,Zeta,Qty,Value', false",
    "'Ref,Zeta 2,Qty,Value', false"
  })
  void columns_headed_alike_or_not_at_all_hold_more_designators(String header, boolean joined) {
    KitReading reading = KitTables.read("bom.csv", header + "\nR1,R2,2,1k\nR3,,1,2k\n");
    assertEquals(
        joined ? "[2 [R1, R2] 1 kΩ, 1 [R3] 2 kΩ]" : "[2 [R1] 1 kΩ, 1 [R3] 2 kΩ]", shown(reading));
    assertEquals(
        joined,
        said(reading, Kind.COLUMN_GUESSED)
            .contains("1: the designators of a row were read from 2 columns, 1 to 2"));
  }

  @Test
  void columns_that_say_the_same_twice_or_name_other_things_are_not_joined() {
    String header = "Ref 1,Ref 2,Qty,Value\n";
    assertEquals(
        "[1 [R1] 1 kΩ, 1 [R2] 2 kΩ]",
        shown(KitTables.read("bom.csv", header + "R1,R1,1,1k\nR2,R2,1,2k\n")));
    assertEquals(
        "[1 [R1] 1 kΩ, 1 [R2] 2 kΩ]",
        shown(KitTables.read("bom.csv", header + "R1,R7,1,1k\nR2,see there,1,2k\n")));
    assertEquals(
        "[1 [R9] 1 kΩ, 2 [R2, R3] 2 kΩ]",
        shown(KitTables.read("bom.csv", header + ",R9,1,1k\nR2,R3,2,2k\n")),
        "the first may be empty");
  }

  // --- rows that nobody sees

  @Test
  void up_to_twelve_hidden_rows_are_named() {
    List<Integer> twelve = IntStream.rangeClosed(2, 13).boxed().toList();
    List<Integer> thirteen = IntStream.rangeClosed(2, 14).boxed().toList();
    String named = "2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13";
    assertEquals(named, HiddenRows.numbers(twelve));
    assertEquals(named + " and 1 more", HiddenRows.numbers(thirteen));
  }

  @Test
  void rows_above_the_header_that_name_parts_are_said_where_they_are_not_read() {
    String rows = "R3,1k\nR4,2k\n";
    KitReading reading = KitTables.read("bom.csv", "R1,10k\nR2,22k\nRef,Value\n" + rows);
    assertEquals("[1 [R3] 1 kΩ, 1 [R4] 2 kΩ]", shown(reading));
    assertTrue(
        said(reading, Kind.ROW_IGNORED)
            .contains("1: rows from here on stand above the header and were not read: 2"));
    assertEquals(
        List.of(),
        said(KitTables.read("bom.csv", "Board,X1\n,2026\nRef,Value\n" + rows), Kind.ROW_IGNORED),
        "the name stands elsewhere");
  }
}
