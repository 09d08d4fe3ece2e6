package lowfirst.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import lowfirst.board.Bounds;
import lowfirst.board.Driver;
import lowfirst.board.Load;
import lowfirst.board.Load.LoadKind;
import lowfirst.board.Rail;
import lowfirst.board.SupplyUnit;
import lowfirst.intake.cell.Cells;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.table.Table;
import lowfirst.problem.Problem;

/** Reads the rows of the tables about rails, drivers and loads. */
final class SupplyTables {
  private static final Map<String, LoadKind> KINDS =
      Map.ofEntries(
          Map.entry("solenoid", LoadKind.SOLENOID),
          Map.entry("coil", LoadKind.SOLENOID),
          Map.entry("valve", LoadKind.SOLENOID),
          Map.entry("magnet", LoadKind.SOLENOID),
          Map.entry("electromagnet", LoadKind.SOLENOID),
          Map.entry("relay", LoadKind.RELAY),
          Map.entry("contactor", LoadKind.RELAY),
          Map.entry("motor", LoadKind.MOTOR),
          Map.entry("fan", LoadKind.MOTOR),
          Map.entry("pump", LoadKind.MOTOR),
          Map.entry("lamp", LoadKind.LAMP),
          Map.entry("bulb", LoadKind.LAMP),
          Map.entry("halogen lamp", LoadKind.LAMP),
          Map.entry("led", LoadKind.LED),
          Map.entry("led string", LoadKind.LED),
          Map.entry("led strip", LoadKind.LED),
          Map.entry("resistive", LoadKind.RESISTIVE),
          Map.entry("ohmic", LoadKind.RESISTIVE),
          Map.entry("resistor", LoadKind.RESISTIVE),
          Map.entry("heater", LoadKind.RESISTIVE),
          Map.entry("capacitive", LoadKind.CAPACITIVE),
          Map.entry("capacitor", LoadKind.CAPACITIVE));

  private static final Pattern UNDRIVEN =
      Pattern.compile("imped|[- ]z\\b|tri-?state|float|undriven");

  private SupplyTables() {}

  /** The supplies of {@code rails.csv}. */
  static List<Rail> rails(Table table, List<Problem> problems) {
    var rails = new ArrayList<Rail>();
    for (TableRow row : table.rows()) {
      var cells = new Cells(row, problems);
      cells.needed(Column.RAIL).ifPresent(name -> rails.add(rail(name, row, cells)));
    }
    return rails;
  }

  private static Rail rail(String name, TableRow row, Cells cells) {
    return new Rail(
        name,
        cells.amount(Column.VOLTAGE, Bounds.RAIL_VOLTAGE),
        cells.tolerance(Column.TOLERANCE),
        cells.amount(Column.CURRENT_LIMIT, Bounds.SUPPLY_CURRENT),
        cells.amount(Column.SHORT_CIRCUIT_CURRENT, Bounds.SHORT_CIRCUIT),
        cells.count(Column.LOADS_AT_ONCE),
        cells.text(Column.RETURN_WIRE),
        cells.inUnits(Column.RETURN_LENGTH, Bounds.WIRE_LENGTH, "m", "mm"),
        cells.count(Column.RETURN_CONTACTS),
        cells.amount(Column.CONTACT_RATING, Bounds.CONTACT_RATING),
        cells.text(Column.RETURN),
        row.place());
  }

  /** The limits that rails share, of {@code supplies.csv}. */
  static List<SupplyUnit> supplies(Table table, ListedNames rails, List<Problem> problems) {
    var supplies = new ArrayList<SupplyUnit>();
    for (TableRow row : table.rows()) {
      var cells = new Cells(row, problems);
      cells.needed(Column.SUPPLY).ifPresent(name -> supplies.add(supply(name, rails, row, cells)));
    }
    return supplies;
  }

  private static SupplyUnit supply(String name, ListedNames rails, TableRow row, Cells cells) {
    return new SupplyUnit(
        name,
        Arrays.stream(cells.text(Column.RAILS).split("[,;]"))
            .map(String::strip)
            .filter(rail -> !rail.isEmpty())
            .map(rails::meantBy)
            .distinct()
            .toList(),
        cells.amount(Column.POWER_LIMIT, Bounds.SUPPLY_POWER),
        row.place());
  }

