package lowfirst.sheet.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Facts.Fact;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sheet.pdf.SeenPdf.Field;
import lowfirst.sheet.pdf.SeenPdf.Path;
import lowfirst.sheet.pdf.SeenPdf.SeenPage;
import lowfirst.sheet.pdf.SeenPdf.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Where everything of a page stands, added up by hand from the sizes in {@link Style}: margins of
 * 15 mm are 42.52 points, and a line of text is 1.3 times its size with its baseline at 0.95.
 */
class LayoutTest {
  private static final PdfWriter WRITER = new PdfWriter();
  private static final double LEFT = 42.52;

  /** A4: 210 mm less 15 are 552.76 points. */
  private static final double RIGHT = 552.76;

  /** 20 by 12 mm: 56.69 by 34.02 points. */
  private static final Drawing SQUARE =
      new Drawing(
          20,
          12,
          List.of(new Shape.Box(0, 0, 20, 12, 0, Shape.Paint.fill(new Ink(0xF4E3C1)))),
          "a box");

  private static final Document SHORT =
      document(
          new Block.Heading(2, "Chapter"),
          new Block.Heading(3, "Section"),
          new Block.Paragraph("Running text."),
          new Block.Caution("hot."),
          new Block.Facts(List.of(new Fact("Board", "driver"), new Fact("Fingerprint", "0123"))),
          new Block.Figure(SQUARE, "A caption."),
          Grid.of(
              "In this order",
              List.of(Grid.numbers("No", 1), Grid.words("Pick", 4)),
              Grid.row(Cell.of("12345"), Cell.of("diode")),
              Grid.row(Cell.of("2"), Cell.of("", SQUARE)),
              Grid.row(Cell.of("3"), Cell.of("relay", SQUARE)),
              Grid.row(Cell.box(true), Cell.field("4.7")),
              Grid.row(Cell.of("5"))));

  private static Document document(Block... blocks) {
    return new Document("The title", "A subtitle", List.of(blocks));
  }

  private static SeenPdf seen(Document document) throws Exception {
    return SeenPdf.of(WRITER.write(document, Paper.A4));
  }

