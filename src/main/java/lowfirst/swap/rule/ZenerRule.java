package lowfirst.swap.rule;

import static lowfirst.quantity.Source.standard;
import static lowfirst.swap.rule.Comparison.atLeast;
import static lowfirst.swap.rule.Comparison.testedAtMostIfStated;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import lowfirst.part.DatasheetLine;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.SwapPart;

/** What a Zener diode must be to stand in for another. */
enum ZenerRule implements SwapRule {
  VOLTAGE(
      "Zener voltage",
      "the whole band of the candidate must lie within the band asked for",
      standard("IEC 60747-3: working voltage"),
      ZenerRule::voltage),
  POWER(
      "power",
      "P = VZ IZ heats it",
      standard("IEC 60747-3: total power dissipation"),
      atLeast("PD")),
  TEST_CURRENT(
      "current at which the voltage is specified",
      "the voltage is promised only at its test current",
      standard("IEC 60747-3"),
      ZenerRule::testCurrent),
  IMPEDANCE(
      "differential resistance",
      "more of it lets the voltage move more with current",
      standard("IEC 60747-3: differential resistance"),
      testedAtMostIfStated("ZZ"));

  /**
   * How far from its typical voltage the band of a Zener reaches at most: JEDEC's 1N5221 series
   * without a suffix is sold with 20 %, and none is usual with more (Digitron 1N5221 to 1N5281).
   */
  private static final double WIDEST = 0.2;

  private final Card card;

  ZenerRule(String words, String why, Source source, Judgement judgement) {
    this.card = Card.of(words, why, source, judgement);
  }

  @Override
  public Card card() {
    return card;
  }

  /** Whatever comes under the candidate's number must do for something that the BOM accepts. */
  private static Optional<Answer> voltage(SwapCase swap) {
    List<DatasheetLine> asked = amounts(swap.asked());
    List<DatasheetLine> offered = amounts(swap.offered());
    if (asked.isEmpty() || offered.isEmpty()) {
      return Optional.of(
          Comparison.unknown(
              swap, "VZ", swap.asked().greatest("VZ"), swap.offered().greatest("VZ")));
    }
    return offered.stream()
        .map(
            gives ->
                asked.stream()
                    .map(needs -> voltage(swap, needs, gives))
                    .min(Comparator.comparing(Answer::verdict))
                    .orElseThrow())
        .max(Comparator.comparing(Answer::verdict));
  }

  private static List<DatasheetLine> amounts(SwapPart part) {
    return part.lines("VZ").stream().filter(line -> nominal(line).isPresent()).toList();
  }

  private static Answer voltage(SwapCase swap, DatasheetLine needs, DatasheetLine gives) {
    Evidence wanted = evidence(needs);
    Evidence given = evidence(gives);
    if (stated(gives).anyMatch(volts -> isOutside(volts, needs))) {
      return Answer.of(SwapVerdict.DOES_NOT_FIT, wanted, given, "");
    }
    if (hasBand(needs) && hasBand(gives)) {
      return Answer.of(SwapVerdict.FITS, wanted, given, "");
    }
    boolean far =
        needs.typ().isPresent()
            && stated(gives).anyMatch(volts -> Math.abs(volts / amount(wanted) - 1) > WIDEST);
    return far
        ? Answer.of(SwapVerdict.DOES_NOT_FIT, wanted, given, "no usual band is so wide")
        : Answer.missing(Optional.of(wanted), Optional.of(given), bands(swap, needs, gives), "");
  }

  /** What some of them have: the limits, and what is typical. */
  private static DoubleStream stated(DatasheetLine line) {
    return Stream.of(line.min(), line.typ(), line.max())
        .flatMap(Optional::stream)
        .mapToDouble(Quantity::asDouble);
  }

  private static boolean isOutside(double volts, DatasheetLine band) {
    return band.min().filter(least -> volts < least.asDouble()).isPresent()
        || band.max().filter(most -> volts > most.asDouble()).isPresent();
  }

  /** The bands that are missing: a typical voltage alone promises nothing. */
  private static List<String> bands(SwapCase swap, DatasheetLine needs, DatasheetLine gives) {
    String band = "least and greatest VZ";
    return Stream.of(
            hasBand(needs) ? "" : swap.asked().missing(band),
            hasBand(gives) ? "" : swap.offered().missing(band))
        .filter(words -> !words.isEmpty())
        .toList();
  }

  private static Evidence evidence(DatasheetLine line) {
    String band = hasBand(line) ? line.min().get() + " to " + line.max().get() : line.condition();
    return Evidence.of(nominal(line).orElseThrow(), band, line.source());
  }

  /** The voltage that it is sold by: where only a band is stated, the middle of it. */
  private static Optional<Quantity> nominal(DatasheetLine line) {
    if (line.typ().isPresent()) {
      return line.typ();
    }
    return hasBand(line)
        ? Optional.of(Quantity.of((least(line) + most(line)) / 2, Dimension.VOLTAGE))
        : line.max().or(line::min);
  }

  private static boolean hasBand(DatasheetLine line) {
    return line.min().isPresent() && line.max().isPresent();
  }

  private static double least(DatasheetLine line) {
    return line.min().orElseThrow().asDouble();
  }

  private static double most(DatasheetLine line) {
    return line.max().orElseThrow().asDouble();
  }

  private static double amount(Evidence evidence) {
    return evidence.quantity().orElseThrow().asDouble();
  }

  private static Optional<Answer> testCurrent(SwapCase swap) {
    Optional<Evidence> asked = swap.asked().greatest("IZT");
    Optional<Evidence> offered = swap.offered().least("IZT");
    if (asked.isEmpty() || offered.isEmpty()) {
      return Optional.empty();
    }
    double ratio = amount(offered.get()) / amount(asked.get());
    return Optional.of(
        Answer.of(
            ratio > 0.5 && ratio < 2 ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT,
            asked.get(),
            offered.get(),
            ""));
  }
}
