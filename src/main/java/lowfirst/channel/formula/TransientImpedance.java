package lowfirst.channel.formula;

import java.util.List;

/**
 * Transient thermal impedance from junction to case, Zth(t) in K/W: as a Foster network, ΣRi·(1 −
 * e^(−t/τi)), or as points of the maker's curve. Between points the next later one counts, since
 * the curve only rises; before the first, the first.
 */
public final class TransientImpedance {
  private static final TransientImpedance UNKNOWN =
      new TransientImpedance(new double[0], new double[0], new double[0], new double[0]);

  private final double[] resistances;
  private final double[] times;
  private final double[] pointTimes;
  private final double[] pointValues;

  private TransientImpedance(
      double[] resistances, double[] times, double[] pointTimes, double[] pointValues) {
    this.resistances = resistances;
    this.times = times;
    this.pointTimes = pointTimes;
    this.pointValues = pointValues;
  }

  /** Nothing known: every pulse counts as lasting for ever. */
  public static TransientImpedance unknown() {
    return UNKNOWN;
  }

  /** A Foster network. */
  public static TransientImpedance foster(double[] kelvinPerWatt, double[] seconds) {
    if (kelvinPerWatt.length != seconds.length) {
      throw new IllegalArgumentException("each resistance has its time constant");
    }
    return new TransientImpedance(
        kelvinPerWatt.clone(), seconds.clone(), new double[0], new double[0]);
  }

  /** Points (seconds, K/W) in rising order of time. */
  public static TransientImpedance points(List<double[]> points) {
    return new TransientImpedance(
        new double[0],
        new double[0],
        points.stream().mapToDouble(point -> point[0]).toArray(),
        points.stream().mapToDouble(point -> point[1]).toArray());
  }

  /** Whether anything is known. */
  public boolean isKnown() {
    return resistances.length + pointTimes.length > 0;
  }

  /**
   * Zth after a pulse of this length, at most {@code steadyKelvinPerWatt}.
   *
   * @param steadyKelvinPerWatt the resistance for a pulse that lasts for ever, RthJC
   */
  public double after(double seconds, double steadyKelvinPerWatt) {
    if (!isKnown()) {
      return steadyKelvinPerWatt;
    }
    double sum = 0;
    for (int i = 0; i < resistances.length; i++) {
      sum += resistances[i] * -Math.expm1(-seconds / times[i]);
    }
    if (pointTimes.length > 0) {
      sum = steadyKelvinPerWatt;
      for (int i = pointTimes.length - 1; i >= 0 && pointTimes[i] >= seconds; i--) {
        sum = pointValues[i];
      }
    }
    return Math.min(sum, Double.isNaN(steadyKelvinPerWatt) ? sum : steadyKelvinPerWatt);
  }

  /**
   * Zth at the end of a pulse of {@code on} seconds that returns every {@code period} seconds:
   * D·Rth + (1 − D)·Zth(T + ton) + Zth(ton) − Zth(T), the usual sum of steps.
   */
  public double repeated(double on, double period, double steadyKelvinPerWatt) {
    double duty = on / period;
    double sum =
        duty * steadyKelvinPerWatt
            + (1 - duty) * after(period + on, steadyKelvinPerWatt)
            + after(on, steadyKelvinPerWatt)
            - after(period, steadyKelvinPerWatt);
    return Math.min(steadyKelvinPerWatt, Math.max(sum, duty * steadyKelvinPerWatt));
  }
}
