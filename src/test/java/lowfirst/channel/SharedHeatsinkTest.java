package lowfirst.channel;

import static lowfirst.channel.check.Verdict.CARRIES;
import static lowfirst.channel.check.Verdict.OVERLOADED;
import static lowfirst.channel.check.Verdict.UNDECIDED;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Two MOSFETs of 50 mΩ with 4 A each, at 40 °C, RthJC 1.5 K/W. Alone on R K/W: T = 40 + (1.5 +
 * R)·0.8·k(T), k(T) = 0.8 + 0.008·T up to 100 °C. The other is at most as hot as it may get, 150
 * °C, where k = 1.6 + 0.8·50/75 = 2.1333: 0.8 W · 2.1333 = 1.7067 W more on the heatsink.
 */
class SharedHeatsinkTest {
  private static final ChannelKit TWO = two("8 K/W", "8 K/W");

  private static ChannelKit two(String first, String second) {
    ChannelKit kit =
        ChannelKit.typical()
            .with("rails", "tolerance=0 %; current limit=20 A")
            .with(
                "loads",
                "kind=resistive; resistance=; inductance=; current=4 A; tolerance=0 %; on time=")
            .with("channels", "heatsink=" + first)
            .with("bom.Q2", "designators=Q2; part type=T-FET; description=MOSFET, N-channel");
    return kit.with("channels.two", kit.row("channels"))
        .with("channels.two", "channel=out 2; MOSFET=Q2; heatsink=" + second);
  }

  private static Check heat(ChannelKit kit) {
    return kit.check(CheckKind.JUNCTION_TEMPERATURE);
  }

  private static double alone(double sink) {
    double rise = (1.5 + sink) * 0.8;
    return (40 + rise * 0.8) / (1 - rise * 0.008);
  }

  private static double shared(double sink) {
    double rise = (1.5 + sink) * 0.8;
    return (40 + sink * 1.7067 + rise * 0.8) / (1 - rise * 0.008);
  }

  @Test
  void what_a_named_heatsink_carries_heats_all_on_it() {
    Check check = heat(two("8 K/W HS1", "8 K/W hs1"));
    assertEquals(shared(8), check.actualAmount(), 0.01);
    assertEquals(CARRIES, check.verdict());
    assertTrue(
        check.inputs().stream()
            .anyMatch(in -> in.value().source().toString().contains("shared with [out 2]")));
    assertEquals(alone(8), heat(two("8 K/W HS1", "8 K/W HS2")).actualAmount(), 0.01);
    assertEquals(alone(8), heat(two("8 K/W HS1", "")).actualAmount(), 0.01, "in free air");
  }

  /** On 40 K/W alone 90.6 °C; with 68 K more 195 °C, where k(T) = 1.6 + 0.8/75·(T - 100). */
  @ParameterizedTest
  @CsvSource({
    "40 K/W, 40 K/W, UNDECIDED",
    "40 K/W HS1, 40 K/W HS1, OVERLOADED",
    "40 K/W HS1, 40 K/W HS2, CARRIES",
    "40 K/W, 39 K/W, CARRIES",
    "'40 K/W, rear', '40 K/W, rear', OVERLOADED",
  })
  void where_nobody_says_and_it_matters_that_is_asked(String one, String two, Verdict verdict) {
    ChannelKit kit = two(one, two);
    assertEquals(verdict, heat(kit).verdict());
    assertEquals(verdict == UNDECIDED, heat(kit).missing().toString().contains("name behind each"));
  }

  @Test
  void where_it_does_not_matter_nothing_is_asked() {
    assertEquals(CARRIES, heat(TWO).verdict());
    assertEquals(shared(8), heat(TWO).actualAmount(), 0.01);
  }

  @Test
  void a_heatsink_for_each_in_the_bom_is_an_answer() {
    ChannelKit kit = two("40 K/W", "40 K/W");
    ChannelKit one = kit.with("bom.HS", "designators=HS1; description=heatsink");
    assertEquals(UNDECIDED, heat(one).verdict());
    ChannelKit each = kit.with("bom.HS", "designators=HS1, HS2; description=heatsink; quantity=2");
    assertEquals(CARRIES, heat(each).verdict());
    assertEquals(alone(40), heat(each).actualAmount(), 0.01);
  }

  @Test
  void a_part_that_is_tried_in_one_place_does_not_pass_for_the_others() {
    ChannelInputs in = two("8 K/W HS1", "8 K/W HS1").inputs();
    ChannelInputs tried = in.with(in.parts().get(Role.MOSFET));
    assertEquals(UNDECIDED, ChannelKit.check(tried, CheckKind.JUNCTION_TEMPERATURE).verdict());
    assertEquals(OVERLOADED, heat(two("100 K/W HS1", "8 K/W HS1")).verdict());
  }

  /** What nobody knows of the other load heats this one, too. */
  @Test
  void a_heat_that_is_not_known_is_asked_for_where_it_goes() {
    Check check = heat(two("8 K/W HS1", "8 K/W HS1").with("channels.two", "load=ghost"));
    assertEquals(UNDECIDED, check.verdict());
    assertTrue(
        check.missing().contains("the heat of [out 2], on one heatsink: what they lack"),
        check::toString);
  }
}
