package lowfirst.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.channel.data.PartData;

/**
 * What a kit leaves open and the checks can try both ways: whether others heat the same heatsink,
 * what the supply delivers into a short, and whose part it is. A check that carries one way and is
 * overloaded the other is undecided.
 */
final class OpenQuestions {
  private OpenQuestions() {}

  /**
   * The checks under every answer. Where makers differ and none is named, the weakest counts;
   * another's may do.
   */
  static List<Check> over(ChannelInputs in, Function<ChannelInputs, List<Check>> checks) {
    List<Check> weakest = overTables(in, checks);
    for (PartData part : in.parts().values()) {
      weakest = overMakers(in, part, weakest);
    }
    return weakest;
  }

  /** What the tables leave open. */
  private static List<Check> overTables(
      ChannelInputs in, Function<ChannelInputs, List<Check>> checks) {
    return over(
        Term.SHORT_CIRCUIT,
        "current limit of the load's rail, or of a battery its short-circuit current: write"
            + " it in rails.csv",
        in,
        rail -> over(Term.OTHERS_ON_HEATSINK, sharing(rail), rail, checks));
  }

  private static String sharing(ChannelInputs in) {
    return "whether the heatsink of channel "
        + in.channel().name()
        + " is "
        + in.datum(Term.OTHERS_ON_HEATSINK).source()
        + ": write a name behind each one's K/W in channels.csv, such as 5 K/W HS1";
  }

  private static List<Check> over(
      Term term, String question, ChannelInputs in, Function<ChannelInputs, List<Check>> checks) {
    List<Check> most = checks.apply(in);
    Datum perhaps = in.datum(term);
    if (!(perhaps.low() < perhaps.high())) {
      return most;
    }
    List<Datum> missing = List.of(Datum.missing(term, question));
    List<Check> least = checks.apply(in.with(perhaps.at(perhaps.low())));
    var joined = new ArrayList<Check>(most.size());
    for (int i = 0; i < most.size(); i++) {
      Check worse = most.get(i);
      Check better = least.get(i);
      if (worse.kind() != better.kind()) {
        throw new IllegalStateException(worse.kind() + " is not done under every answer");
      }
      joined.add(worse.verdict() == better.verdict() ? worse : better.upTo(worse, missing));
    }
    return joined;
  }

  /** Tries each maker of a part, as long as a check fails that the part has a say in. */
  private static List<Check> overMakers(ChannelInputs in, PartData part, List<Check> weakest) {
    List<Check> open = weakest;
    for (String maker : part.makers()) {
      if (open.stream().noneMatch(check -> failsOn(part.role(), check))) {
        return open;
      }
      List<Check> one =
          overTables(
              in.with(part.of(maker)), changed -> ChannelFinding.checksOf(part.role(), changed));
      open = open.stream().map(check -> perhaps(check, one, part, maker)).toList();
    }
    return open;
  }

  private static boolean failsOn(Role role, Check check) {
    return check.verdict() == Verdict.OVERLOADED && role.checks().contains(check.kind());
  }

  private static Check perhaps(Check weakest, List<Check> one, PartData part, String maker) {
    Optional<Check> same = one.stream().filter(check -> check.kind() == weakest.kind()).findFirst();
    return weakest.verdict() == Verdict.OVERLOADED
            && same.filter(check -> check.verdict() != Verdict.OVERLOADED).isPresent()
        ? weakest.lacking(
            List.of(
                Datum.missing(
                    Term.CONSTANT,
                    "whose "
                        + part.name()
                        + " it is: makers differ, and that by "
                        + maker
                        + " may do; write whose yours is into the BOM's column maker")))
        : weakest;
  }
}
