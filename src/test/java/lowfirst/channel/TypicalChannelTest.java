package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class TypicalChannelTest {
  @Test
  void a_channel_with_every_number_stated_and_room_to_spare_carries() {
    ChannelFinding finding = ChannelKit.typical().finding();
    finding
        .checks()
        .forEach(
            c -> {
              if (c.verdict() != Verdict.CARRIES)
                System.out.println(
                    c.kind()
                        + " "
                        + c.verdict()
                        + " "
                        + c.actual()
                        + " "
                        + c.allowed()
                        + " "
                        + c.missing());
            });
    assertEquals(Verdict.CARRIES, finding.verdict());
  }
}
