package lowfirst.channel;

import java.util.Optional;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Term;

/**
 * The load current up to which a channel carries, everything else as it is: found by halving on the
 * real finding, not by a formula of its own.
 *
 * @param amperes the largest worst-case load current with which every check passes
 * @param limitedBy the check that fails just above it; absent when none does up to a thousandfold
 */
public record CarryLimit(double amperes, Optional<CheckKind> limitedBy) {
  private static final double LARGEST_FACTOR = 1000;
  private static final double SMALLEST_FACTOR = 1e-3;
  private static final int HALVINGS = 24;

  /** The limit; absent when the channel carries no current at all, or data are missing. */
  public static Optional<CarryLimit> of(ChannelInputs in) {
    if (!in.knows(Term.LOAD_CURRENT) || !carries(in, SMALLEST_FACTOR)) {
      return Optional.empty();
    }
    double good = carries(in, 1) ? 1 : SMALLEST_FACTOR;
    double bad = good == 1 ? LARGEST_FACTOR : 1;
    if (carries(in, bad)) {
      return Optional.of(new CarryLimit(with(in, bad).loadAmps(), Optional.empty()));
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = Math.sqrt(good * bad);
      if (carries(in, middle)) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    CheckKind limiting = ChannelFinding.of(with(in, bad)).limitedBy().kind();
    return Optional.of(new CarryLimit(with(in, good).loadAmps(), Optional.of(limiting)));
  }

  private static boolean carries(ChannelInputs in, double factor) {
    return ChannelFinding.of(with(in, factor)).carries();
  }

  /** The channel with a load that draws so many times as much, running and at switching on. */
  static ChannelInputs with(ChannelInputs in, double factor) {
    ChannelInputs running = in.scaled(Term.LOAD_CURRENT, factor);
    return in.knows(Term.INRUSH) ? running.scaled(Term.INRUSH, factor) : running;
  }
}
