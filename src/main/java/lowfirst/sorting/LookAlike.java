package lowfirst.sorting;

import java.util.Comparator;

/**
 * Two part types of a kit that a person can mistake for one another.
 *
 * @param one the first, by compartment number
 * @param other the second
 * @param likeness why
 * @param consequence the worse of what a mix-up either way would do
 * @param worsePlace the part type in whose place the other does that harm
 * @param ratio how many times the larger value is the smaller; 1 when they have none to compare
 * @param separation the test that tells them apart
 */
public record LookAlike(
    Compartment one,
    Compartment other,
    Likeness likeness,
    Consequence consequence,
    Compartment worsePlace,
    double ratio,
    Separation separation) {

  /** The worst mix-up first; among equals the one that is furthest off. */
  static final Comparator<LookAlike> WORST_FIRST =
      Comparator.comparing(LookAlike::consequence)
          .thenComparing(LookAlike::ratio, Comparator.reverseOrder())
          .thenComparing(alike -> alike.one().number())
          .thenComparing(alike -> alike.other().number());

  static LookAlike of(Compartment one, Compartment other, Likeness likeness, Meter meter) {
    Consequence inFirst = Consequence.of(other, one);
    Consequence inSecond = Consequence.of(one, other);
    boolean first = inFirst.compareTo(inSecond) <= 0;
    return new LookAlike(
        one,
        other,
        likeness,
        first ? inFirst : inSecond,
        first ? one : other,
        ratio(one, other),
        Separation.of(one, other, meter));
  }

  private static double ratio(Compartment one, Compartment other) {
    if (one.type().value().isEmpty() || other.type().value().isEmpty()) {
      return 1;
    }
    double first = one.type().value().get().asDouble();
    double second = other.type().value().get().asDouble();
    boolean comparable =
        one.type().value().get().dimension() == other.type().value().get().dimension();
    return comparable && first > 0 && second > 0
        ? Math.max(first, second) / Math.min(first, second)
        : 1;
  }
}
