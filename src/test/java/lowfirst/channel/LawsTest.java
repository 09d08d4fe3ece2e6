package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Term.Worse;
import lowfirst.channel.check.Verdict;
import lowfirst.channel.data.PartData;
import lowfirst.quantity.Source;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Worse never passes: enumerated over every input in its bad direction, over a grid of channels.
 */
class LawsTest {
  private static final double[] FACTORS = {0.02, 0.1, 0.25, 0.5, 0.8, 1, 1.25, 2, 4, 10, 50};
  private static final ChannelKit TYPICAL = ChannelKit.typical();

  /** Ratings whose absence means that a check isn't asked for. */
  private static final Set<Term> OPTIONAL = Set.of(Term.MAX_ON_TIME, Term.PULL_IN, Term.INRUSH);

  private static Map<String, ChannelKit> grid() {
    var kits = new LinkedHashMap<String, ChannelKit>();
    kits.put("solenoid", TYPICAL);
    kits.put(
        "rated solenoid",
        TYPICAL.with(
            "loads", "max on time=500 ms; rated duty=25 %; pull-in voltage=12 V; period=600 ms"));
    kits.put("held on", TYPICAL.with("loads", "on time=; period="));
    kits.put("heatsink", TYPICAL.with("channels", "heatsink=8 K/W").with("loads", "on time="));
    kits.put(
        "no diode", TYPICAL.with("channels", "flyback diode=").with("loads", "inductance=2 mH"));
    kits.put(
        "lamp",
        TYPICAL.with("loads", "kind=lamp; inductance=; resistance=; current=0.2 A; period=20 s"));
    kits.put(
        "motor",
        TYPICAL.with(
            "loads", "kind=motor; resistance=; current=0.3 A; inrush time=50 ms; period=20 s"));
    kits.put("LED", TYPICAL.with("loads", "kind=LED; inductance=; resistance=; current=0.5 A"));
    kits.put(
        "PWM",
        TYPICAL
            .with("drivers", "PWM frequency=500 Hz")
            .with("loads", "duty=50 %; on time=; period=; pull-in voltage=6 V"));
    kits.put("bundle", TYPICAL.with("channels", "wires together=4; pull-down side=driver"));
    kits.put(
        "transistor",
        TYPICAL
            .with("bom.Q1", "part type=2N3904; description=transistor NPN onsemi")
            .with("loads", "kind=resistive; inductance=; resistance=; current=30 mA"));
    kits.put("array", ChannelKit.array());
    kits.put("coupled gate", ChannelKit.coupled());
    kits.put(
        "no track",
        TYPICAL.with("channels", "trace width=none; trace length=; trace copper=; trace layer="));
    kits.put("resettable fuse", ChannelKit.resettable());
    return kits;
  }

