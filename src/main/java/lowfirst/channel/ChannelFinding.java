package lowfirst.channel;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lowfirst.board.OutputChannel;

/**
 * What the tool says of one channel. It can't be built without its checks.
 *
 * @param channel which channel
 * @param checks every check done; never empty
 */
public record ChannelFinding(OutputChannel channel, List<Check> checks) {

  public ChannelFinding {
    checks = List.copyOf(checks);
    if (checks.isEmpty()) {
      throw new IllegalArgumentException("a finding shows its checks: " + channel.name());
    }
  }

  /** The worst of the checks. */
  public Verdict verdict() {
    return checks.stream().map(Check::verdict).reduce(Verdict.CARRIES, Verdict::worse);
  }

  /** Whether every check passes. */
  public boolean carries() {
    return verdict() == Verdict.CARRIES;
  }

  /** The check that limits the channel: the first of the worst verdict. */
  public Optional<Check> limitedBy() {
    return checks.stream().max(Comparator.comparing(Check::verdict));
  }
}
