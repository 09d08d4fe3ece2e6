package lowfirst.channel;

import static lowfirst.channel.check.Verdict.CARRIES;
import static lowfirst.channel.check.Verdict.OVERLOADED;
import static lowfirst.channel.check.Verdict.UNDECIDED;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.channel.data.PartData;
import lowfirst.channel.formula.Avalanche;
import lowfirst.channel.formula.Conductor;
import lowfirst.channel.formula.CopperTemperature;
import lowfirst.channel.formula.HotFactor;
import lowfirst.channel.formula.PrintedTrack;
import lowfirst.channel.formula.ResistorRating;
import lowfirst.channel.formula.SwitchingLoss;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The thirty traps of published practice, each closed by a test of its own. */
class TrapsTest {
  private static final String IR = "International Rectifier";
  private static final ChannelKit TYPICAL = ChannelKit.typical();

  private static Verdict verdict(ChannelKit kit, CheckKind kind) {
    return kit.check(kind).verdict();
  }

  private static ChannelKit resistive(ChannelKit kit, String amps) {
    return kit.with(
        "loads",
        "kind=resistive; inductance=; resistance=; current="
            + amps
            + "; tolerance=0.1 %; on time=");
  }

  @Test
  void trap_01_the_headline_drain_current_is_not_what_it_bears_in_free_air() {
    ChannelKit kit = resistive(TYPICAL.mosfet("IRLZ44N", IR), "20 A");
    assertEquals(CARRIES, verdict(kit, CheckKind.DRAIN_CURRENT), "33 A at a case of 100 °C");
    assertEquals(OVERLOADED, verdict(kit, CheckKind.JUNCTION_TEMPERATURE));
    assertEquals(33, kit.check(CheckKind.DRAIN_CURRENT).allowedAmount(), "not 47 A");
  }

  @Test
  void trap_02_cold_resistance_hides_a_thermal_runaway() {
    ChannelKit kit = resistive(TYPICAL.mosfet("IRLZ44N", IR), "8 A");
    Check check = kit.setting("ambient", "25 C").check(CheckKind.JUNCTION_TEMPERATURE);
    assertEquals(OVERLOADED, check.verdict());
    assertTrue(
        Double.isInfinite(check.actualAmount()) || check.actualAmount() > 300,
        "no steady temperature that silicon survives: " + check.actualAmount());
    double cold = 25 + 62 * 8.4 * 8.4 * 0.025;
    assertTrue(cold < 150, "the cold sum would have passed: " + cold);
  }

  @Test
  void trap_03_the_parts_own_curve_counts_not_half_a_percent_a_kelvin() {
    HotFactor own = TYPICAL.mosfet("IRF540N", IR).inputs().hotFactor();
    assertTrue(own.at(150) >= 2.5, "published 2.50, linear would say 1.625: " + own.at(150));
    HotFactor milder = TYPICAL.mosfet("IRLZ44N", IR).inputs().hotFactor();
    assertEquals(1.97 + 0.05, milder.at(150), 1e-9, "its own curve and its reading error");
    assertTrue(HotFactor.DEFAULT.at(150) >= 2.5, "without a curve the steepest counts");
  }

  @Test
  void trap_04_threshold_voltage_is_not_on() {
    ChannelKit low =
        TYPICAL.with("drivers", "high level min=3.3 V").with("rails.logic", "voltage=3.3 V");
    for (String part : List.of("IRLZ44N", "IRL540N", "IRF540N", "IRFZ44N", "IRLB8721")) {
      Check check = low.mosfet(part, IR).check(CheckKind.GATE_LEVEL);
      assertEquals(OVERLOADED, check.verdict(), part + " at 3.3 V, above VGSth, below every line");
    }
    assertEquals(OVERLOADED, verdict(TYPICAL.mosfet("IRF540N", IR), CheckKind.GATE_LEVEL));
    assertEquals(OVERLOADED, verdict(TYPICAL.mosfet("BS170", "onsemi"), CheckKind.GATE_LEVEL));
  }

  @Test
  void trap_05_one_number_of_several_makers_counts_as_the_worst_of_them() {
    assertEquals(CARRIES, verdict(TYPICAL.mosfet("IRLZ44N", IR), CheckKind.GATE_LEVEL));
    assertNotEquals(
        CARRIES,
        verdict(TYPICAL.mosfet("IRLZ44N", ""), CheckKind.GATE_LEVEL),
        "one maker guarantees 10 V only");
    ChannelInputs unnamed = TYPICAL.mosfet("2N7000", "").inputs();
    assertEquals(357, unnamed.high(Term.RTH_AIR));
    assertEquals(0.20, unnamed.low(Term.DRAIN_CURRENT_RATING));
    ChannelInputs named = TYPICAL.mosfet("2N7000", "STMicroelectronics").inputs();
    assertEquals(125, named.high(Term.RTH_AIR));
    assertEquals(0.35, named.low(Term.DRAIN_CURRENT_RATING));
  }

