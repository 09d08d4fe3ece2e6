package lowfirst.swap.rule;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.SwapPart;
import lowfirst.swap.subject.Words;

/** How fast a diode stops conducting, and how much it leaks once it has. */
final class DiodeRecovery {
  private static final String SLOW = "standard recovery";
  private static final String SCHOTTKY = "Schottky";

  private DiodeRecovery() {}

  /**
   * Where every place is a flyback diode of a channel that is switched seldom, any rectifier is
   * fast enough. Under PWM, or where the use is not known, it must be as fast as the one asked for;
   * a Schottky has no recovery worth the name.
   */
  static Optional<Answer> judge(SwapCase swap) {
    Optional<Evidence> asked = technology(swap.asked());
    Optional<Evidence> offered = technology(swap.offered());
    if (!swap.isUnderPwm() && swap.servesOnlyChannels()) {
      return Optional.of(
          Answer.of(
              SwapVerdict.FITS,
              Evidence.of("switched seldom", Source.kit("drivers.csv: no PWM frequency")),
              offered.orElse(Evidence.of("any", SwapRule.COMMON_PRACTICE)),
              "a relay or solenoid switched by hand-scale times gives any rectifier time"));
    }
    if (offered.isPresent() && Words.same(offered.get().word(), SCHOTTKY)) {
      return Optional.of(
          Answer.of(
              SwapVerdict.FITS,
              asked.orElse(Evidence.of("not stated", Source.kit("the BOM"))),
              offered.get(),
              ""));
    }
    if (isSlow(offered)) {
      return Optional.of(slow(swap, asked, offered.get()));
    }
    return Comparison.atMostIfStated("trr").of(swap);
  }

  private static boolean isSlow(Optional<Evidence> technology) {
    return technology.filter(e -> Words.same(e.word(), SLOW)).isPresent();
  }

  /**
   * Of a slow one no maker promises a time: under PWM the channel's own check says if it matters.
   */
  private static Answer slow(SwapCase swap, Optional<Evidence> asked, Evidence offered) {
    if (swap.isUnderPwm()) {
      return Answer.missing(
          Optional.of(
              Evidence.of("fast: the channel is pulse-width modulated", Source.kit("drivers.csv"))),
          Optional.of(offered),
          List.of("a fast or a Schottky diode, or trr max of " + swap.offered().name()),
          "");
    }
    if (asked.isEmpty()) {
      return Answer.missing(
          asked,
          Optional.of(offered),
          List.of("technology of the diode asked for: a row in datasheets.csv"),
          "");
    }
    return Answer.of(
        isSlow(asked) ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT, asked.get(), offered, "");
  }

  private static Optional<Evidence> technology(SwapPart part) {
    return part.word("technology");
  }

  /** More drop is more heat, which only the circuit can judge. */
  static Optional<Answer> forwardVoltage(SwapCase swap) {
    return Comparison.testedAtMostIfStated("VF")
        .of(swap)
        .map(
            answer ->
                answer.verdict() == SwapVerdict.DOES_NOT_FIT
                    ? new Answer(
                        SwapVerdict.UNDECIDED,
                        answer.asked(),
                        answer.offered(),
                        answer.margin(),
                        List.of("how much drop the circuit bears: a channel in channels.csv"),
                        "it drops more, so it gets hotter and leaves less for the load")
                    : answer);
  }

  /** A Schottky in place of silicon: its leakage must be known at heat, and harmless there. */
  static Optional<Answer> leakage(SwapCase swap) {
    boolean toSchottky =
        technology(swap.offered()).filter(e -> Words.same(e.word(), SCHOTTKY)).isPresent()
            && technology(swap.asked()).filter(e -> Words.same(e.word(), SCHOTTKY)).isEmpty();
    if (!toSchottky || swap.servesOnlyChannels()) {
      return Optional.empty();
    }
    return Optional.of(
        new Answer(
            SwapVerdict.UNDECIDED,
            swap.asked().greatest("IR"),
            swap.offered().greatest("IR"),
            OptionalDouble.empty(),
            List.of("how much leakage the circuit around " + swap.asked().name() + " bears"),
            "across a rail it is only heat; in a clamp, detector or battery circuit it is a fault"));
  }
}
