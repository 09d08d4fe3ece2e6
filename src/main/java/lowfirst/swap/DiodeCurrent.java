package lowfirst.swap;

import java.util.List;
import java.util.Optional;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/**
 * The average current of two diodes, each rated at an air temperature of its own. A candidate that
 * is rated in cooler air counts with what is left of its rating in the warmer air of the other: in
 * a straight line to nothing at its junction temperature.
 */
final class DiodeCurrent {
  private static final String SYMBOL = "IFav";

  private DiodeCurrent() {}

  static Optional<Answer> judge(SwapCase swap) {
    Optional<Answer> plain = Comparison.atLeast(SYMBOL).of(swap);
    Optional<Evidence> asked = swap.asked().least(SYMBOL);
    Optional<Evidence> offered = swap.offered().least(SYMBOL);
    boolean fits = plain.filter(answer -> answer.verdict() == SwapVerdict.FITS).isPresent();
    if (!fits || asked.isEmpty() || offered.isEmpty()) {
      return plain;
    }
    double warm = airCelsius(asked.get().word());
    double cool = airCelsius(offered.get().word());
    if (!(cool < warm)) {
      return plain;
    }
    double junction =
        swap.offered()
            .least("TJ")
            .flatMap(Evidence::quantity)
            .map(Quantity::asDouble)
            .orElse(Double.NaN);
    double left = Math.max(0, (junction - warm) / (junction - cool));
    double amps = offered.get().quantity().orElseThrow().asDouble() * left;
    if (amps >= asked.get().quantity().orElseThrow().asDouble()) {
      return plain;
    }
    String words = Double.isNaN(amps) ? "unknown" : amps(amps);
    return Optional.of(
        Answer.missing(
            asked,
            Optional.of(
                Double.isNaN(amps)
                    ? offered.get()
                    : Evidence.of(
                        Quantity.of(amps, Dimension.CURRENT),
                        "in the warmer air that the other is rated in",
                        Source.computed(
                            "IFav·(TJ − TA)/(TJ − TA(IFav)), " + offered.get().source()))),
            List.of("the current and the air there: a channel in channels.csv"),
            "it is rated in cooler air: " + words + " is left where the other is rated"));
  }

  private static String amps(double amps) {
    return Quantity.of(amps, Dimension.CURRENT).rounded(2);
  }

  /** The number after {@code TA=} in a condition; not a number when there is none. */
  private static double airCelsius(String condition) {
    int start = condition.indexOf("TA=");
    if (start < 0) {
      return Double.NaN;
    }
    int to = start + 3;
    while (to < condition.length() && "0123456789.".indexOf(condition.charAt(to)) >= 0) {
      to++;
    }
    return to == start + 3 ? Double.NaN : Double.parseDouble(condition.substring(start + 3, to));
  }
}
