package lowfirst.sheet.swap;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Verdict;
import lowfirst.sheet.loads.LoadsWords;
import lowfirst.sheet.wording.DesignatorWords;
import lowfirst.swap.ChannelChange;
import lowfirst.swap.SwapFinding;
import lowfirst.swap.SwapReason;
import lowfirst.swap.rule.Answer;
import lowfirst.swap.rule.SwapVerdict;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;

/** How substitutes are worded. */
public final class SwapWords {
  private SwapWords() {}

  /** For example {@code BP-N100L in place of BP-N60L at Q1-Q16 of driver}. */
  static String what(SwapCase swap) {
    String places =
        swap.designators().isEmpty() ? "" : " at " + DesignatorWords.list(swap.designators());
    return swap.offered().name()
        + " in place of "
        + swap.asked().name()
        + places
        + " of "
        + swap.board().name();
  }

  /** The one line that a beginner reads. */
  public static String line(SwapFinding finding) {
    return switch (finding.verdict()) {
      case FITS -> "fits" + least(finding.margin());
      case DOES_NOT_FIT -> "does not fit: " + why(finding, SwapVerdict.DOES_NOT_FIT);
      case UNDECIDED -> "undecided: " + why(finding, SwapVerdict.UNDECIDED);
    };
  }

  private static String least(OptionalDouble margin) {
    return margin.isPresent() ? ", least margin " + percent(margin) : "";
  }

  private static String why(SwapFinding finding, SwapVerdict verdict) {
    Optional<SwapReason> reason = finding.reasons(verdict).stream().findFirst();
    if (reason.isPresent()) {
      return reason.get().rule().words() + detail(reason.get());
    }
    return finding.channels().stream()
        .filter(channel -> channel.verdict() == verdict)
        .findFirst()
        .map(
            channel ->
                "channel "
                    + channel.use().channel().name()
                    + channel.limitedBy().map(check -> limit(channel, check)).orElse(""))
        .orElse("see below");
  }

  /** What limits a channel; also where the part asked for does no better. */
  private static String limit(ChannelChange channel, Check check) {
    boolean asNow =
        channel.before().check(check.kind()).filter(now -> now.equals(check)).isPresent();
    return ", " + check.kind().words() + (asNow ? ", as with the part asked for" : "");
  }

  private static String detail(SwapReason reason) {
    Answer answer = reason.answer();
    if (!answer.missing().isEmpty()) {
      return ", not known: " + answer.missing().get(0);
    }
    if (answer.offered().isEmpty() || answer.asked().isEmpty()) {
      return "";
    }
    String offered = brief(answer.offered());
    String asked = brief(answer.asked());
    return offered.equals(asked)
        ? ", " + evidence(answer.offered()) + " for " + evidence(answer.asked())
        : ", " + offered + " for " + asked;
  }

  private static String brief(Optional<Evidence> evidence) {
    return evidence
        .map(e -> e.quantity().map(q -> q.rounded(4)).orElse(e.word()))
        .orElse("not known");
  }

  /** An amount with its condition, or a word. */
  static String evidence(Optional<Evidence> evidence) {
    return evidence
        .map(
            e ->
                e.quantity()
                    .map(q -> q.rounded(4) + (e.word().isBlank() ? "" : " (" + e.word() + ")"))
                    .orElse(e.word()))
        .orElse("not known");
  }

  /** Where what is asked and what is offered stand, each once. */
  static String sources(Answer answer) {
    String asked = answer.asked().map(e -> e.source().text()).orElse("");
    String offered = answer.offered().map(e -> e.source().text()).orElse("");
    if (asked.isEmpty() || asked.equals(offered)) {
      return offered;
    }
    return offered.isEmpty() ? asked : asked + " / " + offered;
  }

  static String percent(OptionalDouble margin) {
    return margin.isPresent()
        ? String.format(Locale.ROOT, "%+.0f %%", 100 * margin.getAsDouble())
        : "";
  }

  /** What a reason says. */
  static String verdict(SwapFinding finding, SwapReason reason) {
    if (reason.decidedBy().isEmpty() || reason.answer().verdict() == SwapVerdict.FITS) {
      return reason.verdict().words();
    }
    boolean carried =
        finding.channels().stream()
            .flatMap(
                channel ->
                    reason.rule().answeredBy().stream()
                        .flatMap(kind -> channel.after().check(kind).stream()))
            .allMatch(check -> check.verdict() == Verdict.CARRIES);
    return carried ? "the load is carried all the same" : "its load decides";
  }

  /** What the part does in a channel. */
  static String role(Role role) {
    return switch (role) {
      case MOSFET -> "MOSFET";
      case GATE_RESISTOR -> "gate resistor";
      case PULL_DOWN -> "pull-down";
      case FLYBACK_DIODE -> "flyback diode";
      case FUSE -> "fuse";
      case STAGE -> "driver";
    };
  }

  /** A check in a cell: what is of what may be. */
  static String check(Optional<Check> check) {
    return check
        .map(
            c ->
                c.verdict().words()
                    + (Double.isNaN(c.actualAmount())
                        ? ""
                        : ", " + LoadsWords.actual(c) + " of " + LoadsWords.amount(c.allowed())))
        .orElse("not done");
  }

  /** How the margin of a check moves. */
  static String margins(ChannelChange.Pair pair) {
    String before = pair.before().map(LoadsWords::margin).orElse("");
    String after = pair.after().map(LoadsWords::margin).orElse("");
    return before.equals(after) ? after : before + " to " + after;
  }
}
