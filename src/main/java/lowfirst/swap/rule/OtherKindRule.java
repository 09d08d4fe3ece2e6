package lowfirst.swap.rule;

import static lowfirst.quantity.Source.standard;
import static lowfirst.swap.rule.Comparison.atLeastIfStated;
import static lowfirst.swap.rule.Comparison.atMostIfStated;
import static lowfirst.swap.rule.Comparison.sameWordIfStated;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.SwapCase;

/**
 * What is said of kinds of part that have no table of their own: whether figures that both state
 * contradict each other. Nothing of it makes a part fit.
 */
public enum OtherKindRule implements SwapRule {
  VALUE(
      "value and tolerance",
      "every part within the candidate's tolerance must be within the one asked for",
      standard("IEC 60393-1: rated resistance and its tolerance"),
      ifBothState(swap -> swap.asked().type().value().flatMap(value -> ValueBand.judge(swap)))),
  TAPER(
      "taper",
      "a linear one in place of a volume control does all its work at one end of its turn",
      COMMON_PRACTICE,
      OtherKindRule::taper),
  VOLTAGE(
      "voltage it is made for",
      "a coil for less burns, a coil for more does not pull in",
      standard("IEC 61810-1: rated coil voltage"),
      ifBothState(swap -> ContactRule.equal(swap, "Vnominal"))),
  REVERSE_VOLTAGE(
      "reverse voltage",
      "off, a diode sees the whole supply",
      standard("IEC 60747-2: repetitive peak reverse voltage"),
      ifBothState(atLeastIfStated("VRRM"))),
  CURRENT(
      "rated current",
      "above it a coil's core saturates and a junction overheats",
      standard("IEC 62024-2, IEC 60747-2: rated current"),
      ifBothState(atLeastIfStated("Irated"))),
  HEAT(
      "thermal resistance",
      "more of it leaves the part on it hotter",
      standard("IEC 60747-1: TJ = TA + Rth·P"),
      ifBothState(atMostIfStated("Rth"))),
  PIN_COUNT(
      "number of pins",
      "as many as there are holes",
      COMMON_PRACTICE,
      ifBothState(swap -> ContactRule.equal(swap, "pinCount"))),
  COMPARE_YOURSELF(
      "everything else",
      "the tool has no rules for this kind of part",
      COMMON_PRACTICE,
      OtherKindRule::compare);

  static final List<SwapRule> TABLE = table();

  private final Card card;

  OtherKindRule(String words, String why, Source source, Judgement judgement) {
    this.card = Card.of(words, why, source, judgement);
  }

  @Override
  public Card card() {
    return card;
  }

  private static List<SwapRule> table() {
    var rules = new ArrayList<SwapRule>(List.of(PlaceRule.values()));
    rules.addAll(List.of(values()));
    return List.copyOf(rules);
  }

  private static Judgement ifBothState(Judgement judgement) {
    return swap -> judgement.of(swap).filter(answer -> answer.missing().isEmpty());
  }

  /** By word or by letter; which letter is which word, makers don't agree on. */
  private static Optional<Answer> taper(SwapCase swap) {
    return Stream.of("taper", "taperLetter")
        .flatMap(symbol -> ifBothState(sameWordIfStated(symbol)).of(swap).stream())
        .findFirst();
  }

  private static Optional<Answer> compare(SwapCase swap) {
    return Optional.of(
        Answer.missing(
            Optional.empty(),
            Optional.empty(),
            List.of(
                "a comparison by hand of "
                    + swap.asked().name()
                    + " and "
                    + swap.offered().name()
                    + ": both datasheets"),
            "compare size, leads, ratings and wiring yourself"));
  }
}
