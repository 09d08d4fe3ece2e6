package lowfirst.channel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lowfirst.board.OutputChannel;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.ChannelInputs.Switching;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.UnreadCells;
import lowfirst.channel.check.Verdict;

/**
 * What the tool says of one channel. It can't be built without its checks.
 *
 * @param channel which channel
 * @param checks every check done; never empty
 */
public record ChannelFinding(OutputChannel channel, List<Check> checks) {

  public ChannelFinding {
    checks = List.copyOf(checks);
    if (checks.isEmpty()) {
      throw new IllegalArgumentException("a finding shows its checks: " + channel.name());
    }
  }

  /** Every check of a channel. */
  public static ChannelFinding of(ChannelInputs in) {
    return new ChannelFinding(in.channel(), OpenQuestions.over(in, ChannelFinding::checks));
  }

  private static List<Check> checks(ChannelInputs in) {
    var checks = new ArrayList<Check>(32);
    UnreadCells.into(in.datum(Term.UNREAD), checks);
    ownPartsInto(in, checks);
    LoadChecks.into(in, checks);
    switchInto(in, checks);
    DiodeChecks.into(in, checks);
    FuseChecks.into(in, checks);
    PathChecks.into(in, checks);
    return checks;
  }

  /**
   * Only those checks that a part in this role has a say in: the same as in the whole finding, and
   * fewer to do when parts are tried by the thousand.
   */
  public static List<Check> checksOn(Role role, ChannelInputs in) {
    return OpenQuestions.over(in, one -> checksOf(role, one));
  }

  /** The same under one answer to what the kit leaves open. */
  static List<Check> checksOf(Role role, ChannelInputs in) {
    var checks = new ArrayList<Check>(24);
    if (role.checks().contains(CheckKind.OWN_PARTS)) {
      ownPartsInto(in, checks);
    }
    switch (role) {
      case MOSFET, GATE_RESISTOR, PULL_DOWN, STAGE -> {
        LoadChecks.into(in, checks);
        switchInto(in, checks);
      }
      case FLYBACK_DIODE -> {
        switchInto(in, checks);
        DiodeChecks.into(in, checks);
      }
      case FUSE -> {
        FuseChecks.into(in, checks);
        StallChecks.into(in, checks);
      }
    }
    return checks;
  }

  /** Undecided where a part is named in several rows; no check where none is. */
  private static void ownPartsInto(ChannelInputs in, List<Check> checks) {
    if (!in.knows(Term.SEVERAL_ROWS)) {
      checks.add(
          Check.of(CheckKind.OWN_PARTS, Double.NaN, Double.NaN, in.datum(Term.SEVERAL_ROWS)));
    }
  }

  private static void switchInto(ChannelInputs in, List<Check> checks) {
    if (in.switching() == Switching.MOSFET) {
      GateChecks.into(in, checks);
      SwitchChecks.into(in, checks);
      if (in.has(Fitted.OPTOCOUPLED_GATE)) {
        CouplerChecks.into(in, checks);
      }
    } else {
      StageChecks.into(in, checks);
    }
    StallChecks.into(in, checks);
  }

  /** The worst of the checks. */
  public Verdict verdict() {
    return Verdict.worstOf(checks);
  }

  /** Whether every check passes. */
  public boolean carries() {
    return verdict() == Verdict.CARRIES;
  }

  /** The check of one kind, where it was done. */
  public Optional<Check> check(CheckKind kind) {
    return checks.stream().filter(check -> check.kind() == kind).findFirst();
  }

  /**
   * The check that limits the channel: of those with the worst verdict the one with the least
   * margin; but the gate's level before all that follows from it.
   */
  public Check limitedBy() {
    Verdict worst = verdict();
    Optional<Check> gate = check(CheckKind.GATE_LEVEL);
    if (worst == Verdict.OVERLOADED && gate.filter(g -> g.verdict() == worst).isPresent()) {
      return gate.get();
    }
    return checks.stream()
        .filter(check -> check.verdict() == worst)
        .min(Comparator.comparingDouble(ChannelFinding::marginOrNothing))
        .orElseThrow();
  }

  private static double marginOrNothing(Check check) {
    return Double.isNaN(check.margin()) ? 0 : check.margin();
  }
}
