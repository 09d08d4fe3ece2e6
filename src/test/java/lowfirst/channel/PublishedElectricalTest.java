package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.PublishedTable;
import lowfirst.channel.check.Term;
import lowfirst.channel.formula.Avalanche;
import lowfirst.channel.formula.CoilDecay;
import lowfirst.channel.formula.Conductor;
import lowfirst.channel.formula.CopperTemperature;
import lowfirst.channel.formula.FuseFamily;
import lowfirst.channel.formula.GateNetwork;
import lowfirst.channel.formula.HotFactor;
import lowfirst.channel.formula.HotFactor.Point;
import lowfirst.channel.formula.PrintedTrack;
import lowfirst.channel.formula.Pulses;
import lowfirst.channel.formula.ResistorRating;
import lowfirst.channel.formula.SwitchingLoss;
import lowfirst.channel.formula.SwitchingTime;
import lowfirst.channel.formula.TransientImpedance;
import lowfirst.quantity.Source;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every published electrical value that a finding's physics can be held against. Those for which
 * the program has no formula stand in {@code channel-not-computed.csv}, each with the reason.
 */
class PublishedElectricalTest {
  private static final List<String> FILES = List.of("heat", "gate", "coil", "copper", "fuse");

  /** Rows of which we must be on the safe side, by no more than their tolerance. */
  private static final String BOUND = "never less";

  private static final Source PUBLISHED = Source.standard("published");
  private static final Map<String, ToDoubleFunction<double[]>> PHYSICS =
      Map.ofEntries(
          Map.entry("package celsius", in -> StageChecks.packageCelsius(in[0], in[1], in[2])),
          Map.entry("amps to 175", in -> ampsTo175(in[0], in[1], in[2], in[3])),
          Map.entry("amps at 100 from 25", in -> ampsTo175(100, 1, 150 / (in[0] * in[0]), 1)),
          Map.entry("heating share", in -> Pulses.heatingShare(in[0], in[1])),
          Map.entry("capacitor joules", in -> SwitchingLoss.capacitiveJoules(in[0], in[1])),
          Map.entry("capacitive inrush", in -> capacitiveInrush(in[0], in[1])),
          Map.entry("forced gain", in -> StageChecks.forcedGain(in[0], in[1])),
          Map.entry("optocoupler load ohms", in -> in[2] / StageChecks.saturatedAmps(in[0], in[1])),
          Map.entry(
              "inner over outer width",
              in -> widthMils(in[0], in[1], false) / widthMils(in[0], in[1], true)),
          Map.entry(
              "inner width over outer of twice the amps",
              in -> widthMils(in[0], in[1], false) / widthMils(2 * in[0], in[1], true)),
          Map.entry("other outer width mil", in -> otherWidthMils(in[0], in[1], true)),
          Map.entry("other inner width mil", in -> otherWidthMils(in[0], in[1], false)),
          Map.entry("metal film share", in -> ResistorRating.metalFilmShare(in[0])),
          Map.entry("military share", in -> ResistorRating.militaryShare(in[0])),
          Map.entry("gauge ohms per km", in -> 3.28084 * gaugeOhmsPerThousandFeet(in[0])),
          Map.entry("amps by mils AWG", in -> Conductor.amperesByMils(gauge(in[0]))),
          Map.entry("IRLZ44N in free air", in -> irlz44n().balance(25, 62 * in[0] * in[0] * 0.025)),
          Map.entry("Foster network IRLB8721", in -> irlb8721().after(in[0], 10)),
          Map.entry("resistor volts", in -> volts(in[0], in[1], in[2])),
          Map.entry("resistor share", in -> ResistorRating.share(in[0])),
          Map.entry("gate watts", in -> SwitchingLoss.gateWatts(in[0], in[1], in[2])),
          Map.entry(
              "Miller seconds",
              in -> new SwitchingTime(in[0], 0, in[1], 0, in[3]).onSeconds(in[2])),
          Map.entry("gate volts", in -> new GateNetwork(in[0], 0, in[1], in[2], true).gateVolts()),
          Map.entry(
              "resistive watts",
              in -> in[4] * SwitchingLoss.resistiveJoules(in[0], in[1], in[2], in[3])),
          Map.entry(
              "inductive watts", in -> in[3] * SwitchingLoss.inductiveJoules(in[0], in[1], in[2])),
          Map.entry("base amps", in -> baseAmps(in[0], in[1], in[2])),
          Map.entry("optocoupler amps", in -> StageChecks.saturatedAmps(in[0], in[1])),
          Map.entry("stored joules", in -> Avalanche.joules(in[0], in[1], 100, 0)),
          Map.entry("avalanche joules", in -> Avalanche.joules(in[0], in[1], in[2], in[3])),
          Map.entry(
              "decayed amps", in -> new CoilDecay(in[0], in[1], in[2], 0).amperesAfter(in[3])),
          Map.entry("decay seconds", in -> new CoilDecay(in[0], in[1], in[2], in[3]).seconds()),
          Map.entry(
              "decayed amps with a resistor",
              in -> new CoilDecay(in[0], in[1], in[2], 0).withSeries(in[3]).amperesAfter(in[4])),
          Map.entry("PWM diode amps", in -> DiodeChecks.averageUnderPwm(in[0], in[1])),
          Map.entry("copper factor", in -> in[2] * CopperTemperature.factor(in[0], in[1])),
          Map.entry("copper coefficient", in -> CopperTemperature.factor(in[0], in[0] + 1) - 1),
          Map.entry("longest on seconds", in -> LoadChecks.longestOnSeconds(in[0])),
          Map.entry("duty percent", in -> LoadChecks.dutyPercent(in[0], in[1])),
          Map.entry("outer width mil", in -> widthMils(in[0], in[1], true)),
          Map.entry("inner width mil", in -> widthMils(in[0], in[1], false)),
          Map.entry("track ohms", in -> new PrintedTrack(in[1], in[2], true).ohms(in[0], 20)),
          Map.entry("gauge inches", in -> Conductor.gaugeInches(in[0])),
          Map.entry("gauge ohms per 1000 ft", in -> gaugeOhmsPerThousandFeet(in[0])),
          Map.entry("circular mils", in -> Conductor.circularMils(in[0])),
          Map.entry("wire amps AWG", in -> Conductor.amperes(gauge(in[0]))),
          Map.entry("open air amps AWG", in -> Conductor.openAirAmperes(gauge(in[0]))),
          Map.entry("ohms per km", in -> Conductor.ohmsPerKilometre(in[0])),
          Map.entry("copper conductance at", in -> 1 / CopperTemperature.factor(20, in[0])),
          Map.entry("cord amps", in -> Conductor.amperes(in[0])),
          Map.entry("bundle factor", in -> Conductor.bundleFactor(in[0])),
          Map.entry(
              "UL continuous amps", in -> FuseFamily.UL_248_14.continuousAmperes(in[0], in[1])),
          Map.entry("UL opening amps", in -> FuseFamily.UL_248_14.openingAmperes(in[0])),
          Map.entry(
              "IEC continuous amps", in -> FuseFamily.IEC_60127.continuousAmperes(in[0], in[1])),
          Map.entry("IEC opening amps", in -> FuseFamily.IEC_60127.openingAmperes(in[0])),
          Map.entry("rectangle", in -> FuseChecks.jouleIntegral(in[0], in[1], 10)),
          Map.entry("never less than half sine", in -> FuseChecks.jouleIntegral(in[0], in[1], 10)),
          Map.entry("never less than triangle", in -> FuseChecks.jouleIntegral(in[0], in[1], 10)),
          Map.entry("never less than parabola", in -> FuseChecks.jouleIntegral(in[0], in[1], 10)),
          Map.entry(
              "never less than exponential", in -> FuseChecks.jouleIntegral(in[0], in[1], 10)),
          Map.entry("never less than trapezoid", in -> FuseChecks.jouleIntegral(in[0], in[2], 10)),
          Map.entry("never less ohms per km", in -> Conductor.ohmsPerKilometre(in[0])),
          Map.entry("endurance", in -> FuseFamily.endurance(in[0])));

