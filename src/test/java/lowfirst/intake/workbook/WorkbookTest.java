package lowfirst.intake.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import lowfirst.board.Board;
import lowfirst.board.Item;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;
import lowfirst.intake.KitReading;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import org.junit.jupiter.api.Test;

/** Spreadsheet files as tables. The files are made here, by hand, after ECMA-376 part 1. */
class WorkbookTest {
  static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";

  private static final String TYPED =
      "<Override PartName=\"/xl/%1$s.xml\" ContentType=\""
          + "application/vnd.openxmlformats-officedocument.spreadsheetml.%1$s+xml\"/>";

  private static final String BOM_SHEET =
      sheet(
          row(1, text("A1", "Chime latch")),
          row(3, text("A3", "Reference"), text("B3", "Qty"), text("C3", "Value")),
          row(4, text("A4", "R1, R2"), number("B4", "2"), number("C4", "4700")),
          row(5, text("A5", "C1"), number("B5", "1"), text("C5", "0,1 µF")));

  private static final String PLACED_SHEET =
      sheet(
          row(1, text("A1", "Ref"), text("B1", "X (mm)"), text("C1", "Y (mm)"), text("D1", "Side")),
          row(
              2,
              text("A2", "R1"),
              number("B2", "12.699999999999999"),
              number("C2", "-5"),
              text("D2", "top")),
          row(3, text("A3", "R2"), number("B3", "1.27E1"), number("C3", "0"), text("D3", "top")),
          row(4, text("A4", "C1"), number("B4", "40"), number("C4", "7.5"), text("D4", "bottom")));

  @Test
  void a_workbook_is_read_like_any_table_its_empty_rows_counted() throws IOException {
    KitReading reading =
        read(Map.of("bom.xlsx", workbook(BOM_SHEET), "placements.xlsx", workbook(PLACED_SHEET)));
    Board board = reading.kit().boards().get(0);
    assertEquals(
        List.of("[R1, R2] 2 4.7 kΩ, line 4", "[C1] 1 100 nF, line 5"),
        board.items().stream().map(WorkbookTest::shown).toList());
    assertEquals(3, board.placements().size());
    // 12.7 is stored as the nearest double, and must come back as it was typed.
    assertEquals(12.7, board.placements().get(0).xMillimetres());
    assertEquals(12.7, board.placements().get(1).xMillimetres());
    assertEquals(-5, board.placements().get(0).yMillimetres());
  }

  @Test
  void rows_of_empty_cells_are_no_rows_and_odd_numbers_stay_as_they_are_stored()
      throws IOException {
    String sheet =
        sheet(
            row(1, text("A1", "Reference"), text("B1", "Qty"), text("C1", "Value")),
            row(2, text("A2", "R1"), number("B2", "1"), number("C2", "4700.0")),
            row(3, text("A3", ""), text("B3", " ")),
            row(4, text("A4", "R2"), number("B4", "1"), number("C4", "1E+40")),
            row(5, text("A5", "R3"), number("B5", "1"), number("C5", "0.0")));
    Workbook workbook = Workbook.of("bom.xlsx", workbook(sheet));
    assertEquals(
        List.of("1 [Reference, Qty, Value]", "2 [R1, 1, 4700]", "4 [R2, 1, 1E+40]", "5 [R3, 1, 0]"),
        workbook.sheets().get(0).rows().stream()
            .map(row -> row.line() + " " + row.cells())
            .toList());
  }

  /** ECMA-376 part 1, 18.8.30: 9 and 14 are built-in formats of shares and dates. */
  @Test
  void what_a_number_is_shown_as_counts_where_it_is_a_date_or_a_share() throws IOException {
    String styles =
        "<styleSheet xmlns=\""
            + MAIN
            + "\"><numFmts count=\"2\"><numFmt numFmtId=\"164\" formatCode=\"d\\-mmm\"/>"
            + "<numFmt numFmtId=\"165\" formatCode=\"0.0&quot; days&quot;\"/></numFmts>"
            + "<cellXfs count=\"5\"><xf numFmtId=\"0\"/><xf numFmtId=\"9\"/><xf numFmtId=\"14\"/>"
            + "<xf numFmtId=\"164\"/><xf numFmtId=\"165\"/></cellXfs></styleSheet>";
    String sheet =
        sheet(
            row(1, text("A1", "Reference"), text("B1", "Value"), text("C1", "Tolerance")),
            row(2, text("A2", "R1"), styled("B2", "46054", 2), styled("C2", "0.05", 1)),
            row(3, text("A3", "R2"), styled("B3", "46054", 3), styled("C3", "0.005", 1)),
            row(4, text("A4", "R3"), styled("B4", "46054", 0), styled("C4", "2.5", 4)));
    Workbook workbook = Workbook.of("bom.xlsx", workbook(sheet, styles));
    assertEquals(
        List.of(
            "[Reference, Value, Tolerance]",
            "[R1, 2026-02-01, 5 %]",
            "[R2, 2026-02-01, 0.5 %]",
            "[R3, 46054, 2.5]"),
        workbook.sheets().get(0).rows().stream().map(row -> row.cells().toString()).toList());
    KitReading reading = read(Map.of("bom.xlsx", workbook(sheet, styles)));
    assertEquals(
        List.of(2, 3),
        reading.problems().stream()
            .filter(problem -> problem.message().contains("is a date, as a spreadsheet makes"))
            .map(problem -> problem.place().line())
            .toList());
  }

