package lowfirst.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;

/**
 * Many builds of one channel, each with every part somewhere within its tolerance: how many would
 * be overloaded. Each number lies evenly between its corners, independently; the same seed gives
 * the same builds.
 *
 * <p>The corners are the proof, this is the picture: a channel that carries at its corners has no
 * overloaded build.
 *
 * @param builds how many were tried
 * @param overloaded how many of them were overloaded
 * @param undecided how many of them lack a datum
 */
public record BuildSpread(int builds, int overloaded, int undecided) {

  /** Tries so many builds. */
  public static BuildSpread of(ChannelInputs in, int builds, long seed) {
    var random = new SplittableRandom(seed);
    List<Datum> spread = spread(in);
    int overloaded = 0;
    int undecided = 0;
    for (int i = 0; i < builds; i++) {
      Datum[] build = new Datum[spread.size()];
      for (int j = 0; j < build.length; j++) {
        Datum datum = spread.get(j);
        build[j] = built(datum, random.nextDouble());
      }
      Verdict verdict = ChannelFinding.of(in.with(build)).verdict();
      overloaded += verdict == Verdict.OVERLOADED ? 1 : 0;
      undecided += verdict == Verdict.UNDECIDED ? 1 : 0;
    }
    return new BuildSpread(builds, overloaded, undecided);
  }

  private static List<Datum> spread(ChannelInputs in) {
    var spread = new ArrayList<Datum>();
    for (Term term : Term.values()) {
      Datum datum = in.datum(term);
      if (datum.isKnown() && datum.low() < datum.high()) {
        spread.add(datum);
      }
    }
    return spread;
  }

  /** A number somewhere between its corners; its nominal stays what others are stated at. */
  private static Datum built(Datum datum, double share) {
    double value = datum.low() + share * (datum.high() - datum.low());
    return Datum.of(datum.term(), value, datum.nominal(), value, datum.source());
  }

  /** Share of builds that would be overloaded, 0 to 1. */
  public double overloadedShare() {
    return builds == 0 ? 0 : (double) overloaded / builds;
  }
}
