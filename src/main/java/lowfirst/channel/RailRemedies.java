package lowfirst.channel;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.channel.Remedy.Action;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.channel.formula.Conductor;
import lowfirst.quantity.Quantity;

/**
 * What to change in a rail or its return that does not carry: of each number that helps a failing
 * check the smallest standard step with which it passes, tried on the finding itself.
 */
final class RailRemedies {
  private static final int MOST_CONTACTS = 40;

  private RailRemedies() {}

  /** Every change that mends a failing check; none for a rail that carries. */
  static List<Remedy> of(RailInputs in) {
    var remedies = new ArrayList<Remedy>();
    for (Check check : RailFinding.checks(in)) {
      if (check.verdict() == Verdict.CARRIES) {
        continue;
      }
      check.missing().forEach(text -> remedies.add(Remedy.lookUp(check.kind(), text)));
      if (check.verdict() == Verdict.OVERLOADED) {
        remedies.addAll(of(in, check));
      }
    }
    return remedies;
  }

  private static List<Remedy> of(RailInputs in, Check check) {
    var remedies = new ArrayList<Remedy>();
    switch (check.kind()) {
      case RAIL_CURRENT, RAIL_INRUSH ->
          changed(in, check.kind(), Action.RAISE, Term.RAIL_LIMIT, up(check.actualAmount()))
              .ifPresent(remedies::add);
      case RETURN_CURRENT -> area(in, check.kind()).ifPresent(remedies::add);
      case RETURN_CONTACTS -> contacts(in).ifPresent(remedies::add);
      case RETURN_DROP -> {
        area(in, check.kind()).ifPresent(remedies::add);
        length(in).ifPresent(remedies::add);
      }
      default -> throw new IllegalArgumentException("no check of a rail: " + check.kind());
    }
    return remedies;
  }

  private static Optional<Remedy> area(RailInputs in, CheckKind kind) {
    double area = in.low(Term.RETURN_AREA);
    for (double next = Conductor.nextSize(area); next > area; next = Conductor.nextSize(area)) {
      area = next;
      Optional<Remedy> remedy = changed(in, kind, Action.RAISE, Term.RETURN_AREA, area);
      if (remedy.isPresent()) {
        return remedy;
      }
    }
    return Optional.empty();
  }

  private static Optional<Remedy> contacts(RailInputs in) {
    for (int more = (int) in.low(Term.RETURN_CONTACTS) + 1; more <= MOST_CONTACTS; more++) {
      Optional<Remedy> remedy =
          changed(in, CheckKind.RETURN_CONTACTS, Action.RAISE, Term.RETURN_CONTACTS, more);
      if (remedy.isPresent()) {
        return remedy;
      }
    }
    return Optional.empty();
  }

  private static Optional<Remedy> length(RailInputs in) {
    double allowed = RailInputs.DROP_SHARE * in.nominal(Term.SUPPLY);
    double contacts = in.with(Term.RETURN_LENGTH, 0).liftVolts();
    double share = (allowed - contacts) / (in.liftVolts() - contacts);
    if (!(share > 0)) {
      return Optional.empty();
    }
    double millimetres =
        new BigDecimal(share * in.high(Term.RETURN_LENGTH))
            .round(new MathContext(2, RoundingMode.DOWN))
            .doubleValue();
    return changed(in, CheckKind.RETURN_DROP, Action.LOWER, Term.RETURN_LENGTH, millimetres);
  }

  /** The change, where the check then passes. */
  private static Optional<Remedy> changed(
      RailInputs in, CheckKind kind, Action action, Term term, double value) {
    List<Check> mended = RailFinding.checks(in.with(term, value));
    boolean passes =
        mended.stream().anyMatch(c -> c.kind() == kind && c.verdict() == Verdict.CARRIES);
    boolean alone = Verdict.worstOf(mended) == Verdict.CARRIES;
    return passes
        ? Optional.of(
            Remedy.change(kind, action, term, Quantity.of(value, term.dimension()), alone))
        : Optional.empty();
  }

  /** To two figures, never less. */
  static double up(double amount) {
    return new BigDecimal(amount).round(new MathContext(2, RoundingMode.UP)).doubleValue();
  }
}
