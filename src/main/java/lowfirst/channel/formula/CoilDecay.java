package lowfirst.channel.formula;

/**
 * The current of a coil that is switched off into a clamp: i(t) = (I + V/R)·e^(−t·R/L) − V/R, the
 * series circuit of L, R and a constant clamp voltage V. Quantities in H, Ω, A, V, s, C, J.
 *
 * @param henries inductance
 * @param ohms coil and loop resistance; may be 0
 * @param amperes current at the moment of switching off
 * @param volts clamp voltage across the coil: VF for a plain diode, VZ + VF with a zener
 */
public record CoilDecay(double henries, double ohms, double amperes, double volts) {

  /** Time until the current is gone: (L/R)·ln(1 + I·R/V); L·I/V for R = 0. */
  public double seconds() {
    return ohms < 1e-9
        ? henries * amperes / volts
        : henries / ohms * Math.log1p(amperes * ohms / volts);
  }

  /** Time until no more than a share of the current is left. */
  public double secondsTo(double share) {
    return seconds() - new CoilDecay(henries, ohms, share * amperes, volts).seconds();
  }

  /** Charge through the clamp: (L/R)·(I − (V/R)·ln(1 + I·R/V)); L·I²/(2V) for R = 0. */
  public double coulombs() {
    return ohms < 1e-9
        ? henries * amperes * amperes / (2 * volts)
        : henries / ohms * (amperes - volts / ohms * Math.log1p(amperes * ohms / volts));
  }

  /** Energy turned into heat in the clamp itself; the rest heats the coil. */
  public double clampJoules() {
    return volts * coulombs();
  }

  /**
   * Energy turned into heat in a resistor of the loop, where {@code ohms} holds it too: its share
   * of what the coil stored and the clamp didn't take, ½·L·I² − V·Q.
   */
  public double seriesJoules(double seriesOhms) {
    double stored = henries * amperes * amperes / 2;
    return seriesOhms / ohms * (stored - clampJoules());
  }

  /** The same coil with another clamp. */
  public CoilDecay clampedBy(double otherVolts) {
    return new CoilDecay(henries, ohms, amperes, otherVolts);
  }

  /** The same coil with a resistor in its loop. */
  public CoilDecay withSeries(double seriesOhms) {
    return new CoilDecay(henries, ohms + seriesOhms, amperes, volts);
  }

  /** The current after some time; never below nothing. */
  public double amperesAfter(double seconds) {
    if (ohms < 1e-9) {
      return Math.max(0, amperes - volts / henries * seconds);
    }
    double steady = volts / ohms;
    return Math.max(0, (amperes + steady) * Math.exp(-seconds * ohms / henries) - steady);
  }
}
