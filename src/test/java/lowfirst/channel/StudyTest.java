package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.Remedy.Action;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.quantity.Source.Origin;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What follows from a finding: the limit, what to change, what matters, the curve; by hand. */
class StudyTest {
  private static final ChannelKit TYPICAL = ChannelKit.typical();

  private static ChannelInputs heldOn() {
    return TYPICAL
        .inputs()
        .with(Term.SUPPLY, 24)
        .with(Datum.missing(Term.ON_TIME), Datum.missing(Term.PERIOD));
  }

  /** UL 248-14 at 40 °C: 2.5 A · 0.75 · 0.925 = 1.734375 A, the least of all limits. */
  private static final double FUSE_AMPS = 1.734375;

  @Test
  void the_typical_channel_carries_up_to_its_fuses_share() {
    CarryLimit limit = CarryLimit.of(TYPICAL.inputs()).orElseThrow();
    assertEquals(FUSE_AMPS, limit.amperes(), 1e-4);
    assertEquals(Optional.of(CheckKind.FUSE_CURRENT), limit.limitedBy());
    CarryLimit heavy = CarryLimit.of(TYPICAL.inputs().scaled(Term.LOAD_CURRENT, 3)).orElseThrow();
    assertEquals(FUSE_AMPS, heavy.amperes(), 1e-4, "the same from an overload down");
  }

  /** At 85 °C copper resists (234.5 + 85)/(234.5 + 20) = 1.2554 times as much as at 20 °C. */
  @Test
  void a_coil_that_no_wire_lets_pull_in_is_to_be_one_that_pulls_in_lower() {
    ChannelKit strong = TYPICAL.with("loads", "pull-in voltage=20 V; temperature rise=45 K");
    double left = strong.check(CheckKind.PULL_IN).actualAmount();
    Remedy coil =
        forCheck(strong.inputs(), CheckKind.PULL_IN).stream()
            .filter(remedy -> remedy.term().equals(Optional.of(Term.PULL_IN)))
            .findFirst()
            .orElseThrow();
    assertEquals(Action.LOWER, coil.action());
    assertEquals(left / 1.2554, coil.value().orElseThrow().asDouble(), 0.1, "to three figures");
    assertTrue(coil.carriesAlone());
  }

  @Test
  void a_channel_that_fails_at_any_current_has_no_limit() {
    assertEquals(Optional.empty(), CarryLimit.of(TYPICAL.inputs().with(Term.GATE_RATING, 1)));
    ChannelInputs unknown = TYPICAL.inputs().with(Datum.missing(Term.LOAD_CURRENT));
    assertEquals(Optional.empty(), CarryLimit.of(unknown));
  }

  @Test
  void a_channel_that_carries_a_thousand_times_its_load_is_limited_by_nothing() {
    ChannelInputs small = TYPICAL.inputs().scaled(Term.LOAD_CURRENT, 0.0001);
    // 24 V/24 Ω, 5 % more of one and less of the other
    double amps = 0.0001 * 1.05 / 0.95;
    CarryLimit limit = CarryLimit.of(small).orElseThrow();
    assertEquals(1000 * amps, limit.amperes(), 1e-9);
    assertEquals(Optional.empty(), limit.limitedBy());
  }

  /**
   * 1.105 A on a fuse that carries 0.694 of its rating, and on a contact that carries all of it.
   */
  @ParameterizedTest
  @CsvSource({"1.5, 0.5, DRAIN_CURRENT", "0.5, 1, FUSE_CURRENT"})
  void of_two_overloads_the_larger_limits_the_channel(
      double fuse, double drain, CheckKind expected) {
    ChannelInputs in =
        TYPICAL.inputs().with(Term.FUSE_RATING, fuse).with(Term.DRAIN_CURRENT_RATING, drain);
    ChannelFinding finding = ChannelFinding.of(in);
    for (CheckKind kind : List.of(CheckKind.FUSE_CURRENT, CheckKind.DRAIN_CURRENT)) {
      assertEquals(Verdict.OVERLOADED, finding.check(kind).orElseThrow().verdict());
    }
    assertEquals(expected, finding.limitedBy().kind());
  }

