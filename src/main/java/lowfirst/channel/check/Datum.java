package lowfirst.channel.check;

import java.util.Arrays;
import java.util.Optional;
import lowfirst.channel.check.Check.Input;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.quantity.Sourced;

/**
 * A number that a check reads: known between two corners with its source, or missing with where to
 * write it. A missing number is not a number ({@link Double#NaN}) at every corner, so nothing can
 * be computed from it by accident.
 *
 * @param term what it is
 * @param name what a report calls it: the term's symbol, or a constant's own name
 * @param dimension what it measures
 * @param low the least it may be, in the term's unit
 * @param nominal what it is said to be
 * @param high the most it may be
 * @param source where it came from
 * @param missing what to write and where, when it is missing; empty when it is known
 */
public record Datum(
    Term term,
    String name,
    Dimension dimension,
    double low,
    double nominal,
    double high,
    Source source,
    String missing) {

  private static final Source NO_SOURCE = Source.computed("missing");

  /** A number without spread. */
  public static Datum of(Term term, double value, Source source) {
    return of(term, value, value, value, source);
  }

  /** A number between two corners. */
  public static Datum of(Term term, double low, double nominal, double high, Source source) {
    return new Datum(term, term.symbol(), term.dimension(), low, nominal, high, source, "");
  }

  /** A number from the kit. */
  public static Datum of(Term term, Sourced sourced) {
    return of(term, sourced.asDouble(), sourced.source());
  }

  /** A number that a formula takes from practice or a standard, by the name a report gives it. */
  public static Datum constant(String name, double value, Dimension dimension, Source source) {
    return new Datum(Term.CONSTANT, name, dimension, value, value, value, source, "");
  }

  /** A number that nobody has written down. */
  public static Datum missing(Term term) {
    return missing(term, term.symbol() + ": write it in " + term.where());
  }

  /** A number that nobody has written down, and what to do about it. */
  public static Datum missing(Term term, String remedy) {
    double none = Double.NaN;
    return new Datum(term, term.symbol(), term.dimension(), none, none, none, NO_SOURCE, remedy);
  }

  /** The number of a cell; where it is empty, missing with what to do about it. */
  public static Datum stated(Term term, Optional<Sourced> cell, String remedy) {
    return cell.map(number -> of(term, number)).orElseGet(() -> missing(term, remedy));
  }

  /** The number of a cell; where it is empty, what is assumed instead. */
  public static Datum statedOr(Term term, Optional<Sourced> cell, double assumed, Source source) {
    return cell.map(number -> of(term, number)).orElseGet(() -> of(term, assumed, source));
  }

  /** These and more. */
  public static Datum[] with(Datum[] data, Datum... more) {
    Datum[] all = Arrays.copyOf(data, data.length + more.length);
    System.arraycopy(more, 0, all, data.length, more.length);
    return all;
  }

  /** Whether the number is there. */
  public boolean isKnown() {
    return missing.isEmpty();
  }

  /** Whether it is there to be shown with its source. */
  boolean isShown() {
    return isKnown() && Double.isFinite(low) && Double.isFinite(high);
  }

  /** Whether a check may pass on it. */
  public boolean canPass() {
    return missing.isEmpty() && source.origin() != Source.Origin.MEMORY;
  }

  /** The same source with all corners at {@code value}. */
  public Datum at(double value) {
    return new Datum(term, name, dimension, value, value, value, source, missing);
  }

  /** The same source with all corners multiplied by {@code factor}. */
  public Datum times(double factor) {
    return new Datum(
        term, name, dimension, low * factor, nominal * factor, high * factor, source, missing);
  }

  /** Either of two: as low as the lower and as high as the higher. */
  public Datum joined(Datum other) {
    return of(
        term,
        Math.min(low, other.low),
        Math.min(nominal, other.nominal),
        Math.max(high, other.high),
        canPass() ? other.source : source);
  }

  /** How a check shows it: the corner farthest in the term's bad direction. */
  Input input() {
    double shown = term.worse() == Term.Worse.LOWER ? low : high;
    String spread = low == high ? "" : spread();
    Source cited = spread.isEmpty() ? source : new Source(source.origin(), source + spread);
    return new Input(name, Sourced.of(Quantity.of(shown, dimension), cited));
  }

  private String spread() {
    return " ("
        + Quantity.of(low, dimension).rounded(4)
        + " to "
        + Quantity.of(high, dimension).rounded(4)
        + ")";
  }
}
