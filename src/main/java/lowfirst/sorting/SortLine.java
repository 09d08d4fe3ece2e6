package lowfirst.sorting;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One line of the sorting list.
 *
 * @param compartment what it is and where it goes
 * @param marking what is printed on it
 * @param limits the meter reading to accept, where a multimeter can judge it
 * @param arrived how many the bag list says; empty when the kit has no bag list
 * @param bags the bags they are in; also a bag whose label fits several part types
 * @param shared whether one of the bags fits several part types, so that the count is a share
 * @param spares how many more than needed to buy (common practice)
 */
public record SortLine(
    Compartment compartment,
    PartMarking marking,
    Optional<MeterLimits> limits,
    OptionalInt arrived,
    List<String> bags,
    boolean shared,
    int spares) {

  public SortLine {
    bags = List.copyOf(bags);
  }

  /** How many are missing; 0 when enough arrived or nothing is known of arrivals. */
  public int shortage() {
    return arrived.isPresent() ? Math.max(0, compartment.quantity() - arrived.getAsInt()) : 0;
  }

  /** How many more arrived than are needed. */
  public int surplus() {
    return arrived.isPresent() ? Math.max(0, arrived.getAsInt() - compartment.quantity()) : 0;
  }

  /** How many to buy: what is missing, and the spares that the surplus doesn't cover. */
  public int toBuy() {
    return shortage() + Math.max(0, spares - surplus());
  }
}
