package lowfirst.sheet.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;
import lowfirst.sheet.drawing.Shape;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class PdfWriterTest {

  private static final PdfWriter WRITER = new PdfWriter();

  private static final Drawing SQUARE =
      new Drawing(
          20,
          12,
          List.of(
              new Shape.Box(0, 0, 20, 12, 2, Shape.Paint.both(new Ink(0xF4E3C1), Ink.BLACK, 0.3)),
              new Shape.Circle(5, 6, 2, Shape.Paint.stroke(Ink.BLACK, 0.3)),
              new Shape.Label(14, 7, 3, Shape.Label.Anchor.MIDDLE, Ink.BLACK, "R1")),
          "a body with a dot at its left end");

  static Document everyBlock(int rows) {
    var table = new ArrayList<Table.Row>();
    for (int row = 1; row <= rows; row++) {
      table.add(
          Grid.row(
              Cell.of("" + row),
              Cell.of("4.7 kΩ resistor, ±5 %, 0.25 W", SQUARE),
              Cell.of("R" + row + ", R" + (row + 1) + ", R" + (row + 2)),
              Cell.box(row % 3 == 0),
              Cell.box(false),
              Cell.field(row % 4 == 0 ? "4.68 kΩ" : "")));
    }
    return new Document(
        "Assembly book",
        "bell player · driver · unit driver-1 · 0123456789abcdef",
        List.of(
            new Block.Heading(2, "Batch 1"),
            new Block.Paragraph("Seat these parts, then flip the board once. ".repeat(8)),
            new Block.Caution(
                "The tip is hot. Lead ends fly when cut: wear glasses, hold the end, point it down. "
                    + "Wash your hands before you eat."),
            new Block.Facts(
                List.of(
                    new Block.Facts.Fact("Board", "driver, 2 units"),
                    new Block.Facts.Fact("Fingerprint", "0123456789abcdef".repeat(4)))),
            new Block.Figure(SQUARE, "The board, component side."),
            new Block.Heading(3, "Steps"),
            new Table(
                "In this order",
                List.of(
                    Grid.numbers("Step", 1),
                    Grid.words("Pick", 4),
                    Grid.words("Where", 4),
                    Grid.words("Seated", 1),
                    Grid.words("Soldered", 1),
                    Grid.words("Reading", 2)),
                table)));
  }

  private static String text(byte[] pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      var stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      return stripper.getText(document);
    }
  }

  @Test
  void the_same_document_gives_the_same_bytes() {
    Document document = everyBlock(30);
    assertArrayEquals(
        new PdfWriter().write(document, Paper.A4), new PdfWriter().write(document, Paper.A4));
  }

  @Test
  void the_table_header_stands_on_every_page_and_pages_are_counted() throws Exception {
    byte[] pdf = WRITER.write(everyBlock(60), Paper.A4);
    Files.createDirectories(Path.of("target/sheets"));
    Files.write(Path.of("target/sheets/every-block.pdf"), pdf);
    Files.write(
        Path.of("target/sheets/every-block-letter.pdf"),
        WRITER.write(everyBlock(20), Paper.LETTER.turned()));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      int pages = document.getNumberOfPages();
      assertTrue(pages > 3, pages + " pages");
      for (int page = 1; page <= pages; page++) {
        var stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        String text = stripper.getText(document);
        assertTrue(text.contains("Soldered"), "page " + page);
        assertTrue(text.contains("page " + page + " of " + pages), "page " + page);
      }
    }
    String text = text(pdf);
    for (int row = 1; row <= 60; row++) {
      assertTrue(text.contains("R" + row + ", R" + (row + 1) + ", R" + (row + 2)), "row " + row);
    }
  }
}
