package lowfirst.channel;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lowfirst.board.Kit;

/**
 * What the tool says of every channel and every rail of a kit.
 *
 * @param channels in the order of {@code channels.csv}
 * @param rails those that loads hang on, in the order of {@code rails.csv}
 */
public record LoadFindings(List<ChannelFinding> channels, List<RailFinding> rails) {

  public LoadFindings {
    channels = List.copyOf(channels);
    rails = List.copyOf(rails);
  }

  /** Every finding of a kit. */
  public static LoadFindings of(Kit kit) {
    return of(KitInputs.of(kit));
  }

  /** Every finding of a kit whose numbers are resolved already. */
  public static LoadFindings of(KitInputs inputs) {
    return new LoadFindings(
        inputs.channels().stream().map(ChannelFinding::of).toList(),
        inputs.rails().stream().map(RailFinding::of).toList());
  }

  /** What is said of each channel, by its name. */
  public Map<String, ChannelFinding> byName() {
    var byName = new HashMap<String, ChannelFinding>();
    channels.forEach(finding -> byName.put(finding.channel().name(), finding));
    return byName;
  }

  /** The worst of all. */
  public Verdict verdict() {
    Verdict worst = Verdict.CARRIES;
    for (ChannelFinding channel : channels) {
      worst = worst.worse(channel.verdict());
    }
    for (RailFinding rail : rails) {
      worst = worst.worse(rail.verdict());
    }
    return worst;
  }
}
