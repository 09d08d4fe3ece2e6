package lowfirst.swap.rule;

import static lowfirst.channel.check.CheckKind.DRAIN_CURRENT;
import static lowfirst.channel.check.CheckKind.DRAIN_VOLTAGE;
import static lowfirst.channel.check.CheckKind.GATE_DRIVE_CURRENT;
import static lowfirst.channel.check.CheckKind.GATE_LEVEL;
import static lowfirst.channel.check.CheckKind.GATE_LIMIT;
import static lowfirst.channel.check.CheckKind.JUNCTION_TEMPERATURE;
import static lowfirst.quantity.Source.standard;
import static lowfirst.swap.rule.Comparison.atLeast;
import static lowfirst.swap.rule.Comparison.atLeastIfStated;
import static lowfirst.swap.rule.Comparison.atMostIfStated;
import static lowfirst.swap.rule.Comparison.ratedAtLeast;
import static lowfirst.swap.rule.Comparison.ratedAtLeastIfStated;
import static lowfirst.swap.rule.Comparison.ratedAtMost;
import static lowfirst.swap.rule.Comparison.sameWord;

import java.util.Optional;
import lowfirst.channel.check.CheckKind;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.Words;

/** What a MOSFET must be to stand in for another; the channels it serves have the last word. */
public enum MosfetRule implements SwapRule {
  POLARITY(
      "channel polarity",
      "a P-channel part on the low side can't be turned off",
      standard("IEC 60747-8"),
      sameWord("polarity")),
  LOGIC_LEVEL(
      "turned on by the drive there is",
      "only an RDS(on) line at or below the gate voltage promises that it is on; VGS(th) does not",
      standard("IEC 60747-8: drain-source on-state resistance at a stated VGS"),
      OnState::logicLevel,
      GATE_LEVEL),
  ON_RESISTANCE(
      "on-state resistance",
      "the loss is I² RDS(on), and grows as the part warms",
      standard("IEC 60747-8"),
      OnState::resistance,
      JUNCTION_TEMPERATURE),
  DRAIN_VOLTAGE_RATING(
      "drain-source voltage",
      "the drain sees the rail and the flyback on top",
      standard("IEC 60747-8: maximum drain-source voltage"),
      atLeast("VDS"),
      DRAIN_VOLTAGE),
  GATE_VOLTAGE_RATING(
      "gate-source voltage",
      "a gate driven past its rating punctures; logic-level parts often bear only 16 V",
      standard("IEC 60747-8: maximum gate-source voltage"),
      atLeast("VGS"),
      GATE_LIMIT),
  DRAIN_CURRENT_RATING(
      "drain current",
      "the headline current holds only with the case at 25 °C, but a smaller one is a smaller part",
      standard("IEC 60747-8: maximum drain current"),
      ratedAtLeast("ID"),
      DRAIN_CURRENT,
      JUNCTION_TEMPERATURE),
  GATE_CHARGE(
      "gate charge",
      "a driver pin must move it at every edge; slow edges are hot edges",
      standard("IEC 60747-8: total gate charge"),
      MosfetRule::gateCharge,
      GATE_DRIVE_CURRENT,
      CheckKind.SWITCHING_TIME,
      JUNCTION_TEMPERATURE),
  THERMAL_RESISTANCE(
      "thermal resistance to the case",
      "an isolated package keeps the same die far hotter on the same heatsink",
      Source.datasheet("ST STP55NF06L and STP55NF06LFP, August 2002: 1.58 against 5.0 K/W"),
      atMostIfStated("RthJC"),
      JUNCTION_TEMPERATURE),
  JUNCTION_LIMIT(
      "junction temperature",
      "a lower limit leaves less for its own heat",
      standard("IEC 60747-8"),
      atLeastIfStated("TJ"),
      JUNCTION_TEMPERATURE),
  AVALANCHE(
      "avalanche energy",
      "without a flyback diode the coil's energy ends in the part",
      standard("IEC 60747-8: single-pulse avalanche energy"),
      MosfetRule::avalanche,
      CheckKind.AVALANCHE_ENERGY),
  TAB(
      "what the tab is joined to",
      "a live tab on a shared heatsink joins drains that must stay apart",
      COMMON_PRACTICE,
      MosfetRule::tab);

  private final Card card;

  MosfetRule(
      String words, String why, Source source, Judgement judgement, CheckKind... answeredBy) {
    this.card = Card.of(words, why, source, judgement, answeredBy);
  }

  @Override
  public Card card() {
    return card;
  }

  private static Optional<Answer> gateCharge(SwapCase swap) {
    boolean pwm = swap.isUnderPwm();
    return !pwm && swap.servesOnlyChannels() ? Optional.empty() : ratedAtMost("QG").of(swap);
  }

  private static Optional<Answer> avalanche(SwapCase swap) {
    boolean clamped =
        swap.servesOnlyChannels()
            && swap.uses().stream().allMatch(use -> use.channel().flybackDiode().isPresent());
    return clamped ? Optional.empty() : ratedAtLeastIfStated("EAS").of(swap);
  }

  /** An isolated tab in place of a live one is safe; a live one in place of an isolated is not. */
  static Optional<Answer> tab(SwapCase swap) {
    Optional<Evidence> asked = swap.asked().word("tab");
    Optional<Evidence> offered = swap.offered().word("tab");
    if (asked.isEmpty() || offered.isEmpty()) {
      return asked.isEmpty() && offered.isEmpty()
          ? Optional.empty()
          : Optional.of(Comparison.unknown(swap, "tab", asked, offered));
    }
    boolean safe =
        Words.same(asked.get().word(), offered.get().word())
            || Words.same(offered.get().word(), "isolated");
    return Optional.of(
        Answer.of(
            safe ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT,
            asked.get(),
            offered.get(),
            safe ? "" : "it would need an insulating washer and bush"));
  }
}
