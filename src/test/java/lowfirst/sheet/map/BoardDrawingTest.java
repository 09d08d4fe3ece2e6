package lowfirst.sheet.map;

import static lowfirst.sheet.map.SampleBoards.diodes;
import static lowfirst.sheet.map.SampleBoards.placement;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Side;
import lowfirst.progress.SmallPlan;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sheet.drawing.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A board of 60 by 40 mm with axial diodes of 6.3 by 2.5 mm and leads 10.16 mm apart. On a map it
 * stands 2 mm from the left and 5.5 mm from above, with 8 mm below it.
 */
class BoardDrawingTest {
  private static final List<Designator> D1 = SmallPlan.designators("D1");

  private static Board one(Side side) {
    return diodes(placement("D1", 15, 10, 0, side));
  }

  private static <T> List<T> shapes(Drawing drawing, Class<T> kind) {
    return drawing.shapes().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private static BoardMap onPaper(Board board, Side seenFrom) {
    return new BoardMap(board, seenFrom, BoardMap.PAPER);
  }

  private static Drawing map(Board board, Side seenFrom) {
    return onPaper(board, seenFrom).drawn(Map.of(D1.get(0), "1"), List.of());
  }

  @Test
  void a_map_is_the_board_with_room_for_its_words() {
    Drawing map = map(one(Side.TOP), Side.TOP);
    assertEquals(64, map.widthMillimetres(), 1e-9);
    assertEquals(53.5, map.heightMillimetres(), 1e-9);
    assertEquals(64, BoardMap.widthMillimetres(one(Side.TOP)), 1e-9);
    Shape.Box outline = shapes(map, Shape.Box.class).get(0);
    assertEquals(2, outline.x(), 1e-9);
    assertEquals(5.5, outline.y(), 1e-9);
    assertEquals(60, outline.width(), 1e-9);
    assertEquals(40, outline.height(), 1e-9);
    // A narrow board leaves 40 mm for the words.
    Board narrow = SampleBoards.board(Optional.of(new Board.Size(0, 0, 20, 10)), List.of());
    assertEquals(40, BoardMap.widthMillimetres(narrow), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "TOP, driver: seen from the top, 2, 5",
    "BOTTOM, 'driver: seen from the bottom, mirrored', 62, 59",
  })
  void the_black_corner_is_the_same_corner_on_both_sides(
      Side seenFrom, String heading, double corner, double into) {
    Drawing map = map(one(Side.TOP), seenFrom);
    Shape.Path triangle =
        shapes(map, Shape.Path.class).stream()
            .filter(path -> path.points().size() == 3)
            .findFirst()
            .orElseThrow();
    assertEquals(
        List.of(
            new Shape.Point(corner, 45.5),
            new Shape.Point(into, 45.5),
            new Shape.Point(corner, 42.5)),
        triangle.points());
    assertTrue(
        shapes(map, Shape.Label.class).stream().anyMatch(label -> label.text().equals(heading)));
    assertTrue(map.words().startsWith("Board " + heading + "; marked: 1 at D1"), map.words());
  }

  /** Only its holes are known, 10.16 mm apart: it is drawn from one to the other. */
  @Test
  void a_wire_link_is_a_line_between_its_holes() {
    Board link = SampleBoards.links(placement("D1", 30, 20, 90, Side.TOP));
    Drawing map = map(link, Side.TOP);
    assertTrue(shapes(map, Shape.Circle.class).isEmpty());
    Shape.Path line =
        shapes(map, Shape.Path.class).stream()
            .filter(path -> path.points().size() == 4)
            .findFirst()
            .orElseThrow();
    double left = line.points().stream().mapToDouble(Shape.Point::x).min().orElseThrow();
    double right = line.points().stream().mapToDouble(Shape.Point::x).max().orElseThrow();
    double top = line.points().stream().mapToDouble(Shape.Point::y).min().orElseThrow();
    double bottom = line.points().stream().mapToDouble(Shape.Point::y).max().orElseThrow();
    assertEquals(10.16, bottom - top, 1e-9);
    assertEquals(0.8, right - left, 1e-9);
    assertEquals(2 + 30, (left + right) / 2, 1e-9);
    assertTrue(map.words().endsWith("marked: 1 at D1"), map.words());
  }

  /** 60 by 40 mm with 2 on each side: shown small, its words would be too small to read. */
  @Test
  void the_small_picture_of_the_solder_side_has_no_words_in_it() {
    Drawing small = BoardMaps.of(one(Side.TOP)).wordless(lit(), List.of(), Side.BOTTOM).flat();
    assertEquals(64, small.widthMillimetres(), 1e-9);
    assertEquals(44, small.heightMillimetres(), 1e-9);
    assertTrue(shapes(small, Shape.Label.class).isEmpty());
    assertEquals(2, shapes(small, Shape.Circle.class).size(), "its leads");
    Shape.Box edge = shapes(small, Shape.Box.class).get(0);
    assertEquals(2, edge.x(), 1e-9);
    assertEquals(2, edge.y(), 1e-9);
    assertTrue(small.words().contains("seen from the bottom, mirrored; marked: 1 at D1"));
  }

  private static Map<Designator, String> lit() {
    return Map.of(D1.get(0), "1");
  }

  /**
   * 2.5 mm of the diode's 6.3 by 2.5 mm are covered however it is turned; its leads may be
   * anywhere.
   */
  @ParameterizedTest
  @EnumSource(Side.class)
  void a_part_whose_turn_is_not_known_is_drawn_round_and_the_map_says_why(Side seenFrom) {
    Board board = diodes(SampleBoards.unturned("D1", 15, 10), SampleBoards.unturned("D2", 40, 10));
    Drawing map = map(board, seenFrom);
    assertEquals(
        List.of(1.25, 1.25),
        shapes(map, Shape.Circle.class).stream().map(Shape.Circle::radius).toList());
    assertEquals(1, shapes(map, Shape.Path.class).size(), "the board's corner alone");
    Shape.Label why =
        shapes(map, Shape.Label.class).stream()
            .filter(label -> label.text().equals("round: size or turn not known"))
            .findFirst()
            .orElseThrow();
    assertTrue(why.y() < map.heightMillimetres());
    assertTrue(map.words().contains("drawn round, size or turn not known: D1"), map.words());
    assertFalse(map.words().contains("known: D1, D2"), "only what is marked");
    Drawing turned = map(one(Side.TOP), seenFrom);
    assertFalse(turned.words().contains("round"));
    assertTrue(map.heightMillimetres() > turned.heightMillimetres());
  }

  /** 64 mm have room for 50, 53.9 mm only for 20. */
  @ParameterizedTest
  @CsvSource({"60, 50, 6", "50, 50, 6", "49.9, 20, 3"})
  void a_length_to_hold_a_ruler_to_has_a_mark_each_centimetre(double width, int length, int marks) {
    Board board = SampleBoards.board(Optional.of(new Board.Size(0, 0, width, 40)), List.of());
    Drawing map = map(board, Side.TOP);
    List<Shape.Line> lines = shapes(map, Shape.Line.class);
    assertEquals(1 + marks, lines.size());
    assertEquals(2, lines.get(0).x1(), 1e-9);
    assertEquals(2 + length, lines.get(0).x2(), 1e-9);
    assertEquals(49, lines.get(0).y1(), 1e-9);
    for (int mark = 0; mark < marks; mark++) {
      assertEquals(2 + 10 * mark, lines.get(1 + mark).x1(), 1e-9);
      assertEquals(47.8, lines.get(1 + mark).y1(), 1e-9);
      assertEquals(50.2, lines.get(1 + mark).y2(), 1e-9);
    }
    Shape.Label words =
        shapes(map, Shape.Label.class).stream()
            .filter(label -> label.text().equals(length + " mm on the board"))
            .findFirst()
            .orElseThrow();
    assertEquals(52.6, words.y(), 1e-9);
  }

  /** The number's plate: three signs of 2.1 · 0.56 and 0.8 wide, 1.16 of the type high. */
  @Test
  void a_lit_place_bears_its_number_on_a_plate_in_its_middle() {
    Drawing map = map(one(Side.TOP), Side.TOP);
    Shape.Box plate = shapes(map, Shape.Box.class).get(1);
    double width = 3 * 2.1 * 0.56 + 0.8;
    assertEquals(17 - width / 2, plate.x(), 1e-9);
    assertEquals(35.5 - 2.1 * 0.58, plate.y(), 1e-9);
    assertEquals(width, plate.width(), 1e-9);
    assertEquals(2.1 * 1.16, plate.height(), 1e-9);
    Shape.Label number =
        shapes(map, Shape.Label.class).stream()
            .filter(label -> label.text().equals("1 ±"))
            .findFirst()
            .orElseThrow();
    assertEquals(17, number.x(), 1e-9);
    assertEquals(35.5 + 2.1 * 0.36, number.y(), 1e-9);
  }

  /** Seen from behind, a part is an outline with its two leads, 5.08 mm from its middle. */
  @Test
  void a_part_on_the_other_side_shows_its_outline_and_leads() {
    for (Side seenFrom : Side.values()) {
      Drawing map = map(one(Side.TOP), seenFrom);
      Shape.Path body =
          shapes(map, Shape.Path.class).stream()
              .filter(path -> path.points().size() == 4)
              .findFirst()
              .orElseThrow();
      boolean near = seenFrom == Side.TOP;
      assertEquals(near, body.paint().fill().isPresent());
      assertEquals(!near, body.paint().stroke().isPresent());
      List<Shape.Circle> leads = shapes(map, Shape.Circle.class);
      assertEquals(near ? 0 : 2, leads.size());
      if (!near) {
        // 60 mm less 15 are 45 from the left, and 2.
        assertEquals(47 + 5.08, leads.get(0).x(), 1e-9);
        assertEquals(47 - 5.08, leads.get(1).x(), 1e-9);
        assertEquals(35.5, leads.get(0).y(), 1e-9);
      }
    }
  }

  @Test
  void what_is_filled_is_grey_in_front_and_an_outline_behind() {
    for (Side seenFrom : Side.values()) {
      Drawing map = onPaper(one(Side.TOP), seenFrom).drawn(Map.of(), D1);
      Shape.Path body =
          shapes(map, Shape.Path.class).stream()
              .filter(path -> path.points().size() == 4)
              .findFirst()
              .orElseThrow();
      assertEquals(seenFrom == Side.TOP, body.paint().fill().isPresent());
      assertEquals(
          "Board "
              + shapes(map, Shape.Label.class).get(0).text()
              + "; no place marked; filled"
              + " already: 1 place",
          map.words());
    }
  }

  /** On a screen names are between 1.6 and 4.2 mm, a 32nd of what is shown. */
  @ParameterizedTest
  @CsvSource({"20, 1.6", "64, 2", "96, 3", "500, 4.2"})
  void on_a_screen_names_are_as_large_as_what_is_shown(double shown, double size) {
    Board two = diodes(placement("D1", 15, 10, 0, Side.TOP), placement("D2", 40, 10, 0, Side.TOP));
    Drawing map = BoardMap.forScreen(two, Map.of(D1.get(0), "7"), List.of(), Side.TOP, shown);
    Shape.Label number =
        shapes(map, Shape.Label.class).stream()
            .filter(label -> label.text().equals("7 ±"))
            .findFirst()
            .orElseThrow();
    assertEquals(size, number.size(), 1e-9);
    Shape.Path faint =
        shapes(map, Shape.Path.class).stream()
            .filter(path -> path.points().size() == 4 && path.paint().fill().isEmpty())
            .findFirst()
            .orElseThrow();
    assertEquals(shown / 500, faint.paint().strokeMillimetres(), 1e-9);
  }

  @Test
  void a_part_of_unknown_size_is_a_circle() {
    Board unknown =
        new Board(
            "driver",
            1,
            Optional.empty(),
            one(Side.TOP).items(),
            List.of(placement("D1", 15, 10, 0, Side.TOP)),
            part -> Optional.empty());
    Drawing map = map(unknown, Side.BOTTOM);
    List<Shape.Circle> circles = shapes(map, Shape.Circle.class);
    assertEquals(1, circles.size(), "no leads are known either");
    assertEquals(1.5, circles.get(0).radius(), 1e-9);
    // Taken for 3 by 3 mm, with 5 mm around: 13 by 13.
    Shape.Box outline = shapes(map, Shape.Box.class).get(0);
    assertEquals(13, outline.width(), 1e-9);
    assertEquals(13, outline.height(), 1e-9);
    assertEquals(2 + 6.5, circles.get(0).x(), 1e-9);
    assertEquals(5.5 + 6.5, circles.get(0).y(), 1e-9);
    // Without any part there are the margins.
    Board bare = SampleBoards.board(Optional.empty(), List.of());
    assertEquals(10, shapes(map(bare, Side.TOP), Shape.Box.class).get(0).width(), 1e-9);
  }

  /** A board whose corner is not at 0/0. */
  @Test
  void positions_count_from_the_boards_own_corner() {
    Board board =
        SampleBoards.board(
            Optional.of(new Board.Size(100, 50, 60, 40)),
            List.of(placement("D1", 115, 60, 0, Side.TOP)));
    Shape.Box plate = shapes(map(board, Side.TOP), Shape.Box.class).get(1);
    assertEquals(17, plate.x() + plate.width() / 2, 1e-9);
    assertEquals(35.5, plate.y() + 2.1 * 0.58, 1e-9);
  }

  // --- a closer look

  /**
   * One place: 6.3 mm and 8 on each side are less than 36, so 36 around its middle; but no more
   * than 2 mm below the board, which is 40 mm high.
   */
  @Test
  void a_closer_look_shows_the_neighbours() {
    Window window = BoardCloseUp.around(one(Side.TOP), D1, Side.TOP).orElseThrow();
    assertEquals(36, window.widthMillimetres(), 1e-9);
    assertEquals(36, window.heightMillimetres(), 1e-9);
    assertEquals(17 - 18, window.x(), 1e-9);
    assertEquals(40 + 2 - 36 + 5.5, window.y(), 1e-9);
  }

  /** From 10 - 3.15 to 50 + 3.15, and from 5 - 1.25 to 35 + 1.25, with 8 on each side. */
  @Test
  void a_closer_look_holds_all_its_places() {
    Board board =
        diodes(
            placement("D1", 10, 5, 0, Side.TOP),
            placement("D2", 50, 35, 0, Side.TOP),
            placement("D3", 30, 20, 0, Side.TOP));
    Window window =
        BoardCloseUp.around(board, SmallPlan.designators("D1", "D2"), Side.TOP).orElseThrow();
    assertEquals(46.3 + 16, window.widthMillimetres(), 1e-9);
    assertEquals(32.5 + 16, window.heightMillimetres(), 1e-9);
    assertEquals(10 - 3.15 - 8 + 2, window.x(), 1e-9);
    assertEquals(40 + 2 - (32.5 + 16) + 5.5, window.y(), 1e-9);
    assertTrue(BoardCloseUp.around(board, SmallPlan.designators("R9"), Side.TOP).isEmpty());
    Board unplaced = SampleBoards.board(Optional.empty(), List.of());
    assertTrue(BoardCloseUp.around(unplaced, D1, Side.TOP).isEmpty());
  }
}
