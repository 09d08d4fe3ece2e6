package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.channel.formula.PrintedTrack;
import org.junit.jupiter.api.Test;

class TypicalChannelTest {
  @Test
  void a_channel_with_every_number_stated_and_room_to_spare_carries() {
    List<Check> others =
        ChannelKit.typical().finding().checks().stream()
            .filter(check -> check.verdict() != Verdict.CARRIES)
            .toList();
    assertEquals(List.of(), others);
  }

  @Test
  void channels_on_one_fuse_of_one_board_share_it() {
    ChannelKit one = ChannelKit.typical();
    ChannelKit two = one.with("channels.2", one.row("channels") + "; channel=out 2");
    assertEquals(
        2 * one.check(CheckKind.FUSE_CURRENT).actualAmount(),
        two.check(CheckKind.FUSE_CURRENT).actualAmount(),
        1e-9);
  }

  @Test
  void a_rail_counts_only_the_largest_loads_that_are_on_at_once() {
    ChannelKit one = ChannelKit.typical();
    ChannelKit two =
        one.with("channels.2", one.row("channels") + "; channel=out 2")
            .with("rails", "loads on at once=1");
    RailFinding rail = LoadFindings.of(two.kit()).rails().get(0);
    assertEquals(one.inputs().loadAmps(), rail.checks().get(0).actualAmount(), 1e-9);
    RailFinding all = LoadFindings.of(two.with("rails", "loads on at once=").kit()).rails().get(0);
    assertEquals(2 * one.inputs().loadAmps(), all.checks().get(0).actualAmount(), 1e-9);
  }

  @Test
  void of_some_checks_alone_each_is_as_in_the_whole() {
    for (ChannelInputs in : List.of(ChannelKit.typical().inputs(), ChannelKit.array().inputs())) {
      List<Check> whole = ChannelFinding.of(in).checks();
      for (Role role : Role.values()) {
        List<Check> some = ChannelFinding.checksOn(role, in);
        assertTrue(whole.containsAll(some) && !some.isEmpty(), "" + role);
      }
    }
  }

  /** What follows from a part must be among the checks that are done when it is swapped. */
  @Test
  void each_check_that_a_part_has_a_say_in_is_done_for_its_role() {
    ChannelInputs in = ChannelKit.typical().inputs();
    assertTrue(done(Role.MOSFET, in).contains(CheckKind.JUNCTION_TEMPERATURE));
    assertTrue(done(Role.MOSFET, in).contains(CheckKind.VOLTAGE_SCOPE));
    assertTrue(done(Role.PULL_DOWN, in).contains(CheckKind.GATE_OFF));
    assertTrue(done(Role.FLYBACK_DIODE, in).contains(CheckKind.DRAIN_VOLTAGE));
    assertTrue(done(Role.FLYBACK_DIODE, in).contains(CheckKind.DIODE_VOLTAGE));
    assertTrue(done(Role.FUSE, in).contains(CheckKind.FUSE_PROTECTS_WIRE));
    assertTrue(done(Role.STAGE, ChannelKit.array().inputs()).contains(CheckKind.STAGE_TEMPERATURE));
  }

  private static List<CheckKind> done(Role role, ChannelInputs in) {
    return ChannelFinding.checksOn(role, in).stream().map(Check::kind).toList();
  }

  @Test
  void what_limits_a_channel_is_the_gate_before_all_that_follows_from_it() {
    ChannelInputs in = ChannelKit.typical().inputs();
    ChannelInputs both = in.with(Term.DRIVE_LEVEL, 3).with(Term.FUSE_RATING, 0.1);
    assertEquals(CheckKind.GATE_LEVEL, ChannelFinding.of(both).limitedBy().kind());
    ChannelInputs fuse = in.with(Term.FUSE_RATING, 0.1).with(Term.CONTACT_RATING, 1);
    assertEquals(CheckKind.FUSE_CURRENT, ChannelFinding.of(fuse).limitedBy().kind());
  }

  @Test
  void a_track_may_reach_105_degrees_while_its_fuse_makes_up_its_mind() {
    // 65 K above air of 40 °C
    assertEquals(
        new PrintedTrack(2, 0.035, true).amperes(65),
        ChannelKit.typical().check(CheckKind.FUSE_PROTECTS_TRACK).allowedAmount(),
        1e-9);
  }

  @Test
  void a_study_draws_half_as_far_again_as_the_load_or_its_limit() {
    KitInputs inputs = KitInputs.of(ChannelKit.typical().kit());
    ChannelStudy study = ChannelStudy.of(inputs).get(0);
    assertTrue(study.finding().carries() && study.remedies().isEmpty());
    // the fuse's 2.5 A · 0.75 · 0.925
    assertEquals(1.5 * 1.734375, last(study), 1e-3);
    ChannelStudy heavy = ChannelStudy.of(inputs.channels().get(0).with(Term.LOAD_CURRENT, 2.5));
    assertEquals(1.5 * 2.625, last(heavy), 1e-3, "2.5 A on a rail of 5 % more");
  }

  private static double last(ChannelStudy study) {
    List<JunctionCurve.Point> points = study.curve().orElseThrow().points();
    return points.get(points.size() - 1).amperes();
  }
}
