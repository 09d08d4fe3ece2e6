package lowfirst.board;

import java.util.Optional;
import lowfirst.problem.Place;
import lowfirst.quantity.Sourced;

/**
 * What drives gates: one row of {@code drivers.csv}.
 *
 * @param name what channels call it
 * @param kind as written: logic pin, open collector, Darlington array, optocoupler,
 *     constant-current sink, bipolar transistor; empty means a logic pin
 * @param partType type number, the key into datasheets; may be empty
 * @param supply the rail it runs from; may be empty
 * @param highLevelMin least voltage it drives when on, unloaded
 * @param lowLevelMax most voltage it leaves when off
 * @param sourceResistance its output resistance
 * @param currentLimit most current it may deliver or sink
 * @param pwmFrequency switching frequency; absent means switched on and off by hand-scale times
 * @param pullUp resistance from an open collector's output to its supply
 * @param inputCurrent least current into an optocoupler's LED or a transistor's base when on
 * @param atReset what its output does while its controller starts: high impedance, low or high;
 *     empty means not stated
 */
public record Driver(
    String name,
    String kind,
    String partType,
    String supply,
    Optional<Sourced> highLevelMin,
    Optional<Sourced> lowLevelMax,
    Optional<Sourced> sourceResistance,
    Optional<Sourced> currentLimit,
    Optional<Sourced> pwmFrequency,
    Optional<Sourced> pullUp,
    Optional<Sourced> inputCurrent,
    String atReset,
    Place place) {

  /** The same driver as another part. */
  public Driver withPartType(String other) {
    return new Driver(
        name,
        kind,
        other,
        supply,
        highLevelMin,
        lowLevelMax,
        sourceResistance,
        currentLimit,
        pwmFrequency,
        pullUp,
        inputCurrent,
        atReset,
        place);
  }
}
