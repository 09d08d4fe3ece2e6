package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lowfirst.board.Kit;
import lowfirst.intake.ShippedTables;
import lowfirst.part.BodyOutlines;
import lowfirst.part.Datasheets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DrawerSearchTest {
  private static final BodyOutlines OUTLINES = ShippedTables.bodyOutlines();
  private static final Kit KIT =
      BellPlayer.with(Map.of("swaps.csv", "board,designators,part type fitted,reason,who,date\n"));

  private static SwapTarget target(String part) {
    return SwapTarget.named(KIT, part, Optional.of("driver")).get(0);
  }

  private static DrawerResult search(String part, Datasheets drawer, int most) {
    return DrawerSearch.of(target(part), KIT, drawer, OUTLINES, most);
  }

  private static Map<String, SwapVerdict> verdicts(DrawerResult result) {
    var map = new java.util.HashMap<String, SwapVerdict>();
    Stream.of(result.best(), result.open(), result.nearMisses())
        .flatMap(List::stream)
        .forEach(hit -> map.put(hit.partType(), hit.verdict()));
    return map;
  }

  /** The search takes short cuts; none may change an answer. */
  @ParameterizedTest
  @ValueSource(strings = {"Q1", "D1", "F1", "BP-N60L"})
  void it_answers_as_a_single_swap_does(String part) {
    Datasheets drawer = ShippedTables.catalogue();
    DrawerResult result = search(part, drawer, 10_000);
    Map<String, SwapVerdict> found = verdicts(result);
    var wrong = new ArrayList<String>();
    int compared = 0;
    for (var lines : drawer.byPartType()) {
      String name = lines.get(0).partType();
      SwapVerdict single =
          SwapFinding.of(target(part).with(KIT, name, OUTLINES), OUTLINES).verdict();
      SwapVerdict searched = found.getOrDefault(name, SwapVerdict.DOES_NOT_FIT);
      if (single != searched) {
        wrong.add(name + ": " + single + " alone, " + searched + " in the drawer");
      }
      compared++;
    }
    assertEquals(List.of(), wrong);
    assertEquals(compared, result.looked());
  }

  @Test
  void what_fits_is_ranked_by_margin_and_the_counts_add_up() {
    DrawerResult result = search("Q1", Drawers.ofMosfets(500), 20);
    assertEquals(500, result.looked());
    assertTrue(result.fitting() > 0, result::toString);
    List<Double> margins = result.best().stream().map(DrawerHit::margin).toList();
    assertEquals(margins.stream().sorted(Comparator.reverseOrder()).toList(), margins);
    assertEquals(Math.min(20, result.fitting()), result.best().size());
  }

  @Test
  void a_near_miss_lacks_one_thing_and_says_which() {
    DrawerResult result = search("Q1", Drawers.ofMosfets(500), 20);
    assertTrue(!result.nearMisses().isEmpty());
    result.nearMisses().forEach(hit -> assertEquals(1, hit.lacks().size(), hit::toString));
  }

  @Test
  void the_kits_lines_complete_a_drawer_that_names_types_only() {
    Datasheets names = Datasheets.of(ShippedTables.catalogue().about("IRL540N").subList(0, 1));
    assertEquals(1, search("Q1", names, 5).fitting());
  }

  /**
   * In seconds of one core, since others may share the machine. Shown as figures, and held to
   * growing no faster than the drawer; a slow day slows both halves.
   */
  @Tag("benchmark")
  @Test
  void a_hundred_thousand_part_types_take_as_long_as_ten_times_ten_thousand() {
    for (String sort : List.of("mixed", "MOSFETs only")) {
      Datasheets small = drawer(sort, 10_000);
      Datasheets large = drawer(sort, 100_000);
      search("BP-N60L", small, 20);
      search("BP-N60L", small, 20);
      double tenth = seconds(small);
      double whole = seconds(large);
      System.out.printf(
          java.util.Locale.ROOT,
          "drawer of 100 000, %s, 32 channels: %.2f s of one core; a tenth of it %.3f s; ratio %.1f%n",
          sort,
          whole,
          tenth,
          whole / tenth);
      assertTrue(whole / tenth < 20, "grows faster than the drawer: " + whole / tenth);
    }
  }

  private static Datasheets drawer(String sort, int count) {
    return sort.equals("mixed") ? Drawers.mixed(count) : Drawers.ofMosfets(count);
  }

  private static double seconds(Datasheets drawer) {
    var threads = ManagementFactory.getThreadMXBean();
    long start = threads.getCurrentThreadCpuTime();
    DrawerResult result = search("BP-N60L", drawer, 20);
    assertTrue(result.looked() >= 10_000);
    return (threads.getCurrentThreadCpuTime() - start) / 1e9;
  }
}
