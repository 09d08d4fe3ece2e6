package lowfirst.swap;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lowfirst.channel.ChannelFinding;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Verdict;
import lowfirst.swap.rule.SwapVerdict;
import lowfirst.swap.subject.SwapUse;

/**
 * What a swap does to one channel: its finding before and after.
 *
 * @param use the channel, and what the part does in it
 * @param before with the part that the BOM asks for
 * @param after with the candidate
 */
public record ChannelChange(SwapUse use, ChannelFinding before, ChannelFinding after) {

  /** A check side by side. */
  public record Pair(CheckKind kind, Optional<Check> before, Optional<Check> after) {

    /** Whether the swap changes it. */
    public boolean isChanged() {
      return before.isEmpty()
          || after.isEmpty()
          || before.get().verdict() != after.get().verdict()
          || Double.compare(before.get().margin(), after.get().margin()) != 0;
    }

    private boolean isWorse() {
      Verdict was = before.map(Check::verdict).orElse(Verdict.CARRIES);
      return after.isPresent() && after.get().verdict().compareTo(was) > 0;
    }
  }

  /** Every check of either finding, in report order. */
  public List<Pair> pairs() {
    return List.of(CheckKind.values()).stream()
        .map(kind -> new Pair(kind, before.check(kind), after.check(kind)))
        .filter(pair -> pair.before().isPresent() || pair.after().isPresent())
        .toList();
  }

  /** The checks that the part has a say in, or that got worse, after the swap. */
  public List<Check> concerned() {
    Set<CheckKind> own = use.role().checks();
    return pairs().stream()
        .filter(pair -> own.contains(pair.kind()) || pair.isWorse())
        .flatMap(pair -> pair.after().stream())
        .toList();
  }

  /** What those checks lack. */
  List<Datum> missing() {
    return concerned().stream()
        .flatMap(check -> check.data().stream())
        .filter(datum -> !datum.isKnown())
        .distinct()
        .toList();
  }

  /** Whether the channel bears the candidate, as far as the part has a say in it. */
  public SwapVerdict verdict() {
    return concerned().stream()
        .map(check -> verdict(check.verdict()))
        .reduce(SwapVerdict.FITS, SwapVerdict::worse);
  }

  /** What a channel's verdict means for a swap. */
  static SwapVerdict verdict(Verdict verdict) {
    return switch (verdict) {
      case CARRIES -> SwapVerdict.FITS;
      case UNDECIDED -> SwapVerdict.UNDECIDED;
      case OVERLOADED -> SwapVerdict.DOES_NOT_FIT;
    };
  }

  /** The check that limits the channel after the swap: the worst verdict with the least margin. */
  public Optional<Check> limitedBy() {
    return concerned().stream()
        .max(
            Comparator.comparing(Check::verdict)
                .thenComparing(Comparator.comparingDouble(ChannelChange::margin).reversed()));
  }

  private static double margin(Check check) {
    return Double.isNaN(check.margin()) ? 0 : check.margin();
  }

  /** The worst of these checks after the swap, as far as the part has a say; empty if none is. */
  Optional<SwapVerdict> verdict(Set<CheckKind> kinds) {
    return kinds.stream()
        .flatMap(kind -> after.check(kind).stream())
        .map(check -> verdict(check.verdict()))
        .reduce(SwapVerdict::worse);
  }
}
