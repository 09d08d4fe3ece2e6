package lowfirst.board;

import java.util.Optional;
import java.util.OptionalInt;
import lowfirst.problem.Place;
import lowfirst.quantity.Sourced;

/**
 * One output: driver pin, gate resistor, pull-down, MOSFET, flyback diode, fuse, trace, contact,
 * wire, load. One row of {@code channels.csv}.
 *
 * @param name what the kit calls it
 * @param board the board design it is on
 * @param mosfet its designator; the BOM says which part type
 * @param gateResistor its designator; absent means none is fitted
 * @param pullDown its designator; absent means none is fitted
 * @param pullDownSide which end of the gate resistor the pull-down hangs on
 * @param flybackDiode its designator; absent means none is fitted
 * @param fuse its designator; absent means none is fitted
 * @param heatsink thermal resistance of the MOSFET's heatsink to air, contact included; absent
 *     means free air
 * @param heatsinkName what the heatsink is called, the same for all that share it; empty where
 *     nobody says whether any does
 * @param driver name of its driver
 * @param traceWidth copper track width
 * @param traceLength copper track length, one way
 * @param traceCopper copper thickness
 * @param traceLayer whether the track is outside or inside the board
 * @param contactRating current rating of the terminal or contact
 * @param wire conductor size as written, for example {@code 0.75 mm²} or {@code AWG 18}
 * @param wireLength one way
 * @param wiresTogether how many loaded wires run in one bundle, this one included; absent means it
 *     runs alone
 * @param load name of its load
 * @param ambient air temperature at this channel where it differs from the kit's
 */
public record OutputChannel(
    String name,
    String board,
    Optional<Designator> mosfet,
    Optional<Designator> gateResistor,
    Optional<Designator> pullDown,
    PullDownSide pullDownSide,
    Optional<Designator> flybackDiode,
    Optional<Designator> fuse,
    Optional<Sourced> heatsink,
    String heatsinkName,
    String driver,
    Optional<Sourced> traceWidth,
    Optional<Sourced> traceLength,
    Optional<Sourced> traceCopper,
    TraceLayer traceLayer,
    Optional<Sourced> contactRating,
    String wire,
    Optional<Sourced> wireLength,
    OptionalInt wiresTogether,
    String load,
    Optional<Sourced> ambient,
    Place place) {

  /** What a load hangs on that nothing switches: wire to wire, and named as the load is. */
  public static OutputChannel straightThrough(String load, Place place) {
    return new OutputChannel(
        load,
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        PullDownSide.UNSTATED,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        TraceLayer.UNSTATED,
        Optional.empty(),
        "",
        Optional.empty(),
        OptionalInt.empty(),
        load,
        Optional.empty(),
        place);
  }

  /** Which end of the gate resistor the pull-down hangs on. */
  public enum PullDownSide {
    /** At the gate: it makes a divider with the gate resistor. */
    GATE,
    /** At the driver pin: it only loads the driver. */
    DRIVER,
    /** Not stated: both are tried and the worse counts. */
    UNSTATED
  }

  /** Where the track runs. */
  public enum TraceLayer {
    EXTERNAL,
    INTERNAL,
    /** There is none: wires run from part to part. */
    NONE,
    /** Not stated: counted as internal, which carries less. */
    UNSTATED
  }
}