  /** ECMA-376 part 1, 18.8.31: each 0 of a format is a digit that is always shown. */
  @Test
  void zeros_and_letters_that_a_format_puts_before_a_number_are_read() throws IOException {
    String styles =
        "<styleSheet xmlns=\""
            + MAIN
            + "\"><numFmts count=\"2\"><numFmt numFmtId=\"164\" formatCode=\"0000\"/>"
            + "<numFmt numFmtId=\"165\" formatCode=\"&quot;R&quot;0\"/></numFmts>"
            + "<cellXfs count=\"3\"><xf numFmtId=\"0\"/><xf numFmtId=\"164\"/>"
            + "<xf numFmtId=\"165\"/></cellXfs></styleSheet>";
    String sheet =
        sheet(
            row(1, text("A1", "Reference"), text("B1", "Value"), text("C1", "Package")),
            row(2, styled("A2", "3", 2), number("B2", "4700"), styled("C2", "207", 1)),
            row(3, styled("A3", "12", 2), styled("B3", "4.7", 1), styled("C3", "10207", 1)));
    assertEquals(
        List.of("[Reference, Value, Package]", "[R3, 4700, 0207]", "[R12, 4.7, 10207]"),
        Workbook.of("bom.xlsx", workbook(sheet, styles)).sheets().get(0).rows().stream()
            .map(row -> row.cells().toString())
            .toList());
  }

