package lowfirst.swap.rule;

import static lowfirst.quantity.Source.standard;
import static lowfirst.swap.rule.Comparison.atLeast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lowfirst.board.Rail;
import lowfirst.part.DatasheetLine;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.quantity.Sourced;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.SwapPart;

/** What a voltage regulator must be to stand in for another. */
public enum RegulatorRule implements SwapRule {
  OUTPUT_VOLTAGE(
      "output voltage",
      "everything behind it was chosen for that voltage",
      standard("IEC 60747-1: rated and characteristic values"),
      saidByAll(RegulatorRule::outputVoltage, "VO")),
  INPUT_VOLTAGE(
      "input voltage",
      "the rail before it, with its tolerance, must stay below the rating",
      standard("IEC 60747-1: limiting values"),
      RegulatorRule::inputVoltage),
  OUTPUT_CURRENT(
      "output current",
      "what the boards draw",
      standard("IEC 60747-1"),
      RegulatorRule::outputCurrent),
  DROPOUT(
      "dropout voltage",
      "the input may come closer to the output than the candidate bears",
      standard("IEC 60747-1"),
      saidByAll(RegulatorHeat::dropout, "dropout", "VO")),
  HEAT(
      "heat",
      "all volts between input and output, times the current, become heat in it",
      standard("IEC 60747-1: TJ = TA + RthJA·P; P = (VI,max − VO,min)·IO + VI,max·IQ"),
      saidByAll(RegulatorHeat::heat, "RthJA", "TJ", "VO")),
  OUTPUT_CAPACITOR(
      "output capacitor",
      "a low-drop type oscillates without the right capacitor; a classic one asks for none",
      Source.datasheet("National LM2940/LM2940C, SNVS769H: at least 22 µF, ESR is critical"),
      RegulatorRule::outputCapacitor),
  TAB(
      "what the tab is joined to",
      "adjustable types carry the output on the tab, fixed ones the ground",
      Source.datasheet("onsemi MC7800/D and LM317/D: heatsink surface connected to pin 2"),
      MosfetRule::tab);

  private final Card card;

  RegulatorRule(String words, String why, Source source, Judgement judgement) {
    this.card = Card.of(words, why, source, judgement);
  }

  @Override
  public Card card() {
    return card;
  }

  /** The same judgement; a fit is undecided where a maker says nothing of what it rests on. */
  private static Judgement saidByAll(Judgement judgement, String... symbols) {
    return swap ->
        judgement
            .of(swap)
            .map(
                answer ->
                    Arrays.stream(symbols)
                        .filter(symbol -> answer.verdict() == SwapVerdict.FITS)
                        .flatMap(symbol -> unsaid(swap, symbol, answer).stream())
                        .findFirst()
                        .orElse(answer));
  }

  private static Optional<Answer> unsaid(SwapCase swap, String symbol, Answer fits) {
    List<DatasheetLine> said =
        swap.offered().lines(symbol).stream()
            .filter(line -> SwapPart.limit(line).isPresent())
            .toList();
    Evidence asked = fits.asked().orElseThrow();
    Evidence offered = fits.offered().orElseThrow();
    return swap.offered()
        .silentMaker(said)
        .map(maker -> Comparison.ofSilent(swap, symbol, maker, asked, offered));
  }

  /**
   * A fixed voltage must be the same and no further off; an adjustable one must reach as far both
   * ways.
   */
  private static Optional<Answer> outputVoltage(SwapCase swap) {
    Optional<DatasheetLine> asked = swap.asked().lines("VO").stream().findFirst();
    Optional<DatasheetLine> offered = swap.offered().lines("VO").stream().findFirst();
    Optional<Evidence> needs = asked.flatMap(RegulatorRule::output);
    Optional<Evidence> gives = offered.flatMap(RegulatorRule::output);
    if (needs.isEmpty() || gives.isEmpty()) {
      return Optional.of(Comparison.unknown(swap, "VO", needs, gives));
    }
    boolean isFixed = needs.get().quantity().isPresent();
    if (isFixed != gives.get().quantity().isPresent()) {
      return Optional.of(
          Answer.of(
              SwapVerdict.DOES_NOT_FIT,
              needs.get(),
              gives.get(),
              "one is fixed and the other adjustable: they need different parts around them"));
    }
    if (isFixed && needs.get().quantity().get().sameAs(gives.get().quantity().get())) {
      return Optional.of(sameNominal(swap, needs.get(), gives.get()));
    }
    boolean meets = !isFixed && allReach(swap.offered().lines("VO"), swap.asked().lines("VO"));
    return Optional.of(
        Answer.of(
            meets ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT, needs.get(), gives.get(), ""));
  }

  /**
   * Whatever comes under the candidate's number must keep to what some maker's asked part may do.
   */
  private static Answer sameNominal(SwapCase swap, Evidence needs, Evidence gives) {
    List<DatasheetLine> asked =
        swap.asked().lines("VO").stream().filter(RegulatorRule::hasBand).toList();
    List<DatasheetLine> offered = swap.offered().lines("VO");
    var missing = new ArrayList<String>(2);
    if (asked.isEmpty()) {
      missing.add(swap.asked().missing("least and greatest VO"));
    }
    if (!offered.stream().allMatch(RegulatorRule::hasBand)) {
      missing.add(swap.offered().missing("least and greatest VO"));
    }
    if (!missing.isEmpty()) {
      return Answer.missing(Optional.of(needs), Optional.of(gives), missing, "");
    }
    boolean within =
        offered.stream()
            .allMatch(line -> asked.stream().anyMatch(allowed -> reaches(allowed, line)));
    return within ? Answer.of(SwapVerdict.FITS, needs, gives, "") : furtherOff(swap, needs, gives);
  }

