package lowfirst.progress;

import static lowfirst.progress.SmallPlan.ONE;
import static lowfirst.progress.SmallPlan.PLAN;
import static lowfirst.progress.SmallPlan.TWO;
import static lowfirst.progress.SmallPlan.spot;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SelectionTest {

  @Test
  void a_step_means_all_its_places_on_all_its_units() {
    assertEquals(
        List.of(spot(ONE, "R1"), spot(ONE, "R2"), spot(TWO, "R1"), spot(TWO, "R2")),
        spots(List.of("1"), List.of()));
    assertEquals(spots(List.of("1"), List.of()), spots(List.of("step 1"), List.of()));
    assertEquals(
        List.of(spot(ONE, "R1"), spot(ONE, "R2")), spots(List.of("1"), List.of("driver-1")));
  }

  @Test
  void a_designator_means_it_on_all_units_unless_one_is_named() {
    assertEquals(List.of(spot(ONE, "D1"), spot(TWO, "D1")), spots(List.of("D1"), List.of()));
    assertEquals(List.of(spot(TWO, "D1")), spots(List.of("d1"), List.of("driver-2")));
  }

  @Test
  void a_serial_means_everything_on_that_unit() {
    assertEquals(4, spots(List.of("driver-2"), List.of()).size());
  }

  @Test
  void a_range_means_every_designator_in_it() {
    assertEquals(
        List.of(spot(ONE, "R1"), spot(ONE, "R2")), spots(List.of("R1-R2"), List.of("driver-1")));
    assertEquals(spots(List.of("R1-R2"), List.of()), spots(List.of("R1-2"), List.of()));
    assertEquals(spots(List.of("R1"), List.of()), spots(List.of("R1-R1"), List.of()));
  }

  @Test
  void what_is_named_twice_is_taken_once() {
    assertEquals(4, spots(List.of("R1", "R1-R2", "1"), List.of()).size());
  }

  @ParameterizedTest
  @CsvSource({
    "R9, , 'no part to fit has the designator \"R9\"', 'say one of R1, R2'",
    "R1-R3, , 'no part to fit has the designator \"R3\"', 'say one of R1, R2'",
    "R2-R1, , '\"R2-R1\" is no range', 'write the lower number first, such as R1-R4'",
    "R1-R1000, , 'no part to fit has the designator \"R3\"', 'say one of R1, R2'",
    "R1-R1001, , '\"R1-R1001\" is no range', 'write the lower number first, such as R1-R4'",
    "9, , there is no step 9, say a step from 1 to 3",
    "banana, , 'no part to fit has the designator \"banana\"', "
        + "'say a step number, a designator of the kit or a unit''s serial'",
    "R1, driver-3, 'no unit has the serial \"driver-3\"', 'say one of driver-1, driver-2'",
  })
  void what_the_kit_does_not_know_is_refused_with_a_remedy(
      String text, String serial, String fault, String remedy) {
    var reading =
        Selection.parse(PLAN, List.of(text), serial == null ? List.of() : List.of(serial));
    assertFalse(reading.isRead());
    assertEquals(fault, reading.fault());
    assertEquals(remedy, reading.remedy());
  }

  @Test
  void nothing_named_is_refused() {
    assertTrue(Selection.parse(PLAN, List.of(), List.of()).fault().contains("nothing is named"));
  }

  private static List<Spot> spots(List<String> texts, List<String> serials) {
    return Selection.parse(PLAN, texts, serials).orThrow().spots();
  }
}
