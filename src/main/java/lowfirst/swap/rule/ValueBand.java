package lowfirst.swap.rule;

import java.util.List;
import java.util.Optional;
import lowfirst.channel.check.Role;
import lowfirst.part.PartType;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.quantity.Tolerance;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.SwapPart;

/**
 * The value of a part with its tolerance, as the set of values it may have: the candidate's set
 * must lie within the asked one. Where the BOM states no tolerance, the nominal values must agree.
 */
final class ValueBand {
  private ValueBand() {}

  static Optional<Answer> judge(SwapCase swap) {
    PartType asked = swap.asked().type();
    PartType offered = swap.offered().type();
    Optional<Evidence> needs = evidence(swap.asked());
    Optional<Evidence> gives = evidence(swap.offered());
    if (needs.isEmpty() || gives.isEmpty()) {
      return Optional.of(Comparison.unknown(swap, "value", needs, gives));
    }
    Quantity nominal = asked.value().orElseThrow();
    Quantity other = offered.value().orElseThrow();
    if (asked.tolerance().isEmpty()) {
      return Optional.of(
          nominal.sameAs(other)
              ? Answer.of(SwapVerdict.FITS, needs.get(), gives.get(), "")
              : apart(swap, nominal, other, needs.get(), gives.get()));
    }
    if (offered.tolerance().isEmpty()) {
      return Optional.of(
          nominal.sameAs(other) || isNear(nominal, other)
              ? Answer.missing(needs, gives, List.of(swap.offered().missing("tolerance")), "")
              : Answer.of(SwapVerdict.DOES_NOT_FIT, needs.get(), gives.get(), ""));
    }
    Tolerance wanted = asked.tolerance().get();
    boolean within = wanted.encloses(nominal, offered.tolerance().get(), other);
    if (!within && nominal.sameAs(other) && inGateCircuit(swap)) {
      return Optional.of(
          Answer.of(
              SwapVerdict.FITS,
              needs.get(),
              gives.get(),
              "the same value with a looser tolerance: the gate circuit is worked out with it"));
    }
    return Optional.of(
        Answer.of(
            within ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT, needs.get(), gives.get(), ""));
  }

  /** There the channel itself is worked out again with the candidate's tolerance. */
  private static boolean inGateCircuit(SwapCase swap) {
    return swap.servesOnlyChannels()
        && swap.uses().stream()
            .allMatch(use -> use.role() == Role.GATE_RESISTOR || use.role() == Role.PULL_DOWN);
  }

  /** Within a step of E24, 5 %: near enough that a stated tolerance could settle it. */
  private static boolean isNear(Quantity one, Quantity other) {
    return Math.abs(other.asDouble() / one.asDouble() - 1) <= 0.05;
  }

  private static Answer apart(
      SwapCase swap, Quantity one, Quantity other, Evidence needs, Evidence gives) {
    return isNear(one, other)
        ? Answer.missing(
            Optional.of(needs),
            Optional.of(gives),
            List.of(swap.asked().missing("tolerance")),
            "close, but the BOM does not say how close it must be")
        : Answer.of(SwapVerdict.DOES_NOT_FIT, needs, gives, "");
  }

  /** The value with its tolerance. */
  private static Optional<Evidence> evidence(SwapPart part) {
    return part.type()
        .value()
        .map(
            value ->
                Evidence.of(
                    value,
                    part.type().tolerance().map(Tolerance::toString).orElse(""),
                    Source.kit("the text \"" + part.type().text() + "\"")));
  }
}