  /** What it feeds may bear more than the asked part would have done: its rail tells. */
  private static Answer furtherOff(SwapCase swap, Evidence needs, Evidence gives) {
    Optional<Rail> fed = RegulatorRails.fed(swap).filter(rail -> rail.tolerance().isPresent());
    if (fed.isEmpty()) {
      return Answer.missing(
          Optional.of(needs),
          Optional.of(gives),
          List.of(
              "how far off what it feeds bears its voltage: the tolerance of that rail in rails.csv"),
          "its voltage may be further off");
    }
    double least = fed.get().lowestVolts();
    double most = fed.get().highestVolts();
    boolean within =
        swap.offered().lines("VO").stream()
            .allMatch(
                line ->
                    line.min().orElseThrow().asDouble() >= least
                        && line.max().orElseThrow().asDouble() <= most);
    Evidence rail =
        Evidence.of(
            "rail " + fed.get().name() + " within " + fed.get().tolerance().get().quantity(),
            fed.get().tolerance().get().source());
    return Answer.of(
        within ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT,
        rail,
        gives,
        within ? "" : "its voltage may be further off than its rail's tolerance says");
  }

  /** Half as much, and it is one of a smaller class: 1.5 A, 1 A, 0.5 A, 0.1 A (common practice). */
  private static final double SMALLER_CLASS = 0.5;

  /**
   * Less than the asked part gives is enough where the boards draw no more. A regulator limits its
   * current itself, so that nothing burns where they do, but their voltage falls.
   */
  private static Optional<Answer> outputCurrent(SwapCase swap) {
    return atLeast("IO").of(swap).map(answer -> drawn(swap, answer));
  }

  private static Answer drawn(SwapCase swap, Answer parts) {
    if (parts.verdict() != SwapVerdict.DOES_NOT_FIT) {
      return parts;
    }
    Evidence gives = parts.offered().orElseThrow();
    Optional<Rail> fed = RegulatorRails.fed(swap);
    Optional<Sourced> limit = fed.flatMap(Rail::currentLimit);
    double loads = fed.map(rail -> RegulatorRails.loadAmps(swap, rail)).orElse(0.0);
    if (limit.isPresent() || loads > gives.quantity().orElseThrow().asDouble()) {
      Quantity draws =
          limit.map(Sourced::quantity).orElseGet(() -> Quantity.of(loads, Dimension.CURRENT));
      String words = "drawn from rail " + fed.orElseThrow().name();
      return Comparison.compared(
          Evidence.of(draws, words, Source.computed("rails.csv, loads.csv")), gives, Better.MORE);
    }
    if (parts.margin().orElse(-1) <= SMALLER_CLASS - 1) {
      return parts;
    }
    return Answer.missing(
        parts.asked(),
        parts.offered(),
        List.of(
            "what the boards draw from it: measure it and write it as the current limit of the rail"
                + " that it feeds, in rails.csv"),
        "it gives less than the part asked for, which may be enough");
  }

  /** Less than the asked part bears is enough where every rail of the kit stays below it. */
  private static Optional<Answer> inputVoltage(SwapCase swap) {
    Optional<Answer> parts = atLeast("VI").of(swap);
    Optional<Evidence> rail =
        swap.highestRailVolts()
            .map(
                volts ->
                    Evidence.of(
                        Quantity.of(volts, Dimension.VOLTAGE),
                        "the highest rail",
                        Source.computed("highest rail with its tolerance, rails.csv")));
    return parts.map(
        answer ->
            answer.verdict() == SwapVerdict.DOES_NOT_FIT && rail.isPresent()
                ? Comparison.compared(rail.get(), answer.offered().orElseThrow(), Better.MORE)
                : answer);
  }

  private static boolean hasBand(DatasheetLine line) {
    return line.min().isPresent() && line.max().isPresent();
  }

  /** The nominal voltage of a fixed type; the range of an adjustable one, in words. */
  private static Optional<Evidence> output(DatasheetLine line) {
    if (line.typ().isPresent()) {
      return line.typ().map(volts -> Evidence.of(volts, line.condition(), line.source()));
    }
    return hasBand(line)
        ? Optional.of(Evidence.of(line.min().get() + " to " + line.max().get(), line.source()))
        : Optional.empty();
  }

  /** Whether each maker's candidate reaches as far as some maker's asked part. */
  private static boolean allReach(List<DatasheetLine> offered, List<DatasheetLine> asked) {
    return offered.stream()
        .filter(RegulatorRule::hasBand)
        .allMatch(
            wide -> asked.stream().filter(RegulatorRule::hasBand).anyMatch(n -> reaches(wide, n)));
  }

  private static boolean reaches(DatasheetLine wide, DatasheetLine narrow) {
    return wide.min().orElseThrow().compareTo(narrow.min().orElseThrow()) <= 0
        && wide.max().orElseThrow().compareTo(narrow.max().orElseThrow()) >= 0;
  }

  private static Optional<Answer> outputCapacitor(SwapCase swap) {
    Optional<Evidence> gives = swap.offered().greatest("Cout");
    Optional<Evidence> needs = swap.asked().least("Cout");
    boolean isEnough =
        needs.isPresent()
            && gives.isPresent()
            && Comparison.compared(needs.get(), gives.get(), Better.LESS).verdict()
                == SwapVerdict.FITS;
    if (gives.isEmpty() || isEnough) {
      return Optional.empty();
    }
    return Optional.of(
        Answer.missing(
            Optional.empty(),
            gives,
            List.of("the output capacitor and its ESR: what stands beside the regulator"),
            "check that the capacitor at its output is at least that, and not a ceramic alone"));
  }
}
