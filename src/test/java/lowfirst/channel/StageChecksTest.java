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
import org.junit.jupiter.api.Test;

/** Drivers that carry the load themselves, by hand. */
class StageChecksTest {
  private static final ChannelKit ARRAY = ChannelKit.array();

  /**
   * 5 V and 5 % over 220 Ω less 1 %, and over 10 kΩ less 1 %, are 24.6 mA, for as long as it is on.
   */
  @Test
  void a_base_draws_no_more_than_its_pin_delivers() {
    ChannelKit transistor =
        ChannelKit.typical()
            .with("bom.Q1", "part type=2N3904; description=transistor NPN onsemi")
            .with("loads", "kind=resistive; inductance=; resistance=; current=30 mA");
    Check check = transistor.check(CheckKind.GATE_DRIVE_CURRENT);
    assertEquals(5.25 / 217.8 + 5.25 / 9900, check.actualAmount(), 1e-9);
    assertEquals(Verdict.CARRIES, check.verdict());
    ChannelKit weak = transistor.with("drivers", "current limit=20 mA");
    assertEquals(Verdict.OVERLOADED, weak.check(CheckKind.GATE_DRIVE_CURRENT).verdict());
    ChannelKit unknown = transistor.with("drivers", "current limit=");
    assertEquals(Verdict.UNDECIDED, unknown.check(CheckKind.GATE_DRIVE_CURRENT).verdict());
  }

  private static final ChannelKit TRANSISTOR =
      ChannelKit.typical()
          .with("bom.Q1", "part type=2N3904; description=transistor NPN onsemi")
          .with("loads", "kind=resistive; inductance=; resistance=; current=30 mA");
  private static final ChannelKit COUPLER =
      ChannelKit.typical()
          .with("channels", "MOSFET=; gate resistor=; pull-down=")
          .with("drivers", "kind=optocoupler; part type=T-OPTO; input current=10 mA")
          .with("loads", "kind=resistive; inductance=; resistance=; current=1 mA; tolerance=1 %")
          .datasheet("T-OPTO", "VCEsat", "IC=1mA, IF=20mA", "", "0.2", "V");

  private static void amounts(double actual, double allowed, ChannelInputs in, CheckKind kind) {
    Check check = ChannelKit.check(in, kind);
    assertEquals(actual, check.actualAmount(), 1e-9);
    assertEquals(allowed, check.allowedAmount(), 1e-9);
  }

  private static boolean has(ChannelKit kit, CheckKind kind) {
    return kit.finding().check(kind).isPresent();
  }

  /** 25.2 V times 0.1326 A for 2 µs at 20 kHz: 66.8 mW on a coil, a third of it without. */
  @Test
  void pwm_heats_a_saturated_stage_at_every_edge() {
    double worst = 0.12 * 1.05 / 0.95;
    ChannelKit pwm =
        ARRAY
            .with("drivers", "PWM frequency=20 kHz")
            .datasheet("T-ARRAY", "tsw", "", "", "2", "us");
    double edges = 0.5 * 25.2 * worst * 2e-6 * 20e3;
    amounts(40 + 63 * (1.6 * worst + edges), 125, pwm.inputs(), CheckKind.STAGE_TEMPERATURE);
    ChannelKit lamp = pwm.with("loads", "kind=resistive; inductance=");
    amounts(40 + 63 * (1.6 * worst + edges / 3), 125, lamp.inputs(), CheckKind.STAGE_TEMPERATURE);
    Check unknown = pwm.withoutDatasheet("T-ARRAY", "tsw").check(CheckKind.STAGE_TEMPERATURE);
    assertEquals(Verdict.UNDECIDED, unknown.verdict());
    assertEquals(
        java.util.List.of("tsw of T-ARRAY: write it in datasheets.csv"), unknown.missing());
    assertEquals(Verdict.CARRIES, ARRAY.check(CheckKind.STAGE_TEMPERATURE).verdict());
  }

  @Test
  void all_outputs_of_an_array_heat_one_package_and_share_one_pin() {
    // 24 V/200 Ω, 5 % more of one and less of the other
    double worst = 0.12 * 1.05 / 0.95;
    ChannelInputs in = ARRAY.inputs().with(Term.OTHERS_ON_STAGE, 0.3);
    amounts(worst, 0.5, in, CheckKind.STAGE_CURRENT);
    amounts(0.3 + worst, 2.5, in, CheckKind.STAGE_TOTAL);
    amounts(40 + 63 * 1.6 * (0.3 + worst), 125, in, CheckKind.STAGE_TEMPERATURE);
    amounts(25.2 + 1.1, 40, in, CheckKind.STAGE_VOLTAGE);
  }

