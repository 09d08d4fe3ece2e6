package lowfirst.channel.data;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.formula.FuseFamily;
import lowfirst.channel.formula.OnResistance;
import lowfirst.part.DatasheetLine;
import lowfirst.part.PartKind;
import lowfirst.part.TestCondition;
import lowfirst.quantity.Source;

/** Finds what a channel needs to know of the part that carries its load, in a datasheet. */
final class SwitchReader {
  private SwitchReader() {}

  static PartData switching(Role role, String name, PartKind kind, Ratings ratings) {
    var data = new ArrayList<Datum>();
    data.add(ratings.harm(Term.RTH_AIR, DatasheetSymbol.RTHJA));
    data.add(ratings.harm(Term.RTH_CASE, DatasheetSymbol.RTHJC));
    data.add(ratings.limit(Term.JUNCTION_RATING, DatasheetSymbol.TJ));
    if (kind != PartKind.MOSFET) {
      data.add(ratings.limit(Term.DRAIN_RATING, DatasheetSymbol.VCEO));
      data.add(ratings.limit(Term.DRAIN_CURRENT_RATING, DatasheetSymbol.IC));
      data.add(pulseRating(ratings, DatasheetSymbol.ICM, DatasheetSymbol.IC));
      data.add(ratings.limit(Term.TOTAL_CURRENT_RATING, DatasheetSymbol.ICTOTAL));
      data.add(ratings.harm(Term.BASE_VOLTAGE, DatasheetSymbol.VBESAT));
      data.add(ratings.harm(Term.STAGE_EDGES, DatasheetSymbol.TSW));
      data.add(forcedGain(ratings, name));
      data.addAll(transfer(ratings, name));
      data.add(
          kind == PartKind.INTEGRATED_CIRCUIT
              ? ratings.harm(Term.SATURATION, DatasheetSymbol.VSINK)
              : ratings.harm(Term.SATURATION, DatasheetSymbol.VCESAT));
      data.add(
          kind == PartKind.INTEGRATED_CIRCUIT
              ? Datum.missing(Term.SATURATION_CURRENT)
              : ratings.testedUpTo(Term.SATURATION_CURRENT, DatasheetSymbol.VCESAT, "IC"));
      return PartData.plain(role, name, kind, data);
    }
    data.add(ratings.limit(Term.DRAIN_RATING, DatasheetSymbol.VDS));
    data.add(ratings.limit(Term.GATE_RATING, DatasheetSymbol.VGS));
    data.add(ratings.limit(Term.DRAIN_CURRENT_RATING, DatasheetSymbol.ID));
    data.add(pulseRating(ratings, DatasheetSymbol.IDM, DatasheetSymbol.ID));
    Datum threshold = ratings.between(Term.THRESHOLD, DatasheetSymbol.VGSTH);
    data.add(threshold);
    data.add(plateau(ratings, threshold));
    data.addAll(gateCharge(ratings));
    data.add(outputCapacitance(ratings));
    data.add(ratings.limit(Term.AVALANCHE_RATING, DatasheetSymbol.EAS));
    data.add(avalancheCurrent(ratings, name));
    data.add(ratings.limit(Term.REPETITIVE_RATING, DatasheetSymbol.EAR));
    OnResistance onResistance = CurveReader.onResistance(ratings);
    data.add(resistanceSpread(onResistance));
    return new PartData(
        role,
        name,
        kind,
        data,
        onResistance,
        CurveReader.hotFactor(ratings),
        CurveReader.impedance(ratings),
        CurveReader.safeArea(ratings),
        FuseFamily.UNSTATED,
        Optional.empty());
  }

  /** What bears a current for good bears it for a moment. */
  private static Datum pulseRating(
      Ratings ratings, DatasheetSymbol pulsed, DatasheetSymbol steady) {
    Datum stated = ratings.limit(Term.PULSE_CURRENT_RATING, pulsed);
    return stated.isKnown() ? stated : ratings.limit(Term.PULSE_CURRENT_RATING, steady);
  }

  /**
   * Without QGS or QGD of every maker the whole QG counts as Miller charge, which is the slower.
   */
  private static List<Datum> gateCharge(Ratings ratings) {
    Datum source = ratings.harm(Term.GATE_SOURCE_CHARGE, DatasheetSymbol.QGS);
    Datum miller = ratings.harm(Term.MILLER_CHARGE, DatasheetSymbol.QGD);
    Datum whole = ratings.harm(Term.MILLER_CHARGE, DatasheetSymbol.QG);
    if (source.isKnown() && miller.isKnown() || !whole.isKnown() && miller.isKnown()) {
      return List.of(source, miller);
    }
    Source within = Source.computed("counted within QG, which is given");
    return List.of(Datum.of(Term.GATE_SOURCE_CHARGE, 0, within), whole);
  }

  /** Builds lie between the typical resistance and the maximum; checks take the maximum. */
  private static Datum resistanceSpread(OnResistance onResistance) {
    double least =
        onResistance.lines().stream()
            .mapToDouble(line -> line.typicalOhms() / line.maxOhms())
            .min()
            .orElse(1);
    return Datum.of(
        Term.ON_RESISTANCE_FACTOR, least, 1, 1, Source.computed("typical to maximum RDSon"));
  }

