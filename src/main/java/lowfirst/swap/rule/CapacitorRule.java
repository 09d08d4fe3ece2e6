package lowfirst.swap.rule;

import static lowfirst.quantity.Source.standard;
import static lowfirst.swap.rule.Comparison.atLeastIfStated;
import static lowfirst.swap.rule.Comparison.ratedAtLeastIfStated;
import static lowfirst.swap.rule.Comparison.ratedAtMostIfStated;

import java.util.List;
import java.util.Optional;
import lowfirst.part.PartKind;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.Dielectric;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.SwapPart;

/** What a capacitor must be to stand in for another. */
public enum CapacitorRule implements SwapRule {
  CAPACITANCE(
      "capacitance and tolerance",
      "every part within the candidate's tolerance must be within the one asked for",
      standard("IEC 60384-1: rated capacitance and tolerance"),
      CapacitorRule::capacitance),
  DIELECTRIC(
      "dielectric class",
      "class 2 and 3 ceramics lose capacitance with heat, voltage and age: useless where the value"
          + " sets a time or a frequency",
      standard("IEC 60384-8 (class 1), IEC 60384-9 (class 2); EIA-198 codes"),
      CapacitorRule::dielectric),
  LEAST_CAPACITANCE(
      "capacitance that remains",
      "tolerance and temperature together must not take more than they did before",
      Dielectric.SOURCE,
      CapacitorRule::remaining),
  DC_BIAS(
      "capacitance under voltage",
      "a class 2 or 3 ceramic loses much of its capacitance under its direct voltage",
      standard("IEC 60384-9: class 2; the loss stands only in the maker's curve"),
      CapacitorRule::bias),
  VOLTAGE(
      "rated voltage",
      "above its rated voltage an electrolytic vents and a ceramic breaks down; at its rated"
          + " voltage nothing is left for tolerance, ripple and age",
      standard("IEC 60384-1: rated voltage; a quarter to spare is common practice"),
      CapacitorVoltage::judge),
  POLARITY(
      "polarity",
      "a polarised capacitor the wrong way round, or on alternating voltage, bursts",
      standard("IEC 60384-4"),
      CapacitorRule::polarity),
  RIPPLE(
      "ripple current",
      "ripple heats the capacitor from inside",
      standard("IEC 60384-4: rated ripple current"),
      ratedAtLeastIfStated("Iripple")),
  ESR(
      "series resistance",
      "more series resistance means more ripple and more heat",
      standard("IEC 60384-4"),
      ratedAtMostIfStated("ESR")),
  LOW_ESR(
      "low series resistance",
      "a low-ESR type was asked for",
      COMMON_PRACTICE,
      Comparison.sameWordIfStated("ESRclass")),
  REGULATOR_STABILITY(
      "regulator stability",
      "some regulators need a certain series resistance at their output, and a ceramic has too"
          + " little",
      Source.datasheet("National LM2940/LM2940C, SNVS769H: the ESR is critical"),
      CapacitorRule::stability),
  HEAT(
      "category temperature",
      "an electrolytic for 85 °C lives a quarter as long beside a hot part as one for 105 °C",
      standard("IEC 60384-4: category temperature; life halves for each 10 °C is common practice"),
      atLeastIfStated("Tmax"));

  private final Card card;

  CapacitorRule(String words, String why, Source source, Judgement judgement) {
    this.card = Card.of(words, why, source, judgement);
  }

  @Override
  public Card card() {
    return card;
  }

  /** A reservoir may be larger, but the BOM does not say that it is one: that stays undecided. */
  private static Optional<Answer> capacitance(SwapCase swap) {
    Optional<Answer> band = ValueBand.judge(swap);
    boolean tooMuch =
        band.filter(answer -> answer.verdict() == SwapVerdict.DOES_NOT_FIT).isPresent()
            && swap.asked().type().kind() == PartKind.ELECTROLYTIC_CAPACITOR
            && ratio(swap).filter(times -> times > 1 && times <= 2.2).isPresent();
    if (!tooMuch) {
      return band;
    }
    return Optional.of(
        Answer.missing(
            band.get().asked(),
            band.get().offered(),
            List.of("what " + swap.asked().name() + " does: a supply reservoir may be larger"),
            "more is welcome in a supply reservoir, but it loads the supply at switching on, and"
                + " it is wrong where it sets a time"));
  }

  private static Optional<Double> ratio(SwapCase swap) {
    Optional<Quantity> asked = swap.asked().type().value();
    Optional<Quantity> offered = swap.offered().type().value();
    return asked.isEmpty() || offered.isEmpty()
        ? Optional.empty()
        : Optional.of(offered.get().asDouble() / asked.get().asDouble());
  }

  private static boolean hasCeramic(SwapPart part) {
    return part.type().kind() == PartKind.CERAMIC_CAPACITOR
        || part.type().kind() == PartKind.CAPACITOR;
  }

