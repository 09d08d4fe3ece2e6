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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The gate of the typical channel, by hand: a pin of 4.7 V to 5.25 V behind 30 Ω, 220 Ω and 1 % to
 * the gate, 10 kΩ and 1 % from there to ground; VGSth 1.2 V to 2.2 V, plateau 2.4 V to 3.2 V, QGS 8
 * nC, QGD 14 nC; air of 40 °C.
 */
class GateChecksTest {
  private static final ChannelKit TYPICAL = ChannelKit.typical();

  private static void amounts(double actual, double allowed, Check check) {
    assertEquals(actual, check.actualAmount(), 1e-6 * actual, "actual");
    assertEquals(allowed, check.allowedAmount(), 1e-6 * allowed, "allowed");
  }

  @Test
  void the_gate_gets_what_the_divider_and_the_lifted_ground_leave() {
    ChannelInputs in = TYPICAL.inputs().with(Term.RETURN_LIFT, 0.1);
    // 4.7 · 9900/(9900 + 222.2 + 30) − 0.1, held to the line at 4 V
    amounts(4.7 * 9900 / 10152.2 - 0.1, 4, ChannelKit.check(in, CheckKind.GATE_LEVEL));
    ChannelInputs bare = in.without(Fitted.PULL_DOWN);
    amounts(4.6, 4, ChannelKit.check(bare, CheckKind.GATE_LEVEL));
  }

  @Test
  void the_line_that_a_gate_must_earn_is_the_lowest_for_its_current_and_says_whence() {
    ChannelInputs weak = TYPICAL.inputs().with(Term.DRIVE_LEVEL, 3.5);
    Check missed = ChannelKit.check(weak, CheckKind.GATE_LEVEL);
    assertEquals(4, missed.allowedAmount(), "VGS of the tighter of its two lines");
    assertEquals(Verdict.OVERLOADED, missed.verdict());
    Check strong =
        ChannelKit.check(
            weak.with(Term.DRIVE_LEVEL, 12).with(Term.GATE_RATING, 20), CheckKind.GATE_LEVEL);
    assertEquals(10, strong.allowedAmount(), "it earns the line at 10 V");
    for (Check check : List.of(missed, strong)) {
      assertTrue(
          check.inputs().stream()
              .filter(input -> input.symbol().equals("VGS of the line"))
              .anyMatch(input -> input.value().source().toString().contains("test part")),
          check.inputs()::toString);
    }
  }

  @Test
  void a_line_that_is_missing_is_asked_for_with_gate_voltage_and_current() {
    ChannelKit none = TYPICAL.withoutDatasheet("T-FET", "RDSon");
    Check check = none.check(CheckKind.GATE_LEVEL);
    // 4.7 V divided is 4.583 V, less 24 mV of lift; 1.1053 A
    assertEquals(
        List.of(
            "RDSon of T-FET at VGS ≤ 4.56 V and ID ≥ 1.11 A: write it in datasheets.csv,"
                + " with its maker named in the BOM"),
        check.missing());
    Check unknownGate = none.with("drivers", "high level min=").check(CheckKind.GATE_LEVEL);
    assertTrue(
        unknownGate.missing().toString().contains("RDSon of T-FET at ID ≥ 1.11 A: write"),
        unknownGate.missing().toString());
  }

  @Test
  void the_gate_bears_the_drivers_rail_at_its_highest() {
    amounts(5.25, 16, TYPICAL.check(CheckKind.GATE_LIMIT));
  }

