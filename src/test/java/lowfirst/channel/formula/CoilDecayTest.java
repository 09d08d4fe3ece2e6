package lowfirst.channel.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The closed forms of a coil's decay, by hand and by conservation of energy. */
class CoilDecayTest {
  /** 0.1 H, 10 Ω, 2 A into 5 V: I·R/V is 4, so ln 5 · 10 ms. */
  private static final CoilDecay COIL = new CoilDecay(0.1, 10, 2, 5);

  private static final CoilDecay LOSSLESS = new CoilDecay(0.1, 0, 2, 5);

  @Test
  void the_current_is_gone_after_its_logarithm_or_its_straight_line() {
    assertEquals(0.010 * Math.log(5), COIL.seconds(), 1e-12);
    assertEquals(0.040, LOSSLESS.seconds(), 1e-12, "0.1 H · 2 A/5 V");
    assertEquals(0.020, LOSSLESS.secondsTo(0.5), 1e-12);
    // (2 + 0.5)·e^(−t/10 ms) − 0.5 = 1: t = 10 ms · ln(2.5/1.5)
    assertEquals(0.010 * Math.log(2.5 / 1.5), COIL.secondsTo(0.5), 1e-12);
  }

  @Test
  void on_its_way_it_follows_the_exponential_or_the_straight_line() {
    assertEquals(1, COIL.amperesAfter(0.010 * Math.log(2.5 / 1.5)), 1e-12);
    assertEquals(0, COIL.amperesAfter(1));
    assertEquals(1.5, LOSSLESS.amperesAfter(0.010), 1e-12, "50 A/s less");
    assertEquals(0, LOSSLESS.amperesAfter(1));
  }

  @Test
  void its_charge_is_the_area_under_the_current() {
    assertEquals(0.040, LOSSLESS.coulombs(), 1e-12, "a triangle of 2 A and 40 ms");
    assertEquals(0.2, LOSSLESS.clampJoules(), 1e-12, "all of ½ · 0.1 H · (2 A)²");
    // 10 ms · (2 A − 0.5 A · ln 5)
    double coulombs = 0.010 * (2 - 0.5 * Math.log(5));
    assertEquals(coulombs, COIL.coulombs(), 1e-12);
    assertEquals(5 * coulombs, COIL.clampJoules(), 1e-12);
  }

  @Test
  void a_resistor_takes_its_share_of_what_the_clamp_leaves() {
    CoilDecay damped = COIL.withSeries(30);
    assertEquals(40, damped.ohms(), 1e-12);
    // I·R/V is 16: 2.5 ms · (2 A − 0.125 A · ln 17) through the clamp; three quarters of the rest
    double clamp = 5 * 0.0025 * (2 - 0.125 * Math.log(17));
    assertEquals(0.75 * (0.2 - clamp), damped.seriesJoules(30), 1e-12);
  }
}
