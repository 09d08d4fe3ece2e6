package lowfirst.channel.check;

import static lowfirst.channel.check.Term.Worse.EITHER;
import static lowfirst.channel.check.Term.Worse.HIGHER;
import static lowfirst.channel.check.Term.Worse.LOWER;

import lowfirst.quantity.Dimension;

/**
 * Every number that a channel's checks read, with the direction in which it gets worse and where a
 * person writes it. Symbols follow IEC 60747 in plain text where it has one.
 *
 * <p>The direction is a law, not a comment: moving a term that way never turns a channel that does
 * not carry into one that does.
 */
public enum Term {
  // supply, air, load
  SUPPLY("Vrail", Dimension.VOLTAGE, EITHER, "rails.csv voltage, tolerance"),
  AMBIENT("TA", Dimension.TEMPERATURE, HIGHER, "kit.properties ambient"),
  LOAD_CURRENT("Iload", Dimension.CURRENT, HIGHER, "loads.csv current, resistance or power"),
  INRUSH("Iinrush", Dimension.CURRENT, HIGHER, "loads.csv inrush"),
  INRUSH_TIME("tinrush", Dimension.TIME, HIGHER, "loads.csv inrush time"),
  INDUCTANCE("L", Dimension.INDUCTANCE, HIGHER, "loads.csv inductance"),
  ON_TIME("ton", Dimension.TIME, HIGHER, "loads.csv on time"),
  PERIOD("T", Dimension.TIME, LOWER, "loads.csv period"),
  DUTY("D", Dimension.PERCENT, EITHER, "loads.csv duty"),
  SWITCH_ONS("n", Dimension.RATIO, HIGHER, "loads.csv switch-ons"),
  MAX_ON_TIME("tonmax", Dimension.TIME, LOWER, "loads.csv max on time"),
  RATED_DUTY("Dmax", Dimension.PERCENT, LOWER, "loads.csv rated duty"),
  PULL_IN("Vpull-in", Dimension.VOLTAGE, HIGHER, "loads.csv pull-in voltage"),
  TEMPERATURE_RISE("dTcoil", Dimension.TEMPERATURE_RISE, HIGHER, "loads.csv temperature rise"),
  // driver and gate network
  DRIVE_LEVEL("VOH", Dimension.VOLTAGE, LOWER, "drivers.csv high level min"),
  DRIVE_CEILING("Vdrive", Dimension.VOLTAGE, HIGHER, "drivers.csv supply, and that rail"),
  DRIVE_LOW("VOL", Dimension.VOLTAGE, HIGHER, "drivers.csv low level max"),
  DRIVE_RESISTANCE("Rsource", Dimension.RESISTANCE, HIGHER, "drivers.csv source resistance"),
  DRIVE_LIMIT("Ipin", Dimension.CURRENT, LOWER, "drivers.csv current limit"),
  PWM_FREQUENCY("fPWM", Dimension.FREQUENCY, HIGHER, "drivers.csv PWM frequency"),
  INPUT_CURRENT("IF", Dimension.CURRENT, LOWER, "drivers.csv input current"),
  GATE_RESISTOR("RG", Dimension.RESISTANCE, EITHER, "the gate resistor's value in the BOM"),
  PULL_DOWN("Rpd", Dimension.RESISTANCE, EITHER, "the pull-down's value in the BOM"),
  GATE_RESISTOR_RATING("P(RG)", Dimension.POWER, LOWER, "the gate resistor's rating in the BOM"),
  PULL_DOWN_RATING("P(Rpd)", Dimension.POWER, LOWER, "the pull-down's rating in the BOM"),
  RETURN_LIFT("Vlift", Dimension.VOLTAGE, HIGHER, "rails.csv return wire, return length"),
  // the switch
  DRAIN_RATING("VDS", Dimension.VOLTAGE, LOWER, "datasheets.csv VDS"),
  GATE_RATING("VGS", Dimension.VOLTAGE, LOWER, "datasheets.csv VGS"),
  THRESHOLD("VGSth", Dimension.VOLTAGE, EITHER, "datasheets.csv VGSth, min and max"),
  ON_RESISTANCE("RDSon", Dimension.RESISTANCE, HIGHER, "datasheets.csv RDSon, max"),
  ON_RESISTANCE_FACTOR("RDSon/max", Dimension.RATIO, HIGHER, "datasheets.csv RDSon, max"),
  DRAIN_CURRENT_RATING("ID", Dimension.CURRENT, LOWER, "datasheets.csv ID"),
  PULSE_CURRENT_RATING("IDM", Dimension.CURRENT, LOWER, "datasheets.csv IDM or ICM"),
  GATE_SOURCE_CHARGE("QGS", Dimension.CHARGE, HIGHER, "datasheets.csv QGS, max"),
  MILLER_CHARGE("QGD", Dimension.CHARGE, HIGHER, "datasheets.csv QGD or QG, max"),
  PLATEAU("VGSpl", Dimension.VOLTAGE, EITHER, "datasheets.csv VGSpl"),
  OUTPUT_CAPACITANCE("Coss", Dimension.CAPACITANCE, HIGHER, "datasheets.csv Coss"),
  RTH_AIR("RthJA", Dimension.THERMAL_RESISTANCE, HIGHER, "datasheets.csv RthJA, max"),
  RTH_CASE("RthJC", Dimension.THERMAL_RESISTANCE, HIGHER, "datasheets.csv RthJC, max"),
  HEATSINK("RthCA", Dimension.THERMAL_RESISTANCE, HIGHER, "channels.csv heatsink"),
  OTHERS_ON_HEATSINK("Pothers", Dimension.POWER, HIGHER, "channels.csv heatsink, its name"),
  JUNCTION_RATING("TJ", Dimension.TEMPERATURE, LOWER, "datasheets.csv TJ, max"),
  AVALANCHE_RATING("EAS", Dimension.ENERGY, LOWER, "datasheets.csv EAS"),
  AVALANCHE_CURRENT_RATING("IAS", Dimension.CURRENT, LOWER, "datasheets.csv EAS, condition IAS="),
  REPETITIVE_RATING("EAR", Dimension.ENERGY, LOWER, "datasheets.csv EAR"),
  SATURATION("VCEsat", Dimension.VOLTAGE, HIGHER, "datasheets.csv VCEsat, max"),
  SATURATION_CURRENT(
      "IC(VCEsat)", Dimension.CURRENT, LOWER, "datasheets.csv VCEsat, condition IC="),
  FORCED_GAIN_RATING("IC/IB", Dimension.RATIO, LOWER, "datasheets.csv VCEsat, conditions IC= IB="),
  TRANSFER_CURRENT("IC(CTR)", Dimension.CURRENT, LOWER, "datasheets.csv CTR, min"),
  TRANSFER_INPUT("IF(CTR)", Dimension.CURRENT, HIGHER, "datasheets.csv CTR, condition IF="),
  TRANSFER_VOLTAGE("VCE(CTR)", Dimension.VOLTAGE, HIGHER, "datasheets.csv CTR, condition VCE="),
  BASE_VOLTAGE("VBEsat", Dimension.VOLTAGE, HIGHER, "datasheets.csv VBEsat"),
  STAGE_EDGES("tsw", Dimension.TIME, HIGHER, "datasheets.csv tsw, max"),
  TOTAL_CURRENT_RATING("ICtotal", Dimension.CURRENT, LOWER, "datasheets.csv ICtotal"),
  OTHERS_ON_STAGE("Iothers", Dimension.CURRENT, HIGHER, "channels.csv, rows with this driver"),
  // flyback diode
  DIODE_REVERSE_RATING("VRRM", Dimension.VOLTAGE, LOWER, "datasheets.csv VRRM, or VZ min"),
  DIODE_AVERAGE_RATING("IFav", Dimension.CURRENT, LOWER, "datasheets.csv IFav"),
  DIODE_RATING_AIR("TA(IFav)", Dimension.TEMPERATURE, LOWER, "datasheets.csv IFav, condition TA="),
  DIODE_RATING_LEAD(
      "TL(IFav)", Dimension.TEMPERATURE, LOWER, "datasheets.csv IFav, condition TL= or TC="),
  DIODE_PEAK_RATING("IFRM", Dimension.CURRENT, LOWER, "datasheets.csv IFRM"),
  DIODE_FORWARD("VF", Dimension.VOLTAGE, EITHER, "datasheets.csv VF, max"),
  DIODE_FORWARD_CURRENT("IF(VF)", Dimension.CURRENT, LOWER, "datasheets.csv VF, condition IF="),
  DIODE_RTH("RthJA", Dimension.THERMAL_RESISTANCE, HIGHER, "datasheets.csv RthJA, max"),
  DIODE_JUNCTION_RATING("TJ", Dimension.TEMPERATURE, LOWER, "datasheets.csv TJ, max"),
  DIODE_RECOVERY("trr", Dimension.TIME, HIGHER, "datasheets.csv trr, max"),
  // fuse
  FUSE_RATING("IN", Dimension.CURRENT, EITHER, "datasheets.csv IN, or the fuse's value in the BOM"),
  FUSE_TRIP("Itrip", Dimension.CURRENT, HIGHER, "datasheets.csv Itrip"),
  FUSE_VOLTAGE("VN", Dimension.VOLTAGE, LOWER, "datasheets.csv VN, condition DC"),
  FUSE_HOLDER("Iholder", Dimension.CURRENT, LOWER, "the fuse holder's rating in the BOM"),
  FUSE_MELTING("I2t", Dimension.JOULE_INTEGRAL, LOWER, "datasheets.csv I2t"),
  FUSE_BREAKING("breaking", Dimension.CURRENT, LOWER, "datasheets.csv breaking, condition DC"),
  SHORT_CIRCUIT(
      "Ishort", Dimension.CURRENT, HIGHER, "rails.csv short-circuit current or current limit"),
  FUSE_OPENING("topen", Dimension.TIME, HIGHER, "datasheets.csv topen, max"),
  FUSE_OPENING_CURRENT("I(topen)", Dimension.CURRENT, HIGHER, "datasheets.csv topen, condition I="),
  OTHERS_ON_FUSE("Iothers", Dimension.CURRENT, HIGHER, "channels.csv, rows with this fuse"),
  // copper, contact, wire
  TRACE_WIDTH("w", Dimension.LENGTH, LOWER, "channels.csv trace width"),
  TRACE_LENGTH("ltrace", Dimension.LENGTH, HIGHER, "channels.csv trace length"),
  TRACE_COPPER("thickness", Dimension.LENGTH, LOWER, "channels.csv trace copper"),
  CONTACT_RATING("Icontact", Dimension.CURRENT, LOWER, "channels.csv contact rating"),
  WIRE_AREA("A", Dimension.AREA, LOWER, "channels.csv wire"),
  WIRE_LENGTH("lwire", Dimension.LENGTH, HIGHER, "channels.csv wire length"),
  WIRES_TOGETHER("n", Dimension.RATIO, HIGHER, "channels.csv wires together"),
  // rail and return
  RAIL_SUM("sum I", Dimension.CURRENT, HIGHER, "channels.csv and loads.csv"),
  RAIL_INRUSH_SUM("sum Iinrush", Dimension.CURRENT, HIGHER, "channels.csv and loads.csv"),
  RAIL_LIMIT("Ilimit", Dimension.CURRENT, LOWER, "rails.csv current limit"),
  RETURN_AREA("Areturn", Dimension.AREA, LOWER, "rails.csv return wire"),
  RETURN_LENGTH("lreturn", Dimension.LENGTH, HIGHER, "rails.csv return length"),
  RETURN_CONTACTS("contacts", Dimension.RATIO, LOWER, "rails.csv return contacts"),
  RETURN_CONTACT_RATING("Icontact", Dimension.CURRENT, LOWER, "rails.csv contact rating"),
  OTHERS_ON_RETURN("Iothers", Dimension.CURRENT, HIGHER, "rails.csv, rows with this return"),
  // a limit that rails share
  SUPPLY_LIMIT("Plimit", Dimension.POWER, LOWER, "supplies.csv power limit"),
  // the tables themselves
  SEVERAL_ROWS("rows", Dimension.RATIO, HIGHER, "channels.csv, rows with the same part"),
  UNREAD("unread", Dimension.RATIO, HIGHER, "the cell that check names"),
  // constants that a formula takes from practice or a standard, with their source
  CONSTANT("factor", Dimension.RATIO, EITHER, "");

  /** The direction in which a term gets worse. */
  public enum Worse {
    HIGHER,
    LOWER,
    /** Helps one check and harms another: the corners take it at both ends. */
    EITHER
  }

  private final String symbol;
  private final Dimension dimension;
  private final Worse worse;
  private final String where;

  Term(String symbol, Dimension dimension, Worse worse, String where) {
    this.symbol = symbol;
    this.dimension = dimension;
    this.worse = worse;
    this.where = where;
  }

  /** Its letter symbol in plain text. */
  public String symbol() {
    return symbol;
  }

  /** What it measures; values are in this dimension's unit, lengths in millimetres. */
  public Dimension dimension() {
    return dimension;
  }

  /** The direction in which it gets worse. */
  public Worse worse() {
    return worse;
  }

  /** Where a person writes it: file and column. */
  public String where() {
    return where;
  }
}
