package lowfirst.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.Datum;
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

  /** The checks under every answer. */
  static List<Check> over(ChannelInputs in, Function<ChannelInputs, List<Check>> checks) {
    return overMakers(
        in,
        maker ->
            over(
                Term.SHORT_CIRCUIT,
                "current limit of the load's rail, or of a battery its short-circuit current: write"
                    + " it in rails.csv",
                maker,
                rail -> over(Term.OTHERS_ON_HEATSINK, sharing(rail), rail, checks)));
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

  /** Where makers differ and none is named, the weakest counts; another's may do. */
  private static List<Check> overMakers(
      ChannelInputs in, Function<ChannelInputs, List<Check>> checks) {
    List<Check> weakest = checks.apply(in);
    for (PartData part : in.parts().values()) {
      for (String maker :
          Verdict.worstOf(weakest) == Verdict.OVERLOADED ? part.makers() : List.<String>of()) {
        List<Check> one = checks.apply(in.with(part.of(maker)));
        weakest = weakest.stream().map(check -> perhaps(check, one, part, maker)).toList();
      }
    }
    return weakest;
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
                        + " may do; name the maker in the BOM")))
        : weakest;
  }
}
