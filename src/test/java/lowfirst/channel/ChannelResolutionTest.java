package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.ChannelInputs.Switching;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.quantity.Source.Origin;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a channel is taken to be where its tables leave something out. */
class ChannelResolutionTest {
  private static final ChannelKit TYPICAL = ChannelKit.typical();
  private static final ChannelKit BARE = TYPICAL.with("channels", "MOSFET=");

  private static void spread(double low, double nominal, double high, ChannelInputs in, Term term) {
    assertEquals(low, in.low(term), 1e-9, term + " low");
    assertEquals(nominal, in.nominal(term), 1e-9, term + " nominal");
    assertEquals(high, in.high(term), 1e-9, term + " high");
  }

  @ParameterizedTest
  @CsvSource({
    "Darlington array,   DARLINGTON_ARRAY",
    "driver array,       DARLINGTON_ARRAY",
    "open collector,     DARLINGTON_ARRAY",
    "optocoupler,        OPTOCOUPLER",
    "constant current,   CURRENT_SINK",
    "LED current sink,   CURRENT_SINK",
    "bipolar,            BIPOLAR_TRANSISTOR",
    "transistor,         BIPOLAR_TRANSISTOR",
    "logic pin,          CURRENT_SINK",
  })
  void without_a_mosfet_the_driver_carries_the_load(String kind, Switching expected) {
    assertEquals(expected, BARE.with("drivers", "kind=" + kind).inputs().switching());
    assertEquals(Switching.MOSFET, TYPICAL.with("drivers", "kind=" + kind).inputs().switching());
  }

  @Test
  void without_driver_and_mosfet_a_mosfet_is_missed() {
    ChannelInputs in = BARE.with("channels", "driver=ghost").inputs();
    assertEquals(Switching.MOSFET, in.switching());
    for (Term term :
        List.of(Term.DRIVE_LEVEL, Term.DRIVE_CEILING, Term.DRIVE_RESISTANCE, Term.DRIVE_LIMIT)) {
      assertEquals("driver \"ghost\" of channel out 1: drivers.csv", in.datum(term).missing());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "high impedance, false, false",
    "'',             false, false",
    "low,            false, true",
    "pulled low,     false, true",
    "high,           true,  false"
  })
  void what_a_driver_does_at_reset_is_read_from_its_words(
      String words, boolean on, boolean driven) {
    ChannelInputs in = TYPICAL.with("drivers", "at reset=" + words).inputs();
    assertEquals(on, in.has(Fitted.ON_AT_RESET));
    assertEquals(driven, in.has(Fitted.DRIVEN_AT_RESET));
    ChannelInputs open = TYPICAL.with("drivers", "kind=open collector; at reset=" + words).inputs();
    assertEquals(on || !driven, open.has(Fitted.ON_AT_RESET), "its pull-up turns it on");
  }

  @Test
  void other_tables_may_write_a_name_in_capitals() {
    ChannelKit other =
        TYPICAL
            .with("channels", "board=Main; driver=PIN; load=Striker")
            .with("loads", "rail=POWER")
            .with("drivers", "supply=Logic");
    assertTrue(other.finding().carries(), () -> other.finding().limitedBy().missing().toString());
    ChannelKit two = other.with("rails.two", "rail=Power; voltage=12 V; tolerance=5 %");
    assertEquals(Verdict.UNDECIDED, two.finding().verdict(), "POWER may be power or Power");
    assertEquals(24, two.with("loads", "rail=power").inputs().nominal(Term.SUPPLY));
    assertEquals(12, two.with("loads", "rail=Power").inputs().nominal(Term.SUPPLY));
  }

