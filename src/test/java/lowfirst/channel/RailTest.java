package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lowfirst.board.Rail;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.channel.data.LoadRails;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.quantity.Sourced;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A rail with three loads, by hand: 24 V and 5 %; 24 Ω, 48 Ω and a lamp of 0.4 A, each 5 %:
 * 1.05/0.95 A, half of it and 0.441 A at their worst, the lamp 15 times as much at switching on.
 */
class RailTest {
  private static final double WORST = 1.05 / 0.95;
  private static final double SUM = 1.5 * WORST + 0.441;
  private static final ChannelKit THREE = three();

  private static ChannelKit three() {
    ChannelKit one = ChannelKit.typical();
    return one.with("loads.2", one.row("loads") + "; load=small; resistance=48 Ohm")
        .with("loads.3", one.row("loads") + "; load=lamp; kind=lamp; resistance=; current=0.4 A")
        .with("channels.2", one.row("channels") + "; channel=out 2; load=small; fuse=")
        .with("channels.3", one.row("channels") + "; channel=out 3; load=lamp; fuse=");
  }

  private static RailFinding rail(ChannelKit kit) {
    return LoadFindings.of(kit.kit()).rails().get(0);
  }

  private static Check check(ChannelKit kit, CheckKind kind) {
    return rail(kit).checks().stream().filter(c -> c.kind() == kind).findFirst().orElseThrow();
  }

  private static ChannelInputs channel(ChannelKit kit, String name) {
    return KitInputs.of(kit.kit()).channel(name).orElseThrow();
  }

  @Test
  void the_largest_running_and_the_largest_inrush_currents_count_each_by_itself() {
    assertEquals(SUM, check(THREE, CheckKind.RAIL_CURRENT).actualAmount(), 1e-9);
    assertEquals(List.of("out 1", "out 2", "out 3"), rail(THREE).channels());
    // 0.4 A · 1.05 · 15 · 1.05 of the lamp and the other two as they run
    double lamp = 0.441 * 15;
    assertEquals(lamp + 1.5 * WORST, check(THREE, CheckKind.RAIL_INRUSH).actualAmount(), 1e-9);
    ChannelKit two = THREE.with("rails", "loads on at once=2");
    assertEquals(1.5 * WORST, check(two, CheckKind.RAIL_CURRENT).actualAmount(), 1e-9);
    assertEquals(lamp + WORST, check(two, CheckKind.RAIL_INRUSH).actualAmount(), 1e-9);
    assertEquals(List.of("out 1", "out 2"), rail(two).channels());
    assertEquals(Verdict.OVERLOADED, check(THREE, CheckKind.RAIL_INRUSH).verdict(), "8.3 A of 5 A");
  }

  @Test
  void the_return_is_held_to_its_wire_its_contacts_and_its_drop() {
    // 2.5 mm² carries 25 A at 30 °C, √(30/40) of it in 40 °C
    assertEquals(
        25 * Math.sqrt(0.75), check(THREE, CheckKind.RETURN_CURRENT).allowedAmount(), 1e-9);
    ChannelKit contacts = THREE.with("rails", "return contacts=2; contact rating=4 A");
    assertEquals(6.4, check(contacts, CheckKind.RETURN_CONTACTS).allowedAmount(), 1e-9);
    Check drop = check(contacts, CheckKind.RETURN_DROP);
    // 1 m of 8.21 Ω/km, 304.5/254.5 of it at 70 °C, and two contacts of 10 mΩ side by side
    double ohms = 8.21e-3 * 304.5 / 254.5 + 0.005;
    assertEquals(SUM * ohms, drop.actualAmount(), 1e-9);
    assertEquals(0.72, drop.allowedAmount(), 1e-9, "3 % of 24 V");
    assertEquals(SUM * ohms, channel(contacts, "out 1").high(Term.RETURN_LIFT), 1e-9);
  }

