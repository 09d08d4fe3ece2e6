package lowfirst.sheet.pdf;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Fingerprint;
import lowfirst.board.Kit;
import lowfirst.board.Placement;
import lowfirst.board.Settings;
import lowfirst.board.Side;
import lowfirst.part.Datasheets;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.progress.Progress;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.sheet.Orientation;
import lowfirst.sheet.SheetSet;
import lowfirst.sheet.map.SampleBoards;
import lowfirst.sheet.progress.StepAddress;
import lowfirst.sheet.sort.TrayLabelsDocument;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * All sheets of a kit, from the kit's value to bytes, against bare PDFBox that only writes the same
 * text and lines; both in one run, so that a slow machine changes neither verdict.
 */
@Tag("benchmark")
public class SheetsBenchmark {
  private static final int ROUNDS = 4;

  /** Processor time of this thread: what others do on the machine doesn't count. */
  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  private static Kit kit(int placements) {
    var items = new ArrayList<lowfirst.board.Item>();
    var placed = new ArrayList<Placement>();
    int perType = 10;
    for (int type = 0; type < placements / perType; type++) {
      var names = new ArrayList<Designator>();
      for (int i = 0; i < perType; i++) {
        int number = type * perType + i;
        int row = number / 14;
        String name = "R" + (number + 1);
        names.add(Designator.of(name));
        placed.add(SampleBoards.placement(name, 8 + number % 14 * 12, 8 + row * 3.2, 0, Side.TOP));
      }
      Quantity value = Quantity.of(100 + 10.0 * type, Dimension.RESISTANCE);
      var part =
          new PartType(
              PartKind.RESISTOR,
              value.toString(),
              Optional.of(value),
              Optional.of(lowfirst.quantity.Tolerance.percent("1")),
              Optional.empty(),
              Optional.empty(),
              "",
              "axial");
      items.add(SampleBoards.item(part, names));
    }
    var board =
        new Board(
            "big", 1, Optional.empty(), items, placed, part -> Optional.of(SampleBoards.AXIAL));
    return new Kit(
        new Settings("Benchmark", Optional.empty(), "", "", ""),
        List.of(board),
        Datasheets.none(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Fingerprint.of("0".repeat(64)));
  }

  private static List<byte[]> sheets(Kit kit, Progress progress) {
    var options =
        new SheetSet.Options(
            Paper.A4.bodyWidthMillimetres(),
            Paper.A4.bodyHeightMillimetres(),
            TrayLabelsDocument.Compartment.USUAL,
            AssemblyOptions.USUAL,
            ZoneId.of("UTC"),
            StepAddress.IN_WORDS);
    var writer = new PdfWriter();
    return SheetSet.of(kit, progress, options).stream()
        .map(
            sheet ->
                writer.write(
                    sheet.document().get(),
                    sheet.orientation() == Orientation.LANDSCAPE ? Paper.A4.turned() : Paper.A4))
        .toList();
  }

  private static Progress planned(Kit kit) {
    return Progress.of(AssemblyOrder.of(kit, AssemblyOptions.USUAL), List.of());
  }

  private interface Work {
    void run() throws IOException;
  }

  /** The fastest of several rounds, milliseconds: what the work takes when nothing disturbs it. */
  private static double fastest(Work work) throws IOException {
    double fastest = Double.MAX_VALUE;
    for (int round = 0; round < ROUNDS; round++) {
      long start = CLOCK.getCurrentThreadCpuTime();
      work.run();
      fastest = Math.min(fastest, (CLOCK.getCurrentThreadCpuTime() - start) / 1e6);
    }
    return fastest;
  }

  @Test
  void all_sheets_take_at_most_half_again_what_bare_pdfbox_takes() throws IOException {
    double[] seconds = secondsOfOursAndBare();
    double ratio = seconds[0] / seconds[1];
    System.out.printf(
        "sheets of 1000 placements: %.2f s; bare PDFBox %.2f s; ratio %.2f%n",
        seconds[0], seconds[1], ratio);
    assertTrue(ratio <= 1.5, "ratio " + ratio);
  }

  /** All sheets of 1000 placements, and PDFBox alone writing the same ink. */
  public static double[] secondsOfOursAndBare() throws IOException {
    Kit kit = kit(1000);
    Progress progress = planned(kit);
    var recorded = new ArrayList<List<List<RecordedInk.Stroke>>>();
    for (byte[] pdf : sheets(kit, progress)) {
      recorded.add(RecordedInk.of(pdf));
    }
    Work ours = () -> sheets(kit, progress);
    Work bare =
        () -> {
          for (List<List<RecordedInk.Stroke>> ink : recorded) {
            RecordedInk.rewritten(ink);
          }
        };
    fastest(ours);
    fastest(bare);
    return new double[] {fastest(ours) / 1e3, fastest(bare) / 1e3};
  }

  @Test
  void twice_the_placements_take_about_twice_as_long() throws IOException {
    Kit small = kit(1000);
    Kit large = kit(2000);
    Progress smallPlan = planned(small);
    Progress largePlan = planned(large);
    sheets(small, smallPlan);
    double once = fastest(() -> sheets(small, smallPlan));
    double twice = fastest(() -> sheets(large, largePlan));
    System.out.printf("1000 placements %.0f ms, 2000 placements %.0f ms%n", once, twice);
    assertTrue(twice / once < 2.8, once + " ms, then " + twice + " ms");
  }
}
