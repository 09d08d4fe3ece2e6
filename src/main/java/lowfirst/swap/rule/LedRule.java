package lowfirst.swap.rule;

import static lowfirst.swap.rule.Comparison.atLeastIfStated;
import static lowfirst.swap.rule.Comparison.atMostIfStated;
import static lowfirst.swap.rule.Comparison.sameWord;

import lowfirst.quantity.Source;

/** What an LED must be to stand in for another. */
enum LedRule implements SwapRule {
  COLOUR(
      "colour",
      "it says something to the person who looks at it, and another colour drops another voltage",
      COMMON_PRACTICE,
      sameWord("colour")),
  SIZE(
      "size",
      "it may have to meet a hole in a front",
      COMMON_PRACTICE,
      swap ->
          swap.asked().states("size")
              ? ContactRule.equal(swap, "size")
              : java.util.Optional.empty()),
  FORWARD_VOLTAGE(
      "forward voltage",
      "more drop leaves less current through the same resistor",
      Source.standard("IEC 60747-5-6: forward voltage"),
      atMostIfStated("VF")),
  CURRENT(
      "current rating",
      "its resistor was chosen for the other's current",
      Source.standard("IEC 60747-5-6: maximum forward current"),
      atLeastIfStated("IF"));

  private final Card card;

  LedRule(String words, String why, Source source, Judgement judgement) {
    this.card = Card.of(words, why, source, judgement);
  }

  @Override
  public Card card() {
    return card;
  }
}
