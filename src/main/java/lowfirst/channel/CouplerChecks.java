package lowfirst.channel;

import java.util.List;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/**
 * The optocoupler whose transistor pulls a gate up against its pull-down. Up to the current for
 * which VCEsat is promised it keeps no more than that. Beyond, its transfer ratio promises the
 * current only with some volts left across the transistor, and the gate gets what remains.
 */
final class CouplerChecks {
  private static final double SHARE = 0.5;
  private static final Datum SHARE_LEFT =
      Datum.constant(
          "share of CTR",
          SHARE,
          Dimension.RATIO,
          Source.standard("common practice: half of it is left for heat and the LED's age"));

  private CouplerChecks() {}

  /** Adds the check of its current. */
  static void into(ChannelInputs in, List<Check> checks) {
    Check saturated = StageChecks.optocoupler(in, pulledAmps(in), in.datum(Term.DRIVE_CEILING));
    checks.add(saturated.verdict() == Verdict.OVERLOADED ? byRatio(in, saturated) : saturated);
  }

  /** What the pull-down takes at the highest supply, in amperes. */
  private static double pulledAmps(ChannelInputs in) {
    return in.has(Fitted.PULL_DOWN) ? in.high(Term.DRIVE_CEILING) / in.low(Term.PULL_DOWN) : 0;
  }

  /**
   * Overloaded where even the promised ratio gives less at this LED current; carrying up to the
   * derated current of the datasheet's own test point; between them nothing is promised.
   */
  private static Check byRatio(ChannelInputs in, Check saturated) {
    double input = in.low(Term.INPUT_CURRENT);
    double tested = in.high(Term.TRANSFER_INPUT);
    double promised = in.low(Term.TRANSFER_CURRENT);
    if (Double.isNaN(promised)) {
      return saturated.lacking(List.of(in.datum(Term.TRANSFER_CURRENT)));
    }
    Check least = amps(in, promised * input / tested);
    Check most = amps(in, input < tested ? 0 : SHARE * promised);
    return least.upTo(most, List.of(Datum.missing(Term.INPUT_CURRENT, toSaturate(in))));
  }

  private static Check amps(ChannelInputs in, double allowed) {
    return Check.of(
        CheckKind.OPTO_CURRENT,
        pulledAmps(in),
        allowed,
        in.datum(Term.DRIVE_CEILING),
        in.datum(Term.PULL_DOWN),
        in.datum(Term.INPUT_CURRENT),
        in.datum(Term.FORCED_GAIN_RATING),
        in.datum(Term.TRANSFER_CURRENT),
        in.datum(Term.TRANSFER_INPUT),
        SHARE_LEFT);
  }

  /**
   * What its transistor may keep from the gate beyond VCEsat, in volts: nothing where it is
   * promised to saturate, where the level is stated, or where what is missing leaves the channel
   * undecided anyway.
   */
  static double keptVolts(ChannelInputs in) {
    return isOpen(in) ? Math.max(0, in.high(Term.TRANSFER_VOLTAGE) - in.high(Term.SATURATION)) : 0;
  }

  /** Whether its transistor is promised to deliver the current, but not to saturate. */
  static boolean isOpen(ChannelInputs in) {
    if (!in.has(Fitted.OPTOCOUPLED_GATE) || in.has(Fitted.LEVEL_STATED)) {
      return false;
    }
    double promised =
        StageChecks.saturatedAmps(in.low(Term.INPUT_CURRENT), in.low(Term.FORCED_GAIN_RATING));
    return pulledAmps(in) > promised && in.knows(Term.TRANSFER_VOLTAGE);
  }

  /**
   * The check of the gate's level: where it fails only for what the coupler may keep from it, that
   * is a question, since most parts saturate far beyond what is promised.
   */
  static Check level(ChannelInputs in, Check check) {
    boolean isOpen = isOpen(in) && check.verdict() == Verdict.OVERLOADED;
    return isOpen && check.actualAmount() + keptVolts(in) >= check.allowedAmount()
        ? check.lacking(List.of(levelLeft(in)))
        : check;
  }

  /** The question what is left at the gate. */
  static Datum levelLeft(ChannelInputs in) {
    return Datum.missing(
        Term.DRIVE_LEVEL,
        toSaturate(in)
            + "; or the level at the gate, measured when all is hot: high level min in drivers.csv");
  }

  private static String toSaturate(ChannelInputs in) {
    double ratio = in.low(Term.FORCED_GAIN_RATING);
    double amps = pulledAmps(in) / ratio;
    double ohms = in.high(Term.DRIVE_CEILING) / (in.low(Term.INPUT_CURRENT) * ratio);
    return "more for "
        + in.parts().get(Role.STAGE).name()
        + " to saturate by: "
        + Quantity.of(amps, Dimension.CURRENT).rounded(3)
        + " through its LED, or a pull-down of "
        + Quantity.of(ohms, Dimension.RESISTANCE).rounded(3);
  }
}