  @Test
  void trap_06_an_isolated_package_conducts_heat_worse() {
    ChannelKit sink = TYPICAL.with("channels", "heatsink=5 K/W");
    double bare = rise(sink, "STP55NF06L");
    double isolated = rise(sink, "STP55NF06LFP");
    assertEquals((5.0 + 5) / (1.58 + 5), isolated / bare, 0.001);
    assertTrue(
        sink.mosfet("STP55NF06LFP", "STMicroelectronics").inputs().low(Term.DRAIN_CURRENT_RATING)
            < sink.mosfet("STP55NF06L", "STMicroelectronics")
                .inputs()
                .low(Term.DRAIN_CURRENT_RATING));
  }

  private static double rise(ChannelKit kit, String part) {
    return SwitchChecks.junctionToAir(kit.mosfet(part, "STMicroelectronics").inputs());
  }

  @Test
  void trap_07_a_logic_level_gate_bears_only_sixteen_volts() {
    ChannelKit hot =
        TYPICAL
            .with("rails.logic", "voltage=24 V")
            .with("drivers", "high level min=22 V")
            .mosfet("IRLZ44N", IR);
    assertEquals(OVERLOADED, verdict(hot, CheckKind.GATE_LIMIT));
    ChannelKit fifteen = hot.with("rails.logic", "voltage=15 V; tolerance=10 %");
    assertEquals(OVERLOADED, verdict(fifteen, CheckKind.GATE_LIMIT), "15 V and 10 % is 16.5 V");
  }

  @Test
  void trap_08_a_pull_down_at_the_gate_divides_the_drive() {
    ChannelKit ideal =
        TYPICAL
            .with("drivers", "high level min=5 V; source resistance=0.001 Ohm")
            .with("bom.R2", "value=1k 1%");
    assertTrue(ideal.inputs().gateVolts() < 4.1, "5 V through 220 Ω and 1 kΩ is 4.1 V, not 5 V");
    ChannelKit atDriver = ideal.with("channels", "pull-down side=driver");
    assertTrue(atDriver.inputs().gateVolts() > 4.9);
    ChannelKit unstated = ideal.with("channels", "pull-down side=");
    assertEquals(ideal.inputs().gateVolts(), unstated.inputs().gateVolts(), "the worse counts");
  }

  @Test
  void trap_09_the_supply_adds_to_avalanche_energy() {
    double half = 0.5 * 0.01 * 4;
    assertEquals(7.86, Avalanche.joules(0.01, 2, 55, 48) / half, 0.01);
    assertEquals(5.0, Avalanche.joules(0.01, 2, 60, 48) / half, 0.01);
    assertEquals(1.92, Avalanche.joules(0.01, 2, 100, 48) / half, 0.01);
    Check check = TYPICAL.with("channels", "flyback diode=").check(CheckKind.AVALANCHE_ENERGY);
    double amps = TYPICAL.inputs().loadAmps();
    assertEquals(0.5 * 0.05 * amps * amps * 100 / (100 - 25.2), check.actualAmount(), 1e-9);
  }

  @Test
  void trap_10_of_two_avalanche_energies_only_the_smaller_is_a_rating() {
    ChannelKit both = TYPICAL.datasheet("T-FET", "EAS", "IAS=10A, destruction", "", "700", "mJ");
    assertEquals(0.200, both.inputs().low(Term.AVALANCHE_RATING), 1e-12);
  }

  @Test
  void trap_11_a_forty_volt_diode_does_not_stand_forty_eight() {
    ChannelKit high = TYPICAL.with("rails", "voltage=48 V");
    assertEquals(
        OVERLOADED, verdict(high.with("bom.D1", "part type=1N5819"), CheckKind.DIODE_VOLTAGE));
    assertEquals(
        CARRIES, verdict(high.with("bom.D1", "part type=1N4007"), CheckKind.DIODE_VOLTAGE));
    PartData coupler =
        PartData.of(
            Role.STAGE,
            type(PartKind.OPTOCOUPLER, "4N25"),
            ShippedTables.catalogue().about("4N25"),
            "");
    assertEquals(
        30,
        coupler.data().stream()
            .filter(datum -> datum.term() == Term.DRAIN_RATING)
            .mapToDouble(Datum::low)
            .findFirst()
            .orElseThrow(),
        "V(BR)CEO 30 V, though 70 V stands under the ratings");
  }

