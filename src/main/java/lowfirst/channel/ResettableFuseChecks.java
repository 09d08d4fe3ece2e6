package lowfirst.channel;

import java.util.List;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.channel.data.HoldCurrent;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * A resettable fuse, a PTC thermistor to UL 1434 or IEC 60738-1: it holds less in hot air, trips
 * slowly, and then stays hot instead of opening. It is judged by its own figures.
 */
final class ResettableFuseChecks {
  private ResettableFuseChecks() {}

  /** Adds what sets it apart from a fuse that melts. */
  static void into(ChannelInputs in, HoldCurrent hold, List<Check> checks) {
    checks.add(holds(in, hold));
    FuseChecks.track(
        in,
        CheckKind.TRIP_PROTECTS_TRACK,
        in.high(Term.FUSE_TRIP),
        checks,
        in.datum(Term.FUSE_TRIP));
    checks.add(
        FuseChecks.wire(
            in, CheckKind.TRIP_PROTECTS_WIRE, in.high(Term.FUSE_TRIP), in.datum(Term.FUSE_TRIP)));
  }

  /** An inrush above what it holds may trip it or not: only its curve of time to trip tells. */
  private static Check holds(ChannelInputs in, HoldCurrent hold) {
    Datum held = hold.at(in.ambient());
    double others = in.high(Term.OTHERS_ON_FUSE);
    Check check =
        Check.of(
            CheckKind.FUSE_HOLDS,
            in.loadAmps() + others,
            held.low(),
            in.datum(Term.LOAD_CURRENT),
            in.datum(Term.SUPPLY),
            in.datum(Term.OTHERS_ON_FUSE),
            in.datum(Term.AMBIENT),
            held);
    double most = in.inrushAmps() + others;
    if (check.verdict() != Verdict.CARRIES || !SwitchChecks.hasInrush(in) || most <= held.low()) {
      return check;
    }
    String inrush =
        Double.isNaN(most)
            ? in.datum(Term.INRUSH).missing()
            : "time to trip of "
                + hold.name()
                + " at the inrush of "
                + Quantity.of(most, Dimension.CURRENT).rounded(3)
                + ": its maker's curve; or take one that holds the inrush";
    return check.lacking(List.of(Datum.missing(Term.INRUSH, inrush)));
  }
}
