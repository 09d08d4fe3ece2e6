package lowfirst.swap.rule;

import java.util.List;
import java.util.Optional;
import lowfirst.part.PartKind;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;

/**
 * The voltage that a capacitor must bear: what the BOM asks for, or a quarter more than the highest
 * rail of the kit, whichever is known to be enough.
 */
final class CapacitorVoltage {
  /** Headroom over the rail: common practice, for ripple, tolerance and life. */
  private static final double HEADROOM = 1.25;

  /**
   * A tantalum that a supply charges without a resistor gets half of its rating, as makers ask
   * (KEMET T2053, T498 series, 12/13/2019, p. 9: recommended application voltage up to 85 °C).
   */
  private static final double TANTALUM_HEADROOM = 2;

  private CapacitorVoltage() {}

  static Optional<Answer> judge(SwapCase swap) {
    Optional<Evidence> gives = swap.offered().least("Vrated");
    Optional<Evidence> stated = swap.asked().greatest("Vrated");
    Optional<Evidence> everywhere = enoughOnEveryRail(swap);
    if (gives.isEmpty()) {
      return Optional.of(Comparison.unknown(swap, "Vrated", stated.or(() -> everywhere), gives));
    }
    boolean isEnough = stated.isPresent() && volts(gives.get()) >= volts(stated.get());
    if (isEnough && !isNewTantalum(swap)) {
      return compared(stated.get(), gives.get());
    }
    if (everywhere.isPresent() && volts(gives.get()) >= volts(everywhere.get())) {
      return compared(everywhere.get(), gives.get());
    }
    if (isEnough) {
      return Optional.of(
          Answer.missing(
              everywhere,
              gives,
              List.of("the voltage across " + swap.asked().name() + ": half of its rating or less"),
              "a tantalum that a surge breaks down is a short circuit, and burns"));
    }
    return stated.isPresent()
        ? compared(stated.get(), gives.get())
        : Optional.of(unstated(swap, everywhere, gives.get()));
  }

  private static Answer unstated(SwapCase swap, Optional<Evidence> everywhere, Evidence gives) {
    Optional<Double> lowest =
        swap.kit().rails().stream()
            .flatMap(rail -> rail.voltage().stream())
            .map(voltage -> voltage.asDouble())
            .min(Double::compare);
    if (lowest.isPresent() && volts(gives) <= lowest.get()) {
      return Comparison.compared(everywhere.orElse(gives), gives, Better.MORE);
    }
    return Answer.missing(
        everywhere,
        Optional.of(gives),
        List.of(
            "Vrated of "
                + swap.asked().name()
                + ": the voltage in the BOM's value, for example 35 V"),
        "which rail it hangs on is not stated");
  }

  /** Whether something hardier is to give way to a tantalum. */
  private static boolean isNewTantalum(SwapCase swap) {
    return swap.offered().type().kind() == PartKind.TANTALUM_CAPACITOR
        && swap.asked().type().kind() != PartKind.TANTALUM_CAPACITOR;
  }

  private static Optional<Evidence> enoughOnEveryRail(SwapCase swap) {
    boolean isTantalum = swap.offered().type().kind() == PartKind.TANTALUM_CAPACITOR;
    double times = isTantalum ? TANTALUM_HEADROOM : HEADROOM;
    return swap.highestRailVolts()
        .map(
            volts ->
                Evidence.of(
                    Quantity.of(times * volts, Dimension.VOLTAGE),
                    times + " x the highest rail",
                    Source.computed(times + " x highest rail with its tolerance, rails.csv")));
  }

  private static Optional<Answer> compared(Evidence needs, Evidence gives) {
    return Optional.of(Comparison.compared(needs, gives, Better.MORE));
  }

  private static double volts(Evidence evidence) {
    return evidence.quantity().orElseThrow().asDouble();
  }
}