  @Test
  void trap_12_under_pwm_the_diode_carries_the_current_most_of_the_time() {
    ChannelKit pwm =
        TYPICAL
            .with("drivers", "PWM frequency=200 Hz")
            .with("loads", "resistance=12 Ohm; duty=25 %; on time=; period=")
            .with("bom.D1", "part type=1N4007; description=diode Diodes Incorporated");
    Check check = pwm.check(CheckKind.DIODE_CURRENT);
    assertEquals(0.75 * pwm.inputs().loadAmps(), check.actualAmount(), 1e-9);
    assertEquals(OVERLOADED, check.verdict(), "1.65 A on a 1 A diode");
    ChannelKit hot = TYPICAL.setting("ambient", "100 C");
    assertEquals(
        3 * (150 - 100.0) / (150 - 75), hot.check(CheckKind.DIODE_CURRENT).allowedAmount(), 1e-9);
  }

  @Test
  void trap_13_a_clamp_adds_to_the_rail_at_the_drain() {
    ChannelInputs zener = TYPICAL.inputs().with(Term.DRAIN_RATING, 55).with(Term.DIODE_FORWARD, 25);
    Check check = ChannelFinding.of(zener).check(CheckKind.DRAIN_VOLTAGE).orElseThrow();
    assertEquals(25.2 + 25, check.actualAmount(), 1e-9);
    assertEquals(OVERLOADED, check.verdict());
  }

  @Test
  void trap_14_an_inductive_edge_costs_three_times_a_resistive_one() {
    assertEquals(
        3,
        SwitchingLoss.inductiveJoules(48, 2, 1e-6) / SwitchingLoss.resistiveJoules(48, 0, 2, 1e-6),
        1e-9);
    ChannelKit pwm = TYPICAL.with("drivers", "PWM frequency=20 kHz").with("loads", "duty=50 %");
    double coil = SwitchChecks.switchingWatts(pwm.inputs());
    ChannelInputs plain = pwm.with("loads", "kind=resistive; inductance=").inputs();
    assertTrue(coil > 2.5 * (SwitchChecks.switchingWatts(plain) - 20e3 * 0.5 * 1e-9 * 25.2 * 25.2));
  }

  @Test
  void trap_15_cold_resistance_beats_any_rule_of_inrush_and_the_highest_rule_counts() {
    ChannelKit lamp =
        TYPICAL.with("loads", "kind=lamp; inductance=; resistance=; power=24 W; tolerance=5 %");
    assertEquals(15, lamp.inputs().nominal(Term.INRUSH), 1e-9, "15 times 1 A");
    ChannelKit cold = lamp.with("loads", "resistance=2 Ohm");
    assertEquals(12, cold.inputs().nominal(Term.INRUSH), 1e-9, "V/Rcold where R is known");
    assertEquals(1, cold.inputs().nominal(Term.LOAD_CURRENT), 1e-9, "and it runs at 1 A");
    ChannelKit motor = TYPICAL.with("loads", "kind=motor; current=2 A; resistance=1.5 Ohm");
    assertEquals(16, motor.inputs().nominal(Term.INRUSH), 1e-9);
  }

  @Test
  void trap_16_a_dc_solenoid_has_no_inrush_but_draws_its_cold_current() {
    assertFalse(
        TYPICAL.finding().check(CheckKind.INRUSH_CURRENT).isPresent(), "10-20 times is for AC");
    assertEquals(1.05 / 0.95, TYPICAL.inputs().loadAmps(), 1e-9, "cold V/R, high rail");
    ChannelKit pull = TYPICAL.with("loads", "pull-in voltage=18 V; temperature rise=45 K");
    Check check = pull.check(CheckKind.PULL_IN);
    assertEquals(18 * 1.2554, check.allowedAmount(), 0.01, "a coil at 85 °C needs 25.5 % more");
    assertEquals(OVERLOADED, check.verdict());
  }

  /**
   * Half the time on leaves a coil half of (22.8 V less what wire, MOSFET and return keep), less
   * half of VF: too little to pull in, and enough to hold.
   */
  @Test
  void trap_a_coil_held_by_pwm_may_never_have_pulled_in() {
    ChannelKit full = TYPICAL.with("loads", "pull-in voltage=12 V; temperature rise=45 K");
    assertEquals(CARRIES, verdict(full, CheckKind.PULL_IN));
    double left = full.check(CheckKind.PULL_IN).actualAmount();
    ChannelKit pwm = full.with("drivers", "PWM frequency=1 kHz").with("loads", "duty=50 %");
    Check half = pwm.check(CheckKind.PULL_IN);
    assertEquals(left / 2 - 1.1 / 2, half.actualAmount(), 0.01);
    assertEquals(UNDECIDED, half.verdict(), "the program may drive it wholly on first");
    assertEquals(1, half.missing().size());
    assertEquals(CARRIES, verdict(pwm.with("loads", "duty=100 %"), CheckKind.PULL_IN));
    assertEquals(UNDECIDED, verdict(pwm.with("loads", "duty="), CheckKind.PULL_IN), "10 % and up");
    ChannelKit light = pwm.with("loads", "pull-in voltage=6 V");
    assertEquals(CARRIES, verdict(light, CheckKind.PULL_IN), "7.5 V of 10.3 V");
    ChannelKit never = pwm.with("loads", "pull-in voltage=20 V");
    assertEquals(OVERLOADED, verdict(never, CheckKind.PULL_IN), "not even wholly on");
  }