  @TestFactory
  Stream<DynamicTest> every_published_value_is_met_within_its_own_tolerance() {
    return FILES.stream()
        .flatMap(name -> PublishedTable.rows("channel-" + name + ".csv").stream())
        .map(row -> DynamicTest.dynamicTest(row.get("id") + " " + row.get("what"), () -> met(row)));
  }

  @Test
  void what_is_not_computed_says_why_and_is_not_tested_elsewhere() {
    Set<String> tested =
        FILES.stream()
            .flatMap(name -> PublishedTable.rows("channel-" + name + ".csv").stream())
            .map(row -> row.get("id"))
            .collect(Collectors.toSet());
    for (Map<String, String> row : PublishedTable.rows("channel-not-computed.csv")) {
      assertFalse(row.get("reason").isBlank(), row.get("id"));
      assertFalse(tested.contains(row.get("id")), row.get("id"));
    }
  }

  @Test
  void of_two_published_curves_the_stricter_counts() {
    for (double width = 0.2; width < 30; width *= 1.3) {
      for (boolean external : new boolean[] {true, false}) {
        double amps = new PrintedTrack(width, 0.035, external).amperes(20);
        double one = TrackWidths.millimetres(amps, 20, 0.035, external);
        double other = TrackWidths.otherMillimetres(amps, 20, 0.035, external);
        assertEquals(width, Math.max(one, other), 1e-9, "width for what it is said to carry");
      }
    }
    for (int celsius = 0; celsius <= 200; celsius += 5) {
      double share = ResistorRating.share(celsius);
      assertTrue(share <= ResistorRating.metalFilmShare(celsius), celsius + " °C");
      assertTrue(share <= ResistorRating.militaryShare(celsius), celsius + " °C");
    }
  }

