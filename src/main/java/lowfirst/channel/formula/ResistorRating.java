package lowfirst.channel.formula;

/**
 * What a small resistor bears: full power to 70 °C, less above it, and never more than 250 V across
 * it (ChiaChia metal film specification Table 1; Vishay Sfernice RCM). At high values the voltage
 * binds before the power. A BOM seldom says of which family a resistor is, so of two published
 * deratings the stricter counts at each temperature: the straight line of metal film from 70 °C to
 * nothing at 155 °C (ChiaChia §1.3), and the table of MIL-R-39017, which ends at 145 °C.
 *
 * @param ratedWatts rated power at 70 °C
 * @param ohms its resistance
 */
public record ResistorRating(double ratedWatts, double ohms) {
  /** Taken where the BOM states no rating. */
  public static final double SMALLEST_WATTS = 0.125;

  private static final double FULL_TO_CELSIUS = 70;
  private static final double NOTHING_AT_CELSIUS = 155;
  private static final double LARGEST_VOLTS = 250;

  /** MIL-R-39017 (interfacebus.com): share of the power that is left, by temperature. */
  private static final double[] TABLE_CELSIUS = {70, 85, 100, 120, 140, 145};

  private static final double[] TABLE_SHARES = {1, 0.8, 0.6, 0.4, 0.2, 0.1};

  /** Share of the rated power that is left in air of this temperature, for any family. */
  public static double share(double airCelsius) {
    return Math.min(metalFilmShare(airCelsius), militaryShare(airCelsius));
  }

  /** The straight line of metal film. */
  public static double metalFilmShare(double airCelsius) {
    double left = (NOTHING_AT_CELSIUS - airCelsius) / (NOTHING_AT_CELSIUS - FULL_TO_CELSIUS);
    return Math.max(0, Math.min(1, left));
  }

  /** The military table, in straight lines between its points; nothing beyond its last. */
  public static double militaryShare(double airCelsius) {
    if (airCelsius <= TABLE_CELSIUS[0]) {
      return 1;
    }
    for (int i = 1; i < TABLE_CELSIUS.length; i++) {
      if (airCelsius <= TABLE_CELSIUS[i]) {
        double way =
            (airCelsius - TABLE_CELSIUS[i - 1]) / (TABLE_CELSIUS[i] - TABLE_CELSIUS[i - 1]);
        return TABLE_SHARES[i - 1] + way * (TABLE_SHARES[i] - TABLE_SHARES[i - 1]);
      }
    }
    return 0;
  }

  /** Largest continuous power, in watts. */
  public double watts(double airCelsius) {
    return Math.min(ratedWatts * share(airCelsius), LARGEST_VOLTS * LARGEST_VOLTS / ohms);
  }
}
