package lowfirst.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import lowfirst.channel.MissingLine;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.part.BodyOutlines;
import lowfirst.problem.Excerpt;
import lowfirst.quantity.Source;
import lowfirst.swap.rule.Answer;
import lowfirst.swap.rule.PlaceRule;
import lowfirst.swap.rule.SwapRule;
import lowfirst.swap.rule.SwapRules;
import lowfirst.swap.rule.SwapVerdict;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.Words;

/**
 * What the tool says of one swap. It can't be built without its reasons.
 *
 * @param swap which swap
 * @param reasons every rule that concerns it, with its answer; never empty
 * @param channels every channel that the part serves, before and after
 * @param board what it does to the order of assembly; absent where only parts were compared
 */
public record SwapFinding(
    SwapCase swap,
    List<SwapReason> reasons,
    List<ChannelChange> channels,
    Optional<BoardChange> board) {

  private static final int PLACES_SHOWN = 6;

  public SwapFinding {
    reasons = List.copyOf(reasons);
    channels = List.copyOf(channels);
    if (reasons.isEmpty()) {
      throw new IllegalArgumentException("a finding shows its reasons: " + swap.offered().name());
    }
  }

  /** The two parts, the board, and every channel that the part serves. */
  public static SwapFinding of(SwapCase swap, BodyOutlines outlines) {
    SwapFinding parts = ofParts(swap);
    if (settledByName(parts.reasons())) {
      return parts;
    }
    List<ChannelChange> channels = ChannelChanges.of(swap, outlines);
    Optional<BoardChange> board =
        swap.designators().isEmpty()
            ? Optional.empty()
            : Optional.of(BoardChange.of(swap, outlines));
    return new SwapFinding(swap, parts.answeredBy(channels), channels, board);
  }

  /** The reasons, those answered by the channels where the part serves nothing else. */
  private List<SwapReason> answeredBy(List<ChannelChange> channels) {
    if (channels.isEmpty() || !swap.servesOnlyChannels()) {
      return reasons;
    }
    return reasons.stream()
        .map(
            reason -> {
              List<Optional<SwapVerdict>> loads =
                  channels.stream().map(one -> one.verdict(reason.rule().answeredBy())).toList();
              return loads.stream().allMatch(Optional::isPresent)
                      && reason.yieldsTo(
                          loads.stream()
                              .flatMap(Optional::stream)
                              .reduce(SwapVerdict.FITS, SwapVerdict::worse))
                  ? new SwapReason(reason.rule(), reason.answer(), names())
                  : reason;
            })
        .toList();
  }

  private List<String> names() {
    return swap.uses().stream().map(use -> use.channel().name()).toList();
  }

  /** Every rule of the asked kind, held against the two parts. */
  public static SwapFinding ofParts(SwapCase swap) {
    if (isSameType(swap)) {
      return ofParts(swap, List.of(sameType(swap)));
    }
    var reasons = new ArrayList<SwapReason>();
    for (SwapRule rule : SwapRules.of(swap.asked().type().kind())) {
      rule.judge(swap).ifPresent(answer -> reasons.add(new SwapReason(rule, answer, List.of())));
      if (settledByName(reasons)) {
        break;
      }
    }
    return ofParts(swap, reasons);
  }

  /** Whether what the two are called settles it, so that no rating needs a look. */
  private static boolean settledByName(List<SwapReason> reasons) {
    return reasons.stream()
        .anyMatch(
            reason ->
                (reason.rule() == PlaceRule.KIND || reason.rule() == PlaceRule.NUMBER)
                    && reason.verdict() != SwapVerdict.FITS);
  }

  private static SwapFinding ofParts(SwapCase swap, List<SwapReason> reasons) {
    return new SwapFinding(swap, reasons, List.of(), Optional.empty());
  }

  private static boolean isSameType(SwapCase swap) {
    String asked = swap.asked().type().typeNumber();
    return !asked.isBlank() && Words.same(asked, swap.offered().type().typeNumber());
  }

  private static SwapReason sameType(SwapCase swap) {
    Evidence number =
        Evidence.of(swap.asked().type().typeNumber(), Source.kit("the BOM's part type"));
    return new SwapReason(
        PlaceRule.KIND, Answer.of(SwapVerdict.FITS, number, number, "the same type"), List.of());
  }

  /** The worst of the reasons and of the channels. */
  public SwapVerdict verdict() {
    return Stream.concat(
            reasons.stream().map(SwapReason::verdict),
            channels.stream().map(ChannelChange::verdict))
        .reduce(SwapVerdict.FITS, SwapVerdict::worse);
  }

  /** The reasons with one verdict. */
  public List<SwapReason> reasons(SwapVerdict verdict) {
    return reasons.stream().filter(reason -> reason.verdict() == verdict).toList();
  }

  /**
   * The least of the margins that have a size: of the parts' limits and of the channels' checks.
   */
  public OptionalDouble margin() {
    return DoubleStream.concat(
            reasons.stream()
                .filter(reason -> reason.decidedBy().isEmpty())
                .flatMapToDouble(reason -> reason.answer().margin().stream()),
            channels.stream()
                .flatMap(channel -> channel.concerned().stream())
                .mapToDouble(Check::margin)
                .filter(margin -> !Double.isNaN(margin)))
        .min();
  }

  /**
   * What is not known, each said once. Of the RDSon lines that the channels ask for, the one that
   * serves them all stands for every one.
   */
  public List<String> missing() {
    Stream<String> ofParts =
        reasons(SwapVerdict.UNDECIDED).stream()
            .flatMap(reason -> reason.answer().missing().stream());
    Stream<String> ofChannels =
        channels.stream()
            .flatMap(channel -> channel.missing().stream())
            .filter(datum -> datum.term() != Term.ON_RESISTANCE)
            .map(Datum::missing);
    return Stream.of(ofParts, ofChannels, missingLine().stream())
        .flatMap(texts -> texts)
        .distinct()
        .toList();
  }

  private Optional<String> missingLine() {
    List<ChannelChange> asking =
        channels.stream()
            .filter(
                channel ->
                    channel.missing().stream()
                        .anyMatch(datum -> datum.term() == Term.ON_RESISTANCE))
            .toList();
    if (asking.isEmpty()) {
      return Optional.empty();
    }
    double volts = amounts(asking, CheckKind.GATE_LEVEL).min().orElse(Double.NaN);
    double amps = amounts(asking, CheckKind.DRAIN_CURRENT).max().orElse(Double.NaN);
    String forAll = asking.size() == 1 ? "" : ", which serves " + places(asking);
    return Optional.of(new MissingLine(swap.offered().name(), volts, amps).words(forAll));
  }

  private static DoubleStream amounts(List<ChannelChange> channels, CheckKind kind) {
    return channels.stream()
        .flatMap(channel -> channel.after().check(kind).stream())
        .mapToDouble(Check::actualAmount);
  }

  private static String places(List<ChannelChange> channels) {
    return Excerpt.of(
        channels.stream().map(one -> one.use().channel().name()).toList(), PLACES_SHOWN);
  }

  /** What one rule said. */
  public Optional<SwapReason> reason(SwapRule rule) {
    return reasons.stream().filter(reason -> reason.rule() == rule).findFirst();
  }
}
