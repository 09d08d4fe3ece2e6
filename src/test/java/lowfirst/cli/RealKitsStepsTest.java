package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.assembly.Step;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.cli.file.KitFolder;
import lowfirst.intake.KitReader;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Steps for boards that nobody here made; skipped, visibly, without {@code -Dreal.kits=folder}. */
class RealKitsStepsTest {
  private static final String FOLDER = System.getProperty("real.kits", "");

  /** Parts that are soldered flat, found by hand by their footprints; no step is about them. */
  private static final Map<String, String> SURFACE_MOUNT =
      Map.of(
          "buck-converter",
          "U1",
          "motor-driver-shield",
          "C1 C2 C3 C5 C6 C7 C8 C9 D1 D2 D3 D4 D5 F1 L1 R1 R2 R3 R4 R5 R6 R7 R8 R9 R10 R11 R12 R13"
              + " R14 R15 R16 R17 U1");

  @TestFactory
  Stream<DynamicTest> every_part_of_every_real_kit_is_planned_once() throws IOException {
    assumeFalse(FOLDER.isEmpty(), "no -Dreal.kits");
    try (Stream<Path> folders = Files.list(Path.of(FOLDER))) {
      return folders.filter(Files::isDirectory).sorted().toList().stream()
          .map(each -> DynamicTest.dynamicTest(each.getFileName().toString(), () -> check(each)));
    }
  }

  private static void check(Path folder) {
    Kit kit = read(folder);
    AssemblyPlan plan = AssemblyOrder.of(kit, AssemblyOptions.USUAL);
    for (Board board : kit.boards()) {
      var expected = new TreeSet<Designator>();
      board.items().stream()
          .filter(item -> item.isFitted() && item.partType().kind().isOnTheBoard())
          .forEach(item -> expected.addAll(item.designators()));
      Stream.of(SURFACE_MOUNT.getOrDefault(folder.getFileName().toString(), "").split(" "))
          .filter(name -> !name.isEmpty())
          .forEach(name -> expected.remove(Designator.of(name)));
      List<Designator> planned =
          plan.steps().stream()
              .filter(step -> step.board().equals(board.name()))
              .flatMap(step -> step.designators().stream())
              .filter(name -> board.itemOf(name).isPresent())
              .sorted()
              .toList();
      assertEquals(List.copyOf(expected), planned);
    }
  }

  /** Counted by hand in the tables: the lowest parts, and those whose name tells no height. */
  @Test
  void the_effects_selector_starts_with_its_resistors_and_leaves_three_heights_open() {
    assumeFalse(FOLDER.isEmpty(), "no -Dreal.kits");
    AssemblyPlan plan =
        AssemblyOrder.of(read(Path.of(FOLDER, "effects-selector")), AssemblyOptions.USUAL);
    assertEquals(12, plan.steps().get(0).designators().size());
    assertEquals(1.6, plan.steps().get(0).seatedHeightMillimetres().orElseThrow());
    Map<Boolean, Integer> parts =
        plan.steps().stream()
            .collect(
                Collectors.partitioningBy(
                    step -> step.seatedHeightMillimetres().isPresent(),
                    Collectors.summingInt(step -> step.designators().size())));
    // 11 jacks and 2 electrolytics of the 57 parts don't tell how tall they are.
    assertEquals(Map.of(true, 44, false, 13), parts);
  }

  @Test
  void wire_bridges_come_first_on_the_rotary_dial() {
    assumeFalse(FOLDER.isEmpty(), "no -Dreal.kits");
    AssemblyPlan plan =
        AssemblyOrder.of(read(Path.of(FOLDER, "rotary-dial")), AssemblyOptions.USUAL);
    List<String> first =
        plan.steps().stream()
            .limit(4)
            .flatMap(step -> step.designators().stream())
            .map(Designator::text)
            .sorted()
            .toList();
    assertEquals(List.of("J1", "J2", "J3", "J4", "J5", "J6", "J7", "J8"), first);
    assertEquals(
        List.of(),
        plan.steps().stream()
            .map(Step::partType)
            .filter(type -> type.text().startsWith("TPSQ"))
            .toList());
  }

  private static Kit read(Path folder) {
    return KitReader.read(KitFolder.read(folder)).kit();
  }
}
