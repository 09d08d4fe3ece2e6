package lowfirst.board;

import java.math.BigDecimal;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * Between which amounts each number lies that a kit's author writes. Wide: whatever may be meant
 * lies within. What lies beyond slipped in its sign, its unit, its decimal point or its column; a
 * contact of 1000 A for one of 10.00 A would let any current pass. Where no source is named, a
 * bound is common practice, far beyond what is built by hand below 60 V. What only makes a finding
 * worse has a bound as well, since a slip is better told than counted.
 *
 * <p>What a datasheet may say has bounds of its own, by its symbols: see {@code PlausibleAmount}.
 */
public enum Bounds {
  // all tables
  /** Of a supply's voltage and of what a load draws, in per cent either way. */
  TOLERANCE(Dimension.PERCENT, "0", "500", "a supply without a regulator is off by 50 % at most"),
  /** Of the time that a load is on. */
  SHARE(Dimension.PERCENT, "1e-6", "100", "nothing is on for longer than all the time"),
  /**
   * Of one terminal: press-fit power elements reach 500 A (Würth Elektronik, application note on
   * REDCUBE terminals), soldered ones far less.
   */
  CONTACT_RATING(
      Dimension.CURRENT, "10e-3", "500", "the strongest terminals for boards bear 500 A"),
  /** One way. */
  WIRE_LENGTH(Dimension.LENGTH, "0", "1e6", "no load below 60 V is a kilometre away"),
  /** A car's starter cable has 50 mm². */
  WIRE_AREA(Dimension.AREA, "0.01", "120", "a car's starter cable has 50 mm²"),

  // kit.properties and channels.csv
  /**
   * The hottest air, which a bench in a heated room has, too; eutectic tin-lead solder melts at 183
   * °C (IPC J-STD-006, Sn63Pb37).
   */
  AMBIENT(
      Dimension.TEMPERATURE,
      "-40",
      "180",
      "it is the hottest air that the boards will ever be in, and solder melts at 183 °C"),
  /** From case to air; the contact of one part to its heatsink has 0.1 K/W alone. */
  HEATSINK(Dimension.THERMAL_RESISTANCE, "0.1", "1e3", "the contact to it alone has 0.1 K/W"),
  /** Half of what 100 mil is when its unit slips; etched tracks begin at 0.05 mm. */
  TRACE_WIDTH(Dimension.LENGTH, "0.02", "50", "tracks have 0.1 mm to a few centimetres"),
  TRACE_LENGTH(Dimension.LENGTH, "0", "5e3", "boards are shorter"),
  /** Foil begins at 5 µm; boards for very large currents have 0.4 mm. */
  TRACE_COPPER(Dimension.LENGTH, "2e-3", "1", "boards have 0.018 mm to 0.4 mm of copper"),
  /**
   * As a BOM's value. A wire link of 0 Ω is legitimate; more than this turns a gate on so slowly
   * that the MOSFET is half on for milliseconds, which no check counts.
   */
  GATE_RESISTOR(
      Dimension.RESISTANCE, "0", "100e3", "a gate charges too slowly through more than 100 kΩ"),
  /** As a BOM's value. */
  PULL_DOWN(Dimension.RESISTANCE, "10", "100e6", "less than 10 Ω shorts the driver"),

  // rails.csv and supplies.csv
  /** A solar cell has 0.5 V; low voltage ends at 1500 V DC (directive 2014/35/EU, article 1). */
  RAIL_VOLTAGE(Dimension.VOLTAGE, "0.5", "1500", "a single cell has 0.5 V or more"),
  /** What a starter battery gives for some seconds. */
  SUPPLY_CURRENT(Dimension.CURRENT, "1e-3", "2e3", "a car's starter battery gives 1000 A"),
  /** Large stationary batteries reach some 10 kA. */
  SHORT_CIRCUIT(Dimension.CURRENT, "1e-3", "100e3", "large batteries reach 10 000 A"),
  /** Three phases of 32 A give 22 kW. */
  SUPPLY_POWER(Dimension.POWER, "1e-3", "25e3", "three phases of 32 A give 22 kW"),

