package lowfirst.swap.rule;

import static lowfirst.quantity.Source.standard;
import static lowfirst.swap.rule.Comparison.atLeast;
import static lowfirst.swap.rule.Comparison.atLeastIfStated;
import static lowfirst.swap.rule.Comparison.atMost;
import static lowfirst.swap.rule.Comparison.ratedAtMostIfStated;
import static lowfirst.swap.rule.Comparison.sameWord;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import lowfirst.channel.check.CheckKind;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;

/** What a fuse must be to stand in for another. */
public enum FuseRule implements SwapRule {
  NOT_MORE(
      "rated current not higher",
      "a larger fuse no longer protects the wire and track behind it",
      standard("IEC 60127-1: rated current"),
      atMost("Irated"),
      CheckKind.FUSE_PROTECTS_TRACK,
      CheckKind.FUSE_PROTECTS_WIRE,
      CheckKind.CONTACT_FAULT,
      CheckKind.TRIP_PROTECTS_TRACK,
      CheckKind.TRIP_PROTECTS_WIRE),
  TRIP(
      "trip current not higher",
      "a resettable fuse that trips later no longer protects the wire and track behind it",
      standard("IEC 60738-1, UL 1434: trip current"),
      ratedAtMostIfStated("Itrip"),
      CheckKind.TRIP_PROTECTS_TRACK,
      CheckKind.TRIP_PROTECTS_WIRE),
  ENOUGH(
      "rated current high enough",
      "a smaller fuse opens in normal use",
      standard("IEC 60127-1: rated current"),
      atLeast("Irated"),
      CheckKind.FUSE_CURRENT,
      CheckKind.FUSE_PULSE,
      CheckKind.FUSE_HOLDS),
  CHARACTERISTIC(
      "time-current characteristic",
      "a slow fuse lets a fault last, a fast one opens at every inrush, and a resettable one never"
          + " opens for good",
      standard("IEC 60127-1: characteristics FF, F, M, T, TT"),
      sameWord("characteristic")),
  VOLTAGE(
      "rated voltage",
      "above it the arc does not go out",
      standard("IEC 60127-1: rated voltage"),
      swap -> sparing(swap, "Vrated"),
      CheckKind.FUSE_VOLTAGE),
  BREAKING_CAPACITY(
      "breaking capacity",
      "a fault beyond it bursts the fuse; a figure for alternating voltage says nothing of direct",
      standard("IEC 60127-1: breaking capacity"),
      swap -> sparing(swap, "breaking"),
      CheckKind.FUSE_BREAKING),
  SIZE(
      "size",
      "it must sit in its holder or holes",
      standard("IEC 60127-2: cartridge dimensions"),
      Comparison.sameWordIfStated("package"));

  private static final Pattern DIRECT = Pattern.compile("(?i)\\b(?:V ?)?DC\\b");

  private final Card card;

  FuseRule(String words, String why, Source source, Judgement judgement, CheckKind... answeredBy) {
    this.card = Card.of(words, why, source, judgement, answeredBy);
  }

  @Override
  public Card card() {
    return card;
  }

  /** At least as much; and a figure for alternating voltage promises nothing of direct. */
  private static Optional<Answer> sparing(SwapCase swap, String symbol) {
    return atLeastIfStated(symbol)
        .of(swap)
        .map(
            answer ->
                answer.verdict() == SwapVerdict.FITS
                        && isDirect(answer.asked())
                        && !isDirect(answer.offered())
                    ? Answer.missing(
                        answer.asked(),
                        answer.offered(),
                        List.of(
                            symbol
                                + " of "
                                + swap.offered().name()
                                + " at direct voltage: a row in datasheets.csv"),
                        "a figure for alternating voltage says nothing of direct")
                    : answer);
  }

  private static boolean isDirect(Optional<Evidence> rating) {
    return rating.filter(limit -> DIRECT.matcher(limit.word()).find()).isPresent();
  }
}
