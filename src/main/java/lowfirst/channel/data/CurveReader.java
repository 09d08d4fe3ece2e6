package lowfirst.channel.data;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lowfirst.channel.formula.HotFactor;
import lowfirst.channel.formula.OnResistance;
import lowfirst.channel.formula.SafeArea;
import lowfirst.channel.formula.TransientImpedance;
import lowfirst.part.DatasheetLine;
import lowfirst.part.TestCondition;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/**
 * Finds the curves and lists of a MOSFET in its datasheet: lines of RDS(on), hot factor, transient
 * impedance, safe area.
 */
final class CurveReader {
  private static final double RATIO_READING_ERROR = 0.05;

  private CurveReader() {}

  static OnResistance onResistance(Ratings ratings) {
    var lines = new ArrayList<OnResistance.Line>();
    var used = new ArrayList<DatasheetLine>();
    for (DatasheetLine line : ratings.about(DatasheetSymbol.RDSON)) {
      TestCondition condition = TestCondition.parse(line.condition());
      // Of a range what makes the line harder to earn: the gate pulled farthest, the least current.
      OptionalDouble gate = condition.farthest("VGS");
      boolean cold = condition.nearest("TJ").orElse(25) <= 25;
      if (gate.orElse(0) > 0 && cold && line.max().isPresent()) {
        used.add(line);
        double max = line.max().get().asDouble();
        double typical = line.typ().map(Quantity::asDouble).orElse(max);
        lines.add(
            new OnResistance.Line(
                line.maker(),
                gate.getAsDouble(),
                condition.nearest("ID").orElse(Double.POSITIVE_INFINITY),
                max,
                typical,
                line.source()));
      }
    }
    boolean allMakers = ratings.silentMaker(used).isEmpty();
    return allMakers ? OnResistance.of(lines) : OnResistance.unknown();
  }

  static HotFactor hotFactor(Ratings ratings) {
    var points = new ArrayList<HotFactor.Point>();
    Source source = HotFactor.DEFAULT.source();
    Optional<Source> typical = Optional.empty();
    for (DatasheetLine line : ratings.about(DatasheetSymbol.RDSON_RATIO)) {
      OptionalDouble at = TestCondition.parse(line.condition()).value("TJ");
      Optional<Double> factor =
          line.max()
              .map(Quantity::asDouble)
              .or(() -> line.typ().map(typ -> typ.asDouble() + RATIO_READING_ERROR));
      if (at.isPresent() && factor.isPresent()) {
        points.add(new HotFactor.Point(at.getAsDouble(), factor.get()));
        source = line.source();
        typical = line.max().isPresent() ? typical : Optional.of(ofTypicalCurve(source));
      }
    }
    for (DatasheetLine hot : ratings.about(DatasheetSymbol.RDSON)) {
      TestCondition condition = TestCondition.parse(hot.condition());
      double at = condition.value("TJ").orElse(25);
      OptionalDouble cold = coldTwin(ratings, condition);
      if (at > 25 && cold.isPresent() && hot.max().isPresent()) {
        points.add(new HotFactor.Point(at, hot.max().get().asDouble() / cold.getAsDouble()));
        source = hot.source();
      }
    }
    return HotFactor.of(worstOf(points), typical.orElse(source));
  }

  /** Makers print no other curve, so it counts; whoever relies on it must see that it does. */
  private static Source ofTypicalCurve(Source source) {
    return new Source(
        source.origin(),
        "a typical curve, which promises nothing, and "
            + RATIO_READING_ERROR
            + " for reading it: "
            + source.text());
  }

  /** Where several makers or lines give a factor at one temperature, the largest. */
  private static List<HotFactor.Point> worstOf(List<HotFactor.Point> points) {
    var worst = new java.util.TreeMap<Double, Double>();
    points.forEach(point -> worst.merge(point.celsius(), point.factor(), Math::max));
    return worst.entrySet().stream()
        .map(entry -> new HotFactor.Point(entry.getKey(), entry.getValue()))
        .toList();
  }

  private static OptionalDouble coldTwin(Ratings ratings, TestCondition hot) {
    return ratings.about(DatasheetSymbol.RDSON).stream()
        .filter(
            line -> {
              TestCondition cold = TestCondition.parse(line.condition());
              return cold.farthest("TJ").orElse(25) <= 25
                  && cold.farthest("VGS").equals(hot.farthest("VGS"))
                  && line.max().isPresent();
            })
        .mapToDouble(line -> line.max().orElseThrow().asDouble())
        .min();
  }

  static TransientImpedance impedance(Ratings ratings) {
    var resistances = new ArrayList<Double>();
    var times = new ArrayList<Double>();
    for (int i = 1; ; i++) {
      OptionalDouble resistance = numbered(ratings, "Rth" + i);
      OptionalDouble time = numbered(ratings, "tau" + i);
      if (resistance.isEmpty() || time.isEmpty()) {
        break;
      }
      resistances.add(resistance.getAsDouble());
      times.add(time.getAsDouble());
    }
    if (!resistances.isEmpty()) {
      return TransientImpedance.foster(
          resistances.stream().mapToDouble(Double::doubleValue).toArray(),
          times.stream().mapToDouble(Double::doubleValue).toArray());
    }
    return TransientImpedance.points(
        ratings
            .points(DatasheetSymbol.ZTHJC, "t")
            .sorted(java.util.Comparator.comparingDouble(point -> point[0]))
            .toList());
  }

  private static OptionalDouble numbered(Ratings ratings, String symbol) {
    return ratings.lines().stream()
        .filter(line -> line.symbol().equals(symbol))
        .flatMap(line -> line.max().or(line::typ).or(line::min).stream())
        .mapToDouble(Quantity::asDouble)
        .findFirst();
  }

  static SafeArea safeArea(Ratings ratings) {
    return new SafeArea(
        ratings.about(DatasheetSymbol.SOA).stream()
            .filter(line -> line.max().isPresent())
            .flatMap(
                line -> {
                  TestCondition condition = TestCondition.parse(line.condition());
                  OptionalDouble volts = condition.value("VDS");
                  OptionalDouble seconds = condition.value("t");
                  return volts.isPresent() && seconds.isPresent()
                      ? Stream.of(
                          new SafeArea.Point(
                              volts.getAsDouble(),
                              seconds.getAsDouble(),
                              line.max().get().asDouble()))
                      : Stream.empty();
                })
            .toList());
  }
}
