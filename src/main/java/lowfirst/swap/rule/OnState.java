package lowfirst.swap.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.part.DatasheetLine;
import lowfirst.part.TestCondition;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.SwapPart;

/**
 * The on-state of a MOSFET as its datasheet promises it: RDS(on) at one or more gate voltages. Two
 * parts are compared at the gate voltages that the asked part is specified for.
 */
final class OnState {
  private static final String SYMBOL = "RDSon";

  private OnState() {}

  /** One promise: a resistance at a gate voltage. */
  private record Promise(double gateVolts, Quantity resistance, DatasheetLine line) {

    Evidence level() {
      return Evidence.of(
          Quantity.of(gateVolts, Dimension.VOLTAGE), "lowest VGS with RDSon", line.source());
    }

    Evidence ohms() {
      return Evidence.of(resistance, line.condition(), line.source());
    }
  }

  /** The candidate must be specified at a gate voltage no higher than the asked part's lowest. */
  static Optional<Answer> logicLevel(SwapCase swap) {
    List<Promise> asked = promises(swap.asked());
    List<Promise> offered = promises(swap.offered());
    Optional<Promise> needs = asked.stream().min(Comparator.comparing(Promise::gateVolts));
    Optional<Promise> gives = worstLowest(offered);
    if (needs.isEmpty() || gives.isEmpty()) {
      return Optional.of(
          Comparison.unknown(
              swap, "RDSon at a VGS", needs.map(Promise::level), gives.map(Promise::level)));
    }
    double level = gives.get().gateVolts();
    Optional<String> silent = silentMaker(swap, offered);
    if (level <= needs.get().gateVolts() && silent.isPresent()) {
      return Optional.of(
          Comparison.ofSilent(
              swap, SYMBOL, silent.get(), needs.get().level(), gives.get().level()));
    }
    if (level <= needs.get().gateVolts()) {
      return answer(SwapVerdict.FITS, needs.get(), gives.get(), "");
    }
    boolean between =
        asked.stream()
                .anyMatch(p -> p.gateVolts() > needs.get().gateVolts() && p.gateVolts() >= level)
            && level < 10;
    if (between) {
      return Optional.of(
          Answer.missing(
              Optional.of(needs.get().level()),
              Optional.of(gives.get().level()),
              List.of("the gate voltage there really is: a channel in channels.csv"),
              "enough if the gate gets at least that much, not if it gets only what the other"
                  + " needed"));
    }
    Optional<String> other = otherMaker(offered, needs.get());
    return other.isPresent()
        ? Optional.of(
            Answer.missing(
                Optional.of(needs.get().level()),
                Optional.of(gives.get().level()),
                List.of(
                    "whose it is: if by "
                        + other.get()
                        + ", ask for \""
                        + swap.offered().name()
                        + " ("
                        + other.get()
                        + ")\""),
                "makers differ"))
        : answer(
            SwapVerdict.DOES_NOT_FIT,
            needs.get(),
            gives.get(),
            "below that voltage its datasheet promises nothing");
  }

  private static Optional<String> silentMaker(SwapCase swap, List<Promise> offered) {
    return swap.offered().silentMaker(offered.stream().map(Promise::line).toList());
  }

  /** Another maker, whose part of that number would do. */
  private static Optional<String> otherMaker(List<Promise> offered, Promise needs) {
    return offered.stream()
        .filter(p -> p.gateVolts() <= needs.gateVolts() && !p.line().maker().isBlank())
        .map(p -> p.line().maker())
        .findFirst();
  }

  private static Optional<Answer> answer(
      SwapVerdict verdict, Promise needs, Promise gives, String remark) {
    return Optional.of(Answer.of(verdict, needs.level(), gives.level(), remark));
  }

  /** At every gate voltage that both can be held to, the candidate may not have more. */
  static Optional<Answer> resistance(SwapCase swap) {
    List<Promise> asked = promises(swap.asked());
    List<Promise> offered = promises(swap.offered());
    Answer worst = null;
    for (Promise needs : asked) {
      Optional<Promise> gives = at(offered, needs.gateVolts());
      if (gives.isPresent()) {
        double margin =
            Better.LESS.margin(needs.resistance().asDouble(), gives.get().resistance().asDouble());
        if (worst == null || margin < worst.margin().orElse(0)) {
          worst =
              Answer.sized(
                  margin >= 0 ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT,
                  needs.ohms(),
                  gives.get().ohms(),
                  OptionalDouble.of(margin),
                  "");
        }
      }
    }
    return Optional.of(
        worst != null
            ? worst
            : Comparison.unknown(
                swap, SYMBOL, swap.asked().greatest(SYMBOL), swap.offered().greatest(SYMBOL)));
  }

  /** The best promise at or below a gate voltage; of makers that differ, the worst of theirs. */
  private static Optional<Promise> at(List<Promise> promises, double gateVolts) {
    return makers(promises).stream()
        .map(
            maker ->
                promises.stream()
                    .filter(p -> p.line().maker().equals(maker) && p.gateVolts() <= gateVolts)
                    .min(Comparator.comparing(p -> p.resistance().amount())))
        .reduce(
            (one, other) -> one.isEmpty() || other.isEmpty() ? Optional.empty() : worse(one, other))
        .orElse(Optional.empty());
  }

  private static Optional<Promise> worse(Optional<Promise> one, Optional<Promise> other) {
    return one.get().resistance().compareTo(other.get().resistance()) >= 0 ? one : other;
  }

  /** Each maker's lowest gate voltage, and of those the highest. */
  private static Optional<Promise> worstLowest(List<Promise> promises) {
    return makers(promises).stream()
        .flatMap(
            maker ->
                promises.stream()
                    .filter(p -> p.line().maker().equals(maker))
                    .min(Comparator.comparing(Promise::gateVolts))
                    .stream())
        .max(Comparator.comparing(Promise::gateVolts));
  }

  private static List<String> makers(List<Promise> promises) {
    return promises.stream().map(p -> p.line().maker()).distinct().toList();
  }

  private static List<Promise> promises(SwapPart part) {
    var promises = new ArrayList<Promise>();
    for (DatasheetLine line : part.lines(SYMBOL)) {
      // of a range the end that is harder to reach
      double volts = TestCondition.parse(line.condition()).farthest("VGS").orElse(0);
      if (line.max().filter(most -> !most.isZero()).isPresent() && volts > 0) {
        promises.add(new Promise(volts, line.max().get(), line));
      }
    }
    return promises;
  }
}