  /** Two lamps of 1 A, 5 % and 5 % more, draw 15 times as much when the supply comes on. */
  @Test
  void what_is_always_on_is_cold_when_the_supply_comes_on() {
    ChannelKit one = ChannelKit.typical();
    String lamp = "load=lamp; kind=lamp; rail=power; current=1 A; tolerance=5 %";
    ChannelKit lamps = one.with("loads.2", lamp).with("loads.3", lamp + "; load=other");
    Check inrush = check(lamps, CheckKind.RAIL_INRUSH);
    assertEquals(2 * 15 * 1.1025, inrush.actualAmount(), 1e-9);
    assertEquals(Verdict.OVERLOADED, inrush.verdict(), "33 A of 5 A");
    assertEquals(WORST + 2 * 1.1025, check(lamps, CheckKind.RAIL_CURRENT).actualAmount(), 1e-9);
    // a motor that is switched beside one of them, warm by then, draws more: 10 · 2.205 A + 1.1025
    // A
    ChannelKit motor =
        one.with("loads.2", lamp)
            .with("loads", "kind=motor; resistance=; current=2 A; tolerance=5 %");
    assertEquals(
        22.05 + 1.1025, check(motor, CheckKind.RAIL_INRUSH).actualAmount(), 1e-9, "one instant");
    ChannelKit tank = one.with("loads.2", lamp + "; kind=capacitive; current=; inrush=");
    assertEquals(Verdict.UNDECIDED, check(tank, CheckKind.RAIL_INRUSH).verdict());
    ChannelKit heater = one.with("loads.2", lamp + "; kind=resistive");
    assertEquals(WORST + 1.1025, check(heater, CheckKind.RAIL_INRUSH).actualAmount(), 1e-9);
  }

  /** A load's current from memory makes the sum and the drop of the return no better known. */
  @ParameterizedTest
  @EnumSource(
      value = Source.Origin.class,
      names = {"MEMORY", "DATASHEET"})
  void a_remembered_load_is_remembered_in_what_its_rail_carries(Source.Origin origin) {
    ChannelInputs lamp = channel(THREE, "out 3");
    Datum current = Datum.of(Term.LOAD_CURRENT, 0.4, new Source(origin, "lamp sheet"));
    RailInputs rail =
        RailInputs.of(
            THREE.kit().rails().get(0),
            new RailLoads(List.of(channel(THREE, "out 1"), lamp.with(current)), List.of()));
    boolean known = origin == Source.Origin.DATASHEET;
    for (Datum datum :
        List.of(rail.datum(Term.RAIL_SUM), rail.datum(Term.RAIL_INRUSH_SUM), rail.lift())) {
      assertEquals(known, datum.canPass(), datum::toString);
    }
    String source = rail.datum(Term.RAIL_SUM).source().text();
    assertEquals(!known, source.endsWith(", some of them from memory"), source);
  }

  @Test
  void the_hottest_channels_air_is_the_rails() {
    ChannelKit warm = THREE.with("channels.2", "ambient=55 C");
    assertEquals(
        25 * Math.sqrt(15 / 40.0), check(warm, CheckKind.RETURN_CURRENT).allowedAmount(), 1e-9);
  }

  @Test
  void a_load_of_unknown_current_leaves_the_sum_open_and_the_lift_at_what_the_supply_delivers() {
    ChannelKit unknown = THREE.with("loads.2", "resistance=");
    Check sum = check(unknown, CheckKind.RAIL_CURRENT);
    assertEquals(Verdict.UNDECIDED, sum.verdict());
    assertEquals(
        List.of("current, resistance or power of load small: write it in loads.csv"),
        sum.missing());
    double ohms = 8.21e-3 * 304.5 / 254.5 + 0.010;
    assertEquals(5 * ohms, channel(unknown, "out 1").high(Term.RETURN_LIFT), 1e-9);
    ChannelKit unlimited = unknown.with("rails", "current limit=");
    assertFalse(channel(unlimited, "out 1").knows(Term.RETURN_LIFT));
  }

  /** 1.1053 A switched; 48 Ω on 24 V and a lamp of 0.4 A always on: 0.5526 A and 0.441 A. */
  @Test
  void a_load_that_no_channel_switches_is_always_on() {
    ChannelKit one = ChannelKit.typical();
    ChannelKit kit =
        one.with("loads.2", THREE.row("loads.2")).with("loads.3", THREE.row("loads.3"));
    Check sum = check(kit.with("rails", "loads on at once=1"), CheckKind.RAIL_CURRENT);
    assertEquals(SUM, sum.actualAmount(), 1e-9, "on top of the one that is on at once");
    assertEquals(SUM, check(kit, CheckKind.RETURN_CURRENT).actualAmount(), 1e-9);
    Check inrush = check(kit, CheckKind.RAIL_INRUSH);
    // the supply comes on, and finds the lamp cold
    assertEquals(WORST / 2 + 15 * 0.441, inrush.actualAmount(), 1e-9);
    assertEquals(List.of("out 1"), rail(kit).channels());
    assertEquals(List.of("small", "lamp"), rail(kit).always());
    Check over = check(kit.with("rails", "current limit=2 A"), CheckKind.RAIL_CURRENT);
    assertEquals(Verdict.OVERLOADED, over.verdict());
    String source = rail(kit).checks().get(0).data().get(0).source().text();
    assertEquals("1 largest loads at once, worst case, and 2 always on", source);
  }

