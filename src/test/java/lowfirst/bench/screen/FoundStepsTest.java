package lowfirst.bench.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.bench.BenchKit;
import lowfirst.bench.page.FoundScreen;
import lowfirst.progress.Progress;
import org.junit.jupiter.api.Test;

/** What the finder says that it looked for. */
class FoundStepsTest {
  private static final Progress PROGRESS =
      Progress.of(AssemblyOrder.of(BenchKit.SMALL, AssemblyOptions.USUAL), List.of());

  /** R1 is a place of the kit, and 0.1 Ω in the RKM code of IEC 60062, which the kit has not. */
  @Test
  void what_no_part_of_the_kit_is_worth_is_not_told_beside_what_was_found() {
    FoundScreen place = FoundSteps.in(PROGRESS, "r1");
    assertEquals("designator R1", place.understood());
    assertEquals(1, place.hits().size());
    assertEquals("\"4k7\" can mean 4.7 kΩ", said("4k7").split("; ")[0]);
  }

  /** The digit code of IEC 60062 counts in ohms, picofarads or microhenries. */
  @Test
  void all_that_a_print_can_mean_is_told_in_one_breath() {
    String words = said("104");
    assertTrue(words.startsWith("\"104\" can mean 100 kΩ, 100 nF or 100 mH. No step"), words);
  }

  @Test
  void where_nothing_fits_it_is_told_what_was_looked_for() {
    String words = said("3k3");
    assertTrue(words.startsWith("\"3k3\" can mean 3.3 kΩ. No step of this kit fits."), words);
    assertTrue(said("zz").startsWith("No step of this kit fits."), said("zz"));
  }

  private static String said(String asked) {
    return FoundSteps.in(PROGRESS, asked).understood();
  }
}
