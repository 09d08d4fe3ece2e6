package lowfirst.channel.formula;

/**
 * How long a MOSFET takes through its active region, from its gate charge: the current rises while
 * the gate charges from threshold to plateau, R·(QGS/Vpl)·ln((V − Vth)/(V − Vpl)); the voltage
 * falls while QGD flows at the plateau, R·QGD/(V − Vpl). Off is the same against the low level.
 *
 * @param ohms resistance that charges the gate
 * @param gateSourceCoulombs QGS
 * @param millerCoulombs QGD
 * @param thresholdVolts VGS(th)
 * @param plateauVolts the gate voltage while the drain moves
 */
public record SwitchingTime(
    double ohms,
    double gateSourceCoulombs,
    double millerCoulombs,
    double thresholdVolts,
    double plateauVolts) {

  /** Turn-on, seconds; infinite when the drive does not reach the plateau. */
  public double onSeconds(double driveVolts) {
    double left = driveVolts - plateauVolts;
    if (left <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    double rise =
        gateSourceCoulombs / plateauVolts * Math.log((driveVolts - thresholdVolts) / left);
    return ohms * (Math.max(rise, 0) + millerCoulombs / left);
  }

  /** Turn-off, seconds; infinite when the low level stays at or above threshold. */
  public double offSeconds(double lowVolts) {
    double left = thresholdVolts - lowVolts;
    if (left <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    double fall = gateSourceCoulombs / plateauVolts * Math.log((plateauVolts - lowVolts) / left);
    return ohms * (Math.max(fall, 0) + millerCoulombs / (plateauVolts - lowVolts));
  }
}
