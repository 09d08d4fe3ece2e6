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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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
}