  @Test
  void what_is_fitted_is_what_the_table_names() {
    ChannelInputs in = TYPICAL.inputs();
    for (Fitted there :
        List.of(Fitted.GATE_RESISTOR, Fitted.PULL_DOWN, Fitted.FLYBACK_DIODE, Fitted.FUSE)) {
      assertTrue(in.has(there), "" + there);
    }
    for (Fitted absent : List.of(Fitted.HEATSINK, Fitted.PWM, Fitted.OPTOCOUPLED_GATE)) {
      assertFalse(in.has(absent), "" + absent);
    }
    ChannelInputs other =
        TYPICAL
            .with("channels", "heatsink=8 K/W; gate resistor=; pull-down=; flyback diode=; fuse=")
            .with("drivers", "kind=optocoupler; PWM frequency=100 Hz")
            .inputs();
    for (Fitted there : List.of(Fitted.HEATSINK, Fitted.PWM, Fitted.OPTOCOUPLED_GATE)) {
      assertTrue(other.has(there), "" + there);
    }
    for (Fitted absent :
        List.of(Fitted.GATE_RESISTOR, Fitted.PULL_DOWN, Fitted.FLYBACK_DIODE, Fitted.FUSE)) {
      assertFalse(other.has(absent), "" + absent);
    }
    assertFalse(BARE.with("drivers", "kind=optocoupler").inputs().has(Fitted.OPTOCOUPLED_GATE));
  }

  @ParameterizedTest
  @CsvSource({
    "2x0.75 mm2, 0.75",
    "2 x 1.5 mm², 1.5",
    "'4×0,5', 0.5",
    "2 x AWG 18, 0.823",
    "2x, ",
    "2 x 2 x 0.5 mm2, ",
  })
  void a_cable_is_as_thick_as_one_of_its_cores(String wire, Double squareMillimetres) {
    ChannelInputs in = TYPICAL.with("channels", "wire=" + wire).inputs();
    assertEquals(squareMillimetres != null, in.knows(Term.WIRE_AREA));
    if (squareMillimetres != null) {
      assertEquals(squareMillimetres, in.low(Term.WIRE_AREA), 0.001);
    }
  }

  /** 10 V from a rail of 5 V are a slip; a level stated within the rail's reach stays. */
  @Test
  void a_driver_gives_no_more_than_its_supply() {
    ChannelKit slip = TYPICAL.with("drivers", "high level min=10 V");
    spread(4.75, 4.75, 4.75, slip.inputs(), Term.DRIVE_LEVEL);
    assertTrue(
        slip.inputs()
            .datum(Term.DRIVE_LEVEL)
            .source()
            .text()
            .startsWith("its supply gives no more"));
    spread(
        4.9, 4.9, 4.9, TYPICAL.with("drivers", "high level min=4.9 V").inputs(), Term.DRIVE_LEVEL);
    ChannelKit unknown = slip.with("drivers", "supply=");
    spread(10, 10, 10, unknown.inputs(), Term.DRIVE_LEVEL);
    assertNotEquals(Verdict.CARRIES, unknown.finding().verdict());
  }

  @Test
  void a_pulled_up_gate_gets_its_rail_less_what_the_stage_keeps() {
    ChannelKit open = TYPICAL.with("drivers", "kind=open collector; high level min=; pull-up=1k");
    spread(4.75, 5, 5.25, open.inputs(), Term.DRIVE_LEVEL);
    spread(1000, 1000, 1000, open.inputs(), Term.DRIVE_RESISTANCE);
    ChannelKit coupler =
        TYPICAL
            .with("drivers", "kind=optocoupler; part type=T-OPTO; high level min=")
            .datasheet("T-OPTO", "VCEsat", "IC=1mA, IF=20mA", "", "0.2", "V");
    spread(4.55, 4.8, 5.05, coupler.inputs(), Term.DRIVE_LEVEL);
    assertEquals(
        "high level min of driver pin: write it in drivers.csv",
        coupler.withoutDatasheet("T-OPTO", "VCEsat").inputs().datum(Term.DRIVE_LEVEL).missing());
    assertFalse(TYPICAL.with("drivers", "high level min=").inputs().knows(Term.DRIVE_LEVEL));
    assertEquals(
        "supply of driver pin: a rail's name, in drivers.csv",
        open.with("drivers", "supply=").inputs().datum(Term.DRIVE_CEILING).missing());
    assertFalse(open.with("drivers", "supply=").inputs().knows(Term.DRIVE_LEVEL));
    assertEquals(
        "pull-up of driver pin: write it in drivers.csv",
        open.with("drivers", "pull-up=").inputs().datum(Term.DRIVE_RESISTANCE).missing());
  }

