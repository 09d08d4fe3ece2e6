package lowfirst.board;

import java.util.Optional;
import lowfirst.quantity.Sourced;

/**
 * What {@code kit.properties} says; everything is optional.
 *
 * @param title what the kit is called; the folder's name when not stated
 * @param ambient worst air temperature at the boards, °C
 * @param meter the meter's accuracy as written, for example {@code 0.5 % + 2 of 6000}
 * @param meterCapacitance the same on its capacitance ranges
 * @param signer who signs
 */
public record Settings(
    String title,
    Optional<Sourced> ambient,
    String meter,
    String meterCapacitance,
    String signer) {}
