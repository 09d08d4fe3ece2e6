package lowfirst.sheet.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sheet.drawing.Shape.Paint;
import lowfirst.sheet.drawing.Shape.Point;
import lowfirst.sheet.pdf.SeenPdf.Path;
import lowfirst.sheet.pdf.SeenPdf.SeenPage;
import lowfirst.sheet.pdf.SeenPdf.Text;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Drawings on paper. A millimetre is 72 / 25.4 = 2.8346 points; a figure below a title without
 * subtitle has its upper left corner at 42.52, 81.92 (title 65.92, rule 4 + 4, space 8).
 */
class DrawnTest {
  private static final PdfWriter WRITER = new PdfWriter();
  private static final double LEFT = 42.52;
  private static final double TOP = 81.92;
  private static final double MILLIMETRE = 2.8346;
  private static final Ink RED = new Ink(0xC81E0A);
  private static final Ink BLUE = new Ink(0x0A28B4);

  private static SeenPage drawn(Shape... shapes) throws Exception {
    var drawing = new Drawing(100, 50, List.of(shapes), "a drawing");
    return SeenPdf.of(
            WRITER.write(new Document("T", "", List.of(new Block.Figure(drawing, ""))), Paper.A4))
        .pages()
        .get(0);
  }

  /** The one path below the rule of the title, in millimetres of the drawing. */
  private static Path path(Shape... shapes) throws Exception {
    SeenPage page = drawn(shapes);
    assertEquals(2, page.paths().size());
    return page.paths().get(1);
  }

  private static void assertBox(double left, double top, double right, double bottom, Path path) {
    assertEquals(LEFT + left * MILLIMETRE, path.left(), 0.02);
    assertEquals(TOP + top * MILLIMETRE, path.top(), 0.02);
    assertEquals(LEFT + right * MILLIMETRE, path.right(), 0.02);
    assertEquals(TOP + bottom * MILLIMETRE, path.bottom(), 0.02);
  }

  /** A sign that the font lacks is spelled out, in the room that the sign would have had. */
  @Test
  void a_label_with_a_sign_spelled_out_is_no_wider_than_without() throws Exception {
    double plain =
        drawn(new Shape.Label(2, 6, 3, Shape.Label.Anchor.START, RED, "714-6819xx diode"))
            .text("714-6819xx diode")
            .right();
    double spelled =
        drawn(new Shape.Label(2, 6, 3, Shape.Label.Anchor.START, RED, "714-6819\uFFFD\u62B5 diode"))
            .text("714-6819‹U+FFFD›‹U+62B5› diode")
            .right();
    assertTrue(spelled <= plain * 1.1, spelled + " beside " + plain);
  }

  private static boolean covers(Path path, double x, double y) {
    return path.shape().contains(LEFT + x * MILLIMETRE, TOP + y * MILLIMETRE);
  }

  @ParameterizedTest
  @CsvSource({
    "true, 0.4, true, C81E0A, 0A28B4",
    "true, 0.4, false, C81E0A, ",
    "false, 0, true, , 0A28B4",
    "true, 0, true, , 0A28B4",
  })
  void an_area_has_the_outline_and_the_inside_it_is_given(
      boolean stroked, double line, boolean filled, String stroke, String fill) throws Exception {
    var paint =
        new Paint(
            Optional.of(RED).filter(ink -> stroked), line, Optional.of(BLUE).filter(i -> filled));
    Path path = path(new Shape.Box(10, 5, 30, 20, 0, paint));
    assertBox(10, 5, 40, 25, path);
    assertEquals(stroke == null ? -1 : Integer.parseInt(stroke, 16), path.stroke());
    assertEquals(fill == null ? -1 : Integer.parseInt(fill, 16), path.fill());
    assertEquals(stroke == null ? 0 : line * MILLIMETRE, path.line(), 0.001);
    assertTrue(covers(path, 10.1, 5.1), "corners are square");
  }

  @Test
  void what_has_neither_outline_nor_inside_is_not_there() throws Exception {
    var none = new Paint(Optional.empty(), 1, Optional.empty());
    assertEquals(1, drawn(new Shape.Box(1, 1, 5, 5, 0, none)).paths().size());
  }

  @Test
  void a_line_is_stroked_whatever_it_is_filled_with() throws Exception {
    Path path = path(new Shape.Line(10, 40, 60, 5, Paint.both(BLUE, RED, 0.5)));
    assertBox(10, 5, 60, 40, path);
    assertEquals(-1, path.fill());
    assertEquals(0xC81E0A, path.stroke());
    // From lower left to upper right, not the other diagonal.
    assertEquals(
        LEFT + 10 * MILLIMETRE,
        path.shape().getPathIterator(null) == null ? 0 : first(path)[0],
        0.02);
    assertEquals(TOP + 40 * MILLIMETRE, first(path)[1], 0.02);
  }

  private static double[] first(Path path) {
    var point = new double[6];
    path.shape().getPathIterator(null).currentSegment(point);
    return point;
  }

