package lowfirst.channel.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Sourced;

/**
 * One check of a finding, with everything an expert needs to do it again by hand. Its verdict
 * follows from its numbers and can't be set: nothing passes on missing or remembered data.
 *
 * <p>Numbers are doubles and texts are made when asked for, so that a hundred thousand findings a
 * second are possible.
 *
 * @param kind which check; a closed set
 * @param actualAmount the worst case worked out, in the kind's unit; NaN when a datum is missing,
 *     infinite when it has no bound (thermal runaway)
 * @param allowedAmount the limit it is held against; NaN when a datum is missing
 * @param data every number that went in
 * @param verdict what it says
 */
public record Check(
    CheckKind kind, double actualAmount, double allowedAmount, List<Datum> data, Verdict verdict) {

  /** A named number with its source. */
  public record Input(String symbol, Sourced value) {}

  /** A check of {@code actual} against {@code allowed}, both in the kind's unit. */
  public static Check of(CheckKind kind, double actual, double allowed, Datum... data) {
    // Not copied: the array was made for this call, and drawers ask for millions of checks.
    List<Datum> seen = Collections.unmodifiableList(Arrays.asList(data));
    return new Check(kind, actual, allowed, seen, judged(kind, actual, allowed, data));
  }

  /**
   * A check whose actual is only a bound because {@code absent} is missing: it may pass on the
   * bound, and is undecided otherwise.
   */
  public static Check bounded(
      CheckKind kind, double bound, double allowed, Datum absent, Datum... data) {
    Check check = of(kind, bound, allowed, data);
    return check.verdict == Verdict.OVERLOADED ? check.lacking(List.of(absent)) : check;
  }

  /** The same check, undecided since these data are missing. */
  public Check lacking(List<Datum> absent) {
    var all = new ArrayList<>(data);
    all.addAll(absent);
    return new Check(kind, actualAmount, allowedAmount, List.copyOf(all), Verdict.UNDECIDED);
  }

  /** The same check, which shows this number too. */
  public Check with(Datum more) {
    var all = new ArrayList<>(data);
    all.add(more);
    return new Check(kind, actualAmount, allowedAmount, List.copyOf(all), verdict);
  }

  /**
   * The same check of something that may be more, up to {@code most}: overloaded if it is so at
   * least, carrying if it carries the most, and otherwise undecided until what is missing tells.
   */
  public Check upTo(Check most, List<Datum> missing) {
    if (verdict == Verdict.OVERLOADED) {
      return this;
    }
    return most.verdict == Verdict.CARRIES ? most : most.lacking(missing);
  }

  /** The same of checks of the same kinds in the same order. */
  public static List<Check> upTo(List<Check> least, List<Check> most, List<Datum> missing) {
    return IntStream.range(0, most.size())
        .mapToObj(i -> least.get(i).upTo(most.get(i), missing))
        .toList();
  }

  private static Verdict judged(CheckKind kind, double actual, double allowed, Datum[] data) {
    boolean sourced = true;
    for (Datum datum : data) {
      if (!datum.isKnown()) {
        return Verdict.UNDECIDED;
      }
      sourced &= datum.canPass();
    }
    if (Double.isNaN(actual) || Double.isNaN(allowed)) {
      return Verdict.UNDECIDED;
    }
    boolean within =
        kind.sense() == CheckKind.Sense.AT_MOST ? actual <= allowed : actual >= allowed;
    if (!within) {
      return kind == CheckKind.VOLTAGE_SCOPE ? Verdict.UNDECIDED : Verdict.OVERLOADED;
    }
    return sourced ? Verdict.CARRIES : Verdict.UNDECIDED;
  }

  /** The worst case worked out; absent when it is not a number or has no bound. */
  public Optional<Quantity> actual() {
    return quantity(actualAmount);
  }

  /** The limit; absent when it is not a number. */
  public Optional<Quantity> allowed() {
    return quantity(allowedAmount);
  }

  private Optional<Quantity> quantity(double amount) {
    return Double.isFinite(amount)
        ? Optional.of(Quantity.of(amount, kind.dimension()))
        : Optional.empty();
  }

  /**
   * How much of the limit is left, as a share of it: 0.2 means a fifth. Negative beyond the limit;
   * temperatures are counted from 25 °C; NaN when a datum is missing.
   */
  public double margin() {
    boolean temperature = kind.dimension() == lowfirst.quantity.Dimension.TEMPERATURE;
    double zero = temperature ? 25 : 0;
    double left =
        kind.sense() == CheckKind.Sense.AT_MOST
            ? allowedAmount - actualAmount
            : actualAmount - allowedAmount;
    return left / Math.max(Math.abs(allowedAmount - zero), 1e-12);
  }

  /** The equation in plain text, with its symbols. */
  public String formula() {
    return kind.formula();
  }

  /** One sentence for a beginner. */
  public String remark() {
    return kind.remark();
  }

  /** Every known number that went in, named, with its source. */
  public List<Input> inputs() {
    return data.stream().filter(Datum::isShown).distinct().map(Datum::input).toList();
  }

  /** What is missing, each with where to write it. */
  public List<String> missing() {
    return data.stream().filter(datum -> !datum.isKnown()).map(Datum::missing).distinct().toList();
  }
}