  @Test
  void an_unswitched_load_alone_makes_a_rails_sum_and_lacks_what_it_lacks() {
    ChannelKit kit =
        ChannelKit.typical()
            .with("loads.2", "load=controller; kind=resistive; rail=logic; current=0.3 A")
            .with("rails.logic", "current limit=1 A");
    // 10 % more, assumed, on 5 % more volts
    Check sum = check(kit, "logic", CheckKind.RAIL_CURRENT);
    assertEquals(0.3 * 1.1 * 1.05, sum.actualAmount(), 1e-9);
    assertEquals(Verdict.CARRIES, sum.verdict());
    Check open = check(kit.with("loads.2", "current="), "logic", CheckKind.RAIL_CURRENT);
    assertEquals(
        List.of("current, resistance or power of load controller: write it in loads.csv"),
        open.missing());
    Check astray = check(kit.with("loads.2", "rail="), "logic", CheckKind.RETURN_CONTACTS);
    assertTrue(astray.missing().contains("rail of load controller: write it in loads.csv"));
  }

  /** Two loads by hand, the second of unknown rail: 1.1053 A without it, 1.6579 A with it. */
  private static ChannelKit astray(String load) {
    ChannelKit one = ChannelKit.typical();
    return one.with("loads.2", one.row("loads") + "; load=small; resistance=48 Ohm; " + load)
        .with("channels.2", one.row("channels") + "; channel=out 2; load=small; fuse=");
  }

  private static Check check(ChannelKit kit, String rail, CheckKind kind) {
    return LoadFindings.of(kit.kit()).rails().stream()
        .filter(finding -> finding.rail().name().equals(rail))
        .flatMap(finding -> finding.checks().stream())
        .filter(check -> check.kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "'rail=', rail of load small: write it in loads.csv",
    "'rail=ghost', 'rail \"ghost\" of load small: rails.csv'"
  })
  void a_load_of_unknown_rail_may_hang_on_any(String row, String missing) {
    ChannelKit kit = astray(row);
    Check carries = check(kit, "power", CheckKind.RAIL_CURRENT);
    assertEquals(1.5 * WORST, carries.actualAmount(), 1e-9, "5 A bear both");
    assertEquals(Verdict.CARRIES, carries.verdict());
    assertEquals(List.of("out 1"), rail(kit).channels());
    assertEquals(List.of("out 2"), rail(kit).perhaps());

    ChannelKit weak = kit.with("rails", "current limit=1.5 A; contact rating=2 A");
    for (CheckKind kind :
        List.of(CheckKind.RAIL_CURRENT, CheckKind.RAIL_INRUSH, CheckKind.RETURN_CONTACTS)) {
      Check open = check(weak, "power", kind);
      assertEquals(Verdict.UNDECIDED, open.verdict(), "1.1 A would do, 1.66 A not");
      assertEquals(List.of(missing), open.missing());
      assertEquals(1.5 * WORST, open.actualAmount(), 1e-9);
    }
    assertTrue(rail(weak).remedies().contains(Remedy.lookUp(CheckKind.RAIL_CURRENT, missing)));

    Check over = check(kit.with("rails", "current limit=1.1 A"), "power", CheckKind.RAIL_CURRENT);
    assertEquals(Verdict.OVERLOADED, over.verdict(), "1.1053 A without it, too");
    assertEquals(WORST, over.actualAmount(), 1e-9);
    // 1.5 of 8.21 Ω/km hot and a contact of 10 mΩ
    double ohms = 8.21e-3 * 304.5 / 254.5 + 0.010;
    assertEquals(1.5 * WORST * ohms, channel(kit, "out 1").high(Term.RETURN_LIFT), 1e-9);
  }

  @Test
  void a_load_of_unknown_rail_draws_on_each_what_that_rail_makes_of_it() {
    // 48 Ω on 5 V, 5 % more of one and less of the other; 12 W take 2.4 A of it, 5 % more of each
    ChannelKit ohms = astray("rail=").with("rails.logic", "current limit=2 A");
    Check carries = check(ohms, "logic", CheckKind.RAIL_CURRENT);
    assertEquals(5.0 / 48 * WORST, carries.actualAmount(), 1e-9);
    assertEquals(Verdict.CARRIES, carries.verdict());
    ChannelKit watts =
        astray("rail=; resistance=; power=12 W").with("rails.logic", "current limit=2 A");
    Check open = check(watts, "logic", CheckKind.RAIL_CURRENT);
    assertEquals(2.4 * 1.05 * 1.05, open.actualAmount(), 1e-9);
    assertEquals(Verdict.UNDECIDED, open.verdict());
  }