  @Test
  void a_formula_that_nobody_computed_is_seen_and_not_empty() throws IOException {
    String sheet =
        sheet(
            row(1, text("A1", "Reference"), text("B1", "Qty"), text("C1", "Value")),
            row(2, text("A2", "R1"), "<c r=\"B2\"><f>1+1</f></c>", text("C2", "1k")),
            row(3, text("A3", "R2"), "<c r=\"B3\"><f>1+1</f><v>2</v></c>", text("C3", "1k")));
    KitReading reading = read(Map.of("bom.xlsx", workbook(sheet)));
    assertEquals(
        List.of("\"=1+1\" is no whole number of parts"),
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.CELL_UNREADABLE)
            .map(Problem::message)
            .toList());
    assertEquals(2, reading.kit().boards().get(0).items().get(1).quantity());
  }

  private static String shown(Item item) {
    return item.designators()
        + " "
        + item.quantity()
        + " "
        + item.partType().value().orElseThrow()
        + ", line "
        + item.place().line();
  }

  @Test
  void a_document_type_which_could_name_other_files_is_refused() throws IOException {
    byte[] tricked =
        workbook("<!DOCTYPE worksheet [<!ENTITY a SYSTEM \"file:///etc/hostname\">]>" + BOM_SHEET);
    assertEquals(List.of(Kind.NOT_TEXT), faults(tricked));
    assertEquals(List.of(Kind.NOT_TEXT), faults(inUtf16(tricked)), "between its letters are zeros");
    assertEquals(faults(workbook(BOM_SHEET)), faults(inUtf16(workbook(BOM_SHEET))));
  }

  @Test
  void a_damaged_file_is_a_problem_wherever_it_is_cut() throws IOException {
    byte[] whole = workbook(BOM_SHEET);
    for (int length = 4; length < whole.length; length += 97) {
      byte[] cut = Arrays.copyOf(whole, length);
      faults(cut);
    }
    assertEquals(List.of(Kind.NOT_TEXT), faults(Arrays.copyOf(whole, 40)));
  }

  static List<Kind> faults(byte[] bytes) {
    return read(Map.of("bom.xlsx", bytes)).problems().stream()
        .map(Problem::kind)
        .filter(kind -> kind != Kind.TABLE_MISSING)
        .toList();
  }

  static KitReading read(Map<String, byte[]> files) {
    return KitReader.read(new KitFiles("kit", files, List.of()));
  }

  private static final String OTHER_SHEET =
      sheet(
          row(1, text("A1", "Reference"), text("B1", "Qty"), text("C1", "Value")),
          row(2, text("A2", "R7"), number("B2", "1"), text("C2", "1k")),
          row(3, text("A3", "R8"), number("B3", "1"), text("C3", "2k")));

  private static List<String> parts(KitReading reading) {
    return reading.kit().boards().get(0).items().stream()
        .map(item -> item.designators().toString())
        .toList();
  }

  private static List<String> asked(KitReading reading) {
    return reading.problems().stream()
        .filter(problem -> problem.kind() == Kind.COLUMN_AMBIGUOUS)
        .map(Problem::message)
        .toList();
  }

  @Test
  void of_two_sheets_of_parts_one_is_read_and_the_other_is_asked_about() throws IOException {
    KitReading reading =
        read(Map.of("bom.xlsx", workbook("", List.of(BOM_SHEET, OTHER_SHEET), List.of())));
    assertEquals(List.of("[R1, R2]", "[C1]"), parts(reading));
    assertEquals(
        List.of(
            "the sheet \"Sheet 2\" holds bom rows as well as the sheet \"Sheet 1\", which alone was"
                + " read"),
        asked(reading));
  }

  @Test
  void a_hidden_sheet_is_not_read_beside_one_that_is_shown() throws IOException {
    KitReading reading =
        read(Map.of("bom.xlsx", workbook("", List.of(OTHER_SHEET, BOM_SHEET), List.of(1))));
    assertEquals(List.of("[R1, R2]", "[C1]"), parts(reading));
    assertEquals(List.of(), asked(reading));
    KitReading hidden = read(Map.of("bom.xlsx", workbook("", List.of(OTHER_SHEET), List.of(1))));
    assertEquals(List.of("[R7]", "[R8]"), parts(hidden));
  }

  /** ECMA-376 part 1, 18.3.1.73: the attribute hidden of a row, a boolean. */
  @Test
  void hidden_rows_are_read_and_said_once_with_their_numbers() throws IOException {
    String sheet =
        sheet(
            row(1, text("A1", "Reference"), text("B1", "Qty"), text("C1", "Value")),
            row(2, text("A2", "R1"), number("B2", "1"), text("C2", "1k")),
            row(4, text("A4", "R2"), number("B4", "1"), text("C4", "2k")),
            row(5, text("A5", "R3"), number("B5", "1"), text("C5", "3k")),
            row(6, text("A6", "")));
    String one = sheet.replace("<row r=\"4\">", "<row r=\"4\" hidden=\"1\">");
    String two = one.replace("<row r=\"5\">", "<row hidden=\"true\" r=\"5\">");
    String more =
        two.replace("<row r=\"1\">", "<row r=\"1\" hidden=\"1\">")
            .replace("<row r=\"6\">", "<row r=\"6\" hidden=\"1\">");
    assertEquals(List.of(), hidden(sheet));
    assertEquals(List.of("4: row 4, which was"), hidden(one));
    assertEquals(List.of("4: rows 4, 5, which were"), hidden(two));
    assertEquals(List.of("4: rows 4, 5, which were"), hidden(more));
    assertEquals(3, parts(read(Map.of("bom.xlsx", workbook(more)))).size());
    assertTrue(remedy(one).startsWith("show the row, and delete it"), remedy(one));
    assertTrue(remedy(two).startsWith("show the rows, and delete those"), remedy(two));
  }

  private static String remedy(String sheet) throws IOException {
    return read(Map.of("bom.xlsx", workbook(sheet))).problems().stream()
        .filter(problem -> problem.kind() == Kind.OPTIONAL_PART)
        .map(Problem::remedy)
        .findFirst()
        .orElseThrow();
  }

  private static List<String> hidden(String sheet) throws IOException {
    return read(Map.of("bom.xlsx", workbook(sheet))).problems().stream()
        .filter(problem -> problem.kind() == Kind.OPTIONAL_PART)
        .map(
            problem ->
                problem.place().line()
                    + ": "
                    + problem.message().replaceAll("^.* hides (rows? .*) read like.*$", "$1"))
        .toList();
  }

  @Test
  void one_file_may_hold_the_parts_in_one_sheet_and_the_positions_in_another() throws IOException {
    for (String name : List.of("bom.xlsx", "board.xlsx")) {
      KitReading reading =
          read(Map.of(name, workbook("", List.of(BOM_SHEET, PLACED_SHEET), List.of())));
      assertEquals(List.of("[R1, R2]", "[C1]"), parts(reading), name);
      assertEquals(3, reading.kit().boards().get(0).placements().size(), name);
      assertEquals(List.of(), asked(reading), name);
    }
  }

  static byte[] workbook(String sheet) throws IOException {
    return workbook(sheet, "");
  }

  private static byte[] workbook(String sheet, String styles) throws IOException {
    return workbook(styles, List.of(sheet), List.of());
  }

  /** Sheets are named by their number; those of {@code hidden} are not shown. */
  private static byte[] workbook(String styles, List<String> sheets, List<Integer> hidden)
      throws IOException {
    return workbook(Map.of("styles", styles), sheets, hidden);
  }

  /** With parts that all sheets share, by their type: styles, sharedStrings; none where empty. */
  static byte[] workbook(Map<String, String> shared, List<String> sheets, List<Integer> hidden)
      throws IOException {
    var bytes = new ByteArrayOutputStream();
    var named = new StringBuilder();
    var related = new StringBuilder();
    for (int number = 1; number <= sheets.size(); number++) {
      String state = hidden.contains(number) ? " state=\"hidden\"" : "";
      named.append(
          "<sheet name=\"Sheet %1$d\" sheetId=\"%1$d\"%2$s r:id=\"r%1$d\"/>"
              .formatted(number, state));
      related.append(
          "<Relationship Id=\"r%1$d\" Type=\"%2$s/worksheet\" Target=\"worksheets/sheet%1$d.xml\"/>"
              .formatted(number, RELATIONS));
    }
    var typed = new StringBuilder();
    for (String type : new TreeSet<>(shared.keySet())) {
      if (!shared.get(type).isEmpty()) {
        typed.append(TYPED.formatted(type));
        related.append(
            "<Relationship Id=\"%1$s\" Type=\"%2$s/%1$s\" Target=\"/xl/%1$s.xml\"/>"
                .formatted(type, RELATIONS));
      }
    }
    try (var zip = new ZipOutputStream(bytes)) {
      entry(
          zip,
          "[Content_Types].xml",
          "<Types xmlns=\""
              + PACKAGE
              + "content-types\"><Default Extension=\"xml\" ContentType=\"application/xml\"/>"
              + typed
              + "</Types>");
      entry(
          zip,
          "_rels/.rels",
          "<Relationships xmlns=\""
              + PACKAGE
              + "relationships\"><Relationship Id=\"r1\" Type=\""
              + RELATIONS
              + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
      entry(
          zip,
          "xl/workbook.xml",
          "<workbook xmlns=\""
              + MAIN
              + "\" xmlns:r=\""
              + RELATIONS
              + "\"><sheets>"
              + named
              + "</sheets></workbook>");
      entry(
          zip,
          "xl/_rels/workbook.xml.rels",
          "<Relationships xmlns=\"" + PACKAGE + "relationships\">" + related + "</Relationships>");
      for (String type : new TreeSet<>(shared.keySet())) {
        if (!shared.get(type).isEmpty()) {
          entry(zip, "xl/" + type + ".xml", shared.get(type));
        }
      }
      for (int number = 1; number <= sheets.size(); number++) {
        entry(zip, "xl/worksheets/sheet" + number + ".xml", sheets.get(number - 1));
      }
    }
    return bytes.toByteArray();
  }

  private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(text.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }

  /** The same file with its sheets and styles in UTF-16, as XML allows. */
  static byte[] inUtf16(byte[] workbook) throws IOException {
    var bytes = new ByteArrayOutputStream();
    try (var in = new ZipInputStream(new ByteArrayInputStream(workbook));
        var out = new ZipOutputStream(bytes)) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        byte[] part = in.readAllBytes();
        out.putNextEntry(new ZipEntry(entry.getName()));
        boolean other = entry.getName().matches(".*(sheet\\d|styles)\\.xml");
        String text = new String(part, StandardCharsets.UTF_8);
        out.write(other ? text.getBytes(StandardCharsets.UTF_16) : part);
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
  }

  static String sheet(String... rows) {
    return "<worksheet xmlns=\""
        + MAIN
        + "\"><sheetData>"
        + String.join("", rows)
        + "</sheetData></worksheet>";
  }

  static String row(int number, String... cells) {
    return "<row r=\"" + number + "\">" + String.join("", cells) + "</row>";
  }

  static String text(String place, String text) {
    return "<c r=\"" + place + "\" t=\"inlineStr\"><is><t>" + text + "</t></is></c>";
  }

  private static String styled(String place, String number, int style) {
    return "<c r=\"" + place + "\" s=\"" + style + "\"><v>" + number + "</v></c>";
  }

  private static String number(String place, String number) {
    return "<c r=\"" + place + "\"><v>" + number + "</v></c>";
  }
}
