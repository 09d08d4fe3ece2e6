package lowfirst.channel.formula;

/**
 * Driver, gate resistor and pull-down seen from the gate.
 *
 * @param driveVolts level of the unloaded driver
 * @param sourceOhms the driver's own resistance
 * @param gateOhms gate resistor
 * @param pullDownOhms pull-down; infinite when none is fitted
 * @param pullDownAtGate whether it hangs at the gate, else at the driver pin
 */
public record GateNetwork(
    double driveVolts,
    double sourceOhms,
    double gateOhms,
    double pullDownOhms,
    boolean pullDownAtGate) {

  /** The level at the gate when all currents have died away. */
  public double gateVolts() {
    if (Double.isInfinite(pullDownOhms)) {
      return driveVolts;
    }
    double series = sourceOhms + (pullDownAtGate ? gateOhms : 0);
    return driveVolts * pullDownOhms / (pullDownOhms + series);
  }

  /** The resistance that charges and discharges the gate (Thévenin). */
  public double chargingOhms() {
    if (Double.isInfinite(pullDownOhms)) {
      return sourceOhms + gateOhms;
    }
    return pullDownAtGate
        ? parallel(sourceOhms + gateOhms, pullDownOhms)
        : parallel(sourceOhms, pullDownOhms) + gateOhms;
  }

  private static double parallel(double a, double b) {
    return a * b / (a + b);
  }
}