  private static SeenPage page(Block... blocks) throws Exception {
    return seen(document(blocks)).pages().get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "The title, 42.52, 59.62, 18, true, 111111",
    "A subtitle, 42.52, 75.94, 9.5, false, 555555",
    "Chapter, 42.52, 115.14, 12.5, true, 111111",
    "Section, 42.52, 140.49, 10.5, true, 111111",
    "Running text., 42.52, 158.19, 9.5, false, 111111",
    "Caution: hot., 72.52, 179.54, 9.5, true, 111111",
    "!, 56.87, 181.62, 10, true, 111111",
    "Board, 42.52, 199.04, 8.5, true, 111111",
    "Fingerprint, 42.52, 213.89, 8.5, true, 111111",
    "A caption., 42.52, 270.31, 8.5, false, 555555",
    "In this order, 42.52, 291.31, 9.5, true, 111111",
    "Pick, , 309.36, 7.5, true, 111111",
    "diode, , 325.26, 8.5, false, 111111",
    "relay, , 380.72, 8.5, false, 111111",
    "5, , 439.94, 8.5, false, 111111",
  })
  void texts_stand_one_below_the_other_in_their_sizes(
      String words, Double x, double y, double size, boolean bold, String rgb) throws Exception {
    Text text =
        seen(SHORT).pages().get(0).texts().stream()
            .filter(found -> found.text().equals(words))
            .findFirst()
            .orElseThrow();
    if (x != null) {
      assertEquals(x, text.x(), 0.02);
    }
    assertEquals(y, text.y(), 0.02);
    assertEquals(size, text.size(), 0.01);
    assertEquals(bold, text.bold());
    assertEquals(Integer.parseInt(rgb, 16), text.rgb());
  }

  /** The box, the sign with a bar at its side, the drawings, and the rules of the table. */
  @Test
  void lines_and_areas_stand_where_their_texts_are() throws Exception {
    SeenPage page = seen(SHORT).pages().get(0);
    double pick = page.text("Pick").x();
    assertEquals(
        List.of(
            "42.5 83.3 552.8 83.3 stroke 111111 0.90",
            "42.5 167.5 44.7 187.5 fill 111111",
            "50.5 169.5 66.5 183.0 stroke 111111 1.30 fill ffe9a8",
            "42.5 225.2 99.2 259.2 fill f4e3c1",
            "42.5 314.6 552.8 314.6 stroke 111111 0.90",
            "42.5 330.8 552.8 330.8 stroke bbbbbb 0.40",
            // A drawing of 34.02 with 2.6 above and below.
            told(pick, 333.4, pick + 56.69, 367.5, "fill f4e3c1"),
            "42.5 370.1 552.8 370.1 stroke bbbbbb 0.40",
            // The same, its text beside it.
            told(pick, 372.7, pick + 56.69, 406.7, "fill f4e3c1"),
            "42.5 409.3 552.8 409.3 stroke bbbbbb 0.40",
            told(pick, 426.3, RIGHT - 3, 426.3, "stroke 555555 0.60"),
            "42.5 429.3 552.8 429.3 stroke bbbbbb 0.40"),
        page.paths().stream().map(Path::told).limit(12).toList());
  }

  private static String told(double left, double top, double right, double bottom, String inks) {
    return String.format(Locale.ROOT, "%.1f %.1f %.1f %.1f %s", left, top, right, bottom, inks);
  }

  @Test
  void facts_stand_in_a_column_beside_the_widest_name() throws Exception {
    SeenPage page = seen(SHORT).pages().get(0);
    double beside = LEFT + page.text("Fingerprint").width() + 10;
    assertEquals(beside, page.text("driver").x(), 0.02);
    assertEquals(beside, page.text("0123").x(), 0.02);
    assertEquals(9.5, page.text("driver").size(), 0.01);
  }

  @Test
  void a_name_takes_no_more_than_a_third_of_the_line_and_goes_on_below() throws Exception {
    String name = "A name that is rather long for a column of names and goes on";
    SeenPage page =
        page(new Block.Facts(List.of(new Fact(name, "short"), new Fact("next", "one"))));
    // 35 % of 510.24, and a gap of 10.
    assertEquals(LEFT + 178.58 + 10, page.text("short").x(), 0.05);
    List<Text> lines = page.texts().stream().filter(t -> t.size() == 8.5 && t.bold()).toList();
    assertEquals(name + " next", lines.stream().map(Text::text).collect(Collectors.joining(" ")));
    assertEquals(12.35, lines.get(1).y() - lines.get(0).y(), 0.02);
    assertEquals(2.5 + 12.35, page.text("one").y() - lines.get(lines.size() - 2).y(), 0.02);
    lines.forEach(line -> assertTrue(line.right() <= LEFT + 178.6, line.text()));
  }

  /** The picture ends at the right margin, the words 10 points before it begins. */
  @Test
  void a_picture_of_facts_stands_at_the_right_margin_and_words_leave_it_free() throws Exception {
    SeenPage page =
        page(
            new Block.Facts(
                List.of(new Fact("name", "filler ".repeat(80)), new Fact("other", "word")),
                Optional.of(SQUARE)));
    double left = RIGHT - SQUARE.widthMillimetres() * 72 / 25.4;
    assertTrue(
        page.paths().stream()
            .anyMatch(path -> path.fill() >= 0 && Math.abs(path.left() - left) < 0.5),
        "the picture");
    double widest =
        page.texts().stream()
            .filter(text -> text.text().startsWith("filler"))
            .mapToDouble(Text::right)
            .max()
            .orElseThrow();
    assertTrue(widest <= left - 10 + 0.02 && widest > left - 10 - 32, widest + " of " + left);
  }

  /** A line of 8.5 points is 11.05 high, a row of one 16.25, of four lines 49.4. */
  @Test
  void what_a_row_says_for_those_that_go_on_with_it_reaches_down_beside_them() throws Exception {
    Table table =
        Grid.of(
            "",
            List.of(Grid.words("Step", 1), Grid.words("Unit", 1)),
            Grid.row(Cell.of("a\nb\nc\nd"), Cell.of("one")),
            Grid.row(Cell.of(""), Cell.of("two")),
            Grid.row(Cell.of("next"), Cell.of("three")));
    SeenPage page = page(table);
    double first = page.text("one").y();
    assertEquals(first, page.text("a").y(), 0.02);
    assertEquals(first + 16.25, page.text("two").y(), 0.02);
    assertEquals(first + 3 * 11.05, page.text("d").y(), 0.02);
    assertEquals(first + 49.4, page.text("three").y(), 0.02);
    // The rule between the units leaves out what goes on; the one below the step is whole.
    double unit = page.text("one").x() - 3;
    List<Path> rules =
        page.paths().stream().filter(path -> Math.abs(path.line() - 0.4) < 0.01).toList();
    assertEquals(3, rules.size());
    assertEquals(unit, rules.get(0).left(), 0.05);
    assertEquals(LEFT, rules.get(1).left(), 0.05);
  }

  @Test
  void the_text_of_a_fact_is_broken_at_the_right_margin() throws Exception {
    SeenPage page = page(new Block.Facts(List.of(new Fact("name", "filler ".repeat(80)))));
    double widest = page.texts().stream().mapToDouble(Text::right).max().orElseThrow();
    // Some 31 points a word: the first line comes nearer to its limit than one more.
    double limit = Math.min(RIGHT, page.text("name").right() + 10 + 480);
    assertTrue(widest <= limit && widest > limit - 32, widest + " of " + limit);
  }

  @Test
  void running_text_is_no_wider_than_the_eye_likes_and_a_caution_stands_in_from_its_sign()
      throws Exception {
    SeenPage page =
        page(new Block.Paragraph("filler ".repeat(80)), new Block.Caution("heat ".repeat(80)));
    double text = rightmost(page, "filler");
    double caution = rightmost(page, "heat");
    assertTrue(text <= LEFT + 480 && text > LEFT + 480 - 30, "" + text);
    assertTrue(caution <= LEFT + 30 + 480 && caution > LEFT + 480, "" + caution);
    // In a narrow page the margin counts: 100 mm less 15 are 240.94 points.
    SeenPage narrow =
        SeenPdf.of(
                WRITER.write(document(new Block.Caution("heat ".repeat(80))), new Paper(100, 200)))
            .pages()
            .get(0);
    double right = rightmost(narrow, "heat");
    assertTrue(right <= 240.94 && right > 240.94 - 24, "" + right);
  }

  private static double rightmost(SeenPage page, String word) {
    return page.texts().stream()
        .filter(text -> text.text().contains(word))
        .mapToDouble(Text::right)
        .max()
        .orElseThrow();
  }

  /** Three lines of 12.35, with 3 above and below; the bar runs along all of them. */
  @Test
  void the_bar_of_a_caution_is_as_high_as_its_lines() throws Exception {
    SeenPage page = page(new Block.Caution("heat ".repeat(55)));
    List<Text> lines = page.texts().stream().filter(text -> text.text().contains("heat")).toList();
    assertEquals(3, lines.size());
    List<Path> bars = page.paths().stream().filter(path -> path.right() - path.left() < 3).toList();
    assertEquals(3, bars.size());
    assertEquals(87.27 + 6, bars.get(0).top(), 0.02);
    assertEquals(12.35 * 3 + 6, bars.get(2).bottom() - bars.get(0).top(), 0.03);
    assertEquals(bars.get(0).bottom(), bars.get(1).top(), 0.01);
    assertEquals(bars.get(1).bottom(), bars.get(2).top(), 0.01);
    assertEquals(bars.get(0).top() + 3 + 9.03, lines.get(0).y(), 0.02);
    assertEquals(12.35, lines.get(1).y() - lines.get(0).y(), 0.02);
    assertEquals(12.35, lines.get(2).y() - lines.get(1).y(), 0.02);
    assertEquals(1, page.texts().stream().filter(text -> text.text().equals("!")).count());
  }

  // --- tables

  @Test
  void columns_share_the_line_and_numbers_stand_at_the_right_edge_of_theirs() throws Exception {
    SeenPage page = seen(SHORT).pages().get(0);
    Text number = page.text("12345");
    for (String other : List.of("No", "2", "3", "5")) {
      assertEquals(number.right(), page.text(other).right(), 0.02, other);
    }
    // A column of boxes takes what a box needs, one of drawings what the drawing does.
    SeenPage tight =
        page(
            Grid.of(
                "",
                List.of(
                    Grid.words("", 0.01),
                    Grid.words("D", 0.01),
                    Grid.words("F", 0.01),
                    Grid.words("W", 1)),
                Grid.row(
                    Cell.box(true),
                    Cell.of("", SQUARE),
                    Cell.field(""),
                    Cell.of("word ".repeat(300).strip()))));
    assertEquals(LEFT + 12 + 6 + 3, tight.text("D").x(), 0.3);
    assertEquals(tight.text("D").x() + 56.69 + 6, tight.text("F").x(), 0.3);
    assertEquals(tight.text("F").x() + 3.6 * 12 + 6, tight.text("W").x(), 0.3);
    // Natural widths are that of 12345, and a drawing with its text 4 beside it, each with 3 on
    // both sides; what is left goes out 1 to 4.
    double first = number.width() + 6;
    double second = 56.69 + 4 + page.text("relay").width() + 6;
    double spare = RIGHT - LEFT - first - second;
    assertEquals(LEFT + first + spare / 5 - 3, number.right(), 0.05);
    assertEquals(LEFT + first + spare / 5 + 3, page.text("Pick").x(), 0.05);
    assertEquals(page.text("Pick").x(), page.text("diode").x(), 0.01);
    assertEquals(page.text("Pick").x() + 56.69 + 4, page.text("relay").x(), 0.01);
  }

  @Test
  void a_drawing_too_wide_for_its_column_is_made_smaller() throws Exception {
    var wide =
        new Drawing(
            120, 60, List.of(new Shape.Box(0, 0, 120, 60, 0, Shape.Paint.fill(Ink.BLACK))), "wide");
    SeenPage page =
        page(
            Grid.of(
                "",
                List.of(Grid.words("A", 1), Grid.words("B", 1)),
                Grid.row(Cell.of("under", wide), Cell.of("x ".repeat(300)))));
    Path box = page.paths().stream().filter(path -> path.fill() == 0).findFirst().orElseThrow();
    double column = page.text("B").x() - page.text("A").x();
    assertEquals(page.text("A").x(), box.left(), 0.02);
    assertEquals(column - 6, box.right() - box.left(), 0.02);
    assertEquals(box.right() - box.left(), 2 * (box.bottom() - box.top()), 0.02);
    // The text below it: 2 points, then the line.
    assertEquals(box.bottom() + 2 + 8.5 * 0.95, page.text("under").y(), 0.03);
    // No column is so greedy: at most 45 % of the line and its white space.
    assertTrue(column <= 510.24 * 0.5 + 0.1, "" + column);
  }

  @Test
  void a_long_name_gives_way_to_the_columns_beside_it() throws Exception {
    String name = "n".repeat(60);
    SeenPage page =
        page(
            Grid.of(
                "",
                List.of(Grid.words("A", 0.01), Grid.words("B", 1)),
                Grid.row(Cell.of(name), Cell.of("word ".repeat(200).strip()))));
    // 84 points of a word, and 3 on both sides.
    assertEquals(LEFT + 84 + 6 + 3, page.text("B").x(), 0.1);
  }

  @Test
  void boxes_and_lines_to_write_on_are_fields_with_names() throws Exception {
    SeenPdf pdf = seen(SHORT);
    SeenPage page = pdf.pages().get(0);
    assertEquals(2, pdf.fields().size());
    Field box = pdf.fields().get(0);
    assertEquals("In this order: No", box.words());
    assertEquals(LEFT + 3, box.left(), 0.02);
    assertEquals(409.3 + 2.6, box.top(), 0.1);
    assertEquals(12, box.right() - box.left(), 0.02);
    assertEquals(12, box.bottom() - box.top(), 0.02);
    assertEquals("Ticked", box.value());
    Field line = pdf.fields().get(1);
    assertEquals("In this order: Pick", line.words());
    assertEquals("4.7", line.value());
    assertEquals(page.text("Pick").x(), line.left(), 0.02);
    assertEquals(RIGHT - 3, line.right(), 0.02);
    // It stands on its line, 3 above the lower edge of a row of 20, high enough for a line and 3.
    assertEquals(426.3, line.bottom(), 0.1);
    assertEquals(1.4 * 8.5 + 3, line.bottom() - line.top(), 0.02);
    Text filled = page.text("4.7");
    assertEquals(line.left() + 2, filled.x(), 0.02);
    assertEquals(line.top() + 2 + 8.5 * 0.75, filled.y(), 0.03);
    assertEquals(8.5, filled.size(), 0.01);
  }

  @Test
  void a_field_is_called_by_the_first_two_texts_of_its_row_and_its_column() throws Exception {
    SeenPdf pdf =
        seen(
            document(
                Grid.of(
                    "Things",
                    List.of(
                        Grid.numbers("Step", 1),
                        Grid.words("Pick", 1),
                        Grid.words("Where", 1),
                        Grid.words("Seated", 1),
                        Grid.words("", 1)),
                    Grid.row(
                        Cell.of("3"),
                        Cell.of("diode"),
                        Cell.of("D1"),
                        Cell.box(false),
                        Cell.field("")))));
    assertEquals("3, diode: Seated", pdf.fields().get(0).words());
    assertEquals("Off", pdf.fields().get(0).value());
    assertEquals("3, diode", pdf.fields().get(1).words());
  }

  @Test
  void a_field_holds_several_lines_where_its_filling_needs_them() throws Exception {
    SeenPdf pdf =
        seen(
            document(
                Grid.of(
                    "",
                    List.of(Grid.words("Reading", 1)),
                    Grid.row(Cell.field("one\ntwo\nthree")),
                    Grid.row(Cell.field("one")))));
    Field several = pdf.fields().get(0);
    assertTrue(several.severalLines());
    assertEquals("one\ntwo\nthree", several.value());
    assertEquals(3 * 8.5 * 1.3 + 3, several.bottom() - several.top(), 0.02);
    // Header: 87.27 + 5 + 14.95; the row: three lines and 5.2, its line 3 above its lower edge.
    assertEquals(107.22 + 3 * 11.05 + 5.2 - 3, several.bottom(), 0.1);
    assertEquals(11.05, pdf.pages().get(0).text("two").y() - several.top() - 2 - 6.375, 0.03);
    assertTrue(!pdf.fields().get(1).severalLines());
    assertEquals(
        107.22 + 3 * 11.05 + 5.2,
        pdf.pages().get(0).paths().stream()
            .filter(path -> path.stroke() == 0xBBBBBB)
            .findFirst()
            .orElseThrow()
            .bottom(),
        0.1);
  }

  @Test
  void a_box_shows_its_tick_only_when_ticked() throws Exception {
    for (boolean ticked : List.of(true, false)) {
      SeenPdf pdf =
          seen(document(Grid.of("", List.of(Grid.words("Done", 1)), Grid.row(Cell.box(ticked)))));
      Field box = pdf.fields().get(0);
      List<Path> drawn =
          pdf.pages().get(0).paths().stream().filter(path -> path.line() > 0.7).skip(2).toList();
      assertEquals(ticked ? 2 : 1, drawn.size());
      // 12 less 0.6 on all sides, white, with rounded corners.
      assertEquals(
          told(box.left() + 0.6, box.top() + 0.6, box.right() - 0.6, box.bottom() - 0.6, "")
              + "stroke 000000 0.80 fill ffffff",
          drawn.get(0).told());
      assertTrue(!drawn.get(0).shape().contains(box.left() + 0.75, box.top() + 0.75));
      assertTrue(drawn.get(0).shape().contains(box.left() + 1, box.top() + 1));
      if (ticked) {
        // From the left at half height down to the middle, then up to the right.
        assertEquals(
            told(box.left() + 2.64, box.top() + 3.12, box.left() + 9.6, box.top() + 8.88, "")
                + "stroke 000000 1.60",
            drawn.get(1).told());
      }
    }
  }

  @Test
  void a_table_without_headers_has_none_and_one_without_columns_is_nothing() throws Exception {
    SeenPage page = page(Grid.of("", List.of(Grid.words("", 1)), Grid.row(Cell.of("cell"))));
    // The title's rule ends at 87.27: no header, no space.
    assertEquals(87.27 + 2.6 + 8.075, page.text("cell").y(), 0.02);
    assertEquals(List.of("The title", "A subtitle"), page(Grid.of("", List.of())).words());
  }

  @Test
  void the_header_comes_again_on_each_page_and_cells_go_on_below_it() throws Exception {
    List<Table.Row> rows =
        IntStream.range(0, 60)
            .mapToObj(row -> Grid.row(Cell.of("row " + row), Cell.of("x")))
            .toList();
    SeenPdf pdf =
        seen(
            document(
                new Table("", List.of(Grid.words("Head", 1), Grid.numbers("Other", 1)), rows)));
    // 799.37 - 107.22 leave room for 42 rows of 16.25.
    assertEquals(2, pdf.pages().size());
    assertTrue(pdf.pages().get(0).words().contains("row 41"));
    SeenPage second = pdf.pages().get(1);
    assertEquals(List.of("Head", "Other", "row 42", "x"), second.words().subList(0, 4));
    assertEquals(42.52 + 2.6 + 7.125, second.text("Head").y(), 0.02);
    assertEquals("Artifact", second.text("Head").tag());
    assertEquals("TH", pdf.pages().get(0).text("Head").tag());
    assertEquals(pdf.pages().get(0).text("Head").x(), second.text("Head").x(), 0.01);
    assertEquals(pdf.pages().get(0).text("Other").x(), second.text("Other").x(), 0.01);
    assertEquals(42.52 + 14.95 + 2.6 + 8.075, second.text("row 42").y(), 0.02);
  }

  @Test
  void headers_of_one_line_stand_low_beside_one_of_two() throws Exception {
    SeenPage page =
        page(
            Grid.of(
                "",
                List.of(Grid.words("one\ntwo", 1), Grid.words("low", 1)),
                Grid.row(Cell.of("a"), Cell.of("b"))));
    assertEquals(page.text("two").y(), page.text("low").y(), 0.01);
    assertEquals(9.75, page.text("two").y() - page.text("one").y(), 0.01);
  }

  /**
   * Below its header a page has 741.9 points, of which a first row takes 593.5 so that it begins
   * below its own header. With the drawing of 34.02 and 5.2 for edges, 50 lines of 11.05 fit; on
   * the next page 66; one more page takes the last.
   */
  @Test
  void a_row_longer_than_a_page_goes_on_overleaf_line_by_line() throws Exception {
    String words = IntStream.range(0, 130).mapToObj(i -> "w" + i).collect(Collectors.joining("\n"));
    SeenPdf pdf =
        seen(
            document(
                Grid.of(
                    "",
                    List.of(Grid.words("Name", 1), Grid.words("Words", 1)),
                    Grid.row(Cell.of("name", SQUARE), Cell.of(words)),
                    Grid.row(Cell.of("last"), Cell.of("z")))));
    List<String> all = pdf.pages().stream().flatMap(page -> page.words().stream()).toList();
    for (int i = 0; i < 130; i++) {
      assertEquals(1, java.util.Collections.frequency(all, "w" + i), "w" + i);
    }
    assertEquals(1, java.util.Collections.frequency(all, "name"));
    assertTrue(pdf.pages().get(0).words().containsAll(List.of("Words", "w0", "w49")));
    assertTrue(pdf.pages().get(1).words().containsAll(List.of("w50", "w115")));
    assertTrue(pdf.pages().get(2).words().containsAll(List.of("w116", "w129")));
    long drawn =
        pdf.pages().stream()
            .flatMap(page -> page.paths().stream())
            .filter(path -> path.fill() == 0xF4E3C1)
            .count();
    assertEquals(1, drawn);
    for (SeenPage page : pdf.pages()) {
      for (Text text : page.texts()) {
        assertTrue(text.tag().equals("Artifact") || text.y() < 799.37, text.text());
      }
    }
    assertTrue(pdf.pages().get(pdf.pages().size() - 1).words().contains("last"));
  }

  // --- headings, figures, pages

  @Test
  void headings_go_down_one_level_at_a_time_and_chapters_are_larger() throws Exception {
    SeenPdf pdf =
        seen(
            document(
                new Block.Heading(3, "Early section"),
                new Block.Heading(2, "Chapter"),
                new Block.Heading(3, "Section"),
                new Block.Heading(4, "Deeper")));
    assertTrue(pdf.structure().contains("H2: Early section"), pdf.structure());
    assertTrue(pdf.structure().contains("H2: Chapter"), pdf.structure());
    assertTrue(pdf.structure().contains("H3: Section"), pdf.structure());
    assertTrue(pdf.structure().contains("H3: Deeper"), pdf.structure());
    assertEquals(10.5, pdf.pages().get(0).text("Early section").size(), 0.01);
    assertEquals(12.5, pdf.pages().get(0).text("Chapter").size(), 0.01);
  }

  private static Drawing drawing(double width, double height) {
    return new Drawing(
        width,
        height,
        List.of(new Shape.Box(0, 0, width, height, 0, Shape.Paint.fill(Ink.BLACK))),
        "");
  }

  /**
   * The body is 180 by 267 mm, 510.24 by 756.85 points; 70 points stay free for heading and
   * caption.
   */
  @ParameterizedTest
  @CsvSource({
    "180, 100, , 1",
    "180.8, 100, , 0.9956",
    "181, 100, Shown at 99 % of real size., 0.9945",
    "360, 100, Shown at 50 % of real size., 0.5",
    "100, 242, , 1",
    "100, 484.6, Shown at 50 % of real size., 0.5",
  })
  void a_figure_too_large_is_made_smaller_and_says_so(
      double width, double height, String said, double scale) throws Exception {
    Drawing drawing = drawing(width, height);
    for (String caption : List.of("", "A caption.")) {
      SeenPdf pdf = seen(document(new Block.Figure(drawing, caption)));
      SeenPage page = pdf.pages().get(pdf.pages().size() - 1);
      Path box = page.paths().stream().filter(path -> path.fill() == 0).findFirst().orElseThrow();
      assertEquals(LEFT, box.left(), 0.02);
      assertEquals(width * Paper.POINTS * scale, box.right() - box.left(), 0.1);
      assertEquals(height * Paper.POINTS * scale, box.bottom() - box.top(), 0.2);
      String words = (caption + " " + (said == null ? "" : said)).strip();
      if (words.isEmpty()) {
        assertTrue(page.words().stream().noneMatch(text -> text.contains("size")));
      } else {
        assertEquals(box.bottom() + 3 + 8.5 * 0.95, page.text(words).y(), 0.05);
      }
    }
  }

  @Test
  void what_fits_on_a_page_of_its_own_is_not_begun_on_what_is_left_of_one() throws Exception {
    // 842 - 85 points hold 61 lines of 9.5 x 1.3, and 53 below the title.
    String two = "two\n".repeat(58).strip();
    SeenPdf pdf =
        seen(document(new Block.Paragraph("one"), new Block.Section(), new Block.Paragraph(two)));
    assertEquals(List.of("The title", "A subtitle", "one"), pdf.pages().get(0).words());
    assertEquals(Collections.nCopies(58, "two"), pdf.pages().get(1).words());
    assertEquals(2, pdf.pages().size());
    SeenPage bare =
        SeenPdf.of(
                WRITER.write(new Document("T", " ", List.of(new Block.Paragraph("one"))), Paper.A4))
            .pages()
            .get(0);
    // No subtitle: the rule is 4 below the title, which ends at 65.92.
    assertEquals(69.92, bare.paths().get(0).top(), 0.02);
    assertEquals(69.92 + 4 + 5 + 9.025, bare.text("one").y(), 0.02);
  }

  /** Lines of 12.35 with the title's 87.27: (799.37 - 87.27 - 5) / 12.35 are 57 of 60 lines. */
  /** Of a first page's 57 lines 51 are full: 74 points hold a header of 21 and three rows of 16. */
  @Test
  void a_short_table_that_ends_a_document_is_not_parted() throws Exception {
    Table signatures =
        Grid.of(
            "",
            List.of(Grid.words("Who", 1)),
            Grid.row(Cell.of("built")),
            Grid.row(Cell.of("looked at")),
            Grid.row(Cell.of("powered")),
            Grid.row(Cell.of("released")));
    String lines = String.join("\n", Collections.nCopies(51, "line"));
    SeenPdf last =
        seen(document(new Block.Paragraph(lines), new Block.Heading(2, "Names"), signatures));
    assertFalse(last.pages().get(0).words().contains("Names"));
    assertTrue(last.pages().get(1).words().containsAll(List.of("Names", "built", "released")));
    SeenPdf amid =
        seen(document(new Block.Paragraph(lines), signatures, new Block.Paragraph("end")));
    assertTrue(amid.pages().get(0).words().contains("built"), "elsewhere paper is saved");
    assertTrue(amid.pages().get(1).words().contains("released"));
  }

  @Test
  void no_first_or_last_line_of_running_text_stands_alone() throws Exception {
    // 58 lines: only one would stand on the second page, so two do.
    SeenPdf pdf = seen(document(new Block.Paragraph(lines(58))));
    assertEquals(List.of("line 57", "line 58"), pdf.pages().get(1).words());
    // 56 lines in one paragraph and two in the next: both go overleaf together.
    SeenPdf two =
        seen(document(new Block.Paragraph(lines(56)), new Block.Paragraph("first\nlast")));
    assertEquals(List.of("first", "last"), two.pages().get(1).words());
    // Three lines: the first two don't part either, nor do the last two.
    SeenPdf three = seen(document(new Block.Paragraph(lines(55)), new Block.Paragraph("a\nb\nc")));
    assertEquals(List.of("a", "b", "c"), three.pages().get(1).words());
  }

  private static String lines(int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(i -> "line " + i)
        .collect(Collectors.joining("\n"));
  }

  @Test
  void the_foot_line_has_the_title_and_counts_the_pages() throws Exception {
    String title = "A title that goes on " + "and on ".repeat(30).strip();
    SeenPdf pdf =
        SeenPdf.of(
            WRITER.write(
                new Document(title, "", List.of(new Block.Paragraph(lines(100)))),
                Paper.A4.turned()));
    assertEquals(3, pdf.pages().size());
    for (int number = 1; number <= 3; number++) {
      SeenPage page = pdf.pages().get(number - 1);
      assertEquals(841.89, page.width(), 0.01);
      Text count = page.text("page " + number + " of 3");
      assertEquals(841.89 - LEFT, count.right(), 0.02);
      assertEquals(595.28 - 0.55 * LEFT, count.y(), 0.02);
      assertEquals(7.5, count.size(), 0.01);
      assertEquals(0x555555, count.rgb());
      assertEquals("Artifact", count.tag());
      Text shortened =
          page.texts().stream().filter(t -> t.text().endsWith("…")).findFirst().orElseThrow();
      assertTrue(title.startsWith(shortened.text().replace("…", "")), shortened.text());
      assertEquals(LEFT, shortened.x(), 0.02);
      assertEquals(count.y(), shortened.y(), 0.01);
      // The next "and" or "on" wouldn't have left 20 points before the count.
      assertTrue(shortened.right() <= count.x() - 20, shortened.right() + " " + count.x());
      assertTrue(shortened.right() > count.x() - 20 - 20, shortened.right() + " " + count.x());
    }
    List<Text> whole = page(new Block.Paragraph("x")).texts();
    assertEquals("The title", whole.get(whole.size() - 1).text());
  }
}
