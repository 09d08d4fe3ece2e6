package lowfirst.channel.formula;

import lowfirst.quantity.Source;

/**
 * A copper track on the board. Current for a temperature rise by IPC-2221 §6.2: I = k·ΔT^0.44·
 * A^0.725, A in square mils, k = 0.048 outside and 0.024 inside. Another published fit of the same
 * charts, I = k·ΔT^b·A^c with 0.0647, 0.4281, 0.6732 outside and 0.0150, 0.5453, 0.7349 inside (HwB
 * "PCB trace"), asks more width of wide and of inner tracks; the lesser current counts. IPC-2152
 * (2009) measured lone tracks on boards without planes and finds the outside curve optimistic on
 * thin ones.
 *
 * @param widthMillimetres width
 * @param copperMillimetres thickness of the copper
 * @param external whether it runs on an outer face
 */
public record PrintedTrack(double widthMillimetres, double copperMillimetres, boolean external) {

  /** Temperature rise that a track is allowed in normal service. */
  public static final double RISE_KELVIN = 20;

  /** Temperature that a track may reach while a fuse makes up its mind. */
  public static final double FAULT_CELSIUS = 105;

  /** Of currents; the charts are estimates. */
  public static final Source IPC_2221 =
      Source.standard("IPC-2221 §6.2, track current chart, the stricter of two published fits");

  /** The current that warms a track: I = k·ΔT^b·A^c. */
  public record Fit(double k, double b, double c) {

    /** Amperes that warm a track of this cross-section by this much. */
    public double amperes(double riseKelvin, double squareMils) {
      return k * Math.pow(riseKelvin, b) * Math.pow(squareMils, c);
    }
  }

  /** IPC-2221, outer faces. */
  public static final Fit EXTERNAL = new Fit(0.048, 0.44, 0.725);

  /** IPC-2221, inner layers. */
  public static final Fit INTERNAL = new Fit(0.024, 0.44, 0.725);

  /** HwB, outer faces. */
  public static final Fit OTHER_EXTERNAL = new Fit(0.0647, 0.4281, 0.6732);

  /** HwB, inner layers. */
  public static final Fit OTHER_INTERNAL = new Fit(0.0150, 0.5453, 0.7349);

  private static final double SQUARE_MILS_PER_SQUARE_MILLIMETRE = 1 / (0.0254 * 0.0254);

  /** Resistivity of annealed copper at 20 °C, IACS: 0.017241 Ω·mm²/m, here in Ω·mm. */
  private static final double IACS_OHM_MILLIMETRES = 1.7241e-5;

  /** Current that warms it by {@code riseKelvin}, in amperes. */
  public double amperes(double riseKelvin) {
    if (riseKelvin <= 0) {
      return 0;
    }
    double squareMils = widthMillimetres * copperMillimetres * SQUARE_MILS_PER_SQUARE_MILLIMETRE;
    Fit one = external ? EXTERNAL : INTERNAL;
    Fit other = external ? OTHER_EXTERNAL : OTHER_INTERNAL;
    return Math.min(one.amperes(riseKelvin, squareMils), other.amperes(riseKelvin, squareMils));
  }

  /** Resistance of a length, in ohms. */
  public double ohms(double lengthMillimetres, double celsius) {
    return IACS_OHM_MILLIMETRES
        * lengthMillimetres
        / (widthMillimetres * copperMillimetres)
        * CopperTemperature.factor(20, celsius);
  }
}