  @Test
  void a_current_sink_keeps_what_its_load_leaves_of_the_rail() {
    ChannelKit sink =
        BARE.with("drivers", "kind=constant current sink; current limit=0.5 A")
            .with("loads", "kind=LED; inductance=; resistance=; current=0.3 A; power=4.5 W");
    // 25.2 V − 4.5 W/0.3 A
    assertEquals(10.2, sink.inputs().high(Term.SATURATION), 1e-9);
    assertEquals(0.5, sink.inputs().low(Term.DRAIN_CURRENT_RATING), 1e-9);
    assertEquals(
        25.2, sink.with("loads", "power=").inputs().high(Term.SATURATION), 1e-9, "all of it");
    assertEquals(
        0, sink.with("loads", "power=30 W").inputs().high(Term.SATURATION), 1e-9, "never less");
    assertFalse(sink.with("rails", "voltage=").inputs().knows(Term.SATURATION));
    ChannelKit rated =
        sink.with("drivers", "part type=T-SINK").datasheet("T-SINK", "IC", "", "", "0.4", "A");
    assertEquals(0.4, rated.inputs().low(Term.DRAIN_CURRENT_RATING), 1e-9, "its own sheet first");
  }

  @Test
  void what_nobody_states_is_assumed_and_said_so() {
    ChannelInputs in =
        TYPICAL
            .with("rails", "tolerance=")
            .with("loads", "tolerance=")
            .with("channels", "trace length=; trace copper=")
            .with("drivers", "source resistance=")
            .setting("ambient", "")
            .inputs();
    spread(21.6, 24, 26.4, in, Term.SUPPLY);
    spread(1 / 1.1, 1, 1 / 0.9, in, Term.LOAD_CURRENT);
    spread(0, 50, 100, in, Term.DRIVE_RESISTANCE);
    spread(50, 50, 50, in, Term.AMBIENT);
    spread(100, 100, 100, in, Term.TRACE_LENGTH);
    spread(0.035, 0.035, 0.035, in, Term.TRACE_COPPER);
    spread(60, 60, 60, in, Term.TEMPERATURE_RISE);
    spread(100_000, 100_000, 100_000, in, Term.SWITCH_ONS);
    spread(1, 1, 1, in, Term.WIRES_TOGETHER);
    for (Term term :
        List.of(Term.AMBIENT, Term.TRACE_LENGTH, Term.TEMPERATURE_RISE, Term.SWITCH_ONS)) {
      assertEquals(Origin.ASSUMED, in.datum(term).source().origin(), "" + term);
    }
    assertTrue(in.datum(Term.SUPPLY).source().toString().contains("±10 % assumed"));
    assertTrue(in.datum(Term.LOAD_CURRENT).source().toString().contains("±10 % assumed"));
  }

  /**
   * At 24 Ω less all of it nothing limits the current; less more than that it would be negative.
   */
  @ParameterizedTest
  @CsvSource({"100 %", "150 %"})
  void a_resistance_that_may_be_none_draws_an_unknown_current(String tolerance) {
    ChannelKit kit = TYPICAL.with("loads", "tolerance=" + tolerance);
    assertEquals(
        List.of(
            "tolerance of the resistance of load "
                + kit.kit().loads().get(0).name()
                + ", less than 100 %: write it in loads.csv"),
        LoadFindings.of(kit.kit()).rails().get(0).checks().get(0).missing());
    assertEquals(Verdict.UNDECIDED, kit.finding().verdict());
    ChannelInputs lamp = kit.with("loads", "kind=lamp; inductance=").inputs();
    assertFalse(lamp.knows(Term.INRUSH));
    ChannelInputs stated = kit.with("loads", "resistance=; current=1 A").inputs();
    assertEquals(0, stated.low(Term.LOAD_CURRENT), 1e-12);
  }

  @Test
  void what_is_stated_counts() {
    ChannelInputs in =
        TYPICAL
            .with("loads", "temperature rise=45 K; switch-ons=900; pull-in voltage=12 V")
            .with("loads", "max on time=2 s; rated duty=30 %; duty=25 %")
            .with("channels", "wires together=4; ambient=55 C; heatsink=8 K/W; trace copper=70 um")
            .inputs();
    spread(22.8, 24, 25.2, in, Term.SUPPLY);
    spread(1 / 1.05, 1, 1 / 0.95, in, Term.LOAD_CURRENT);
    spread(45, 45, 45, in, Term.TEMPERATURE_RISE);
    spread(900, 900, 900, in, Term.SWITCH_ONS);
    spread(12, 12, 12, in, Term.PULL_IN);
    spread(2, 2, 2, in, Term.MAX_ON_TIME);
    spread(30, 30, 30, in, Term.RATED_DUTY);
    spread(25, 25, 25, in, Term.DUTY);
    spread(4, 4, 4, in, Term.WIRES_TOGETHER);
    spread(55, 55, 55, in, Term.AMBIENT);
    spread(8, 8, 8, in, Term.HEATSINK);
    spread(50, 50, 50, in, Term.TRACE_LENGTH);
    spread(0.070, 0.070, 0.070, in, Term.TRACE_COPPER);
    spread(30, 30, 30, in, Term.DRIVE_RESISTANCE);
    spread(217.8, 220, 222.2, in, Term.GATE_RESISTOR);
  }