  /** A quarter circle of radius 6 cuts the corner at 6 (1 - sqrt 1/2) = 1.757 from each side. */
  @Test
  void corners_are_rounded_by_their_radius() throws Exception {
    Path path = path(new Shape.Box(10, 5, 40, 20, 6, Paint.fill(BLUE)));
    assertBox(10, 5, 50, 25, path);
    for (double[] corner :
        new double[][] {{10, 5, 1, 1}, {50, 5, -1, 1}, {10, 25, 1, -1}, {50, 25, -1, -1}}) {
      assertTrue(!covers(path, corner[0] + 1.73 * corner[2], corner[1] + 1.73 * corner[3]));
      assertTrue(covers(path, corner[0] + 1.78 * corner[2], corner[1] + 1.78 * corner[3]));
      // The sides are straight from 6 on.
      assertTrue(covers(path, corner[0] + 6 * corner[2], corner[1] + 0.05 * corner[3]));
      assertTrue(covers(path, corner[0] + 0.05 * corner[2], corner[1] + 6 * corner[3]));
      assertTrue(!covers(path, corner[0] + 4.5 * corner[2], corner[1] + 0.05 * corner[3]));
      assertTrue(!covers(path, corner[0] + 0.05 * corner[2], corner[1] + 4.5 * corner[3]));
    }
    // No rounder than half the shorter side.
    Path pill = path(new Shape.Box(10, 5, 40, 10, 30, Paint.fill(BLUE)));
    assertBox(10, 5, 50, 15, pill);
    assertTrue(covers(pill, 15.1, 5.05) && covers(pill, 44.9, 14.95));
  }

  @Test
  void a_circle_is_round() throws Exception {
    Path path = path(new Shape.Circle(30, 20, 10, Paint.fill(BLUE)));
    assertBox(20, 10, 40, 30, path);
    for (int degrees = 0; degrees < 360; degrees += 15) {
      double x = Math.cos(Math.toRadians(degrees));
      double y = Math.sin(Math.toRadians(degrees));
      assertTrue(covers(path, 30 + 9.98 * x, 20 + 9.98 * y), degrees + " degrees");
      assertTrue(!covers(path, 30 + 10.02 * x, 20 + 10.02 * y), degrees + " degrees");
    }
  }

  @Test
  void a_path_runs_through_its_points_and_back_when_closed() throws Exception {
    var points = List.of(new Point(10, 5), new Point(60, 15), new Point(20, 45));
    for (Shape.Path.Closing closing : Shape.Path.Closing.values()) {
      Path path = path(new Shape.Path(points, closing, Paint.stroke(RED, 0.3)));
      assertBox(10, 5, 60, 45, path);
      int sides = 0;
      for (var at = path.shape().getPathIterator(null); !at.isDone(); at.next()) {
        sides++;
      }
      // One move, two lines, and perhaps the way back.
      assertEquals(closing == Shape.Path.Closing.CLOSED ? 4 : 3, sides);
    }
    Path two =
        path(new Shape.Path(points.subList(0, 2), Shape.Path.Closing.OPEN, Paint.stroke(RED, 0.3)));
    assertBox(10, 5, 60, 15, two);
    var dot = new Shape.Path(points.subList(0, 1), Shape.Path.Closing.OPEN, Paint.stroke(RED, 0.3));
    assertEquals(1, drawn(dot).paths().size());
  }

  @ParameterizedTest
  @CsvSource({"START, 0", "MIDDLE, 0.5", "END, 1"})
  void a_label_stands_at_its_anchor(Shape.Label.Anchor anchor, double share) throws Exception {
    SeenPage page = drawn(new Shape.Label(30, 20, 4, anchor, RED, "R1\nx ±"));
    Text text = page.text("R1 x ±");
    assertEquals(4 * MILLIMETRE, text.size(), 0.01);
    assertEquals(LEFT + 30 * MILLIMETRE - share * text.width(), text.x(), 0.03);
    assertEquals(TOP + 20 * MILLIMETRE, text.y(), 0.02);
    assertEquals(0xC81E0A, text.rgb());
    assertEquals("Figure", text.tag());
  }

