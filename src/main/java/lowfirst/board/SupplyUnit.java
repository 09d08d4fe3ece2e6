package lowfirst.board;

import java.util.List;
import java.util.Optional;
import lowfirst.problem.Place;
import lowfirst.quantity.Sourced;

/**
 * A limit that several rails share, since one supply unit feeds them: one row of {@code
 * supplies.csv}. Some units limit a few of their rails together, and all of them once more: those
 * are two rows.
 *
 * @param name what the kit calls it
 * @param rails the names of the rails that share it
 * @param powerLimit what it delivers to all of them together at most
 */
public record SupplyUnit(
    String name, List<String> rails, Optional<Sourced> powerLimit, Place place) {

  public SupplyUnit {
    rails = List.copyOf(rails);
  }
}