  @Test
  void what_is_missing_is_asked_for_where_it_belongs() {
    ChannelInputs in =
        TYPICAL
            .with("channels", "trace width=; contact rating=; wire=; wire length=")
            .with("drivers", "low level max=; current limit=; PWM frequency=")
            .with("loads", "inductance=; on time=; period=")
            .inputs();
    missing("trace width of channel out 1: write it in channels.csv", in, Term.TRACE_WIDTH);
    missing("contact rating of channel out 1: write it in channels.csv", in, Term.CONTACT_RATING);
    missing("wire of channel out 1, as 0.75 mm² or AWG 18: channels.csv", in, Term.WIRE_AREA);
    missing("wire length of channel out 1: write it in channels.csv", in, Term.WIRE_LENGTH);
    missing("low level max of driver pin: write it in drivers.csv", in, Term.DRIVE_LOW);
    missing("current limit of driver pin: write it in drivers.csv", in, Term.DRIVE_LIMIT);
    missing("PWM frequency of driver pin: write it in drivers.csv", in, Term.PWM_FREQUENCY);
    missing("inductance of load striker: write it in loads.csv", in, Term.INDUCTANCE);
    missing("on time of load striker: write it in loads.csv", in, Term.ON_TIME);
    missing("period of load striker: write it in loads.csv", in, Term.PERIOD);
    ChannelInputs nothing = TYPICAL.with("loads", "resistance=").with("rails", "voltage=").inputs();
    missing(
        "current, resistance or power of load striker: write it in loads.csv, and its rail's"
            + " voltage in rails.csv",
        nothing,
        Term.LOAD_CURRENT);
    ChannelInputs ghost = TYPICAL.with("channels", "load=ghost").inputs();
    missing("load \"ghost\" of channel out 1: loads.csv", ghost, Term.LOAD_CURRENT);
    ChannelInputs lost = TYPICAL.with("channels", "MOSFET=Q9; pull-down=R9").inputs();
    assertTrue(
        lost.datum(Term.DRAIN_RATING)
            .missing()
            .startsWith("VDS of Q9 (not in the BOM of board main)"),
        lost.datum(Term.DRAIN_RATING).missing());
    missing(
        "value of \"R9 (not in the BOM of board main)\": write it in the BOM",
        lost,
        Term.PULL_DOWN);
  }

  private static void missing(String expected, ChannelInputs in, Term term) {
    assertEquals(expected, in.datum(term).missing());
  }

  @Test
  void of_several_statements_about_a_load_the_largest_current_counts() {
    // 24 V: 24 Ω and 30 W are 1 A and 1.25 A
    ChannelKit both = TYPICAL.with("loads", "power=30 W");
    assertEquals(1.25, both.inputs().nominal(Term.LOAD_CURRENT), 1e-9);
    assertEquals(1, TYPICAL.with("loads", "power=12 W").inputs().nominal(Term.LOAD_CURRENT), 1e-9);
    assertEquals(2, both.with("loads", "current=2 A").inputs().nominal(Term.LOAD_CURRENT), 1e-9);
    ChannelKit cold = TYPICAL.with("loads", "kind=lamp; inductance=; current=0.5 A");
    assertEquals(
        0.5, cold.inputs().nominal(Term.LOAD_CURRENT), 1e-9, "a lamp's resistance is a cold one");
    assertEquals(
        1,
        cold.with("loads", "current=").inputs().nominal(Term.LOAD_CURRENT),
        1e-9,
        "and counts where nothing else is stated");
  }

