package lowfirst.channel;

import lowfirst.quantity.Source;

/**
 * A copper track on the board. Current for a temperature rise by IPC-2221 §6.2: I = k·ΔT^0.44·
 * A^0.725, A in square mils, k = 0.048 outside and 0.024 inside. IPC-2152 (2009) measured lone
 * tracks on boards without planes and finds the outside curve optimistic on thin ones.
 *
 * @param widthMillimetres width
 * @param copperMillimetres thickness of the copper
 * @param external whether it runs on an outer face
 */
record PrintedTrack(double widthMillimetres, double copperMillimetres, boolean external) {

  /** Temperature rise that a track is allowed in normal service. */
  static final double RISE_KELVIN = 20;

  /** Temperature that a track may reach while a fuse makes up its mind. */
  static final double FAULT_CELSIUS = 105;

  static final Source IPC_2221 = Source.standard("IPC-2221 §6.2, track current chart");

  private static final double EXTERNAL = 0.048;
  private static final double INTERNAL = 0.024;
  private static final double SQUARE_MILS_PER_SQUARE_MILLIMETRE = 1 / (0.0254 * 0.0254);

  /** Resistivity of annealed copper at 20 °C, IACS: 0.017241 Ω·mm²/m, here in Ω·mm. */
  private static final double IACS_OHM_MILLIMETRES = 1.7241e-5;

  /** Current that warms it by {@code riseKelvin}, in amperes. */
  double amperes(double riseKelvin) {
    if (riseKelvin <= 0) {
      return 0;
    }
    double squareMils = widthMillimetres * copperMillimetres * SQUARE_MILS_PER_SQUARE_MILLIMETRE;
    double k = external ? EXTERNAL : INTERNAL;
    return k * Math.pow(riseKelvin, 0.44) * Math.pow(squareMils, 0.725);
  }

  /** Resistance of a length, in ohms. */
  double ohms(double lengthMillimetres, double celsius) {
    return IACS_OHM_MILLIMETRES
        * lengthMillimetres
        / (widthMillimetres * copperMillimetres)
        * CopperTemperature.factor(20, celsius);
  }

  /** Width for a current and a rise, in millimetres, at this thickness and layer. */
  static double widthMillimetres(
      double amperes, double riseKelvin, double copperMillimetres, boolean external) {
    double k = external ? EXTERNAL : INTERNAL;
    double squareMils = Math.pow(amperes / (k * Math.pow(riseKelvin, 0.44)), 1 / 0.725);
    return squareMils / SQUARE_MILS_PER_SQUARE_MILLIMETRE / copperMillimetres;
  }
}
