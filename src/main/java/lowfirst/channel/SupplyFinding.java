package lowfirst.channel;

import java.util.ArrayList;
import java.util.List;
import lowfirst.board.SupplyUnit;
import lowfirst.channel.Remedy.Action;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.quantity.Quantity;

/**
 * What the tool says of a limit that several rails share.
 *
 * @param supply which limit, of which rails
 * @param checks every check done; never empty
 * @param remedies what to change; empty when it carries
 */
public record SupplyFinding(SupplyUnit supply, List<Check> checks, List<Remedy> remedies)
    implements SumFinding {

  public SupplyFinding {
    checks = List.copyOf(checks);
    remedies = List.copyOf(remedies);
    if (checks.isEmpty()) {
      throw new IllegalArgumentException("a finding shows its checks: " + supply.name());
    }
  }

  @Override
  public String name() {
    return supply.name();
  }

  @Override
  public boolean concerns(String rail) {
    return supply.rails().contains(rail);
  }

  /** Every check of a shared limit. */
  static SupplyFinding of(SupplyInputs in) {
    List<Check> checks = checks(in);
    var remedies = new ArrayList<Remedy>();
    for (Check check : checks) {
      check.missing().forEach(text -> remedies.add(Remedy.lookUp(check.kind(), text)));
      if (check.verdict() == Verdict.OVERLOADED) {
        remedies.add(raised(in, check));
      }
    }
    return new SupplyFinding(in.supply(), checks, remedies);
  }

  /** The checks alone: of all that may draw on it, or of what does for certain, as a rail's are. */
  static List<Check> checks(SupplyInputs in) {
    return Check.upTo(judged(in, in.least()), judged(in, in.most()), in.missing());
  }

  private static List<Check> judged(SupplyInputs in, List<SupplyInputs.Share> shares) {
    return List.of(
        check(
            CheckKind.SUPPLY_POWER, in, shares.stream().map(SupplyInputs.Share::running).toList()),
        check(
            CheckKind.SUPPLY_INRUSH, in, shares.stream().map(SupplyInputs.Share::inrush).toList()));
  }

  private static Check check(CheckKind kind, SupplyInputs in, List<Datum> powers) {
    double sum = powers.stream().mapToDouble(Datum::high).sum();
    return Check.of(
        kind, sum, in.limit().low(), Datum.with(powers.toArray(Datum[]::new), in.limit()));
  }

  private static Remedy raised(SupplyInputs in, Check check) {
    double watts = RailRemedies.up(check.actualAmount());
    boolean alone = Verdict.worstOf(checks(in.with(in.limit().at(watts)))) == Verdict.CARRIES;
    Term term = Term.SUPPLY_LIMIT;
    return Remedy.change(
        check.kind(), Action.RAISE, term, Quantity.of(watts, term.dimension()), alone);
  }
}
