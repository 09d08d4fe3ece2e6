package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.quantity.Source;
import org.junit.jupiter.api.Test;

/**
 * The heat of the typical MOSFET, by hand: 2 A on 24 V held on in air of 40 °C, 50 mΩ at the gate's
 * level, RthJA 62 K/W, RthJC 1.5 K/W, TJ 175 °C; the hot factor rises from 1 at 25 °C to 1.6 at 100
 * °C, so k(T) = 0.8 + 0.008·T there.
 */
class SwitchChecksTest {
  private static final ChannelKit TYPICAL = ChannelKit.typical();
  private static final double EDGES_SECONDS = 4.431174e-6;

  /** 40 + 12.4·(0.8 + 0.008·T) = T, since 62 K/W · (2 A)² · 50 mΩ = 12.4 K. */
  private static final double HELD_ON_CELSIUS = 49.92 / (1 - 0.0992);

  private static ChannelInputs pulsed() {
    return GateChecksTest.edges().with(Term.SUPPLY, 24).with(Term.LOAD_CURRENT, 2);
  }

  private static ChannelInputs heldOn() {
    return pulsed().with(Datum.missing(Term.ON_TIME), Datum.missing(Term.PERIOD));
  }

  private static ChannelInputs pwm() {
    return heldOn().fitting(Fitted.PWM).with(Term.PWM_FREQUENCY, 10_000);
  }

  private static ChannelInputs lamp() {
    return GateChecksTest.edges(
            TYPICAL
                .datasheet("T-FET", "RDSon", "VGS=4V, ID=12A, TJ=25C", "", "50", "mOhm")
                .with("loads", "kind=lamp; inductance=; resistance=; current=2 A"))
        .with(Term.SUPPLY, 24)
        .with(Term.LOAD_CURRENT, 2)
        .with(Datum.missing(Term.ON_TIME), Datum.missing(Term.PERIOD))
        .with(Term.INRUSH, 10)
        .with(Term.INRUSH_TIME, 0.02);
  }

  private static double junction(ChannelInputs in) {
    return ChannelKit.check(in, CheckKind.JUNCTION_TEMPERATURE).actualAmount();
  }

  /** A heater of a wound wire drives its current on as a coil does. */
  @Test
  void a_load_with_inductance_needs_its_diode_whatever_its_kind() {
    ChannelKit heater =
        ChannelKit.typical()
            .with("loads", "kind=resistive; inductance=")
            .with("channels", "flyback diode=");
    assertEquals(Verdict.CARRIES, heater.finding().verdict());
    ChannelKit wound = heater.with("loads", "inductance=50 mH; period=1 s");
    // ½ · 50 mH · (1.05/0.95 A)² · 100 V/(100 V − 25.2 V) = 40.8 mJ of 10 mJ
    Check every = wound.check(CheckKind.REPETITIVE_AVALANCHE);
    assertEquals(0.025 * Math.pow(1.05 / 0.95, 2) / 0.748, every.actualAmount(), 1e-9);
    assertEquals(Verdict.OVERLOADED, every.verdict());
    assertEquals(Verdict.CARRIES, wound.with("channels", "flyback diode=D1").finding().verdict());
  }

  @Test
  void held_on_the_junction_balances_at_its_own_hot_resistance() {
    assertEquals(HELD_ON_CELSIUS, junction(heldOn()), 1e-6);
    // a part of four fifths of the resistance warms by 9.92 K at 25 °C
    ChannelInputs better = heldOn().with(Term.ON_RESISTANCE_FACTOR, 0.8);
    assertEquals((40 + 9.92 * 0.8) / (1 - 9.92 * 0.008), junction(better), 1e-6);
    Check check = ChannelKit.check(better, CheckKind.JUNCTION_TEMPERATURE);
    assertEquals(150, check.allowedAmount(), 1e-9);
    assertEquals(
        0.040,
        check.inputs().stream()
            .filter(input -> input.symbol().equals("RDSon"))
            .findFirst()
            .orElseThrow()
            .value()
            .asDouble(),
        1e-12);
  }

  @Test
  void pulses_warm_the_case_by_their_mean_and_the_chip_by_their_peak() {
    // a tenth of 60.5 K/W, and 1.5 K/W to the case
    assertEquals(7.55, SwitchChecks.effectiveResistance(pulsed()), 1e-9);
    assertEquals(31.75, SwitchChecks.effectiveResistance(pulsed().with(Term.ON_TIME, 0.5)), 1e-9);
    ChannelInputs sink = pulsed().fitting(Fitted.HEATSINK).with(Term.HEATSINK, 8);
    assertEquals(2.3, SwitchChecks.effectiveResistance(sink), 1e-9, "0.1 · 8 + 1.5");
    assertEquals(9.5, SwitchChecks.junctionToAir(sink), 1e-9);
  }

