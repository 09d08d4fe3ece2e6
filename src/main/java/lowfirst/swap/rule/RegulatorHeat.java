package lowfirst.swap.rule;

import static lowfirst.swap.rule.Comparison.atMostIfStated;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import lowfirst.board.Rail;
import lowfirst.part.DatasheetLine;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.quantity.Sourced;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.SwapPart;

/**
 * What a linear regulator bears between the rails of the kit. It feeds the rail of its own output
 * voltage; which higher rail it hangs on no table says, so heat counts with the highest and dropout
 * with the lowest. What it delivers lies between the loads of its rail and that rail's limit.
 */
final class RegulatorHeat {
  private static final double MARGIN_KELVIN = 25;
  private static final double AMBIENT_CELSIUS = 50;
  private static final double QUIESCENT_AMPERES = 0.010;

  private RegulatorHeat() {}

  /** No hotter than the part asked for, or cool enough for the rails of this kit. */
  static Optional<Answer> heat(SwapCase swap) {
    Optional<Evidence> gives = toAir(swap.offered());
    Optional<Evidence> asked = toAir(swap.asked());
    if (gives.isEmpty() || swap.offered().least("TJ").isEmpty()) {
      String symbol = gives.isEmpty() ? "RthJA" : "TJ";
      return Optional.of(missing(swap, symbol, asked));
    }
    if (asked.isPresent() && isNoHotter(swap, asked.get(), gives.get())) {
      return Optional.of(
          Comparison.compared(asked.get(), gives.get(), Better.LESS)
              .remarking("the same load heats it no more than the part asked for"));
    }
    return Optional.of(inThisKit(swap, gives.get()));
  }

  /** The most that every maker guarantees of the way to the air; a typical one alone is none. */
  private static Optional<Evidence> toAir(SwapPart part) {
    List<DatasheetLine> lines = part.lines("RthJA");
    return promise(lines, DatasheetLine::max)
        ? lines.stream()
            .filter(line -> line.max().isPresent())
            .max(Comparator.comparing(line -> line.max().orElseThrow().amount()))
            .filter(line -> !line.max().orElseThrow().isZero())
            .map(line -> Evidence.of(line.max().orElseThrow(), line.condition(), line.source()))
        : Optional.empty();
  }

  private static Answer missing(SwapCase swap, String symbol, Optional<Evidence> asked) {
    return Answer.missing(asked, Optional.empty(), List.of(swap.offered().missing(symbol)), "");
  }

  private static boolean isNoHotter(SwapCase swap, Evidence asked, Evidence gives) {
    Optional<Double> was = swap.asked().least("TJ").map(RegulatorHeat::number);
    double is = number(swap.offered().least("TJ").orElseThrow());
    return number(gives) <= number(asked)
        && was.filter(limit -> is >= limit).isPresent()
        && quiescent(swap.offered()) <= quiescent(swap.asked());
  }

  /**
   * The current of its own that it sends to ground; what is assumed is more than classic types
   * need.
   */
  private static double quiescent(SwapPart part) {
    double stated = part.greatest("IQ").map(RegulatorHeat::number).orElse(QUIESCENT_AMPERES);
    boolean isSaidByAll = part.silentMaker(part.lines("IQ")).isEmpty();
    return isSaidByAll ? stated : Math.max(stated, QUIESCENT_AMPERES);
  }

  private static Answer inThisKit(SwapCase swap, Evidence gives) {
    Optional<Rail> before = RegulatorRails.higher(swap).stream().max(BY_VOLTS);
    Optional<Rail> fed = RegulatorRails.fed(swap);
    if (before.isEmpty() || fed.isEmpty()) {
      return Answer.missing(
          Optional.empty(),
          Optional.of(gives),
          List.of("the rail before the regulator and the rail that it feeds: rails.csv"),
          "its heat is the volts between them times the current");
    }
    double loads = RegulatorRails.loadAmps(swap, fed.get());
    Optional<Double> limit = fed.get().currentLimit().map(Sourced::asDouble);
    Evidence atLimit = needed(swap, before.get(), fed.get(), limit.orElse(Double.NaN));
    Evidence atLoads = needed(swap, before.get(), fed.get(), loads);
    if (limit.isPresent() && number(gives) <= number(atLimit)) {
      return promise(swap.offered().lines("VO"), DatasheetLine::min)
          ? Comparison.compared(atLimit, gives, Better.LESS)
          : typicalOnly(swap, "least VO", atLimit, gives);
    }
    if (loads > 0 && number(gives) > number(atLoads)) {
      return Comparison.compared(atLoads, gives, Better.LESS)
          .remarking("without a heatsink its loads alone overheat it");
    }
    return Answer.missing(
        limit.isPresent() ? Optional.of(atLimit) : Optional.empty(),
        Optional.of(gives),
        List.of(
            "what the boards draw from rail "
                + fed.get().name()
                + ": measure it and write it as its current limit in rails.csv"),
        "the volts between rail "
            + before.get().name()
            + " and it, times that current, must leave through its tab or a heatsink");
  }

