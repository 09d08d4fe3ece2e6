package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an inrush leaves of a fuse, by hand: 3 A for 10 ms on a fuse that melts at 6 A²s. */
class FuseChecksTest {
  private static final ChannelKit LAMP =
      ChannelKit.typical()
          .with(
              "loads",
              "kind=lamp; inductance=; resistance=; current=0.2 A; inrush=3 A; inrush time=10 ms");

  private static Check pulse(ChannelInputs in) {
    return ChannelKit.check(in, CheckKind.FUSE_PULSE);
  }

  /** (3 A · 1.05)² · 10 ms of one pulse, on a rail of 5 % more; all within 10 s count together. */
  @ParameterizedTest
  @CsvSource({"10 s, 1", "11 s, 1", "5 s, 2", "4 s, 3", "1 s, 10"})
  void pulses_add_up_until_the_fuse_has_cooled(String period, int together) {
    Check check = pulse(LAMP.with("loads", "period=" + period).inputs());
    assertEquals(0.0992250 * together, check.actualAmount(), 1e-9);
  }

  /** Of the melting 6 A²s the chart leaves so much for so many pulses. */
  @ParameterizedTest
  @CsvSource({"100, 2.88", "1000, 2.28", "10000, 1.74", "100000, 1.32"})
  void the_more_often_a_fuse_is_pulsed_the_less_a_pulse_may_have(int pulses, double allowed) {
    Check check = pulse(LAMP.with("loads", "switch-ons=" + pulses).inputs());
    assertEquals(allowed, check.allowedAmount(), 1e-9);
    assertEquals(Verdict.CARRIES, check.verdict());
  }

  @Test
  void beyond_the_chart_the_maker_is_asked_and_an_unknown_number_is_asked_for() {
    ChannelInputs often = LAMP.with("loads", "switch-ons=100001").inputs();
    assertEquals(Verdict.UNDECIDED, pulse(often).verdict());
    assertEquals(
        List.of("share of the melting I²t for more than 100 000 pulses: ask the fuse's maker"),
        pulse(often).missing());
    ChannelInputs unknown = often.with(Datum.missing(Term.SWITCH_ONS, "switch-ons of load"));
    assertEquals(Verdict.UNDECIDED, pulse(unknown).verdict());
    assertEquals(List.of("switch-ons of load"), pulse(unknown).missing());
  }

