package lowfirst.swap.rule;

import static lowfirst.quantity.Source.standard;
import static lowfirst.swap.rule.Comparison.atLeast;
import static lowfirst.swap.rule.Comparison.atLeastIfStated;
import static lowfirst.swap.rule.Comparison.testedAtLeast;
import static lowfirst.swap.rule.Comparison.testedAtMostIfStated;

import java.util.Optional;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.Words;

/** What an optocoupler must be to stand in for another. */
enum OptocouplerRule implements SwapRule {
  OUTPUT(
      "what its output is",
      "a logic-gate coupler needs its own supply pin where a transistor coupler needs none",
      COMMON_PRACTICE,
      OptocouplerRule::output),
  TRANSFER_RATIO(
      "current transfer ratio",
      "the least of the rank must still saturate the output; the ranks of one type number differ"
          + " by a factor of four",
      standard("IEC 60747-5-5: current transfer ratio"),
      testedAtLeast("CTR")),
  COLLECTOR_VOLTAGE(
      "collector-emitter voltage",
      "off, the output sees the whole rail",
      standard("IEC 60747-5-5"),
      OptocouplerRule::collectorVoltage),
  INPUT_CURRENT(
      "input current",
      "the series resistor was chosen for the current that the other bore",
      standard("IEC 60747-5-5: maximum forward current"),
      atLeast("IF")),
  OUTPUT_CURRENT(
      "output current",
      "what the output may sink",
      standard("IEC 60747-5-5"),
      atLeastIfStated("IC")),
  INPUT_VOLTAGE(
      "input voltage",
      "more drop leaves less current through the same resistor",
      standard("IEC 60747-5-5: forward voltage"),
      testedAtMostIfStated("VF"));

  private final Card card;

  OptocouplerRule(String words, String why, Source source, Judgement judgement) {
    this.card = Card.of(words, why, source, judgement);
  }

  @Override
  public Card card() {
    return card;
  }

  private static final Evidence TRANSISTOR = Evidence.of("transistor", COMMON_PRACTICE);

  private static Optional<Answer> output(SwapCase swap) {
    Evidence asked = swap.asked().word("output").orElse(TRANSISTOR);
    Evidence offered = swap.offered().word("output").orElse(TRANSISTOR);
    if (asked.equals(TRANSISTOR) && offered.equals(TRANSISTOR)) {
      return Optional.empty();
    }
    boolean same = Words.same(asked.word(), offered.word());
    return Optional.of(
        Answer.of(same ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT, asked, offered, ""));
  }

  /** Where a sheet prints both a rating and a guaranteed breakdown, the lower one counts. */
  private static Optional<Answer> collectorVoltage(SwapCase swap) {
    Optional<Evidence> needs = swap.asked().greatest("VCEO");
    Optional<Evidence> gives = lower(swap.offered().least("VCEO"), swap.offered().least("VBRCEO"));
    if (needs.isEmpty() || gives.isEmpty()) {
      return Optional.of(Comparison.unknown(swap, "VCEO", needs, gives));
    }
    return Optional.of(Comparison.compared(needs.get(), gives.get(), Better.MORE));
  }

  private static Optional<Evidence> lower(Optional<Evidence> one, Optional<Evidence> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.or(() -> other);
    }
    boolean oneIsLower =
        one.get().quantity().orElseThrow().compareTo(other.get().quantity().orElseThrow()) <= 0;
    return oneIsLower ? one : other;
  }
}
