package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lowfirst.board.Bounds;
import lowfirst.channel.check.Verdict;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import lowfirst.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A number that can't be meant decides nothing; one that may be meant is never refused. */
class BoundsTest {
  private static final ChannelKit KIT = ChannelKit.typical();

  /** Slips of a sign, a unit, a decimal point or a column: each would let more carry. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "channels, ambient=-45 C",
    "channels, ambient=450 C",
    "channels, contact rating=1000 A",
    "channels, wire length=5 km",
    "channels, wire length=5000 m",
    "channels, wire=150 mm2",
    "channels, trace copper=35 mm",
    "channels, trace width=100 mm",
    "channels, heatsink=0.01 K/W",
    "rails, current limit=10 kA",
    "rails, voltage=24 mV",
    "rails, contact rating=15 kA",
    "rails, return length=2 km",
    "rails, return wire=250 mm2",
    "rails, short-circuit current=5 uA",
    "drivers, current limit=400 A",
    "drivers, high level min=4700 V",
    "drivers, PWM frequency=-20 kHz",
    "loads, resistance=24 MOhm",
    "loads, on time=100 ns",
    "loads, period=1000000000 s",
    "loads, inrush=1 nA",
    "loads, pull-in voltage=12 mV",
    "bom.R1, value=10M",
    "bom.R1, value=1M",
    "bom.R2, value=1R",
  })
  void what_cannot_be_meant_carries_nothing(String row, String cell) {
    ChannelKit kit = KIT.with(row, cell);
    Verdict channel = kit.finding().verdict();
    assertEquals(Verdict.UNDECIDED, channel);
  }

  @Test
  void the_hottest_air_of_the_kit_is_bounded_as_that_of_a_channel_is() {
    assertEquals(Verdict.CARRIES, KIT.setting("ambient", "-40 C").finding().verdict());
    assertEquals(Verdict.UNDECIDED, KIT.setting("ambient", "-45 C").finding().verdict());
    assertEquals(Verdict.UNDECIDED, KIT.setting("ambient", "450 C").finding().verdict());
  }

  /** What people really have: a freezer, a link for a gate resistor, a starter battery. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "channels, ambient=-30 C",
    "channels, ambient=0 C",
    "channels, contact rating=125 A",
    "channels, wire length=0 m",
    "channels, trace copper=400 um",
    "channels, heatsink=40 K/W",
    "rails, short-circuit current=45 A",
    "rails, tolerance=0 %",
    "drivers, current limit=9 A",
    "drivers, low level max=-5 V",
    "loads, inductance=2 H",
    "loads, max on time=3600 s",
    "loads, temperature rise=0 K",
    "bom.R2, value=1M",
  })
  void what_may_be_meant_is_read(String row, String cell) {
    assertEquals(List.of(), outOfRange(KIT.with(row, cell)), cell);
  }

  @Test
  void the_fault_names_the_cell_what_is_wrong_and_what_to_write() {
    Problem cold = outOfRange("channels.csv", "channel,ambient\nout 1,-45 C\n").get(0);
    assertEquals("channels.csv", cold.place().file());
    assertEquals(2, cold.place().line());
    assertEquals(2, cold.place().column());
    assertTrue(cold.message().startsWith("the ambient can't be -45 °C: "), cold.message());
    assertEquals("write an amount from -40 °C to 180 °C, with its unit", cold.remedy());
  }

  /** The BOM's value is a resistor's, but none of this place. */
  @Test
  void a_resistor_that_no_gate_has_is_said_at_the_channel() {
    Map<String, String> texts =
        Map.of(
            "bom.csv", "designators,value\nQ1,2N7000\nR1,10M\nR2,1R\n",
            "channels.csv", "channel,MOSFET,gate resistor,pull-down\nout 1,Q1,R1,R2\n");
    List<Problem> found = outOfRange(texts);
    assertEquals(List.of(3, 4), found.stream().map(problem -> problem.place().column()).toList());
    assertTrue(found.get(0).message().startsWith("the gate resistor R1 can't be 10 MΩ"));
    assertTrue(found.get(1).message().startsWith("the pull-down R2 can't be 1 Ω"));
  }

  @ParameterizedTest
  @EnumSource(Bounds.class)
  void both_ends_are_within_and_what_lies_beyond_is_not(Bounds bounds) {
    assertTrue(bounds.within("amount", bounds.least()).isRead());
    assertTrue(bounds.within("amount", bounds.most()).isRead());
    double span = bounds.most().asDouble() - bounds.least().asDouble();
    assertTrue(span > 0);
    double below = bounds.least().asDouble() - Math.max(1e-12, 1e-6 * span);
    double above = bounds.most().asDouble() * 1.000001;
    for (double beyond : new double[] {below, above}) {
      Quantity amount = Quantity.of(beyond, bounds.dimension());
      assertTrue(!bounds.within("amount", amount).isRead(), bounds + " " + amount);
    }
  }

  private static List<Problem> outOfRange(ChannelKit kit) {
    return kit.problems().stream().filter(p -> p.kind() == Kind.OUT_OF_RANGE).toList();
  }

  private static List<Problem> outOfRange(String file, String text) {
    return outOfRange(Map.of("bom.csv", "designators,value\nR1,1k\n", file, text));
  }

  private static List<Problem> outOfRange(Map<String, String> texts) {
    Map<String, byte[]> files =
        texts.entrySet().stream()
            .collect(
                Collectors.toMap(
                    Map.Entry::getKey, file -> file.getValue().getBytes(StandardCharsets.UTF_8)));
    return KitReader.read(new KitFiles("test", files, List.of())).problems().stream()
        .filter(p -> p.kind() == Kind.OUT_OF_RANGE)
        .toList();
  }
}