  /**
   * At 40 °C the threshold is 1.2 V − 7 mV/K · 15 K = 1.095 V. An undriven gate drifts to Rpd · (10
   * µA + 14 nC/1 ms) = Rpd · 24 µA; the pin's own low level is 0.3 V.
   */
  @ParameterizedTest
  @CsvSource({
    "high impedance, 10k 1%,  gate,   0.3,    the pin's low level is more than 10.1 kΩ · 24 µA",
    "high impedance, 22k 1%,  gate,   0.53328, 22.22 kΩ · 24 µA",
    "high impedance, 22k 1%,  driver, 0.5386128, '22.22 kΩ and 222.2 Ω, times 24 µA'",
    "high impedance, 22k 1%,  '',     0.5386128, the worse side counts",
    "floating,       22k 1%,  gate,   0.53328, another word for it",
    "undriven,       22k 1%,  gate,   0.53328, another word for it",
    "tri-state,      22k 1%,  gate,   0.53328, another word for it",
    "Hi-Z,           22k 1%,  gate,   0.53328, another word for it",
    "'',             22k 1%,  gate,   0.53328, nothing said counts as undriven",
    "low,            22k 1%,  gate,   0.3,    driven low",
    "high,           22k 1%,  gate,   5.25,   driven to its rail and 5 %",
  })
  void an_idle_gate_stays_at_the_level_that_it_is_left_at(
      String atReset, String pullDown, String side, double volts, String why) {
    ChannelKit kit =
        TYPICAL
            .with("drivers", "at reset=" + atReset)
            .with("bom.R2", "value=" + pullDown)
            .with("channels", "pull-down side=" + side);
    Check check = kit.check(CheckKind.GATE_OFF);
    assertEquals(volts, check.actualAmount(), 1e-9, why);
    assertEquals(1.095, check.allowedAmount(), 1e-9);
    assertTrue(check.data().stream().anyMatch(in -> in.term() == Term.AMBIENT), "7 mV/K of it");
  }

  @Test
  void what_is_not_fitted_is_no_datum_that_could_be_missing() {
    ChannelInputs in =
        TYPICAL
            .inputs()
            .without(Fitted.PULL_DOWN)
            .without(Fitted.GATE_RESISTOR)
            .with(Datum.missing(Term.PULL_DOWN), Datum.missing(Term.GATE_RESISTOR))
            .with(Term.DRIVE_LIMIT, 1);
    for (CheckKind kind : List.of(CheckKind.GATE_LEVEL, CheckKind.GATE_DRIVE_CURRENT)) {
      assertEquals(Verdict.CARRIES, ChannelKit.check(in, kind).verdict());
      ChannelInputs fitted = in.fitting(Fitted.PULL_DOWN).fitting(Fitted.GATE_RESISTOR);
      assertEquals(2, ChannelKit.check(fitted, kind).missing().size());
    }
  }

  @Test
  void without_pull_down_an_undriven_gate_drifts_to_the_loads_rail() {
    Check check = TYPICAL.with("channels", "pull-down=").check(CheckKind.GATE_OFF);
    amounts(25.2, 1.095, check);
    assertTrue(
        check.inputs().stream().anyMatch(input -> input.symbol().equals("no pull-down")),
        "and says that none is fitted");
    assertTrue(check.data().stream().anyMatch(in -> in.term() == Term.AMBIENT), "7 mV/K of it");
  }

  /** Until its own supply is up a driver drives nothing, and the load's rail may be up before. */
  @Test
  void a_driver_that_is_low_at_reset_makes_no_pull_down_needless() {
    ChannelKit low = TYPICAL.with("drivers", "at reset=low");
    assertEquals(Verdict.CARRIES, low.check(CheckKind.GATE_OFF).verdict());
    Check none = low.with("channels", "pull-down=").check(CheckKind.GATE_OFF);
    assertEquals(Verdict.UNDECIDED, none.verdict());
    assertTrue(none.missing().get(0).contains("pull-down at the gate"), none.missing().get(0));
    Check high =
        low.with("channels", "pull-down=")
            .with("drivers", "low level max=1.5 V")
            .check(CheckKind.GATE_OFF);
    assertEquals(Verdict.OVERLOADED, high.verdict(), "1.5 V is above 1.095 V anyway");
  }

  @Test
  void cold_air_lends_the_threshold_nothing() {
    ChannelInputs cold = TYPICAL.inputs().with(Term.AMBIENT, 5);
    assertEquals(1.2, ChannelKit.check(cold, CheckKind.GATE_OFF).allowedAmount(), 1e-12);
  }

  @Test
  void a_low_level_that_nobody_states_counts_as_none_where_the_gate_is_not_driven() {
    ChannelKit unstated = TYPICAL.with("drivers", "low level max=");
    // 10.1 kΩ · 24 µA
    assertEquals(0.2424, unstated.check(CheckKind.GATE_OFF).actualAmount(), 1e-9);
    assertEquals(
        Verdict.UNDECIDED,
        unstated.with("drivers", "at reset=low").check(CheckKind.GATE_OFF).verdict());
  }

