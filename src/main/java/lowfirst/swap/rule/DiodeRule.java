package lowfirst.swap.rule;

import static lowfirst.channel.check.CheckKind.DIODE_CURRENT;
import static lowfirst.channel.check.CheckKind.DIODE_VOLTAGE;
import static lowfirst.quantity.Source.standard;
import static lowfirst.swap.rule.Comparison.atLeast;
import static lowfirst.swap.rule.Comparison.atLeastIfStated;
import static lowfirst.swap.rule.Comparison.ratedAtLeastIfStated;

import lowfirst.channel.check.CheckKind;
import lowfirst.quantity.Source;

/** What a rectifier, signal or Schottky diode must be to stand in for another. */
public enum DiodeRule implements SwapRule {
  REVERSE_VOLTAGE(
      "reverse voltage",
      "a diode across a load sees the whole rail in reverse; a Schottky often bears only 40 V",
      standard("IEC 60747-2: repetitive peak reverse voltage"),
      atLeast("VRRM"),
      DIODE_VOLTAGE),
  AVERAGE_CURRENT(
      "average forward current",
      "under PWM a flyback diode carries the load current for the whole off share",
      standard("IEC 60747-2: mean forward current"),
      DiodeCurrent::judge,
      DIODE_CURRENT,
      CheckKind.DIODE_PEAK,
      CheckKind.DIODE_TEMPERATURE),
  SURGE_CURRENT(
      "surge current",
      "switching on and faults push many times the average through it",
      standard("IEC 60747-2: surge forward current"),
      ratedAtLeastIfStated("IFSM"),
      CheckKind.DIODE_PEAK),
  RECOVERY(
      "reverse recovery",
      "a slow rectifier still conducts backwards when the transistor turns on again: at PWM rates"
          + " each edge is a short circuit",
      standard("IEC 60747-2: reverse recovery time"),
      DiodeRecovery::judge,
      CheckKind.DIODE_RECOVERY),
  FORWARD_VOLTAGE(
      "forward voltage",
      "more drop means more heat, and a higher peak at the drain",
      standard("IEC 60747-2: forward voltage"),
      DiodeRecovery::forwardVoltage,
      CheckKind.DIODE_TEMPERATURE),
  LEAKAGE(
      "leakage when hot",
      "a Schottky leaks a thousand times more, and hotter still leaks more",
      standard("IEC 60747-2: reverse current"),
      DiodeRecovery::leakage),
  JUNCTION(
      "junction temperature",
      "a lower limit leaves less for its own heat",
      standard("IEC 60747-2: virtual junction temperature"),
      atLeastIfStated("TJ"),
      CheckKind.DIODE_TEMPERATURE);

  private final Card card;

  DiodeRule(String words, String why, Source source, Judgement judgement, CheckKind... answeredBy) {
    this.card = Card.of(words, why, source, judgement, answeredBy);
  }

  @Override
  public Card card() {
    return card;
  }
}
