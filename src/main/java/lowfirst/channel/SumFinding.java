package lowfirst.channel;

import java.util.List;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.Verdict;

/** What the tool says of something that carries the sum of many loads: a rail, a supply unit. */
public sealed interface SumFinding permits RailFinding, SupplyFinding {
  /** What the kit calls it. */
  String name();

  /** Whether it carries what hangs on this rail. */
  boolean concerns(String rail);

  /** Every check done; never empty. */
  List<Check> checks();

  /** What to change; empty when it carries. */
  List<Remedy> remedies();

  /** The worst of the checks. */
  default Verdict verdict() {
    return Verdict.worstOf(checks());
  }
}
