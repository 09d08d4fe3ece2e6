package lowfirst.sorting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.marking.BandSequence;
import lowfirst.marking.Colour;
import lowfirst.marking.ColourCode.Body;
import lowfirst.marking.Edition;
import lowfirst.sorting.Likeness.Circumstance;
import org.junit.jupiter.api.Test;

/** What a resistor would be if one of its bands was taken for another colour. */
class MisreadingTest {
  private static final BandSequence ONE_KILOHM =
      BandSequence.of(Colour.BROWN, Colour.BLACK, Colour.RED, Colour.GOLD);

  private static final List<Misreading> FOUND =
      Misreading.of(ONE_KILOHM, Body.RESISTOR, Edition.IEC_60062_2016);

  /** IEC 60062: 20 · 100 Ω, 30 · 100 Ω, 10 · 10 Ω, 10 · 1 kΩ; all four are in E24. */
  @Test
  void brown_red_and_orange_are_taken_for_one_another_in_poor_light() {
    assertEquals("2 kΩ", meant(1, Colour.RED));
    assertEquals("3 kΩ", meant(1, Colour.ORANGE));
    assertEquals("100 Ω", meant(3, Colour.BROWN));
    assertEquals("10 kΩ", meant(3, Colour.ORANGE));
  }

  @Test
  void every_band_stands_for_what_was_read_there_and_never_for_itself() {
    for (Misreading misreading : FOUND) {
      assertEquals(ONE_KILOHM.bands().get(misreading.place() - 1), misreading.taken());
      assertEquals(
          ConfusedColours.of(misreading.taken(), misreading.meant()), misreading.circumstances());
      assertFalse(misreading.circumstances().isEmpty());
    }
    assertTrue(FOUND.stream().allMatch(misreading -> misreading.reading().isPlausible()));
  }

  /**
   * Grey is taken for white, but 19 is no value of E24; red for brown makes 18 · 10 Ω, which is.
   */
  @Test
  void a_value_that_nobody_sells_is_not_offered() {
    List<Misreading> found =
        Misreading.of(
            BandSequence.of(Colour.BROWN, Colour.GREY, Colour.RED, Colour.GOLD),
            Body.RESISTOR,
            Edition.IEC_60062_2016);
    assertTrue(found.stream().noneMatch(one -> one.place() == 2 && one.meant() == Colour.WHITE));
    assertTrue(found.stream().anyMatch(one -> one.place() == 3 && one.meant() == Colour.BROWN));
  }

  private static String meant(int place, Colour meant) {
    Misreading found =
        FOUND.stream()
            .filter(one -> one.place() == place && one.meant() == meant)
            .findFirst()
            .orElseThrow();
    assertTrue(found.circumstances().contains(Circumstance.POOR_LIGHT));
    return found.reading().value().toString();
  }
}
