package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertTrue;

import lowfirst.channel.check.Role;
import lowfirst.channel.data.PartData;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** How many findings a second on one core, and how that compares with one simulator run. */
@Tag("benchmark")
class FindingSpeedTest {
  private static final int WARM = 200_000;
  private static final int COUNTED = 400_000;

  @Test
  void a_hundred_thousand_findings_a_second() {
    ChannelInputs in = ChannelKit.typical().inputs();
    PartData part = in.parts().get(Role.MOSFET);
    long carried = findings(in, part, WARM);
    long before = System.nanoTime();
    carried += findings(in, part, COUNTED);
    double seconds = (System.nanoTime() - before) / 1e9;
    double aSecond = COUNTED / seconds;
    System.out.printf("%.0f findings a second (%d carried)%n", aSecond, carried);
    Simulator.needed();
    before = System.nanoTime();
    int runs = 10;
    for (int i = 0; i < runs; i++) {
      Simulator.run(Netlist.on(in));
    }
    double oneRun = (System.nanoTime() - before) / 1e9 / runs;
    double ratio = oneRun * aSecond;
    System.out.printf("%.0f findings in the time of one simulator run%n", ratio);
    assertTrue(ratio > 100, "a finding is no faster than a simulation: " + ratio);
  }

  private static long findings(ChannelInputs in, PartData part, int count) {
    long carried = 0;
    for (int i = 0; i < count; i++) {
      carried += ChannelFinding.of(in.with(part)).carries() ? 1 : 0;
    }
    return carried;
  }
}
