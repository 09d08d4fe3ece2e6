package lowfirst.sheet.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import lowfirst.sheet.drawing.Shape.Label.Anchor;
import lowfirst.sheet.drawing.Shape.Paint;
import lowfirst.sheet.drawing.Shape.Path.Closing;
import lowfirst.sheet.drawing.Shape.Point;
import org.junit.jupiter.api.Test;

/** Drawings made larger, moved, set beside and onto one another. */
class DrawingTest {
  private static final Ink GREY = new Ink(0x808080);
  private static final List<Shape> SHAPES =
      List.of(
          new Shape.Line(1, 2, 3, 4, Paint.stroke(GREY, 0.5)),
          new Shape.Box(1, 2, 3, 4, 0.5, Paint.fill(GREY)),
          new Shape.Circle(5, 6, 2, Paint.both(GREY, Ink.BLACK, 0.25)),
          new Shape.Path(
              List.of(new Point(1, 1), new Point(2, 3)), Closing.CLOSED, Paint.fill(GREY)),
          new Shape.Label(4, 5, 2, Anchor.END, GREY, "R1"));
  private static final Drawing DRAWING = new Drawing(10, 8, SHAPES, "a part");

  /** Each length times two, then each place 10 to the right and 20 down. */
  private static final List<Shape> DOUBLED_AND_MOVED =
      List.of(
          new Shape.Line(12, 24, 16, 28, Paint.stroke(GREY, 1)),
          new Shape.Box(12, 24, 6, 8, 1, Paint.fill(GREY)),
          new Shape.Circle(20, 32, 4, Paint.both(GREY, Ink.BLACK, 0.5)),
          new Shape.Path(
              List.of(new Point(12, 22), new Point(14, 26)), Closing.CLOSED, Paint.fill(GREY)),
          new Shape.Label(18, 30, 4, Anchor.END, GREY, "R1"));

  @Test
  void scaling_takes_every_length_with_it() {
    Drawing scaled = DRAWING.scaled(2);
    assertEquals("20.0 x 16.0", scaled.widthMillimetres() + " x " + scaled.heightMillimetres());
    assertEquals("a part", scaled.words());
    assertEquals(DOUBLED_AND_MOVED, scaled.movedTo(10, 20).shapes());
  }

  @Test
  void moving_leaves_room_before_it() {
    Drawing moved = DRAWING.movedTo(5, 6);
    assertEquals("15.0 x 14.0", moved.widthMillimetres() + " x " + moved.heightMillimetres());
    assertEquals(new Shape.Box(6, 8, 3, 4, 0.5, Paint.fill(GREY)), moved.shapes().get(1));
    assertEquals("a part", moved.words());
  }

  @Test
  void two_drawings_stand_side_by_side_their_upper_edges_level() {
    Drawing tall = new Drawing(4, 12, List.of(new Shape.Circle(1, 1, 1, Paint.fill(GREY))), "more");
    Drawing both = DRAWING.beside(tall, 3);
    assertEquals("17.0 x 12.0", both.widthMillimetres() + " x " + both.heightMillimetres());
    assertEquals(12, tall.beside(DRAWING, 3).heightMillimetres());
    assertEquals(6, both.shapes().size());
    assertEquals(new Shape.Circle(14, 1, 1, Paint.fill(GREY)), both.shapes().get(5));
    assertEquals("a part; beside it: more", both.words());
  }

  @Test
  void a_stamp_shows_its_drawing_where_it_stands_and_stamps_in_stamps() {
    var stamped = new Drawing(50, 50, List.of(new Shape.Stamp(DRAWING, 10, 20, 2)), "stamped");
    assertEquals(DOUBLED_AND_MOVED, stamped.flat().shapes());
    assertEquals("50.0 stamped", stamped.flat().widthMillimetres() + " " + stamped.flat().words());
    var twice = new Drawing(99, 99, List.of(new Shape.Stamp(stamped, 100, 200, 3)), "twice");
    // 3 · (2 · 1 + 10) + 100 = 136, 3 · (2 · 2 + 20) + 200 = 272, 3 · 2 · 3 = 18.
    assertEquals(
        new Shape.Box(136, 272, 18, 24, 3, Paint.fill(GREY)), twice.flat().shapes().get(1));
    assertEquals(
        new Shape.Stamp(DRAWING, 25, 46, 4), stamped.scaled(2).movedTo(5, 6).shapes().get(0));
  }

  @Test
  void a_window_shows_the_whole_unless_told_otherwise() {
    assertEquals(new Window(0, 0, 10, 8), Window.whole(DRAWING));
  }

  @Test
  void a_colour_has_six_hexadecimal_figures() {
    assertEquals("#00000a", new Ink(0x0A).hex());
    assertEquals("#ffffff", new Ink(0xFFFFFF).hex());
    assertThrows(IllegalArgumentException.class, () -> new Ink(-1));
    assertThrows(IllegalArgumentException.class, () -> new Ink(0x1000000));
  }
}
