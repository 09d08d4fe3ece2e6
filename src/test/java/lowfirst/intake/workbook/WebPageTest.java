package lowfirst.intake.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;
import lowfirst.intake.column.Row;
import lowfirst.problem.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables of pages, written by hand after the HTML Living Standard, 4.9 Tabular data. */
class WebPageTest {
  private static Workbook.Grid grid(String page) {
    return WebPage.of("bom.html", page).sheets().get(0);
  }

  private static List<String> rows(String page) {
    return grid(page).rows().stream().map(WebPageTest::shown).toList();
  }

  private static String shown(Row row) {
    return row.line() + ": " + String.join(" | ", row.cells());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      value = {
        "true # <html><TABLE border=1><TR><TD>R1</table>",
        "true # notes <table><tr><th>Part</th></tr></table>",
        "true # <p>a|b</p><table><tr><td>R1 | R2</td></tr></table>",
        "false # designators,value",
        "false # <table of parts>",
        "false # a < b, <tablecloth><td>",
      })
  void a_page_is_told_by_a_table_with_cells(boolean isOne, String text) {
    assertEquals(isOne, WebPage.isOne(text));
  }

  @Test
  void bars_between_cells_make_notes_a_table_of_their_own() {
    assertFalse(
        WebPage.isOne("| Part | Value |\n|---|---|\n| R1 | 10k |\n<table><tr><td>x</table>"));
  }

  @Test
  void rows_have_the_lines_of_the_file() {
    assertEquals(
        List.of("2: Part | Value", "5: R1 | 10 k"),
        rows("<table>\n<tr><th>Part<th>Value\n\n\n<tr><td> R1 <td><b>10</b>\n k\n</table>"));
  }

  @Test
  void rows_of_one_line_are_counted() {
    assertEquals(
        List.of("1: Part", "3: R1"), rows("<table><tr><td>Part<tr><td>&nbsp;<tr><td>R1</table>"));
  }

  @Test
  void a_cell_over_several_columns_and_rows_stands_where_it_begins() {
    assertEquals(
        List.of("1: a |  | b", "2: c |  | d", "3: e |  | f", "4: g | h | i"),
        rows(
            "<table><tr><td colspan=2>a<td>b\n<tr><td>c<td rowspan='2'><td>d\n"
                + "<tr><td>e<td>f\n<tr><td>g<td>h<td>i</table>"));
  }

  @Test
  void what_reaches_down_ends_with_its_table() {
    assertEquals(
        List.of("1: a | b", "3: c | d"),
        rows("<table><tr><td rowspan=9>a<td>b</table>\n<table>\n<tr><td>c<td>d</table>"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1", "two", "", "99999999999999"})
  void an_odd_span_is_one_cell(String span) {
    assertEquals(List.of("1: a | b"), rows("<table><tr><td colspan='" + span + "'>a<td>b</table>"));
  }

  @Test
  void a_page_is_no_wider_than_a_sheet() {
    String row = "<tr>" + "<td colspan=200>x".repeat(3);
    assertEquals(256, grid("<table>" + row + "</table>").rows().get(0).cells().size());
  }

  @Test
  void headings_between_tables_are_rows_and_those_in_cells_are_cells() {
    assertEquals(
        List.of("1: Top", "2: R1 | ", "3: Bottom side", "4: R2 | 1k"),
        rows(
            "<h1>Top</h1>\n<table><tr><td><h3>R1</h3><td></table>\n"
                + "<h2>Bottom <i>side</i></h2>\n<table><tr><td>R2<td>1k</table>"));
  }

  @Test
  void a_table_that_lays_the_page_out_is_no_row() {
    assertEquals(
        List.of("1: Parts", "2: R1 | 10k", "3: R2 | 1k"),
        rows(
            "<table><tr><td><h2>Parts</h2>\n<table><tr><td>R1<td>10k\n<tr><td>R2<td>1k</table>"
                + "</table>"));
  }

  @Test
  void what_stands_beside_a_table_in_a_cell_is_not_lost() {
    assertTrue(
        rows("<table><tr><td>R1<td><table><tr><td>x</table>10k</table>").contains("2: R1 | 10k"));
  }

  @Test
  void nothing_of_scripts_and_styles_is_read() {
    assertEquals(
        List.of("1: R1"),
        rows("<style>td{}</style><table><tr><td><script>'<td>R2'</script>R1</table>"));
  }

  @Test
  void hidden_rows_and_struck_cells_are_known() {
    Workbook.Grid grid =
        grid(
            "<table><tr><td>Part\n<tr hidden><td>R1\n<tr style='DISPLAY : none'><td>R2\n"
                + "<tr><td><s>R3</s>\n<tr><td>R4, <del>R5</del>\n"
                + "<tr style='text-decoration: line-through'><td>R6</table>");
    assertEquals(List.of(2, 3), grid.hidden());
    assertEquals(
        List.of(
            new StruckCells.Struck(4, 0, true),
            new StruckCells.Struck(5, 0, false),
            new StruckCells.Struck(6, 0, true)),
        grid.struck());
  }

  @Test
  void a_row_without_end_is_refused() {
    Workbook page = WebPage.of("bom.html", "<table><tr>" + "<td>".repeat(20_000));
    assertEquals(List.of(), page.sheets());
    assertEquals(Kind.FILE_TOO_LARGE, page.problems().get(0).kind());
  }

  @Test
  void a_page_beyond_any_list_of_parts_is_refused() {
    Workbook page = WebPage.of("bom.html", "<table><tr><td>R1" + " ".repeat(1 << 20));
    assertEquals(Kind.FILE_TOO_LARGE, page.problems().get(0).kind());
  }

  @Test
  void a_long_page_is_read_whole() {
    String row = "<tr><td>R1<td><span style='x'>10k</span></tr>\n";
    assertEquals(20_000, grid("<table>\n" + row.repeat(20_000) + "</table>").rows().size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"bom.html", "bom.HTM", "parts.xls", "bom.md"})
  void a_kit_reads_it_under_any_usual_name(String name) {
    String page =
        "<table><tr><th>Designator</th><th>Value</th></tr>\n"
            + "<tr><td>R1</td><td>10&nbsp;k&Omega;</td></tr></table>";
    var files = new KitFiles("kit", Map.of(name, page.getBytes(StandardCharsets.UTF_8)), List.of());
    assertEquals(
        "10 kΩ",
        KitReader.read(files)
            .kit()
            .boards()
            .get(0)
            .items()
            .get(0)
            .partType()
            .value()
            .orElseThrow()
            .toString());
  }

  @Test
  void a_page_that_is_not_named_so_is_left_alone() {
    String page = "<table><tr><th>Designator<th>Value<tr><td>R1<td>10k</table>";
    var files =
        new KitFiles("kit", Map.of("help.html", page.getBytes(StandardCharsets.UTF_8)), List.of());
    assertEquals(List.of(), KitReader.read(files).kit().boards());
  }
}
