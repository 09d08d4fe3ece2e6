package lowfirst.swap.rule;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lowfirst.part.DatasheetLine;
import lowfirst.part.TestCondition;
import lowfirst.quantity.Quantity;
import lowfirst.swap.subject.SwapCase;

/**
 * Whether a transistor's gain does for another's. Each promise holds at one collector current, and
 * which of them the place was chosen for only its current tells: where the candidate keeps some of
 * them and not others, that current is asked for.
 */
final class TransistorGain {
  private static final String GAIN = "hFE";

  private TransistorGain() {}

  static Optional<Answer> judged(SwapCase swap) {
    return Comparison.testedAtLeast(GAIN)
        .of(swap)
        .map(
            answer ->
                answer.verdict() == SwapVerdict.DOES_NOT_FIT ? byCurrent(swap, answer) : answer);
  }

  private static Answer byCurrent(SwapCase swap, Answer refused) {
    List<DatasheetLine> promises =
        swap.asked().lines(GAIN).stream().filter(line -> line.min().isPresent()).toList();
    String kept =
        promises.stream()
            .filter(promise -> isKept(swap, promise))
            .map(DatasheetLine::condition)
            .distinct()
            .collect(Collectors.joining("; "));
    return kept.isEmpty()
        ? refused
        : Answer.missing(
            refused.asked(),
            refused.offered(),
            List.of(
                "the collector current of the place: "
                    + swap.offered().name()
                    + " promises as much gain only at "
                    + kept),
            "a switch that is driven with a tenth of its current needs no more gain than 10");
  }

  /** Whether the part of every maker under the candidate's number keeps it. */
  private static boolean isKept(SwapCase swap, DatasheetLine promise) {
    List<DatasheetLine> lines =
        swap.offered().lines(GAIN).stream()
            .filter(line -> line.min().isPresent() && line.source().canPass())
            .toList();
    return swap.offered().silentMaker(lines).isEmpty()
        && lines.stream().collect(Collectors.groupingBy(DatasheetLine::maker)).values().stream()
            .allMatch(ofMaker -> keep(ofMaker, promise));
  }

  private static boolean keep(List<DatasheetLine> lines, DatasheetLine promise) {
    List<DatasheetLine> enough =
        lines.stream().filter(line -> least(line).compareTo(least(promise)) >= 0).toList();
    return enough.stream()
            .anyMatch(line -> CoveredCondition.covers(GAIN, line.condition(), promise.condition()))
        || isBetween(enough, promise);
  }

  /**
   * Gain rises with the current, stays and falls again: between two currents it is no less than at
   * the worse of them.
   */
  private static boolean isBetween(List<DatasheetLine> enough, DatasheetLine promise) {
    double wanted = amps(promise);
    boolean below =
        enough.stream().anyMatch(line -> amps(line) <= wanted && isAsHard(line, promise));
    boolean above =
        enough.stream().anyMatch(line -> amps(line) >= wanted && isAsHard(line, promise));
    return below && above;
  }

  /** At no more collector voltage, and else as the promise is: gain grows with that voltage. */
  private static boolean isAsHard(DatasheetLine line, DatasheetLine promise) {
    TestCondition has = TestCondition.parse(line.condition());
    TestCondition asks = TestCondition.parse(promise.condition());
    return has.names().equals(asks.names())
        && has.words().equals(asks.words())
        && asks.names().stream()
            .filter(name -> !name.equals("IC"))
            .allMatch(
                name -> {
                  double more = has.value(name).orElse(0) - asks.value(name).orElse(0);
                  return more == 0 || more < 0 && name.equals("VCE");
                });
  }

  private static double amps(DatasheetLine line) {
    return TestCondition.parse(line.condition()).value("IC").orElse(Double.NaN);
  }

  private static Quantity least(DatasheetLine line) {
    return line.min().orElseThrow();
  }
}
