package lowfirst.swap;

import static lowfirst.quantity.Source.standard;
import static lowfirst.swap.Comparison.atLeast;
import static lowfirst.swap.Comparison.atMostWhereComparable;

import java.util.List;
import java.util.Optional;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

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
      atMostWhereComparable("ZZ"));

  private final Card card;

  ZenerRule(String words, String why, Source source, Judgement judgement) {
    this.card = Card.of(words, why, source, judgement);
  }

  @Override
  public Card card() {
    return card;
  }

  private static Optional<Answer> voltage(SwapCase swap) {
    var asked = swap.asked().lines("VZ");
    var offered = swap.offered().lines("VZ");
    if (asked.isEmpty() || offered.isEmpty()) {
      return Optional.of(
          Comparison.unknown(
              swap, "VZ", swap.asked().greatest("VZ"), swap.offered().greatest("VZ")));
    }
    var needs = asked.get(0);
    var gives = offered.get(0);
    Evidence wanted = nominal(needs);
    Evidence given = nominal(gives);
    if (!hasBand(needs) || !hasBand(gives)) {
      boolean near = Math.abs(volts(given) / volts(wanted) - 1) <= 0.02;
      if (near && (needs.min().isPresent() || needs.max().isPresent())) {
        return Optional.of(
            Answer.missing(
                Optional.of(wanted),
                Optional.of(given),
                List.of(swap.offered().missing("least and greatest VZ")),
                ""));
      }
      return Optional.of(
          Answer.of(near ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT, wanted, given, ""));
    }
    boolean within =
        gives.min().get().asDouble() >= needs.min().get().asDouble()
            && limit(gives) <= limit(needs);
    return Optional.of(
        Answer.of(within ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT, wanted, given, ""));
  }

  private static Evidence nominal(lowfirst.part.DatasheetLine line) {
    Quantity volts = line.typ().or(line::max).or(line::min).orElseThrow();
    String band = hasBand(line) ? line.min().get() + " to " + line.max().get() : line.condition();
    return Evidence.of(volts, band, line.source());
  }

  private static boolean hasBand(lowfirst.part.DatasheetLine line) {
    return line.min().isPresent() && line.max().isPresent();
  }

  private static double limit(lowfirst.part.DatasheetLine line) {
    return line.max().orElseThrow().asDouble();
  }

  private static double volts(Evidence evidence) {
    return evidence.quantity().orElseThrow().asDouble();
  }

  private static Optional<Answer> testCurrent(SwapCase swap) {
    Optional<Evidence> asked = swap.asked().greatest("IZT");
    Optional<Evidence> offered = swap.offered().least("IZT");
    if (asked.isEmpty() || offered.isEmpty()) {
      return Optional.empty();
    }
    double ratio = volts(offered.get()) / volts(asked.get());
    return Optional.of(
        Answer.of(
            ratio > 0.5 && ratio < 2 ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT,
            asked.get(),
            offered.get(),
            ""));
  }
}
