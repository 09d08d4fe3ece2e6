package lowfirst.channel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.quantity.Source;

/**
 * The loads of one rail.
 *
 * @param switched the channels whose loads hang on it
 * @param always loads that no channel switches, each as a channel of its own name: nothing switches
 *     them off, so they count whatever else is on
 */
record RailLoads(List<ChannelInputs> switched, List<ChannelInputs> always) {

  RailLoads {
    switched = List.copyOf(switched);
    always = List.copyOf(always);
  }

  /** The loads that no channel switches, each as a channel of its own name with nothing in it. */
  static List<OutputChannel> unswitched(Kit kit) {
    Set<String> switched =
        kit.channels().stream().map(OutputChannel::load).collect(Collectors.toSet());
    return kit.loads().stream()
        .filter(load -> !switched.contains(load.name()))
        .map(load -> OutputChannel.straightThrough(load.name(), load.place()))
        .toList();
  }

  boolean isEmpty() {
    return switched.isEmpty() && always.isEmpty();
  }

  /** Every one of them. */
  List<ChannelInputs> all() {
    return Stream.concat(switched.stream(), always.stream()).toList();
  }

  RailLoads and(RailLoads more) {
    var all = new ArrayList<>(switched);
    all.addAll(more.switched);
    var on = new ArrayList<>(always);
    on.addAll(more.always);
    return new RailLoads(all, on);
  }

  /** Those of some channels. */
  RailLoads where(Predicate<OutputChannel> wanted) {
    return new RailLoads(
        switched.stream().filter(in -> wanted.test(in.channel())).toList(),
        always.stream().filter(in -> wanted.test(in.channel())).toList());
  }

  /** The same channels with other numbers. */
  RailLoads as(Function<OutputChannel, ChannelInputs> numbers) {
    return new RailLoads(
        switched.stream().map(in -> numbers.apply(in.channel())).toList(),
        always.stream().map(in -> numbers.apply(in.channel())).toList());
  }

  /** The switched ones that may be on together at worst: so many, the largest first. */
  List<ChannelInputs> largest(int atOnce) {
    return switched.stream()
        .sorted(
            Comparator.comparingDouble(RailLoads::orNothing)
                .reversed()
                .thenComparing(in -> in.channel().name()))
        .limit(atOnce)
        .toList();
  }

  private static double orNothing(ChannelInputs in) {
    return Double.isNaN(in.loadAmps()) ? 0 : in.loadAmps();
  }

  /** What all that is always on and so many of the largest loads draw. */
  Datum sum(int atOnce) {
    return sum(Term.RAIL_SUM, atOnce, ChannelInputs::loadAmps, "largest loads at once, worst case");
  }

  /**
   * The most that is drawn in one instant: when so many of the switched ones are switched on, or
   * when the supply is and finds all that is always on cold and empty.
   */
  Datum inrushSum(int atOnce) {
    Datum switchedOn =
        sum(Term.RAIL_INRUSH_SUM, atOnce, RailLoads::peak, "largest inrush currents at once");
    double supplyOn = always.stream().mapToDouble(RailLoads::peak).sum();
    return supplyOn > switchedOn.high()
        ? Datum.of(
            Term.RAIL_INRUSH_SUM,
            supplyOn,
            joined("inrush of " + always.size() + " always on, with the supply", all()))
        : switchedOn;
  }

  private Datum sum(Term term, int atOnce, ToDoubleFunction<ChannelInputs> current, String words) {
    List<ChannelInputs> on = all();
    for (ChannelInputs in : on) {
      if (Double.isNaN(current.applyAsDouble(in))) {
        return Datum.missing(term, unknownLoad(in));
      }
    }
    String said =
        atOnce + " " + words + (always.isEmpty() ? "" : ", and " + always.size() + " always on");
    return Datum.of(term, amperes(atOnce, current), joined(said, on));
  }

  private static double peak(ChannelInputs in) {
    return SwitchChecks.hasInrush(in) ? in.inrushAmps() : in.loadAmps();
  }

  private static Source joined(String words, List<ChannelInputs> on) {
    boolean remembered =
        on.stream()
            .anyMatch(
                in ->
                    !in.datum(Term.LOAD_CURRENT).canPass()
                        || (SwitchChecks.hasInrush(in) && !in.datum(Term.INRUSH).canPass()));
    return Source.computed(remembered ? words + ", some of them from memory" : words, !remembered);
  }

  private static String unknownLoad(ChannelInputs in) {
    Datum current = in.datum(Term.LOAD_CURRENT);
    String what = current.isKnown() ? in.datum(Term.SUPPLY).missing() : current.missing();
    return what.isEmpty() ? "inrush of load " + in.channel().load() + ": loads.csv" : what;
  }

  /** The sum of so many of the largest currents and of all that is always on; NaN if one is. */
  private double amperes(int atOnce, ToDoubleFunction<ChannelInputs> current) {
    double largest =
        switched.stream()
            .map(current::applyAsDouble)
            .sorted(Comparator.reverseOrder())
            .limit(atOnce)
            .mapToDouble(Double::doubleValue)
            .sum();
    return largest + always.stream().mapToDouble(ChannelInputs::loadAmps).sum();
  }

  static List<String> names(List<ChannelInputs> channels) {
    return channels.stream().map(in -> in.channel().name()).distinct().toList();
  }
}
