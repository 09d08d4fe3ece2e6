package lowfirst.marking;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How many rows of bands a second are decoded, both directions, all readings ranked: a figure, and
 * the ratio to a bare loop over the same rows in the same run. Nothing is asserted about time.
 */
@Tag("benchmark")
class DecodingBenchmark {
  /** Processor time of this thread: what others do on the machine doesn't count. */
  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  private static final int ROWS = 200_000;
  private static final int ROUNDS = 8;

  @Test
  void decodes_a_second() {
    List<BandSequence> rows = rows();
    double bare = Double.MAX_VALUE;
    double decoding = Double.MAX_VALUE;
    long sum = 0;
    for (int round = 0; round < ROUNDS; round++) {
      long start = CLOCK.getCurrentThreadCpuTime();
      for (BandSequence row : rows) {
        sum += bare(row);
      }
      long middle = CLOCK.getCurrentThreadCpuTime();
      for (BandSequence row : rows) {
        BandDecoding decoded = ColourCode.decode(row);
        sum += decoded.readings().size() + decoded.certainty().ordinal();
      }
      long end = CLOCK.getCurrentThreadCpuTime();
      bare = Math.min(bare, (middle - start) / (double) ROWS);
      decoding = Math.min(decoding, (end - middle) / (double) ROWS);
    }
    assertTrue(sum > 0);
    System.out.printf(
        Locale.ROOT,
        "decode: %.0f ns of one core a row, %.2f million a second; a bare loop over the same rows %.1f ns;"
            + " ratio %.1f%n",
        decoding,
        1e3 / decoding,
        bare,
        decoding / bare);
  }

  private static long bare(BandSequence row) {
    long sum = 0;
    for (Colour colour : row.bands()) {
      sum = 13 * sum + colour.ordinal();
    }
    return sum;
  }

  /** Random rows of three to six bands, at least half of them legal. */
  private static List<BandSequence> rows() {
    var random = new Random(60062);
    Colour[] colours = Colour.values();
    var rows = new ArrayList<BandSequence>();
    while (rows.size() < ROWS) {
      var bands = new ArrayList<Colour>();
      int count = 3 + random.nextInt(4);
      for (int i = 0; i < count; i++) {
        bands.add(colours[random.nextInt(colours.length)]);
      }
      var row = new BandSequence(bands);
      // Half of them legal, so that the figure isn't one of refusing.
      if (rows.size() % 2 == 0 || !ColourCode.decode(row).readings().isEmpty()) {
        rows.add(row);
      }
    }
    return rows;
  }
}
