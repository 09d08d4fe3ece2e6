package lowfirst.channel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Verdict;
import lowfirst.quantity.Quantity;

/**
 * What the tool says of every channel, every rail and every limit that rails of a kit share.
 *
 * @param channels in the order of {@code channels.csv}
 * @param rails those that loads hang on, in the order of {@code rails.csv}
 * @param supplies in the order of {@code supplies.csv}
 */
public record LoadFindings(
    Map<OutputChannel, ChannelFinding> channels,
    List<RailFinding> rails,
    List<SupplyFinding> supplies) {

  public LoadFindings {
    channels = Collections.unmodifiableMap(new LinkedHashMap<>(channels));
    rails = List.copyOf(rails);
    supplies = List.copyOf(supplies);
  }

  /** Every finding of a kit. */
  public static LoadFindings of(Kit kit) {
    return of(KitInputs.of(kit));
  }

  /** Every finding of a kit whose numbers are resolved already. */
  public static LoadFindings of(KitInputs inputs) {
    var channels = new LinkedHashMap<OutputChannel, ChannelFinding>();
    inputs.channels().forEach(in -> channels.put(in.channel(), ChannelFinding.of(in)));
    return new LoadFindings(
        channels,
        inputs.rails().stream().map(RailFinding::of).toList(),
        inputs.supplies().stream().map(SupplyFinding::of).toList());
  }

  /** What carries the sum of many loads: the rails, then the shared limits. */
  public List<SumFinding> sums() {
    var sums = new ArrayList<SumFinding>(rails);
    sums.addAll(supplies);
    return sums;
  }

  /** No finding of anything: every channel is undecided. */
  public static LoadFindings none() {
    return new LoadFindings(Map.of(), List.of(), List.of());
  }

  /** What is said of a channel; of two of one name, each has its own. */
  public Optional<ChannelFinding> of(OutputChannel channel) {
    return Optional.ofNullable(channels.get(channel));
  }

  /** Whether a channel carries; undecided where nothing is said of it. */
  public Verdict verdictOf(OutputChannel channel) {
    return of(channel).map(ChannelFinding::verdict).orElse(Verdict.UNDECIDED);
  }

  /**
   * Whether the supply, its return and what it shares with other rails carry what may be on
   * together; undecided where nothing is said of the rail. What comes in one instant is apart:
   * loads that are switched on one after another don't ask for it.
   */
  public Verdict supplyVerdictOf(String rail) {
    Verdict known =
        rails.stream().anyMatch(finding -> finding.name().equals(rail))
            ? Verdict.CARRIES
            : Verdict.UNDECIDED;
    List<Check> lasting =
        sums().stream()
            .filter(sum -> sum.concerns(rail))
            .flatMap(sum -> sum.checks().stream())
            .filter(check -> !check.kind().isOfOneInstant())
            .toList();
    return known.worse(Verdict.worstOf(lasting));
  }

  /** The worst case of one number that a channel's check worked out. */
  public Optional<Quantity> actual(OutputChannel channel, CheckKind kind) {
    return of(channel).flatMap(finding -> finding.check(kind)).flatMap(Check::actual);
  }
}