  @Test
  void what_is_undecided_limits_the_channel_before_what_carries_by_a_hair() {
    Datum remembered = Datum.of(Term.RTH_AIR, 62, new Source(Origin.MEMORY, "from memory"));
    // 1.105 A on 1.15 A, and a junction far below 150 °C
    ChannelFinding finding =
        ChannelFinding.of(
            TYPICAL
                .with("loads", "kind=resistive; inductance=")
                .inputs()
                .with(remembered)
                .with(Term.DRAIN_CURRENT_RATING, 1.15));
    assertEquals(Verdict.UNDECIDED, finding.verdict());
    assertEquals(CheckKind.JUNCTION_TEMPERATURE, finding.limitedBy().kind());
    assertTrue(finding.limitedBy().margin() > 0.5);
  }

  @Test
  void a_stated_inrush_grows_with_the_load() {
    ChannelInputs lamp =
        TYPICAL.with("loads", "kind=lamp; inductance=; resistance=; current=0.2 A").inputs();
    ChannelInputs twice = CarryLimit.with(lamp, 2);
    assertEquals(2 * lamp.high(Term.INRUSH), twice.high(Term.INRUSH), 1e-9);
    assertEquals(2 * lamp.loadAmps(), twice.loadAmps(), 1e-9);
  }

  @Test
  void a_thin_wire_is_mended_by_the_next_size_that_does_or_by_less_current() {
    // 700 circular mils an ampere: 0.14 mm² carries 0.395 A, 0.34 mm² 0.959 A, 0.5 mm² 3 A; √0.75
    // of it in 40 °C
    ChannelInputs in =
        heldOn().with(Term.LOAD_CURRENT, 2).with(Term.WIRE_AREA, 0.14).with(Term.WIRE_LENGTH, 10);
    List<Remedy> remedies = forCheck(in, CheckKind.WIRE_CURRENT);
    Remedy wire = remedies.get(0);
    assertEquals(Optional.of(Term.WIRE_AREA), wire.term());
    assertEquals(Action.RAISE, wire.action());
    assertEquals(0.5, wire.value().orElseThrow().asDouble(), 1e-12);
    assertFalse(wire.carriesAlone(), "the fuse is too small for 2 A as well");
    Remedy load = remedies.get(1);
    assertEquals(Optional.of(Term.LOAD_CURRENT), load.term());
    assertEquals(Action.LOWER, load.action());
    double carried = 0.14 / 5.067075e-4 / 700 * Math.sqrt(0.75);
    assertEquals(carried, load.value().orElseThrow().asDouble(), 0.005 * carried);
    assertTrue(load.value().orElseThrow().asDouble() <= carried, "rounded to the safe side");
    assertEquals(2, remedies.size());
  }

  private static List<Remedy> forCheck(ChannelInputs in, CheckKind kind) {
    return Remedies.of(in).stream().filter(remedy -> remedy.check() == kind).toList();
  }

  private static double value(ChannelInputs in, CheckKind kind, Term term) {
    return forCheck(in, kind).stream()
        .filter(remedy -> remedy.term().equals(Optional.of(term)))
        .findFirst()
        .flatMap(Remedy::value)
        .map(Quantity::asDouble)
        .orElse(Double.NaN);
  }

