package lowfirst.swap.rule;

import static lowfirst.quantity.Source.standard;
import static lowfirst.swap.rule.Better.MORE;
import static lowfirst.swap.rule.Comparison.atMostIfStated;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.Words;

/** What a resistor must be to stand in for another. */
public enum ResistorRule implements SwapRule {
  VALUE(
      "value and tolerance",
      "every part within the candidate's tolerance must be within the one asked for",
      standard("IEC 60115-1: rated resistance and tolerance"),
      ValueBand::judge),
  POWER(
      "power rating",
      "a smaller body runs hotter at the same loss; ratings hold up to 70 °C in the air",
      standard("IEC 60115-1: rated dissipation"),
      ResistorLoad::power),
  VOLTAGE(
      "limiting voltage",
      "above about 100 kΩ the voltage limit binds before the power does",
      standard("IEC 60115-1: limiting element voltage"),
      ResistorRule::voltage),
  TEMPERATURE_COEFFICIENT(
      "temperature coefficient",
      "the value drifts as the board warms",
      standard("IEC 60115-1: temperature coefficient"),
      atMostIfStated("TCR")),
  TECHNOLOGY(
      "what it is made of",
      "a wire-wound resistor is also a coil, and a film bears less of a pulse than its power says",
      COMMON_PRACTICE,
      ResistorRule::technology);

  /** The lowest limiting voltage of a leaded film resistor of 1/6 W and more. */
  private static final Evidence LOWEST_LIMIT =
      Evidence.of(
          Quantity.of("150", Dimension.VOLTAGE),
          Source.datasheet("Yageo CFR series, Revision 201304: CFR-12, the smallest of its table"));

  private final Card card;

  ResistorRule(String words, String why, Source source, Judgement judgement) {
    this.card = Card.of(words, why, source, judgement);
  }

  @Override
  public Card card() {
    return card;
  }

  /**
   * The most that can stand across the asked part is the highest rail, and no more than V = sqrt(P
   * R), which would overload it. Every leaded film resistor bears 150 V; only where that is less
   * must its limit be known.
   */
  private static Optional<Answer> voltage(SwapCase swap) {
    if (swap.asked().states("Vmax")) {
      return Comparison.atLeast("Vmax").of(swap);
    }
    Optional<Evidence> most = mostVolts(swap);
    Optional<Evidence> limit = swap.offered().least("Vmax");
    if (most.isEmpty()) {
      return lowOhms(swap.asked().type().value())
          ? Optional.empty()
          : Optional.of(Comparison.unknown(swap, "Vmax", most, limit));
    }
    Answer answer = Comparison.compared(most.get(), limit.orElse(LOWEST_LIMIT), MORE);
    return Optional.of(
        answer.verdict() == SwapVerdict.FITS
            ? answer
            : Comparison.unknown(swap, "Vmax", Optional.empty(), limit));
  }

  private static Optional<Evidence> mostVolts(SwapCase swap) {
    Optional<Double> rail = swap.highestRailVolts();
    Optional<Double> byPower =
        swap.asked()
            .type()
            .value()
            .flatMap(
                ohms ->
                    swap.asked()
                        .greatest("PD")
                        .map(
                            watts ->
                                Math.sqrt(
                                    watts.quantity().orElseThrow().asDouble() * ohms.asDouble())));
    return Stream.of(rail, byPower)
        .flatMap(Optional::stream)
        .min(Double::compare)
        .map(
            volts ->
                Evidence.of(
                    Quantity.of(volts, Dimension.VOLTAGE),
                    "the most across it",
                    Source.computed("the lower of the highest rail and sqrt(P R)")));
  }

  /** Up to 10 kΩ even 2 W stay below 150 V: sqrt(2 W x 10 kΩ) = 141 V. */
  private static boolean lowOhms(Optional<Quantity> ohms) {
    return ohms.isPresent() && ohms.get().asDouble() <= 10_000;
  }

  private static Optional<Answer> technology(SwapCase swap) {
    Optional<Evidence> offered = swap.offered().word("technology");
    Optional<Evidence> asked = swap.asked().word("technology");
    boolean coil = offered.filter(e -> Words.same(e.word(), "wire-wound")).isPresent();
    boolean same =
        asked.isPresent()
            && offered.isPresent()
            && Words.same(asked.get().word(), offered.get().word());
    if (same || offered.isEmpty() && asked.filter(ResistorRule::bearsPulses).isEmpty()) {
      return Optional.empty();
    }
    Evidence wanted = asked.orElse(Evidence.of("not stated", Source.kit("the BOM")));
    if (coil) {
      return Optional.of(
          Answer.sized(
              SwapVerdict.DOES_NOT_FIT,
              wanted,
              offered.get(),
              OptionalDouble.empty(),
              "its winding is an inductance: it slows and rings where edges are fast"));
    }
    if (asked.filter(ResistorRule::bearsPulses).isPresent()) {
      return Optional.of(
          Answer.missing(
              asked,
              offered,
              java.util.List.of("pulse load of " + swap.offered().name() + ": its pulse curve"),
              "a film bears less of a pulse; compare the pulse curves"));
    }
    return Optional.of(Answer.of(SwapVerdict.FITS, wanted, offered.get(), ""));
  }

  private static boolean bearsPulses(Evidence technology) {
    return Words.same(technology.word(), "wire-wound")
        || Words.same(technology.word(), "carbon composition");
  }
}
