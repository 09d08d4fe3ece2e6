package lowfirst.board;

import java.util.Optional;
import java.util.OptionalInt;
import lowfirst.problem.Place;
import lowfirst.quantity.Sourced;

/**
 * A supply and its return: one row of {@code rails.csv}.
 *
 * @param name what channels and loads call it
 * @param voltage nominal
 * @param tolerance per cent either way
 * @param currentLimit what the supply delivers at most
 * @param shortCircuitCurrent what flows into a short: for a battery far more than its rating
 * @param loadsAtOnce how many loads may be on together; absent means all
 * @param returnWire conductor size as written, for example {@code 1.5 mm²} or {@code AWG 16}
 * @param returnLength one way
 * @param returnContacts contacts in parallel in the return path
 * @param contactRating current rating of one such contact
 * @param sharedReturn name of the return conductor, the same for every rail that shares it; empty
 *     where the rail has one of its own, or nobody says
 */
public record Rail(
    String name,
    Optional<Sourced> voltage,
    Optional<Sourced> tolerance,
    Optional<Sourced> currentLimit,
    Optional<Sourced> shortCircuitCurrent,
    OptionalInt loadsAtOnce,
    String returnWire,
    Optional<Sourced> returnLength,
    OptionalInt returnContacts,
    Optional<Sourced> contactRating,
    String sharedReturn,
    Place place) {

  /** Taken where the kit states no tolerance. */
  public static final double ASSUMED_PERCENT = 10;

  /** How far the voltage may be off either way, in per cent: stated, or assumed. */
  public double percentOff() {
    return tolerance.map(Sourced::asDouble).orElse(ASSUMED_PERCENT);
  }

  /** The stated voltage in volts; not a number where it isn't known. */
  public double nominalVolts() {
    return voltage.map(Sourced::asDouble).orElse(Double.NaN);
  }

  /** The least it may be; not a number where the voltage isn't known. */
  public double lowestVolts() {
    return nominalVolts() * (1 - percentOff() / 100);
  }

  /** The most it may be; not a number where the voltage isn't known. */
  public double highestVolts() {
    return nominalVolts() * (1 + percentOff() / 100);
  }
}
