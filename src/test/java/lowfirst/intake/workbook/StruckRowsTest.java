package lowfirst.intake.workbook;

import static lowfirst.intake.workbook.WorkbookTest.row;
import static lowfirst.intake.workbook.WorkbookTest.sheet;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lowfirst.intake.KitReading;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Letters struck through in spreadsheets, made by hand after ECMA-376 part 1, 18.4 and 18.8. */
class StruckRowsTest {
  /** Of the cells' styles, 1 is struck through and 2 is not: the standard says on, off, on. */
  private static final String STYLES =
      "<styleSheet xmlns=\""
          + WorkbookTest.MAIN
          + "\"><fonts count=\"3\"><font><sz val=\"11\"/></font>"
          + "<font><b/><strike/><sz val=\"11\"/></font><font><strike val=\"0\"/></font></fonts>"
          + "<cellStyleXfs count=\"2\"><xf fontId=\"1\"/><xf fontId=\"1\"/></cellStyleXfs>"
          + "<cellXfs count=\"3\"><xf numFmtId=\"0\" fontId=\"0\"/>"
          + "<xf numFmtId=\"0\" fontId=\"1\" applyFont=\"1\"/><xf numFmtId=\"0\" fontId=\"2\"/>"
          + "</cellXfs><dxfs count=\"1\"><dxf><font><strike/></font></dxf></dxfs></styleSheet>";

  private static final String STRUCK = "<r><rPr><b/><strike/></rPr><t>%s</t></r>";
  private static final String PLAIN = "<r><rPr><b/></rPr><t xml:space=\"preserve\">%s</t></r>";
  private static final String AS_CELL = "<r><t>%s</t></r>";

  private static final String STRINGS =
      "<sst xmlns=\""
          + WorkbookTest.MAIN
          + "\"><si><t>R1</t></si><si>"
          + STRUCK.formatted("R1")
          + "</si><si>"
          + STRUCK.formatted("R1,")
          + PLAIN.formatted(" R2")
          + "</si><si>"
          + AS_CELL.formatted("R1")
          + PLAIN.formatted(" ")
          + STRUCK.formatted(",R2")
          + "</si><si>"
          + PLAIN.formatted("R1")
          + "</si><si><t>R1</t><rPh sb=\"0\" eb=\"1\"><t>r</t></rPh></si></sst>";

  /** A second row of the table, 4th of the sheet, whose cells are as given. */
  private static String bom(String designators, String quantity, String value) {
    return sheet(
        row(1, cell("A1", "", "Reference"), cell("B1", "", "Qty"), cell("C1", "", "Value")),
        row(3, cell("A3", "", "C7"), "<c r=\"B3\"><v>1</v></c>", cell("C3", "", "1u")),
        row(4, designators, quantity, value));
  }

  private static String cell(String place, String style, String text) {
    String styled = style.isEmpty() ? "" : " s=\"" + style + "\"";
    return "<c r=\"%s\"%s t=\"inlineStr\"><is><t>%s</t></is></c>".formatted(place, styled, text);
  }

  private static String shared(String place, String style, int text) {
    return "<c r=\"%s\" s=\"%s\" t=\"s\"><v>%d</v></c>".formatted(place, style, text);
  }

  private static List<Problem> said(String sheet) throws IOException {
    byte[] bytes =
        WorkbookTest.workbook(
            Map.of("styles", STYLES, "sharedStrings", STRINGS), List.of(sheet), List.of());
    KitReading reading = WorkbookTest.read(Map.of("bom.xlsx", bytes));
    assertEquals(2, reading.kit().boards().get(0).items().size(), "read like the others");
    return reading.problems().stream()
        .filter(problem -> problem.kind() == Kind.OPTIONAL_PART)
        .toList();
  }

  private static String one() {
    return "<c r=\"B4\"><v>1</v></c>";
  }

  @Test
  void a_row_whose_designator_is_struck_through_counts_and_is_said() throws IOException {
    List<Problem> said = said(bom(cell("A4", "1", "R1"), one(), cell("C4", "1", "1k")));
    assertEquals(1, said.size());
    assertEquals("bom.xlsx:4", said.get(0).place().toString());
    assertEquals(
        "in the sheet \"Sheet 1\" row 4 is struck through, but was read like the others, though a"
            + " part that is struck out may not be fitted",
        said.get(0).message());
    assertTrue(said.get(0).remedy().startsWith("delete the row or write no"), said.toString());
  }