  private static void met(Map<String, String> row) {
    double[] inputs =
        Arrays.stream(row.get("inputs").split(";"))
            .mapToDouble(text -> Double.parseDouble(text.strip()))
            .toArray();
    double expected = Double.parseDouble(row.get("expected"));
    double tolerance = Double.parseDouble(row.get("tolerance percent")) / 100;
    double found = PHYSICS.get(row.get("what")).applyAsDouble(inputs);
    if (row.get("what").startsWith(BOUND)) {
      assertTrue(found >= expected * (1 - 1e-9), found + ": " + row.get("document"));
      assertTrue(found <= expected * (1 + tolerance), found + ": " + row.get("document"));
    } else {
      assertEquals(expected, found, tolerance * expected, row.get("document"));
    }
  }

  @TestFactory
  Stream<DynamicTest> our_inrush_is_the_highest_of_all_published_multiples() {
    var rows = PublishedTable.rows("channel-inrush.csv");
    return Stream.of("LAMP", "MOTOR", "CAPACITIVE")
        .map(
            kind ->
                DynamicTest.dynamicTest(
                    kind,
                    () -> {
                      double highest =
                          rows.stream()
                              .filter(row -> row.get("kind").equals(kind))
                              .mapToDouble(row -> Double.parseDouble(row.get("multiple")))
                              .max()
                              .orElseThrow();
                      ChannelInputs in =
                          ChannelKit.typical()
                              .with("loads", "kind=" + kind + "; resistance=; current=1 A")
                              .inputs();
                      double ours = in.nominal(Term.INRUSH) / in.nominal(Term.LOAD_CURRENT);
                      assertEquals(highest, ours, 1e-9);
                    }));
  }

  @Test
  void pulses_add_up_as_in_the_published_superposition() {
    // Rashid, Power Electronics, 4th ed., Example 17.1: Zth(1 ms) 0.035, Zth(0.5 ms) 0.025 °C/W
    TransientImpedance impedance =
        TransientImpedance.points(
            List.of(new double[] {0.0005, 0.025}, new double[] {0.001, 0.035}));
    double[] watts = {800, 0, 1200, 0, 600, 0};
    double[] expected = {28, 8, 50, 20, 41, 26};
    double rise = 0;
    for (int i = 0; i < watts.length; i += 2) {
      rise += watts[i] * impedance.after(0.001, 1);
      assertEquals(expected[i], rise, 1e-9, "end of pulse " + i);
      rise -= watts[i] * impedance.after(0.0005, 1);
      assertEquals(expected[i + 1], rise, 1e-9, "before pulse " + (i + 2));
    }
  }

  private static HotFactor irlz44n() {
    return HotFactor.of(
        List.of(
            new Point(50, 1.17),
            new Point(75, 1.34),
            new Point(100, 1.52),
            new Point(125, 1.74),
            new Point(150, 1.97),
            new Point(175, 2.22)),
        PUBLISHED);
  }

  private static TransientImpedance irlb8721() {
    return TransientImpedance.foster(
        new double[] {0.003454, 0.17246, 0.786312, 1.368218},
        new double[] {13.68748, 7.21e-5, 0.001227, 0.007178});
  }

  /** The drain current at which the electro-thermal balance reaches 175 °C, by halving. */
  private static double ampsTo175(double baseCelsius, double rth, double ohms, double factor) {
    HotFactor curve = HotFactor.of(List.of(new Point(175, factor)), PUBLISHED);
    double low = 0;
    double high = 1000;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (curve.balance(baseCelsius, rth * middle * middle * ohms) <= 175) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static double capacitiveInrush(double volts, double ohms) {
    return ChannelKit.typical()
        .with("rails", "voltage=" + volts + " V")
        .with("loads", "kind=CAPACITIVE; resistance=" + ohms + " Ohm; current=")
        .inputs()
        .nominal(Term.INRUSH);
  }

  private static double widthMils(double amps, double rise, boolean external) {
    return TrackWidths.millimetres(amps, rise, 1.378 * 0.0254, external) / 0.0254;
  }

  /** A solid gauge size at 20 °C: 10.371 Ω·cmil/ft. */
  private static double gaugeOhmsPerThousandFeet(double gauge) {
    return 10.371 * 1000 / Conductor.circularMils(gauge);
  }

  private static double volts(double watts, double ohms, double airCelsius) {
    return Math.sqrt(new ResistorRating(watts, ohms).watts(airCelsius) * ohms);
  }

  private static double otherWidthMils(double amps, double rise, boolean external) {
    return TrackWidths.otherMillimetres(amps, rise, 1.378 * 0.0254, external) / 0.0254;
  }

  private static double gauge(double number) {
    return Conductor.squareMillimetres("AWG " + (int) number).orElseThrow();
  }

  private static double baseAmps(double drive, double base, double ohms) {
    ChannelInputs in =
        ChannelKit.typical()
            .inputs()
            .without(ChannelInputs.Fitted.PULL_DOWN)
            .with(Term.RETURN_LIFT, 0)
            .with(Term.DRIVE_RESISTANCE, 0)
            .with(Term.DRIVE_LEVEL, drive)
            .with(Term.BASE_VOLTAGE, base)
            .with(Term.GATE_RESISTOR, ohms);
    return StageChecks.baseAmps(in);
  }
}
