package lowfirst.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.problem.Place;
import org.junit.jupiter.api.Test;

/** BOM and placement list of a board, joined by designator. */
class BoardPartTest {

  /** R1 is named twice in one line, U1 by two lines, J9 only placed, and C1 only named. */
  private static SampleBoards tangled() {
    return SampleBoards.board("driver")
        .count(2)
        .part("R1 R1 C1", PartKind.RESISTOR, "1k")
        .part("U1", PartKind.INTEGRATED_CIRCUIT, "LM358")
        .part("U1", PartKind.SOCKET, "8-way")
        .part("U1", PartKind.HEATSINK, "clip-on")
        .at("J9", 1, 1)
        .at("U1", 2, 2)
        .at("R1", 3, 3)
        .at("U1", 4, 4)
        .body("C1", 5, 2)
        .body("U1", 10, 7);
  }

  private static BoardPart part(Board board, String name) {
    return board.find(Designator.of(name)).orElseThrow();
  }

  private static List<String> lines(BoardPart part) {
    return part.items().stream().map(item -> item.partType().text()).toList();
  }

  @Test
  void each_designator_stands_once_those_of_the_bom_first() {
    Board board = tangled().build();
    assertEquals(
        List.of("R1", "C1", "U1", "J9"),
        board.parts().stream().map(part -> part.designator().text()).toList());
    assertEquals(Optional.empty(), board.find(Designator.of("R2")));
    assertEquals(2, board.count());
  }

  @Test
  void a_part_has_every_line_that_names_it_and_its_first_place() {
    Board board = tangled().build();
    assertEquals(List.of("1k"), lines(part(board, "R1")));
    assertEquals(List.of("LM358", "8-way", "clip-on"), lines(part(board, "U1")));
    assertEquals("LM358", part(board, "U1").item().orElseThrow().partType().text());
    assertEquals(List.of(), lines(part(board, "J9")));
    assertEquals(2, part(board, "U1").placement().orElseThrow().xMillimetres());
    assertEquals(Optional.empty(), part(board, "C1").placement());
  }

  @Test
  void bodies_are_found_for_placed_and_unplaced_parts_each_once() {
    var asked = new ArrayList<String>();
    Board sample = tangled().build();
    var board =
        new Board(
            "driver",
            1,
            Optional.empty(),
            sample.items(),
            sample.placements(),
            part -> {
              asked.add(part.designator().text());
              return sample.outlineOf(part.designator());
            });
    assertEquals(List.of("C1", "J9", "R1", "U1"), asked.stream().sorted().toList());
    assertEquals("body of C1", board.outlineOf(Designator.of("C1")).orElseThrow().name());
    assertEquals("body of U1", part(board, "U1").outline().orElseThrow().name());
    assertEquals(Optional.empty(), board.outlineOf(Designator.of("R1")));
  }

  /** The first line settles R1 and C1; of U1 it is the first, the LM358, that would have to. */
  @Test
  void a_line_settles_the_bodies_of_the_parts_that_it_is_the_first_to_name() {
    Board sample = tangled().build();
    BodyOutline settled = sample.outlineOf(Designator.of("C1")).orElseThrow();
    var asked = new ArrayList<String>();
    var finder =
        new BodyFinder() {
          @Override
          public Optional<BodyOutline> of(BoardPart part) {
            asked.add(part.designator().text());
            return Optional.empty();
          }

          @Override
          public Optional<BodyOutline> ofAllIn(Item line) {
            boolean tells = !line.partType().text().equals("LM358");
            return tells ? Optional.of(settled) : Optional.empty();
          }
        };
    var board =
        new Board("driver", 1, Optional.empty(), sample.items(), sample.placements(), finder);
    assertEquals(List.of("J9", "U1"), asked.stream().sorted().toList());
    assertEquals(Optional.of(settled), board.outlineOf(Designator.of("R1")));
    assertEquals(Optional.of(settled), board.outlineOf(Designator.of("C1")));
    assertEquals(Optional.empty(), board.outlineOf(Designator.of("U1")));
  }

  @Test
  void a_part_is_on_the_side_of_its_first_place_and_on_top_without_one() {
    Board board =
        tangled()
            .at("C1", 5, 5, 90, Side.BOTTOM)
            .at("C1", 6, 6, 0, Side.TOP)
            .part("R5", PartKind.RESISTOR, "1k")
            .build();
    assertEquals(Side.BOTTOM, part(board, "C1").side());
    assertEquals(Side.TOP, part(board, "J9").side());
    assertEquals(Side.TOP, part(board, "R5").side());
  }

  @Test
  void each_placement_has_its_line_and_body_at_hand() {
    List<Placed> placed = tangled().build().placed();
    assertEquals(
        List.of("J9", "U1", "R1", "U1"),
        placed.stream().map(one -> one.placement().designator().text()).toList());
    assertEquals(
        List.of(false, false, false, true), placed.stream().map(Placed::isPlacedAgain).toList());
    assertEquals(4, placed.get(3).placement().xMillimetres());
    assertEquals("body of U1", placed.get(3).outline().orElseThrow().name());
    assertEquals("LM358", placed.get(3).item().orElseThrow().partType().text());
    assertEquals(Optional.empty(), placed.get(0).item());
    assertEquals(Optional.empty(), placed.get(2).outline());
  }

  @Test
  void what_is_only_placed_is_fitted_and_what_a_line_leaves_out_is_not() {
    var leftOut =
        new Item(
            List.of(Designator.of("R2")),
            1,
            SampleBoards.type(PartKind.RESISTOR, "1k", ""),
            "",
            OptionalDouble.empty(),
            Item.Fitting.NOT_FITTED,
            Place.ofLine("bom.csv", 9));
    List<Placed> placed = tangled().item(leftOut).at("R2", 9, 9).build().placed();
    assertEquals(
        List.of(true, true, true, true, false), placed.stream().map(Placed::isFitted).toList());
  }

  @Test
  void its_lists_cannot_be_changed() {
    Board board = tangled().build();
    assertThrows(UnsupportedOperationException.class, () -> board.parts().clear());
    assertThrows(UnsupportedOperationException.class, () -> board.placed().clear());
  }

  @Test
  void boards_are_equal_by_their_tables_and_bodies() {
    Board board = tangled().build();
    assertEquals(board, tangled().build());
    assertEquals(board.hashCode(), tangled().build().hashCode());
    assertNotEquals(board, SampleBoards.board("other").build());
    assertFalse(board.equals((Object) "driver"));
    List<UnaryOperator<SampleBoards>> changes =
        List.of(
            one -> one.count(3),
            one -> one.part("R3", PartKind.RESISTOR, "1k"),
            one -> one.at("R4", 5, 5),
            one -> one.body("R1", 6, 2));
    changes.forEach(change -> assertNotEquals(board, change.apply(tangled()).build()));
    assertNotEquals(named("driver", Optional.empty()), named("other", Optional.empty()));
    Optional<Board.Size> size = Optional.of(new Board.Size(0, 0, 60, 40));
    assertNotEquals(named("driver", Optional.empty()), named("driver", size));
    assertNotEquals(board.hashCode(), named("driver", size).hashCode());
    assertTrue(board.toString().startsWith("driver of 4 items and 4 placements"));
  }

  private static Board named(String name, Optional<Board.Size> size) {
    return new Board(name, 1, size, List.of(), List.of(), part -> Optional.empty());
  }
}
