package lowfirst.channel.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Points of a curve where they say more, or less, than the steady resistance. */
class TransientImpedanceTest {
  private static TransientImpedance points(double[]... points) {
    return TransientImpedance.points(List.of(points));
  }

  @Test
  void no_pulse_warms_more_than_one_that_lasts_for_ever() {
    TransientImpedance above = points(new double[] {0.1, 2});
    assertEquals(1.5, above.after(0.05, 1.5), 1e-12);
    assertEquals(2, above.after(0.05, Double.NaN), 1e-12, "where that one is unknown");
  }

  @Test
  void pulses_that_return_warm_at_least_by_their_mean() {
    TransientImpedance steep = points(new double[] {0.001, 0.1}, new double[] {1, 1.5});
    // half of the time on: 0.75 K/W, though the steps add up to 0.75 + 0.75 + 0.1 - 1.5 = 0.1 K/W
    assertEquals(0.75, steep.repeated(0.001, 0.002, 1.5), 1e-12);
  }
}
