package lowfirst.sheet.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sheet.drawing.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.InputSource;

class SvgWriterTest {

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
}
