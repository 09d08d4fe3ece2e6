package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
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
}
