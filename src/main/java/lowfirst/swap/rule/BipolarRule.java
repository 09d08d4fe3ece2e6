package lowfirst.swap.rule;

import static lowfirst.quantity.Source.standard;
import static lowfirst.swap.rule.Comparison.atLeast;
import static lowfirst.swap.rule.Comparison.ratedAtLeastIfStated;
import static lowfirst.swap.rule.Comparison.sameWord;
import static lowfirst.swap.rule.Comparison.testedAtMostIfStated;

import lowfirst.channel.check.CheckKind;
import lowfirst.quantity.Source;

/**
 * What a bipolar transistor must be to stand in for another; the channels it serves have the last
 * word.
 */
enum BipolarRule implements SwapRule {
  POLARITY(
      "NPN or PNP",
      "the other polarity is on when this one is off",
      standard("IEC 60747-7"),
      sameWord("polarity")),
  COLLECTOR_VOLTAGE(
      "collector-emitter voltage",
      "off, it sees the whole rail",
      standard("IEC 60747-7: collector-emitter voltage, base open"),
      atLeast("VCEO"),
      CheckKind.STAGE_VOLTAGE),
  COLLECTOR_CURRENT(
      "collector current",
      "above its rating the gain falls away and it overheats",
      standard("IEC 60747-7: maximum collector current"),
      atLeast("IC"),
      CheckKind.STAGE_CURRENT),
  GAIN(
      "current gain",
      "the base current there is must still saturate it: the guaranteed minimum counts",
      standard("IEC 60747-7: static forward current transfer ratio"),
      TransistorGain::judged,
      CheckKind.FORCED_GAIN),
  SATURATION(
      "saturation voltage",
      "more drop is more heat and less voltage for the load",
      standard("IEC 60747-7: collector-emitter saturation voltage"),
      testedAtMostIfStated("VCEsat"),
      CheckKind.FORCED_GAIN,
      CheckKind.STAGE_TEMPERATURE),
  BASE_VOLTAGE(
      "base-emitter voltage",
      "a Darlington needs two junctions' worth of drive",
      standard("IEC 60747-7: base-emitter voltage"),
      testedAtMostIfStated("VBEon"),
      CheckKind.FORCED_GAIN),
  POWER(
      "power",
      "its own heat",
      standard("IEC 60747-7: total power dissipation"),
      ratedAtLeastIfStated("PD"),
      CheckKind.STAGE_TEMPERATURE);

  private final Card card;

  BipolarRule(
      String words, String why, Source source, Judgement judgement, CheckKind... answeredBy) {
    this.card = Card.of(words, why, source, judgement, answeredBy);
  }

  @Override
  public Card card() {
    return card;
  }
}
