package lowfirst.swap.rule;

import static lowfirst.swap.rule.Comparison.atLeast;

import java.util.Optional;
import lowfirst.board.Driver;
import lowfirst.board.Rail;
import lowfirst.channel.formula.ResistorRating;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.SwapUse;

/**
 * The power that a resistor must bear. In a gate circuit it is known: never more than the highest
 * gate drive of the kit, squared, over the resistance. Elsewhere the BOM's rating is the demand.
 */
final class ResistorLoad {
  /** What a resistor bears of which nobody says more: every leaded one bears that. */
  private static final Evidence SMALLEST =
      Evidence.of(
          Quantity.of(ResistorRating.SMALLEST_WATTS, Dimension.POWER),
          "the least of any with leads",
          Source.assumed("1/8 W", "the BOM's value, as 220R 0.25W"));

  private ResistorLoad() {}

  static Optional<Answer> power(SwapCase swap) {
    Optional<Evidence> gives = swap.offered().least("PD");
    Optional<Evidence> needs = inGateCircuit(swap);
    if (needs.isEmpty()) {
      return atLeast("PD").of(swap);
    }
    Answer answer = Comparison.compared(needs.get(), gives.orElse(SMALLEST), Better.MORE);
    return Optional.of(
        gives.isPresent() || answer.verdict() == SwapVerdict.FITS
            ? answer
            : Comparison.unknown(swap, "PD", needs, gives));
  }

  /** P = V²/R with V the highest rail that a gate driver runs from; for gate circuits only. */
  private static Optional<Evidence> inGateCircuit(SwapCase swap) {
    Optional<Quantity> ohms = swap.asked().type().value();
    if (!swap.servesOnlyChannels() || ohms.isEmpty() || ohms.get().isZero()) {
      return Optional.empty();
    }
    double volts = 0;
    for (SwapUse use : swap.uses()) {
      Optional<Double> supply =
          swap.kit()
              .driver(use.channel().driver())
              .map(Driver::supply)
              .flatMap(swap.kit()::rail)
              .map(Rail::highestVolts);
      if (supply.filter(known -> !known.isNaN()).isEmpty()) {
        return Optional.empty();
      }
      volts = Math.max(volts, supply.get());
    }
    double least =
        swap.asked()
            .type()
            .tolerance()
            .map(t -> t.lowest(ohms.get()))
            .orElse(ohms.get())
            .asDouble();
    double watts = volts * volts / least;
    return Optional.of(
        Evidence.of(
            Quantity.of(watts, Dimension.POWER),
            "in its gate circuit",
            Source.computed(
                "P = V²/R with V = "
                    + Quantity.of(volts, Dimension.VOLTAGE).rounded(4)
                    + ", the gate drivers' highest supply")));
  }
}
