package lowfirst.swap.rule;

import static lowfirst.quantity.Source.standard;
import static lowfirst.swap.rule.Comparison.atLeast;
import static lowfirst.swap.rule.Comparison.atLeastIfStated;
import static lowfirst.swap.rule.Comparison.atMostIfStated;
import static lowfirst.swap.rule.Comparison.sameWordIfStated;
import static lowfirst.swap.rule.Comparison.testedAtMostIfStated;

import lowfirst.channel.check.CheckKind;
import lowfirst.quantity.Source;

/** What a Darlington driver array must be to stand in for another. */
enum ArrayRule implements SwapRule {
  CHANNELS(
      "number of channels",
      "a channel too few leaves an output without a driver",
      COMMON_PRACTICE,
      atLeast("channels")),
  OUTPUT_VOLTAGE(
      "output voltage",
      "off, each output sees its rail",
      standard("IEC 60747-7"),
      atLeast("VCE"),
      CheckKind.STAGE_VOLTAGE),
  OUTPUT_CURRENT(
      "output current",
      "of one output; all together the package and its ground pin set a lower limit",
      Source.datasheet("TI ULN2803A SLRS049E: 500 mA an output, 2.5 A the substrate pin"),
      atLeast("IC"),
      CheckKind.STAGE_CURRENT),
  TOTAL_CURRENT(
      "current of all outputs together",
      "one ground pin carries what all outputs sink",
      Source.datasheet("TI ULN2803A SLRS049E: 2.5 A the substrate pin"),
      atLeastIfStated("ICtotal"),
      CheckKind.STAGE_TOTAL),
  SATURATION(
      "saturation voltage",
      "a Darlington drops a volt or more, and the package must bear the heat",
      Source.datasheet("onsemi ULN2003A: 1.6 V at 350 mA"),
      testedAtMostIfStated("VCEsat"),
      CheckKind.STAGE_TEMPERATURE),
  HEAT(
      "heat of the package",
      "all outputs heat one package, and it must pass their heat on to the air",
      Source.datasheet("TI ULN2803A SLRS049E: PD = (TJmax − TA)/RthJA of the package"),
      atMostIfStated("RthJA"),
      CheckKind.STAGE_TEMPERATURE),
  INPUT_VOLTAGE(
      "input voltage to turn on",
      "arrays for 5 V and for 6 V to 15 V logic differ only in one letter",
      Source.datasheet("onsemi ULN2003A: 2.7 kΩ input resistor for 5 V logic"),
      testedAtMostIfStated("VIon")),
  CLAMP(
      "built-in clamp diodes",
      "without them the coil's kick ends in the output",
      COMMON_PRACTICE,
      sameWordIfStated("clamp"));

  private final Card card;

  ArrayRule(String words, String why, Source source, Judgement judgement, CheckKind... answeredBy) {
    this.card = Card.of(words, why, source, judgement, answeredBy);
  }

  @Override
  public Card card() {
    return card;
  }
}
