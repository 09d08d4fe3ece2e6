package lowfirst.sheet.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Texts that break naive writers: every script, endless words, rows longer than a page. */
class HardTextTest {
  private static final PdfWriter WRITER = new PdfWriter();

  private static Table table(String... cells) {
    return Grid.of(
        "",
        IntStream.range(0, cells.length).mapToObj(i -> Grid.words("Column " + i, 1)).toList(),
        new Table.Row(java.util.Arrays.stream(cells).map(Cell::of).toList()));
  }

  private static String text(byte[] pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  /** Every glyph's right edge and baseline, in points, with the page's size. */
  private static void assertEverythingIsOnThePaper(byte[] pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      var stripper =
          new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition glyph) {
              double margin = Paper.MARGIN_MILLIMETRES * Paper.POINTS;
              assertTrue(glyph.getX() >= margin - 0.5, glyph + " left at " + glyph.getX());
              assertTrue(
                  glyph.getX() + glyph.getWidth() <= glyph.getPageWidth() - margin + 0.5,
                  glyph + " right at " + (glyph.getX() + glyph.getWidth()));
              assertTrue(glyph.getY() <= glyph.getPageHeight(), glyph + " at " + glyph.getY());
              super.processTextPosition(glyph);
            }
          };
      stripper.getText(document);
    }
  }

  /** Every script, controls, halves of characters, and all kinds of white space. */
  static Stream<String> hardTexts() {
    return Stream.of(
        "Ω µ μ ± ° ² ≤ ≥ → × – — “quoted” …",
        "Größe, naïve, Łódź, Čeština, Ελληνικά, Русский",
        "抵抗器 コンデンサ 저항기",
        "مقاومة עברית देवनागरी ไทย",
        "emoji 🔧⚡ and 𝄞, variation ✔️, zero width a\u200Bb\u200Dc",
        "combining e\u0301 o\u0308, ligature ﬁ",
        "\u0000\u0001\u001b[31m\u007f\u009b\uFFFE\uFFFF",
        "lone \uD83D surrogates \uDD27 here",
        "\uFEFF\u202Eright to left mark",
        "tab\there, no\u00a0break, line\nfeed\r\nand\rreturn");
  }

  /** A text wherever a document has one. */
  static Document everywhere(String hard) {
    return new Document(
        hard,
        hard,
        List.of(
            new Block.Heading(2, hard),
            new Block.Paragraph(hard),
            new Block.Caution(hard),
            new Block.Facts(List.of(new Block.Facts.Fact(hard, hard))),
            table(hard, "x"),
            Grid.of(hard, List.of(Grid.numbers(hard, 1)), Grid.row(Cell.field(hard)))));
  }

  @ParameterizedTest
  @MethodSource("hardTexts")
  void every_text_prints_or_is_replaced_visibly(String hard) throws Exception {
    assertEverythingIsOnThePaper(WRITER.write(everywhere(hard), Paper.A4));
  }

  @Test
  void signs_of_the_trade_come_out_as_written() throws Exception {
    String trade = "4.7 kΩ ±5 %, 100 µF, 85 °C, 2.5 mm², ≤ 25 A, Tj → 150 °C";
    assertTrue(
        text(WRITER.write(new Document("T", "", List.of(new Block.Paragraph(trade))), Paper.A4))
            .contains(trade));
  }

  @Test
  void what_the_font_lacks_stands_there_as_its_code() throws Exception {
    String text =
        text(WRITER.write(new Document("T", "", List.of(new Block.Paragraph("抵 here"))), Paper.A4));
    assertTrue(text.contains("‹U+62B5› here"), text);
  }

  @Test
  void a_word_wider_than_its_column_is_broken_and_nothing_of_it_is_lost() throws Exception {
    String word = IntStream.range(0, 400).mapToObj(i -> "" + i % 10).collect(Collectors.joining());
    byte[] pdf =
        WRITER.write(
            new Document(word, word, List.of(table(word, "x", "y"), new Block.Paragraph(word))),
            Paper.LETTER);
    assertEverythingIsOnThePaper(pdf);
    long digits =
        text(pdf)
            .lines()
            .filter(line -> !line.contains("page "))
            .collect(Collectors.joining())
            .chars()
            .filter(Character::isDigit)
            .count();
    // Title, subtitle, cell, paragraph; "Column 0" to "Column 2".
    assertEquals(4 * 400 + 3, digits);
  }

  @Test
  void a_row_longer_than_a_page_goes_on_overleaf() throws Exception {
    String words =
        IntStream.range(0, 4000).mapToObj(i -> "word" + i).collect(Collectors.joining(" "));
    byte[] pdf = WRITER.write(new Document("T", "", List.of(table("first", words))), Paper.A4);
    assertEverythingIsOnThePaper(pdf);
    String text = text(pdf);
    assertTrue(text.contains("word0 ") && text.contains("word3999"));
    assertEquals(4000, text.split("word\\d+", -1).length - 1);
  }

  @Test
  void rows_of_ordinary_length_are_never_split() throws Exception {
    var rows = new ArrayList<Table.Row>();
    for (int row = 0; row < 300; row++) {
      rows.add(
          Grid.row(
              Cell.of("a" + row + " " + "filler ".repeat(row % 40) + "z" + row), Cell.of("x")));
    }
    byte[] pdf =
        WRITER.write(
            new Document(
                "T",
                "",
                List.of(new Table("", List.of(Grid.words("A", 1), Grid.words("B", 1)), rows))),
            Paper.A4);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        var stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        String text = " " + stripper.getText(document).replaceAll("\\s+", " ") + " ";
        for (int row = 0; row < 300; row++) {
          assertEquals(
              text.contains(" a" + row + " "), text.contains("z" + row + " "), "row " + row);
        }
      }
    }
  }

  @Test
  void twenty_narrow_columns_stay_on_the_paper() throws Exception {
    String[] cells = new String[20];
    java.util.Arrays.fill(cells, "Seventeen letters");
    assertEverythingIsOnThePaper(
        WRITER.write(new Document("T", "", List.of(table(cells))), Paper.A4));
  }

  @Test
  void a_long_name_is_broken_before_it_squeezes_the_headers_of_others() throws Exception {
    String name = "R_Axial_DIN0204_L3.6mm_D1.6mm_P5.08mm_Horizontal_and_then_some_more";
    var columns = new ArrayList<Table.Column>();
    var cells = new ArrayList<Cell>();
    for (String header :
        List.of("Pick", "Inspected", "Soldered", "Reading", "Initials", "Accept")) {
      columns.add(Grid.words(header, header.equals("Pick") ? 3 : 1));
      cells.add(header.equals("Pick") ? Cell.of(name) : Cell.field(""));
    }
    String text =
        text(
            WRITER.write(
                new Document("T", "", List.of(Grid.of("", columns, new Table.Row(cells)))),
                new Paper(165, 200)));
    for (Table.Column column : columns) {
      assertTrue(text.contains(column.header()), column.header() + " in " + text);
    }
  }

  @Test
  void an_empty_document_is_one_page() throws Exception {
    try (PDDocument document =
        Loader.loadPDF(WRITER.write(new Document("T", "", List.of()), Paper.A4))) {
      assertEquals(1, document.getNumberOfPages());
    }
  }
}