  @ParameterizedTest
  @CsvSource({
    "lamp,       7.5, 0.05",
    "motor,      5,   1",
    "capacitive, 20,  0.01",
    "relay,      ,    0.01",
  })
  void an_inrush_that_is_not_stated_is_a_multiple_for_a_while(
      String kind, Double amps, double seconds) {
    ChannelInputs in =
        TYPICAL.with("loads", "kind=" + kind + "; resistance=; current=0.5 A").inputs();
    assertEquals(seconds, in.high(Term.INRUSH_TIME), 1e-12);
    if (amps == null) {
      assertFalse(in.knows(Term.INRUSH));
    } else {
      spread(0.95 * amps, amps, 1.05 * amps, in, Term.INRUSH);
    }
    ChannelInputs stated =
        TYPICAL.with("loads", "kind=" + kind + "; inrush=3 A; inrush time=7 ms").inputs();
    spread(3, 3, 3, stated, Term.INRUSH);
    spread(0.007, 0.007, 0.007, stated, Term.INRUSH_TIME);
  }

  @Test
  void the_inrush_of_a_motor_of_unknown_current_lacks_what_its_current_lacks() {
    ChannelInputs in = TYPICAL.with("loads", "kind=motor; resistance=").inputs();
    missing("current, resistance or power of load striker: write it in loads.csv", in, Term.INRUSH);
  }

  @Test
  void a_cold_resistance_on_a_rail_of_unknown_voltage_tells_no_inrush() {
    ChannelInputs in =
        TYPICAL
            .with("loads", "kind=lamp; inductance=; resistance=2 Ohm; current=0.5 A")
            .with("rails", "voltage=")
            .inputs();
    assertEquals(7.5, in.nominal(Term.INRUSH), 1e-9, "15 times the running current then");
  }

  @Test
  void an_led_string_draws_four_times_as_much_more_as_its_rail_has_more() {
    ChannelInputs led =
        TYPICAL.with("loads", "kind=LED; inductance=; resistance=; current=0.5 A").inputs();
    // 0.5 A · 1.05 · (1 + 4 · 5 %)
    assertEquals(0.5 * 1.05 * 1.2, led.loadAmps(), 1e-9);
  }

  /** A part that the BOM leaves out, or may, protects nothing and switches nothing. */
  @ParameterizedTest
  @CsvSource({"Q1", "R1", "R2", "D1", "F1"})
  void a_part_that_is_not_fitted_for_certain_lets_nothing_pass(String designator) {
    assertTrue(TYPICAL.finding().carries());
    ChannelFinding without = TYPICAL.with("bom." + designator, "fitted=no").finding();
    assertEquals(Verdict.UNDECIDED, without.verdict());
    assertTrue(
        missing(without)
            .contains(
                designator
                    + " is not fitted in the BOM of board main: fit it there, or take it out of"
                    + " channels.csv"));
    ChannelFinding perhaps = TYPICAL.with("bom." + designator, "fitted=optional").finding();
    assertEquals(Verdict.UNDECIDED, perhaps.verdict());
    assertTrue(
        missing(perhaps)
            .contains(
                designator
                    + " is optional in the BOM of board main: write there whether it is fitted"));
    assertTrue(TYPICAL.with("bom." + designator, "fitted=yes").finding().carries());
  }

  @Test
  void a_load_of_known_resistance_asks_for_its_rail_and_not_for_its_current() {
    ChannelInputs astray = TYPICAL.with("loads", "kind=motor; rail=").inputs();
    String rail = "rail of load striker: write it in loads.csv";
    assertEquals(rail, astray.datum(Term.LOAD_CURRENT).missing());
    assertEquals(rail, astray.datum(Term.INRUSH).missing());
    ChannelInputs volts = TYPICAL.with("rails", "voltage=").inputs();
    assertEquals("voltage of rail power: rails.csv", volts.datum(Term.LOAD_CURRENT).missing());
    ChannelInputs bare = TYPICAL.with("loads", "rail=; resistance=").inputs();
    assertTrue(
        bare.datum(Term.LOAD_CURRENT)
            .missing()
            .startsWith("current, resistance or power of load striker: write it in loads.csv"));
  }

  private static List<String> missing(ChannelFinding finding) {
    return finding.checks().stream().flatMap(check -> check.missing().stream()).toList();
  }
}
