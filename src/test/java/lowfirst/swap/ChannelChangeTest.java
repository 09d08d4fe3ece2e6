package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.channel.ChannelFinding;
import lowfirst.channel.ChannelInputs;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.KitInputs;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.part.PartKind;
import lowfirst.swap.rule.SwapRule;
import lowfirst.swap.rule.SwapRules;
import lowfirst.swap.rule.SwapVerdict;
import lowfirst.swap.subject.SwapUse;
import org.junit.jupiter.api.Test;

/** One channel side by side: what a part has a say in, and what gets worse all the same. */
class ChannelChangeTest {
  private static final Kit KIT = BellPlayer.asWritten();
  private static final ChannelInputs PLAIN = KitInputs.of(KIT).channel("driver-1.01").orElseThrow();

  private static ChannelChange change(String place, ChannelInputs after) {
    SwapUse use = SwapUse.in(KIT, "driver", List.of(Designator.of(place))).get(0);
    return new ChannelChange(use, ChannelFinding.of(PLAIN), ChannelFinding.of(after));
  }

  private static Set<CheckKind> concerned(ChannelChange change) {
    var kinds = EnumSet.noneOf(CheckKind.class);
    change.concerned().forEach(check -> kinds.add(check.kind()));
    return kinds;
  }

  private static ChannelChange.Pair pair(ChannelChange change, CheckKind kind) {
    return change.pairs().stream().filter(pair -> pair.kind() == kind).findFirst().orElseThrow();
  }

  @Test
  void a_part_answers_for_its_own_checks_only() {
    Set<CheckKind> ofFuse = concerned(change("F1", PLAIN));
    assertTrue(ofFuse.containsAll(Set.of(CheckKind.FUSE_CURRENT, CheckKind.FUSE_VOLTAGE)));
    assertFalse(ofFuse.contains(CheckKind.JUNCTION_TEMPERATURE));
    Set<CheckKind> ofSwitch = concerned(change("Q1", PLAIN));
    assertTrue(ofSwitch.containsAll(Set.of(CheckKind.GATE_LEVEL, CheckKind.JUNCTION_TEMPERATURE)));
    assertFalse(ofSwitch.contains(CheckKind.FUSE_CURRENT));
    Set<CheckKind> ofDiode = concerned(change("D1", PLAIN));
    assertTrue(ofDiode.contains(CheckKind.DIODE_VOLTAGE));
    assertFalse(ofDiode.contains(CheckKind.GATE_LEVEL));
  }

  /** Five times the current opens the fuse, which the MOSFET is else not asked about. */
  @Test
  void what_gets_worse_concerns_the_swap_whoever_answers_for_it() {
    ChannelChange change = change("Q1", PLAIN.scaled(Term.LOAD_CURRENT, 5));
    assertTrue(concerned(change).contains(CheckKind.FUSE_CURRENT));
    assertEquals(SwapVerdict.DOES_NOT_FIT, change.verdict());
  }

  /** A fault that was there before is not the new part's. */
  @Test
  void what_was_bad_already_is_not_held_against_a_part_without_a_say_in_it() {
    ChannelInputs hot = PLAIN.scaled(Term.LOAD_CURRENT, 5);
    SwapUse use = SwapUse.in(KIT, "driver", List.of(Designator.of("D1"))).get(0);
    ChannelFinding same = ChannelFinding.of(hot);
    assertEquals(Verdict.OVERLOADED, same.check(CheckKind.FUSE_CURRENT).orElseThrow().verdict());
    assertFalse(concerned(new ChannelChange(use, same, same)).contains(CheckKind.FUSE_CURRENT));
  }

  @Test
  void a_check_done_on_one_side_only_is_shown_and_is_a_change() {
    ChannelChange change = change("Q1", PLAIN.without(Fitted.FUSE));
    ChannelChange.Pair fuse = pair(change, CheckKind.FUSE_CURRENT);
    assertTrue(fuse.before().isPresent() && fuse.after().isEmpty());
    assertTrue(fuse.isChanged());
    ChannelChange.Pair back =
        new ChannelChange.Pair(CheckKind.FUSE_CURRENT, Optional.empty(), fuse.before());
    assertTrue(back.isChanged());
    assertTrue(change.pairs().stream().noneMatch(p -> p.before().or(p::after).isEmpty()));
  }

