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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The typical diode, by hand: 2 A of 50 mH on 24 V, so 12 Ω, switched off once a second into 0.4 V
 * at the least; IFav 3 A up to 75 °C, 1.1 V, 40 K/W, TJ 150 °C; air of 40 °C.
 */
class DiodeChecksTest {
  private static final ChannelKit TYPICAL = ChannelKit.typical();

  /** (L/R)·(I − (V/R)·ln(1 + I·R/V)): 4.1667 ms · (2 A − 33.3 mA · ln 61). */
  private static final double COULOMBS = 0.05 / 12 * (2 - 0.4 / 12 * Math.log(61));

  private static ChannelInputs coil() {
    return TYPICAL.inputs().with(Term.SUPPLY, 24).with(Term.LOAD_CURRENT, 2);
  }

  private static ChannelInputs pwm() {
    return coil().fitting(Fitted.PWM).with(Term.PWM_FREQUENCY, 500);
  }

  private static void amounts(double actual, double allowed, ChannelInputs in, CheckKind kind) {
    Check check = ChannelKit.check(in, kind);
    assertEquals(actual, check.actualAmount(), 1e-9);
    assertEquals(allowed, check.allowedAmount(), 1e-9);
  }

  @Test
  void each_release_sends_the_coils_charge_through_the_diode() {
    amounts(COULOMBS, 3, coil(), CheckKind.DIODE_CURRENT);
    amounts(COULOMBS / 0.5, 3, coil().with(Term.PERIOD, 0.5), CheckKind.DIODE_CURRENT);
    amounts(2, 3, coil().with(Term.PERIOD, 1e-3), CheckKind.DIODE_CURRENT);
    amounts(2, 9.424777961, coil(), CheckKind.DIODE_PEAK);
    amounts(24, 160, coil(), CheckKind.DIODE_VOLTAGE);
    amounts(0.05 / 12 * Math.log(61), 0.9, coil(), CheckKind.RELEASE_TIME);
    amounts(40 + 1.1 * 40 * COULOMBS, 125, coil(), CheckKind.DIODE_TEMPERATURE);
  }

  @Test
  void under_pwm_the_diode_carries_in_every_pause() {
    amounts(1.5, 3, pwm().with(Term.DUTY, 25), CheckKind.DIODE_CURRENT);
    amounts(2, 3, pwm(), CheckKind.DIODE_CURRENT);
    amounts(40 + 1.1 * 40 * 1.5, 125, pwm().with(Term.DUTY, 25), CheckKind.DIODE_TEMPERATURE);
    amounts(50e-9, 20e-6, pwm(), CheckKind.DIODE_RECOVERY);
    assertFalse(ChannelFinding.of(pwm()).check(CheckKind.RELEASE_TIME).isPresent());
    assertFalse(ChannelFinding.of(coil()).check(CheckKind.DIODE_RECOVERY).isPresent());
  }

  /** 1 % of 1 ms and of 50 µs, against more than 500 ns, or 2 µs typical (EIC 1N4001, Rev. 05). */
  @ParameterizedTest
  @CsvSource({
    "1 kHz, '', UNDECIDED",
    "25 kHz, '', OVERLOADED",
    "4.9 kHz, 2000, UNDECIDED",
    "5.1 kHz, 2000, OVERLOADED",
  })
  void a_standard_rectifier_may_be_too_slow_for_pwm_but_is_never_promised_to_be_fast(
      String frequency, String typicalNanoseconds, Verdict verdict) {
    ChannelKit kit =
        ChannelKit.typical()
            .withoutDatasheet("T-DIODE", "trr")
            .datasheet("T-DIODE", "technology", "standard recovery", "", "", "")
            .with("drivers", "PWM frequency=" + frequency)
            .with("loads", "duty=50 %; on time=; period=");
    ChannelKit typical =
        typicalNanoseconds.isEmpty()
            ? kit
            : kit.line("T-DIODE", "trr", "", "", typicalNanoseconds, "", "ns", "invented");
    Check check = typical.check(CheckKind.DIODE_RECOVERY);
    assertEquals(verdict, check.verdict());
    assertEquals(
        verdict == Verdict.UNDECIDED, check.missing().toString().contains("fit a fast or a"));
  }

