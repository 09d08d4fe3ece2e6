package lowfirst.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.IntStream;
import lowfirst.board.Designator;
import lowfirst.board.SampleBoards;
import lowfirst.board.Side;
import lowfirst.part.PartKind;
import org.junit.jupiter.api.Test;

/**
 * The number of batches against brute force: every order of the groups that keeps heights (told
 * apart above 0.3 mm) and demands, and every way to cut each order. The brute force shares no code
 * with what it checks.
 */
class FewestBatchesTest {

  /**
   * A small board as the brute force sees it.
   *
   * @param sizes parts in each group
   * @param heights seated height of each group, mm
   * @param demands pairs of groups: the first before the second
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  private record Small(
      int[] sizes, double[] heights, List<int[]> demands, int most, double spread) {
    @Override
    public String toString() {
      return Arrays.toString(sizes)
          + Arrays.toString(heights)
          + demands.stream().map(Arrays::toString).toList()
          + " N "
          + most
          + " S "
          + spread;
    }
  }

  @Test
  void every_board_of_four_groups_needs_as_few_batches_as_brute_force_finds() {
    double[] heights = {1.0, 1.25, 1.5, 2.2};
    int checked = 0;
    for (int code = 0; code < 16 * 16 * 16 * 16; code += 3) {
      int[] sizes = new int[4];
      double[] tall = new double[4];
      int rest = code;
      for (int i = 0; i < 4; i++) {
        sizes[i] = 1 + rest % 4;
        rest /= 4;
        tall[i] = heights[rest % 4];
        rest /= 4;
      }
      check(new Small(sizes, tall, List.of(), 5, 0.6));
      checked++;
    }
    assertTrue(checked > 20_000);
  }

  @Test
  void boards_of_six_groups_with_demands_need_as_few_batches_as_brute_force_finds() {
    var random = new SplittableRandom(20260101);
    int withSavings = 0;
    for (int round = 0; round < 600; round++) {
      int groups = 2 + random.nextInt(5);
      int[] sizes = IntStream.range(0, groups).map(i -> 1 + random.nextInt(16)).toArray();
      double[] heights =
          IntStream.range(0, groups).mapToDouble(i -> 2 + random.nextInt(12) / 8.0).toArray();
      List<int[]> demands = new ArrayList<>();
      for (int i = 0; i < groups; i++) {
        for (int j = i + 1; j < groups; j++) {
          if (random.nextInt(6) == 0) {
            demands.add(new int[] {i, j});
          }
        }
      }
      withSavings += check(new Small(sizes, heights, demands, 24, 1.0));
    }
    assertTrue(withSavings > 5, "the interesting case must occur: " + withSavings);
  }

  @Test
  void two_and_two_part_types_that_fill_two_batches_exactly_need_only_two() {
    // In the preferred order, 14 + 14 would not fit and three flips were needed.
    var small =
        new Small(
            new int[] {14, 14, 10, 10}, new double[] {2.5, 2.5, 2.5, 2.5}, List.of(), 24, 1.5);
    assertEquals(2, planned(small).size());
    assertTrue(savesAFlip(planned(small)));
  }

  @Test
  void a_part_type_larger_than_a_batch_comes_in_as_few_steps_as_possible() {
    var small = new Small(new int[] {50}, new double[] {2.5}, List.of(), 24, 1.5);
    List<List<Ranked>> batches = planned(small);
    assertEquals(
        List.of(24, 24, 2), batches.stream().map(batch -> batch.get(0).group().size()).toList());
  }

  @Test
  void hundreds_of_part_types_of_one_height_still_fill_the_batches_that_arithmetic_allows() {
    int[] sizes = IntStream.range(0, 300).map(i -> 1 + i * 7 % 11).toArray();
    double[] heights = IntStream.range(0, 300).mapToDouble(i -> 2.5).toArray();
    int parts = Arrays.stream(sizes).sum();
    int batches = planned(new Small(sizes, heights, List.of(), 24, 1.5)).size();
    assertEquals((parts + 23) / 24, batches);
  }

  @Test
  void a_batch_left_open_by_lower_parts_is_filled_exactly_when_arithmetic_allows() {
    // 20 lower parts leave room for 4: 4, then 9 + 15, 15 + 9, 15 + 9, 9 + 15, 15 + 9, 9 + 15.
    int[] sizes = {20, 9, 15, 9, 15, 9, 15, 9, 15, 9, 15, 9, 15, 4};
    double[] heights = new double[sizes.length];
    Arrays.fill(heights, 3.0);
    heights[0] = 2.5;
    var small = new Small(sizes, heights, List.of(), 24, 1.5);
    List<List<Ranked>> batches = planned(small);
    assertLawful(small, batches);
    assertEquals(7, batches.size());
  }

  /** More groups of one height than all sets of them are tried for, each waiting for a few. */
  @Test
  void many_part_types_of_one_height_keep_their_demands_too() {
    var random = new SplittableRandom(20260102);
    int saved = 0;
    for (int round = 0; round < 60; round++) {
      int groups = 11 + random.nextInt(20);
      int[] sizes = IntStream.range(0, groups).map(i -> 1 + random.nextInt(16)).toArray();
      double[] heights = IntStream.range(0, groups).mapToDouble(i -> 2.5).toArray();
      List<int[]> demands = new ArrayList<>();
      for (int later = 1; later < groups; later++) {
        if (random.nextInt(4) == 0) {
          demands.add(new int[] {random.nextInt(later), later});
        }
      }
      var small = new Small(sizes, heights, demands, 24, 1.0);
      List<List<Ranked>> batches = planned(small);
      assertLawful(small, batches);
      saved += savesAFlip(batches) ? 1 : 0;
    }
    assertTrue(saved > 5, "the interesting case must occur: " + saved);
  }

