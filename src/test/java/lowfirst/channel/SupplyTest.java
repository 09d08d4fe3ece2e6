package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One supply unit for two rails, by hand. 24 V ±5 % over 24 Ω ±5 %: 25.2 V · 1.05/0.95 A = 27.853
 * W. 5 V ±5 % with a strip of 2 A: 5.25 V · 2.1 A = 11.025 W.
 */
class SupplyTest {
  private static final double POWER = 25.2 * 1.05 / 0.95;
  private static final double LOGIC = 5.25 * 2.1;

  private static ChannelKit one(String limit) {
    return ChannelKit.typical()
        .with("supplies", "supply=PC; rails=power, logic; power limit=" + limit);
  }

  private static ChannelKit two(String limit) {
    ChannelKit one = one(limit);
    return one.with("loads.2", "load=strip; kind=resistive; rail=logic; current=2 A; tolerance=0 %")
        .with("channels.2", one.row("channels") + "; channel=out 2; load=strip; fuse=");
  }

  private static SupplyFinding supply(ChannelKit kit) {
    return LoadFindings.of(kit.kit()).supplies().get(0);
  }

  private static Check check(ChannelKit kit, CheckKind kind) {
    return supply(kit).checks().stream().filter(c -> c.kind() == kind).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"39 W, CARRIES", "38.8 W, OVERLOADED", "'', UNDECIDED"})
  void the_rails_of_a_unit_share_its_power(String limit, Verdict verdict) {
    for (CheckKind kind : List.of(CheckKind.SUPPLY_POWER, CheckKind.SUPPLY_INRUSH)) {
      Check check = check(two(limit), kind);
      assertEquals(POWER + LOGIC, check.actualAmount(), 1e-9, "38.878 W");
      assertEquals(verdict, check.verdict());
    }
    LoadFindings all = LoadFindings.of(two(limit).kit());
    assertEquals("PC", all.sums().get(all.sums().size() - 1).name(), "after the rails");
    if (verdict == Verdict.UNDECIDED) {
      String missing = "power limit of supply PC: write it in supplies.csv";
      assertEquals(List.of(missing), check(two(limit), CheckKind.SUPPLY_POWER).missing());
      assertTrue(
          supply(two(limit)).remedies().contains(Remedy.lookUp(CheckKind.SUPPLY_POWER, missing)));
    }
    if (verdict == Verdict.OVERLOADED) {
      Remedy remedy = supply(two(limit)).remedies().get(0);
      assertEquals(Term.SUPPLY_LIMIT, remedy.term().orElseThrow());
      assertEquals(39, remedy.value().orElseThrow().asDouble(), 1e-9, "two figures, up");
      assertTrue(remedy.carriesAlone());
    }
  }

  @Test
  void a_kit_that_names_no_supply_unit_has_no_finding_of_one() {
    LoadFindings plain = LoadFindings.of(ChannelKit.typical().kit());
    assertEquals(List.of(), plain.supplies());
    assertEquals(plain.rails(), plain.sums());
  }

  /** A lamp of 0.4 A ±5 % on 24 V too: 25.2 V · 0.441 A = 11.113 W, 15 times that at the start. */
  @Test
  void only_so_many_loads_of_a_rail_count_as_are_on_at_once() {
    ChannelKit lamp =
        two("39 W")
            .with("loads.3", "load=lamp; kind=lamp; rail=power; current=0.4 A; tolerance=5 %")
            .with("channels.3", two("").row("channels") + "; channel=out 3; load=lamp; fuse=");
    double watts = 25.2 * 0.441;
    Check all = check(lamp, CheckKind.SUPPLY_POWER);
    assertEquals(POWER + LOGIC + watts, all.actualAmount(), 1e-9);
    assertEquals(Verdict.OVERLOADED, all.verdict());
    assertEquals(
        POWER + LOGIC + 15 * watts, check(lamp, CheckKind.SUPPLY_INRUSH).actualAmount(), 1e-9);
    Check largest = check(lamp.with("rails", "loads on at once=1"), CheckKind.SUPPLY_POWER);
    assertEquals(POWER + LOGIC, largest.actualAmount(), 1e-9);
    assertEquals(Verdict.CARRIES, largest.verdict());
  }

  /** The 5 V rail gives 1 A at most: 5.25 W on top of 27.853 W. */
  @ParameterizedTest
  @CsvSource({"34 W, CARRIES", "33 W, UNDECIDED", "27 W, OVERLOADED"})
  void a_rail_of_unknown_loads_takes_no_more_than_its_own_limit(String limit, Verdict verdict) {
    ChannelKit kit = one(limit).with("rails.logic", "current limit=1 A");
    Check check = check(kit, CheckKind.SUPPLY_POWER);
    assertEquals(verdict, check.verdict());
    assertEquals(verdict == Verdict.OVERLOADED ? POWER : POWER + 5.25, check.actualAmount(), 1e-9);
    assertEquals(
        verdict == Verdict.UNDECIDED
            ? List.of("the loads of rail logic: write them in loads.csv")
            : List.of(),
        check.missing());
    Check unlimited = check(one(limit), CheckKind.SUPPLY_POWER);
    assertEquals(
        verdict == Verdict.OVERLOADED ? Verdict.OVERLOADED : Verdict.UNDECIDED,
        unlimited.verdict());
  }

  @Test
  void a_load_of_unknown_rail_may_be_on_any_of_them() {
    // 24 Ω on 5 V: 5.25 V · 5/24 · 1.05/0.95 A = 1.209 W, and 27.853 W on 24 V
    ChannelKit kit = two("").with("loads", "rail=");
    double most = POWER + LOGIC + 5.25 * 5 / 24 * 1.05 / 0.95;
    Check carries = check(kit.with("supplies", "power limit=41 W"), CheckKind.SUPPLY_POWER);
    assertEquals(most, carries.actualAmount(), 1e-9);
    assertEquals(Verdict.CARRIES, carries.verdict());
    Check open = check(kit.with("supplies", "power limit=39 W"), CheckKind.SUPPLY_POWER);
    assertEquals(Verdict.UNDECIDED, open.verdict());
    assertTrue(open.missing().contains("rail of load striker: write it in loads.csv"));
    Check over = check(kit.with("supplies", "power limit=11 W"), CheckKind.SUPPLY_POWER);
    assertEquals(Verdict.OVERLOADED, over.verdict(), "the strip alone is 11.025 W");
  }

  @ParameterizedTest
  @CsvSource({
    "'rails=power, ghost', 'rail \"ghost\" of supply PC: rails.csv'",
    "'rails=', 'rails of supply PC: write them in supplies.csv'"
  })
  void without_its_rails_nothing_is_said_of_a_unit(String rails, String missing) {
    Check check = check(two("400 W").with("supplies", rails), CheckKind.SUPPLY_POWER);
    assertEquals(Verdict.UNDECIDED, check.verdict());
    assertEquals(List.of(missing), check.missing());
  }

  @Test
  void a_unit_may_limit_some_of_its_rails_and_all_of_them_once_more() {
    ChannelKit kit = two("39 W").with("supplies.2", "supply=PC 5 V; rails=logic; power limit=10 W");
    List<SupplyFinding> supplies = LoadFindings.of(kit.kit()).supplies();
    assertEquals(Verdict.CARRIES, supplies.get(0).verdict());
    assertEquals(LOGIC, supplies.get(1).checks().get(0).actualAmount(), 1e-9);
    assertEquals(Verdict.OVERLOADED, supplies.get(1).verdict());
  }

  @Test
  void a_load_of_unknown_current_leaves_its_unit_open() {
    Check check = check(two("400 W").with("loads.2", "current="), CheckKind.SUPPLY_POWER);
    assertEquals(Verdict.UNDECIDED, check.verdict());
    assertEquals(
        List.of("current, resistance or power of load strip: write it in loads.csv"),
        check.missing());
  }
}