  /** 1.1053 A of one unit; the board is built twice, and its channel names neither. */
  @Test
  void a_channel_that_names_no_unit_may_be_on_each_that_is_built() {
    ChannelKit twice = ChannelKit.typical().built(2);
    Check carries = check(twice, "power", CheckKind.RAIL_CURRENT);
    assertEquals(2 * WORST, carries.actualAmount(), 1e-9);
    assertEquals(Verdict.CARRIES, carries.verdict());
    Check open = check(twice.with("rails", "current limit=2 A"), "power", CheckKind.RAIL_CURRENT);
    assertEquals(Verdict.UNDECIDED, open.verdict());
    assertEquals(
        List.of(
            "the unit of each channel of board main: begin its name with main-1 and so on in"
                + " channels.csv"),
        open.missing());
    Check named =
        check(twice.with("channels", "channel=main-1.01"), "power", CheckKind.RAIL_CURRENT);
    assertEquals(WORST, named.actualAmount(), 1e-9, "the other unit has none");
    ChannelKit rows = twice.with("channels.2", twice.row("channels") + "; channel=out 2");
    Check listed = check(rows, "power", CheckKind.RAIL_CURRENT);
    assertEquals(2 * WORST, listed.actualAmount(), 1e-9, "two rows of Q1 are of two units");
    assertEquals(List.of(), rail(rows).perhaps());
    Check once = check(twice.with("rails", "loads on at once=1"), "power", CheckKind.RAIL_CURRENT);
    assertEquals(WORST, once.actualAmount(), 1e-9);
  }

  @Test
  void no_more_loads_of_unknown_rail_count_than_are_on_at_once() {
    ChannelKit one = astray("rail=").with("rails", "loads on at once=1; current limit=1.2 A");
    assertEquals(WORST, check(one, "power", CheckKind.RAIL_CURRENT).actualAmount(), 1e-9);
    assertEquals(Verdict.CARRIES, check(one, "power", CheckKind.RAIL_CURRENT).verdict());
  }

  @Test
  void a_load_that_no_table_has_leaves_every_sum_open_and_a_spare_output_none() {
    ChannelKit two = ChannelKit.typical();
    two = two.with("channels.2", two.row("channels") + "; channel=out 2; fuse=; load=ghost");
    Check ghost = check(two, "power", CheckKind.RAIL_CURRENT);
    assertEquals(Verdict.UNDECIDED, ghost.verdict());
    assertTrue(ghost.missing().contains("load \"ghost\" of channel out 2: loads.csv"));
    Check spare = check(two.with("channels.2", "load="), "power", CheckKind.RAIL_CURRENT);
    assertEquals(WORST, spare.actualAmount(), 1e-9);
    assertEquals(Verdict.CARRIES, spare.verdict());
  }

  @Test
  void each_number_that_a_rail_lacks_is_asked_for() {
    Map<String, CheckKind> columns =
        new TreeMap<>(
            Map.of(
                "current limit", CheckKind.RAIL_CURRENT,
                "return wire", CheckKind.RETURN_CURRENT,
                "return length", CheckKind.RETURN_DROP,
                "return contacts", CheckKind.RETURN_CONTACTS,
                "contact rating", CheckKind.RETURN_CONTACTS));
    columns.forEach(
        (column, kind) -> {
          Check check = check(THREE.with("rails", column + "="), kind);
          assertEquals(Verdict.UNDECIDED, check.verdict(), column);
          assertEquals(List.of(column + " of rail power: write it in rails.csv"), check.missing());
        });
    for (String column : List.of("return wire", "return length", "return contacts")) {
      Datum lift = channel(THREE.with("rails", column + "="), "out 1").datum(Term.RETURN_LIFT);
      assertEquals(column + " of rail power: write it in rails.csv", lift.missing());
    }
  }

  @Test
  void a_channel_whose_load_or_rail_is_not_there_says_so() {
    Datum load = channel(THREE.with("channels.2", "load=ghost"), "out 2").datum(Term.RETURN_LIFT);
    assertEquals("load \"ghost\" of channel out 2: loads.csv", load.missing());
    Datum none = channel(THREE.with("channels.2", "load="), "out 2").datum(Term.RETURN_LIFT);
    assertEquals("load of channel out 2: write it in channels.csv", none.missing());
    ChannelInputs rail = channel(THREE.with("loads.2", "rail=ghost"), "out 2");
    assertEquals(
        "rail \"ghost\" of load small: rails.csv", rail.datum(Term.SHORT_CIRCUIT).missing());
    ChannelInputs volts = channel(THREE.with("rails", "voltage="), "out 2");
    assertEquals("voltage of rail power: rails.csv", volts.datum(Term.SUPPLY).missing());
    assertTrue(KitInputs.of(THREE.kit()).channel("out 9").isEmpty());
  }