  /** A few milliwatts heat no body with leads by more than 500 K/W; one watt may. */
  @Test
  void where_no_way_to_the_air_is_stated_the_worst_there_is_may_still_do() {
    ChannelKit leads =
        ChannelKit.typical()
            .withoutDatasheet("T-DIODE", "RthJA")
            .withoutDatasheet("T-DIODE", "IFav")
            .datasheet("T-DIODE", "IFav", "TL=95C", "", "3", "A");
    // 50 mH/22.8 Ω · (1.105 A − 0.4 V/22.8 Ω · ln 64) is 2.26 mC a second; · 1.1 V · 500 K/W
    Check seldom = leads.check(CheckKind.DIODE_TEMPERATURE);
    assertEquals(Verdict.CARRIES, seldom.verdict());
    assertEquals(41.24, seldom.actualAmount(), 0.02);
    ChannelKit pwm =
        leads.with("drivers", "PWM frequency=500 Hz").with("loads", "duty=50 %; on time=; period=");
    Check often = pwm.check(CheckKind.DIODE_TEMPERATURE);
    assertEquals(Verdict.UNDECIDED, often.verdict(), "0.6 W · 500 K/W is more than it bears");
    assertTrue(often.missing().toString().contains("RthJA of T-DIODE"));
  }

  @ParameterizedTest
  @CsvSource({"40, 3", "75, 3", "90, 2.4", "100, 2", "150, 0", "160, 0"})
  void above_the_rated_air_the_rating_falls_to_nothing_at_the_junctions_limit(
      double celsius, double amps) {
    Check check = ChannelKit.check(coil().with(Term.AMBIENT, celsius), CheckKind.DIODE_CURRENT);
    assertEquals(amps, check.allowedAmount(), 1e-9, "3 A · (150 − TA)/(150 − 75)");
  }

  /** By hand: the leads at most as hot as the junction, 40 °C + 44 K/A · I; 3 A · (150 − TL)/75. */
  @ParameterizedTest
  @CsvSource({
    "50, 1, 2.64, CARRIES", // 84 °C
    "25, 1.5, 1.76, CARRIES", // 106 °C
    "5, 1.9, 1.056, OVERLOADED", // 123.6 °C: at the air's 40 °C it would bear 3 A
  })
  void a_rating_at_the_leads_temperature_is_held_to_the_leads(
      double duty, double actual, double allowed, Verdict verdict) {
    ChannelKit leads =
        TYPICAL
            .withoutDatasheet("T-DIODE", "IFav")
            .datasheet("T-DIODE", "IFav", "TL=75C", "", "3", "A");
    ChannelInputs in =
        leads
            .inputs()
            .with(Term.SUPPLY, 24)
            .with(Term.LOAD_CURRENT, 2)
            .fitting(Fitted.PWM)
            .with(Term.PWM_FREQUENCY, 500)
            .with(Term.DUTY, duty);
    amounts(actual, allowed, in, CheckKind.DIODE_CURRENT);
    assertEquals(verdict, ChannelKit.check(in, CheckKind.DIODE_CURRENT).verdict());
    Check unknown =
        ChannelKit.check(in.with(Datum.missing(Term.DIODE_RTH)), CheckKind.DIODE_CURRENT);
    assertEquals(Verdict.UNDECIDED, unknown.verdict());
  }

  /** 150 °C less 125 °C over VF·IFav would promise 7.6 K/W in free air, where 60 K/W is usual. */
  @ParameterizedTest
  @CsvSource({"TL=125C", "TC=125C", "Tmb=125C", "TT=125C"})
  void a_rating_at_a_cooled_case_promises_no_way_to_the_air(String condition) {
    ChannelInputs in =
        TYPICAL
            .withoutDatasheet("T-DIODE", "IFav")
            .withoutDatasheet("T-DIODE", "RthJA")
            .datasheet("T-DIODE", "IFav", condition, "", "3", "A")
            .with("drivers", "PWM frequency=500 Hz")
            .with("loads", "duty=50 %; on time=; period=")
            .inputs();
    assertFalse(in.knows(Term.DIODE_RTH));
    assertEquals(
        Verdict.UNDECIDED, ChannelKit.check(in, CheckKind.DIODE_TEMPERATURE).verdict(), condition);
    assertEquals(Verdict.UNDECIDED, ChannelKit.check(in, CheckKind.DIODE_CURRENT).verdict());
  }