  @Test
  void an_open_collector_left_undriven_turns_the_load_on() {
    ChannelKit open = TYPICAL.with("drivers", "kind=open drain; pull-up=1 kOhm");
    amounts(5.25, 1.095, open.check(CheckKind.GATE_OFF));
  }

  @Test
  void the_pin_charges_the_gate_through_the_larger_resistance_and_feeds_the_pull_down() {
    // 5.25 V on 217.8 Ω, and on 9900 Ω
    amounts(5.25 / 217.8 + 5.25 / 9900, 0.04, TYPICAL.check(CheckKind.GATE_DRIVE_CURRENT));
    ChannelInputs in = TYPICAL.inputs();
    amounts(
        5.25 / 30 + 5.25 / 9900,
        0.04,
        ChannelKit.check(in.without(Fitted.GATE_RESISTOR), CheckKind.GATE_DRIVE_CURRENT));
    amounts(
        5.25 / 217.8,
        0.04,
        ChannelKit.check(in.without(Fitted.PULL_DOWN), CheckKind.GATE_DRIVE_CURRENT));
    amounts(
        5.25 / 500 + 5.25 / 9900,
        0.04,
        ChannelKit.check(in.with(Term.DRIVE_RESISTANCE, 500), CheckKind.GATE_DRIVE_CURRENT));
  }

  @Test
  void the_pull_down_bears_the_drivers_rail() {
    // 5.25²/9900 of 1/8 W up to 70 °C; of 10 MΩ a limit of 250 V leaves 6.19 mW
    amounts(5.25 * 5.25 / 9900, 0.125, TYPICAL.check(CheckKind.PULL_DOWN_POWER));
    ChannelKit large = TYPICAL.with("bom.R2", "value=10M 1%");
    assertEquals(250 * 250 / 10.1e6, large.check(CheckKind.PULL_DOWN_POWER).allowedAmount(), 1e-9);
    assertFalse(
        ChannelFinding.of(TYPICAL.inputs().without(Fitted.PULL_DOWN))
            .check(CheckKind.PULL_DOWN_POWER)
            .isPresent());
  }

  @Test
  void under_pwm_the_gates_charge_heats_its_resistor() {
    ChannelKit pwm = TYPICAL.with("drivers", "PWM frequency=500 Hz");
    // 5.25 V · (8 nC + 14 nC) · 500/s
    amounts(5.25 * 22e-9 * 500, 0.125, pwm.check(CheckKind.GATE_RESISTOR_POWER));
    assertFalse(TYPICAL.finding().check(CheckKind.GATE_RESISTOR_POWER).isPresent(), "no PWM");
    ChannelKit direct = pwm.with("channels", "gate resistor=");
    assertFalse(direct.finding().check(CheckKind.GATE_RESISTOR_POWER).isPresent());
    assertTrue(direct.finding().check(CheckKind.SWITCHING_TIME).isPresent());
    assertFalse(TYPICAL.finding().check(CheckKind.SWITCHING_TIME).isPresent());
  }

  /**
   * 250 Ω without a pull-down and 5.2 V at the gate. On: 5.2 V is 2 V above the plateau and 4 V
   * above the least threshold: 250 Ω · (8 nC/3.2 V · ln 2 + 14 nC/2 V) = 2.183217 µs. Off to 0.2 V:
   * the lowest plateau is 2.2 V and the least threshold 1 V above it: 250 Ω · (8 nC/2.4 V · ln 2.2
   * + 14 nC/2.2 V) = 2.247957 µs.
   */
  @Test
  void the_two_edges_follow_from_the_gates_charge() {
    ChannelInputs in = edges();
    assertEquals(2.183217e-6, GateChecks.onSeconds(in), 1e-11);
    assertEquals(2.247957e-6, GateChecks.offSeconds(in), 1e-11);
    assertEquals(4.431174e-6, GateChecks.edgesSeconds(in), 1e-11);
    assertEquals(
        2.183217e-6,
        GateChecks.onSeconds(in.with(Term.DRIVE_LEVEL, 5.5).with(Term.RETURN_LIFT, 0.3)),
        1e-11,
        "a lifted ground takes from the gate");
    ChannelInputs unstated = in.with(Datum.missing(Term.DRIVE_LOW));
    // the pin's low level counts as 0 V: 250 Ω · (8 nC/2.4 V · ln 2 + 14 nC/2.4 V)
    assertEquals(2.035955e-6, GateChecks.offSeconds(unstated), 1e-11);
  }