  @Test
  void a_fuse_carries_what_else_hangs_on_it_on_its_own_board() {
    ChannelKit shared = THREE.with("channels.2", "fuse=F1").with("channels.3", "fuse=F1");
    assertEquals(
        WORST / 2 + 0.441, channel(shared, "out 1").high(Term.OTHERS_ON_FUSE), 1e-9, "both others");
    assertEquals(0, channel(THREE, "out 1").high(Term.OTHERS_ON_FUSE), "none of them");
    assertEquals(0, channel(THREE, "out 2").high(Term.OTHERS_ON_FUSE), "no fuse at all");
    ChannelKit other = shared.with("channels.2", "board=other");
    assertEquals(0.441, channel(other, "out 1").high(Term.OTHERS_ON_FUSE), 1e-9);
    // two boards have the fuse twice: of three channels two share one, in their names or not
    assertEquals(WORST / 2, channel(shared.built(2), "out 1").high(Term.OTHERS_ON_FUSE), 1e-9);
    ChannelKit units =
        shared
            .built(2)
            .with("channels", "channel=main-1.01")
            .with("channels.2", "channel=main-2.01")
            .with("channels.3", "channel=main-1.02");
    assertEquals(0.441, channel(units, "main-1.01").high(Term.OTHERS_ON_FUSE), 1e-9);
    assertEquals(0, channel(units, "main-2.01").high(Term.OTHERS_ON_FUSE), "alone on its unit");
    ChannelKit both = units.with("channels.2", "channel=main-1.03");
    assertEquals(
        WORST / 2 + 0.441,
        channel(both, "main-1.01").high(Term.OTHERS_ON_FUSE),
        1e-9,
        "all on one unit, and none on the other");
    // (6.6150 A of the lamp + 1.6579 A of the others)² · 50 ms, alone in 10 s and more
    Check pulse =
        ChannelKit.check(
            channel(shared, "out 3").with(Datum.missing(Term.PERIOD)), CheckKind.FUSE_PULSE);
    assertEquals(Math.pow(0.441 * 15 + 1.5 * WORST, 2) * 0.05, pulse.actualAmount(), 1e-9);
    ChannelKit unknown = shared.with("loads.2", "resistance=");
    assertEquals(
        "the current of every load that shares it: loads.csv",
        channel(unknown, "out 1").datum(Term.OTHERS_ON_FUSE).missing());
  }

  /** 0.4 A at 24 V are 0.42 A at 25.2 V. */
  @ParameterizedTest
  @EnumSource(
      value = Source.Origin.class,
      names = {"MEMORY", "DATASHEET"})
  void a_remembered_load_is_remembered_in_what_a_shared_fuse_carries(Source.Origin origin) {
    ChannelKit shared = THREE.with("channels.2", "fuse=F1").with("channels.3", "fuse=F1");
    ChannelInputs own = channel(shared, "out 1");
    Datum current = Datum.of(Term.LOAD_CURRENT, 0.4, new Source(origin, "lamp sheet"));
    List<ChannelInputs> all =
        List.of(own, channel(shared, "out 2"), channel(shared, "out 3").with(current));
    Datum others = new SharedParts(shared.kit(), all).onFuse(own);
    assertEquals(WORST / 2 + 0.42, others.high(), 1e-9);
    assertEquals(origin == Source.Origin.DATASHEET, others.canPass());
  }

  /** The voltage is known no better than the worse of what it is made of. */
  @ParameterizedTest
  @CsvSource({
    "KIT, KIT, KIT",
    "KIT, MEMORY, MEMORY",
    "MEMORY, KIT, MEMORY",
    "STANDARD, KIT, STANDARD"
  })
  void a_rail_is_remembered_where_its_voltage_or_its_tolerance_is(
      Source.Origin volts, Source.Origin percent, Source.Origin both) {
    Rail stated = THREE.kit().rails().get(0);
    var rail =
        new Rail(
            "power",
            Optional.of(
                Sourced.of(Quantity.of("24", Dimension.VOLTAGE), new Source(volts, "label"))),
            Optional.of(
                Sourced.of(Quantity.of("5", Dimension.RATIO), new Source(percent, "label"))),
            stated.currentLimit(),
            stated.shortCircuitCurrent(),
            stated.loadsAtOnce(),
            stated.returnWire(),
            stated.returnLength(),
            stated.returnContacts(),
            stated.contactRating(),
            stated.sharedReturn(),
            stated.place());
    Datum voltage = LoadRails.voltage(Term.SUPPLY, rail).orElseThrow();
    assertEquals(both, voltage.source().origin());
    assertEquals(25.2, voltage.high(), 1e-9);
  }

