package lowfirst.channel.data;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The datasheet symbols that a finding understands: a closed list. Any other symbol in {@code
 * datasheets.csv} is kept and not used here. The condition column holds the test condition, such as
 * {@code VGS=5V, ID=25A, TJ=25C}.
 */
public enum DatasheetSymbol {
  // MOSFET
  VDS("VDS", "MOSFET: drain-source voltage rating", "max", "VDSS", "BVDSS"),
  VGS("VGS", "MOSFET: gate-source voltage rating", "max", "VGSS"),
  VGSTH("VGSth", "MOSFET: threshold; never an on-voltage", "min and max"),
  VGSPL("VGSpl", "MOSFET: gate plateau", "min and max", "Vplateau"),
  RDSON("RDSon", "MOSFET: on-resistance; VGS= required, ID= and TJ= optional", "max"),
  RDSON_RATIO(
      "RDSonRatio", "MOSFET: RDSon over that at 25 °C, at TJ=", "max; typ + 0.05", "kRDSon"),
  ID("ID", "MOSFET: drain current; TC= optional", "max"),
  IDM("IDM", "MOSFET: pulsed drain current", "max"),
  QG("QG", "MOSFET: total gate charge", "max"),
  QGS("QGS", "MOSFET: gate-source charge", "max"),
  QGD("QGD", "MOSFET: gate-drain (Miller) charge", "max"),
  COSS("Coss", "MOSFET: output capacitance", "max or typ"),
  EAS("EAS", "MOSFET: single avalanche energy; IAS= wanted", "max"),
  EAR("EAR", "MOSFET: repetitive avalanche energy", "max"),
  SOA("SOA", "MOSFET: current of a safe-area point; VDS= and t= required", "max"),
  ZTHJC("ZthJC", "MOSFET: transient thermal impedance at t=", "max"),
  RTH_FOSTER("Rth1", "MOSFET: Foster network, resistances Rth1, Rth2 ...", "any"),
  TAU_FOSTER("tau1", "MOSFET: Foster network, time constants tau1, tau2 ...", "any"),
  // any semiconductor
  RTHJA("RthJA", "junction to air", "max"),
  RTHJC("RthJC", "junction to case", "max"),
  TJ("TJ", "junction temperature rating", "max", "TJmax"),
  // flyback diode
  VRRM("VRRM", "diode: reverse voltage rating", "max"),
  IFAV("IFav", "diode: average forward current at TA=, TL= or TC=", "max", "IF"),
  IFRM("IFRM", "diode: repetitive peak current", "max"),
  VF("VF", "diode: forward voltage at IF=", "max"),
  TRR("trr", "diode: reverse recovery time", "max"),
  VZ("VZ", "Zener diode as flyback diode: working voltage", "min"),
  VBR("VBR", "suppressor diode as flyback diode: breakdown voltage", "min"),
  VRWM("VRWM", "suppressor diode as flyback diode: stand-off voltage", "max"),
  // fuse
  IN("IN", "fuse: rated current", "any", "Irated"),
  VN("VN", "fuse: rated voltage; the condition must say DC", "any", "Vrated", "Vmax"),
  I2T("I2t", "fuse: melting I²t", "min or typ"),
  BREAKING(
      "breaking",
      "fuse: breaking capacity; the condition must say DC",
      "any",
      "breaking capacity",
      "Imax"),
  TOPEN("topen", "fuse: longest time to open; I= required", "max"),
  IHOLD("Ihold", "resettable fuse: current that it holds at TA=", "any", "IH"),
  ITRIP("Itrip", "resettable fuse: current at which it surely trips", "max", "IT"),
  FAMILY("family", "fuse: UL 248-14 or IEC 60127, in the condition", "none"),
  // bipolar transistor, Darlington array, optocoupler
  VCEO("VCEO", "transistor or array: voltage rating", "max", "VCE", "VBRCEO"),
  IC("IC", "transistor or array: current of one output", "max"),
  ICM("ICM", "transistor or array: peak current of one output", "max"),
  ICTOTAL("ICtotal", "array: current of the common pin", "max"),
  VCESAT("VCEsat", "saturation voltage; IC= and IB= or IF= required", "max"),
  CTR("CTR", "optocoupler: transfer ratio; IF= and VCE= required", "min"),
  VBESAT("VBEsat", "base voltage in saturation", "max", "VBEon"),
  TSW("tsw", "transistor or array under PWM: ton and toff together, storage included", "max"),
  VSINK("Vsink", "constant-current sink: least voltage across it", "max");

  private final String text;
  private final String meaning;
  private final String column;
  private final List<String> aliases;

  DatasheetSymbol(String text, String meaning, String column, String... aliases) {
    this.text = text;
    this.meaning = meaning;
    this.column = column;
    this.aliases = List.of(aliases);
  }

  /** How it is written in the symbol column. */
  public String text() {
    return text;
  }

  /** What it is, and which conditions it needs. */
  public String meaning() {
    return meaning;
  }

  /** Which of min, typ and max counts. */
  public String column() {
    return column;
  }

  private static final Map<String, DatasheetSymbol> BY_WRITING = new HashMap<>();

  static {
    for (DatasheetSymbol symbol : values()) {
      BY_WRITING.put(symbol.text, symbol);
      symbol.aliases.forEach(alias -> BY_WRITING.put(alias, symbol));
    }
  }

  /** The symbol that is written so, if it is one of the list. */
  public static Optional<DatasheetSymbol> written(String symbol) {
    return Optional.ofNullable(BY_WRITING.get(symbol));
  }
}
