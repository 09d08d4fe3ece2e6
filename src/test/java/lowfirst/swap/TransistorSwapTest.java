package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.channel.ChannelKit;
import lowfirst.swap.rule.SwapVerdict;
import org.junit.jupiter.api.Test;

/**
 * A transistor that switches 40 mA of a heater at 12 V, by hand: 40 mA and 1 %, at 12.6 V 42.4 mA.
 * The pin's 4.7 V less the 0.95 V of its base drive 470 Ω and 1 % behind 30 Ω with 7.4 mA, of which
 * the pull-down takes 0.1 mA: 42.4 mA over 7.3 mA is 5.8, and 10 is promised to saturate.
 */
class TransistorSwapTest {
  private static final ChannelKit HEATER =
      ChannelKit.typical()
          .with("rails", "voltage=12 V")
          .with(
              "loads",
              "kind=resistive; resistance=; inductance=; current=40 mA; tolerance=1 %; on time=;"
                  + " period=; rated duty=")
          .with("channels", "flyback diode=")
          .with("bom.Q1", "part type=2N3904; description=transistor NPN onsemi")
          .with("bom.R1", "value=470R 1%");

  private static SwapFinding finding(ChannelKit kit, String candidate) {
    return SmallKit.finding(kit.kit(), "Q1", candidate);
  }

  /** Less gain up to 10 mA, which no saturated switch needs; its 0.4 V heat it by 3.4 K. */
  @Test
  void the_load_decides_whether_the_gain_is_enough() {
    SwapFinding finding = finding(HEATER, "2N4401");
    assertEquals(SwapVerdict.FITS, finding.verdict(), finding.missing()::toString);
    SwapFinding weak = finding(HEATER.with("bom.R1", "value=1k 1%"), "2N4401");
    assertEquals(SwapVerdict.DOES_NOT_FIT, weak.verdict(), "12.2 for 10");
  }

  @Test
  void without_a_load_its_current_is_asked_for() {
    SwapFinding finding =
        SwapFinding.ofParts(
            SmallKit.swap(HEATER.with("channels", "MOSFET=").kit(), "Q1", "2N4401"));
    assertEquals(SwapVerdict.UNDECIDED, finding.verdict());
    List<String> asked =
        finding.missing().stream()
            .filter(text -> text.startsWith("the collector current"))
            .toList();
    assertEquals(1, asked.size(), finding.missing()::toString);
    assertTrue(asked.get(0).endsWith("only at IC=50mA, VCE=1V; IC=100mA, VCE=1V"), asked.get(0));
  }

  /** Both overloaded at 300 mA: a part of 0.2 A for another is as bad, not as good. */
  @Test
  void what_is_overloaded_before_and_after_does_not_fit() {
    String candidate = "2N3904X";
    ChannelKit kit =
        HEATER
            .with("loads", "current=300 mA")
            .datasheet(candidate, "VCEO", "", "", "40", "V")
            .line(candidate, "kind", "bipolar transistor", "", "", "", "", "test")
            .line(candidate, "package", "TO-92", "", "", "", "", "test")
            .line(candidate, "pins", "E B C", "", "", "", "", "test")
            .line(candidate, "polarity", "NPN", "", "", "", "", "test")
            .datasheet(candidate, "IC", "", "", "0.2", "A")
            .datasheet(candidate, "VCEsat", "IC=50mA, IB=5mA", "", "0.3", "V")
            .datasheet(candidate, "VBEsat", "IC=50mA, IB=5mA", "", "0.95", "V")
            .datasheet(candidate, "RthJA", "", "", "200", "K/W")
            .datasheet(candidate, "TJ", "", "", "150", "C");
    SwapFinding finding = finding(kit, candidate);
    assertTrue(
        finding.channels().stream()
            .allMatch(change -> change.verdict() == SwapVerdict.DOES_NOT_FIT),
        finding.missing()::toString);
  }
}