  @Test
  void an_array_carries_what_its_other_outputs_do() {
    ChannelKit one = ChannelKit.array();
    ChannelKit two = one.with("channels.2", one.row("channels") + "; channel=out 2");
    // 24 V/200 Ω, 5 % more of one and less of the other
    assertEquals(0.12 * WORST, channel(two, "out 1").high(Term.OTHERS_ON_STAGE), 1e-9);
    Source source = channel(two, "out 1").datum(Term.OTHERS_ON_STAGE).source();
    assertEquals(new Source(Source.Origin.COMPUTED, "shared with [out 2]"), source);
    ChannelKit apart =
        two.with("drivers.2", one.row("drivers") + "; driver=second")
            .with("channels.2", "driver=second");
    ChannelKit listed = apart.with("bom.U1", "designators=U1, U2; quantity=2; part type=T-ARRAY");
    assertEquals(0, channel(listed, "out 1").high(Term.OTHERS_ON_STAGE), "one package each");
    ChannelKit left = listed.with("bom.U1", "fitted=no");
    assertEquals(
        0.12 * WORST, channel(left, "out 1").high(Term.OTHERS_ON_STAGE), 1e-9, "none is fitted");
    ChannelKit pins = apart.with("bom.U1", "designators=U1; quantity=1; part type=t-array");
    assertEquals(0.12 * WORST, channel(pins, "out 1").high(Term.OTHERS_ON_STAGE), 1e-9);
    assertEquals(0, channel(pins.built(2), "out 1").high(Term.OTHERS_ON_STAGE), "one a board");
    assertEquals(
        0.12 * WORST, channel(apart, "out 1").high(Term.OTHERS_ON_STAGE), 1e-9, "none listed");
    ChannelKit unnamed = apart.with("drivers", "part type=").with("drivers.2", "part type=");
    assertEquals(0, channel(unnamed, "out 1").high(Term.OTHERS_ON_STAGE), "of no part type");
    // three drivers on two packages: the larger of the others may be on the same
    ChannelKit three =
        listed
            .with("drivers.3", one.row("drivers") + "; driver=third")
            .with("loads.3", one.row("loads") + "; load=small; resistance=400 Ohm")
            .with("channels.3", one.row("channels") + "; channel=out 3; driver=third; load=small");
    assertEquals(0.12 * WORST, channel(three, "out 1").high(Term.OTHERS_ON_STAGE), 1e-9);
    assertEquals(0.12 * WORST, channel(three, "out 3").high(Term.OTHERS_ON_STAGE), 1e-9);
    ChannelKit largerLast =
        three.with("channels.2", "load=small").with("channels.3", "load=striker");
    assertEquals(0.12 * WORST, channel(largerLast, "out 1").high(Term.OTHERS_ON_STAGE), 1e-9);
    assertEquals(0, channel(ChannelKit.typical(), "out 1").high(Term.OTHERS_ON_STAGE));
  }

  /** An array that stands where a MOSFET would: its designator tells it, not the pins' names. */
  @Test
  void an_array_with_a_designator_is_one_package_whatever_drives_its_inputs() {
    ChannelKit one =
        ChannelKit.typical()
            .with("bom.Q1", "part type=ULN2803A; description=Darlington array")
            .with("loads", "resistance=200 Ohm");
    ChannelKit two =
        one.with("drivers.2", one.row("drivers") + "; driver=pin 2")
            .with("channels.2", one.row("channels") + "; channel=out 2; driver=pin 2");
    assertEquals(0.12 * WORST, channel(two, "out 1").high(Term.OTHERS_ON_STAGE), 1e-9);
    assertEquals(0, channel(two.built(2), "out 1").high(Term.OTHERS_ON_STAGE), "one a board");
    ChannelKit other = two.with("channels.2", "board=other");
    assertEquals(0, channel(other, "out 1").high(Term.OTHERS_ON_STAGE));
  }

