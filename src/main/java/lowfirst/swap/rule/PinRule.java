package lowfirst.swap.rule;

import java.util.List;
import java.util.Optional;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.SwapCase;

/** In what order the leads come out. */
public enum PinRule implements SwapRule {
  PIN_ORDER(
      "pin order",
      "a part with other pins in the same holes can short the supply or never turn on",
      Source.datasheet("the pin drawings of both datasheets"),
      PinRule::order);

  private final Card card;

  PinRule(String words, String why, Source source, Judgement judgement) {
    this.card = Card.of(words, why, source, judgement);
  }

  @Override
  public Card card() {
    return card;
  }

  private static Optional<Answer> order(SwapCase swap) {
    Optional<Answer> same = Comparison.sameWord("pins").of(swap);
    boolean differs =
        same.filter(answer -> answer.verdict() == SwapVerdict.DOES_NOT_FIT).isPresent();
    if (differs) {
      String asked = same.get().asked().orElseThrow().word();
      String offered = same.get().offered().orElseThrow().word();
      return same.map(
          answer ->
              answer.remarking(
                  isTurned(asked, offered)
                      ? "the other way round: as drawn it is wrong; turned by half a turn its leads"
                          + " would meet the right holes, against the outline on the board"
                      : ""));
    }
    return same;
  }

  private static boolean isTurned(String asked, String offered) {
    List<String> pins = List.of(asked.strip().split("[\\s,]+"));
    var turned = new java.util.ArrayList<>(pins);
    java.util.Collections.reverse(turned);
    return turned.equals(List.of(offered.strip().split("[\\s,]+")));
  }
}
