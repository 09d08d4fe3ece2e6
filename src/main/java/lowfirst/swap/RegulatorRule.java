package lowfirst.swap;

import static lowfirst.quantity.Source.standard;
import static lowfirst.swap.Comparison.atLeast;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.quantity.Source;

/** What a voltage regulator must be to stand in for another. */
enum RegulatorRule implements SwapRule {
  OUTPUT_VOLTAGE(
      "output voltage",
      "everything behind it was chosen for that voltage",
      standard("IEC 60747-1: rated and characteristic values"),
      RegulatorRule::outputVoltage),
  INPUT_VOLTAGE(
      "input voltage",
      "the rail before it, with its tolerance, must stay below the rating",
      standard("IEC 60747-1: limiting values"),
      atLeast("VI")),
  OUTPUT_CURRENT("output current", "what the boards draw", standard("IEC 60747-1"), atLeast("IO")),
  DROPOUT(
      "dropout voltage",
      "the input may come closer to the output than the candidate bears",
      standard("IEC 60747-1"),
      RegulatorHeat::dropout),
  HEAT(
      "heat",
      "all volts between input and output, times the current, become heat in it",
      standard("IEC 60747-1: TJ = TA + RthJA·P; P = (VI,max − VO,min)·IO + VI,max·IQ"),
      RegulatorHeat::heat),
  OUTPUT_CAPACITOR(
      "output capacitor",
      "a low-drop type oscillates without the right capacitor; a classic one asks for none",
      Source.datasheet("National LM2940/LM2940C, SNVS769H: at least 22 µF, ESR is critical"),
      RegulatorRule::outputCapacitor),
  TAB(
      "what the tab is joined to",
      "adjustable types carry the output on the tab, fixed ones the ground",
      Source.datasheet("onsemi MC7800/D and LM317/D: heatsink surface connected to pin 2"),
      MosfetRule::tab);

  private final Card card;

  RegulatorRule(String words, String why, Source source, Judgement judgement) {
    this.card = Card.of(words, why, source, judgement);
  }

  @Override
  public Card card() {
    return card;
  }

  /** The nominal voltages must agree; where only limits are known they must be within. */
  private static Optional<Answer> outputVoltage(SwapCase swap) {
    var asked = swap.asked().lines("VO");
    var offered = swap.offered().lines("VO");
    if (asked.isEmpty() || offered.isEmpty()) {
      return Optional.of(
          Comparison.unknown(
              swap, "VO", swap.asked().greatest("VO"), swap.offered().greatest("VO")));
    }
    Optional<Evidence> needs =
        asked
            .get(0)
            .typ()
            .map(v -> Evidence.of(v, asked.get(0).condition(), asked.get(0).source()));
    Optional<Evidence> gives =
        offered
            .get(0)
            .typ()
            .map(v -> Evidence.of(v, offered.get(0).condition(), offered.get(0).source()));
    if (needs.isEmpty() || gives.isEmpty()) {
      return Optional.of(
          new Answer(
              SwapVerdict.DOES_NOT_FIT,
              needs,
              gives,
              OptionalDouble.empty(),
              List.of(),
              "one is fixed and the other adjustable: they need different parts around them"));
    }
    boolean same = needs.get().quantity().get().sameAs(gives.get().quantity().get());
    return Optional.of(
        Answer.of(
            same ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT, needs.get(), gives.get(), ""));
  }

  private static Optional<Answer> outputCapacitor(SwapCase swap) {
    Optional<Evidence> gives = swap.offered().least("Cout");
    if (gives.isEmpty() || swap.asked().states("Cout")) {
      return Optional.empty();
    }
    return Optional.of(
        Answer.missing(
            Optional.empty(),
            gives,
            List.of("the output capacitor and its ESR: what stands beside the regulator"),
            "check that the capacitor at its output is at least that, and not a ceramic alone"));
  }
}
