package lowfirst.channel;

import java.util.List;
import java.util.Optional;

/**
 * A finding with what follows from it: how far the channel is from its limit, what to change, which
 * number matters most, how hot it runs at other currents.
 *
 * @param inputs the numbers it rests on
 * @param finding the checks
 * @param limit the current up to which it carries; absent when it carries none
 * @param remedies what to change; empty when it carries
 * @param sensitivities the numbers that matter, most first
 * @param releases how a coil lets go with its diode alone, with a Zener, with a resistor; empty for
 *     other loads
 * @param curve junction temperature against current; absent without a MOSFET that is known
 */
public record ChannelStudy(
    ChannelInputs inputs,
    ChannelFinding finding,
    Optional<CarryLimit> limit,
    List<Remedy> remedies,
    List<Sensitivity> sensitivities,
    List<CoilRelease> releases,
    Optional<JunctionCurve> curve) {

  /** Studies one channel. */
  public static ChannelStudy of(ChannelInputs in) {
    Optional<CarryLimit> limit = CarryLimit.of(in);
    double farthest = Math.max(in.loadAmps(), limit.map(CarryLimit::amperes).orElse(0.0));
    return new ChannelStudy(
        in,
        ChannelFinding.of(in),
        limit,
        Remedies.of(in),
        Sensitivity.of(in),
        CoilRelease.of(in),
        JunctionCurve.of(in, 1.5 * farthest));
  }

  /** Studies every channel of a kit. */
  public static List<ChannelStudy> of(KitInputs inputs) {
    return inputs.channels().stream().map(ChannelStudy::of).toList();
  }
}
