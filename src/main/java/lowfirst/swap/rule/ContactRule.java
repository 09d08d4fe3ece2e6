package lowfirst.swap.rule;

import static lowfirst.quantity.Source.standard;
import static lowfirst.swap.rule.Comparison.atLeastIfStated;

import java.util.List;
import java.util.Optional;
import lowfirst.part.PartKind;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;

/** What a socket, terminal or connector must be to stand in for another. */
public enum ContactRule implements SwapRule {
  PIN_COUNT("number of pins", "as many as there are holes", COMMON_PRACTICE, ContactRule::pinCount),
  ROW_PITCH(
      "distance of the rows",
      "narrow and wide sockets of the same pin count do not fit each other's holes",
      standard("JEDEC MS-001 (7.62 mm), MS-010 (10.16 mm), MS-011 (15.24 mm)"),
      swap ->
          swap.asked().type().kind() == PartKind.SOCKET ? equal(swap, "row") : Optional.empty()),
  CONTACT_PITCH(
      "distance of the contacts",
      "2.5 and 2.54 mm, or 5.00 and 5.08 mm, drift apart over many poles",
      COMMON_PRACTICE,
      ContactRule::pitch),
  GENDER(
      "pins or sockets",
      "pins mate with sockets only",
      COMMON_PRACTICE,
      Comparison.sameWordIfStated("gender")),
  CURRENT(
      "current rating",
      "a contact that heats loosens and heats more",
      standard("IEC 60947-7-4, IEC 61984: rated current"),
      atLeastIfStated("Irated"));

  /** How far a lead may be beside the middle of its hole. */
  private static final double PLAY_MILLIMETRES = 0.15;

  private final Card card;

  ContactRule(String words, String why, Source source, Judgement judgement) {
    this.card = Card.of(words, why, source, judgement);
  }

  @Override
  public Card card() {
    return card;
  }

  /** Of headers two rows of ten are not one of twenty. */
  private static Optional<Answer> pinCount(SwapCase swap) {
    if (swap.asked().type().kind() == PartKind.SOCKET) {
      return equal(swap, "pinCount");
    }
    boolean inRows = swap.asked().states("rows") && swap.offered().states("rows");
    return inRows ? Comparison.sameWord("rows").of(swap) : equal(swap, "poles");
  }

  /** The pitches may differ by less than a hole's play over all poles together. */
  private static Optional<Answer> pitch(SwapCase swap) {
    if (swap.asked().type().kind() == PartKind.SOCKET) {
      return Optional.empty();
    }
    Optional<Evidence> asked = swap.asked().greatest("pitch");
    Optional<Evidence> offered = swap.offered().greatest("pitch");
    Optional<Evidence> poles = swap.asked().greatest("poles");
    if (asked.isEmpty() || offered.isEmpty() || poles.isEmpty()) {
      return equal(swap, "pitch");
    }
    double steps = poles.get().quantity().orElseThrow().asDouble() - 1;
    double apart =
        Math.abs(
            asked.get().quantity().orElseThrow().asDouble()
                - offered.get().quantity().orElseThrow().asDouble());
    boolean meets = steps * apart <= PLAY_MILLIMETRES;
    return Optional.of(
        Answer.of(
            meets ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT, asked.get(), offered.get(), ""));
  }

  /** The amounts must be the same. */
  static Optional<Answer> equal(SwapCase swap, String symbol) {
    Optional<Evidence> asked = swap.asked().greatest(symbol);
    Optional<Evidence> offered = swap.offered().greatest(symbol);
    if (asked.isEmpty() || offered.isEmpty()) {
      return Optional.of(
          Answer.missing(
              asked,
              offered,
              List.of(
                  symbol
                      + " of "
                      + (asked.isEmpty() ? swap.asked() : swap.offered()).name()
                      + ": in its text or a row in datasheets.csv"),
              ""));
    }
    boolean same =
        asked.get().quantity().orElseThrow().sameAs(offered.get().quantity().orElseThrow());
    return Optional.of(
        Answer.of(
            same ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT, asked.get(), offered.get(), ""));
  }
}
