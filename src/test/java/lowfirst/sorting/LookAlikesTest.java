package lowfirst.sorting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import lowfirst.board.Kit;
import lowfirst.marking.BandSequence;
import lowfirst.marking.Colour;
import lowfirst.part.PartKind;
import lowfirst.quantity.Dimension;
import lowfirst.sorting.Likeness.Circumstance;
import org.junit.jupiter.api.Test;

class LookAlikesTest {

  @Test
  void a_part_whose_bands_read_the_other_way_round_is_another_part() {
    List<LookAlike> found =
        LookAlikes.in(
            new SmallKit()
                .item(SmallKit.resistor("10k 1%"), "R1")
                .item(SmallKit.resistor("120R 1%"), "R2")
                .kit());
    assertEquals(1, found.size());
    assertEquals(
        new Likeness.Reversed(
            BandSequence.of(Colour.BROWN, Colour.RED, Colour.BLACK, Colour.BLACK, Colour.BROWN)),
        found.get(0).likeness());
    assertEquals(Separation.Test.OHMS, found.get(0).separation().test());
  }

  @Test
  void brown_and_red_are_confused_by_everybody_and_by_two_kinds_of_eyes() {
    LookAlike alike =
        only(
            new SmallKit()
                .item(SmallKit.resistor("1k 5%"), "R1")
                .item(SmallKit.resistor("100R 5%"), "R2")
                .kit());
    Likeness.AlikeBands bands = assertInstanceOf(Likeness.AlikeBands.class, alike.likeness());
    assertEquals(List.of(3), bands.places());
    assertEquals(
        Set.of(Circumstance.POOR_LIGHT, Circumstance.PROTANOPIA, Circumstance.DEUTERANOPIA),
        bands.circumstances());
    assertEquals(10, alike.ratio(), 1e-9);
  }

  /** Gold for orange in the multiplier is a factor of ten thousand. */
  @Test
  void gold_and_orange_are_confused_by_red_and_green_blind_eyes() {
    LookAlike alike =
        only(
            new SmallKit()
                .item(SmallKit.resistor("4.7 5%"), "R1")
                .item(SmallKit.resistor("47k 5%"), "R2")
                .kit());
    Likeness.AlikeBands bands = assertInstanceOf(Likeness.AlikeBands.class, alike.likeness());
    assertTrue(
        bands
            .circumstances()
            .containsAll(Set.of(Circumstance.PROTANOPIA, Circumstance.DEUTERANOPIA)));
    assertEquals(10_000, alike.ratio(), 1e-6);
  }

  @Test
  void colours_that_nobody_confuses_make_no_look_alikes() {
    assertEquals(
        List.of(),
        LookAlikes.in(
            new SmallKit()
                .item(SmallKit.resistor("10k 5%"), "R1")
                .item(SmallKit.resistor("68R 5%"), "R2")
                .kit()));
  }

  @Test
  void a_wrong_pull_down_is_worse_than_a_wrong_gate_resistor_than_a_wrong_led_resistor() {
    Kit kit =
        new SmallKit()
            .described(SmallKit.resistor("10k 5%"), "gate pull-down", "R1")
            .described(SmallKit.resistor("1k 5%"), "LED series", "R2")
            .described(SmallKit.resistor("100R 5%"), "gate resistor", "R3")
            .described(SmallKit.resistor("220R 5%"), "LED series", "R4")
            .described(SmallKit.resistor("2k2 5%"), "lamp indicator", "R5")
            .item(SmallKit.numbered(PartKind.MOSFET, "BP-N60L"), "Q1")
            .channel("Q1", "R3", "R1")
            .kit();
    List<Consequence> ranked =
        LookAlikes.in(kit).stream().map(LookAlike::consequence).distinct().toList();
    assertEquals(
        List.of(
            Consequence.LOAD_OUT_OF_CONTROL, Consequence.SWITCHING_SPOILT, Consequence.HARMLESS),
        ranked);
    LookAlike worst = LookAlikes.in(kit).get(0);
    assertEquals("10 kΩ", worst.worsePlace().type().value().orElseThrow().toString());
  }

  @Test
  void the_same_print_on_a_capacitor_an_inductor_and_a_trimmer_is_found() {
    List<LookAlike> found =
        LookAlikes.in(
            new SmallKit()
                .item(SmallKit.ceramic("47n"), "C1")
                .item(SmallKit.valued(PartKind.INDUCTOR, Dimension.INDUCTANCE, "47mH"), "L1")
                .item(SmallKit.valued(PartKind.TRIMMER, Dimension.RESISTANCE, "47k"), "RV1")
                .kit());
    assertEquals(3, found.size());
    assertTrue(
        found.stream().allMatch(alike -> alike.likeness().equals(new Likeness.SameText("473"))),
        found::toString);
    assertTrue(
        found.stream()
            .allMatch(alike -> alike.separation().test() == Separation.Test.KIND_BY_OHMS));
  }

  @Test
  void the_digit_code_of_ten_picofarads_reads_as_a_hundred() {
    LookAlike alike =
        only(
            new SmallKit()
                .item(SmallKit.ceramic("10p"), "C1")
                .item(SmallKit.ceramic("100p"), "C2")
                .kit());
    assertEquals(new Likeness.CodeAsNumber("100"), alike.likeness());
  }

  @Test
  void a_capacitor_of_lower_voltage_in_place_of_a_higher_one_loses_protection() {
    LookAlike alike =
        only(
            new SmallKit()
                .item(SmallKit.ceramic("100n 50V"), "C1")
                .item(SmallKit.ceramic("100n 100V"), "C2")
                .kit());
    assertEquals(new Likeness.SameValue(), alike.likeness());
    assertEquals(Consequence.PROTECTION_LOST, alike.consequence());
    assertEquals("100 V", alike.worsePlace().type().ratedVoltage().orElseThrow().toString());
    assertEquals(Separation.Test.READ_THE_RATING, alike.separation().test());
  }

  private static LookAlike only(Kit kit) {
    List<LookAlike> found = LookAlikes.in(kit);
    assertEquals(1, found.size(), found::toString);
    return found.get(0);
  }
}
