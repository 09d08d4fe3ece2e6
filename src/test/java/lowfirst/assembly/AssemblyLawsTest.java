package lowfirst.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Stream;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Kit;
import lowfirst.board.SampleBoards;
import lowfirst.board.Side;
import lowfirst.part.PartKind;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What holds of every plan, on many boards made by a seeded generator. */
class AssemblyLawsTest {
  private static final List<PartKind> KINDS =
      List.of(
          PartKind.WIRE_LINK,
          PartKind.RESISTOR,
          PartKind.DIODE,
          PartKind.SOCKET,
          PartKind.INTEGRATED_CIRCUIT,
          PartKind.LED,
          PartKind.MOSFET,
          PartKind.HEATSINK,
          PartKind.DISPLAY,
          PartKind.RELAY,
          PartKind.ELECTROLYTIC_CAPACITOR,
          PartKind.HARDWARE,
          PartKind.BOARD_FEATURE);

  private static final AssemblyOptions TIGHT = new AssemblyOptions(5, 1.0);

  @TestFactory
  Stream<DynamicTest> of_every_plan() {
    return java.util.stream.IntStream.range(0, 150)
        .mapToObj(
            seed -> DynamicTest.dynamicTest("board " + seed, () -> check(board(seed, 30).build())));
  }

  private static void check(Board board) {
    Kit kit = kit(board);
    AssemblyPlan plan = AssemblyOrder.of(kit, TIGHT);
    assertEquals(plan, AssemblyOrder.of(kit, TIGHT), "the same kit gives the same plan");
    everyPartOnce(board, plan);
    batchesKeepTheirLimits(plan);
    nothingGoesOverWhatIsNotThereYet(plan);
    pluggedInLast(plan);
    for (int i = 0; i < plan.steps().size(); i++) {
      assertEquals(i + 1, plan.steps().get(i).number());
      assertTrue(!plan.steps().get(i).why().isBlank());
    }
  }

  private static void everyPartOnce(Board board, AssemblyPlan plan) {
    var expected = new TreeSet<Designator>();
    for (Item item : board.items()) {
      if (item.isFitted() && item.partType().kind().isOnTheBoard()) {
        expected.addAll(item.designators());
      }
    }
    var planned = new TreeSet<Designator>();
    for (Step step : plan.steps()) {
      for (Designator designator : step.designators()) {
        assertTrue(planned.add(designator), designator + " twice");
      }
    }
    planned.removeIf(name -> !expected.contains(name) && name.text().startsWith("XU"));
    assertEquals(expected, planned);
  }

  private static void batchesKeepTheirLimits(AssemblyPlan plan) {
    for (Batch batch : plan.batches()) {
      if (batch.isPluggedIn()) {
        continue;
      }
      assertTrue(batch.partsPerUnit() <= TIGHT.partsPerBatch());
      assertEquals(1, batch.steps().stream().map(Step::side).distinct().count());
      double[] heights =
          batch.steps().stream()
              .flatMapToDouble(step -> step.seatedHeightMillimetres().stream())
              .sorted()
              .toArray();
      if (heights.length > 0) {
        assertTrue(heights[heights.length - 1] - heights[0] <= 1.0 + 1e-6);
        assertEquals(batch.steps().size(), heights.length, "known and unknown don't mix");
      }
    }
  }

  /** Read from the boards alone: a display or socket over a lower part, on the same side. */
  private static void nothingGoesOverWhatIsNotThereYet(AssemblyPlan plan) {
    Map<Designator, Integer> numbers = new HashMap<>();
    plan.steps().forEach(step -> step.designators().forEach(d -> numbers.put(d, step.number())));
    for (Step high : plan.steps()) {
      boolean bridges =
          high.partType().kind() == PartKind.DISPLAY || high.partType().kind() == PartKind.SOCKET;
      for (Step low : bridges ? plan.steps() : List.<Step>of()) {
        boolean plain =
            low.partType().kind() == PartKind.RESISTOR || low.partType().kind() == PartKind.DIODE;
        boolean lower =
            plain
                && low.seatedHeightMillimetres().isPresent()
                && high.seatedHeightMillimetres().isPresent()
                && low.seatedHeightMillimetres().getAsDouble()
                    < high.seatedHeightMillimetres().getAsDouble();
        for (var upper : lower ? high.placements() : List.<lowfirst.board.Placement>of()) {
          for (var under : low.placements()) {
            boolean near =
                Math.abs(upper.xMillimetres() - under.xMillimetres()) < 5
                    && Math.abs(upper.yMillimetres() - under.yMillimetres()) < 4
                    && upper.side() == under.side();
            if (near) {
              assertTrue(low.number() < high.number(), under + " under " + upper);
            }
          }
        }
      }
    }
  }

