package lowfirst.swap.rule;

import java.util.Optional;
import java.util.Set;
import lowfirst.channel.check.CheckKind;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.SwapCase;

/**
 * One thing that must hold before a part may stand in for another: a row of a kind's rule table.
 */
public interface SwapRule {

  /** Its words, reason, source and judgement. */
  Card card();

  /** What a report calls it. */
  default String words() {
    return card().words();
  }

  /** Why it matters. */
  default String why() {
    return card().why();
  }

  /** Where that is published, or "common practice". */
  default Source source() {
    return card().source();
  }

  /** The checks of a channel that answer the same question for the real load. */
  default Set<CheckKind> answeredBy() {
    return card().answeredBy();
  }

  /** What it says of a swap; empty when it does not concern it. */
  default Optional<Answer> judge(SwapCase swap) {
    return card().judgement().of(swap);
  }

  /**
   * What a rule is made of.
   *
   * @param words what a report calls it
   * @param why why it matters, in one sentence
   * @param source where that is published
   * @param judgement how it is judged
   * @param answeredBy the channel checks that answer it for the real load
   */
  record Card(
      String words, String why, Source source, Judgement judgement, Set<CheckKind> answeredBy) {

    static Card of(String words, String why, Source source, Judgement judgement) {
      return new Card(words, why, source, judgement, Set.of());
    }

    static Card of(
        String words, String why, Source source, Judgement judgement, CheckKind... answeredBy) {
      return new Card(words, why, source, judgement, Set.of(answeredBy));
    }
  }

  /** Where a reason is nothing but what the trade does. */
  Source COMMON_PRACTICE = Source.standard("common practice");
}
