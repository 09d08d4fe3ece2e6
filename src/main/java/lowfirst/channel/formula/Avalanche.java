package lowfirst.channel.formula;

/**
 * A coil switched off into a MOSFET's own breakdown. Energy ½·L·I²·BV/(BV − VDD) (Toshiba FAQ "How
 * to calculate the avalanche energy"; Semelab IRFN340SMD, note 2).
 */
public final class Avalanche {
  private Avalanche() {}

  /** Energy in joules, coil resistance neglected (the larger figure); infinite at BV ≤ VDD. */
  public static double joules(
      double henries, double amperes, double breakdownVolts, double supplyVolts) {
    double left = breakdownVolts - supplyVolts;
    if (left <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    return 0.5 * henries * amperes * amperes * breakdownVolts / left;
  }
}
