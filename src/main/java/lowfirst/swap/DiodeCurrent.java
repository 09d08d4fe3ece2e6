package lowfirst.swap;

import java.util.List;
import java.util.Optional;
import lowfirst.part.RatedTemperature;
import lowfirst.part.TestCondition;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/**
 * The average current of two diodes, each rated at a temperature of its own. A candidate that is
 * rated in cooler air counts with what is left of its rating in the warmer air of the other: in a
 * straight line to nothing at its junction temperature. A rating at the leads or the case, which
 * something keeps cool there, says nothing of one in air.
 */
final class DiodeCurrent {
  private static final String SYMBOL = "IFav";

  private static final List<String> CHANNEL =
      List.of("the current and the air there: a channel in channels.csv");

  private DiodeCurrent() {}

  static Optional<Answer> judge(SwapCase swap) {
    Optional<Answer> plain = Comparison.atLeast(SYMBOL).of(swap);
    Optional<Evidence> asked = swap.asked().least(SYMBOL);
    Optional<Evidence> offered = swap.offered().least(SYMBOL);
    boolean fits = plain.filter(answer -> answer.verdict() == SwapVerdict.FITS).isPresent();
    if (!fits || asked.isEmpty() || offered.isEmpty()) {
      return plain;
    }
    Optional<RatedTemperature> warm = ratedAt(asked.get());
    Optional<RatedTemperature> cool = ratedAt(offered.get());
    boolean cooled = cool.filter(at -> !at.isOfAir()).isPresent();
    if (asked.get().word().isBlank() && !cooled) {
      return plain; // the BOM's part asks for no temperature, and the candidate for no cooling
    }
    if (warm.isEmpty() || cool.isEmpty()) {
      String name = (warm.isEmpty() ? swap.asked() : swap.offered()).name();
      return Optional.of(
          Answer.missing(
              asked,
              offered,
              List.of(
                  "the temperature at which IFav of "
                      + name
                      + " is rated (TA=, TL= or TC=): condition of its row in datasheets.csv"),
              "a rating at cooled leads or a cooled case is several times that in air"));
    }
    if (warm.get().place() != cool.get().place()) {
      return Optional.of(
          Answer.missing(
              asked,
              offered,
              CHANNEL,
              "the one is rated by the temperature of its "
                  + words(warm.get())
                  + ", the other by that of its "
                  + words(cool.get())
                  + ": the currents can't be compared"));
    }
    return cool.get().celsius() >= warm.get().celsius()
        ? plain
        : derated(swap, asked.get(), offered.get(), warm.get(), cool.get()).or(() -> plain);
  }

  private static Optional<RatedTemperature> ratedAt(Evidence current) {
    return RatedTemperature.in(TestCondition.parse(current.word()));
  }

  /** What is missing where too little is left of a rating in the warmth of the other's. */
  private static Optional<Answer> derated(
      SwapCase swap,
      Evidence asked,
      Evidence offered,
      RatedTemperature warm,
      RatedTemperature cool) {
    double junction =
        swap.offered()
            .least("TJ")
            .flatMap(Evidence::quantity)
            .map(Quantity::asDouble)
            .orElse(Double.NaN);
    double left = Math.max(0, (junction - warm.celsius()) / (junction - cool.celsius()));
    double amps = offered.quantity().orElseThrow().asDouble() * left;
    if (amps >= asked.quantity().orElseThrow().asDouble()) {
      return Optional.empty();
    }
    String symbol = warm.place().symbol();
    Evidence there =
        Double.isNaN(amps)
            ? offered
            : Evidence.of(
                Quantity.of(amps, Dimension.CURRENT),
                "with the warmer " + words(warm) + " of the other's rating",
                Source.computed(
                    "IFav·(TJ − " + symbol + ")/(TJ − " + symbol + "(IFav)), " + offered.source()));
    return Optional.of(
        Answer.missing(
            Optional.of(asked),
            Optional.of(there),
            CHANNEL,
            "it is rated in cooler "
                + words(warm)
                + ": "
                + (Double.isNaN(amps) ? "unknown" : amps(amps))
                + " is left where the other is rated"));
  }

  private static String amps(double amps) {
    return Quantity.of(amps, Dimension.CURRENT).rounded(2);
  }

  /** What is measured there. */
  private static String words(RatedTemperature at) {
    return switch (at.place()) {
      case AIR -> "air";
      case LEADS -> "leads";
      case CASE -> "case";
    };
  }
}