  @Test
  void what_is_missing_may_pass_on_the_whole_current_and_is_named_where_that_fails() {
    for (Term term : List.of(Term.PERIOD, Term.INDUCTANCE)) {
      ChannelInputs in = coil().with(Datum.missing(term));
      amounts(2, 3, in, CheckKind.DIODE_CURRENT);
      assertEquals(Verdict.CARRIES, ChannelKit.check(in, CheckKind.DIODE_CURRENT).verdict());
      Check weak = ChannelKit.check(in.with(Term.DIODE_AVERAGE_RATING, 1), CheckKind.DIODE_CURRENT);
      assertEquals(Verdict.UNDECIDED, weak.verdict());
      assertEquals(List.of(Datum.missing(term).missing()), weak.missing());
      assertFalse(ChannelFinding.of(in).check(CheckKind.RELEASE_TIME).isPresent());
    }
    Check both =
        ChannelKit.check(
            coil()
                .with(Datum.missing(Term.PERIOD), Datum.missing(Term.INDUCTANCE))
                .with(Term.DIODE_AVERAGE_RATING, 1),
            CheckKind.DIODE_CURRENT);
    assertEquals(List.of(Datum.missing(Term.INDUCTANCE).missing()), both.missing());
    Check duty =
        ChannelKit.check(
            pwm().with(Datum.missing(Term.DUTY)).with(Term.DIODE_AVERAGE_RATING, 1),
            CheckKind.DIODE_CURRENT);
    assertEquals(List.of(Datum.missing(Term.DUTY).missing()), duty.missing());
    ChannelInputs always = coil().with(Datum.missing(Term.ON_TIME));
    assertFalse(ChannelFinding.of(always).check(CheckKind.RELEASE_TIME).isPresent());
    assertEquals(
        Verdict.UNDECIDED,
        ChannelKit.check(
                coil().with(Datum.missing(Term.DIODE_FORWARD)), CheckKind.DIODE_TEMPERATURE)
            .verdict());
  }

  @Test
  void a_diode_beside_a_load_without_coil_only_bears_the_rail() {
    ChannelFinding finding = TYPICAL.with("loads", "kind=resistive; inductance=").finding();
    assertTrue(finding.check(CheckKind.DIODE_VOLTAGE).isPresent());
    assertFalse(finding.check(CheckKind.DIODE_PEAK).isPresent());
    ChannelFinding none = TYPICAL.with("channels", "flyback diode=").finding();
    assertFalse(none.check(CheckKind.DIODE_VOLTAGE).isPresent());
  }

  /** 24 V and 5 % are 25.2 V; an ordinary diode's 200 V say nothing of where these break down. */
  @ParameterizedTest
  @CsvSource({
    // 0.8 · 28.5 V, the least of a Zener of 30 V within 5 %; and of 36 V
    "diode, VZ, 28.5, '', 22.8, OVERLOADED",
    "Zener diode, VZ, 34.2, '', 27.36, CARRIES",
    "Zener diode, VZ, '', 37.8, NaN, UNDECIDED", // no min
    "Zener diode, IR, '', 1, NaN, UNDECIDED",
    "suppressor diode, IR, '', 1, NaN, UNDECIDED",
    "'diode, TVS', IR, '', 1, NaN, UNDECIDED",
    "diode P6KE33A, IR, '', 1, NaN, UNDECIDED",
    "diode, VBR, 31.4, '', 25.12, OVERLOADED",
    "diode, VRWM, '', 33.3, 26.64, CARRIES",
    "diode, VZ, 300, '', 160, CARRIES", // and not more than its VRRM of 200 V
    "'flyback suppression diode, rectifier', IR, '', 1, 160, CARRIES"
  })
  void a_diode_that_is_made_to_break_down_is_held_to_where_it_does(
      String description, String symbol, String min, String max, double allowed, Verdict verdict) {
    Check check =
        TYPICAL
            .with("bom.D1", "description=" + description)
            .datasheet("T-DIODE", symbol, "", min, max, "V")
            .check(CheckKind.DIODE_VOLTAGE);
    assertEquals(25.2, check.actualAmount(), 1e-9);
    assertEquals(allowed, check.allowedAmount(), 1e-9);
    assertEquals(verdict, check.verdict());
  }

  @Test
  void a_zener_without_its_voltage_asks_for_that_and_not_for_vrrm() {
    Check check =
        TYPICAL
            .with("bom.D1", "description=Zener diode")
            .withoutDatasheet("T-DIODE", "VRRM")
            .check(CheckKind.DIODE_VOLTAGE);
    assertEquals(
        List.of(
            "VZ (of a Zener diode), VBR or VRWM (of a suppressor) of T-DIODE, from which on it"
                + " conducts backwards: write its min in datasheets.csv"),
        check.missing());
  }

  /** 1N4742A of the catalogue: VZ min 11.4 V, so a rail of 12 V conducts straight through it. */
  @Test
  void a_catalogue_zener_is_no_flyback_diode_of_its_own_voltage() {
    Check check =
        TYPICAL
            .with("bom.D1", "part type=1N4742A; description=")
            .with("rails", "voltage=12 V")
            .check(CheckKind.DIODE_VOLTAGE);
    assertEquals(0.8 * 11.4, check.allowedAmount(), 1e-9);
    assertEquals(Verdict.OVERLOADED, check.verdict());
  }

