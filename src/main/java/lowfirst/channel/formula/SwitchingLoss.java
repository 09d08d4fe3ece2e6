package lowfirst.channel.formula;

/** Heat made on each switching edge. Joules from volts, amperes and seconds. */
public final class SwitchingLoss {
  private SwitchingLoss() {}

  /**
   * Inductive load with a flyback diode: the full voltage stands while the full current flows, so
   * an edge costs ½·V·I·t.
   */
  public static double inductiveJoules(double volts, double amperes, double seconds) {
    return 0.5 * volts * amperes * seconds;
  }

  /**
   * Resistive load: voltage and current ramp against each other, I·t·(V/6 + Vsat/3) (Rashid, Power
   * Electronics, 4th ed., Example 4.2).
   *
   * @param saturatedVolts what is left across the switch when on
   */
  public static double resistiveJoules(
      double volts, double saturatedVolts, double amperes, double seconds) {
    return amperes * seconds * (volts / 6 + saturatedVolts / 3);
  }

  /** Energy of a charged capacitor: ½·C·V², lost in the switch that shorts it. */
  public static double capacitiveJoules(double farads, double volts) {
    return 0.5 * farads * volts * volts;
  }

  /** Mean power to charge and discharge a gate: V·Q·f, in watts. */
  public static double gateWatts(double volts, double coulombs, double hertz) {
    return volts * coulombs * hertz;
  }
}