  private static void pluggedInLast(AssemblyPlan plan) {
    boolean plugging = false;
    for (Batch batch : plan.batches()) {
      plugging |= batch.isPluggedIn();
      assertEquals(plugging, batch.isPluggedIn());
      assertEquals(
          1, batch.steps().stream().map(s -> s.stage() == Step.Stage.PLUG_IN).distinct().count());
    }
  }

  private static SampleBoards board(int seed, int parts) {
    var random = new SplittableRandom(seed);
    var board = SampleBoards.board("b");
    for (int i = 0; i < parts; i++) {
      PartKind kind = KINDS.get(random.nextInt(KINDS.size()));
      String name = (kind == PartKind.INTEGRATED_CIRCUIT ? "U" : kind.name().charAt(0) + "P") + i;
      double height = 1 + random.nextInt(60) / 5.0;
      String text = "type " + random.nextInt(6);
      if (kind == PartKind.INTEGRATED_CIRCUIT) {
        board.part(name, kind, text, "DIP-8", random.nextInt(2) == 0 ? "in socket" : "");
      } else if (random.nextInt(8) == 0) {
        board.part(name, kind, text, "package " + random.nextInt(3), "");
      } else {
        board.part(name, kind, text, height);
      }
      if (random.nextInt(5) > 0) {
        Side side = random.nextInt(5) == 0 ? Side.BOTTOM : Side.TOP;
        board.at(name, random.nextInt(60), random.nextInt(40), 90 * random.nextInt(4), side);
        boolean large = kind == PartKind.DISPLAY || kind == PartKind.SOCKET;
        board.body(name, large ? 12 : 6, large ? 12 : 3);
      }
    }
    return board;
  }

  private static Kit kit(Board... boards) {
    Kit empty = SampleBoards.kit();
    return new Kit(
        empty.settings(),
        List.of(boards),
        empty.datasheets(),
        empty.rails(),
        empty.supplies(),
        empty.channels(),
        empty.drivers(),
        empty.loads(),
        empty.bag(),
        empty.swaps(),
        List.of(),
        empty.fingerprint());
  }

  @Test
  void a_board_of_one_part_has_one_step() {
    assertEquals(1, AssemblyOrder.of(kit(single()), AssemblyOptions.USUAL).steps().size());
  }

  private static Board single() {
    return SampleBoards.board("b").part("R1", PartKind.RESISTOR, "1k", 2.5).build();
  }

  /** Time a placement, ten times as many placements: n log n, never n squared. */
  @Test
  @Tag("benchmark")
  void time_grows_no_faster_than_n_log_n() {
    // Boards of 2 000 placements, 5 and 50 of them: 10 000 and 100 000 in total.
    long few = nanoseconds(5, 2_000);
    long many = nanoseconds(50, 2_000);
    long one = nanoseconds(1, 20_000);
    System.out.printf(
        "10 000 placements %.0f ms, 100 000 %.0f ms, one board of 20 000 %.0f ms%n",
        few / 1e6, many / 1e6, one / 1e6);
    assertTrue(many < 10 * few * 2.0, few + " " + many);
  }

  private static long nanoseconds(int boards, int parts) {
    Board[] made = new Board[boards];
    for (int i = 0; i < boards; i++) {
      made[i] = spread(i, parts);
    }
    Kit kit = kit(made);
    long best = Long.MAX_VALUE;
    for (int round = 0; round < 5; round++) {
      // Processor time of this thread: other work on the machine doesn't count.
      long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      AssemblyOrder.of(kit, AssemblyOptions.USUAL);
      long taken = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
      best = Math.min(best, taken);
    }
    return best;
  }

  /** Many types on a board that grows with its parts, as real ones do. */
  private static Board spread(int seed, int parts) {
    var random = new SplittableRandom(seed);
    var board = SampleBoards.board("b" + seed);
    int edge = (int) Math.sqrt(parts * 60.0);
    for (int i = 0; i < parts; i++) {
      PartKind kind = KINDS.get(random.nextInt(KINDS.size()));
      board.part("P" + i, kind, "type " + random.nextInt(200), 1 + random.nextInt(150) / 10.0);
      board.at("P" + i, random.nextInt(edge), random.nextInt(edge)).body("P" + i, 6, 3);
    }
    return board.build();
  }
}