  private static Datum plateau(Ratings ratings, Datum threshold) {
    Datum given = ratings.between(Term.PLATEAU, DatasheetSymbol.VGSPL);
    if (given.isKnown() || !threshold.isKnown()) {
      return given;
    }
    return Datum.of(
        Term.PLATEAU,
        threshold.low(),
        threshold.nominal() + 0.75,
        threshold.high() + 1.5,
        Source.assumed("from VGSth min to 1.5 V above VGSth max", "datasheets.csv VGSpl"));
  }

  private static Datum outputCapacitance(Ratings ratings) {
    return ratings.about(DatasheetSymbol.COSS).stream()
        .flatMap(
            line ->
                line.max().or(line::typ).stream()
                    .map(c -> Datum.of(Term.OUTPUT_CAPACITANCE, c.asDouble(), line.source())))
        .max(Comparator.comparingDouble(Datum::nominal))
        .orElse(
            Datum.of(Term.OUTPUT_CAPACITANCE, 1e-9, Source.assumed("1 nF", "datasheets.csv Coss")));
  }

  private static Datum avalancheCurrent(Ratings ratings, String name) {
    return ratings.about(DatasheetSymbol.EAS).stream()
        .flatMap(
            line -> {
              TestCondition condition = TestCondition.parse(line.condition());
              OptionalDouble amps =
                  condition.value("IAS").isPresent()
                      ? condition.value("IAS")
                      : condition.value("ID");
              return amps.isPresent()
                  ? Stream.of(
                      Datum.of(Term.AVALANCHE_CURRENT_RATING, amps.getAsDouble(), line.source()))
                  : Stream.empty();
            })
        .min(Comparator.comparingDouble(Datum::nominal))
        .orElse(
            Datum.missing(
                Term.AVALANCHE_CURRENT_RATING,
                "IAS of " + name + ": write it in datasheets.csv, condition of EAS (IAS=...)"));
  }

  /** One point of an optocoupler's transfer ratio, such as 50 % at 5 mA and 5 V. */
  private record Transfer(double inputAmps, double volts, double amps, DatasheetLine line) {
    static Stream<Transfer> of(DatasheetLine line) {
      TestCondition condition = TestCondition.parse(line.condition());
      OptionalDouble in = condition.value("IF");
      OptionalDouble volts = condition.value("VCE");
      return in.isPresent() && volts.isPresent() && line.min().isPresent()
          ? Stream.of(
              new Transfer(
                  in.getAsDouble(),
                  volts.getAsDouble(),
                  in.getAsDouble() * Ratings.amount(line.min()) / 100,
                  line))
          : Stream.empty();
    }
  }

  /** Of several points the least current, the most that it asks for, and the most voltage. */
  private static List<Datum> transfer(Ratings ratings, String name) {
    List<Transfer> points =
        ratings.about(DatasheetSymbol.CTR).stream().flatMap(Transfer::of).toList();
    if (points.isEmpty()
        || ratings.silentMaker(points.stream().map(Transfer::line).toList()).isPresent()) {
      String missing = "CTR min of " + name + " with its IF= and VCE=: write it in datasheets.csv";
      return Stream.of(Term.TRANSFER_CURRENT, Term.TRANSFER_INPUT, Term.TRANSFER_VOLTAGE)
          .map(term -> Datum.missing(term, missing))
          .toList();
    }
    return List.of(
        datum(Term.TRANSFER_CURRENT, Collections.min(points, by(Transfer::amps)), Transfer::amps),
        datum(
            Term.TRANSFER_INPUT,
            Collections.max(points, by(Transfer::inputAmps)),
            Transfer::inputAmps),
        datum(
            Term.TRANSFER_VOLTAGE, Collections.max(points, by(Transfer::volts)), Transfer::volts));
  }

  private static Comparator<Transfer> by(ToDoubleFunction<Transfer> amount) {
    return Comparator.comparingDouble(amount);
  }

  private static Datum datum(Term term, Transfer point, ToDoubleFunction<Transfer> amount) {
    return Datum.of(term, amount.applyAsDouble(point), point.line().source());
  }

  private static Datum forcedGain(Ratings ratings, String name) {
    return ratings.about(DatasheetSymbol.VCESAT).stream()
        .flatMap(
            line -> {
              TestCondition condition = TestCondition.parse(line.condition());
              OptionalDouble out = condition.value("IC");
              OptionalDouble in =
                  condition.value("IB").isPresent() ? condition.value("IB") : condition.value("IF");
              return out.isPresent() && in.isPresent() && in.getAsDouble() > 0
                  ? Stream.of(
                      Datum.of(
                          Term.FORCED_GAIN_RATING,
                          out.getAsDouble() / in.getAsDouble(),
                          line.source()))
                  : Stream.empty();
            })
        .min(Comparator.comparingDouble(Datum::nominal))
        .orElse(
            Datum.missing(
                Term.FORCED_GAIN_RATING,
                "VCEsat of " + name + " with its IC= and IB= or IF=: write it in datasheets.csv"));
  }
}
