package lowfirst.channel;

import java.util.ArrayList;
import java.util.List;
import lowfirst.board.Rail;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.UnreadCells;
import lowfirst.channel.formula.Conductor;
import lowfirst.quantity.Dimension;

/**
 * What the tool says of a rail and its return: the worst set of loads that may be on at once.
 *
 * @param rail which rail
 * @param channels the channels that count, largest current first
 * @param always loads that count on top, since no channel switches them
 * @param perhaps channels whose load may hang on it, too: nobody knows its rail
 * @param checks every check done; never empty
 * @param remedies what to change; empty when it carries
 */
public record RailFinding(
    Rail rail,
    List<String> channels,
    List<String> always,
    List<String> perhaps,
    List<Check> checks,
    List<Remedy> remedies)
    implements SumFinding {

  public RailFinding {
    channels = List.copyOf(channels);
    always = List.copyOf(always);
    perhaps = List.copyOf(perhaps);
    checks = List.copyOf(checks);
    remedies = List.copyOf(remedies);
    if (checks.isEmpty()) {
      throw new IllegalArgumentException("a finding shows its checks: " + rail.name());
    }
  }

  @Override
  public String name() {
    return rail.name();
  }

  @Override
  public boolean concerns(String name) {
    return name.equals(rail.name());
  }

  /** Every check of a rail. */
  static RailFinding of(RailInputs in) {
    return new RailFinding(
        in.rail(),
        in.channels(),
        in.always(),
        in.perhaps().map(RailInputs.Perhaps::channels).orElse(List.of()),
        checks(in),
        RailRemedies.of(in));
  }

  /**
   * The checks alone. Where loads may hang on the rail that nobody knows the rail of, it carries if
   * it carries them all, is overloaded if it is without them, and is undecided otherwise.
   */
  static List<Check> checks(RailInputs in) {
    List<Check> without = judged(in);
    return in.perhaps()
        .map(perhaps -> Check.upTo(without, judged(perhaps.with()), perhaps.missing()))
        .orElse(without);
  }

  private static List<Check> judged(RailInputs in) {
    var checks = new ArrayList<Check>();
    UnreadCells.into(in.datum(Term.UNREAD), checks);
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
            in.returnAmps(),
            Conductor.amperes(in.low(Term.RETURN_AREA), in.high(Term.AMBIENT), 1),
            in.datum(Term.RAIL_SUM),
            in.datum(Term.OTHERS_ON_RETURN),
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
            in.returnAmps(),
            RailInputs.SHARING * in.low(Term.RETURN_CONTACTS) * in.low(Term.RETURN_CONTACT_RATING),
            in.datum(Term.RAIL_SUM),
            in.datum(Term.OTHERS_ON_RETURN),
            in.datum(Term.RETURN_CONTACTS),
            in.datum(Term.RETURN_CONTACT_RATING),
            RailInputs.SHARING_RULE));
    checks.add(
        Check.of(
            CheckKind.RETURN_DROP,
            in.liftVolts(),
            RailInputs.DROP_SHARE * in.nominal(Term.SUPPLY),
            in.datum(Term.RAIL_SUM),
            in.datum(Term.OTHERS_ON_RETURN),
            in.datum(Term.RETURN_AREA),
            in.datum(Term.RETURN_LENGTH),
            in.datum(Term.RETURN_CONTACTS),
            in.datum(Term.SUPPLY),
            RailInputs.CONTACT_RULE,
            RailInputs.DROP_RULE));
    return checks;
  }
}
