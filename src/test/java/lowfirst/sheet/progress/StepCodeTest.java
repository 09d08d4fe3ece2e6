package lowfirst.sheet.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lowfirst.board.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The code beside a step: what it says, and how it is drawn. */
class StepCodeTest {

  @ParameterizedTest
  @CsvSource({
    "http://192.168.1.20:7000, http://192.168.1.20:7000/step/3",
    "http://bench//, http://bench/step/3",
    "'', step 3 of driver-2",
  })
  void a_code_leads_to_the_step_or_names_it(String bench, String text) {
    var address = new StepAddress(bench.isEmpty() ? Optional.empty() : Optional.of(bench));
    assertEquals(text, address.of(3, new Unit("driver", 2)));
  }

  /** The finder patterns of a QR code (ISO/IEC 18004): 7 by 7 modules in three corners. */
  @Test
  void a_code_has_its_finder_patterns_and_a_quiet_zone() {
    var code = StepCode.of("step 3 of driver-2", 25);
    List<lowfirst.sheet.drawing.Shape.Box> runs =
        code.shapes().stream().map(lowfirst.sheet.drawing.Shape.Box.class::cast).toList();
    // 18 letters with correction M fit version 2: 25 modules and two of quiet on each side.
    double module = 25 / 29.0;
    assertEquals(module, runs.get(0).height(), 1e-9);
    boolean[][] dark = new boolean[29][29];
    for (var run : runs) {
      int x = (int) Math.round(run.x() / module);
      int y = (int) Math.round(run.y() / module);
      int length = (int) Math.round(run.width() / module);
      assertEquals(run.x(), x * module, 1e-9);
      assertEquals(run.width(), length * module, 1e-9);
      IntStream.range(x, x + length).forEach(at -> dark[y][at] = true);
    }
    for (int[] corner : new int[][] {{2, 2}, {20, 2}, {2, 20}}) {
      for (int y = -1; y <= 7; y++) {
        for (int x = -1; x <= 7; x++) {
          int ring = Math.max(Math.abs(x - 3), Math.abs(y - 3));
          assertEquals(
              ring == 3 || ring <= 1, dark[corner[1] + y][corner[0] + x], x + " " + y + " of ring");
        }
      }
    }
    for (int i = 0; i < 29; i++) {
      for (int edge : new int[] {0, 1, 27, 28}) {
        assertTrue(!dark[i][edge] && !dark[edge][i], "the quiet zone is white");
      }
    }
    assertEquals("code to scan: step 3 of driver-2", code.words());
    assertEquals(25, code.widthMillimetres());
    assertEquals(25, code.heightMillimetres());
  }
}
