package lowfirst.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.quantity.Source;

/** What is said of kinds of part that have no table of their own. */
enum OtherKindRule implements SwapRule {
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
