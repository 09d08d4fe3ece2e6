package lowfirst.sheet.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.drawing.Drawing;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDTrueTypeFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;
import org.junit.jupiter.api.Test;

/** What a program that reads, fills in or speaks a sheet finds in it. */
class ReaderProgramTest {
  private static final PdfWriter WRITER = new PdfWriter();
  private static final Drawing PICTURE = new Drawing(10, 5, List.of(), "a body with a dot");

  private static Table table(Table.Row... rows) {
    return Grid.of(
        "In this order",
        List.of(
            Grid.numbers("Step", 1),
            Grid.words("Pick", 1),
            Grid.words("Seated", 1),
            Grid.words("Reading", 1)),
        rows);
  }

  private static Table.Row row(String step, String pick, boolean ticked, String reading) {
    return Grid.row(Cell.of(step), Cell.of(pick, PICTURE), Cell.box(ticked), Cell.field(reading));
  }

  private static Document document(Block... blocks) {
    return new Document("Book & <board>", "a kit", List.of(blocks));
  }

  @Test
  void a_screen_reader_finds_everything_in_order_with_what_it_is() throws Exception {
    Document document =
        document(
            new Block.Heading(2, "Batch 1"),
            new Block.Paragraph("Seat these.\nThen flip."),
            new Block.Caution("it is hot."),
            new Block.Facts(
                List.of(
                    new Block.Facts.Fact("Board", "driver"), new Block.Facts.Fact("Units", "2"))),
            new Block.Figure(PICTURE, "The board."),
            new Block.Figure(new Drawing(5, 5, List.of(), ""), "Another."),
            new Block.Heading(3, "Steps"),
            table(row("1", "diode", true, ""), row("2", "relay", false, "4.7 kΩ")));
    assertEquals(
        """
        Document
          H1: Book & <board>
          P: a kit
          H2: Batch 1
          P: Seat these. Then flip.
          P: Caution: it is hot.
          L
            LI
              Lbl: Board
              LBody: driver
            LI
              Lbl: Units
              LBody: 2
          Figure (a body with a dot)
          P: The board.
          Figure (Another.)
          P: Another.
          H3: Steps
          Table
            Caption: In this order
            TR
              TH: Step
              TH: Pick
              TH: Seated
              TH: Reading
            TR
              TD: 1
              TD: diode
                Figure (a body with a dot)
              TD
                Form: field 1, diode: Seated
              TD
                Form: field 1, diode: Reading
            TR
              TD: 2
              TD: relay
                Figure (a body with a dot)
              TD
                Form: field 2, relay: Seated
              TD
                Form: field 2, relay: Reading
        """,
        SeenPdf.of(WRITER.write(document, Paper.A4)).structure());
  }

  @Test
  void a_paragraph_over_two_pages_stays_one() throws Exception {
    String text = "word ".repeat(1500).strip();
    SeenPdf pdf = SeenPdf.of(WRITER.write(document(new Block.Paragraph(text)), Paper.A4));
    assertEquals(2, pdf.pages().size());
    assertTrue(pdf.structure().contains("  P: " + text + "\n"));
  }

