package lowfirst.swap.rule;

import static lowfirst.quantity.Source.standard;

import java.util.List;
import java.util.Optional;
import lowfirst.board.Driver;
import lowfirst.board.Rail;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.LogicFamily;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.Words;

/** What a 74-series logic circuit must be to stand in for another. */
public enum LogicRule implements SwapRule {
  FUNCTION(
      "function and pinout",
      "types with the same number after the family letters have the same function and pinout",
      standard("JEDEC JESD7A"),
      LogicRule::function),
  INPUT_LEVEL(
      "input levels against what drives it",
      "HC takes 3.15 V of 4.5 V for a high, and TTL promises only 2.4 V to 2.7 V",
      Source.standard("JEDEC JESD7A; HC noise immunity 30 % of VCC, Harris File Number 1781.1"),
      LogicRule::inputLevel),
  OUTPUT_LEVEL(
      "output levels for what it drives",
      "a TTL output stops at 2.7 V or less: not enough for an HC input or a gate",
      standard("JEDEC JESD7A"),
      LogicRule::outputLevel),
  SUPPLY(
      "supply voltage",
      "HCT and LS need 5 V; HC runs from 2 V to 6 V",
      standard("JEDEC JESD7A"),
      LogicRule::supply);

  private final Card card;

  LogicRule(String words, String why, Source source, Judgement judgement) {
    this.card = Card.of(words, why, source, judgement);
  }

  @Override
  public Card card() {
    return card;
  }

  private static final Source JESD7A = standard("JEDEC JESD7A");

  private static Evidence word(String word) {
    return Evidence.of(word, JESD7A);
  }

  private static Optional<Answer> function(SwapCase swap) {
    var asked = LogicFamily.in(swap.asked());
    var offered = LogicFamily.in(swap.offered());
    if (asked.isEmpty() || offered.isEmpty()) {
      return Optional.of(
          Answer.missing(
              asked.map(named -> word(named.function())),
              offered.map(named -> word(named.function())),
              List.of(comparison(swap)),
              "two circuits of unlike names are rarely interchangeable"));
    }
    boolean same = asked.get().function().equals(offered.get().function());
    return Optional.of(
        Answer.of(
            same ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT,
            word("74.." + asked.get().function()),
            word("74.." + offered.get().function()),
            ""));
  }

  private static String comparison(SwapCase swap) {
    String asked = swap.asked().type().typeNumber();
    String offered = swap.offered().name();
    return !asked.isBlank() && offered.regionMatches(true, 0, asked, 0, asked.length())
        ? PlaceRule.orderCode(swap.offered(), asked)
        : "in both datasheets, what each pin is, the supply, and what inputs take and outputs reach:"
            + " only 74-series types are compared here";
  }

  private static Optional<Answer> inputLevel(SwapCase swap) {
    return families(
        swap,
        (asked, offered) -> {
          boolean higher =
              asked.input() == LogicFamily.Input.TTL && offered.input() == LogicFamily.Input.CMOS;
          return Answer.of(
              higher ? SwapVerdict.DOES_NOT_FIT : SwapVerdict.FITS,
              word(level(asked)),
              word(level(offered)),
              higher ? "safe only if everything that drives it swings up to the supply" : "");
        });
  }

  private static String level(LogicFamily family) {
    return family.input() == LogicFamily.Input.TTL ? "VIH 2.0 V" : "VIH 70 % of VCC";
  }

  private static Optional<Answer> outputLevel(SwapCase swap) {
    return families(
        swap,
        (asked, offered) ->
            Answer.of(
                asked.output() == LogicFamily.Output.RAIL_TO_RAIL
                        && offered.output() == LogicFamily.Output.TTL
                    ? SwapVerdict.DOES_NOT_FIT
                    : SwapVerdict.FITS,
                word(swing(asked)),
                word(swing(offered)),
                ""));
  }

  private static String swing(LogicFamily family) {
    return family.output() == LogicFamily.Output.TTL ? "TTL high" : "swings to the supply";
  }

  private static Optional<Answer> families(
      SwapCase swap, java.util.function.BiFunction<LogicFamily, LogicFamily, Answer> judge) {
    var asked = LogicFamily.in(swap.asked());
    var offered = LogicFamily.in(swap.offered());
    return asked.isEmpty() || offered.isEmpty()
        ? Optional.empty()
        : Optional.of(judge.apply(asked.get().family(), offered.get().family()));
  }

  /** The rail of a driver with this part type, or the lowest rail of the kit. */
  private static Optional<Answer> supply(SwapCase swap) {
    var offered = LogicFamily.in(swap.offered());
    if (offered.isEmpty()) {
      return Optional.empty();
    }
    LogicFamily family = offered.get().family();
    Evidence gives = word(family.supplyRange());
    Optional<Rail> rail = supplyRail(swap).filter(known -> known.voltage().isPresent());
    boolean runs =
        rail.filter(known -> family.runsFrom(known.lowestVolts(), known.highestVolts()))
            .isPresent();
    if (rail.isEmpty() || !runs && mayRun(family, rail.get())) {
      String lacking =
          rail.map(known -> "tolerance of rail " + known.name() + ": rails.csv")
              .orElse("its supply: supply of a driver in drivers.csv, or a rail in rails.csv");
      return LogicFamily.in(swap.asked()).filter(named -> named.family() == family).isPresent()
          ? Optional.empty()
          : Optional.of(
              Answer.missing(
                  rail.map(LogicRule::supply), Optional.of(gives), List.of(lacking), ""));
    }
    return Optional.of(
        Answer.of(
            runs ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT, supply(rail.get()), gives, ""));
  }

  /** Whether it runs from the rail's nominal voltage, and only a tolerance could tell more. */
  private static boolean mayRun(LogicFamily family, Rail rail) {
    double volts = rail.nominalVolts();
    return rail.tolerance().isEmpty() && family.runsFrom(volts, volts);
  }

  private static Evidence supply(Rail rail) {
    return Evidence.of(
        Quantity.of(rail.nominalVolts(), Dimension.VOLTAGE),
        "rail " + rail.name(),
        rail.voltage().orElseThrow().source());
  }

  private static Optional<Rail> supplyRail(SwapCase swap) {
    String name = swap.asked().type().typeNumber();
    return swap.kit().drivers().stream()
        .filter(driver -> Words.same(driver.partType(), name))
        .map(Driver::supply)
        .flatMap(supply -> swap.kit().rail(supply).stream())
        .findFirst()
        .or(
            () ->
                swap.kit().rails().stream()
                    .filter(rail -> rail.voltage().isPresent())
                    .min(java.util.Comparator.comparing(Rail::nominalVolts)));
  }
}
