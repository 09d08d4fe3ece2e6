package lowfirst.sorting;

import java.util.Optional;
import lowfirst.part.PartKind;
import lowfirst.quantity.Dimension;

/**
 * The test that tells two part types apart.
 *
 * @param test what to do
 * @param one the reading to accept for the first, where it is measured
 * @param other the reading to accept for the second, where it is measured
 */
public record Separation(Test test, Optional<MeterLimits> one, Optional<MeterLimits> other) {

  /** What to do. */
  public enum Test {
    /** Measure the resistance: the bands don't meet. */
    OHMS,
    /** Measure the capacitance: the bands don't meet. */
    FARADS,
    /** Measure the resistance: a capacitor reads open, an inductor a few ohms. */
    KIND_BY_OHMS,
    /** Count the leads: the bodies differ. */
    COUNT_THE_LEADS,
    /** Read the type number under a lens. */
    READ_THE_NUMBER,
    /** Read the voltage or power that is printed, or compare the size of the body. */
    READ_THE_RATING,
    /** Light it from a current-limited supply. */
    LIGHT_IT,
    /** The meter can't tell: keep them in the bags they came in. */
    KEEP_IN_ITS_BAG
  }

  static Separation of(Compartment one, Compartment other, Meter meter) {
    Optional<MeterLimits> first = MeterLimits.of(one.type(), meter);
    Optional<MeterLimits> second = MeterLimits.of(other.type(), meter);
    return new Separation(test(one, other, first, second), first, second);
  }

  private static Test test(
      Compartment one,
      Compartment other,
      Optional<MeterLimits> first,
      Optional<MeterLimits> second) {
    if (family(one) != family(other)) {
      return family(one) == Family.OTHER || family(other) == Family.OTHER
          ? Test.READ_THE_NUMBER
          : Test.KIND_BY_OHMS;
    }
    if (first.isPresent() && second.isPresent()) {
      if (first.get().tellsApartFrom(second.get())) {
        return first.get().nominal().dimension() == Dimension.CAPACITANCE ? Test.FARADS : Test.OHMS;
      }
      boolean ratings =
          !one.type().ratedVoltage().equals(other.type().ratedVoltage())
              || !one.type().ratedPower().equals(other.type().ratedPower());
      return ratings ? Test.READ_THE_RATING : Test.KEEP_IN_ITS_BAG;
    }
    if (family(one) == Family.RESISTANCE && one.type().kind() != other.type().kind()) {
      return Test.COUNT_THE_LEADS;
    }
    if (one.type().kind() == PartKind.LED && other.type().kind() == PartKind.LED) {
      return Test.LIGHT_IT;
    }
    return one.marking().isUnmarked() || other.marking().isUnmarked()
        ? Test.KEEP_IN_ITS_BAG
        : Test.READ_THE_NUMBER;
  }

  private enum Family {
    RESISTANCE,
    CAPACITANCE,
    INDUCTANCE,
    OTHER
  }

  private static Family family(Compartment compartment) {
    PartKind kind = compartment.type().kind();
    if (kind.isCapacitor()) {
      return Family.CAPACITANCE;
    }
    return switch (kind) {
      case RESISTOR, RESISTOR_NETWORK, TRIMMER, POTENTIOMETER, WIRE_LINK -> Family.RESISTANCE;
      case INDUCTOR -> Family.INDUCTANCE;
      default -> Family.OTHER;
    };
  }
}
