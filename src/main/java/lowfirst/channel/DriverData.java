package lowfirst.channel;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lowfirst.board.Driver;
import lowfirst.board.Load;
import lowfirst.board.OutputChannel;
import lowfirst.board.Rail;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.data.LoadRails;
import lowfirst.quantity.Source;
import lowfirst.quantity.Sourced;

/** What a channel's checks need to know of its driver: a row of {@code drivers.csv}. */
final class DriverData {
  private static final double SOURCE_OHMS = 100;

  private DriverData() {}

  /**
   * What a driver gives to a gate or a base.
   *
   * @param supply the rail it runs from, where known
   * @param in what is known of the channel, the driver's own datasheet included
   */
  static List<Datum> of(Driver driver, Optional<Rail> supply, ChannelInputs in) {
    Optional<Datum> ceiling = supply.flatMap(rail -> LoadRails.voltage(Term.DRIVE_CEILING, rail));
    return List.of(
        ceiling.orElseGet(
            () ->
                Datum.missing(
                    Term.DRIVE_CEILING,
                    "supply of driver " + driver.name() + ": a rail's name, in drivers.csv")),
        level(driver, ceiling, in),
        sourceResistance(driver),
        cell(Term.DRIVE_LOW, driver.lowLevelMax(), driver, "low level max"),
        cell(Term.DRIVE_LIMIT, driver.currentLimit(), driver, "current limit"),
        cell(Term.PWM_FREQUENCY, driver.pwmFrequency(), driver, "PWM frequency"),
        cell(Term.INPUT_CURRENT, driver.inputCurrent(), driver, "input current"));
  }

  /** The numbers of a channel's driver that the tables don't have. */
  static List<Datum> missing(OutputChannel channel) {
    String where =
        "driver \"" + channel.driver() + "\" of channel " + channel.name() + ": drivers.csv";
    return Stream.of(Term.DRIVE_LEVEL, Term.DRIVE_CEILING, Term.DRIVE_RESISTANCE, Term.DRIVE_LIMIT)
        .map(term -> Datum.missing(term, where))
        .toList();
  }

  /** What it drives when on: stated, or its supply less what the stage keeps. */
  private static Datum level(Driver driver, Optional<Datum> supply, ChannelInputs in) {
    if (driver.highLevelMin().isPresent()) {
      return withinSupply(Datum.of(Term.DRIVE_LEVEL, driver.highLevelMin().get()), supply);
    }
    DriverStage stage = DriverStage.of(driver);
    boolean pulledUp = stage == DriverStage.OPEN_COLLECTOR || stage == DriverStage.OPTOCOUPLER;
    double kept = stage == DriverStage.OPTOCOUPLER ? in.high(Term.SATURATION) : 0;
    if (!pulledUp || supply.isEmpty() || Double.isNaN(kept)) {
      return cell(Term.DRIVE_LEVEL, Optional.empty(), driver, "high level min");
    }
    Datum rail = supply.get();
    return Datum.of(
        Term.DRIVE_LEVEL,
        rail.low() - kept,
        rail.nominal() - kept,
        rail.high() - kept,
        rail.source());
  }

  /** No output rises above its supply, whatever its row says. */
  private static Datum withinSupply(Datum stated, Optional<Datum> supply) {
    return supply
        .filter(rail -> rail.nominal() < stated.nominal())
        .map(
            rail ->
                Datum.of(
                    Term.DRIVE_LEVEL,
                    rail.low(),
                    new Source(
                        rail.source().origin(), "its supply gives no more: " + rail.source())))
        .orElse(stated);
  }

  private static Datum sourceResistance(Driver driver) {
    if (DriverStage.of(driver) == DriverStage.OPEN_COLLECTOR) {
      return cell(Term.DRIVE_RESISTANCE, driver.pullUp(), driver, "pull-up");
    }
    return driver
        .sourceResistance()
        .map(ohms -> Datum.of(Term.DRIVE_RESISTANCE, ohms))
        .orElseGet(
            () ->
                Datum.of(
                    Term.DRIVE_RESISTANCE,
                    0,
                    SOURCE_OHMS / 2,
                    SOURCE_OHMS,
                    Source.assumed("0 to 100 Ω", "drivers.csv source resistance")));
  }

  /** What its output does while its controller starts; empty where it leaves it undriven. */
  static Optional<Fitted> atReset(Driver driver) {
    String words = driver.atReset();
    boolean undriven = !words.equals("low") && !words.equals("high");
    if (DriverStage.of(driver) == DriverStage.OPEN_COLLECTOR && undriven) {
      // nothing pulls it down, so its pull-up turns the load on
      return Optional.of(Fitted.ON_AT_RESET);
    }
    if (undriven) {
      return Optional.empty();
    }
    return Optional.of(words.equals("high") ? Fitted.ON_AT_RESET : Fitted.DRIVEN_AT_RESET);
  }

  /** A current sink keeps what the load leaves of the rail: all of it where that isn't known. */
  static Datum sinkDrop(ChannelInputs in, Optional<Load> load) {
    Optional<Sourced> power = load.flatMap(Load::power);
    Optional<Sourced> current = load.flatMap(Load::current);
    double kept =
        power.isPresent() && current.isPresent()
            ? power.get().asDouble() / current.get().asDouble()
            : 0;
    Datum supply = in.datum(Term.SUPPLY);
    return supply.isKnown()
        ? Datum.of(
            Term.SATURATION,
            Math.max(0, supply.high() - kept),
            Source.computed("Vmax − Pload/Iload, " + supply.source()))
        : Datum.missing(Term.SATURATION, supply.missing());
  }

  /** What a current sink may carry: its datasheet tells, or else the table. */
  static Datum sinkRating(ChannelInputs in, Driver driver) {
    Datum rated = in.datum(Term.DRAIN_CURRENT_RATING);
    return rated.isKnown()
        ? rated
        : cell(Term.DRAIN_CURRENT_RATING, driver.currentLimit(), driver, "current limit");
  }

  private static Datum cell(Term term, Optional<Sourced> value, Driver driver, String column) {
    return Datum.stated(
        term, value, column + " of driver " + driver.name() + ": write it in drivers.csv");
  }
}
