package lowfirst.sheet.map;

import static lowfirst.sheet.map.SampleBoards.diodes;
import static lowfirst.sheet.map.SampleBoards.placement;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Side;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Shape;
import org.junit.jupiter.api.Test;

class BoardMapTest {

  private static final Designator D1 = Designator.of("D1");

  private static BoardMap onPaper(Board board, Side seenFrom) {
    return new BoardMap(board, seenFrom, BoardMap.PAPER);
  }

  private static Drawing map(Board board, Side seenFrom) {
    return onPaper(board, seenFrom).drawn(Map.of(D1, "1"), List.of());
  }

  /** The middle of the body of a board's only part, relative to the drawn board's outline. */
  private static Shape.Point middle(Drawing map) {
    Shape.Box outline = boxes(map).get(0);
    List<Shape.Point> corners = bodies(map).get(0).points();
    double x = corners.stream().mapToDouble(Shape.Point::x).average().orElseThrow();
    double y = corners.stream().mapToDouble(Shape.Point::y).average().orElseThrow();
    return new Shape.Point(x - outline.x(), y - outline.y());
  }

  private static List<Shape.Box> boxes(Drawing map) {
    return map.shapes().stream()
        .filter(Shape.Box.class::isInstance)
        .map(Shape.Box.class::cast)
        .toList();
  }

  private static List<Shape.Path> bodies(Drawing map) {
    return map.shapes().stream()
        .filter(Shape.Path.class::isInstance)
        .map(Shape.Path.class::cast)
        .filter(path -> path.points().size() == 4)
        .toList();
  }

  private static List<String> labels(Drawing map) {
    return map.shapes().stream()
        .filter(Shape.Label.class::isInstance)
        .map(shape -> ((Shape.Label) shape).text())
        .toList();
  }

  @Test
  void a_part_near_the_lower_left_corner_is_drawn_there_in_millimetres() {
    Drawing map = map(diodes(placement("D1", 15, 10, 0, Side.TOP)), Side.TOP);
    assertEquals(15, middle(map).x(), 1e-9);
    assertEquals(30, middle(map).y(), 1e-9, "40 mm high, 10 mm from below");
    assertEquals(60, boxes(map).get(0).width(), 1e-9);
  }

  @Test
  void from_the_bottom_left_and_right_are_exchanged_and_up_stays_up() {
    Drawing map = map(diodes(placement("D1", 15, 10, 0, Side.TOP)), Side.BOTTOM);
    assertEquals(45, middle(map).x(), 1e-9);
    assertEquals(30, middle(map).y(), 1e-9);
  }

  @Test
  void a_quarter_turn_stands_the_body_upright() {
    Drawing map = map(diodes(placement("D1", 15, 10, 90, Side.TOP)), Side.TOP);
    List<Shape.Point> corners = bodies(map).get(0).points();
    double width =
        corners.stream().mapToDouble(Shape.Point::x).max().orElseThrow()
            - corners.stream().mapToDouble(Shape.Point::x).min().orElseThrow();
    assertEquals(2.5, width, 1e-9);
  }

  @Test
  void rotation_is_anticlockwise_seen_from_the_top() {
    Drawing map = map(diodes(placement("D1", 30, 20, 30, Side.TOP)), Side.TOP);
    // Unturned, the third corner is at the upper right: +3.15, +1.25.
    double x = 3.15 * Math.cos(Math.PI / 6) - 1.25 * Math.sin(Math.PI / 6);
    double y = 3.15 * Math.sin(Math.PI / 6) + 1.25 * Math.cos(Math.PI / 6);
    Shape.Box outline = boxes(map).get(0);
    Shape.Point corner = bodies(map).get(0).points().get(2);
    assertEquals(30 + x, corner.x() - outline.x(), 1e-9);
    assertEquals(20 - y, corner.y() - outline.y(), 1e-9);
  }

  @Test
  void places_are_told_in_the_order_given_and_polarity_is_flagged() {
    Board board =
        diodes(placement("D1", 15, 10, 0, Side.TOP), placement("D2", 40, 10, 0, Side.TOP));
    var places = new LinkedHashMap<Designator, String>();
    places.put(Designator.of("D2"), "1");
    places.put(D1, "2");
    Drawing map = onPaper(board, Side.TOP).drawn(places, List.of());
    assertTrue(labels(map).containsAll(List.of("1 ±", "2 ±")), labels(map).toString());
    assertTrue(map.words().contains("1 at D2, 2 at D1"), map.words());
  }

