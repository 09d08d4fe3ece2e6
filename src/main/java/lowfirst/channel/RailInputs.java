package lowfirst.channel;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Rail;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.UnreadCells;
import lowfirst.channel.data.RailData;
import lowfirst.channel.formula.Conductor;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/** Everything that the checks of one rail read. A value. */
final class RailInputs {
  /** Share of their ratings that parallel contacts are trusted with. */
  static final double SHARING = 0.8;

  static final double DROP_SHARE = 0.03;
  private static final double CONTACT_OHMS = 0.010;

  static final Datum SHARING_RULE =
      Datum.constant(
          "sharing",
          SHARING,
          Dimension.RATIO,
          Source.standard("common practice: parallel contacts share unevenly"));
  static final Datum DROP_RULE =
      Datum.constant(
          "share of Vnom",
          DROP_SHARE,
          Dimension.RATIO,
          Source.standard("common practice: 3 % of the rail"));
  static final Datum CONTACT_RULE =
      Datum.constant(
          "Rcontact",
          CONTACT_OHMS,
          Dimension.RESISTANCE,
          Source.assumed("10 mΩ a contact", "rails.csv return contacts"));

  private final Rail rail;
  private final List<String> channels;
  private final List<String> always;
  private final Map<Term, Datum> data;
  private final Optional<Perhaps> perhaps;

  /**
   * Loads of which nobody knows the rail.
   *
   * @param channels those that switch them, or their own names
   * @param with the rail as if they all hung on it
   * @param missing what would tell, a datum for each
   */
  record Perhaps(List<String> channels, RailInputs with, List<Datum> missing) {}

  private RailInputs(
      Rail rail,
      List<String> channels,
      List<String> always,
      Map<Term, Datum> data,
      Optional<Perhaps> perhaps) {
    this.rail = rail;
    this.channels = channels;
    this.always = always;
    this.data = data;
    this.perhaps = perhaps;
  }

  /**
   * The worst set of loads at once on a rail that further loads may hang on.
   *
   * @param on what hangs on it
   * @param unknown what nobody knows the rail of, taken as on it; not empty
   * @param missing what would tell, a datum for each of these
   */
  static RailInputs of(Rail rail, RailLoads on, RailLoads unknown, List<Datum> missing) {
    RailInputs with = of(rail, on.and(unknown));
    RailInputs without = on.isEmpty() ? with.unloaded() : of(rail, on);
    var perhaps = new Perhaps(RailLoads.names(unknown.all()), with, missing);
    return new RailInputs(
        rail, without.channels, without.always, without.data, Optional.of(perhaps));
  }

  private RailInputs unloaded() {
    return new RailInputs(rail, List.of(), List.of(), data, Optional.empty())
        .with(datum(Term.RAIL_SUM).at(0))
        .with(datum(Term.RAIL_INRUSH_SUM).at(0));
  }

  /** The worst set of loads at once on a rail that any hang on. */
  static RailInputs of(Rail rail, RailLoads loads) {
    List<ChannelInputs> on = loads.all();
    int switched = loads.switched().size();
    int atOnce = Math.min(switched, rail.loadsAtOnce().orElse(switched));
    var data = new EnumMap<Term, Datum>(Term.class);
    data.put(Term.RAIL_SUM, loads.sum(atOnce));
    data.put(Term.RAIL_INRUSH_SUM, loads.inrushSum(atOnce));
    data.put(Term.AMBIENT, on.get(0).datum(Term.AMBIENT));
    for (ChannelInputs in : on) {
      if (in.high(Term.AMBIENT) > data.get(Term.AMBIENT).high()) {
        data.put(Term.AMBIENT, in.datum(Term.AMBIENT));
      }
    }
    data.put(Term.SUPPLY, on.get(0).datum(Term.SUPPLY));
    data.put(Term.UNREAD, UnreadCells.none());
    data.put(
        Term.OTHERS_ON_RETURN,
        Datum.of(Term.OTHERS_ON_RETURN, 0, Source.kit("rails.csv: no other rail on this return")));
    RailData.of(rail).forEach(datum -> data.put(datum.term(), datum));
    return new RailInputs(
        rail,
        RailLoads.names(loads.largest(atOnce)),
        RailLoads.names(loads.always()),
        data,
        Optional.empty());
  }

  /**
   * Every rail, with what the others send through a return that they share.
   *
   * @param rails those that loads hang on, or may
   * @param every all of the kit: of one without loads, more may come than anybody lists
   */
  static List<RailInputs> onReturns(List<RailInputs> rails, List<Rail> every) {
    return rails.stream().map(rail -> rail.onReturn(rails, every)).toList();
  }

  private RailInputs onReturn(List<RailInputs> rails, List<Rail> every) {
    List<RailInputs> others =
        rails.stream()
            .filter(other -> other != this && sharesReturn(other.rail))
            .map(other -> other.perhaps.map(Perhaps::with).orElse(other))
            .toList();
    List<Rail> unlisted =
        every.stream()
            .filter(other -> rails.stream().noneMatch(in -> in.rail.equals(other)))
            .filter(this::sharesReturn)
            .toList();
    var names = new ArrayList<>(others.stream().map(other -> other.rail.name()).toList());
    var sums = new ArrayList<>(others.stream().map(other -> other.datum(Term.RAIL_SUM)).toList());
    RailInputs listed = others.isEmpty() ? this : with(shared(names, sums));
    if (unlisted.isEmpty()) {
      return listed;
    }
    var missing = new ArrayList<>(perhaps.map(Perhaps::missing).orElse(List.of()));
    for (Rail other : unlisted) {
      Datum loads =
          Datum.missing(Term.RAIL_SUM, "the loads of rail " + other.name() + ": loads.csv");
      names.add(other.name());
      sums.add(other.currentLimit().map(most -> Datum.of(Term.RAIL_LIMIT, most)).orElse(loads));
      missing.add(loads);
    }
    RailInputs most = listed.perhaps.map(Perhaps::with).orElse(listed).with(shared(names, sums));
    List<String> loads = perhaps.map(Perhaps::channels).orElse(List.of());
    return new RailInputs(
        rail, channels, always, listed.data, Optional.of(new Perhaps(loads, most, missing)));
  }

