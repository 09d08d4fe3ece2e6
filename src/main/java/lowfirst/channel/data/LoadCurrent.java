package lowfirst.channel.data;

import java.util.Optional;
import lowfirst.board.Load;
import lowfirst.board.Load.LoadKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.quantity.Source;
import lowfirst.quantity.Sourced;

/**
 * What a load draws at the rail's nominal voltage: running, and in the moment of switching on.
 * Where several numbers are given the largest current counts.
 *
 * @param load which load
 * @param rail the rail's nominal voltage, where known
 */
record LoadCurrent(Load load, Optional<Sourced> rail) {
  /** Where the load states no tolerance. */
  private static final double ASSUMED_PERCENT = 10;

  /** Highest published multiples of the running current (National Instruments FP-RLY-420, p. 8). */
  private static final double LAMP_FACTOR = 15;

  private static final double MOTOR_FACTOR = 10;
  private static final double CAPACITIVE_FACTOR = 40;
  private static final Source FACTORS =
      Source.standard("highest published rule, National Instruments FP-RLY-420 manual, p. 8");

  /** Running current. */
  Datum operating() {
    Optional<Datum> best =
        load.current().map(stated -> of(Term.LOAD_CURRENT, stated.asDouble(), stated.source()));
    if (load.power().isPresent() && rail.isPresent()) {
      double amps = load.power().get().asDouble() / rail.get().asDouble();
      Source source = derived("P/Vnom", load.power().get().source());
      best = larger(best, of(Term.LOAD_CURRENT, amps, source));
    }
    boolean coldOnly = load.kind() == LoadKind.LAMP || load.kind() == LoadKind.MOTOR;
    if (load.resistance().isPresent() && rail.isPresent() && !(coldOnly && best.isPresent())) {
      best = larger(best, throughResistance(Term.LOAD_CURRENT, "Vnom/R"));
    }
    return best.orElseGet(
        () ->
            Datum.missing(
                Term.LOAD_CURRENT,
                "current, resistance or power of load "
                    + load.name()
                    + ": write it in loads.csv"
                    + (rail.isEmpty() ? ", and its rail's voltage in rails.csv" : "")));
  }

  private static Optional<Datum> larger(Optional<Datum> best, Datum other) {
    return best.filter(known -> known.high() >= other.high()).or(() -> Optional.of(other));
  }

  private static Source derived(String formula, Source from) {
    return Source.computed(formula + ", " + from, from.canPass());
  }

  /** A current that is spread as the load's tolerance says. */
  private Datum of(Term term, double amps, Source source) {
    double share = tolerancePercent() / 100;
    return Datum.of(term, amps * Math.max(0, 1 - share), amps, amps * (1 + share), spread(source));
  }

  /** A resistance that is 10 % low draws 11 % more, and one that may be none has no most. */
  private Datum throughResistance(Term term, String formula) {
    double amps = rail.orElseThrow().asDouble() / load.resistance().orElseThrow().asDouble();
    double share = tolerancePercent() / 100;
    if (share >= 1) {
      return Datum.missing(
          term,
          "tolerance of the resistance of load "
              + load.name()
              + ", less than 100 %: write it in loads.csv");
    }
    Source source = derived(formula, load.resistance().get().source());
    return Datum.of(term, amps / (1 + share), amps, amps / (1 - share), spread(source));
  }

  private double tolerancePercent() {
    return load.tolerance().map(Sourced::asDouble).orElse(ASSUMED_PERCENT);
  }

  private Source spread(Source source) {
    String words =
        load.tolerance().isPresent()
            ? ", ±" + load.tolerance().get().quantity()
            : ", ±10 % assumed, change it in loads.csv tolerance";
    return new Source(source.origin(), source + words);
  }

  /** Peak at switching on: stated, else V/Rcold, else the highest published multiple. */
  Datum inrush() {
    if (load.inrush().isPresent()) {
      return Datum.of(Term.INRUSH, load.inrush().get());
    }
    double factor =
        switch (load.kind()) {
          case LAMP -> LAMP_FACTOR;
          case MOTOR -> MOTOR_FACTOR;
          case CAPACITIVE -> CAPACITIVE_FACTOR;
          case SOLENOID, RELAY, LED, RESISTIVE -> Double.NaN;
        };
    if (Double.isNaN(factor)) {
      return Datum.missing(Term.INRUSH, "inrush of load " + load.name() + ": loads.csv");
    }
    if (load.resistance().isPresent() && rail.isPresent()) {
      return throughResistance(Term.INRUSH, "Vnom/Rcold");
    }
    Datum running = operating();
    if (!running.isKnown()) {
      return Datum.missing(Term.INRUSH, running.missing());
    }
    Source source =
        running.canPass()
            ? new Source(Source.Origin.STANDARD, factor + " × running current: " + FACTORS)
            : running.source();
    return Datum.of(
        Term.INRUSH,
        running.low() * factor,
        running.nominal() * factor,
        running.high() * factor,
        source);
  }

  /** How long the inrush lasts. */
  Datum inrushTime() {
    if (load.inrushTime().isPresent()) {
      return Datum.of(Term.INRUSH_TIME, load.inrushTime().get());
    }
    double seconds =
        switch (load.kind()) {
          case LAMP -> 0.05;
          case MOTOR -> 1;
          case SOLENOID, RELAY, LED, RESISTIVE, CAPACITIVE -> 0.01;
        };
    return Datum.of(
        Term.INRUSH_TIME,
        seconds,
        Source.assumed(seconds + " s for a " + load.kind().words(), "loads.csv inrush time"));
  }
}