  @Test
  void what_is_unknown_counts_as_on_for_ever() {
    assertEquals(62, SwitchChecks.effectiveResistance(heldOn()), 1e-9);
    ChannelInputs noCase = pulsed().with(Datum.missing(Term.RTH_CASE));
    assertEquals(62, SwitchChecks.effectiveResistance(noCase), 1e-9);
    assertEquals(62, SwitchChecks.effectiveResistance(pulsed().with(Term.RTH_CASE, 70)), 1e-9);
  }

  @Test
  void a_curve_of_transient_impedance_lessens_short_pulses_only() {
    ChannelInputs in =
        GateChecksTest.edges(
            TYPICAL
                .datasheet("T-FET", "ZthJC", "t=0.1s", "", "0.6", "K/W")
                .datasheet("T-FET", "ZthJC", "t=1s", "", "1.2", "K/W"));
    // steps: 0.1 · 1.5 + 0.9 · Zth(1.1 s) 1.5 + Zth(0.1 s) 0.6 − Zth(1 s) 1.2 = 0.9 K/W
    assertEquals(6.05 + 0.9, SwitchChecks.effectiveResistance(in), 1e-9);
    assertEquals(
        6.05 + 0.9,
        SwitchChecks.effectiveResistance(in.with(Term.PERIOD, 5)),
        1e-9,
        "a longer pause than a second helps nothing");
    // twice a second: 0.2 · 60.5, and 0.2 · 1.5 + 0.8 · Zth(0.6 s) 1.2 + 0.6 − Zth(0.5 s) 1.2
    assertEquals(12.1 + 0.66, SwitchChecks.effectiveResistance(in.with(Term.PERIOD, 0.5)), 1e-9);
    ChannelInputs half =
        in.fitting(Fitted.PWM)
            .with(Term.DUTY, 50)
            .with(Datum.missing(Term.ON_TIME), Datum.missing(Term.PERIOD));
    // half of 60.5 K/W, and the chip as if each pulse lasted for ever
    assertEquals(31.75, SwitchChecks.effectiveResistance(half), 1e-9);
  }

  @Test
  void the_edges_heat_at_every_switching() {
    double coil = 0.5 * 24 * 2 * EDGES_SECONDS;
    double lamp = 24.0 / 6 * 2 * EDGES_SECONDS;
    double charge = 0.5 * 1e-9 * 24 * 24;
    double recovery = 24 * 2 * 50e-9;
    watts(coil, pulsed(), "once a second");
    watts(2 * coil, pulsed().with(Term.PERIOD, 0.5), "twice a second");
    watts(0, heldOn(), "never, as far as is known");
    watts(10_000 * (coil + charge + recovery), pwm(), "PWM");
    watts(10_000 * (coil + charge), pwm().without(Fitted.FLYBACK_DIODE), "no diode to recover");
    watts(10_000 * (coil + charge), pwm().with(Datum.missing(Term.DIODE_RECOVERY)), "no trr");
    watts(
        10_000 * (lamp + charge),
        lamp().fitting(Fitted.PWM).with(Term.PWM_FREQUENCY, 10_000),
        "a lamp's current falls with the voltage");
    watts(0, pulsed().with(Term.DRIVE_LEVEL, 3), "edges that never end fail elsewhere");
  }

  @Test
  void without_a_diode_each_release_heats_the_mosfet_itself() {
    double edge = 0.5 * 24 * 2 * EDGES_SECONDS;
    ChannelInputs open = pulsed().without(Fitted.FLYBACK_DIODE);
    // ½ · 50 mH · (2 A)² · 100 V/(100 V − 24 V)
    watts(edge + 0.1 * 100 / 76, open, "once a second");
    watts(edge, open.with(Datum.missing(Term.INDUCTANCE)), "a coil of unknown inductance");
    watts(edge, open.with(Term.DRAIN_RATING, 20), "a rating below the rail fails elsewhere");
    ChannelInputs resistive =
        GateChecksTest.edges(TYPICAL.with("loads", "kind=resistive; inductance="))
            .without(Fitted.FLYBACK_DIODE)
            .with(Term.SUPPLY, 24)
            .with(Term.LOAD_CURRENT, 2);
    watts(24.0 / 6 * 2 * EDGES_SECONDS, resistive, "no coil");
  }