  @Test
  void letters_are_struck_through_in_files_of_another_encoding_too() throws IOException {
    String struck = bom(cell("A4", "1", "R1"), one(), cell("C4", "1", "1k"));
    byte[] bytes = WorkbookTest.workbook(Map.of("styles", STYLES), List.of(struck), List.of());
    KitReading reading = WorkbookTest.read(Map.of("bom.xlsx", WorkbookTest.inUtf16(bytes)));
    assertEquals(
        List.of("bom.xlsx:4"),
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.OPTIONAL_PART)
            .map(problem -> problem.place().toString())
            .toList());
  }

  @ParameterizedTest(name = "text {0} in style {1}: {2}")
  @CsvSource({
    // shared texts: 0 of one font, 1 struck, 2 struck in part, 3 as the cell then struck, 4 plain
    "0, 0, ''",
    "0, 1, bom.xlsx:4",
    "0, 2, ''",
    "1, 0, bom.xlsx:4",
    "1, 2, bom.xlsx:4",
    "2, 0, 'bom.xlsx:4, column 1 \"Reference\" (R1, R2)'",
    "2, 1, 'bom.xlsx:4, column 1 \"Reference\" (R1, R2)'",
    "3, 0, 'bom.xlsx:4, column 1 \"Reference\" (R1 ,R2)'",
    "3, 1, bom.xlsx:4",
    "4, 1, ''",
    "5, 1, bom.xlsx:4",
    "5, 0, ''",
  })
  void letters_have_a_font_of_their_own_or_that_of_the_cell(int text, String style, String place)
      throws IOException {
    List<Problem> said = said(bom(shared("A4", style, text), one(), cell("C4", "", "1k")));
    assertEquals(
        place.isEmpty() ? List.of() : List.of(place),
        said.stream().map(problem -> problem.place().toString()).toList());
  }

  @Test
  void runs_may_stand_in_the_cell_itself() throws IOException {
    String runs = "<is>" + STRUCK.formatted("R1") + PLAIN.formatted(", R2") + "</is>";
    String cell = "<c r=\"A4\" t=\"inlineStr\">" + runs + "</c>";
    List<Problem> said = said(bom(cell, one(), cell("C4", "", "1k")));
    assertEquals(1, said.size());
    assertEquals(
        "in the sheet \"Sheet 1\" letters are struck through in cell A4, but were read like the"
            + " others, though what is struck out may not hold any more",
        said.get(0).message());
  }

  @Test
  void a_value_or_a_quantity_that_is_struck_through_is_said_by_its_cell() throws IOException {
    String quantity = "<c r=\"B4\" s=\"1\"><v>1</v></c>";
    List<Problem> said = said(bom(cell("A4", "", "R1"), quantity, cell("C4", "1", "1k")));
    assertEquals(
        List.of("bom.xlsx:4, column 2 \"Qty\" (1)"),
        said.stream().map(problem -> problem.place().toString()).toList());
    assertEquals(true, said.get(0).message().contains("in cells B4, C4, but"));
  }

  /** Fourteen values, of which twelve are named. */
  @Test
  void of_many_cells_some_are_named_and_the_others_counted() throws IOException {
    var rows = new StringBuilder();
    for (int line = 3; line < 17; line++) {
      rows.append(
          row(
              line,
              cell("A" + line, "", "R" + line),
              "<c r=\"B%d\"><v>1</v></c>".formatted(line),
              cell("C" + line, "1", "1k")));
    }
    String header =
        row(1, cell("A1", "", "Reference"), cell("B1", "", "Qty"), cell("C1", "", "Value"));
    byte[] bytes =
        WorkbookTest.workbook(
            Map.of("styles", STYLES), List.of(sheet(header, rows.toString())), List.of());
    String said =
        WorkbookTest.read(Map.of("bom.xlsx", bytes)).problems().stream()
            .filter(problem -> problem.kind() == Kind.OPTIONAL_PART)
            .map(Problem::message)
            .collect(Collectors.joining());
    assertTrue(said.contains("in cells C3, C4, "), said);
    assertTrue(said.contains(", C14 and 2 more, but"), said);
  }

  @Test
  void what_holds_no_letters_or_is_no_part_is_not_struck_through() throws IOException {
    String sheet =
        bom(
                cell("A4", "", "R1"),
                "<c r=\"B4\" s=\"1\"/>",
                cell("C4", "", "1k") + cell("D4", "1", "x"))
            .replace("<c r=\"A1\"", "<c r=\"A1\" s=\"1\"");
    assertEquals(List.of(), said(sheet));
  }

  @Test
  void a_row_that_says_itself_that_it_is_not_fitted_needs_no_word() throws IOException {
    String fitted = cell("D1", "", "Fitted");
    String sheet =
        bom(cell("A4", "1", "R1"), one(), cell("C4", "1", "1k") + cell("D4", "", "%s"))
            .replace("Value</t></is></c>", "Value</t></is></c>" + fitted);
    assertEquals(0, said(sheet.formatted("no")).size());
    assertEquals(1, said(sheet.formatted("yes")).size());
    String hidden =
        sheet.replace(" s=\"1\"", "").replace("<row r=\"4\"", "<row r=\"4\" hidden=\"1\"");
    assertEquals(0, said(hidden.formatted("no")).size());
    assertEquals(1, said(hidden.formatted("yes")).size());
  }

  /** ECMA-376 part 1, 18.3.1.4 and 18.3.1.73: the numbers of rows and cells are optional. */
  @Test
  void cells_without_an_address_stand_beside_the_one_before() throws IOException {
    String sheet = bom(cell("A4", "1", "R1"), one(), cell("C4", "", "1k"));
    String bare = sheet.replaceAll(" r=\"[A-C]?\\d\"", "");
    List<Problem> said = said(bare);
    assertEquals(List.of(3), said.stream().map(problem -> problem.place().line()).toList());
  }

  @Test
  void struck_letters_in_a_broken_part_leave_the_file_unread_and_not_half_read()
      throws IOException {
    byte[] bytes =
        WorkbookTest.workbook(
            Map.of("styles", "", "sharedStrings", STRINGS.replace("</sst>", "<si><r></sst>")),
            List.of(bom(cell("A4", "", "R1"), one(), cell("C4", "", "1k"))),
            List.of());
    assertEquals(List.of(Kind.NOT_TEXT), WorkbookTest.faults(bytes));
  }
}