  @Test
  void a_check_changes_with_its_margin_or_its_verdict_and_else_not() {
    assertTrue(change("Q1", PLAIN).pairs().stream().noneMatch(ChannelChange.Pair::isChanged));
    ChannelChange warmer = change("Q1", PLAIN.scaled(Term.AMBIENT, 1.1));
    assertTrue(pair(warmer, CheckKind.JUNCTION_TEMPERATURE).isChanged());
    assertFalse(pair(warmer, CheckKind.FUSE_VOLTAGE).isChanged(), "air does not move it");
    Check carries = ChannelFinding.of(PLAIN).check(CheckKind.FUSE_VOLTAGE).orElseThrow();
    var open =
        new Check(
            carries.kind(),
            carries.actualAmount(),
            carries.allowedAmount(),
            carries.data(),
            Verdict.UNDECIDED);
    assertTrue(
        new ChannelChange.Pair(carries.kind(), Optional.of(carries), Optional.of(open))
            .isChanged());
  }

  /** Of those concerned: the worst verdict first, then the least left. */
  @Test
  void the_channel_is_limited_by_the_worst_check_with_the_least_left() {
    for (ChannelInputs after :
        List.of(PLAIN, PLAIN.scaled(Term.LOAD_CURRENT, 5), PLAIN.with(Term.DRIVE_LEVEL, 2.5))) {
      ChannelChange change = change("Q1", after);
      Check limit = change.limitedBy().orElseThrow();
      for (Check other : change.concerned()) {
        int worse = limit.verdict().compareTo(other.verdict());
        double left = Double.isNaN(other.margin()) ? 0 : other.margin();
        double least = Double.isNaN(limit.margin()) ? 0 : limit.margin();
        assertTrue(worse > 0 || worse == 0 && least <= left, other + " against " + limit);
      }
    }
  }

  @Test
  void checks_answer_a_question_with_the_worst_of_those_that_are_done() {
    ChannelChange change = change("Q1", PLAIN);
    var fits = Optional.of(SwapVerdict.FITS);
    assertEquals(fits, change.verdict(Set.of(CheckKind.GATE_LEVEL)));
    assertEquals(fits, change.verdict(Set.of(CheckKind.GATE_LEVEL, CheckKind.STAGE_TOTAL)));
    assertEquals(Optional.empty(), change.verdict(Set.of(CheckKind.STAGE_TOTAL)), "no array here");
    assertEquals(Optional.empty(), change.verdict(Set.of()));
    ChannelChange dim = change("Q1", PLAIN.with(Term.DRIVE_LEVEL, 2.5));
    assertEquals(
        Optional.of(SwapVerdict.DOES_NOT_FIT),
        dim.verdict(EnumSet.of(CheckKind.GATE_LEVEL, CheckKind.DRAIN_VOLTAGE)));
  }

  /** Else a reason might yield to a check that no verdict counts. */
  @Test
  void a_rule_is_answered_only_by_checks_that_its_part_has_a_say_in() {
    var places =
        Map.of(
            PartKind.MOSFET, Role.MOSFET,
            PartKind.BIPOLAR_TRANSISTOR, Role.MOSFET,
            PartKind.DIODE, Role.FLYBACK_DIODE,
            PartKind.FUSE, Role.FUSE,
            PartKind.DRIVER_ARRAY, Role.STAGE);
    for (PartKind kind : PartKind.values()) {
      for (SwapRule rule : SwapRules.of(kind)) {
        Role role = places.getOrDefault(kind, Role.FLYBACK_DIODE);
        assertTrue(role.checks().containsAll(rule.answeredBy()), kind + " " + rule);
      }
    }
  }
}
