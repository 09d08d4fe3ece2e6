package lowfirst.channel;

import static lowfirst.channel.check.Verdict.CARRIES;
import static lowfirst.channel.check.Verdict.OVERLOADED;
import static lowfirst.channel.check.Verdict.UNDECIDED;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A motor that jams: at standstill nothing but its winding limits the current, so it goes on
 * drawing V/R, with which it starts. Worked out by hand for 24 V + 5 %, 50 mΩ, 62 K/W, 40 °C and
 * k(T) = 0.8 + 0.008·T up to 100 °C.
 */
class StallChecksTest {
  private static final ChannelKit MOTOR =
      ChannelKit.typical()
          .with(
              "loads",
              "kind=motor; resistance=; current=0.3 A; inrush=3 A; inrush time=50 ms; on time=;"
                  + " period=20 s");

  private static ChannelKit fused(String amps, String seconds) {
    return MOTOR
        .with("loads", "inrush=6 A")
        .datasheet("T-FUSE", "topen", "I=" + amps, "", seconds, "s");
  }

  @Test
  void what_the_switch_bears_for_good_it_bears_in_a_jam() {
    // 62 K/W · (3.15 A)² · 50 mΩ = 30.76 K
    Check heat = MOTOR.check(CheckKind.STALL_JUNCTION);
    assertEquals((40 + 30.76 * 0.8) / (1 - 30.76 * 0.008), heat.actualAmount(), 0.01);
    assertEquals(CARRIES, heat.verdict());
    Check current = MOTOR.check(CheckKind.STALL_CURRENT);
    assertEquals(3.15, current.actualAmount(), 1e-9);
    assertEquals(10, current.allowedAmount(), 1e-9, "the contact, below ID of 14 A");
    assertEquals(CARRIES, MOTOR.finding().verdict());
  }

  @Test
  void what_it_does_not_bear_asks_what_ends_the_jam() {
    // 62 K/W · (6.3 A)² · 50 mΩ = 123 K at 25 °C: it runs away
    Check heat = MOTOR.with("loads", "inrush=6 A").check(CheckKind.STALL_JUNCTION);
    assertEquals(UNDECIDED, heat.verdict());
    assertTrue(heat.missing().toString().contains("what ends a jam"), heat.missing().toString());
    Check contact = MOTOR.with("channels", "contact rating=3 A").check(CheckKind.STALL_CURRENT);
    assertEquals(UNDECIDED, contact.verdict(), "3.15 A on 3 A");
    Check assumed = MOTOR.with("loads", "inrush=; current=0.6 A").check(CheckKind.STALL_JUNCTION);
    assertTrue(assumed.missing().toString().contains("stall current of load striker"));
  }

  /** 62 K/W · (3 A)² · 50 mΩ = 27.9 K for good, and 1.5 K/W · (6.3 A)² · 50 mΩ = 3 K until then. */
  @ParameterizedTest
  @CsvSource({
    "3A, 0.5, CARRIES, 80.2",
    "3A, 2, UNDECIDED, Infinity",
    "5A, 0.5, UNDECIDED, Infinity",
  })
  void a_fuse_that_opens_soon_leaves_less_for_good(
      String amps, String seconds, Verdict verdict, double celsius) {
    Check heat = fused(amps, seconds).check(CheckKind.STALL_JUNCTION);
    assertEquals(verdict, heat.verdict());
    assertEquals(celsius, heat.actualAmount(), 0.1);
  }

  @Test
  void of_several_times_the_shortest_counts_and_of_several_makers_none() {
    ChannelKit two = fused("3A", "0.5").datasheet("T-FUSE", "topen", "I=2.7A", "", "90", "s");
    assertEquals(CARRIES, two.check(CheckKind.STALL_JUNCTION).verdict());
    ChannelKit typical =
        MOTOR
            .with("loads", "inrush=6 A")
            .line("T-FUSE", "topen", "I=3A", "", "0.5", "", "s", "typical curve");
    assertEquals(UNDECIDED, typical.check(CheckKind.STALL_JUNCTION).verdict());
    ChannelKit memory =
        MOTOR
            .with("loads", "inrush=6 A")
            .line("T-FUSE", "topen", "I=3A", "", "", "0.5", "s", "from memory");
    assertEquals(UNDECIDED, memory.check(CheckKind.STALL_JUNCTION).verdict());
  }

