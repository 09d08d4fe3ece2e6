package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import lowfirst.board.OutputChannel;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a kit as a whole: 24 V on 24 Ω, 5 % more of one and less of the other. */
class LoadFindingsTest {
  private static final double LOAD = 25.2 / (24 * 0.95);

  private static final ChannelKit STRIP =
      ChannelKit.typical()
          .another(2)
          .with("loads.2", "load=strip; kind=resistive; rail=logic; current=2 A; tolerance=0 %")
          .with("channels.2", "load=strip; fuse=; flyback diode=")
          .with("rails.logic", "current limit=3 A; return wire=2.5 mm2; return length=1 m")
          .with("rails.logic", "return contacts=1; contact rating=15 A");

  @Test
  void each_channel_has_its_finding_and_every_number_that_it_worked_out() {
    ChannelKit kit = ChannelKit.typical();
    LoadFindings findings = LoadFindings.of(kit.kit());
    OutputChannel channel = kit.kit().channels().get(0);
    assertEquals(Verdict.CARRIES, findings.verdictOf(channel));
    assertEquals(
        LOAD, findings.actual(channel, CheckKind.DRAIN_CURRENT).orElseThrow().asDouble(), 1e-9);
    assertEquals(Optional.empty(), findings.actual(channel, CheckKind.STAGE_TOTAL), "no array");
    assertEquals(Verdict.UNDECIDED, LoadFindings.none().verdictOf(channel));
    assertEquals(Optional.empty(), LoadFindings.none().of(channel));
  }

  /** 1.105 A of the striker, and 2.1 A of the strip: 27.9 W and 11.0 W. */
  @ParameterizedTest
  @CsvSource({
    "5 A, 'power, logic', 39 W, power, CARRIES",
    "5 A, 'power, logic', 38.8 W, power, OVERLOADED",
    "5 A, 'power, logic', 38.8 W, logic, OVERLOADED",
    // what the other rail shares with nobody concerns it alone
    "5 A, logic, 10 W, power, CARRIES",
    "5 A, logic, 10 W, logic, OVERLOADED",
    "1.1 A, logic, 12 W, power, OVERLOADED",
    "1.1 A, logic, 12 W, logic, CARRIES",
    "5 A, logic, 12 W, ghost, UNDECIDED",
  })
  void a_rail_carries_where_it_and_what_it_shares_do(
      String limit, String rails, String watts, String rail, Verdict verdict) {
    ChannelKit kit =
        STRIP
            .with("rails", "current limit=" + limit)
            .with("supplies", "supply=PC; rails=" + rails + "; power limit=" + watts);
    assertEquals(verdict, LoadFindings.of(kit.kit()).supplyVerdictOf(rail));
  }

  /** A lamp of 0.2 A draws 15 times as much for a moment: 3.3 A of 3 A, and 0.23 A when on. */
  @Test
  void what_comes_in_one_instant_is_apart_from_what_lasts() {
    ChannelKit lamp =
        ChannelKit.typical()
            .with("loads", "kind=lamp; inductance=; resistance=; current=0.2 A; inrush time=1 ms")
            .with("rails", "current limit=3 A");
    LoadFindings findings = LoadFindings.of(lamp.kit());
    assertEquals(Verdict.OVERLOADED, findings.rails().get(0).verdict());
    assertEquals(Verdict.CARRIES, findings.supplyVerdictOf("power"));
  }
}
