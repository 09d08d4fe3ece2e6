package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.channel.check.CheckKind;
import lowfirst.swap.rule.Answer;
import lowfirst.swap.rule.MosfetRule;
import lowfirst.swap.rule.SwapVerdict;
import org.junit.jupiter.api.Test;

/** When a comparison of two parts yields to what the loads were found to need. */
class WorstChecksTest {
  private static final SwapReason SHORT_BY_A_FIGURE =
      reason(SwapVerdict.DOES_NOT_FIT, OptionalDouble.of(-0.2));
  private static final SwapReason WITHOUT_A_FIGURE =
      reason(SwapVerdict.DOES_NOT_FIT, OptionalDouble.empty());
  private static final SwapReason OPEN = reason(SwapVerdict.UNDECIDED, OptionalDouble.empty());

  /** The drain current's rule, which two checks of a channel answer. */
  private static SwapReason reason(SwapVerdict verdict, OptionalDouble margin) {
    var answer = new Answer(verdict, Optional.empty(), Optional.empty(), margin, List.of(), "");
    return new SwapReason(MosfetRule.DRAIN_CURRENT_RATING, answer, List.of());
  }

  private static WorstChecks of(SwapVerdict current, SwapVerdict heat) {
    var checks = new WorstChecks();
    checks.add(CheckKind.DRAIN_CURRENT, current);
    checks.add(CheckKind.JUNCTION_TEMPERATURE, heat);
    return checks;
  }

  @Test
  void the_worst_of_each_check_counts_once() {
    WorstChecks checks = of(SwapVerdict.FITS, SwapVerdict.UNDECIDED);
    checks.add(CheckKind.GATE_LEVEL, SwapVerdict.FITS);
    assertEquals(2, checks.count(SwapVerdict.FITS));
    checks.add(CheckKind.DRAIN_CURRENT, SwapVerdict.UNDECIDED);
    checks.add(CheckKind.DRAIN_CURRENT, SwapVerdict.FITS);
    assertEquals(1, checks.count(SwapVerdict.FITS));
    assertEquals(2, checks.count(SwapVerdict.UNDECIDED));
    assertEquals(0, checks.count(SwapVerdict.DOES_NOT_FIT));
  }

  @Test
  void a_load_that_carries_answers_and_one_that_fails_counts_already() {
    for (SwapReason reason : List.of(SHORT_BY_A_FIGURE, WITHOUT_A_FIGURE, OPEN)) {
      assertTrue(of(SwapVerdict.FITS, SwapVerdict.FITS).answers(reason));
      assertTrue(of(SwapVerdict.FITS, SwapVerdict.DOES_NOT_FIT).answers(reason));
      assertFalse(new WorstChecks().answers(reason), "no check asks that");
    }
    var other = new WorstChecks();
    other.add(CheckKind.GATE_LIMIT, SwapVerdict.FITS);
    assertFalse(other.answers(OPEN), "another question");
  }

  /** A figure that falls short the load may not need; what has none it can't do without. */
  @Test
  void an_undecided_load_answers_only_what_it_may_not_need() {
    WorstChecks checks = of(SwapVerdict.FITS, SwapVerdict.UNDECIDED);
    assertTrue(checks.answers(SHORT_BY_A_FIGURE));
    assertTrue(checks.answers(OPEN));
    assertFalse(checks.answers(WITHOUT_A_FIGURE));
  }
}