  @Test
  void what_is_done_differs_from_what_is_lit_and_what_is_neither_by_more_than_colour() {
    Board board =
        diodes(
            placement("D1", 15, 10, 0, Side.TOP),
            placement("D2", 30, 10, 0, Side.TOP),
            placement("D3", 45, 10, 0, Side.TOP));
    Drawing map = onPaper(board, Side.TOP).drawn(Map.of(D1, "1"), List.of(Designator.of("D2")));
    assertEquals(3, bodies(map).size());
    assertTrue(bodies(map).get(0).paint().fill().isEmpty(), "the rest is an outline");
    assertTrue(bodies(map).get(1).paint().fill().isPresent(), "done is filled");
    assertEquals(1, labels(map).stream().filter(text -> text.startsWith("1")).count());
  }

  @Test
  void without_an_outline_the_map_leaves_a_margin_around_the_parts() {
    Board board =
        SampleBoards.board(Optional.empty(), List.of(placement("D1", -100, 900, 0, Side.TOP)));
    Shape.Box outline = boxes(map(board, Side.TOP)).get(0);
    assertEquals(6.3 + 10, outline.width(), 1e-9);
    assertEquals(2.5 + 10, outline.height(), 1e-9);
  }

  private static void assertInside(Drawing map) {
    for (Shape.Path body : bodies(map)) {
      for (Shape.Point corner : body.points()) {
        assertTrue(corner.x() >= 0 && corner.x() <= map.widthMillimetres(), "x " + corner);
        assertTrue(corner.y() >= 0 && corner.y() <= map.heightMillimetres(), "y " + corner);
      }
    }
  }

  @Test
  void parts_of_a_list_with_another_origin_than_the_outline_stay_on_the_map() {
    Board board =
        diodes(
            placement("D1", 110, -90, 0, Side.TOP),
            placement("D2", 130, -90, 0, Side.TOP),
            placement("D3", 110, -70, 0, Side.TOP),
            placement("D4", 130, -70, 0, Side.TOP));
    for (Side side : Side.values()) {
      Drawing map = map(board, side);
      assertEquals(4, bodies(map).size());
      assertInside(map);
      assertEquals(20 + 6.3 + 10, boxes(map).get(0).width(), 1e-9, "the parts and a margin");
      assertTrue(labels(map).contains("the frame is not the board's edge"), labels(map).toString());
    }
  }

  @Test
  void a_part_over_the_edge_stays_on_the_map_and_the_edge_where_it_is() {
    Board board = diodes(placement("D1", 1, 10, 0, Side.TOP), placement("D2", 40, 0, 90, Side.TOP));
    for (Side side : Side.values()) {
      Drawing map = map(board, side);
      assertInside(map);
      assertEquals(60, boxes(map).get(0).width(), 1e-9);
      assertEquals(40, boxes(map).get(0).height(), 1e-9);
    }
    Drawing map = map(board, Side.TOP);
    Shape.Box edge = boxes(map).get(0);
    double left = bodies(map).get(1).points().stream().mapToDouble(Shape.Point::x).min().orElse(0);
    assertEquals(1 - 3.15, left - edge.x(), 1e-9, "D1 is 6.3 mm long and 1 mm from the edge");
  }

  @Test
  void a_part_placed_far_off_the_board_is_named_instead_of_drawn() {
    Board board =
        diodes(placement("D1", 15, 10, 0, Side.TOP), placement("D2", 4000, 10, 0, Side.TOP));
    Drawing map = onPaper(board, Side.TOP).drawn(Map.of(Designator.of("D2"), "1"), List.of());
    assertEquals(1, bodies(map).size());
    assertEquals(64, map.widthMillimetres(), 1e-9);
    assertTrue(labels(map).contains("off the board, not shown: D2"), labels(map).toString());
    assertTrue(map.words().endsWith("off the board, not shown: D2"), map.words());
  }

  @Test
  void a_board_without_placements_says_what_it_cannot_show() {
    Board board = SampleBoards.board(Optional.empty(), List.of());
    Drawing map = map(board, Side.TOP);
    assertTrue(map.words().contains("not in the placement list: D1"), map.words());
  }
}