  /** Whether packing saved a flip against the preferred order, 1 or 0. */
  private static int check(Small small) {
    List<List<Ranked>> batches = planned(small);
    assertLawful(small, batches);
    assertEquals(bruteForce(small), batches.size(), small::toString);
    return savesAFlip(batches) ? 1 : 0;
  }

  private static boolean savesAFlip(List<List<Ranked>> batches) {
    return batches.stream()
        .flatMap(List::stream)
        .anyMatch(ranked -> ranked.rule() == Rule.SAVES_A_FLIP);
  }

  private static void assertLawful(Small small, List<List<Ranked>> batches) {
    var seen = new TreeSet<Designator>();
    for (List<Ranked> batch : batches) {
      int parts = 0;
      double low = Double.MAX_VALUE;
      double high = 0;
      int position = -1;
      for (Ranked ranked : batch) {
        assertTrue(ranked.position() > position, () -> "in the preferred order " + small);
        position = ranked.position();
        parts += ranked.group().size();
        low = Math.min(low, ranked.height().orElseThrow());
        high = Math.max(high, ranked.height().orElseThrow());
        for (Designator designator : ranked.group().designators()) {
          int group =
              Integer.parseInt(designator.text().substring(1, designator.text().indexOf('_')));
          for (int[] demand : small.demands()) {
            if (demand[1] == group) {
              assertTrue(
                  seen.containsAll(names(demand[0], small.sizes()[demand[0]])),
                  () -> demand[0] + " before " + demand[1] + " in " + small);
            }
          }
        }
        assertTrue(ranked.group().designators().stream().allMatch(seen::add), "twice");
      }
      assertTrue(parts <= small.most(), small::toString);
      assertTrue(high - low <= small.spread() + 1e-6, small::toString);
    }
    assertEquals(Arrays.stream(small.sizes()).sum(), seen.size());
  }

