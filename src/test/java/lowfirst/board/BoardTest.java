package lowfirst.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lowfirst.board.Load.LoadKind;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.problem.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Boards, kits and what stands on them: looked up by name, and seen from above. */
class BoardTest {
  private static final double EXACT = 1e-9;

  // --- a body seen from above

  @ParameterizedTest
  @CsvSource({"0, 10, 4", "90, 4, 10", "180, 10, 4", "270, 4, 10", "-90, 4, 10"})
  void a_body_turned_by_right_angles_lies_along_or_across(double turned, double wide, double high) {
    BodyArea area = area(20, 30, turned, 10, 4);
    assertEquals(wide, area.width(), EXACT);
    assertEquals(high, area.height(), EXACT);
    assertEquals(20, (area.left() + area.right()) / 2, EXACT);
    assertEquals(30, (area.bottom() + area.top()) / 2, EXACT);
  }

  /** A rectangle a x b at 30 degrees needs a cos 30 + b sin 30 across, a sin 30 + b cos 30 up. */
  @Test
  void a_body_turned_otherwise_gets_the_rectangle_around_it() {
    BodyArea area = area(0, 0, 30, 10, 4);
    assertEquals(10 * Math.sqrt(3) / 2 + 4 * 0.5, area.width(), EXACT);
    assertEquals(10 * 0.5 + 4 * Math.sqrt(3) / 2, area.height(), EXACT);
    assertEquals(-area.left(), area.right(), EXACT);
    assertEquals(-area.bottom(), area.top(), EXACT);
  }

  @Test
  void bodies_overlap_only_when_deeper_than_asked_along_both_axes() {
    var body = new BodyArea(0, 0, 10, 10);
    var corner = new BodyArea(9, 8, 20, 20);
    assertTrue(body.overlaps(corner, 0.5));
    assertTrue(corner.overlaps(body, 0.5));
    assertFalse(body.overlaps(corner, 1), "exactly as deep as asked is not deeper");
    assertFalse(new BodyArea(0, 0, 10, 9).overlaps(corner, 1.0), "nor along y");
    assertFalse(body.overlaps(new BodyArea(2, 10, 8, 12), 0), "edges that touch");
    assertFalse(body.overlaps(new BodyArea(10, 2, 12, 8), 0));
    assertFalse(body.overlaps(new BodyArea(2, 11, 8, 12), 0), "above");
    assertFalse(body.overlaps(new BodyArea(11, 2, 12, 8), 0), "beside");
  }

  @ParameterizedTest
  @CsvSource({"true, 3, 8", "false, 8, 8"})
  void a_body_of_which_nobody_says_how_it_is_turned_may_lie_either_way(
      boolean isTurnKnown, double wide, double high) {
    Placement upright =
        new Placement(
            Designator.of("R1"),
            20,
            30,
            0,
            isTurnKnown,
            Side.TOP,
            "",
            "",
            "",
            Place.ofLine("placements.csv", 2));
    BodyArea area = BodyArea.around(upright, new BodyOutline.BodySize(3, 8));
    assertEquals(wide, area.width(), EXACT);
    assertEquals(high, area.height(), EXACT);
  }

  @Test
  void a_body_without_length_and_width_covers_nothing_known() {
    Board board = SampleBoards.board("b").at("R1", 1, 1).body("R1", 0, 0).build();
    assertEquals(
        Optional.empty(),
        BodyArea.of(board.placements().get(0), board.outlineOf(Designator.of("R1")).orElseThrow()));
  }

  private static BodyArea area(double x, double y, double turned, double length, double width) {
    Board board =
        SampleBoards.board("b").at("R1", x, y, turned, Side.TOP).body("R1", length, width).build();
    return BodyArea.of(
            board.placements().get(0), board.outlineOf(Designator.of("R1")).orElseThrow())
        .orElseThrow();
  }

  // --- a board and its units

  @Test
  void each_unit_built_has_a_serial_of_its_own() {
    List<Unit> units = SampleBoards.board("driver").count(3).build().units();
    assertEquals(
        List.of("driver-1", "driver-2", "driver-3"), units.stream().map(Unit::serial).toList());
    assertEquals("driver-2", units.get(1).toString());
  }

  @Test
  void a_designator_named_twice_belongs_to_the_first_line_and_the_first_placement() {
    Board board =
        SampleBoards.board("b")
            .part("R1 R2", PartKind.RESISTOR, "first")
            .part("R2 R3", PartKind.RESISTOR, "second")
            .at("R2", 1, 1)
            .at("R2", 2, 2)
            .build();
    assertEquals("first", board.itemOf(Designator.of("R2")).orElseThrow().partType().text());
    assertEquals("second", board.itemOf(Designator.of("R3")).orElseThrow().partType().text());
    assertEquals(Optional.empty(), board.itemOf(Designator.of("R4")));
    assertEquals(
        1,
        board.find(Designator.of("R2")).flatMap(BoardPart::placement).orElseThrow().xMillimetres(),
        EXACT);
  }