  @Test
  void a_stamp_shows_its_drawing_where_it_is_set_and_in_its_size() throws Exception {
    var inner =
        new Drawing(
            20,
            10,
            List.of(
                new Shape.Box(0, 0, 20, 10, 0, Paint.both(BLUE, RED, 0.5)),
                new Shape.Label(2, 6, 3, Shape.Label.Anchor.START, RED, "in")),
            "");
    SeenPage page =
        drawn(
            new Shape.Box(0, 0, 3, 3, 0, Paint.fill(RED)),
            new Shape.Stamp(inner, 10, 5, 1),
            new Shape.Stamp(inner, 50, 20, 0.5),
            new Shape.Stamp(inner, 10, 30, 2));
    assertEquals(5, page.paths().size());
    assertBox(10, 5, 30, 15, page.paths().get(2));
    assertBox(50, 20, 60, 25, page.paths().get(3));
    assertBox(10, 30, 50, 50, page.paths().get(4));
    assertEquals(0.25 * MILLIMETRE, page.paths().get(3).line(), 0.001);
    assertEquals(0x0A28B4, page.paths().get(2).fill());
    List<Text> labels = page.texts().stream().filter(t -> t.text().equals("in")).toList();
    assertEquals(3, labels.size());
    assertEquals(LEFT + 12 * MILLIMETRE, labels.get(0).x(), 0.02);
    assertEquals(TOP + 11 * MILLIMETRE, labels.get(0).y(), 0.02);
    assertEquals(1.5 * MILLIMETRE, labels.get(1).size(), 0.01);
  }

  /** A program may cut a stamp off at its box: that leaves 4 points for the outer half of lines. */
  @Test
  void a_stamp_has_room_for_its_outermost_lines() throws Exception {
    var inner = new Drawing(20, 10, List.of(), "");
    var other = new Drawing(30, 10, List.of(), "");
    var drawing =
        new Drawing(
            50, 50, List.of(new Shape.Stamp(inner, 1, 1, 1), new Shape.Stamp(other, 1, 1, 1)), "");
    byte[] pdf =
        WRITER.write(new Document("T", "", List.of(new Block.Figure(drawing, ""))), Paper.A4);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      var resources = document.getPage(0).getResources();
      var names = new java.util.ArrayList<COSName>();
      resources.getXObjectNames().forEach(names::add);
      assertEquals(2, names.size());
      var stamp = (PDFormXObject) resources.getXObject(COSName.getPDFName("S1"));
      assertEquals(-4, stamp.getBBox().getLowerLeftX(), 0.01);
      assertEquals(-4, stamp.getBBox().getLowerLeftY(), 0.01);
      assertEquals(20 * MILLIMETRE + 4, stamp.getBBox().getUpperRightX(), 0.01);
      assertEquals(10 * MILLIMETRE + 4, stamp.getBBox().getUpperRightY(), 0.01);
      assertTrue(stamp.getResources().getFontNames().iterator().hasNext());
      assertEquals("XObject", stamp.getCOSObject().getNameAsString(COSName.TYPE));
    }
  }

  /** What was set before a stamp holds no longer in it, nor what it sets after it. */
  @Test
  void black_comes_out_black_in_a_stamp_on_coloured_ground() throws Exception {
    var black =
        new Drawing(
            5, 5, List.of(new Shape.Box(0, 0, 5, 5, 0, Paint.both(Ink.BLACK, Ink.BLACK, 0.2))), "");
    SeenPage page =
        drawn(
            new Shape.Box(0, 0, 3, 3, 0, Paint.both(RED, RED, 0.4)),
            new Shape.Stamp(black, 10, 5, 1),
            new Shape.Box(0, 10, 3, 3, 0, Paint.both(RED, RED, 0.4)));
    assertEquals(0, page.paths().get(2).fill());
    assertEquals(0, page.paths().get(2).stroke());
    assertEquals(0xC81E0A, page.paths().get(3).fill());
    assertEquals(0.4 * MILLIMETRE, page.paths().get(3).line(), 0.001);
  }

  @Test
  void a_drawing_stamped_often_stands_in_the_file_once() {
    var shapes = new java.util.ArrayList<Shape>();
    for (int i = 0; i < 200; i++) {
      shapes.add(new Shape.Circle(i % 13, i % 17, 1 + i % 3, Paint.fill(RED)));
    }
    var inner = new Drawing(20, 20, shapes, "");
    assertTrue(
        bytes(new Shape.Stamp(inner, 0, 0, 1), 20)
            < bytes(new Shape.Stamp(inner, 0, 0, 1), 1) + 800);
  }

  private static int bytes(Shape.Stamp stamp, int times) {
    var drawing = new Drawing(50, 50, java.util.Collections.nCopies(times, stamp), "");
    return WRITER.write(new Document("T", "", List.of(new Block.Figure(drawing, ""))), Paper.A4)
        .length;
  }

  /** Numbers in a content stream: three decimals, rounded, no zeros behind, no exponent. */
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "1, 1",
    "-1, -1",
    "0.5, 0.5",
    "0.05, 0.05",
    "0.005, 0.005",
    "0.0004, 0",
    "12.34, 12.34",
    "12.3456, 12.346",
    "-0.5, -0.5",
    "1234567.25, 1234567.25",
    "0.1234, 0.123",
    "9.9999, 10",
    "0.101, 0.101",
    "0.11, 0.11",
  })
  void numbers_are_written_short(double number, String written) {
    var content = new PageContent(0);
    content.moveTo(number, 0);
    assertEquals(
        written + " 0 m ",
        new String(content.bytes(), java.nio.charset.StandardCharsets.ISO_8859_1));
  }
}