  /** From a page's content, and from a field, back to the element that it belongs to. */
  @Test
  void content_leads_back_to_its_element() throws Exception {
    byte[] pdf =
        WRITER.write(
            document(
                table(row("1", "diode", true, "")),
                new Block.Paragraph("down to overleaf\n".repeat(70))),
            Paper.A4);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      var root = document.getDocumentCatalog().getStructureTreeRoot().getCOSObject();
      var numbers = root.getCOSDictionary(COSName.PARENT_TREE).getCOSArray(COSName.NUMS);
      // Two pages and two fields, each with a key of its own, in order.
      assertEquals(8, numbers.size());
      assertEquals(4, root.getInt(COSName.PARENT_TREE_NEXT_KEY));
      for (int key = 0; key < 4; key++) {
        assertEquals(key, numbers.getInt(2 * key));
      }
      for (int page = 0; page < 2; page++) {
        assertEquals("S", document.getPage(page).getCOSObject().getNameAsString("Tabs"));
        int key = document.getPage(page).getCOSObject().getInt(COSName.STRUCT_PARENTS);
        var owners = (org.apache.pdfbox.cos.COSArray) numbers.getObject(2 * key + 1);
        var first = (org.apache.pdfbox.cos.COSDictionary) owners.getObject(0);
        assertEquals(page == 0 ? "H1" : "P", first.getNameAsString(COSName.S));
      }
      for (PDField field : document.getDocumentCatalog().getAcroForm().getFields()) {
        int key = field.getCOSObject().getInt(COSName.STRUCT_PARENT);
        var form = (org.apache.pdfbox.cos.COSDictionary) numbers.getObject(2 * key + 1);
        assertEquals("Form", form.getNameAsString(COSName.S));
        assertEquals(
            field.getCOSObject(),
            ((org.apache.pdfbox.cos.COSDictionary) form.getCOSArray(COSName.K).getObject(0))
                .getCOSDictionary(COSName.OBJ));
      }
      assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
    }
  }

  @Test
  void headers_say_that_they_head_their_column() throws Exception {
    byte[] pdf = WRITER.write(document(table(row("1", "diode", true, ""))), Paper.A4);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      var headers = new ArrayList<String>();
      var elements = document.getDocument().getObjectsByType(COSName.getPDFName("StructElem"));
      for (var element : elements) {
        var dictionary = (org.apache.pdfbox.cos.COSDictionary) element.getObject();
        if ("TH".equals(dictionary.getNameAsString(COSName.S))) {
          var attributes = dictionary.getCOSDictionary(COSName.A);
          headers.add(
              attributes.getNameAsString(COSName.O) + " " + attributes.getNameAsString("Scope"));
        }
      }
      assertEquals(
          List.of("Table Column", "Table Column", "Table Column", "Table Column"), headers);
    }
  }

  @Test
  void fields_are_filled_in_by_a_program_as_by_hand() throws Exception {
    byte[] pdf =
        WRITER.write(
            document(table(row("1", "diode", false, ""), row("2", "relay", true, "4.7"))),
            Paper.A4);
    var out = new ByteArrayOutputStream();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      var form = document.getDocumentCatalog().getAcroForm();
      assertEquals("/Typing 9 Tf 0 g", form.getDefaultAppearance());
      List<PDField> fields = form.getFields();
      assertEquals(
          List.of("field-1", "field-2", "field-3", "field-4"),
          fields.stream().map(PDField::getPartialName).toList());
      assertEquals("Btn", fields.get(0).getFieldType());
      assertEquals("Tx", fields.get(1).getFieldType());
      fields.forEach(field -> assertTrue(field.getWidgets().get(0).isPrinted()));
      assertEquals("/Typing 8.5 Tf 0 g", fields.get(1).getCOSObject().getString(COSName.DA));
      var typing =
          (PDTrueTypeFont) form.getDefaultResources().getFont(COSName.getPDFName("Typing"));
      assertTrue(typing.isEmbedded());
      assertTrue(typing.getName().startsWith("TYPING+"), typing.getName());
      for (int sign : "AZaz09äßÜé€±µ°%.,-/()".codePoints().toArray()) {
        byte[] code = typing.encode(Character.toString(sign));
        assertFalse(
            typing.getPath(code[0] & 0xFF).getBounds2D().isEmpty(), Character.toString(sign));
      }
      for (PDField field : fields) {
        assertEquals("Widget", field.getWidgets().get(0).getSubtype());
        assertEquals("Annot", field.getCOSObject().getNameAsString(COSName.TYPE));
      }
      var look = fields.get(3).getWidgets().get(0).getNormalAppearanceStream();
      assertEquals("Form", look.getCOSObject().getNameAsString(COSName.SUBTYPE));
      assertEquals("XObject", look.getCOSObject().getNameAsString(COSName.TYPE));
      assertTrue(look.getResources().getFontNames().iterator().hasNext());
      fields.get(0).setValue("Ticked");
      fields.get(1).setValue("Größe 4.68 k€");
      document.save(out);
    }
    SeenPdf filled = SeenPdf.of(out.toByteArray());
    assertEquals("Ticked", filled.fields().get(0).value());
    assertEquals("Größe 4.68 k€", filled.fields().get(1).value());
    assertTrue(filled.pages().get(0).words().contains("Größe 4.68 k€"));
    assertEquals("4.7", filled.fields().get(3).value());
  }

  @Test
  void equal_looks_stand_in_the_file_once() throws Exception {
    int one = WRITER.write(document(rows(10)), Paper.A4).length;
    int ten = WRITER.write(document(rows(20)), Paper.A4).length;
    // Two fields a row: their dictionaries, structure and content, but no appearances.
    assertTrue(ten - one < 10 * 2000, (ten - one) + " bytes");
    try (PDDocument document = Loader.loadPDF(WRITER.write(document(rows(20)), Paper.A4))) {
      var looks = new java.util.HashSet<Object>();
      for (PDField field : document.getDocumentCatalog().getAcroForm().getFields()) {
        if (field.getFieldType().equals("Btn")) {
          var appearance = field.getWidgets().get(0).getAppearance().getNormalAppearance();
          appearance.getSubDictionary().values().forEach(look -> looks.add(look.getCOSObject()));
          assertEquals(2, appearance.getSubDictionary().size());
          // A program that looks for one appearance must find a choice of two in its place.
          assertTrue(appearance.getCOSObject().isDirect());
        }
      }
      assertEquals(2, looks.size());
    }
  }

  private static Table rows(int count) {
    var rows = new ArrayList<Table.Row>();
    for (int i = 0; i < count; i++) {
      rows.add(row("" + i, "part", i % 2 == 0, ""));
    }
    return table(rows.toArray(new Table.Row[0]));
  }

  @Test
  void a_sheet_without_fields_has_no_form() throws Exception {
    try (PDDocument document =
        Loader.loadPDF(WRITER.write(document(new Block.Paragraph("text")), Paper.A4))) {
      assertNull(document.getDocumentCatalog().getAcroForm());
      assertTrue(document.getPage(0).getAnnotations().isEmpty());
      assertNull(document.getDocumentCatalog().getDocumentOutline());
    }
  }

  @Test
  void the_outline_leads_to_the_pages_of_chapters() throws Exception {
    byte[] pdf =
        WRITER.write(
            document(
                new Block.Heading(2, "One"),
                new Block.Heading(3, "a section"),
                new Block.Paragraph("down to overleaf\n".repeat(70)),
                new Block.Heading(2, "Two"),
                new Block.Heading(2, "Three")),
            Paper.A4);
    var chapters = new ArrayList<String>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
        var destination = (PDPageDestination) item.getDestination();
        chapters.add(item.getTitle() + " " + (destination.retrievePageNumber() + 1));
      }
    }
    assertEquals(List.of("One 1", "Two 2", "Three 2"), chapters);
  }

  @Test
  void the_file_says_what_it_is() throws Exception {
    try (PDDocument document =
        Loader.loadPDF(WRITER.write(document(new Block.Paragraph("text")), Paper.A4))) {
      assertEquals("Book & <board>", document.getDocumentInformation().getTitle());
      assertEquals("Lowfirst", document.getDocumentInformation().getCreator());
      assertEquals("Lowfirst", document.getDocumentInformation().getProducer());
      assertNull(document.getDocumentInformation().getCreationDate());
      var catalog = document.getDocumentCatalog();
      assertEquals("en", catalog.getLanguage());
      assertTrue(catalog.getViewerPreferences().displayDocTitle());
      assertEquals(1.7f, document.getVersion());
      String metadata =
          new String(catalog.getMetadata().toByteArray(), java.nio.charset.StandardCharsets.UTF_8);
      assertTrue(metadata.contains(">Book &amp; &lt;board&gt;<"), metadata);
      assertTrue(metadata.contains("<pdf:Producer>Lowfirst<"), metadata);
      PDOutputIntent intent = catalog.getOutputIntents().get(0);
      assertEquals("sRGB IEC61966-2.1", intent.getInfo());
      assertEquals("sRGB IEC61966-2.1", intent.getOutputCondition());
      assertEquals("sRGB IEC61966-2.1", intent.getOutputConditionIdentifier());
      assertEquals("http://www.color.org", intent.getRegistryName());
    }
  }

  @Test
  void only_the_characters_used_are_in_the_file() throws Exception {
    byte[] few = WRITER.write(document(new Block.Paragraph("text")), Paper.A4);
    assertTrue(few.length < 40_000, few.length + " bytes");
    try (PDDocument document = Loader.loadPDF(few)) {
      for (COSName name : document.getPage(0).getResources().getFontNames()) {
        var font = document.getPage(0).getResources().getFont(name);
        assertTrue(font.isEmbedded());
        assertTrue(font.getName().matches("[A-Z]{6}\\+LiberationSans(-Bold)?"), font.getName());
      }
    }
  }

  @Test
  void papers_have_their_sizes_and_no_size_is_absurd() {
    assertEquals(new Paper(297, 210), Paper.A4.turned());
    assertEquals(180, Paper.A4.bodyWidthMillimetres());
    assertEquals(267, Paper.A4.bodyHeightMillimetres());
    assertEquals(612, Paper.LETTER.widthPoints(), 1e-9);
    assertEquals(792, Paper.LETTER.heightPoints(), 1e-9);
    assertFalse(isPaper(79.9, 200) || isPaper(200, 79.9) || isPaper(5000.1, 200));
    assertFalse(isPaper(Double.NaN, 200) || isPaper(200, Double.NaN) || isPaper(200, 5001));
    assertTrue(isPaper(80, 5000) && isPaper(5000, 80));
  }

  private static boolean isPaper(double width, double height) {
    try {
      return new Paper(width, height).widthMillimetres() == width;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }
}