  @TestFactory
  Stream<DynamicTest> the_grid_carries_where_it_should_so_that_the_laws_are_not_idle() {
    return grid().entrySet().stream()
        .filter(entry -> !entry.getKey().equals("transistor"))
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    entry.getKey(),
                    () -> {
                      ChannelFinding finding = entry.getValue().finding();
                      Check limiting = finding.limitedBy();
                      assertTrue(
                          finding.carries(),
                          () -> limiting.kind() + " " + limiting.actual() + limiting.missing());
                    }));
  }

  @TestFactory
  Stream<DynamicTest> no_number_turns_a_channel_to_carrying_by_getting_worse() {
    return grid().entrySet().stream()
        .map(
            entry ->
                DynamicTest.dynamicTest(entry.getKey(), () -> allTerms(entry.getValue().inputs())));
  }

  private static void allTerms(ChannelInputs in) {
    int moved = 0;
    for (Term term : Term.values()) {
      if (term.worse() != Worse.EITHER && in.knows(term) && in.nominal(term) != 0) {
        worseNeverPasses(in, term);
        moved++;
      }
    }
    assertTrue(moved > 15, "the law was tried on " + moved + " numbers only");
  }

  private static void worseNeverPasses(ChannelInputs in, Term term) {
    boolean carried = true;
    for (int i = 0; i < FACTORS.length; i++) {
      double factor = term.worse() == Worse.HIGHER ? FACTORS[i] : FACTORS[FACTORS.length - 1 - i];
      boolean carries = ChannelFinding.of(in.scaled(term, factor)).carries();
      assertFalse(carries && !carried, term + " at " + factor + " times passes again");
      carried = carries;
    }
  }

  @TestFactory
  Stream<DynamicTest> no_wider_tolerance_turns_a_channel_to_carrying() {
    return grid().entrySet().stream()
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    entry.getKey(),
                    () -> {
                      ChannelInputs in = entry.getValue().inputs();
                      for (Term term : Term.values()) {
                        if (in.knows(term)) {
                          widerNeverPasses(in, term);
                        }
                      }
                    }));
  }

  private static void widerNeverPasses(ChannelInputs in, Term term) {
    Datum datum = in.datum(term);
    boolean carried = true;
    for (double percent : new double[] {0, 1, 5, 20, 50, 90}) {
      double low = datum.low() * (1 - percent / 100);
      double high = datum.high() * (1 + percent / 100);
      Datum wider = Datum.of(term, low, datum.nominal(), high, datum.source());
      boolean carries = ChannelFinding.of(in.with(wider)).carries();
      assertFalse(carries && !carried, term + " within " + percent + " % passes again");
      carried = carries;
    }
  }

  @TestFactory
  Stream<DynamicTest> no_missing_number_turns_a_channel_to_carrying() {
    return grid().entrySet().stream()
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    entry.getKey(),
                    () -> {
                      ChannelInputs heavy = entry.getValue().inputs().scaled(Term.LOAD_CURRENT, 30);
                      assertFalse(ChannelFinding.of(heavy).carries());
                      for (Term term : Term.values()) {
                        if (!OPTIONAL.contains(term)) {
                          assertFalse(
                              ChannelFinding.of(heavy.with(Datum.missing(term))).carries(),
                              "without " + term);
                        }
                      }
                    }));
  }

  /** Each check by itself: a line that says "carries" is read alone. */
  @TestFactory
  Stream<DynamicTest> a_number_from_memory_lets_no_check_carry_that_would_not_without_it() {
    return grid().entrySet().stream()
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    entry.getKey(), () -> assertEquals(List.of(), trusted(entry.getValue()))));
  }

  private static List<String> trusted(ChannelKit kit) {
    ChannelInputs in = kit.inputs();
    var trusted = new ArrayList<String>();
    for (Term term : Term.values()) {
      // RDSon's factor is worked out from lines, each of which has its own source.
      if (in.knows(term) && !OPTIONAL.contains(term) && term != Term.ON_RESISTANCE_FACTOR) {
        ChannelFinding without = ChannelFinding.of(in.with(Datum.missing(term)));
        ChannelFinding.of(in.with(remembered(in.datum(term)))).checks().stream()
            .filter(check -> check.verdict() == Verdict.CARRIES)
            .filter(check -> without.check(check.kind()).stream().anyMatch(LawsTest::isOpen))
            .forEach(check -> trusted.add(term + " in " + check.kind()));
      }
    }
    return trusted;
  }

  private static boolean isOpen(Check check) {
    return check.verdict() != Verdict.CARRIES;
  }

  private static Datum remembered(Datum datum) {
    Source memory = new Source(Source.Origin.MEMORY, "from memory");
    return Datum.of(datum.term(), datum.low(), datum.nominal(), datum.high(), memory);
  }

  @Test
  void hotter_air_never_passes() {
    ChannelInputs in = TYPICAL.inputs();
    boolean carried = true;
    for (int celsius = 0; celsius <= 200; celsius += 5) {
      boolean carries = ChannelFinding.of(in.with(Term.AMBIENT, celsius)).carries();
      assertFalse(carries && !carried, celsius + " °C passes again");
      carried = carries;
    }
    assertFalse(carried, "nothing carries at 200 °C");
  }

  @Test
  void no_balance_of_heat_means_overloaded() {
    ChannelInputs in = TYPICAL.inputs().with(Term.ON_TIME, 10).scaled(Term.LOAD_CURRENT, 6);
    Check check =
        ChannelFinding.of(in.with(Term.RTH_AIR, 200)).check(CheckKind.JUNCTION_TEMPERATURE).get();
    assertTrue(Double.isInfinite(check.actualAmount()), "" + check.actualAmount());
    assertEquals(Verdict.OVERLOADED, check.verdict());
  }

  @Test
  void the_units_that_a_kit_is_written_in_do_not_matter() {
    ChannelKit other =
        TYPICAL
            .with("rails", "voltage=24000 mV; return length=1000 mm; current limit=5000 mA")
            .with("loads", "resistance=0.024k; inductance=50000 uH; on time=0.1 s; period=1000 ms")
            .with("channels", "trace width=0.2 cm; trace copper=0.035 mm; wire length=200 cm")
            .with("drivers", "source resistance=0.03 kOhm; current limit=0.04 A");
    List<Check> one = TYPICAL.finding().checks();
    List<Check> two = other.finding().checks();
    for (int i = 0; i < one.size(); i++) {
      assertEquals(one.get(i).kind(), two.get(i).kind());
      assertEquals(
          one.get(i).actualAmount(), two.get(i).actualAmount(), 1e-9, one.get(i).kind().words());
      assertEquals(one.get(i).allowedAmount(), two.get(i).allowedAmount(), 1e-9);
    }
  }

  @Test
  void a_channel_carries_just_up_to_its_limit() {
    for (ChannelKit kit : grid().values()) {
      ChannelInputs in = kit.inputs();
      CarryLimit.of(in)
          .filter(limit -> limit.limitedBy().isPresent())
          .ifPresent(
              limit -> {
                double factor = limit.amperes() / in.loadAmps();
                assertTrue(ChannelFinding.of(CarryLimit.with(in, factor * (1 - 1e-6))).carries());
                assertFalse(ChannelFinding.of(CarryLimit.with(in, factor * 1.01)).carries());
              });
    }
  }

  @Test
  void every_build_carries_where_the_corners_do_and_none_far_beyond_them() {
    ChannelInputs in = TYPICAL.inputs();
    double limit = CarryLimit.of(in).orElseThrow().amperes() / in.loadAmps();
    ChannelInputs atLimit = CarryLimit.with(in, limit * 0.999);
    assertEquals(0, BuildSpread.of(atLimit, 2000, 1).overloaded());
    ChannelInputs beyond = CarryLimit.with(in, limit * 1.02);
    assertFalse(ChannelFinding.of(beyond).carries(), "a corner fails");
    double share = BuildSpread.of(beyond, 2000, 1).overloadedShare();
    assertTrue(share < 0.5, "but hardly a build: " + share);
    assertEquals(1, BuildSpread.of(CarryLimit.with(in, limit * 2), 200, 1).overloadedShare());
    assertEquals(BuildSpread.of(beyond, 500, 7), BuildSpread.of(beyond, 500, 7));
  }

  @Test
  void each_change_that_is_said_to_be_enough_is_enough() {
    ChannelInputs thin = TYPICAL.with("channels", "wire=AWG 28").inputs();
    List<Remedy> remedies = Remedies.of(thin);
    Remedy wire =
        remedies.stream()
            .filter(remedy -> remedy.term().equals(java.util.Optional.of(Term.WIRE_AREA)))
            .filter(Remedy::carriesAlone)
            .findFirst()
            .orElseThrow();
    double area = wire.value().orElseThrow().asDouble();
    assertTrue(ChannelFinding.of(thin.with(Term.WIRE_AREA, area)).carries());
    assertTrue(Remedies.of(TYPICAL.inputs()).isEmpty(), "what carries needs no change");
  }

  @Test
  void a_missing_datum_is_named_with_the_place_to_write_it() {
    Check check = TYPICAL.withoutDatasheet("T-FET", "RthJA").check(CheckKind.JUNCTION_TEMPERATURE);
    assertEquals(Verdict.UNDECIDED, check.verdict());
    assertEquals(List.of("RthJA of T-FET: write it in datasheets.csv"), check.missing());
  }

  @Test
  void another_mosfet_counts_without_resolving_the_channel_again() {
    ChannelInputs in = TYPICAL.inputs();
    PartData better =
        ChannelKit.typical()
            .mosfet("IRLZ44N", "International Rectifier")
            .inputs()
            .parts()
            .get(Role.MOSFET);
    ChannelInputs swapped = in.with(better);
    assertEquals(0.025, swapped.onResistance().earned(swapped.gateVolts() + 1, 1).maxOhms(), 1e-9);
    assertEquals(
        ChannelFinding.of(in), ChannelFinding.of(swapped.with(in.parts().get(Role.MOSFET))));
  }

  @Test
  void no_number_of_a_rail_turns_it_to_carrying_by_getting_worse() {
    RailInputs rail =
        KitInputs.of(TYPICAL.kit())
            .rails()
            .get(0)
            .with(Datum.of(Term.OTHERS_ON_RETURN, 0.5, Source.computed("of another rail")));
    assertEquals(Verdict.CARRIES, RailFinding.of(rail).verdict(), "so that the law is not idle");
    int moved = 0;
    for (Term term : Term.values()) {
      Datum datum = rail.datum(term);
      if (datum != null && datum.isKnown() && term.worse() != Worse.EITHER) {
        moved++;
        boolean carried = true;
        for (int i = 0; i < FACTORS.length; i++) {
          double factor = FACTORS[term.worse() == Worse.HIGHER ? i : FACTORS.length - 1 - i];
          boolean carries =
              RailFinding.of(rail.with(datum.times(factor))).verdict() == Verdict.CARRIES;
          assertFalse(carries && !carried, term + " at " + factor + " times passes again");
          carried = carries;
        }
        assertFalse(
            RailFinding.of(rail.with(Datum.missing(term))).verdict() == Verdict.CARRIES,
            "without " + term);
      }
    }
    assertEquals(10, moved);
  }

  @Test
  void each_change_that_is_said_to_mend_a_rail_mends_it() {
    ChannelKit weak =
        TYPICAL.with(
            "rails",
            "current limit=1 A; return wire=AWG 26; return length=4 m; contact rating=1 A");
    RailInputs rail = KitInputs.of(weak.kit()).rails().get(0);
    RailFinding finding = RailFinding.of(rail);
    assertEquals(Verdict.OVERLOADED, finding.verdict());
    RailInputs mended = rail;
    for (Remedy remedy : finding.remedies()) {
      double value = remedy.value().orElseThrow().asDouble();
      RailInputs one = rail.with(remedy.term().orElseThrow(), value);
      assertTrue(
          RailFinding.checks(one).stream()
              .anyMatch(c -> c.kind() == remedy.check() && c.verdict() == Verdict.CARRIES),
          "" + remedy);
      Term term = remedy.term().orElseThrow();
      boolean further = remedy.action() == Remedy.Action.RAISE && mended.high(term) > value;
      mended = further ? mended : mended.with(term, value);
    }
    assertEquals(Verdict.CARRIES, RailFinding.of(mended).verdict(), "and all of them together");
  }
}
