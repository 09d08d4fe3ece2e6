package lowfirst.channel;

import java.util.ArrayList;
import java.util.List;
import lowfirst.board.Rail;
import lowfirst.quantity.Dimension;

/**
 * What the tool says of a rail and its return: the worst set of loads that may be on at once.
 *
 * @param rail which rail
 * @param channels the channels that count, largest current first
 * @param checks every check done; never empty
 * @param remedies what to change; empty when it carries
 */
public record RailFinding(
    Rail rail, List<String> channels, List<Check> checks, List<Remedy> remedies) {

  public RailFinding {
    channels = List.copyOf(channels);
    checks = List.copyOf(checks);
    remedies = List.copyOf(remedies);
    if (checks.isEmpty()) {
      throw new IllegalArgumentException("a finding shows its checks: " + rail.name());
    }
  }

  /** Every check of a rail. */
  static RailFinding of(RailInputs in) {
    return new RailFinding(in.rail(), in.channels(), checks(in), RailRemedies.of(in));
  }

  /** The checks alone. */
  static List<Check> checks(RailInputs in) {
    var checks = new ArrayList<Check>();
    checks.add(
        Check.of(
            CheckKind.RAIL_CURRENT,
            in.high(Term.RAIL_SUM),
            in.low(Term.RAIL_LIMIT),
            in.datum(Term.RAIL_SUM),
            in.datum(Term.RAIL_LIMIT)));
    checks.add(
        Check.of(
            CheckKind.RAIL_INRUSH,
            in.high(Term.RAIL_INRUSH_SUM),
            in.low(Term.RAIL_LIMIT),
            in.datum(Term.RAIL_INRUSH_SUM),
            in.datum(Term.RAIL_LIMIT)));
    checks.add(
        Check.of(
            CheckKind.RETURN_CURRENT,
            in.high(Term.RAIL_SUM),
            Conductor.amperes(in.low(Term.RETURN_AREA), in.high(Term.AMBIENT), 1),
            in.datum(Term.RAIL_SUM),
            in.datum(Term.RETURN_AREA),
            in.datum(Term.AMBIENT),
            Datum.constant(
                "I(area)",
                Conductor.amperes(in.low(Term.RETURN_AREA)),
                Dimension.CURRENT,
                Conductor.AMPACITY)));
    checks.add(
        Check.of(
            CheckKind.RETURN_CONTACTS,
            in.high(Term.RAIL_SUM),
            RailInputs.SHARING * in.low(Term.RETURN_CONTACTS) * in.low(Term.RETURN_CONTACT_RATING),
            in.datum(Term.RAIL_SUM),
            in.datum(Term.RETURN_CONTACTS),
            in.datum(Term.RETURN_CONTACT_RATING),
            RailInputs.SHARING_RULE));
    checks.add(
        Check.of(
            CheckKind.RETURN_DROP,
            in.liftVolts(),
            RailInputs.DROP_SHARE * in.nominal(Term.SUPPLY),
            in.datum(Term.RAIL_SUM),
            in.datum(Term.RETURN_AREA),
            in.datum(Term.RETURN_LENGTH),
            in.datum(Term.RETURN_CONTACTS),
            in.datum(Term.SUPPLY),
            RailInputs.CONTACT_RULE,
            RailInputs.DROP_RULE));
    return checks;
  }

  /** The worst of the checks. */
  public Verdict verdict() {
    Verdict worst = Verdict.CARRIES;
    for (Check check : checks) {
      worst = worst.worse(check.verdict());
    }
    return worst;
  }
}