  @Test
  void each_change_is_the_smallest_that_does_to_three_figures() {
    ChannelInputs in = heldOn();
    // 24.2 V on a diode used to four fifths of its rating: 30.25 V
    assertEquals(
        30.3,
        value(
            in.with(Term.SUPPLY, 24.2).with(Term.DIODE_REVERSE_RATING, 20),
            CheckKind.DIODE_VOLTAGE,
            Term.DIODE_REVERSE_RATING),
        1e-9);
    // 24 V on four fifths of a rating: 30 V, which is sold, and not a hair more
    assertEquals(
        30,
        value(
            in.with(Term.SUPPLY, 24).with(Term.DIODE_REVERSE_RATING, 20),
            CheckKind.DIODE_VOLTAGE,
            Term.DIODE_REVERSE_RATING),
        1e-9);
    // 5.25 V/R + 0.53 mA within 20 mA: 269.7 Ω with 1 % less counted, so 272.4 Ω, up to 273 Ω
    assertEquals(
        273,
        value(in.with(Term.DRIVE_LIMIT, 0.020), CheckKind.GATE_DRIVE_CURRENT, Term.GATE_RESISTOR),
        1e-9);
    // 1.05 A on 0.75 · 0.925 of the rating: 1.5135 A
    assertEquals(
        1.52, value(in.with(Term.FUSE_RATING, 1), CheckKind.FUSE_CURRENT, Term.FUSE_RATING), 1e-9);
  }

  @Test
  void a_hot_junction_is_mended_by_a_better_part_or_a_heatsink() {
    // 5 A: 62 K/W · 25 A² · 50 mΩ = 77.5 K, and 40 + 77.5·(0.8 + 0.008 T) has no balance below 150
    ChannelInputs in = heldOn().with(Term.LOAD_CURRENT, 5).with(Term.DRAIN_CURRENT_RATING, 14);
    List<Remedy> remedies = forCheck(in, CheckKind.JUNCTION_TEMPERATURE);
    // 110 K of 62 K/W at k(150 °C) = 1.6 + 0.8·50/75 = 2.1333: 110/(62 · 25 · 2.1333) = 33.27 mΩ
    Remedy better = remedies.get(0);
    assertEquals(Optional.of(Term.ON_RESISTANCE), better.term());
    assertEquals(0.033, better.value().orElseThrow().asDouble(), 1e-12);
    assertFalse(better.carriesAlone(), "the fuse is too small as well");
    // 110/(25 · 0.05 · 2.1333) = 41.25 K/W less RthJC of 1.5 K/W: 39.75, down to 39.7 K/W
    Remedy sink =
        remedies.stream().filter(remedy -> remedy.action() == Action.FIT).findFirst().orElseThrow();
    assertEquals(Optional.of(Fitted.HEATSINK), sink.fit());
    assertEquals(39.7, sink.value().orElseThrow().asDouble(), 1e-9);
    ChannelInputs noCase = in.with(Datum.missing(Term.RTH_CASE));
    assertTrue(
        forCheck(noCase, CheckKind.JUNCTION_TEMPERATURE).stream()
            .noneMatch(remedy -> remedy.action() == Action.FIT),
        "of no use where RthJC is unknown");
  }

  @Test
  void what_is_missing_is_to_be_looked_up_and_what_is_not_fitted_to_be_fitted() {
    ChannelInputs in = heldOn().with(Datum.missing(Term.RTH_AIR, "RthJA"));
    assertEquals(
        List.of(Remedy.lookUp(CheckKind.JUNCTION_TEMPERATURE, "RthJA")),
        forCheck(in, CheckKind.JUNCTION_TEMPERATURE));
    ChannelInputs open = TYPICAL.inputs().without(Fitted.FLYBACK_DIODE);
    List<Remedy> diode = forCheck(open, CheckKind.REPETITIVE_AVALANCHE);
    assertEquals(
        List.of(Optional.of(Fitted.FLYBACK_DIODE)),
        diode.stream().map(Remedy::fit).filter(Optional::isPresent).toList());
    ChannelInputs direct = heldOn().without(Fitted.GATE_RESISTOR);
    assertEquals(
        Optional.of(Fitted.GATE_RESISTOR),
        forCheck(direct, CheckKind.GATE_DRIVE_CURRENT).stream()
            .map(Remedy::fit)
            .filter(Optional::isPresent)
            .findFirst()
            .orElseThrow());
  }