  /**
   * Of 22.8 V on 24 V the coil gets all but what 2 m of 1 mm² and the MOSFET keep, well above 19.2
   * V. On 5 V a Darlington pair's 1.6 V leaves 4.75 V - 1.6 V = 3.15 V less the wire's drop, below
   * 4 V; and half the time on leaves half.
   */
  @Test
  void trap_a_coil_of_unstated_pull_in_passes_only_where_little_is_lost() {
    assertEquals(CARRIES, verdict(TYPICAL, CheckKind.PULL_IN));
    assertEquals(19.2, TYPICAL.check(CheckKind.PULL_IN).allowedAmount(), 1e-9);
    ChannelKit five =
        ChannelKit.array()
            .with("rails", "voltage=5 V")
            .with("loads", "kind=relay; resistance=70 Ohm");
    Check lost = five.check(CheckKind.PULL_IN);
    assertEquals(3.15, lost.actualAmount(), 0.02);
    assertEquals(UNDECIDED, lost.verdict());
    assertTrue(lost.missing().toString().contains("pull-in voltage of load"));
    assertEquals(
        CARRIES,
        verdict(five.with("loads", "pull-in voltage=2 V"), CheckKind.PULL_IN),
        "2.7 V hot");
    ChannelKit pwm =
        TYPICAL
            .with("drivers", "PWM frequency=1 kHz")
            .with("loads", "duty=50 %; on time=; period=");
    assertEquals(UNDECIDED, verdict(pwm, CheckKind.PULL_IN));
    assertFalse(
        TYPICAL
            .with("loads", "kind=motor; resistance=; current=0.3 A")
            .finding()
            .check(CheckKind.PULL_IN)
            .isPresent(),
        "a motor has none");
  }

  @Test
  void trap_17_copper_coefficients_belong_to_their_reference_temperature() {
    assertEquals(0.003929, CopperTemperature.factor(20, 21) - 1, 1e-6);
    assertEquals(0.003854, CopperTemperature.factor(25, 26) - 1, 1e-6);
    assertEquals(
        CopperTemperature.factor(20, 100),
        CopperTemperature.factor(20, 25) * CopperTemperature.factor(25, 100),
        1e-12,
        "the same copper from either reference");
  }

  @Test
  void trap_18_duty_is_on_time_over_the_whole_not_off_time() {
    assertEquals(25, LoadChecks.dutyPercent(15, 15 + 45), 1e-12, "15 s on, 45 s off");
    ChannelKit rated = TYPICAL.with("loads", "on time=15 s; period=60 s; rated duty=30 %");
    assertEquals(CARRIES, verdict(rated, CheckKind.LOAD_DUTY));
    assertEquals(OVERLOADED, verdict(rated.with("loads", "rated duty=20 %"), CheckKind.LOAD_DUTY));
  }

  /** 25 % of a cycle of 5 min: 75 s, DIN VDE 0580 as in RED MAGNETICS' general notes, p. 4. */
  @Test
  void a_coil_carries_only_where_it_is_known_how_long_and_how_often_it_bears_to_be_on() {
    ChannelKit unrated = TYPICAL.with("loads", "rated duty=");
    Check open = unrated.check(CheckKind.LOAD_DUTY);
    assertEquals(UNDECIDED, open.verdict());
    assertEquals(
        List.of(
            "rated duty (100 % where it is rated for continuous duty) of load striker: write it in"
                + " loads.csv"),
        open.missing());
    assertEquals(UNDECIDED, unrated.finding().verdict());
    assertEquals(UNDECIDED, unrated.with("loads", "kind=relay").finding().verdict());
    ChannelKit shortly = unrated.with("loads", "max on time=1 s");
    assertEquals(CARRIES, verdict(shortly, CheckKind.ON_TIME));
    assertEquals(UNDECIDED, verdict(shortly, CheckKind.LOAD_DUTY), "100 ms a second, for hours");
    ChannelKit quarter = TYPICAL.with("loads", "rated duty=25 %; on time=75 s; period=300 s");
    assertEquals(CARRIES, verdict(quarter, CheckKind.ON_TIME));
    assertEquals(CARRIES, verdict(quarter, CheckKind.LOAD_DUTY));
    ChannelKit slow = quarter.with("loads", "on time=76 s; period=10000 s");
    assertEquals(OVERLOADED, verdict(slow, CheckKind.ON_TIME));
    assertEquals(UNDECIDED, quarter.with("loads", "on time=").finding().verdict(), "held on");
    ChannelKit held = TYPICAL.with("loads", "on time=; period=");
    assertFalse(held.finding().check(CheckKind.LOAD_DUTY).isPresent(), "rated to be held on");
    ChannelKit heater = unrated.with("loads", "kind=resistive; inductance=");
    assertFalse(heater.finding().check(CheckKind.LOAD_DUTY).isPresent());
  }