  /** Whether every maker states the limit, not a typical value alone. */
  private static boolean promise(
      List<DatasheetLine> lines, Function<DatasheetLine, Optional<?>> limit) {
    Set<String> stating =
        lines.stream()
            .filter(line -> limit.apply(line).isPresent())
            .map(DatasheetLine::maker)
            .collect(Collectors.toSet());
    return lines.stream().allMatch(line -> stating.contains(line.maker()));
  }

  private static Answer typicalOnly(SwapCase swap, String symbol, Evidence needs, Evidence gives) {
    return Answer.missing(
        Optional.of(needs),
        Optional.of(gives),
        List.of(swap.offered().missing(symbol)),
        "by its typical voltage it would do, but that promises nothing");
  }

  /** The thermal resistance that a current leaves room for, in free air. */
  private static Evidence needed(SwapCase swap, Rail before, Rail fed, double amps) {
    double in = before.highestVolts();
    double least =
        swap.offered().lines("VO").stream()
            .flatMap(line -> line.min().or(line::typ).stream())
            .mapToDouble(Quantity::asDouble)
            .min()
            .orElse(fed.nominalVolts());
    double watts = (in - least) * amps + in * quiescent(swap.offered());
    double air = swap.kit().settings().ambient().map(Sourced::asDouble).orElse(AMBIENT_CELSIUS);
    double junction = number(swap.offered().least("TJ").orElseThrow());
    double rth = Math.max(0, (junction - MARGIN_KELVIN - air) / watts);
    String words =
        Quantity.of(in, Dimension.VOLTAGE).rounded(3)
            + " to "
            + Quantity.of(least, Dimension.VOLTAGE).rounded(3)
            + " at "
            + (Double.isNaN(amps) ? "?" : Quantity.of(amps, Dimension.CURRENT).rounded(3))
            + (swap.offered().greatest("IQ").isPresent()
                ? ""
                : ", IQ of " + Quantity.of(QUIESCENT_AMPERES, Dimension.CURRENT) + " assumed")
            + (swap.kit().settings().ambient().isPresent()
                ? ""
                : ", air of " + Quantity.of(AMBIENT_CELSIUS, Dimension.TEMPERATURE) + " assumed");
    return Double.isFinite(rth)
        ? Evidence.of(
            Quantity.of(rth, Dimension.THERMAL_RESISTANCE),
            words,
            Source.computed(
                "(TJmax − "
                    + Quantity.of(MARGIN_KELVIN, Dimension.TEMPERATURE_RISE)
                    + " − TA)/P, P = (VI,max − VO,min)·IO + VI,max·IQ"))
        : Evidence.of(words, Source.computed("no current is known"));
  }

  /** What the lowest rail before it leaves above its output, against what it needs. */
  static Optional<Answer> dropout(SwapCase swap) {
    Optional<Evidence> gives = swap.offered().greatest("dropout");
    Optional<Rail> before = RegulatorRails.higher(swap).stream().min(BY_VOLTS);
    if (before.isPresent() && gives.isPresent()) {
      double out =
          swap.offered().lines("VO").stream()
              .flatMap(line -> line.max().or(line::typ).stream())
              .mapToDouble(Quantity::asDouble)
              .max()
              .orElse(Double.NaN);
      double room = before.get().lowestVolts() - out;
      Evidence needs =
          Evidence.of(
              Quantity.of(Math.max(0, room), Dimension.VOLTAGE),
              "left by rail " + before.get().name(),
              Source.computed("VI,min − VO,max"));
      Answer answer = Comparison.compared(needs, gives.get(), Better.LESS);
      if (answer.verdict() != SwapVerdict.DOES_NOT_FIT) {
        return Optional.of(
            promise(swap.offered().lines("VO"), DatasheetLine::max)
                ? answer
                : typicalOnly(swap, "greatest VO", needs, gives.get()));
      }
      if (!swap.asked().states("dropout")) {
        return Optional.of(
            RegulatorRails.higher(swap).size() == 1
                ? answer
                : Answer.missing(
                    Optional.of(needs),
                    gives,
                    List.of("which rail the regulator hangs on: no table says it"),
                    "the lowest rail above its output leaves it too little"));
      }
    }
    if (before.isPresent() && gives.isEmpty() && !swap.asked().states("dropout")) {
      return Optional.of(Comparison.unknown(swap, "dropout", Optional.empty(), Optional.empty()));
    }
    return atMostIfStated("dropout").of(swap);
  }

  private static final Comparator<Rail> BY_VOLTS = Comparator.comparingDouble(Rail::nominalVolts);

  private static double number(Evidence evidence) {
    return evidence.quantity().map(Quantity::asDouble).orElse(Double.NaN);
  }
}
