package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.Netlist.Ladder;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.formula.Avalanche;
import lowfirst.channel.formula.CoilDecay;
import lowfirst.channel.formula.OnResistance;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * A circuit simulator as referee: over forty channels are simulated, and what we compute must
 * agree. Currents, levels, decay and energy within 2 %, switching times within 20 %, junction
 * temperature within 2 K.
 */
class RefereeIT {
  private static final double SMALL = 0.02;
  private static final double EDGES = 0.20;
  private static final double KELVIN = 2;
  private static final double CASE_SECONDS = 10;

  private static final double[] RAILS = {5, 12, 24, 48};
  private static final double[] OHMS = {24, 6, 60, 12, 150};
  private static final double[] HENRIES = {50e-3, 5e-3, 300e-3};
  private static final String[] GATE_OHMS = {"220R", "1k", "47R", "470R", "100R"};
  private static final String[] PULL_DOWNS = {"10k", "47k", "4k7"};
  private static final String[] SIDES = {"gate", "driver"};
  private static final double[] DRIVES = {5, 10, 4.7};
  private static final double[] FORWARD = {1.1, 0.6, 0.9};
  private static final double[] AIR = {25, 40, 60, 0};

  /** One channel before the referee. */
  private record Case(String name, ChannelInputs in) {}

  @BeforeAll
  static void the_referee_is_there() {
    Simulator.needed();
  }

  private static List<Case> cases() {
    var cases = new ArrayList<Case>();
    for (int i = 0; i < 40; i++) {
      cases.add(plain(i));
    }
    ChannelKit typical = kit(24, 24, 50e-3, "220R", "10k", "gate", 5, 1.1, 40);
    cases.add(of("no pull-down", typical.with("channels", "pull-down=")));
    cases.add(
        of(
            "slow gate",
            typical.with("bom.R1", "value=10k").with("channels", "pull-down side=driver")));
    cases.add(of("no gate resistor", typical.with("channels", "gate resistor=")));
    cases.add(
        of(
            "heavy divider",
            typical.with("bom.R2", "value=1k").with("drivers", "high level min=9 V")));
    cases.add(of("weak driver", typical.with("drivers", "source resistance=2 kOhm")));
    cases.add(of("long thin wire", typical.with("channels", "wire=AWG 26; wire length=10 m")));
    cases.add(of("lifted ground", typical.with("rails", "return wire=AWG 24; return length=1 m")));
    cases.add(of("large coil", typical.with("loads", "inductance=5 H")));
    cases.add(of("small coil", typical.with("loads", "inductance=100 uH")));
    cases.add(
        of(
            "heatsink",
            typical.with("channels", "heatsink=8 K/W").with("loads", "resistance=4 Ohm")));
    cases.add(of("near runaway", typical.with("loads", "resistance=5.4 Ohm; on time=; period=")));
    return cases;
  }

  private static Case of(String name, ChannelKit kit) {
    return new Case(name, kit.inputs().atNominal());
  }

  private static Case plain(int i) {
    double volts = RAILS[i % RAILS.length];
    double ohms = OHMS[i % OHMS.length] * (volts >= 48 ? 2 : 1);
    ChannelKit kit =
        kit(
            volts,
            ohms,
            HENRIES[i % HENRIES.length],
            GATE_OHMS[i % GATE_OHMS.length],
            PULL_DOWNS[i % PULL_DOWNS.length],
            SIDES[i % SIDES.length],
            DRIVES[(i / 2) % DRIVES.length],
            FORWARD[i % FORWARD.length],
            AIR[(i / 3) % AIR.length]);
    return of(String.format(Locale.ROOT, "channel %d: %.0f V, %.0f Ω", i + 1, volts, ohms), kit);
  }