  @Test
  void trap_19_an_inner_track_needs_more_than_double_width_and_an_unstated_one_counts_as_inner() {
    double inner = TrackWidths.millimetres(3, 20, 0.035, false);
    double outer = TrackWidths.millimetres(3, 20, 0.035, true);
    assertEquals(2.602, inner / outer, 0.001);
    double external = TYPICAL.check(CheckKind.TRACE_CURRENT).allowedAmount();
    double unstated =
        TYPICAL.with("channels", "trace layer=").check(CheckKind.TRACE_CURRENT).allowedAmount();
    assertTrue(unstated / external <= 0.5, "half by the one curve, less by the other");
    assertTrue(CheckKind.TRACE_CURRENT.remark().contains("2152"), "the caveat is said");
  }

  @Test
  void trap_20_chassis_amps_do_not_rate_a_bundled_wire() {
    double gauge16 = Conductor.squareMillimetres("AWG 16").orElseThrow();
    assertTrue(Conductor.amperes(gauge16, 30, 1) < 22, "22 A is for one short wire in open air");
    assertTrue(Conductor.amperes(gauge16, 30, 8) < 0.55 * Conductor.amperes(gauge16, 30, 1));
    Check together = TYPICAL.with("channels", "wires together=16").check(CheckKind.WIRE_CURRENT);
    assertEquals(
        0.37,
        together.allowedAmount() / TYPICAL.check(CheckKind.WIRE_CURRENT).allowedAmount(),
        1e-9);
  }

  @Test
  void a_wire_without_a_unit_counts_as_the_thinner_of_both_readings() {
    double gauge18 = Conductor.squareMillimetres("AWG 18").orElseThrow();
    assertEquals(gauge18, Conductor.squareMillimetres("18").orElseThrow(), 1e-12, "not 18 mm²");
    assertEquals(1, Conductor.squareMillimetres("1").orElseThrow(), 1e-12, "AWG 1 is thicker");
    assertEquals(0.75, Conductor.squareMillimetres("0.75").orElseThrow(), 1e-12);
    assertEquals(16, Conductor.squareMillimetres("16 mm2").orElseThrow(), 1e-12);
    Check check = TYPICAL.with("channels", "wire=22").check(CheckKind.WIRE_CURRENT);
    assertTrue(check.allowedAmount() < 0.92, "AWG 22, not 22 mm²");
  }