  @Test
  void a_resistance_that_nobody_states_is_looked_up_where_the_gate_is_not_at_fault() {
    List<Remedy> remedies =
        forCheck(
            TYPICAL.withoutDatasheet("T-FET", "RDSon").inputs(), CheckKind.JUNCTION_TEMPERATURE);
    assertEquals(List.of(Action.LOOK_UP), remedies.stream().map(Remedy::action).toList());
    assertTrue(remedies.get(0).toString().contains("RDSon of T-FET"), remedies::toString);
  }

  @Test
  void a_floating_gate_wants_a_pull_down() {
    ChannelInputs floating = TYPICAL.with("channels", "pull-down=").inputs();
    List<Remedy> remedies = forCheck(floating, CheckKind.GATE_OFF);
    Remedy fit = remedies.get(0);
    assertEquals(Optional.of(Fitted.PULL_DOWN), fit.fit());
    assertEquals(10_000, fit.value().orElseThrow().asDouble());
    assertTrue(fit.carriesAlone(), "10 kΩ holds it at 0.3 V");
    ChannelInputs unknown = floating.with(Datum.missing(Term.THRESHOLD, "VGSth"));
    assertEquals(
        List.of(Action.FIT, Action.LOOK_UP),
        forCheck(unknown, CheckKind.GATE_OFF).stream().map(Remedy::action).toList());
  }

  @Test
  void a_gate_too_weak_for_any_line_is_mended_not_looked_up() {
    ChannelInputs weak = heldOn().with(Term.DRIVE_LEVEL, 3);
    assertTrue(
        Remedies.of(weak).stream().noneMatch(remedy -> remedy.action() == Action.LOOK_UP),
        "no datasheet holds a line for it");
    // 4 V and the divider's loss: 4 · 10152.2/9900, with no lift counted
    double level = value(weak.with(Term.RETURN_LIFT, 0), CheckKind.GATE_LEVEL, Term.DRIVE_LEVEL);
    assertEquals(4.11, level, 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "FUSE_RATING, FUSE_CURRENT, false",
    "DRAIN_CURRENT_RATING, DRAIN_CURRENT, true",
  })
  void a_number_uses_up_as_much_of_the_margin_as_its_tenth_takes(
      Term term, CheckKind kind, boolean only) {
    ChannelInputs in = heldOn().with(Term.LOAD_CURRENT, 1.5).with(Term.DRAIN_CURRENT_RATING, 2);
    List<Sensitivity> all = Sensitivity.of(in);
    for (int i = 1; i < all.size(); i++) {
      assertTrue(all.get(i - 1).used() >= all.get(i).used(), "most first");
    }
    Optional<Sensitivity> found = all.stream().filter(s -> s.term() == term).findFirst();
    assertEquals(only, found.isPresent(), "a fuse is better either way, so it isn't asked");
    // drain current: margin (2 − 1.5)/2 = 0.25; at 1.8 A (1.8 − 1.5)/1.8 = 1/6: a third is used up
    found.ifPresent(
        sensitivity -> {
          assertEquals(kind, sensitivity.check());
          assertEquals(1 / 3.0, sensitivity.used(), 1e-9);
        });
  }

  @Test
  void the_curve_starts_at_the_air_and_passes_through_the_load() {
    ChannelInputs in = heldOn().with(Term.LOAD_CURRENT, 2);
    JunctionCurve curve = JunctionCurve.of(in, 4).orElseThrow();
    assertEquals(61, curve.points().size());
    assertEquals(150, curve.limitCelsius(), 1e-9);
    assertEquals(2, curve.loadAmps(), 1e-9);
    assertEquals(0, curve.points().get(0).amperes(), 1e-12);
    assertEquals(40, curve.points().get(0).celsius(), 1e-6);
    JunctionCurve.Point middle = curve.points().get(30);
    assertEquals(2, middle.amperes(), 1e-12);
    assertEquals(49.92 / (1 - 0.0992), middle.celsius(), 1e-6, "40 + 12.4·(0.8 + 0.008·T)");
    // beyond runaway nothing is drawn
    JunctionCurve wide = JunctionCurve.of(in, 8).orElseThrow();
    assertTrue(wide.points().size() < 61);
    assertTrue(wide.points().stream().allMatch(point -> point.celsius() < 400));
  }

