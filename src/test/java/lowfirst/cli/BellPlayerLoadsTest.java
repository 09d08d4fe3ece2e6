package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lowfirst.board.Kit;
import lowfirst.channel.ChannelFinding;
import lowfirst.channel.LoadFindings;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Verdict;
import lowfirst.cli.file.KitFolder;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;
import org.junit.jupiter.api.Test;

/**
 * What the sample kit's loads must be found to be, by sums done by hand from the kit's own tables.
 *
 * <p>From them: BP-N60L at VGS 4 V at most 50 mΩ, 62 K/W to the air, hot factor 1.29 at 75 °C, 1.5
 * at 100 °C, 1.74 at 125 °C; junction at most 150 °C, of which 25 K are kept: 125 °C. Air 50 °C.
 * Rails ±5 %. Fuse 7 A to UL 248-14: 7 A · 0.75 · (1 − 0.005/K · 25 K) = 4.594 A.
 */
class BellPlayerLoadsTest {
  private static final KitFiles KIT = KitFolder.read(Path.of("sample-boms", "bell-player"));
  private static final Kit READ = KitReader.read(KIT).kit();

  /** Of each test its own: nothing computed is kept from one to the next. */
  private final LoadFindings found = LoadFindings.of(READ);

  @Test
  void three_channels_are_not_in_order_and_all_others_carry() {
    Map<String, Verdict> others =
        found.channels().values().stream()
            .filter(finding -> !finding.carries())
            .collect(
                Collectors.toMap(
                    finding -> finding.channel().load(), ChannelFinding::verdict, (a, b) -> a));
    assertEquals(
        Map.of(
            "great damper", Verdict.OVERLOADED,
            "frost heater", Verdict.OVERLOADED,
            "sign part C", Verdict.UNDECIDED),
        others);
    assertEquals(32, found.channels().size());
  }

  @Test
  void a_large_bells_striker_is_far_inside_every_limit() {
    // 24 V / 12 Ω = 2 A; rail 5 % more, coil 5 % less: 2 · 1.05/0.95 = 2.2105 A, below
    // the fuse's 4.594 A.
    // Even held on: 2.2105² · 0.05 Ω · 62 K/W = 15.1 K cold; hot factor below 1.29: less than 70
    // °C.
    Check current = check("bell C5", CheckKind.FUSE_CURRENT);
    assertEquals(2.2105, current.actual().orElseThrow().asDouble(), 0.001);
    assertEquals(4.594, current.allowed().orElseThrow().asDouble(), 0.001);
    assertTrue(
        check("bell C5", CheckKind.JUNCTION_TEMPERATURE).actual().orElseThrow().asDouble() < 70);
  }

  @Test
  void the_great_damper_is_overloaded_by_fuse_and_heat_even_cold() {
    // 24 V / 3 Ω = 8 A; · 1.05/0.95 = 8.842 A, above the fuse's 4.594 A.
    // Cold: 8.842² · 0.05 Ω · 62 K/W = 242 K above 50 °C = 292 °C, above 125 °C, and held for 30 s.
    Check fuse = check("great damper", CheckKind.FUSE_CURRENT);
    assertEquals(8.842, fuse.actual().orElseThrow().asDouble(), 0.005);
    assertEquals(Verdict.OVERLOADED, fuse.verdict());
    assertEquals(
        Verdict.OVERLOADED, check("great damper", CheckKind.JUNCTION_TEMPERATURE).verdict());
  }

  @Test
  void the_frost_heater_fails_only_because_a_hot_mosfet_resists_more() {
    // 3.8 A · 1.02 · 1.05 = 4.070 A. Cold: 4.070² · 0.05 Ω · 62 K/W = 51.35 K: 50 + 51.35 = 101 °C,
    // below 125 °C. Hot: 50 + 51.35 · k(T) is above T at every point of the curve up to the limit:
    // 75 °C: 116; 100 °C: 127; 125 °C: 139. Straight between points: no balance below 125 °C.
    ChannelFinding heater = finding("frost heater");
    List<CheckKind> failing =
        heater.checks().stream()
            .filter(check -> check.verdict() != Verdict.CARRIES)
            .map(Check::kind)
            .toList();
    assertEquals(List.of(CheckKind.JUNCTION_TEMPERATURE), failing);
  }

  @Test
  void in_a_cool_cabinet_the_frost_heater_carries() {
    // Air 25 °C: T = 25 + 51.35 · k(T). At 100 °C: 102.0, above; at 125 °C: 114.4, below. Between
    // them
    // k = 1.5 + 0.0096 · (T − 100): T = (25 + 51.3 · (1.5 − 0.96)) / (1 − 51.3 · 0.0096) = 103.8
    // °C.
    var cool = new TreeMap<>(KIT.contents());
    cool.put("kit.properties", "ambient = 25 C\n".getBytes(StandardCharsets.UTF_8));
    LoadFindings findings =
        LoadFindings.of(KitReader.read(new KitFiles("cool", cool, List.of(), KIT.given())).kit());
    ChannelFinding heater =
        findings.channels().values().stream()
            .filter(finding -> finding.channel().load().equals("frost heater"))
            .findFirst()
            .orElseThrow();
    assertEquals(Verdict.CARRIES, heater.verdict());
    double junction =
        heater
            .check(CheckKind.JUNCTION_TEMPERATURE)
            .orElseThrow()
            .actual()
            .orElseThrow()
            .asDouble();
    assertEquals(104.0, junction, 0.1);
  }

  @Test
  void sign_part_c_is_undecided_for_want_of_its_wires_length_alone() {
    List<Check> open =
        finding("sign part C").checks().stream()
            .filter(check -> check.verdict() != Verdict.CARRIES)
            .toList();
    assertEquals(List.of(CheckKind.WIRE_DROP), open.stream().map(Check::kind).toList());
    assertTrue(open.get(0).missing().toString().contains("wire length"));
  }

  @Test
  void both_rails_carry_their_worst_set() {
    // bells: four at once, the damper and three large strikers: 8.842 + 3 · 2.2105 = 15.47 A of 20
    // A.
    Check bells =
        found.rails().stream()
            .filter(finding -> finding.rail().name().equals("bells"))
            .flatMap(finding -> finding.checks().stream())
            .filter(check -> check.kind() == CheckKind.RAIL_CURRENT)
            .findFirst()
            .orElseThrow();
    assertEquals(15.47, bells.actual().orElseThrow().asDouble(), 0.05);
    found.rails().forEach(rail -> assertEquals(Verdict.CARRIES, rail.verdict()));
  }

  private Check check(String load, CheckKind kind) {
    return finding(load).check(kind).orElseThrow();
  }

  private ChannelFinding finding(String load) {
    return found.channels().values().stream()
        .filter(finding -> finding.channel().load().equals(load))
        .findFirst()
        .orElseThrow();
  }
}
