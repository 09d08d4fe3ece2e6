package lowfirst.channel;

/**
 * A coil switched off into a MOSFET's own breakdown. Energy ½·L·I²·BV/(BV − VDD) (Toshiba FAQ "How
 * to calculate the avalanche energy"; Semelab IRFN340SMD, note 2); time (L/R)·ln(1 + I·R/(BV −
 * VDD)) (Intersil IRF540N, File 4842, Fig. 6).
 */
final class Avalanche {
  private Avalanche() {}

  /** Energy in joules, coil resistance neglected (the larger figure); infinite at BV ≤ VDD. */
  static double joules(double henries, double amperes, double breakdownVolts, double supplyVolts) {
    double left = breakdownVolts - supplyVolts;
    if (left <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    return 0.5 * henries * amperes * amperes * breakdownVolts / left;
  }

  /** Energy in joules with the coil's resistance, which takes its share. */
  static double joules(
      double henries, double ohms, double amperes, double breakdownVolts, double supplyVolts) {
    var decay = new CoilDecay(henries, ohms, amperes, breakdownVolts - supplyVolts);
    return breakdownVolts * decay.coulombs();
  }

  /** Time in avalanche, in seconds. */
  static double seconds(
      double henries, double ohms, double amperes, double breakdownVolts, double supplyVolts) {
    return new CoilDecay(henries, ohms, amperes, breakdownVolts - supplyVolts).seconds();
  }
}
