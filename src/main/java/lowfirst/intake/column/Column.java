package lowfirst.intake.column;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a column of a table can be about. Its headers stand in {@code headers.txt}. */
public enum Column {
  // BOMs and placement lists
  DESIGNATORS,
  DESIGNATOR,
  QUANTITY,
  VALUE,
  PACKAGE,
  PART_TYPE,
  DESCRIPTION,
  HEIGHT,
  FITTED,
  NOT_FITTED,
  OPTIONAL,
  TOLERANCE,
  VOLTAGE,
  POWER,
  X,
  Y,
  ROTATION,
  SIDE,
  MIRROR,
  /** X and y in one cell. */
  POSITION,
  // boards
  BOARD,
  COUNT,
  BOM,
  PLACEMENTS,
  WIDTH,
  LEFT,
  BOTTOM,
  // datasheets
  MAKER,
  SYMBOL,
  CONDITION,
  MIN,
  TYP,
  MAX,
  UNIT,
  SOURCE,
  // rails
  RAIL,
  CURRENT_LIMIT,
  SHORT_CIRCUIT_CURRENT,
  LOADS_AT_ONCE,
  RETURN,
  RETURN_WIRE,
  RETURN_LENGTH,
  RETURN_CONTACTS,
  CONTACT_RATING,
  // supplies
  RAILS,
  POWER_LIMIT,
  // channels
  CHANNEL,
  MOSFET,
  GATE_RESISTOR,
  PULL_DOWN,
  PULL_DOWN_SIDE,
  FLYBACK_DIODE,
  FUSE,
  HEATSINK,
  DRIVER,
  TRACE_WIDTH,
  TRACE_LENGTH,
  TRACE_COPPER,
  TRACE_LAYER,
  WIRE,
  WIRE_LENGTH,
  WIRES_TOGETHER,
  LOAD,
  AMBIENT,
  // drivers
  KIND,
  SUPPLY,
  HIGH_LEVEL_MIN,
  LOW_LEVEL_MAX,
  SOURCE_RESISTANCE,
  PWM_FREQUENCY,
  PULL_UP,
  INPUT_CURRENT,
  AT_RESET,
  // loads
  CURRENT,
  RESISTANCE,
  INDUCTANCE,
  ON_TIME,
  PERIOD,
  INRUSH,
  INRUSH_TIME,
  DUTY,
  MAX_ON_TIME,
  PULL_IN_VOLTAGE,
  RATED_DUTY,
  TEMPERATURE_RISE,
  SWITCH_ONS,
  // bag and swaps
  PART,
  BAG,
  REASON,
  WHO,
  DATE;

  /** What column maps and the header vocabulary call it, for example {@code part-type}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What a person calls it, for example {@code part type}. */
  public String words() {
    return name().length() == 1 ? name() : name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The column of this key. */
  static Optional<Column> ofKey(String key) {
    return Arrays.stream(values()).filter(column -> column.key().equals(key)).findFirst();
  }
}
