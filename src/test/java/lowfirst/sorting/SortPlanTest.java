package lowfirst.sorting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lowfirst.board.Designator;
import lowfirst.board.SampleBoards;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SortPlanTest {

  @Test
  void the_same_part_written_in_two_ways_shares_a_compartment() {
    SortPlan plan =
        SortPlan.of(
            new SmallKit()
                .units(3)
                .item(SmallKit.resistor("4k7 1%"), "R1", "R2")
                .item(SmallKit.resistor("4.7 k 1 %"), "R3")
                .item(SmallKit.resistor("4k7 5%"), "R4")
                .kit());
    assertEquals(
        List.of(9, 3), plan.lines().stream().map(line -> line.compartment().quantity()).toList());
  }

  /** Words that many lines share may stand where a type number belongs. */
  @Test
  void different_values_are_different_parts_whatever_number_stands_beside_them() {
    SortPlan plan =
        SortPlan.of(
            new SmallKit()
                .item(metalFilm("220R"), "R1", "R3")
                .item(metalFilm("33k"), "R2", "R4")
                .kit());
    assertEquals(
        List.of(2, 2), plan.lines().stream().map(line -> line.compartment().quantity()).toList());
  }

  private static PartType metalFilm(String text) {
    PartType type = SmallKit.resistor(text);
    return new PartType(
        type.kind(),
        type.text(),
        type.value(),
        type.tolerance(),
        type.ratedVoltage(),
        type.ratedPower(),
        "metal film",
        "");
  }

  /** A point between digits, and a minus before them, tell parts apart. */
  @ParameterizedTest
  @CsvSource({"FUSE, 1.5 A, 15 A", "ZENER_DIODE, 3.3V, 33V", "MODULE, -9V, 9V"})
  void numbers_that_differ_by_a_point_or_a_sign_are_not_the_same_part(
      PartKind kind, String one, String other) {
    SortPlan plan =
        SortPlan.of(
            new SmallKit()
                .item(PartType.named(kind, one, "", ""), "F1")
                .item(PartType.named(kind, other, "", ""), "F2")
                .kit());
    assertEquals(2, plan.lines().size());
  }

  @Test
  void lines_stand_by_kind_and_then_by_value() {
    SortPlan plan =
        SortPlan.of(
            new SmallKit()
                .item(SmallKit.ceramic("100n"), "C1")
                .item(SmallKit.resistor("1M"), "R1")
                .item(SmallKit.resistor("330R"), "R2")
                .item(SmallKit.ceramic("22p"), "C2")
                .kit());
    assertEquals(
        List.of("330 Ω", "1 MΩ", "22 pF", "100 nF"),
        plan.lines().stream()
            .map(line -> line.compartment().type().value().orElseThrow().toString())
            .toList());
  }

  @Test
  void without_a_bag_list_nothing_is_said_of_arrivals() {
    SortLine line =
        SortPlan.of(new SmallKit().item(SmallKit.resistor("1k"), "R1").kit()).lines().get(0);
    assertEquals(OptionalInt.empty(), line.arrived());
    assertEquals(0, line.shortage());
    assertEquals(2, line.toBuy(), "two spares");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "4k7",
        "4.7 kΩ",
        "4700",
        "YE VT BK BN BN",
        "yellow violet black brown brown",
        "4K7F",
        "4k7 1%",
        "resistor 4k7",
        "4k7 resistor"
      })
  void a_bag_label_is_understood_by_value_bands_or_print(String label) {
    SortPlan plan =
        SortPlan.of(
            new SmallKit()
                .units(2)
                .item(SmallKit.resistor("4k7 1%"), "R1", "R2")
                .item(SmallKit.resistor("47k 1%"), "R3")
                .item(SmallKit.ceramic("4n7"), "C1")
                .bag(label, 3, "A7")
                .kit());
    SortLine line = plan.lines().get(0);
    assertEquals(OptionalInt.of(3), line.arrived(), () -> plan.unknown().toString());
    assertEquals(1, line.shortage());
    assertEquals(3, line.toBuy(), "one is missing, and two spares");
    assertEquals(List.of("A7"), line.bags());
    assertTrue(plan.needsALook());
  }

  @Test
  void more_than_is_needed_is_a_surplus_that_serves_as_spares() {
    SortLine line =
        SortPlan.of(new SmallKit().item(SmallKit.resistor("1k"), "R1").bag("1k", 10, "A1").kit())
            .lines()
            .get(0);
    assertEquals(9, line.surplus());
    assertEquals(0, line.toBuy());
  }

  @Test
  void a_type_number_on_a_bag_is_found_whatever_its_dashes() {
    SortPlan plan =
        SortPlan.of(
            new SmallKit()
                .item(SmallKit.numbered(PartKind.MOSFET, "BP-N60L"), "Q1")
                .item(SmallKit.numbered(PartKind.DIODE, "1N4148"), "D1")
                .bag("bp n60l", 1, "B1")
                .bag("1N4148", 5, "B2")
                .kit());
    assertTrue(plan.unknown().isEmpty());
    assertFalse(plan.needsALook());
  }

  @Test
  void a_bag_that_fits_no_part_is_named_not_dropped() {
    SortPlan plan =
        SortPlan.of(
            new SmallKit()
                .item(SmallKit.resistor("1k"), "R1")
                .bag("1k", 1, "A1")
                .bag("47n", 4, "H9")
                .bag("mystery", 1, "H8")
                .kit());
    assertEquals(
        List.of("47n", "mystery"), plan.unknown().stream().map(line -> line.text()).toList());
    assertTrue(plan.needsALook());
  }

  @Test
  void a_bag_that_fits_two_parts_is_shared_out_and_said_to_be_shared() {
    SortPlan plan =
        SortPlan.of(
            new SmallKit()
                .item(SmallKit.ceramic("100n 50V"), "C1", "C2", "C3")
                .item(SmallKit.ceramic("100n 100V"), "C4")
                .bag("100n", 4, "D4")
                .kit());
    assertEquals(
        List.of(3, 1), plan.lines().stream().map(line -> line.arrived().orElse(-1)).toList());
    assertTrue(plan.lines().stream().allMatch(SortLine::shared));
    assertFalse(plan.needsALook());
  }

  /** Three of one and one of the other are needed; bags in the order they are listed. */
  @ParameterizedTest
  @CsvSource({
    "100n 50V=2 100n=4, 3 3, true",
    "100n 50V=3 100n=2, 3 2, false",
    "100n 50V=3 100n 100V=1 100n=5, 3 6, true",
    "100n=1, 1 0, true",
  })
  void a_bag_of_either_goes_first_to_what_still_lacks(String bags, String arrived, boolean shared) {
    SmallKit kit =
        new SmallKit()
            .item(SmallKit.ceramic("100n 50V"), "C1", "C2", "C3")
            .item(SmallKit.ceramic("100n 100V"), "C4");
    Matcher bag = Pattern.compile("(.+?)=(\\d+) ?").matcher(bags);
    while (bag.find()) {
      kit.bag(bag.group(1), Integer.parseInt(bag.group(2)), "A");
    }
    List<SortLine> lines = SortPlan.of(kit.kit()).lines();
    assertEquals(
        arrived, lines.get(0).arrived().orElse(-1) + " " + lines.get(1).arrived().orElse(-1));
    lines.forEach(line -> assertEquals(shared, line.shared()));
  }

  @Test
  void parts_without_a_place_are_needed_as_often_as_the_bom_says() {
    SortPlan plan =
        SortPlan.of(
            new SmallKit()
                .units(2)
                .loose(SmallKit.numbered(PartKind.HARDWARE, "M3 screw"), 4)
                .kit());
    assertEquals(8, plan.lines().get(0).compartment().quantity());
  }

  @Test
  void how_resistors_and_capacitors_are_bent_makes_no_other_part_but_their_body_does() {
    SortPlan plan =
        SortPlan.of(
            SampleBoards.kit(
                SampleBoards.board("b")
                    .part("R1", PartKind.RESISTOR, "1k", "R_Axial_DIN0207_P10.16mm_Horizontal", "")
                    .part("R2", PartKind.RESISTOR, "1k", "R_Axial_DIN0207_P2.54mm_Vertical", "")
                    .part("R3", PartKind.RESISTOR, "1k", "R_Axial_DIN0411_P10.16mm_Horizontal", "")
                    .part("C1", PartKind.FILM_CAPACITOR, "1u", "C_Rect_L7.2mm_P5.00mm", "")
                    .part("C2", PartKind.FILM_CAPACITOR, "1u", "C_Rect_L7.2mm_P7.50mm", "")
                    .part("C3", PartKind.FILM_CAPACITOR, "1u", "C_Rect_L11mm_P5.00mm", "")));
    assertEquals(
        Map.of("R1 R2", 2, "R3", 1, "C1 C2", 2, "C3", 1),
        plan.lines().stream()
            .map(SortLine::compartment)
            .collect(
                Collectors.toMap(
                    compartment ->
                        compartment.uses().get(0).designators().stream()
                            .map(Designator::text)
                            .collect(Collectors.joining(" ")),
                    Compartment::quantity)));
  }

  /** A tenth more, rounded up; never fewer than two small ones or one that breaks easily. */
  @ParameterizedTest
  @CsvSource({
    "RESISTOR, 1, 2",
    "RESISTOR, 20, 2",
    "RESISTOR, 21, 3",
    "FUSE, 1, 2",
    "FUSE, 30, 3",
    "MOSFET, 10, 1",
    "MOSFET, 11, 2",
    "REGULATOR, 50, 1",
    "SOCKET, 50, 0",
  })
  void spares_are_a_tenth_of_what_gets_lost_or_burnt(PartKind kind, int needed, int spares) {
    SortPlan plan = SortPlan.of(new SmallKit().loose(SmallKit.numbered(kind, "x"), needed).kit());
    assertEquals(spares, plan.lines().get(0).toBuy());
  }
}
