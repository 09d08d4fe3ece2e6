package lowfirst.channel;

/** Heat made on each switching edge. Joules from volts, amperes and seconds. */
final class SwitchingLoss {
  private SwitchingLoss() {}

  /**
   * Inductive load with a flyback diode: the full voltage stands while the full current flows, so
   * an edge costs ½·V·I·t.
   */
  static double inductiveJoules(double volts, double amperes, double seconds) {
    return 0.5 * volts * amperes * seconds;
  }

  /**
   * Resistive load: voltage and current ramp against each other, V·I·t/6 (Rashid, Power
   * Electronics, 4th ed., Example 4.2).
   */
  static double resistiveJoules(double volts, double amperes, double seconds) {
    return volts * amperes * seconds / 6;
  }
}