  @Test
  void no_curve_is_drawn_without_a_mosfet_that_is_known() {
    assertEquals(Optional.empty(), JunctionCurve.of(ChannelKit.array().inputs(), 1));
    for (Term term : List.of(Term.RTH_AIR, Term.JUNCTION_RATING)) {
      assertEquals(Optional.empty(), JunctionCurve.of(heldOn().with(Datum.missing(term)), 1));
    }
    assertEquals(Optional.empty(), JunctionCurve.of(heldOn().with(Term.AMBIENT, 500), 1));
  }

  @Test
  void on_the_meter_stands_what_load_wire_track_and_mosfet_let_through_when_cold() {
    ChannelInputs in = TYPICAL.inputs().with(Term.RETURN_LIFT, 0.1).with(Term.LOAD_CURRENT, 2);
    // wire: 2 · 2 m of 20 Ω/km; track: 50 mm of 2 mm by 35 µm at 0.017241 Ω·mm²/m
    double loop = 2 * 2 * 0.020 + 0.017241 * 0.050 / (2 * 0.035);
    assertEquals(loop, OnCurrent.coldLoopOhms(in), 1e-9);
    assertEquals((24 - 0.1) / (12 + loop + 0.050), OnCurrent.amperes(in), 1e-9);
  }

  @Test
  void of_many_builds_so_many_fail_as_lie_beyond_the_limit() {
    // 1.1 A to 1.9 A evenly on a limit of 1.734 A: a share of 0.166/0.8
    ChannelInputs in =
        heldOn().with(Datum.of(Term.LOAD_CURRENT, 1.1, 1.5, 1.9, Source.kit("loads.csv")));
    BuildSpread spread = BuildSpread.of(in, 4000, 3);
    assertEquals(4000, spread.builds());
    assertEquals((1.9 - FUSE_AMPS) / 0.8, spread.overloadedShare(), 0.03);
    assertEquals(0, spread.undecided());
    Datum below = Datum.of(Term.LOAD_CURRENT, 1.1, 1.4, 1.7, Source.kit("loads.csv"));
    assertEquals(0, BuildSpread.of(in.with(below), 1000, 3).overloaded(), "none is beyond it");
    BuildSpread open = BuildSpread.of(in.with(Datum.missing(Term.RTH_AIR)), 100, 3);
    assertEquals(100, open.overloaded() + open.undecided());
    assertTrue(open.undecided() > 50);
    assertEquals(0, BuildSpread.of(in, 0, 3).overloadedShare());
  }

  /** Of the IRLZ44N one maker states its resistance at 10 V only, another at 4 V, too. */
  @Test
  void where_makers_differ_it_is_open_whose_part_it_is() {
    Check open = gateLevel("maker", "");
    assertEquals(Verdict.UNDECIDED, open.verdict());
    assertTrue(open.missing().get(0).contains("International Rectifier"), open.missing().get(0));
    for (String header : List.of("description", "maker", "Manufacturer")) {
      assertEquals(Verdict.OVERLOADED, gateLevel(header, "INCHANGE").verdict(), header);
    }
    assertEquals(Verdict.CARRIES, gateLevel("maker", "International Rectifier").verdict());
    Check either = gateLevel("description", "by INCHANGE or International Rectifier");
    assertEquals(Verdict.UNDECIDED, either.verdict(), "either may be in the bag");
  }

  private static Check gateLevel(String header, String maker) {
    ChannelKit kit =
        ChannelKit.typical().mosfet("IRLZ44N", "").with("bom.Q1", header + "=" + maker);
    return ChannelFinding.of(kit.inputs()).check(CheckKind.GATE_LEVEL).orElseThrow();
  }
}
