package lowfirst.channel;

import java.util.List;
import lowfirst.board.Load.LoadKind;
import lowfirst.channel.ChannelInputs.Switching;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/**
 * Whether the switch and the contact carry a motor that jams, which draws for as long as it is on
 * what it draws at standstill: its inrush. Track and wire bear anyway what the fuse or the supply
 * lets through ({@link FuseChecks}).
 */
final class StallChecks {
  /** A fuse that opens in less leaves a chip in its inrush, not in a steady state. */
  private static final double SOON_SECONDS = 1;

  private StallChecks() {}

  /** Adds the checks of a motor that jams; none of any other load. */
  static void into(ChannelInputs in, List<Check> checks) {
    if (in.loadKind() != LoadKind.MOTOR) {
      return;
    }
    ChannelInputs stalled = in.atInrush();
    boolean opens =
        in.switching() == Switching.MOSFET
            && in.datum(Term.FUSE_OPENING).canPass()
            && in.datum(Term.FUSE_OPENING_CURRENT).canPass()
            && in.high(Term.FUSE_OPENING) <= SOON_SECONDS;
    double lasting = opens ? in.high(Term.FUSE_OPENING_CURRENT) : Double.POSITIVE_INFINITY;
    // a motor that is half jammed draws what the fuse doesn't open at
    ChannelInputs steady =
        stalled.scaled(Term.LOAD_CURRENT, Math.min(1, lasting / stalled.loadAmps()));
    checks.add(ended(in, current(steady)));
    checks.add(ended(in, heat(in, stalled, steady, opens)));
  }

  private static Check current(ChannelInputs in) {
    double carried = Math.min(in.low(Term.DRAIN_CURRENT_RATING), in.low(Term.CONTACT_RATING));
    Datum[] data = {
      in.datum(Term.LOAD_CURRENT),
      in.datum(Term.SUPPLY),
      in.datum(Term.DRAIN_CURRENT_RATING),
      in.datum(Term.CONTACT_RATING)
    };
    return switch (in.switching()) {
      case DARLINGTON_ARRAY -> {
        double left = in.low(Term.TOTAL_CURRENT_RATING) - in.high(Term.OTHERS_ON_STAGE);
        yield Check.of(
            CheckKind.STALL_CURRENT,
            in.loadAmps(),
            Math.min(carried, left),
            Datum.with(data, in.datum(Term.TOTAL_CURRENT_RATING), in.datum(Term.OTHERS_ON_STAGE)));
      }
      case BIPOLAR_TRANSISTOR ->
          Check.of(
              CheckKind.STALL_CURRENT,
              in.loadAmps(),
              Math.min(carried, in.low(Term.FORCED_GAIN_RATING) * StageChecks.baseAmps(in)),
              Datum.with(data, StageChecks.baseFrom(in)));
      case MOSFET, OPTOCOUPLER, CURRENT_SINK ->
          Check.of(CheckKind.STALL_CURRENT, in.loadAmps(), carried, data);
    };
  }

  private static Check heat(
      ChannelInputs in, ChannelInputs stalled, ChannelInputs steady, boolean opens) {
    if (in.switching() != Switching.MOSFET) {
      return StageChecks.promised(
          steady, StageChecks.temperature(CheckKind.STALL_JUNCTION, steady));
    }
    Check lasting = SwitchChecks.heat(CheckKind.STALL_JUNCTION, steady);
    if (!opens) {
      return lasting;
    }
    Check until =
        SwitchChecks.pulseHeat(CheckKind.STALL_JUNCTION, in, stalled, in.datum(Term.FUSE_OPENING));
    Check worse = until.actualAmount() > lasting.actualAmount() ? until : lasting;
    return lasting.verdict() == Verdict.UNDECIDED
        ? lasting
        : worse.with(in.datum(Term.FUSE_OPENING_CURRENT));
  }

  /** What is too much for good may still be ended in time, as nobody has said. */
  private static Check ended(ChannelInputs in, Check check) {
    if (check.verdict() != Verdict.OVERLOADED) {
      return check;
    }
    boolean assumed = in.datum(Term.INRUSH).source().origin() == Source.Origin.STANDARD;
    String load = in.channel().load();
    String amps = Quantity.of(in.inrushAmps(), Dimension.CURRENT).rounded(3);
    return check.lacking(
        List.of(
            Datum.missing(
                Term.INRUSH,
                assumed
                    ? "stall current of load "
                        + load
                        + ", which it draws with its shaft held: write it as its inrush in loads.csv"
                    : "what ends a jam of load "
                        + load
                        + ", which then draws "
                        + amps
                        + ": topen of its fuse, 1 s or less at an I= that the rest carries"
                        + " (datasheets.csv), or a stronger switch or contact")));
  }
}
