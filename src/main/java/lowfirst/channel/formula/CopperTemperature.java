package lowfirst.channel.formula;

/**
 * How copper's resistance grows with temperature: R1/R0 = (234.5 + T1)/(234.5 + T0) (relay makers'
 * coil practice, for example Babcock M83536/9; IACS copper). At 20 °C that is 0.003929 per kelvin,
 * at 25 °C 0.003854: the reference must be said.
 */
public final class CopperTemperature {
  /** The temperature at which the straight line of copper's resistance would reach nothing. */
  private static final double INFERRED_ZERO = 234.5;

  private CopperTemperature() {}

  /** Resistance at one temperature over that at another. */
  public static double factor(double fromCelsius, double toCelsius) {
    return (INFERRED_ZERO + toCelsius) / (INFERRED_ZERO + fromCelsius);
  }
}
