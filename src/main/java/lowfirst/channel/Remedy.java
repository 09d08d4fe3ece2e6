package lowfirst.channel;

import java.util.Optional;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Term;
import lowfirst.quantity.Quantity;

/**
 * One change that makes one check pass, worked out on the real finding.
 *
 * @param check the check that it mends
 * @param action what to do
 * @param term the number to change; absent for fitting a part and for a missing datum
 * @param value what to change it to, rounded to the safe side
 * @param fit the part to fit
 * @param missing what to look up and where to write it; empty when nothing is missing
 * @param carriesAlone whether the channel then carries, with nothing else changed
 */
public record Remedy(
    CheckKind check,
    Action action,
    Optional<Term> term,
    Optional<Quantity> value,
    Optional<Fitted> fit,
    String missing,
    boolean carriesAlone) {

  /** What to do. */
  public enum Action {
    RAISE,
    LOWER,
    FIT,
    LOOK_UP
  }

  static Remedy lookUp(CheckKind check, String missing) {
    return new Remedy(
        check,
        Action.LOOK_UP,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        missing,
        false);
  }

  static Remedy fit(CheckKind check, Fitted fit, Optional<Remedy> with, boolean carriesAlone) {
    return new Remedy(
        check,
        Action.FIT,
        with.flatMap(Remedy::term),
        with.flatMap(Remedy::value),
        Optional.of(fit),
        "",
        carriesAlone);
  }

  static Remedy change(
      CheckKind check, Action action, Term term, Quantity value, boolean carriesAlone) {
    return new Remedy(
        check, action, Optional.of(term), Optional.of(value), Optional.empty(), "", carriesAlone);
  }
}
