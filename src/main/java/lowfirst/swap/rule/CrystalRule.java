package lowfirst.swap.rule;

import static lowfirst.quantity.Source.standard;
import static lowfirst.swap.rule.Comparison.atMostIfStated;

import java.util.Optional;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.SwapCase;

/** What a crystal must be to stand in for another. */
enum CrystalRule implements SwapRule {
  FREQUENCY(
      "frequency",
      "everything that counts time counts on it",
      standard("IEC 60122-1: nominal frequency"),
      swap -> ContactRule.equal(swap, "f0")),
  LOAD_CAPACITANCE(
      "load capacitance",
      "with other load capacitors than it was cut for it runs off frequency or does not start",
      standard("IEC 60122-1: load capacitance"),
      CrystalRule::loadCapacitance),
  TOLERANCE(
      "frequency tolerance",
      "a serial line bears a per cent or two, a clock does not",
      standard("IEC 60122-1: frequency tolerance"),
      atMostIfStated("df"));

  private final Card card;

  CrystalRule(String words, String why, Source source, Judgement judgement) {
    this.card = Card.of(words, why, source, judgement);
  }

  @Override
  public Card card() {
    return card;
  }

  private static Optional<Answer> loadCapacitance(SwapCase swap) {
    return ContactRule.equal(swap, "CL");
  }
}
