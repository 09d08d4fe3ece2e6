package lowfirst.quantity;

import java.math.BigDecimal;

/** The one number formatter: engineering prefixes, a point as decimal mark, no locale. */
final class Engineering {
  private static final String[] PREFIXES = {"f", "p", "n", "µ", "m", "", "k", "M", "G", "T"};
  private static final int NO_PREFIX = 5;
  private static final int MICRO = -2;
  private static final int MILLI = -1;

  private Engineering() {}

  static String text(BigDecimal amount, Dimension dimension) {
    if (!dimension.takesPrefixes() || amount.signum() == 0) {
      return joined(amount, dimension.symbol());
    }
    int leading = amount.precision() - amount.scale() - 1;
    int step = Math.floorDiv(leading, 3);
    step = Math.max(-NO_PREFIX, Math.min(PREFIXES.length - 1 - NO_PREFIX, step));
    if (dimension == Dimension.CAPACITANCE && step == MILLI) {
      step = MICRO; // nobody at a bench says millifarad: the can reads 1000 µF
    }
    if (dimension == Dimension.TIME) {
      step = Math.min(0, step); // nor kilosecond
    }
    return joined(
        amount.scaleByPowerOfTen(-3 * step), PREFIXES[step + NO_PREFIX] + dimension.symbol());
  }

  private static String joined(BigDecimal amount, String unit) {
    BigDecimal plain = amount.signum() == 0 ? BigDecimal.ZERO : amount.stripTrailingZeros();
    boolean closed = unit.isEmpty() || unit.equals("°") || unit.equals("%");
    return plain.toPlainString() + (closed ? unit.replace("%", " %") : " " + unit);
  }
}
