package lowfirst.sheet.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import lowfirst.sheet.Block;
import lowfirst.sheet.Block.Cell;
import lowfirst.sheet.Block.Table;
import lowfirst.sheet.Document;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sheet.drawing.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.InputSource;

class SvgAndHtmlWriterTest {

  private static Drawing drawing(String label) {
    return new Drawing(
        10,
        5,
        List.of(
            new Shape.Line(0, 0, 10, 1.0 / 3, Shape.Paint.stroke(Ink.BLACK, 0.2)),
            new Shape.Label(5, 3, 2, Shape.Label.Anchor.MIDDLE, Ink.BLACK, label)),
        "what " + label + " looks like");
  }

  private static org.w3c.dom.Document parsed(String xml) throws Exception {
    var factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
  }

  @Test
  void a_drawing_is_in_millimetres_and_says_what_it_shows() {
    assertEquals(
        """
        <svg xmlns="http://www.w3.org/2000/svg" role="img" width="10mm" height="5mm" \
        viewBox="0 0 10 5" font-family="'Liberation Sans', Arial, Helvetica, sans-serif">
        <title>Resistor</title>
        <desc>what R1 looks like</desc>
        <line x1="0" y1="0" x2="10" y2="0.333" fill="none" stroke="#000000" stroke-width="0.2"/>
        <text x="5" y="3" font-size="2" text-anchor="middle" fill="#000000">R1</text>
        </svg>
        """,
        SvgWriter.write(drawing("R1"), "Resistor"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "\" onload=\"alert(1)",
        "a & b < c > d ' e",
        "\u0000\u0007\u001b[2J\uFFFE",
        "\u202Eback",
        "\uD800 alone",
        "]]>",
        "<!--"
      })
  void whatever_a_table_says_stays_text(String nasty) throws Exception {
    org.w3c.dom.Document svg = parsed(SvgWriter.write(drawing(nasty), nasty));
    assertEquals(0, svg.getElementsByTagName("script").getLength());
    assertFalse(svg.getDocumentElement().hasAttribute("onload"));
    String html =
        HtmlWriter.write(
            new Document(
                nasty,
                nasty,
                List.of(
                    new Block.Heading(2, nasty),
                    new Block.Paragraph(nasty),
                    new Block.Caution(nasty),
                    new Block.Facts(List.of(new Block.Facts.Fact(nasty, nasty))),
                    new Block.Figure(drawing(nasty), nasty),
                    new Table(
                        nasty,
                        List.of(new Table.Column(nasty, Table.Align.START, 1)),
                        List.of(new Table.Row(List.of(Cell.field(nasty))))))));
    assertFalse(html.contains("<script"), html);
    assertFalse(html.contains("\u001b") || html.contains("\u202E"), html);
    assertFalse(html.contains("<!--") || html.contains("\" onload="), html);
  }

  @Test
  void boxes_and_fields_are_told_to_screen_readers() {
    String html =
        HtmlWriter.fragment(
            new Document(
                "T",
                "",
                List.of(
                    new Table(
                        "Steps",
                        List.of(
                            new Table.Column("Seated", Table.Align.START, 1),
                            new Table.Column("Soldered", Table.Align.START, 1)),
                        List.of(new Table.Row(List.of(Cell.box(true), Cell.box(false))))))));
    assertTrue(html.contains("<th scope=\"col\">Seated</th>"), html);
    assertTrue(html.contains("aria-label=\"ticked\">☑"), html);
    assertTrue(html.contains("aria-label=\"not ticked\">☐"), html);
  }

  /** SVG 1.1, chapters 7 to 10: what each shape is called and where it stands. */
  @Test
  void every_shape_is_an_element_of_its_own() {
    Shape.Paint both = Shape.Paint.both(Ink.WHITE, Ink.BLACK, 0.25);
    Shape.Paint fill = Shape.Paint.fill(new Ink(0x102030));
    var inner = new Drawing(1, 1, List.of(new Shape.Circle(1, 2, 3.0004, fill)), "inner");
    List<Shape> shapes =
        List.of(
            new Shape.Box(1, 2, 3, 4, 0.5, both),
            new Shape.Box(1, 2, 3, 4, 0, fill),
            new Shape.Path(
                List.of(new Shape.Point(0, 1), new Shape.Point(2.0006, -0.0001)),
                Shape.Path.Closing.OPEN,
                Shape.Paint.stroke(Ink.BLACK, 0)),
            new Shape.Path(List.of(new Shape.Point(0, 1)), Shape.Path.Closing.CLOSED, fill),
            new Shape.Label(1, 2, 3, Shape.Label.Anchor.END, Ink.BLACK, "a"),
            new Shape.Label(1, 2, 3, Shape.Label.Anchor.START, Ink.BLACK, "b"),
            new Shape.Stamp(inner, 5, 6, 0.5));
    String svg = SvgWriter.write(new Drawing(9, 9, shapes, "all"), "", new Window(1, 2, 3, 4));
    assertEquals(
        """
        <svg xmlns="http://www.w3.org/2000/svg" role="img" width="3mm" height="4mm" \
        viewBox="1 2 3 4" font-family="'Liberation Sans', Arial, Helvetica, sans-serif">
        <title>all</title>
        <rect x="1" y="2" width="3" height="4" rx="0.5" fill="#ffffff" stroke="#000000" \
        stroke-width="0.25"/>
        <rect x="1" y="2" width="3" height="4" fill="#102030"/>
        <polyline points="0,1 2.001,0" fill="none"/>
        <polygon points="0,1" fill="#102030"/>
        <text x="1" y="2" font-size="3" text-anchor="end" fill="#000000">a</text>
        <text x="1" y="2" font-size="3" fill="#000000">b</text>
        <g transform="translate(5 6) scale(0.5)">
        <circle cx="1" cy="2" r="3" fill="#102030"/>
        </g>
        </svg>
        """,
        svg);
  }

  /** XML 1.0, production 2, with the marks that turn what follows left out. */
  @ParameterizedTest
  @CsvSource({
    "9, true",
    "A, true",
    "D, true",
    "1F, false",
    "20, true",
    "7E, true",
    "7F, false",
    "9F, false",
    "A0, true",
    "D7FF, true",
    "E000, true",
    "FFFD, true",
    "FFFE, false",
    "10000, true",
    "8, false",
    "10FFFF, true",
  })
  void characters_that_xml_forbids_are_replaced(String hex, boolean kept) {
    int codePoint = Integer.parseInt(hex, 16);
    assertEquals(
        kept ? Character.toString(codePoint) : "\uFFFD", Escaped.of(Character.toString(codePoint)));
  }

  @ParameterizedTest
  @CsvSource({
    "2029, false",
    "202A, true",
    "202E, true",
    "202F, false",
    "2065, false",
    "2066, true",
    "2069, true",
    "206A, false",
  })
  void marks_that_turn_the_reading_direction_are_dropped(String hex, boolean dropped) {
    String mark = Character.toString(Integer.parseInt(hex, 16));
    assertEquals("a" + (dropped ? "" : mark) + "b", Escaped.of("a" + mark + "b"));
  }

  @Test
  void the_five_signs_of_markup_become_references() {
    assertEquals("&amp;&lt;&gt;&quot;&#39;x", Escaped.of("&<>\"'x"));
  }

  @Test
  void every_block_is_an_element_of_its_own() {
    var document =
        new Document(
            "T",
            "",
            List.of(
                new Block.Heading(2, "a"),
                new Block.Heading(3, "b"),
                new Block.Paragraph("one\ntwo"),
                new Block.Caution("hot"),
                new Block.Facts(List.of(new Block.Facts.Fact("Kit", "Chime"))),
                new Block.NewPage(),
                new Table(
                    "",
                    List.of(
                        new Table.Column("No", Table.Align.END, 1),
                        new Table.Column("What", Table.Align.START, 1)),
                    List.of(
                        new Table.Row(List.of(Cell.of("1"), Cell.field(""))),
                        new Table.Row(List.of(Cell.of("2"), Cell.field("5 V")))))));
    assertEquals(
        """
        <h2>a</h2>
        <h3>b</h3>
        <p>one<br>two</p>
        <p class="caution">⚠ Caution: hot</p>
        <dl>
        <dt>Kit</dt><dd>Chime</dd>
        </dl>
        <div class="new-page"></div>
        <div class="scroll"><table>
        <thead><tr><th scope="col" class="end">No</th><th scope="col">What</th></tr></thead>
        <tbody>
        <tr><td class="end">1</td><td><span class="field">&nbsp;</span></td></tr>
        <tr><td class="end">2</td><td><span class="field">5 V</span></td></tr>
        </tbody>
        </table></div>
        """,
        HtmlWriter.fragment(document));
  }

  @Test
  void a_picture_stands_over_its_words_and_a_figure_over_its_caption() {
    Drawing drawing = drawing("R1");
    String svg = SvgWriter.write(drawing);
    var column = List.of(new Table.Column("Look", Table.Align.START, 1));
    for (String words : List.of("", "red")) {
      String html =
          HtmlWriter.fragment(
              new Document(
                  "T",
                  "",
                  List.of(
                      new Table(
                          "Parts",
                          column,
                          List.of(new Table.Row(List.of(Cell.of(words, drawing))))))));
      assertTrue(html.contains("<caption>Parts</caption>\n"), html);
      assertTrue(html.contains("<td>" + svg + (words.isEmpty() ? "" : "<br>red") + "</td>"), html);
    }
    assertEquals(
        "<figure>\n" + svg + "<figcaption>a board</figcaption>\n</figure>\n",
        HtmlWriter.fragment(new Document("T", "", List.of(new Block.Figure(drawing, "a board")))));
  }

  @Test
  void a_page_fetches_nothing_and_has_its_subtitle_only_where_there_is_one() {
    String page = HtmlWriter.write(new Document("Order", "of a kit", List.of()));
    assertTrue(page.startsWith("<!doctype html>\n<html lang=\"en\">"), page);
    assertTrue(page.contains("default-src 'none'"), page);
    assertTrue(page.contains("<h1>Order</h1>\n<p>of a kit</p>\n</main>"), page);
    assertTrue(
        HtmlWriter.write(new Document("Order", " ", List.of()))
            .contains("<h1>Order</h1>\n</main>"));
  }
}