  /**
   * A coil of 5 H lets go for 1.7 s: 5/12 s · (2 A − 33.3 mA · ln 61) = 0.776 C, whether once a
   * second or once a minute; over the minute it would be 13 mA.
   */
  @ParameterizedTest
  @CsvSource({"0.5, 1.552475726", "1, 0.776237863", "60, 0.776237863"})
  void a_seldom_release_heats_the_diode_as_one_each_second(double period, double amps) {
    ChannelInputs slow = coil().with(Term.INDUCTANCE, 5).with(Term.PERIOD, period);
    amounts(amps, 3, slow, CheckKind.DIODE_CURRENT);
    amounts(40 + 1.1 * 40 * amps, 125, slow, CheckKind.DIODE_TEMPERATURE);
    ChannelInputs weak = slow.with(Term.DIODE_AVERAGE_RATING, 0.7).with(Term.DIODE_PEAK_RATING, 5);
    assertEquals(
        Verdict.OVERLOADED, ChannelKit.check(weak, CheckKind.DIODE_CURRENT).verdict(), "0.7 A");
  }

  /**
   * 2 A of PWM at 25 %, so 1.5 A in the diode on average: 1.1 V at 3 A make 66 K at 40 K/W. Where
   * 1.1 V are promised at 1.6 A only, VF at 2 A is at most 1.1 V · 2/1.6, and the rise 82.5 K; at 1
   * A, twice 1.1 V and 132 K.
   */
  @ParameterizedTest
  @CsvSource({
    "IF=3A, 40, 106, CARRIES",
    "IF=1.6A, 40, 122.5, CARRIES",
    "IF=1A, 40, 172, UNDECIDED",
    "IF=1A, 60, 126, OVERLOADED", // 1.1 V are too much already
    "'', 40, 106, CARRIES"
  })
  void a_forward_voltage_is_promised_up_to_its_own_current(
      String condition, double air, double celsius, Verdict verdict) {
    ChannelInputs in =
        TYPICAL
            .withoutDatasheet("T-DIODE", "VF")
            .datasheet("T-DIODE", "VF", condition, "", "1.1", "V")
            .inputs()
            .with(Term.SUPPLY, 24)
            .with(Term.LOAD_CURRENT, 2)
            .with(Term.AMBIENT, air)
            .fitting(Fitted.PWM)
            .with(Term.PWM_FREQUENCY, 500)
            .with(Term.DUTY, 25);
    amounts(celsius, 125, in, CheckKind.DIODE_TEMPERATURE);
    Check check = ChannelKit.check(in, CheckKind.DIODE_TEMPERATURE);
    assertEquals(verdict, check.verdict());
    assertEquals(
        verdict == Verdict.UNDECIDED
            ? List.of("VF of T-DIODE at IF of 2 A or more: write it in datasheets.csv")
            : List.of(),
        check.missing());
  }

  /** Rated 3 A at leads of 75 °C: at 122.5 °C 1.1 A are left of it, at 106 °C 1.76 A. */
  @Test
  void a_lead_warmed_by_more_forward_voltage_leaves_less_of_the_rating() {
    ChannelInputs in =
        TYPICAL
            .withoutDatasheet("T-DIODE", "VF")
            .datasheet("T-DIODE", "VF", "IF=1.6A", "", "1.1", "V")
            .withoutDatasheet("T-DIODE", "IFav")
            .datasheet("T-DIODE", "IFav", "TL=75C", "", "3", "A")
            .inputs()
            .with(Term.SUPPLY, 24)
            .with(Term.LOAD_CURRENT, 2)
            .fitting(Fitted.PWM)
            .with(Term.PWM_FREQUENCY, 500)
            .with(Term.DUTY, 25);
    amounts(1.5, 1.1, in, CheckKind.DIODE_CURRENT);
    assertEquals(Verdict.UNDECIDED, ChannelKit.check(in, CheckKind.DIODE_CURRENT).verdict());
  }

  /**
   * Half of 1.105 A through at most 0.95 V, as promised at 9.4 A, and 80 K/W (ST 1N582x, Ed. 3A)
   * heat it by 42.0 K; others state the way to the air by a typical value, which promises nothing.
   */
  @Test
  void the_maker_of_a_schottky_diode_tells_whether_its_heat_is_known_under_pwm() {
    ChannelKit pwm =
        TYPICAL
            .with("drivers", "PWM frequency=500 Hz")
            .with("loads", "duty=50 %; on time=; period=");
    Check named =
        pwm.with("bom.D1", "part type=1N5822; description=diode STMicroelectronics")
            .check(CheckKind.DIODE_TEMPERATURE);
    assertEquals(Verdict.CARRIES, named.verdict(), named.missing()::toString);
    assertEquals(40 + 0.5 * 1.10526 * 0.95 * 80, named.actualAmount(), 0.01);
    Check any =
        pwm.with("bom.D1", "part type=1N5822; description=diode Diodes Incorporated")
            .check(CheckKind.DIODE_TEMPERATURE);
    assertEquals(Verdict.UNDECIDED, any.verdict());
  }
}