  private static Optional<Answer> dielectric(SwapCase swap) {
    Optional<Dielectric> asked = Dielectric.of(swap.asked());
    Optional<Dielectric> offered = Dielectric.of(swap.offered());
    if (!hasCeramic(swap.offered()) || asked.isEmpty() && offered.isEmpty()) {
      return Optional.empty();
    }
    boolean ceramicAsked = hasCeramic(swap.asked()) || asked.isPresent();
    if (!ceramicAsked) {
      return Optional.empty();
    }
    Optional<Evidence> needs = asked.map(d -> Evidence.of(d.name(), Dielectric.SOURCE));
    Optional<Evidence> gives = offered.map(d -> Evidence.of(d.name(), Dielectric.SOURCE));
    if (needs.isEmpty() || gives.isEmpty()) {
      boolean steady = offered.filter(d -> d.steadiness() == 1).isPresent();
      return Optional.of(
          steady
              ? Answer.of(
                  SwapVerdict.FITS,
                  Evidence.of("not stated", Source.kit("the BOM")),
                  gives.get(),
                  "")
              : Comparison.unknown(swap, "dielectric", needs, gives));
    }
    boolean steadier = offered.get().steadiness() <= asked.get().steadiness();
    return Optional.of(
        Answer.of(
            steadier ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT,
            needs.get(),
            gives.get(),
            steadier ? "" : "its value wanders where the one asked for keeps it"));
  }

  private static Optional<Answer> remaining(SwapCase swap) {
    Optional<Dielectric> asked = Dielectric.of(swap.asked());
    Optional<Dielectric> offered = Dielectric.of(swap.offered());
    Optional<Evidence> needs = asked.flatMap(d -> remaining(swap.asked(), d));
    Optional<Evidence> gives = offered.flatMap(d -> remaining(swap.offered(), d));
    if (needs.isEmpty() || gives.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(Comparison.compared(needs.get(), gives.get(), Better.MORE));
  }

  /** C (1 - tolerance) (1 - change over temperature). */
  private static Optional<Evidence> remaining(SwapPart part, Dielectric dielectric) {
    if (part.type().value().isEmpty() || part.type().tolerance().isEmpty()) {
      return Optional.empty();
    }
    Quantity lowest = part.type().tolerance().get().lowest(part.type().value().get());
    double farads = lowest.asDouble() * (1 - dielectric.lossPercent() / 100);
    return Optional.of(
        Evidence.of(
            Quantity.of(farads, Dimension.CAPACITANCE),
            Source.computed("C (1 - tolerance) (1 - change over temperature)")));
  }

  /** Judged where a ceramic of class 2 or 3 would do the work of something that keeps its value. */
  private static Optional<Answer> bias(SwapCase swap) {
    Optional<Dielectric> asked = Dielectric.of(swap.asked());
    Optional<Dielectric> offered = Dielectric.of(swap.offered());
    boolean softer =
        offered.filter(d -> d.steadiness() > 1).isPresent()
            && asked.isEmpty()
            && !hasCeramic(swap.asked());
    if (!softer || swap.offered().states("CDC")) {
      return Optional.empty();
    }
    return Optional.of(
        Answer.missing(
            Optional.empty(),
            offered.map(d -> Evidence.of(d.name(), Dielectric.SOURCE)),
            List.of(swap.offered().missing("CDC (capacitance at the voltage across it)")),
            "look at the maker's curve of capacitance over voltage"));
  }

  private static Optional<Answer> polarity(SwapCase swap) {
    boolean asked = swap.asked().type().kind().isPolarised();
    boolean offered = swap.offered().type().kind().isPolarised();
    if (!offered) {
      return Optional.empty();
    }
    return Optional.of(
        Answer.of(
            asked ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT,
            Evidence.of(asked ? "polarised" : "not polarised", Source.kit("the BOM")),
            Evidence.of("polarised", Source.kit("the kind of the candidate")),
            ""));
  }

  private static Optional<Answer> stability(SwapCase swap) {
    boolean lowered =
        hasCeramic(swap.offered())
            && (swap.asked().type().kind() == PartKind.ELECTROLYTIC_CAPACITOR
                || swap.asked().type().kind() == PartKind.TANTALUM_CAPACITOR);
    if (!lowered) {
      return Optional.empty();
    }
    for (var item : swap.board().items()) {
      var lines = swap.kit().datasheets().about(item.partType().typeNumber(), "Cout");
      if (!lines.isEmpty()) {
        return Optional.of(
            Answer.missing(
                Optional.of(
                    Evidence.of(
                        item.partType().typeNumber() + ": " + lines.get(0).condition(),
                        lines.get(0).source())),
                Optional.empty(),
                List.of("ESR of " + swap.offered().name() + ": a row in datasheets.csv"),
                "if this is the output capacitor of that regulator, a ceramic can make it ring"));
      }
    }
    return Optional.empty();
  }
}
