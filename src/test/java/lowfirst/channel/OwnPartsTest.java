package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.channel.data.PartData;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What serves one channel is missing in all but one of the rows that name it. */
class OwnPartsTest {
  /** Two channels with parts of their own, and a fuse in which both loads add up to 2.21 A. */
  private static final ChannelKit TWO =
      ChannelKit.typical()
          .with("rails", "current limit=10 A")
          .with("channels", "trace width=4 mm; wire=1.5 mm2")
          .with("bom.F1", "part type=T-FUSE4")
          .datasheet("T-FUSE4", "IN", "", "", "4", "A")
          .datasheet("T-FUSE4", "VN", "DC", "", "125", "V")
          .datasheet("T-FUSE4", "breaking", "125 V DC", "", "50", "A")
          .datasheet("T-FUSE4", "I2t", "", "20", "", "A2s")
          .another(2);

  private static ChannelInputs channel(ChannelKit kit, String name) {
    return KitInputs.of(kit.kit()).channel(name).orElseThrow();
  }

  private static ChannelFinding finding(ChannelKit kit, String name) {
    return ChannelFinding.of(channel(kit, name));
  }

  @Test
  void parts_of_their_own_and_a_fuse_that_bears_both_carry() {
    for (String name : new String[] {"out 1", "out 2"}) {
      ChannelFinding finding = finding(TWO, name);
      assertEquals(Verdict.CARRIES, finding.verdict(), finding.limitedBy()::toString);
      assertTrue(finding.check(CheckKind.OWN_PARTS).isEmpty());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "MOSFET=Q1, MOSFET Q1",
    "gate resistor=R1, gate resistor R1",
    "pull-down=R2, pull-down R2",
    "flyback diode=D1, flyback diode D1",
    // in another place of another row
    "gate resistor=R2, pull-down R2",
    // in two places of one row
    "gate resistor=R22, gate resistor R22",
  })
  void one_part_in_several_rows_leaves_each_undecided(String cell, String part) {
    ChannelKit shared = TWO.with("channels.2", cell);
    String row = part.endsWith("22") ? "out 2" : "out 1";
    Check check = finding(shared, row).check(CheckKind.OWN_PARTS).orElseThrow();
    assertEquals(Verdict.UNDECIDED, check.verdict());
    assertTrue(check.missing().get(0).startsWith("whose " + part + " is"), check::toString);
    assertNotEquals(Verdict.CARRIES, finding(shared, "out 2").verdict());
  }

  /** Two boards have every part twice; rows that name their units have theirs. */
  @Test
  void a_board_that_is_built_twice_has_it_twice() {
    ChannelKit shared = TWO.with("channels.2", "gate resistor=R1; MOSFET=Q1").built(2);
    assertTrue(channel(shared, "out 1").knows(Term.SEVERAL_ROWS));
    ChannelKit units =
        shared.with("channels", "channel=main-1.01").with("channels.2", "channel=main-2.01");
    assertTrue(channel(units, "main-1.01").knows(Term.SEVERAL_ROWS));
    ChannelKit one = units.with("channels.2", "channel=main-1.02");
    assertTrue(!channel(one, "main-1.01").knows(Term.SEVERAL_ROWS));
    ChannelKit twice = TWO.with("channels.2", "gate resistor=R22").built(2);
    assertTrue(!channel(twice, "out 2").knows(Term.SEVERAL_ROWS), "one row, both its places");
  }

  /** Of a network each channel has its own resistor. */
  @Test
  void a_resistor_network_serves_many() {
    ChannelKit network =
        TWO.with("bom.R2", "value=10k 1%; description=resistor network SIP-9")
            .with("channels.2", "pull-down=R2");
    assertTrue(channel(network, "out 1").knows(Term.SEVERAL_ROWS));
  }

  /** Another part in its place is named in as many rows. */
  @Test
  void a_substitute_does_not_settle_whose_it_is() {
    ChannelInputs shared = channel(TWO.with("channels.2", "MOSFET=Q1"), "out 1");
    PartData part = shared.parts().get(Role.MOSFET);
    assertTrue(
        ChannelFinding.checksOn(Role.MOSFET, shared.with(part)).stream()
            .anyMatch(check -> check.kind() == CheckKind.OWN_PARTS));
    assertTrue(
        ChannelFinding.checksOn(Role.FUSE, shared).stream()
            .noneMatch(check -> check.kind() == CheckKind.OWN_PARTS));
  }
}
