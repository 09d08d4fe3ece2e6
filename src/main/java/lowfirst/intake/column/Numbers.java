package lowfirst.intake.column;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths in messages. */
public final class Numbers {
  private Numbers() {}

  /** At most two decimals, none that say nothing: 2.54, 150, 0.1. */
  public static String plain(double number) {
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