  /**
   * Without a fuse: AWG 18 bears 16 A in open air, √(30/40) of it in 40 °C, 0.5125 of that among
   * eight; 2 mm of 35 µm are 108.5 mil², 0.048 · 65^0.44 · 108.5^0.725 = 9.01 A at 105 °C.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 8.9 A, CARRIES, CARRIES",
    "1, 9.1 A, OVERLOADED, CARRIES",
    "1, 13.9 A, OVERLOADED, OVERLOADED",
    "8, 7.1 A, CARRIES, CARRIES",
    "8, 7.2 A, CARRIES, OVERLOADED"
  })
  void without_a_fuse_track_and_wire_bear_what_the_supply_delivers(
      int together, String limit, Verdict track, Verdict wire) {
    ChannelKit kit =
        ChannelKit.typical()
            .with("channels", "fuse=; wire=AWG 18; wires together=" + together)
            .with("rails", "current limit=" + limit);
    assertEquals(track, kit.check(CheckKind.UNFUSED_TRACK).verdict());
    Check bears = kit.check(CheckKind.UNFUSED_WIRE);
    assertEquals(wire, bears.verdict());
    assertEquals(16 * Math.sqrt(0.75) * (together == 1 ? 1 : 0.5125), bears.allowedAmount(), 1e-9);
    assertEquals(false, ChannelKit.typical().finding().check(CheckKind.UNFUSED_WIRE).isPresent());
    boolean fuseHelps =
        Remedies.of(kit.inputs()).stream()
            .anyMatch(remedy -> remedy.fit().filter(Fitted.FUSE::equals).isPresent());
    assertEquals(track == Verdict.OVERLOADED || wire == Verdict.OVERLOADED, fuseHelps);
  }

  @Test
  void without_fuse_and_limit_a_battery_and_its_cold_copper_decide() {
    ChannelKit kit =
        ChannelKit.typical()
            .with("channels", "fuse=")
            .with("rails", "current limit=30 A; short-circuit current=400 A");
    assertEquals(400, kit.check(CheckKind.UNFUSED_WIRE).actualAmount(), 1e-9);
    Check unknown =
        kit.with("rails", "current limit=; short-circuit current=; return wire=")
            .check(CheckKind.UNFUSED_WIRE);
    assertEquals(Verdict.UNDECIDED, unknown.verdict());
  }

  /** Common practice: no fuse stronger than what its holder is made for. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "XF1, 'fuse holder 5x20, 6.3 A', CARRIES",
    "XF1, 'fuse holder 5x20, 2 A', OVERLOADED",
    "XF1, fuse clip 5x20 2 A, OVERLOADED",
    "XF1, fuse holder 5x20, UNDECIDED",
    "X9, 'fuse holder, 2 A', OVERLOADED",
    "F1, 'fuse holder, 2 A', OVERLOADED",
    "F1, 'fuse holder, 10 A', CARRIES",
  })
  void a_holder_bears_the_fuse_that_is_in_it(String place, String words, Verdict verdict) {
    ChannelKit kit =
        ChannelKit.typical().with("bom.XF1", "designators=" + place + "; description=" + words);
    assertEquals(verdict, kit.check(CheckKind.FUSE_HOLDER).verdict(), "a fuse of 2.5 A");
    ChannelKit rated =
        kit.with("bom.XF1", "part type=T-HOLDER").datasheet("T-HOLDER", "IN", "", "", "10", "A");
    assertEquals(Verdict.CARRIES, rated.check(CheckKind.FUSE_HOLDER).verdict());
  }

  @Test
  void of_two_holders_that_with_the_number_of_the_fuse_counts() {
    ChannelKit two =
        ChannelKit.typical()
            .with("bom.X7", "designators=X7; description=fuse holder 2 A")
            .with("bom.X8", "designators=X8; description=fuse holder 10 A");
    Check either = two.check(CheckKind.FUSE_HOLDER);
    assertEquals(Verdict.UNDECIDED, either.verdict());
    assertTrue(either.missing().toString().contains("the same number"));
    ChannelKit named = two.with("bom.X8", "designators=X1");
    assertEquals(Verdict.CARRIES, named.check(CheckKind.FUSE_HOLDER).verdict());
    assertTrue(ChannelKit.typical().finding().check(CheckKind.FUSE_HOLDER).isEmpty(), "soldered");
  }

  @Test
  void a_holder_is_no_fuse() {
    ChannelKit empty =
        ChannelKit.typical()
            .with("bom.F1", "part type=; description=fuse holder 5x20 2.5 A UL 248-14");
    Check check = empty.check(CheckKind.FUSE_CURRENT);
    assertEquals(Verdict.UNDECIDED, check.verdict());
    assertTrue(check.missing().get(0).contains("the fuse in the holder"), check.missing().get(0));
  }

  /** 2.5 A of the fuse, 3.6 A of the resettable one's trip, 5 A of the supply. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({"melts, 2.5", "resets, 3.6", "none, 5"})
  void a_contact_bears_what_a_fault_may_send_through_it(String fuse, double amps) {
    ChannelKit kit =
        switch (fuse) {
          case "melts" -> ChannelKit.typical();
          case "resets" -> ChannelKit.resettable();
          default -> ChannelKit.typical().with("channels", "fuse=");
        };
    ChannelInputs in = kit.inputs();
    assertEquals(amps, ChannelKit.check(in, CheckKind.CONTACT_FAULT).actualAmount(), 1e-9);
    assertEquals(
        Verdict.OVERLOADED,
        ChannelKit.check(in.with(Term.CONTACT_RATING, amps - 0.1), CheckKind.CONTACT_FAULT)
            .verdict());
    assertEquals(
        Verdict.CARRIES,
        ChannelKit.check(in.with(Term.CONTACT_RATING, amps), CheckKind.CONTACT_FAULT).verdict());
  }
}
