package lowfirst.channel;

import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * The RDSon line that a datasheet would have to hold. One at a lower gate voltage and a higher
 * current serves as well.
 *
 * @param part whose datasheet
 * @param gateVolts what the gate gets; not a number where that isn't known
 * @param amps what the load draws; not a number where that isn't known
 */
public record MissingLine(String part, double gateVolts, double amps) {

  /** What to write, and where. */
  public String words() {
    return words("");
  }

  /** What to write, and where, once for several channels. */
  public String words(String forWhich) {
    String and = Double.isFinite(gateVolts) ? " and ID ≥ " : " at ID ≥ ";
    return "RDSon of "
        + part
        + bound(" at VGS ≤ ", gateVolts, " V")
        + bound(and, amps, " A")
        + forWhich
        + ": write it in datasheets.csv, with its maker named in the BOM";
  }

  private static String bound(String words, double amount, String unit) {
    return Double.isFinite(amount)
        ? words + Quantity.of(amount, Dimension.RATIO).rounded(3) + unit
        : "";
  }
}