  @ParameterizedTest
  @EnumSource(Item.Fitting.class)
  void a_line_is_fitted_unless_it_says_not(Item.Fitting fitting) {
    var item =
        new Item(
            List.of(Designator.of("R1")),
            1,
            SampleBoards.type(PartKind.RESISTOR, "330R", ""),
            "",
            OptionalDouble.empty(),
            fitting,
            Place.ofLine("bom.csv", 2));
    assertEquals(fitting != Item.Fitting.NOT_FITTED, item.isFitted());
  }

  @Test
  void parts_sit_on_one_side_and_are_soldered_on_the_other() {
    assertEquals(Side.BOTTOM, Side.TOP.opposite());
    assertEquals(Side.TOP, Side.BOTTOM.opposite());
    assertEquals("top", Side.TOP.words());
    assertEquals("bottom", Side.BOTTOM.words());
  }

  // --- designators

  @ParameterizedTest
  @ValueSource(strings = {"R0", "R9", "R10", "RLY3", "LED"})
  void a_prefix_is_the_letters_before_the_first_digit(String text) {
    assertEquals(text.replaceAll("\\d", ""), Designator.of(text).prefix());
  }

  @Test
  void numbers_in_designators_are_ordered_by_size_and_every_digit_is_one() {
    List<String> ordered = List.of("R", "R0", "R1", "R9", "R09A", "R10", "R19", "R20", "R90", "RA");
    assertEquals(
        ordered,
        List.of("RA", "R90", "R19", "R9", "R20", "R1", "R0", "R10", "R09A", "R").stream()
            .map(Designator::of)
            .sorted()
            .map(Designator::text)
            .toList());
  }

  // --- a kit

  @Test
  void a_kit_finds_what_is_named_and_only_that() {
    Kit kit = kit();
    assertEquals("b", kit.board("b").orElseThrow().name());
    assertEquals("bells", kit.rail("bells").orElseThrow().name());
    assertEquals("pin", kit.driver("pin").orElseThrow().name());
    assertEquals("damper", kit.load("damper").orElseThrow().name());
    assertEquals(Optional.empty(), kit.board("c"));
    assertEquals(Optional.empty(), kit.rail("lamps"));
    assertEquals(Optional.empty(), kit.driver("latch"));
    assertEquals(Optional.empty(), kit.load("sign"));
  }

  @ParameterizedTest
  @CsvSource({"bell, bells", "damper, bells", "lamp, ''", "sign, ''"})
  void a_channel_hangs_on_the_rail_of_its_load(String load, String rail) {
    Kit kit = kit();
    OutputChannel channel = OutputChannel.straightThrough(load, Place.ofLine("loads.csv", 2));
    assertEquals(rail, kit.railOf(channel).map(Rail::name).orElse(""));
  }

  /** Energy is stored by L i² / 2: only in what has a winding. */
  @Test
  void what_has_a_winding_throws_energy_back() {
    assertEquals(
        List.of(LoadKind.SOLENOID, LoadKind.RELAY, LoadKind.MOTOR),
        Arrays.stream(LoadKind.values()).filter(LoadKind::isInductive).toList());
    assertEquals(
        "solenoid, relay, motor, lamp, LED, resistive, capacitive",
        Arrays.stream(LoadKind.values()).map(LoadKind::words).collect(Collectors.joining(", ")));
  }

  @Test
  void a_driver_of_another_part_is_the_same_otherwise() {
    Driver pin = kit().driver("pin").orElseThrow();
    Driver other = pin.withPartType("74HCT595");
    assertEquals("74HCT595", other.partType());
    assertEquals(pin, other.withPartType(pin.partType()));
  }

  @Test
  void a_swap_applied_says_what_the_list_asked_for_and_keeps_the_rest() {
    var written =
        new Swap(
            "b",
            List.of(Designator.of("R1")),
            "470R",
            "sold out",
            "Ada",
            "2026-01-02",
            Place.ofLine("swaps.csv", 2));
    assertEquals("", written.asked());
    Swap applied = written.inPlaceOf("330R");
    assertEquals("330R", applied.asked());
    assertEquals(written, applied.inPlaceOf(""));
  }

  private static Kit kit() {
    Map<String, String> tables =
        Map.of(
            "boards.csv", "board,count,bom\na,1,a.csv\nb,1,b.csv\n",
            "a.csv", "designators,quantity,value\nR1,1,330R\n",
            "b.csv", "designators,quantity,value\nR1,1,470R\n",
            "rails.csv", "rail,voltage\nlogic,5 V\nbells,24 V\n",
            "drivers.csv", "driver,kind\nshift,logic pin\npin,logic pin\n",
            "loads.csv",
                "load,kind,rail\nbell,solenoid,bells\ndamper,motor,bells\nlamp,lamp,lights\n");
    Map<String, byte[]> files = new TreeMap<>();
    tables.forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
    return KitReader.read(new KitFiles("kit", files, List.of())).kit();
  }
}