  // drivers.csv
  HIGH_LEVEL(Dimension.VOLTAGE, "0.1", "60", "no gate bears more than 60 V"),
  LOW_LEVEL(Dimension.VOLTAGE, "-60", "60", "no gate bears more than 60 V"),
  SOURCE_RESISTANCE(Dimension.RESISTANCE, "0", "10e6", "nothing drives through more than 10 MΩ"),
  /** Drivers for gates give up to 30 A. */
  DRIVER_CURRENT(Dimension.CURRENT, "1e-6", "100", "drivers for gates give up to 30 A"),
  PWM_FREQUENCY(Dimension.FREQUENCY, "0", "10e6", "loads are switched at 1 MHz at most"),
  PULL_UP(Dimension.RESISTANCE, "1", "100e6", "less than 1 Ω shorts the supply"),
  /** Into an optocoupler's LED some 10 mA, into a power transistor's base some amperes. */
  INPUT_CURRENT(Dimension.CURRENT, "1e-6", "10", "a power transistor's base takes 7 A at most"),

  // loads.csv
  LOAD_CURRENT(Dimension.CURRENT, "1e-6", "1e3", "boards switch up to some 100 A"),
  LOAD_RESISTANCE(Dimension.RESISTANCE, "1e-3", "1e6", "at 60 V more than 1 MΩ draws 60 µA"),
  LOAD_POWER(Dimension.POWER, "1e-6", "25e3", "three phases of 32 A give 22 kW"),
  INDUCTANCE(Dimension.INDUCTANCE, "1e-9", "10e3", "the largest coils have some 1000 H"),
  /** On in one go, or from one switching-on to the next. */
  SWITCHING(Dimension.TIME, "1e-6", "315.4e6", "it is switched within ten years"),
  INRUSH(Dimension.CURRENT, "1e-6", "20e3", "ten to twenty times a load's current at most"),
  INRUSH_TIME(Dimension.TIME, "1e-9", "3600", "no load takes an hour to start"),
  PULL_IN(Dimension.VOLTAGE, "0.1", "1500", "a coil for a single cell needs 0.5 V"),
  /** Coils reach 180 K; a lamp's filament 2500 K. */
  TEMPERATURE_RISE(Dimension.TEMPERATURE_RISE, "0", "3e3", "a lamp's filament reaches 2500 K");

  private final Quantity least;
  private final Quantity most;
  private final String why;

  Bounds(Dimension dimension, String least, String most, String why) {
    this.least = new Quantity(new BigDecimal(least), dimension);
    this.most = new Quantity(new BigDecimal(most), dimension);
    this.why = why;
  }

  /** What is measured. */
  public Dimension dimension() {
    return least.dimension();
  }

  /** The least that it may be. */
  public Quantity least() {
    return least;
  }

  /** The most that it may be. */
  public Quantity most() {
    return most;
  }

  /**
   * The amount, or the fault that it lies beyond these bounds; {@code what} it is the amount of.
   */
  public Reading<Quantity> within(String what, Quantity amount) {
    boolean neverNegative = least.amount().signum() >= 0;
    if (neverNegative && amount.amount().signum() < 0) {
      return Reading.fault("the " + what + " can't be below zero", "correct the sign");
    }
    if (amount.isZero() && least.amount().signum() > 0) {
      return Reading.fault(
          "the " + what + " can't be zero", "write what it is, or leave the cell empty");
    }
    if (amount.compareTo(least) >= 0 && amount.compareTo(most) <= 0) {
      return Reading.of(amount, "within what may be meant");
    }
    return Reading.fault(
        "the " + what + " can't be " + amount + ": " + why,
        "write an amount from " + least + " to " + most + ", with its unit");
  }
}