  private boolean sharesReturn(Rail other) {
    return !rail.sharedReturn().isEmpty()
        && rail.sharedReturn().equalsIgnoreCase(other.sharedReturn());
  }

  private static Datum shared(List<String> names, List<Datum> sums) {
    return sums.stream()
        .filter(sum -> !sum.isKnown())
        .findFirst()
        .map(sum -> Datum.missing(Term.OTHERS_ON_RETURN, sum.missing()))
        .orElseGet(
            () ->
                Datum.of(
                    Term.OTHERS_ON_RETURN,
                    sums.stream().mapToDouble(Datum::low).sum(),
                    sums.stream().mapToDouble(Datum::nominal).sum(),
                    sums.stream().mapToDouble(Datum::high).sum(),
                    Source.computed(
                        "shared with " + names, sums.stream().allMatch(Datum::canPass))));
  }

  /** What flows through the return at worst; NaN when a datum is missing. */
  double returnAmps() {
    return high(Term.RAIL_SUM) + high(Term.OTHERS_ON_RETURN);
  }

  /** What the return lifts the boards' ground by, in volts; NaN when a datum is missing. */
  double liftVolts() {
    double wire =
        Conductor.ohms(
            low(Term.RETURN_AREA), high(Term.RETURN_LENGTH), ChannelInputs.hotCopperCelsius());
    return returnAmps() * (wire + CONTACT_OHMS / low(Term.RETURN_CONTACTS));
  }

  /**
   * The lift as a number for the gates, with all that may hang on the rail. Where a load's current
   * isn't known, the most that the supply can deliver bounds what the return can carry.
   */
  Datum lift() {
    if (perhaps.isPresent()) {
      return perhaps.get().with.lift();
    }
    if (!datum(Term.RAIL_SUM).isKnown() && datum(Term.RAIL_LIMIT).isKnown()) {
      Datum limit = datum(Term.RAIL_LIMIT);
      return with(Datum.of(
              Term.RAIL_SUM, limit.low(), limit.nominal(), limit.high(), limit.source()))
          .lift();
    }
    for (Term term :
        List.of(
            Term.RAIL_SUM,
            Term.OTHERS_ON_RETURN,
            Term.RETURN_AREA,
            Term.RETURN_LENGTH,
            Term.RETURN_CONTACTS)) {
      if (!datum(term).isKnown()) {
        return Datum.missing(Term.RETURN_LIFT, datum(term).missing());
      }
    }
    boolean remembered = data.values().stream().anyMatch(d -> d.isKnown() && !d.canPass());
    String words =
        "drop of the return of rail "
            + rail.name()
            + " at "
            + Quantity.of(returnAmps(), Dimension.CURRENT).rounded(3);
    return Datum.of(Term.RETURN_LIFT, liftVolts(), Source.computed(words, !remembered));
  }

  /**
   * What flows into a short behind a fuse: what the kit states; else what the supply delivers at
   * most; else anything up to what nothing but the return's cold copper would let through.
   */
  Datum shortCircuit() {
    if (rail.shortCircuitCurrent().isPresent()) {
      return Datum.of(Term.SHORT_CIRCUIT, rail.shortCircuitCurrent().get());
    }
    Datum limit = datum(Term.RAIL_LIMIT);
    if (limit.isKnown()) {
      return Datum.of(
          Term.SHORT_CIRCUIT,
          limit.high(),
          new Source(
              limit.source().origin(),
              limit.source()
                  + "; for a battery write its short-circuit current in rails.csv instead"));
    }
    double ohms = Conductor.leastOhms(high(Term.RETURN_AREA), low(Term.RETURN_LENGTH));
    double amps = high(Term.SUPPLY) / ohms;
    return Double.isFinite(amps)
        ? Datum.of(
            Term.SHORT_CIRCUIT,
            0,
            amps,
            amps,
            Source.computed(
                "Vmax/Rreturn at 0 °C: rails.csv states no limit of rail " + rail.name()))
        : Datum.missing(
            Term.SHORT_CIRCUIT, RailData.at(rail, "short-circuit current or current limit"));
  }

  /** The same rail with a term at one value. */
  RailInputs with(Term term, double value) {
    return with(datum(term).at(value));
  }

  /** The same rail with a number changed, whatever hangs on it. */
  RailInputs with(Datum datum) {
    var changed = new EnumMap<>(data);
    changed.put(datum.term(), datum);
    Optional<Perhaps> too =
        perhaps.map(p -> new Perhaps(p.channels, p.with.with(datum), p.missing));
    return new RailInputs(rail, channels, always, changed, too);
  }

  Datum datum(Term term) {
    return data.get(term);
  }

  double low(Term term) {
    return datum(term).low();
  }

  double nominal(Term term) {
    return datum(term).nominal();
  }

  double high(Term term) {
    return datum(term).high();
  }

  Rail rail() {
    return rail;
  }

  List<String> channels() {
    return channels;
  }

  List<String> always() {
    return always;
  }

  Optional<Perhaps> perhaps() {
    return perhaps;
  }
}