  private static void watts(double expected, ChannelInputs in, String why) {
    assertEquals(expected, SwitchChecks.switchingWatts(in), 1e-6 * expected, why);
  }

  @Test
  void the_heat_of_the_edges_comes_on_top_of_the_air() {
    double watts = 10_000 * (0.5 * 24 * 2 * EDGES_SECONDS + 2.88e-7 + 2.4e-6);
    double base = 40 + 62 * watts;
    // base + 12.4·k(T) = T beyond 100 °C, where k(T) = 1.6 + (0.8/75)·(T − 100)
    double slope = 12.4 * 0.8 / 75;
    assertEquals((base + 12.4 * 1.6 - slope * 100) / (1 - slope), junction(pwm()), 1e-4);
  }

  @Test
  void the_case_counts_with_a_heatsink_and_where_pulses_rest_on_it() {
    Datum none = Datum.missing(Term.RTH_CASE, "RthJC");
    Datum remembered =
        Datum.of(Term.RTH_CASE, 1.5, new Source(Source.Origin.MEMORY, "from memory"));
    verdict(Verdict.CARRIES, heldOn().with(none), "it isn't asked for");
    verdict(Verdict.CARRIES, heldOn().with(remembered), "nor relied on");
    verdict(Verdict.CARRIES, pulsed().with(none), "pulses then count as lasting for ever");
    verdict(Verdict.UNDECIDED, pulsed().with(remembered), "pulses rest on it");
    ChannelInputs sink = heldOn().fitting(Fitted.HEATSINK).with(Term.HEATSINK, 8);
    verdict(Verdict.CARRIES, sink, "all is known");
    verdict(Verdict.UNDECIDED, sink.with(none), "nothing reaches the heatsink but through it");
    assertEquals(
        List.of("RthJC"),
        ChannelKit.check(sink.with(none), CheckKind.JUNCTION_TEMPERATURE).missing());
  }

  private static void verdict(Verdict expected, ChannelInputs in, String why) {
    assertEquals(expected, ChannelKit.check(in, CheckKind.JUNCTION_TEMPERATURE).verdict(), why);
  }

  @Test
  void an_inrush_heats_the_chip_on_top_of_its_running_temperature() {
    // (10 A)² · 50 mΩ · 1.5 K/W = 7.5 K
    double hot = (HELD_ON_CELSIUS + 6) / (1 - 0.06);
    Check check = ChannelKit.check(lamp(), CheckKind.INRUSH_JUNCTION);
    assertEquals(hot, check.actualAmount(), 1e-6);
    assertEquals(150, check.allowedAmount(), 1e-9);
    assertEquals(hot, inrush(lamp().with(Term.INRUSH_TIME, 1)), 1e-6);
    // 2.48 K more for each kelvin: no balance
    assertEquals(Double.POSITIVE_INFINITY, inrush(lamp().with(Term.INRUSH_TIME, 1.1)));
    assertEquals(
        Double.POSITIVE_INFINITY, inrush(lamp().with(Datum.missing(Term.RTH_CASE))), "to the air");
    double milder = (40 + 9.92 * 0.8) / (1 - 9.92 * 0.008);
    assertEquals(
        (milder + 4.8) / (1 - 0.048),
        inrush(lamp().with(Term.ON_RESISTANCE_FACTOR, 0.8)),
        1e-6,
        "80 % of 7.5 K is 6 K");
  }

  @Test
  void an_inrush_that_rests_on_a_remembered_case_is_undecided() {
    Datum remembered =
        Datum.of(Term.RTH_CASE, 1.5, new Source(Source.Origin.MEMORY, "from memory"));
    Check check = ChannelKit.check(lamp().with(remembered), CheckKind.INRUSH_JUNCTION);
    assertEquals(Verdict.UNDECIDED, check.verdict(), "the chip's 7.5 K come from RthJC");
    // all the way to the air: (2.5 A)² · 50 mΩ · 62 K/W = 19.375 K at 25 °C
    ChannelInputs mild = lamp().with(Datum.missing(Term.RTH_CASE, "RthJC")).with(Term.INRUSH, 2.5);
    Check air = ChannelKit.check(mild, CheckKind.INRUSH_JUNCTION);
    assertEquals((HELD_ON_CELSIUS + 19.375 * 0.8) / (1 - 19.375 * 0.008), air.actualAmount(), 1e-6);
    assertEquals(Verdict.CARRIES, air.verdict(), "RthJC is not needed");
  }

