package lowfirst.channel;

/**
 * I²t of pulses by their shape (Littelfuse catalogue, Chart 1 "Waveshapes"). The duration of an
 * exponential is its time constant.
 */
enum PulseShape {
  RECTANGLE(1),
  HALF_SINE(0.5),
  TRIANGLE(1.0 / 3),
  PARABOLA(0.2),
  EXPONENTIAL(0.5);

  private final double share;

  PulseShape(double share) {
    this.share = share;
  }

  /** I²t in A²s of a pulse with this peak and duration. */
  double jouleIntegral(double peakAmperes, double seconds) {
    return share * peakAmperes * peakAmperes * seconds;
  }

  /** I²t of a trapezoid from {@code peak} down to {@code base}. */
  static double trapezoid(double peak, double base, double seconds) {
    return (peak * peak + peak * base + base * base) / 3 * seconds;
  }
}