  /** The typical channel with numbers that give its edges round ones. */
  static ChannelInputs edges() {
    return edges(TYPICAL);
  }

  static ChannelInputs edges(ChannelKit kit) {
    return kit.inputs()
        .without(Fitted.PULL_DOWN)
        .with(Term.RETURN_LIFT, 0)
        .with(Term.DRIVE_LEVEL, 5.2)
        .with(Term.DRIVE_LOW, 0.2)
        .with(Term.DRIVE_RESISTANCE, 30)
        .with(Term.GATE_RESISTOR, 220);
  }

  @Test
  void a_drive_at_the_plateau_or_a_low_level_at_the_threshold_never_gets_through() {
    double endless = Double.POSITIVE_INFINITY;
    assertEquals(endless, GateChecks.onSeconds(edges().with(Term.DRIVE_LEVEL, 3.2)));
    assertEquals(endless, GateChecks.offSeconds(edges().with(Term.DRIVE_LOW, 1.3)));
  }

  @Test
  void the_pull_down_lowers_the_resistance_that_charges_the_gate() {
    ChannelInputs in = edges().with(Term.PULL_DOWN, 1000).fitting(Fitted.PULL_DOWN);
    // off does not depend on the drive: 250 Ω beside 1000 Ω is 200 Ω, four fifths of 250 Ω
    assertEquals(0.8 * 2.247957e-6, GateChecks.offSeconds(in), 1e-11);
    ChannelInputs side = edges(TYPICAL.with("channels", "pull-down side=driver"));
    // 30 Ω beside 1000 Ω at the pin, and 220 Ω to the gate
    assertEquals(
        (30 * 1000 / 1030.0 + 220) / 250 * 2.247957e-6,
        GateChecks.offSeconds(side.with(Term.PULL_DOWN, 1000).fitting(Fitted.PULL_DOWN)),
        1e-11);
    ChannelInputs direct = edges().without(Fitted.GATE_RESISTOR);
    assertEquals(30.0 / 250 * 2.247957e-6, GateChecks.offSeconds(direct), 1e-11);
  }

  @Test
  void behind_a_pull_down_at_the_driver_the_gate_resistor_counts_as_well() {
    Datum remembered =
        Datum.of(Term.GATE_RESISTOR, 220, new Source(Source.Origin.MEMORY, "from memory"));
    ChannelInputs atGate = TYPICAL.inputs().with(remembered);
    ChannelInputs atDriver =
        TYPICAL.with("channels", "pull-down side=driver").inputs().with(remembered);
    ChannelInputs direct =
        atDriver.without(Fitted.GATE_RESISTOR).with(Datum.missing(Term.GATE_RESISTOR));
    assertEquals(Verdict.CARRIES, ChannelKit.check(atGate, CheckKind.GATE_OFF).verdict());
    assertEquals(Verdict.UNDECIDED, ChannelKit.check(atDriver, CheckKind.GATE_OFF).verdict());
    assertEquals(Verdict.CARRIES, ChannelKit.check(direct, CheckKind.GATE_OFF).verdict());
  }

  /** Both edges must fit into the shorter of pulse and pause; unstated, into a tenth. */
  @ParameterizedTest
  @CsvSource({"'',   0.2e-3", "25 %, 0.5e-3", "75 %, 0.5e-3", "90 %, 0.2e-3", "100 %, 1e-3"})
  void both_edges_fit_into_the_shorter_of_pulse_and_pause(String duty, double allowed) {
    ChannelKit pwm = TYPICAL.with("drivers", "PWM frequency=500 Hz").with("loads", "duty=" + duty);
    Check check = pwm.check(CheckKind.SWITCHING_TIME);
    assertEquals(allowed, check.allowedAmount(), 1e-12);
    assertEquals(GateChecks.edgesSeconds(pwm.inputs()), check.actualAmount(), 1e-15);
  }
}