  /** What drives the gates, of {@code drivers.csv}. */
  static List<Driver> drivers(Table table, ListedNames rails, List<Problem> problems) {
    var drivers = new ArrayList<Driver>();
    for (TableRow row : table.rows()) {
      var cells = new Cells(row, problems);
      cells.needed(Column.DRIVER).ifPresent(name -> drivers.add(driver(name, rails, row, cells)));
    }
    return drivers;
  }

  private static Driver driver(String name, ListedNames rails, TableRow row, Cells cells) {
    return new Driver(
        name,
        cells.text(Column.KIND),
        cells.text(Column.PART_TYPE),
        rails.meantBy(cells.text(Column.SUPPLY)),
        cells.amount(Column.HIGH_LEVEL_MIN, Bounds.HIGH_LEVEL),
        cells.amount(Column.LOW_LEVEL_MAX, Bounds.LOW_LEVEL),
        cells.amount(Column.SOURCE_RESISTANCE, Bounds.SOURCE_RESISTANCE),
        cells.inUnits(Column.CURRENT_LIMIT, Bounds.DRIVER_CURRENT, "mA", "A"),
        cells.amount(Column.PWM_FREQUENCY, Bounds.PWM_FREQUENCY),
        cells.amount(Column.PULL_UP, Bounds.PULL_UP),
        cells.inUnits(Column.INPUT_CURRENT, Bounds.INPUT_CURRENT, "mA", "A"),
        atReset(cells),
        row.place());
  }

  /** In the words of a record; empty, which counts as undriven, where it is not stated. */
  private static String atReset(Cells cells) {
    String words = cells.text(Column.AT_RESET).toLowerCase(Locale.ROOT);
    if (Cells.isNone(words)) {
      return "";
    }
    if (UNDRIVEN.matcher(words).find()) {
      return "high impedance";
    }
    if (words.contains("high") != words.contains("low")) {
      return words.contains("high") ? "high" : "low";
    }
    cells.notOneOf(Column.AT_RESET, "high impedance, low, high");
    return "";
  }

  /** What the channels switch, of {@code loads.csv}. */
  static List<Load> loads(Table table, ListedNames rails, List<Problem> problems) {
    var loads = new ArrayList<Load>();
    for (TableRow row : table.rows()) {
      var cells = new Cells(row, problems);
      Optional<String> name = cells.needed(Column.LOAD);
      Optional<LoadKind> kind = cells.needed(Column.KIND).flatMap(text -> kind(text, cells));
      if (name.isPresent() && kind.isPresent()) {
        loads.add(load(name.get(), kind.get(), rails, row, cells));
      }
    }
    return loads;
  }

  private static Optional<LoadKind> kind(String text, Cells cells) {
    LoadKind kind = KINDS.get(text.toLowerCase(Locale.ROOT));
    if (kind == null) {
      cells.notOneOf(Column.KIND, "solenoid, relay, motor, lamp, LED, resistive, capacitive");
    }
    return Optional.ofNullable(kind);
  }

  private static Load load(
      String name, LoadKind kind, ListedNames rails, TableRow row, Cells cells) {
    return new Load(
        name,
        kind,
        rails.meantBy(cells.text(Column.RAIL)),
        cells.amount(Column.CURRENT, Bounds.LOAD_CURRENT),
        cells.amount(Column.RESISTANCE, Bounds.LOAD_RESISTANCE),
        cells.amount(Column.POWER, Bounds.LOAD_POWER),
        cells.amount(Column.INDUCTANCE, Bounds.INDUCTANCE),
        cells.inUnits(Column.ON_TIME, Bounds.SWITCHING, "ms", "s"),
        cells.inUnits(Column.PERIOD, Bounds.SWITCHING, "ms", "s"),
        cells.amount(Column.INRUSH, Bounds.INRUSH),
        cells.inUnits(Column.INRUSH_TIME, Bounds.INRUSH_TIME, "ms", "s"),
        cells.share(Column.DUTY),
        cells.inUnits(Column.MAX_ON_TIME, Bounds.SWITCHING, "ms", "s"),
        cells.amount(Column.PULL_IN_VOLTAGE, Bounds.PULL_IN),
        cells.share(Column.RATED_DUTY),
        cells.tolerance(Column.TOLERANCE),
        cells.amount(Column.TEMPERATURE_RISE, Bounds.TEMPERATURE_RISE),
        cells.count(Column.SWITCH_ONS),
        row.place());
  }
}
