package lowfirst.sheet.loads;

import java.util.List;
import java.util.stream.Collectors;
import lowfirst.channel.ChannelStudy;
import lowfirst.channel.RailFinding;
import lowfirst.channel.SumFinding;
import lowfirst.channel.SupplyFinding;
import lowfirst.channel.check.Verdict;

/** How many channels, rails and supply limits carry, in a few sentences. */
final class LoadsSummary {
  private LoadsSummary() {}

  /** The summary, with what the numbers are good for. */
  static String of(List<ChannelStudy> studies, List<? extends SumFinding> sums) {
    if (studies.isEmpty()) {
      return "This kit has no channels: channels.csv names what each MOSFET switches.";
    }
    return count(studies.stream().map(study -> study.finding().verdict()).toList(), "channel")
        + ". "
        + count(verdicts(sums, RailFinding.class), "rail")
        + shared(verdicts(sums, SupplyFinding.class))
        + ". Every number is the worst case: hottest air, highest rail, largest load and"
        + " resistance, weakest drive. This does not replace measuring.";
  }

  private static List<Verdict> verdicts(
      List<? extends SumFinding> sums, Class<? extends SumFinding> kind) {
    return sums.stream().filter(kind::isInstance).map(SumFinding::verdict).toList();
  }

  private static String shared(List<Verdict> supplies) {
    return supplies.isEmpty() ? "" : ". " + count(supplies, "shared supply limit");
  }

  private static String count(List<Verdict> verdicts, String noun) {
    String parts =
        List.of(Verdict.CARRIES, Verdict.OVERLOADED, Verdict.UNDECIDED).stream()
            .map(verdict -> count(verdict, verdicts.stream().filter(v -> v == verdict).count()))
            .collect(Collectors.joining(", "));
    return verdicts.size() + " " + noun + (verdicts.size() == 1 ? "" : "s") + ": " + parts;
  }

  private static String count(Verdict verdict, long times) {
    String several = verdict == Verdict.CARRIES ? "carry" : verdict.words();
    return times + " " + (times == 1 ? verdict.words() : several);
  }
}