  /** 1.658 A of the one rail and 0.441 A of the other come back through the same conductor. */
  @Test
  void rails_that_name_the_same_return_load_it_together() {
    ChannelKit two =
        THREE.with("rails.2", THREE.row("rails") + "; rail=second").with("loads.3", "rail=second");
    double first = 1.5 * WORST;
    assertEquals(first, check(two, CheckKind.RETURN_CURRENT).actualAmount(), 1e-9);
    ChannelKit named = two.with("rails", "return=main").with("rails.2", "return=Main");
    for (CheckKind kind : List.of(CheckKind.RETURN_CURRENT, CheckKind.RETURN_CONTACTS)) {
      assertEquals(first + 0.441, check(named, kind).actualAmount(), 1e-9);
    }
    assertEquals(first, check(named, CheckKind.RAIL_CURRENT).actualAmount(), 1e-9);
    assertEquals(
        (first + 0.441) / first,
        check(named, CheckKind.RETURN_DROP).actualAmount()
            / check(two, CheckKind.RETURN_DROP).actualAmount(),
        1e-9);
    assertEquals(
        check(named, CheckKind.RETURN_DROP).actualAmount(),
        channel(named, "out 1").high(Term.RETURN_LIFT),
        1e-9);
    ChannelKit others = named.with("rails.2", "return=other");
    assertEquals(first, check(others, CheckKind.RETURN_CURRENT).actualAmount(), 1e-9);
    ChannelKit unknown = named.with("loads.3", "current=");
    assertEquals(Verdict.UNDECIDED, check(unknown, CheckKind.RETURN_CURRENT).verdict());
    assertFalse(channel(unknown, "out 1").knows(Term.RETURN_LIFT));
  }

  /** A rail of which nobody lists the loads sends back what it delivers at most, or anything. */
  @Test
  void a_return_is_open_while_the_loads_of_a_rail_that_shares_it_are_not_listed() {
    ChannelKit one = ChannelKit.typical().with("rails", "return=ground");
    ChannelKit shared = one.with("rails.logic", "return=Ground; current limit=2 A");
    assertEquals(Verdict.CARRIES, rail(one).verdict());
    assertEquals(Verdict.CARRIES, rail(shared).verdict(), "it carries all that may come");
    assertEquals(WORST + 2, check(shared, CheckKind.RETURN_CURRENT).actualAmount(), 1e-9);
    assertEquals(
        channel(one, "out 1").high(Term.RETURN_LIFT) * (WORST + 2) / WORST,
        channel(shared, "out 1").high(Term.RETURN_LIFT),
        1e-9);
    ChannelKit more = shared.with("rails.logic", "current limit=40 A");
    for (ChannelKit open : List.of(more, shared.with("rails.logic", "current limit="))) {
      Check check = check(open, CheckKind.RETURN_CURRENT);
      assertEquals(Verdict.UNDECIDED, check.verdict());
      assertTrue(check.missing().contains("the loads of rail logic: loads.csv"), check::toString);
    }
    assertEquals(WORST, check(one, CheckKind.RETURN_CURRENT).actualAmount(), 1e-9);
    ChannelKit listed =
        more.with("loads.2", "load=chips; kind=resistive; rail=logic; current=1 A; tolerance=0 %");
    assertEquals(WORST + 1.05, check(listed, CheckKind.RETURN_CURRENT).actualAmount(), 1e-9);
    assertEquals(Verdict.CARRIES, check(listed, CheckKind.RETURN_CURRENT).verdict());
  }

  /** Each board that is built has its own array; one on another board serves them all. */
  @Test
  void an_array_on_each_unit_carries_the_outputs_of_its_unit() {
    ChannelKit array = ChannelKit.array().built(2);
    ChannelKit four =
        array
            .with("channels", "channel=main-1.01")
            .with("channels.2", array.row("channels") + "; channel=main-1.02")
            .with("channels.3", array.row("channels") + "; channel=main-2.01")
            .with("channels.4", array.row("channels") + "; channel=main-2.02");
    double load = 0.12 * WORST;
    assertEquals(
        3 * load, channel(four, "main-1.01").high(Term.OTHERS_ON_STAGE), 1e-9, "in no BOM");
    ChannelKit listed = four.with("bom.U1", "designators=U1; quantity=1; part type=T-ARRAY");
    for (String name : List.of("main-1.01", "main-2.02")) {
      assertEquals(load, channel(listed, name).high(Term.OTHERS_ON_STAGE), 1e-9, name);
    }
    // two drivers on the one array of each unit
    ChannelKit drivers =
        listed
            .with("drivers.2", array.row("drivers") + "; driver=second")
            .with("channels.2", "driver=second")
            .with("channels.4", "driver=second");
    assertEquals(load, channel(drivers, "main-2.01").high(Term.OTHERS_ON_STAGE), 1e-9);
    ChannelKit pair = drivers.with("bom.U1", "designators=U1, U2; quantity=2");
    assertEquals(0, channel(pair, "main-2.01").high(Term.OTHERS_ON_STAGE), 1e-9);
  }