  /** One output may send its 0.5 A through the common pin, so that much the pin bears. */
  @Test
  void without_a_rating_of_all_outputs_that_of_one_is_sure() {
    ChannelInputs in = ARRAY.withoutDatasheet("T-ARRAY", "ICtotal").inputs();
    double worst = 0.12 * 1.05 / 0.95;
    amounts(0.3 + worst, 0.5, in.with(Term.OTHERS_ON_STAGE, 0.3), CheckKind.STAGE_TOTAL);
    Check more =
        ChannelFinding.of(in.with(Term.OTHERS_ON_STAGE, 0.4))
            .check(CheckKind.STAGE_TOTAL)
            .orElseThrow();
    assertEquals(Verdict.UNDECIDED, more.verdict(), "it may bear more");
    assertEquals(List.of("ICtotal of T-ARRAY: write it in datasheets.csv"), more.missing());
  }

  /** TI SLRS027M: the clamp diodes bear 500 mA and 50 V as each output does, in air of 25 °C. */
  @Test
  void the_clamp_diodes_of_an_array_stand_what_its_outputs_do() {
    ChannelKit clamped =
        ARRAY
            .with(
                "bom.U1",
                "designators=U1; quantity=1; part type=T-ARRAY; description=Darlington driver array")
            .with("channels", "flyback diode=U1")
            .datasheet("T-ARRAY", "VF", "IF=350mA", "", "2", "V");
    double worst = 0.12 * 1.05 / 0.95;
    ChannelInputs in = clamped.inputs();
    amounts(25.2, 40, in, CheckKind.DIODE_VOLTAGE);
    amounts(worst, 0.5, in, CheckKind.DIODE_PEAK);
    // in air of 40 °C 110 K of 125 K are left of it
    assertEquals(
        0.5 * (150 - 40) / (150 - 25),
        ChannelKit.check(in, CheckKind.DIODE_CURRENT).allowedAmount(),
        1e-9);
  }

  /** 24 V/60 Ω, 5 % more and 5 % less of it, are 442 mA; VCEsat is promised at 350 mA. */
  @Test
  void beyond_the_current_of_its_vcesat_nothing_that_rests_on_it_passes() {
    double worst = 0.4 * 1.05 / 0.95;
    ChannelKit more = ARRAY.with("loads", "resistance=60 Ohm; pull-in voltage=10 V");
    for (CheckKind kind : List.of(CheckKind.STAGE_TEMPERATURE, CheckKind.PULL_IN)) {
      Check open = more.check(kind);
      assertEquals(Verdict.UNDECIDED, open.verdict());
      assertEquals(
          List.of("VCEsat of T-ARRAY at IC of 442 mA or more: write it in datasheets.csv"),
          open.missing());
    }
    ChannelKit stated = more.datasheet("T-ARRAY", "VCEsat", "IC=500mA, IB=500uA", "", "2", "V");
    amounts(40 + 63 * 2 * worst, 125, stated.inputs(), CheckKind.STAGE_TEMPERATURE);
    assertEquals(Verdict.CARRIES, stated.check(CheckKind.STAGE_TEMPERATURE).verdict());
    ChannelKit hot = more.setting("ambient", "90 C");
    assertEquals(
        Verdict.OVERLOADED,
        hot.check(CheckKind.STAGE_TEMPERATURE).verdict(),
        "134.6 °C with the 1.6 V of 350 mA already");
    ChannelKit transistor = TRANSISTOR.with("loads", "current=50 mA");
    assertFalse(transistor.check(CheckKind.FORCED_GAIN).verdict() == Verdict.CARRIES);
  }

  @Test
  void each_kind_of_stage_gets_its_own_checks() {
    assertTrue(has(ARRAY, CheckKind.STAGE_TOTAL));
    assertFalse(has(ARRAY, CheckKind.FORCED_GAIN) || has(ARRAY, CheckKind.OPTO_CURRENT));
    assertTrue(has(TRANSISTOR, CheckKind.FORCED_GAIN));
    assertFalse(has(TRANSISTOR, CheckKind.STAGE_TOTAL) || has(TRANSISTOR, CheckKind.OPTO_CURRENT));
    assertTrue(has(COUPLER, CheckKind.OPTO_CURRENT));
    assertFalse(has(COUPLER, CheckKind.STAGE_TOTAL) || has(COUPLER, CheckKind.FORCED_GAIN));
  }

  @Test
  void an_open_coil_has_no_bound_to_its_voltage() {
    ChannelKit open = ARRAY.with("channels", "flyback diode=");
    Check check = open.check(CheckKind.STAGE_VOLTAGE);
    assertEquals(Double.POSITIVE_INFINITY, check.actualAmount());
    assertEquals(Verdict.OVERLOADED, check.verdict());
    ChannelKit resistive = open.with("loads", "kind=resistive; inductance=");
    amounts(25.2, 40, resistive.inputs(), CheckKind.STAGE_VOLTAGE);
  }