  private static ChannelKit kit(
      double volts,
      double ohms,
      double henries,
      String gate,
      String pullDown,
      String side,
      double drive,
      double forward,
      double air) {
    return ChannelKit.typical()
        .with("rails", text("voltage=%f V", volts))
        .with("loads", text("resistance=%f Ohm; inductance=%f H", ohms, henries))
        .with("bom.R1", "value=" + gate)
        .with("bom.R2", "value=" + pullDown)
        .with("channels", "pull-down side=" + side)
        .with("drivers", text("high level min=%f V; supply=", drive))
        .withoutDatasheet("T-DIODE", "VF")
        .datasheet("T-DIODE", "VF", "IF=3A", "", text("%f", forward), "V")
        .setting("ambient", text("%f C", air))
        .datasheet("T-FET", "Rth1", "", "", "0.3", "K/W")
        .datasheet("T-FET", "tau1", "", "", "0.0003", "s")
        .datasheet("T-FET", "Rth2", "", "", "0.7", "K/W")
        .datasheet("T-FET", "tau2", "", "", "0.004", "s")
        .datasheet("T-FET", "Rth3", "", "", "0.5", "K/W")
        .datasheet("T-FET", "tau3", "", "", "0.03", "s");
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  private static Stream<DynamicTest> each(Consumer<ChannelInputs> judged) {
    return cases().stream()
        .map(c -> DynamicTest.dynamicTest(c.name(), () -> judged.accept(c.in())));
  }

  private static void near(double ours, double simulated, double share, String what) {
    assertEquals(simulated, ours, share * Math.abs(simulated), what);
  }

  @TestFactory
  Stream<DynamicTest> gate_level_and_on_current() {
    return each(
        in -> {
          Map<String, Double> found = Simulator.run(Netlist.on(in));
          near(in.gateVolts(), found.get("v(g)") - found.get("v(s)"), SMALL, "gate to source");
          near(OnCurrent.amperes(in), found.get("i(vs)"), SMALL, "on-current");
          assertTrue(in.loadAmps() >= found.get("i(vs)"), "the worst case is at or above it");
        });
  }

  @TestFactory
  Stream<DynamicTest> switching_times() {
    return each(
        in -> {
          double on = GateChecks.onSeconds(in);
          double off = GateChecks.offSeconds(in);
          Map<String, Double> found = Simulator.run(Netlist.edges(in, on, off));
          near(on, found.get("ton"), EDGES, "turn-on");
          near(off, found.get("toff"), EDGES, "turn-off");
        });
  }

  @TestFactory
  Stream<DynamicTest> coil_decay_and_diode_energy() {
    return each(
        in -> {
          CoilDecay coil = DiodeChecks.slowestDecay(in);
          double seconds = coil.seconds();
          Map<String, Double> found = Simulator.run(Netlist.decay(coil, coil.volts(), seconds));
          double scale = coil.amperes();
          assertEquals(found.get("i25"), coil.amperesAfter(0.25 * seconds), SMALL * scale);
          assertEquals(found.get("i50"), coil.amperesAfter(0.5 * seconds), SMALL * scale);
          near(coil.coulombs(), found.get("charge"), SMALL, "charge through the diode");
          near(
              coil.clampJoules(), coil.volts() * found.get("charge"), SMALL, "energy in the diode");
          assertEquals(
              0.01 * scale, coil.amperesAfter(found.get("gone")), SMALL * scale, "release");
        });
  }

  @TestFactory
  Stream<DynamicTest> a_zener_and_a_resistor_in_series_hasten_the_release_as_said() {
    return each(
        in -> {
          CoilDecay plain = DiodeChecks.slowestDecay(in);
          for (CoilRelease way : CoilRelease.of(in)) {
            double value = way.value().map(v -> v.asDouble()).orElse(0.0);
            double zener = way.way() == CoilRelease.Way.ZENER ? value : 0;
            double ohms = way.way() == CoilRelease.Way.RESISTOR ? value : 0;
            released(in, way, plain, zener, ohms);
          }
          assertEquals(3, CoilRelease.of(in).size(), "there is room for both");
        });
  }

  /** The slow corner against its circuit, and the drain's highest voltage against its own. */
  private static void released(
      ChannelInputs in, CoilRelease way, CoilDecay plain, double zener, double ohms) {
    double low = 1 - CoilRelease.TOLERANCE;
    double high = 1 + CoilRelease.TOLERANCE;
    CoilDecay slow = plain.clampedBy(plain.volts() + low * zener).withSeries(low * ohms);
    Map<String, Double> found =
        Simulator.run(
            Netlist.release(plain, in.supplyHigh(), low * zener, low * ohms, way.seconds()));
    near(slow.secondsTo(0.5), found.get("half"), SMALL, way.way() + ": half the current");
    near(slow.secondsTo(0.01), found.get("gone"), SMALL, way.way() + ": the current gone");
    assertTrue(way.seconds() >= found.get("gone"), "what is said is the end of it");
    double forward = in.high(Term.DIODE_FORWARD);
    Map<String, Double> worst =
        Simulator.run(
            Netlist.release(
                plain.clampedBy(forward),
                in.supplyHigh(),
                high * zener,
                high * ohms,
                way.seconds()));
    near(way.drainVolts(), worst.get("peak"), SMALL, way.way() + ": the drain");
  }

  @TestFactory
  Stream<DynamicTest> avalanche_energy() {
    return each(
        in -> {
          double supply = in.nominal(Term.SUPPLY);
          double breakdown = in.nominal(Term.DRAIN_RATING);
          double amps = in.loadAmps();
          double ohms = supply / amps;
          double henries = in.nominal(Term.INDUCTANCE);
          var coil = new CoilDecay(henries, ohms, amps, breakdown - supply);
          Map<String, Double> found =
              Simulator.run(Netlist.decay(coil, coil.volts(), coil.seconds()));
          double simulated = breakdown * found.get("charge");
          near(breakdown * coil.coulombs(), simulated, SMALL, "with the coil's resistance");
          assertTrue(
              Avalanche.joules(henries, amps, breakdown, supply) >= simulated,
              "what a check takes is at or above it");
        });
  }

  @TestFactory
  Stream<DynamicTest> junction_temperature_held_on() {
    return each(
        pulsed -> {
          ChannelInputs in = pulsed.with(Datum.missing(Term.ON_TIME), Datum.missing(Term.PERIOD));
          OnResistance.Line line = in.onResistance().earned(in.gateVolts(), in.loadAmps());
          double ours = SwitchChecks.junctionCelsius(in, line);
          double watts = in.loadAmps() * in.loadAmps() * line.maxOhms();
          Ladder ladder = ladder(in, 0, 0);
          Map<String, Double> found =
              Simulator.run(
                  Netlist.heat(
                      in, watts, SwitchChecks.switchingWatts(in), ladder, 40 * CASE_SECONDS));
          if (ours > 300) {
            assertTrue(found.get("last") > 200, "it runs away for the referee too: " + found);
          } else {
            assertEquals(found.get("last"), ours, KELVIN);
          }
        });
  }

  @TestFactory
  Stream<DynamicTest> junction_temperature_in_pulses() {
    return cases().stream()
        .filter(c -> c.in().loadAmps() > 1.5)
        .map(c -> DynamicTest.dynamicTest(c.name(), () -> pulses(c.in())));
  }

  private static void pulses(ChannelInputs channel) {
    ChannelInputs in = channel.with(Term.ON_TIME, 0.05).with(Term.PERIOD, 0.4);
    OnResistance.Line line = in.onResistance().earned(in.gateVolts(), in.loadAmps());
    double watts = in.loadAmps() * in.loadAmps() * line.maxOhms();
    Map<String, Double> found =
        Simulator.run(
            Netlist.heat(
                in,
                watts,
                SwitchChecks.switchingWatts(in),
                ladder(in, 0.05, 0.4),
                6 * CASE_SECONDS));
    assertEquals(found.get("most"), SwitchChecks.junctionCelsius(in, line), KELVIN);
  }

  private static Ladder ladder(ChannelInputs in, double on, double period) {
    double toCase = in.nominal(Term.RTH_CASE);
    double toAir =
        in.has(Fitted.HEATSINK) ? toCase + in.nominal(Term.HEATSINK) : in.nominal(Term.RTH_AIR);
    return new Ladder(
        new double[] {0.3, 0.7, 0.5},
        new double[] {0.0003, 0.004, 0.03},
        toAir - toCase,
        CASE_SECONDS,
        on,
        period);
  }
}
