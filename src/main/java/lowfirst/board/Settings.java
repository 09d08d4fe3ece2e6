package lowfirst.board;

import java.util.Map;
import java.util.Optional;
import lowfirst.quantity.Sourced;

/**
 * What {@code kit.properties} says; everything is optional.
 *
 * @param title what the kit is called; the folder's name when not stated
 * @param ambient worst air temperature at the boards, °C
 * @param meter the meter's accuracy as written, for example {@code 0.5 % + 2 of 6000}
 * @param signer who signs
 * @param others every further key, kept as written
 */
public record Settings(
    String title,
    Optional<Sourced> ambient,
    String meter,
    String signer,
    Map<String, String> others) {

  public Settings {
    others = Map.copyOf(others);
  }
}