  private static double inrush(ChannelInputs in) {
    return ChannelKit.check(in, CheckKind.INRUSH_JUNCTION).actualAmount();
  }

  @Test
  void an_inrush_is_asked_of_lamps_motors_and_capacitors_and_where_one_is_stated() {
    for (String kind : List.of("lamp", "motor", "capacitive")) {
      assertTrue(SwitchChecks.hasInrush(of(kind, "")), kind);
    }
    for (String kind : List.of("solenoid", "relay", "LED", "resistive")) {
      assertFalse(SwitchChecks.hasInrush(of(kind, "")), kind);
      assertTrue(SwitchChecks.hasInrush(of(kind, "3 A")), kind);
    }
    Check check = ChannelKit.check(of("relay", "3 A"), CheckKind.INRUSH_CURRENT);
    assertEquals(3 * 1.05, check.actualAmount(), 1e-9, "3 A on a rail of 5 % more");
    assertEquals(60, check.allowedAmount(), 1e-9);
  }

  private static ChannelInputs of(String kind, String inrush) {
    return TYPICAL.with("loads", "kind=" + kind + "; inrush=" + inrush).inputs();
  }

  @Test
  void a_warm_chip_bears_less_of_a_coils_energy() {
    ChannelInputs open = heldOn().without(Fitted.FLYBACK_DIODE);
    double cool = (175 - HELD_ON_CELSIUS) / 150;
    Check energy = ChannelKit.check(open, CheckKind.AVALANCHE_ENERGY);
    assertEquals(0.1 * 100 / 76, energy.actualAmount(), 1e-9);
    assertEquals(0.2 * cool * cool, energy.allowedAmount(), 1e-7);
    Check repeated = ChannelKit.check(open, CheckKind.REPETITIVE_AVALANCHE);
    assertEquals(0.1 * 100 / 76, repeated.actualAmount(), 1e-9);
    assertEquals(0.010, repeated.allowedAmount(), 1e-12);
    Check current = ChannelKit.check(open, CheckKind.AVALANCHE_CURRENT);
    assertEquals(2, current.actualAmount(), 1e-12);
    assertEquals(10, current.allowedAmount(), 1e-12);
    double hot =
        ChannelKit.check(open.with(Term.AMBIENT, 190), CheckKind.AVALANCHE_ENERGY).allowedAmount();
    assertEquals(0, hot, 1e-12, "nothing is left at the rating");
    double cold =
        ChannelKit.check(open.with(Term.AMBIENT, -40), CheckKind.AVALANCHE_ENERGY).allowedAmount();
    assertEquals(0.2, cold, 1e-12, "and cold lends nothing");
    ChannelFinding clamped = ChannelFinding.of(heldOn());
    assertFalse(clamped.check(CheckKind.AVALANCHE_ENERGY).isPresent(), "with a diode");
    ChannelInputs lamp = lamp().without(Fitted.FLYBACK_DIODE);
    assertFalse(ChannelFinding.of(lamp).check(CheckKind.AVALANCHE_ENERGY).isPresent(), "no coil");
  }

  @Test
  void under_pwm_the_slower_edge_must_lie_in_the_safe_area() {
    ChannelInputs in =
        GateChecksTest.edges(
                TYPICAL
                    .datasheet("T-FET", "SOA", "VDS=30V, t=2.2us", "", "5", "A")
                    .datasheet("T-FET", "SOA", "VDS=30V, t=3us", "", "3", "A")
                    .datasheet("T-FET", "SOA", "VDS=20V, t=10us", "", "9", "A"))
            .with(Term.PWM_FREQUENCY, 1000);
    Check check = ChannelKit.check(in.fitting(Fitted.PWM), CheckKind.SAFE_AREA);
    // on 2.183 µs, off 2.248 µs, at 25.2 V
    assertEquals(3, check.allowedAmount(), 1e-12);
    assertEquals(1.05 / 0.95, check.actualAmount(), 1e-9);
    assertFalse(ChannelFinding.of(in).check(CheckKind.SAFE_AREA).isPresent(), "without PWM");
    assertFalse(ChannelFinding.of(pwm()).check(CheckKind.SAFE_AREA).isPresent(), "no points");
  }
}