  @Test
  void what_flows_into_a_short_is_stated_or_limited_or_left_to_cold_copper() {
    assertEquals(5, channel(THREE, "out 1").high(Term.SHORT_CIRCUIT), 1e-9);
    ChannelKit stated = THREE.with("rails", "short-circuit current=80 A");
    assertEquals(80, channel(stated, "out 1").high(Term.SHORT_CIRCUIT), 1e-9);
    ChannelKit copper = THREE.with("rails", "current limit=");
    // 25.2 V on 1 m of 2.5 mm² of 17.241 Ω·mm²/km, 234.5/254.5 of it at 0 °C
    assertEquals(
        25.2 / (17.241e-3 / 2.5 * 234.5 / 254.5),
        channel(copper, "out 1").high(Term.SHORT_CIRCUIT),
        1e-6);
    // no supply is known to deliver those 4 kA, nor to stay below what the fuse breaks
    Check open =
        ChannelFinding.of(channel(copper, "out 1")).check(CheckKind.FUSE_BREAKING).orElseThrow();
    assertEquals(Verdict.UNDECIDED, open.verdict());
    assertTrue(open.missing().get(0).contains("current limit"), open.missing().get(0));
  }

  @Test
  void a_rail_is_mended_by_the_next_size_up() {
    ChannelKit weak =
        THREE.with(
            "rails",
            "current limit=1 A; return wire=0.14 mm2; return length=20 m; return contacts=1;"
                + " contact rating=1 A");
    List<Remedy> remedies = rail(weak).remedies();
    // 2.0989 A rounded up to two figures, and 8.2729 A of inrush
    assertEquals(2.1, value(remedies, CheckKind.RAIL_CURRENT, Term.RAIL_LIMIT), 1e-9);
    assertEquals(8.3, value(remedies, CheckKind.RAIL_INRUSH, Term.RAIL_LIMIT), 1e-9);
    // 0.34 mm² bears 0.959 A, 0.5 mm² 3 A · √0.75 = 2.598 A
    assertEquals(0.5, value(remedies, CheckKind.RETURN_CURRENT, Term.RETURN_AREA), 1e-9);
    // 0.8 · n · 1 A ≥ 2.0989 A
    assertEquals(3, value(remedies, CheckKind.RETURN_CONTACTS, Term.RETURN_CONTACTS), 1e-9);
    // 0.72 V/2.0989 A less 10 mΩ leaves 333.0 mΩ: 16.65 mΩ/m hot, so 13.92 Ω/km cold; 1.5 mm² has
    // 13.7
    assertEquals(1.5, value(remedies, CheckKind.RETURN_DROP, Term.RETURN_AREA), 1e-9);
    // of 147.4 Ω/km, 176.36 mΩ/m hot: 1.888 m, down to two figures
    assertEquals(1800, value(remedies, CheckKind.RETURN_DROP, Term.RETURN_LENGTH), 1e-9);
    assertTrue(remedies.stream().noneMatch(Remedy::carriesAlone));
    assertEquals(6, remedies.size());
  }

  @Test
  void a_rail_that_lacks_one_thing_is_mended_by_it_alone() {
    ChannelKit weak = ChannelKit.typical().with("rails", "contact rating=1 A");
    List<Remedy> remedies = rail(weak).remedies();
    // 0.8 · 2 · 1 A ≥ 1.1053 A
    assertEquals(2, value(remedies, CheckKind.RETURN_CONTACTS, Term.RETURN_CONTACTS), 1e-9);
    assertTrue(remedies.get(0).carriesAlone());
    assertEquals(1, remedies.size());
    assertEquals(List.of(), rail(ChannelKit.typical()).remedies());
    ChannelKit open = ChannelKit.typical().with("rails", "contact rating=");
    assertEquals(
        List.of(
            Remedy.lookUp(
                CheckKind.RETURN_CONTACTS, "contact rating of rail power: write it in rails.csv")),
        rail(open).remedies());
  }

  private static double value(List<Remedy> remedies, CheckKind kind, Term term) {
    return remedies.stream()
        .filter(remedy -> remedy.check() == kind && remedy.term().orElseThrow() == term)
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + term + " for " + kind + " in " + remedies))
        .value()
        .orElseThrow()
        .asDouble();
  }
}