  private static List<List<Ranked>> planned(Small small) {
    List<Group> groups = new ArrayList<>();
    for (int i = 0; i < small.sizes().length; i++) {
      double height = small.heights()[i];
      String text = "type " + i;
      groups.add(
          new Group(
              names(i, small.sizes()[i]).stream()
                  .map(
                      name ->
                          new Seat(
                              name,
                              SampleBoards.type(PartKind.RESISTOR, text, ""),
                              Optional.empty(),
                              Side.TOP,
                              Optional.empty(),
                              OptionalDouble.of(height),
                              Seat.StatedBy.BOM,
                              Step.Stage.SOLDER,
                              ""))
                  .toList()));
    }
    var demands =
        small.demands().stream()
            .map(pair -> new Precedence.Demand(names(pair[0], 1).get(0), names(pair[1], 1).get(0)))
            .toList();
    return Batches.of(
        PreferredOrder.of(groups, Precedence.of(groups, demands)),
        new AssemblyOptions(small.most(), small.spread()));
  }

  private static List<Designator> names(int group, int size) {
    return IntStream.range(0, size).mapToObj(i -> Designator.of("R" + group + "_" + i)).toList();
  }

  // ---- the brute force -------------------------------------------------------------------------

  private static int bruteForce(Small small) {
    // Groups larger than a batch are cut into pieces first: {group, size}.
    List<int[]> pieces = new ArrayList<>();
    for (int group = 0; group < small.sizes().length; group++) {
      for (int left = small.sizes()[group]; left > 0; left -= small.most()) {
        pieces.add(new int[] {group, Math.min(left, small.most())});
      }
    }
    int[] levels = levels(small);
    int[] best = {Integer.MAX_VALUE};
    extend(small, pieces, levels, new ArrayList<>(), new HashSet<>(), best);
    return best[0];
  }

  private static void extend(
      Small small,
      List<int[]> pieces,
      int[] levels,
      List<int[]> order,
      Set<Integer> used,
      int[] best) {
    if (order.size() == pieces.size()) {
      for (int cuts = 0; cuts < 1 << (order.size() - 1); cuts++) {
        if (1 + Integer.bitCount(cuts) < best[0] && isAllowed(small, order, cuts)) {
          best[0] = 1 + Integer.bitCount(cuts);
        }
      }
      return;
    }
    for (int i = 0; i < pieces.size(); i++) {
      int[] piece = pieces.get(i);
      boolean levelKept =
          order.isEmpty() || levels[order.get(order.size() - 1)[0]] <= levels[piece[0]];
      if (!used.contains(i) && levelKept && demandsMet(small, pieces, used, piece[0])) {
        used.add(i);
        order.add(piece);
        extend(small, pieces, levels, order, used, best);
        order.remove(order.size() - 1);
        used.remove(i);
      }
    }
  }

  private static boolean demandsMet(Small small, List<int[]> pieces, Set<Integer> used, int group) {
    for (int[] demand : small.demands()) {
      for (int i = 0; i < pieces.size(); i++) {
        if (demand[1] == group && pieces.get(i)[0] == demand[0] && !used.contains(i)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean isAllowed(Small small, List<int[]> order, int cuts) {
    int parts = 0;
    double low = Double.MAX_VALUE;
    double high = 0;
    for (int i = 0; i < order.size(); i++) {
      if (i > 0 && (cuts & 1 << (i - 1)) != 0) {
        parts = 0;
        low = Double.MAX_VALUE;
        high = 0;
      }
      parts += order.get(i)[1];
      low = Math.min(low, small.heights()[order.get(i)[0]]);
      high = Math.max(high, small.heights()[order.get(i)[0]]);
      if (parts > small.most() || high - low > small.spread() + 1e-6) {
        return false;
      }
    }
    return true;
  }

  /** Heights told apart from the lowest up; what must wait for a taller part takes its level. */
  private static int[] levels(Small small) {
    int n = small.sizes().length;
    double[] sorted = Arrays.stream(small.heights()).sorted().toArray();
    int[] levels = new int[n];
    for (int i = 0; i < n; i++) {
      double anchor = sorted[0];
      int level = 0;
      for (double height : sorted) {
        if (height - anchor > 0.3 + 1e-6) {
          anchor = height;
          level++;
        }
        if (height == small.heights()[i]) {
          levels[i] = level;
          break;
        }
      }
    }
    for (int round = 0; round < n; round++) {
      for (int[] demand : small.demands()) {
        levels[demand[1]] = Math.max(levels[demand[1]], levels[demand[0]]);
      }
    }
    return levels;
  }
}
