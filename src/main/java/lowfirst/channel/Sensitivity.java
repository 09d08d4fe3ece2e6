package lowfirst.channel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;

/**
 * How much one number matters: how much of a passing check's margin is used up when the number is a
 * tenth worse.
 *
 * @param term which number
 * @param check the check that comes nearest to failing by it
 * @param used share of the margin used up; 1 or more where the check then fails
 */
public record Sensitivity(Term term, CheckKind check, double used) {
  private static final double TENTH = 0.1;
  private static final double SHOWN = 1e-3;

  /** Every number that matters, the one that matters most first. */
  public static List<Sensitivity> of(ChannelInputs in) {
    ChannelFinding now = ChannelFinding.of(in);
    var all = new ArrayList<Sensitivity>();
    for (Term term : Term.values()) {
      if (term.worse() != Term.Worse.EITHER && in.knows(term)) {
        double factor = term.worse() == Term.Worse.HIGHER ? 1 + TENTH : 1 - TENTH;
        worst(now, ChannelFinding.of(in.scaled(term, factor)), term).ifPresent(all::add);
      }
    }
    all.sort(Comparator.comparingDouble(Sensitivity::used).reversed());
    return List.copyOf(all);
  }

  private static java.util.Optional<Sensitivity> worst(
      ChannelFinding now, ChannelFinding then, Term term) {
    Sensitivity worst = new Sensitivity(term, CheckKind.GATE_LEVEL, SHOWN);
    for (Check check : now.checks()) {
      if (check.verdict() != Verdict.CARRIES) {
        continue;
      }
      double after = then.check(check.kind()).map(Check::margin).orElse(Double.NaN);
      double used = (check.margin() - after) / Math.max(check.margin(), SHOWN);
      if (used > worst.used) {
        worst = new Sensitivity(term, check.kind(), used);
      }
    }
    return worst.used > SHOWN ? java.util.Optional.of(worst) : java.util.Optional.empty();
  }
}
