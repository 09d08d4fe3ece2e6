package lowfirst.channel.formula;

/**
 * How pulses count for things that warm up over many seconds: a MOSFET's case, a track, a wire.
 * Pulses that return within one second are averaged, for all of these take ten seconds and more to
 * warm; longer on-times count as on for ever. Longer periods than a second count as one second, so
 * a longer pause never makes it worse.
 */
public final class Pulses {
  private static final double AVERAGED_SECONDS = 1;

  private Pulses() {}

  /** The time over which a pulse that comes every {@code periodSeconds} may be averaged. */
  public static double averagedSeconds(double periodSeconds) {
    return Math.min(periodSeconds, AVERAGED_SECONDS);
  }

  /**
   * Share of time that heats, 0 to 1.
   *
   * @param onSeconds longest time on; NaN when not stated: on for ever
   * @param periodSeconds shortest time from one switching-on to the next; NaN when not stated
   */
  public static double heatingShare(double onSeconds, double periodSeconds) {
    if (Double.isNaN(onSeconds) || Double.isNaN(periodSeconds) || onSeconds > AVERAGED_SECONDS) {
      return 1;
    }
    return Math.min(1, onSeconds / averagedSeconds(periodSeconds));
  }
}
