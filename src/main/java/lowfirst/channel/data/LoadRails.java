package lowfirst.channel.data;

import java.util.Optional;
import lowfirst.board.Kit;
import lowfirst.board.Load;
import lowfirst.board.OutputChannel;
import lowfirst.board.Rail;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.quantity.Source;

/**
 * Which rail each channel's load hangs on, as far as the tables tell.
 *
 * @param kit whose tables
 */
public record LoadRails(Kit kit) {
  /** The rail that the channel's load hangs on; empty where the tables don't tell. */
  public Optional<Rail> of(OutputChannel channel) {
    return kit.railOf(channel);
  }

  /** Whether it has a load, and the tables don't tell on which rail. */
  public boolean isUnknown(OutputChannel channel) {
    return !channel.load().isEmpty() && of(channel).isEmpty();
  }

  /** What lacks until the rail of the channel's load is known with its voltage. */
  public String missing(OutputChannel channel) {
    Optional<Load> load = kit.load(channel.load());
    if (channel.load().isEmpty()) {
      return "load of channel " + channel.name() + ": write it in channels.csv";
    }
    if (load.isEmpty()) {
      return "load \"" + channel.load() + "\" of channel " + channel.name() + ": loads.csv";
    }
    String name = load.get().rail();
    if (name.isEmpty()) {
      return "rail of load " + channel.load() + ": write it in loads.csv";
    }
    return kit.rail(name).isEmpty()
        ? "rail \"" + name + "\" of load " + channel.load() + ": rails.csv"
        : "voltage of rail " + name + ": rails.csv";
  }

  /** A rail's voltage with its tolerance. */
  public static Optional<Datum> voltage(Term term, Rail rail) {
    if (rail.voltage().isEmpty()) {
      return Optional.empty();
    }
    Source source = rail.voltage().get().source();
    Source cited =
        rail.tolerance().isPresent()
            ? weaker(source, rail.tolerance().get().source())
            : new Source(
                source.origin(), source + "; ±10 % assumed, change it in rails.csv tolerance");
    return Optional.of(
        Datum.of(term, rail.lowestVolts(), rail.nominalVolts(), rail.highestVolts(), cited));
  }

  private static Source weaker(Source one, Source other) {
    return one.canPass() && !other.canPass() ? other : one;
  }
}