  @Test
  void the_base_gets_what_drive_ground_and_pull_down_leave() {
    ChannelInputs in = TRANSISTOR.inputs().with(Term.BASE_VOLTAGE, 0.9).with(Term.RETURN_LIFT, 0.1);
    // (4.7 − 0.1 − 0.9)/(30 + 222.2) − 0.9/9900
    assertEquals(3.7 / 252.2 - 0.9 / 9900, StageChecks.baseAmps(in), 1e-9);
    assertEquals(3.7 / 252.2, StageChecks.baseAmps(in.without(Fitted.PULL_DOWN)), 1e-9);
    assertEquals(
        3.7 / 30 - 0.9 / 9900, StageChecks.baseAmps(in.without(Fitted.GATE_RESISTOR)), 1e-9);
    assertEquals(0, StageChecks.baseAmps(in.with(Term.DRIVE_LEVEL, 0.8)), "never below nothing");
    // 30 mA and 5 % twice over that base current; the published gain is 10
    amounts(0.030 * 1.05 * 1.05 / (3.7 / 252.2 - 0.9 / 9900), 10, in, CheckKind.FORCED_GAIN);
  }

  @Test
  void what_drives_a_base_is_named_where_it_is_missing_and_not_where_it_is_not_fitted() {
    ChannelInputs in =
        TRANSISTOR.inputs().with(Datum.missing(Term.GATE_RESISTOR), Datum.missing(Term.PULL_DOWN));
    assertEquals(
        List.of(
            Datum.missing(Term.GATE_RESISTOR).missing(), Datum.missing(Term.PULL_DOWN).missing()),
        ChannelKit.check(in, CheckKind.FORCED_GAIN).missing());
    ChannelInputs bare = in.without(Fitted.GATE_RESISTOR).without(Fitted.PULL_DOWN);
    assertEquals(List.of(), ChannelKit.check(bare, CheckKind.FORCED_GAIN).missing());
    ChannelInputs lifted = bare.with(Datum.missing(Term.RETURN_LIFT));
    assertEquals(
        List.of(Datum.missing(Term.RETURN_LIFT).missing()),
        ChannelKit.check(lifted, CheckKind.FORCED_GAIN).missing());
  }

  @Test
  void an_optocoupler_carries_as_much_as_its_saturation_is_promised_for() {
    // 1 mA and 1 % on a rail of 5 % more; 10 mA · (1 mA/20 mA)
    amounts(0.001 * 1.01 * 1.05, 0.0005, COUPLER.inputs(), CheckKind.OPTO_CURRENT);
  }

  @Test
  void an_optocoupler_at_a_gate_feeds_the_pull_down_alone() {
    ChannelKit gate =
        ChannelKit.typical()
            .with("drivers", "kind=optocoupler; part type=T-OPTO; input current=10 mA")
            .datasheet("T-OPTO", "VCEsat", "IC=1mA, IF=20mA", "", "0.2", "V");
    amounts(5.25 / 9900, 0.0005, gate.inputs(), CheckKind.OPTO_CURRENT);
    Check unpromised = gate.check(CheckKind.OPTO_CURRENT);
    assertEquals(Verdict.UNDECIDED, unpromised.verdict());
    assertTrue(unpromised.missing().toString().contains("CTR min of T-OPTO"));
    amounts(0, 0.0005, gate.inputs().without(Fitted.PULL_DOWN), CheckKind.OPTO_CURRENT);
    assertFalse(has(ChannelKit.typical(), CheckKind.OPTO_CURRENT));
  }

  /** 8 nC and 14 nC leave through 10.1 kΩ: from 2.4 V on, against 0.3 V, down to 1.2 V. */
  @Test
  void what_an_optocoupler_charged_only_the_pull_down_discharges() {
    ChannelKit gate =
        ChannelKit.typical()
            .with("drivers", "kind=optocoupler; part type=T-OPTO; input current=10 mA")
            .datasheet("T-OPTO", "VCEsat", "IC=1mA, IF=20mA", "", "0.2", "V");
    double seconds = 10100 * (8e-9 / 2.4 * Math.log(2.1 / 0.9) + 14e-9 / 2.1);
    assertEquals(seconds, GateChecks.offSeconds(gate.inputs()), 1e-12);
    ChannelKit side = gate.with("channels", "pull-down side=driver");
    assertEquals(seconds * 10322.2 / 10100, GateChecks.offSeconds(side.inputs()), 1e-12);
    ChannelInputs none = gate.inputs().without(Fitted.PULL_DOWN);
    assertEquals(Double.POSITIVE_INFINITY, GateChecks.offSeconds(none));
    // 98.9 µs both ways, of 100 µs at 1 kHz and 10 % and of 50 µs at 2 kHz
    ChannelKit slow = gate.with("drivers", "PWM frequency=1 kHz");
    assertEquals(Verdict.UNDECIDED, slow.check(CheckKind.SWITCHING_TIME).verdict());
    String missing = slow.check(CheckKind.SWITCHING_TIME).missing().toString();
    assertTrue(missing.contains("optocoupler itself"), missing);
    ChannelKit fast = gate.with("drivers", "PWM frequency=2 kHz");
    assertEquals(Verdict.OVERLOADED, fast.check(CheckKind.SWITCHING_TIME).verdict());
  }
}