  @Test
  void a_p_channel_or_pnp_part_never_passes_on_the_low_side() {
    ChannelKit said = TYPICAL.with("bom.Q1", "description=MOSFET, P-channel");
    assertEquals(UNDECIDED, verdict(said, CheckKind.DRAIN_VOLTAGE));
    ChannelKit datasheet = TYPICAL.datasheet("T-FET", "polarity", "P-channel", "", "", "");
    assertNotEquals(CARRIES, datasheet.finding().verdict());
    assertTrue(datasheet.check(CheckKind.DRAIN_VOLTAGE).missing().toString().contains("low side"));
    assertEquals(CARRIES, TYPICAL.finding().verdict());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "JFET, N-channel",
        "N-channel J-FET",
        "junction FET N-channel",
        "MOSFET N-channel depletion mode",
        "MOSFET, normally on"
      })
  void a_part_that_conducts_at_no_gate_voltage_never_passes(String description) {
    ChannelKit said = TYPICAL.with("bom.Q1", "description=" + description);
    assertEquals(UNDECIDED, verdict(said, CheckKind.DRAIN_VOLTAGE));
    assertTrue(said.check(CheckKind.DRAIN_VOLTAGE).missing().toString().contains("at 0 V"));
  }

  @Test
  void a_load_that_is_said_to_draw_nothing_or_to_be_on_twice_carries_nothing() {
    ChannelKit nothing = TYPICAL.with("loads", "resistance=; current=0 A");
    assertNotEquals(CARRIES, nothing.finding().verdict());
    ChannelKit short0 = TYPICAL.with("loads", "resistance=0 Ohm");
    assertNotEquals(CARRIES, short0.finding().verdict());
    ChannelKit twice = TYPICAL.with("drivers", "PWM frequency=200 Hz").with("loads", "duty=200 %");
    assertFalse(twice.inputs().knows(Term.DUTY), "a fault of the table, and not a number");
    assertEquals(
        twice.inputs().loadAmps(), twice.check(CheckKind.DIODE_CURRENT).actualAmount(), 1e-9);
    assertEquals(
        0.1 / 200, twice.check(CheckKind.SWITCHING_TIME).allowedAmount(), 1e-9, "as assumed");
  }

  @Test
  void a_fuse_is_read_as_people_write_it() {
    for (String written :
        new String[] {"2A", "T2A", "F 2 A", "T2A250V", "FF2A", "2000mA", "T2A L"}) {
      ChannelKit kit = TYPICAL.with("bom.F1", "part type=; description=fuse; value=" + written);
      assertEquals(2, kit.inputs().nominal(Term.FUSE_RATING), 1e-9, written);
    }
  }

  @Test
  void trap_21_the_drop_counts_both_ways_and_hot_copper_of_the_standards_resistivity() {
    assertEquals(0.017241, new PrintedTrack(1, 1, true).ohms(1000, 20), 1e-5, "IACS, 1 m of 1 mm²");
    Check check = TYPICAL.check(CheckKind.WIRE_DROP);
    double amps = TYPICAL.inputs().loadAmps();
    double hot = 304.5 / 254.5;
    double wire = 2 * 0.0200 * 2 * hot;
    double track = 1.7241e-5 * 50 / (2 * 0.035) * hot;
    assertEquals(amps * (wire + track), check.actualAmount(), 1e-9);
  }

  @Test
  void trap_22_what_a_fuse_carries_and_when_it_opens_depends_on_its_standard() {
    ChannelKit unstated = TYPICAL.with("bom.F1", "description=fuse");
    ChannelKit iec = TYPICAL.with("bom.F1", "description=fuse IEC 60127-2");
    double ul = TYPICAL.check(CheckKind.FUSE_CURRENT).allowedAmount();
    assertEquals(0.75 * 2.5 * 0.925, ul, 1e-9);
    assertEquals(1.00 * 2.5 * 0.925, iec.check(CheckKind.FUSE_CURRENT).allowedAmount(), 1e-9);
    assertEquals(ul, unstated.check(CheckKind.FUSE_CURRENT).allowedAmount(), 1e-9);
    assertEquals(1.35 * 2.5, TYPICAL.check(CheckKind.FUSE_PROTECTS_TRACK).actualAmount(), 1e-9);
    assertEquals(2.1 * 2.5, iec.check(CheckKind.FUSE_PROTECTS_TRACK).actualAmount(), 1e-9);
    assertEquals(2.1 * 2.5, unstated.check(CheckKind.FUSE_PROTECTS_WIRE).actualAmount(), 1e-9);
    ChannelKit thin = TYPICAL.with("channels", "wire=AWG 26");
    assertEquals(OVERLOADED, verdict(thin, CheckKind.FUSE_PROTECTS_WIRE));
  }

  @Test
  void trap_23_an_ac_rating_says_nothing_about_direct_current() {
    ChannelKit ac =
        TYPICAL.withoutDatasheet("T-FUSE", "VN").datasheet("T-FUSE", "VN", "AC", "", "250", "V");
    assertEquals(UNDECIDED, verdict(ac, CheckKind.FUSE_VOLTAGE));
    ChannelKit alternating =
        TYPICAL
            .withoutDatasheet("T-FUSE", "breaking")
            .datasheet("T-FUSE", "breaking", "250 V AC", "", "35", "A");
    assertEquals(UNDECIDED, verdict(alternating, CheckKind.FUSE_BREAKING));
    Check battery =
        TYPICAL.with("rails", "short-circuit current=300 A").check(CheckKind.FUSE_BREAKING);
    assertEquals(OVERLOADED, battery.verdict(), "a battery's short is more than it breaks");
    Check limited = TYPICAL.check(CheckKind.FUSE_BREAKING);
    assertEquals(5, limited.actualAmount(), 1e-9, "the supply's limit bounds it");
    Check unlimited = TYPICAL.with("rails", "current limit=").check(CheckKind.FUSE_BREAKING);
    double ohms = 1.7241e-2 / 2.5 * (234.5 / 254.5);
    assertEquals(25.2 / ohms, unlimited.actualAmount(), 1, "only the return's copper does");
    Check unknown =
        TYPICAL.with("rails", "current limit=; return wire=").check(CheckKind.FUSE_BREAKING);
    assertEquals(UNDECIDED, unknown.verdict());
    assertTrue(unknown.missing().toString().contains("short-circuit current"));
    assertEquals(CARRIES, verdict(TYPICAL, CheckKind.FUSE_VOLTAGE));
  }

  @Test
  void trap_24_repeated_inrush_may_use_a_fifth_of_the_melting_integral() {
    ChannelKit lamp =
        TYPICAL.with(
            "loads",
            "kind=lamp; inductance=; resistance=; current=1 A; inrush=10 A; inrush time=20 ms; period=10 s");
    Check check = lamp.check(CheckKind.FUSE_PULSE);
    assertEquals(0.22 * 6, check.allowedAmount(), 1e-9);
    assertEquals(1.05 * 1.05 * 100 * 0.020, check.actualAmount(), 1e-9);
    assertEquals(OVERLOADED, check.verdict(), "2.2 of 6 A²s would melt it after some strokes");
    ChannelKit seldom = lamp.with("loads", "switch-ons=900");
    assertEquals(0.38 * 6, seldom.check(CheckKind.FUSE_PULSE).allowedAmount(), 1e-9);
    assertEquals(CARRIES, verdict(seldom, CheckKind.FUSE_PULSE), "but a thousand times it may");
    Check often = seldom.with("loads", "period=1 s").check(CheckKind.FUSE_PULSE);
    assertEquals(10 * check.actualAmount(), often.actualAmount(), 1e-9, "it can't cool between");
    ChannelKit beyond = seldom.with("loads", "switch-ons=200000");
    assertEquals(UNDECIDED, verdict(beyond, CheckKind.FUSE_PULSE), "no factor is published");
  }

  @Test
  void trap_25_a_transfer_ratio_at_five_volts_is_no_saturated_one() {
    ChannelKit coupler =
        TYPICAL
            .with(
                "drivers",
                "kind=optocoupler; part type=PC817; high level min=; input current=10 mA")
            .with("bom.R2", "value=4k7 1%");
    // Sharp PC817X, D2-A03101EN: CTR at least 50 % at IF = 5 mA and VCE = 5 V
    Check check = coupler.check(CheckKind.OPTO_CURRENT);
    assertEquals(0.5 * 0.5 * 0.005, check.allowedAmount(), 1e-9, "half of it, for heat and age");
    assertEquals(CARRIES, check.verdict(), "5.25 V on 4.65 kΩ is 1.1 mA");
    Check level = coupler.check(CheckKind.GATE_LEVEL);
    assertEquals(4.75 - 5, level.actualAmount(), 0.02, "but it may keep all 5 V");
    assertEquals(UNDECIDED, level.verdict());
    assertTrue(level.missing().toString().contains("22.6 mA through its LED"), "1.128 mA · 20");
    ChannelKit weaker = coupler.with("bom.R2", "value=47k 1%");
    assertEquals(CARRIES, verdict(weaker, CheckKind.OPTO_CURRENT));
    assertEquals(4.75 - 0.2, weaker.check(CheckKind.GATE_LEVEL).actualAmount(), 0.05);
    ChannelKit strong = coupler.with("bom.R2", "value=1k 1%");
    assertEquals(OVERLOADED, verdict(strong, CheckKind.OPTO_CURRENT), "5.3 mA of 50 % of 10 mA");
    ChannelKit between = coupler.with("bom.R2", "value=2k2 1%");
    assertEquals(
        UNDECIDED, verdict(between, CheckKind.OPTO_CURRENT), "2.4 mA is promised by no row");
    ChannelKit dim = coupler.with("drivers", "input current=3 mA");
    assertEquals(UNDECIDED, verdict(dim, CheckKind.OPTO_CURRENT), "no ratio below 5 mA");
    ChannelKit unsaid = coupler.with("drivers", "input current=");
    assertEquals(UNDECIDED, verdict(unsaid, CheckKind.OPTO_CURRENT));
  }

  @Test
  void trap_25_from_twelve_volts_a_coupler_that_keeps_five_leaves_a_logic_gate_enough() {
    ChannelKit coupler = ChannelKit.coupled().with("drivers", "part type=PC817");
    Check level = coupler.check(CheckKind.GATE_LEVEL);
    // 12.6 V on 11.88 kΩ is 1.06 mA: more than 0.5 mA, less than 1.25 mA; 11.4 V less 5 V
    assertEquals(6.4, level.actualAmount(), 0.15);
    assertEquals(CARRIES, level.verdict(), "RDSon is specified from 4 V on");
    assertEquals(CARRIES, coupler.finding().verdict());
  }

  @Test
  void trap_26_an_array_is_limited_by_its_ground_pin_and_its_package() {
    ChannelKit array =
        TYPICAL
            .with("channels", "MOSFET=; gate resistor=; pull-down=")
            .with("drivers", "kind=Darlington array; part type=ULN2803A")
            .with("loads", "resistance=50 Ohm");
    ChannelKit eight = array;
    for (int i = 2; i <= 8; i++) {
      eight = eight.with("channels." + i, rowOf(array, "out " + i));
    }
    Check total = eight.check(CheckKind.STAGE_TOTAL);
    assertEquals(8 * array.inputs().loadAmps(), total.actualAmount(), 1e-9);
    assertEquals(OVERLOADED, total.verdict(), "8 × 0.5 A is over the 2.5 A of the ground pin");
    assertEquals(
        85 + 62.66 * 1.037, StageChecks.packageCelsius(85, 62.66, 1.037), 1e-9, "1.04 W at 85 °C");
    assertEquals(
        UNDECIDED,
        verdict(eight, CheckKind.STAGE_TEMPERATURE),
        "no VCEsat maximum is in the catalogue");
  }

  private static String rowOf(ChannelKit kit, String name) {
    return kit.row("channels") + "; channel=" + name;
  }

  @Test
  void trap_27_base_drive_counts_with_the_forced_gain_never_hfe() {
    ChannelKit bipolar =
        TYPICAL
            .with("bom.Q1", "part type=2N3904; description=transistor NPN onsemi")
            .with(
                "loads", "kind=resistive; inductance=; resistance=; current=40 mA; tolerance=1 %");
    Check check = bipolar.check(CheckKind.FORCED_GAIN);
    assertEquals(10, check.allowedAmount(), 1e-9, "hFE min is 60 at 50 mA");
    ChannelKit weak = bipolar.with("bom.R1", "value=1k 1%");
    assertNotEquals(CARRIES, verdict(weak, CheckKind.FORCED_GAIN));
  }

  @Test
  void trap_28_a_resistors_voltage_may_bind_before_its_power_and_power_falls_above_70_degrees() {
    assertEquals(
        250, Math.sqrt(1e6 * new ResistorRating(0.25, 1e6).watts(25)), 1e-9, "not √(P·R) = 500 V");
    assertEquals(0.35, ResistorRating.share(125), 0.001, "and of two published curves the lower");
    ChannelKit hot = TYPICAL.with("bom.R2", "value=220R 1%").setting("ambient", "100 C");
    assertEquals(OVERLOADED, verdict(hot, CheckKind.PULL_DOWN_POWER), "5.25 V on 220 Ω is 125 mW");
  }

  @Test
  void trap_29_letters_in_values_are_read_by_the_code_not_guessed() {
    assertEquals(4700, TYPICAL.with("bom.R2", "value=4K7").inputs().nominal(Term.PULL_DOWN));
    assertEquals(
        4.7, TYPICAL.with("bom.R1", "value=4R7").inputs().nominal(Term.GATE_RESISTOR), 1e-9);
    ChannelInputs tolerance = TYPICAL.with("bom.R1", "value=220RK").inputs();
    assertTrue(
        !tolerance.knows(Term.GATE_RESISTOR) || tolerance.high(Term.GATE_RESISTOR) >= 1.09 * 220,
        "K after R is ±10 %, or it is not understood; never 220 kΩ by accident");
  }

  @Test
  void trap_30_where_two_lines_disagree_the_stricter_counts() {
    ChannelKit typo =
        TYPICAL
            .datasheet("T-DIODE", "VF", "IF=1A", "", "1.3", "V")
            .datasheet("T-FET", "TJ", "", "", "150", "C");
    assertEquals(1.3, typo.inputs().high(Term.DIODE_FORWARD), 1e-9);
    assertEquals(125, typo.check(CheckKind.JUNCTION_TEMPERATURE).allowedAmount(), 1e-9);
  }

  @Test
  void a_value_from_memory_makes_nothing_pass() {
    ChannelKit memory =
        TYPICAL
            .withoutDatasheet("T-FET", "VDS")
            .line("T-FET", "VDS", "", "", "", "100", "V", "from memory");
    assertEquals(UNDECIDED, verdict(memory, CheckKind.DRAIN_VOLTAGE));
    ChannelKit bad =
        TYPICAL
            .withoutDatasheet("T-FET", "VDS")
            .line("T-FET", "VDS", "", "", "", "20", "V", "from memory");
    assertEquals(OVERLOADED, verdict(bad, CheckKind.DRAIN_VOLTAGE));
    assertEquals(Source.Origin.MEMORY, memory.inputs().datum(Term.DRAIN_RATING).source().origin());
  }

  @Test
  void a_typical_value_makes_nothing_pass() {
    ChannelKit typical =
        TYPICAL
            .withoutDatasheet("T-FET", "RthJA")
            .line("T-FET", "RthJA", "", "", "40", "", "K/W", "sheet");
    Check check = typical.check(CheckKind.JUNCTION_TEMPERATURE);
    assertEquals(UNDECIDED, check.verdict());
    assertTrue(check.missing().toString().contains("typical"), check.missing().toString());
  }

  @Test
  void above_sixty_volts_nothing_is_decided() {
    ChannelKit high = TYPICAL.with("rails", "voltage=60 V");
    assertEquals(UNDECIDED, verdict(high, CheckKind.VOLTAGE_SCOPE), "60 V and 5 % is 63 V");
    assertNotEquals(CARRIES, high.finding().verdict());
  }

  private static PartType type(PartKind kind, String number) {
    return new PartType(
        kind,
        number,
        java.util.Optional.empty(),
        java.util.Optional.empty(),
        java.util.Optional.empty(),
        java.util.Optional.<Quantity>empty(),
        number,
        "");
  }
}
