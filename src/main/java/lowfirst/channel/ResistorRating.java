package lowfirst.channel;

/**
 * What a small metal-film resistor bears: full power to 70 °C, then in a straight line to nothing
 * at 155 °C, and never more than 250 V across it (ChiaChia metal film specification §1.3 and Table
 * 1; Vishay Sfernice RCM). At high values the voltage binds before the power.
 *
 * @param ratedWatts rated power at 70 °C
 * @param ohms its resistance
 */
record ResistorRating(double ratedWatts, double ohms) {
  /** Taken where the BOM states no rating. */
  static final double SMALLEST_WATTS = 0.125;

  private static final double FULL_TO_CELSIUS = 70;
  private static final double NOTHING_AT_CELSIUS = 155;
  private static final double LARGEST_VOLTS = 250;

  /** Share of the rated power that is left in air of this temperature. */
  static double share(double airCelsius) {
    double left = (NOTHING_AT_CELSIUS - airCelsius) / (NOTHING_AT_CELSIUS - FULL_TO_CELSIUS);
    return Math.max(0, Math.min(1, left));
  }

  /** Largest continuous power, in watts. */
  double watts(double airCelsius) {
    return Math.min(ratedWatts * share(airCelsius), LARGEST_VOLTS * LARGEST_VOLTS / ohms);
  }

  /** Largest continuous voltage, in volts: √(P·R), and never above the limit. */
  double volts(double airCelsius) {
    return Math.sqrt(watts(airCelsius) * ohms);
  }
}