  /** Ten times 0.1 A, a tenth of it more twice over, is above the 0.5 A of one output. */
  @Test
  void an_inrush_is_asked_of_an_array_too() {
    ChannelKit motor = ChannelKit.array().with("loads", "kind=motor; resistance=; current=0.1 A");
    assertEquals(OVERLOADED, motor.check(CheckKind.INRUSH_CURRENT).verdict());
    assertEquals(1.1025, motor.check(CheckKind.INRUSH_CURRENT).actualAmount(), 1e-9);
    ChannelKit small = motor.with("loads", "current=0.03 A");
    assertEquals(CARRIES, small.check(CheckKind.INRUSH_CURRENT).verdict());
    // 40 °C + 63 K/W · 1.6 V · 0.33075 A
    assertEquals(73.34, small.check(CheckKind.STALL_JUNCTION).actualAmount(), 0.01);
    assertEquals(CARRIES, small.check(CheckKind.STALL_JUNCTION).verdict());
    ChannelKit peak = motor.datasheet("T-ARRAY", "ICM", "", "", "1.2", "A");
    assertEquals(CARRIES, peak.check(CheckKind.INRUSH_CURRENT).verdict());
  }

  /** A lamp that starts with 15 times 20 mA asks so many times the base current. */
  @Test
  void a_transistor_is_driven_for_the_inrush() {
    ChannelKit lamp =
        ChannelKit.typical()
            .with("bom.Q1", "part type=2N3904; description=transistor NPN onsemi")
            .with("loads", "kind=lamp; inductance=; resistance=; current=10 mA");
    double running =
        ChannelKit.check(lamp.with("loads", "kind=resistive").inputs(), CheckKind.FORCED_GAIN)
            .actualAmount();
    assertEquals(15, lamp.check(CheckKind.FORCED_GAIN).actualAmount() / running, 1e-9);
  }

  @Test
  void an_inrush_above_the_current_of_every_resistance_line_is_undecided() {
    ChannelKit lamp =
        ChannelKit.typical()
            .with("loads", "kind=lamp; inductance=; resistance=; current=0.6 A; inrush=7 A");
    assertEquals(CARRIES, lamp.check(CheckKind.INRUSH_JUNCTION).verdict());
    Check more = lamp.with("loads", "inrush=8 A").check(CheckKind.INRUSH_JUNCTION);
    assertEquals(UNDECIDED, more.verdict(), "8.4 A, and at 4 V it is specified up to 8 A");
    assertTrue(more.missing().toString().contains("ID ≥ 8.4 A"), more.missing().toString());
  }

  /**
   * Of the pin's 4.7 V the base keeps 0.95 V; the rest drives 470 Ω and 1 % behind 30 Ω with 7.43
   * mA, less 0.1 mA through the pull-down: ten times that stays saturated, and more does not.
   */
  @Test
  void a_transistor_carries_a_jammed_motor_as_far_as_its_base_current_reaches() {
    ChannelKit motor =
        ChannelKit.typical()
            .with("rails", "voltage=12 V")
            .with("bom.Q1", "part type=2N3904; description=transistor NPN onsemi")
            .with("bom.R1", "value=470R 1%")
            .with("loads", "kind=motor; resistance=; current=30 mA; tolerance=0 %; inrush=60 mA");
    Check check = motor.check(CheckKind.STALL_CURRENT);
    assertEquals(0.063, check.actualAmount(), 1e-6, "60 mA at 12.6 V for 12 V");
    assertEquals(0.0733, check.allowedAmount(), 0.0003);
  }
}
