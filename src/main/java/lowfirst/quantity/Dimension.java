package lowfirst.quantity;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * What an amount measures, with its one unit inside the program and the further units people write.
 *
 * <p>SI prefixes (BIPM SI brochure, 9th ed., table 7) are allowed on the units marked so. 1 inch =
 * 25.4 mm exactly; 1 mil = 0.001 inch (international yard and pound agreement, 1959).
 */
public enum Dimension {
  RESISTANCE("Ω", true, "Ω", "1", "ohm", "1", "ohms", "1", "R", "1"),
  CAPACITANCE("F", true, "F", "1"),
  INDUCTANCE("H", true, "H", "1"),
  VOLTAGE("V", true, "V", "1", "Vdc", "1", "volt", "1", "volts", "1"),
  CURRENT("A", true, "A", "1", "amp", "1", "amps", "1"),
  POWER("W", true, "W", "1", "watt", "1", "watts", "1"),
  TIME("s", true, "s", "1", "sec", "1", "min", "60", "h", "3600"),
  FREQUENCY("Hz", true, "Hz", "1"),
  CHARGE("C", true, "C", "1"),
  ENERGY("J", true, "J", "1"),
  /** I²t of a fuse or pulse. */
  JOULE_INTEGRAL("A²s", true, "A²s", "1", "A2s", "1", "A^2s", "1"),
  /** Millimetres, the one length unit of this program. */
  LENGTH(
      "mm",
      false,
      "mm",
      "1",
      "cm",
      "10",
      "m",
      "1000",
      "µm",
      "0.001",
      "um",
      "0.001",
      "nm",
      "0.000001",
      "mil",
      "0.0254",
      "mils",
      "0.0254",
      "thou",
      "0.0254",
      "th",
      "0.0254",
      "inch",
      "25.4",
      "inches",
      "25.4",
      "in",
      "25.4",
      "\"",
      "25.4",
      // In Cyrillic letters mm, cm, micrometre, mil and inch, which are read and never shown.
      "\u043c\u043c",
      "1",
      "\u0441\u043c",
      "10",
      "\u043c\u043a\u043c",
      "0.001",
      "\u043c\u0438\u043b",
      "0.0254",
      "\u0434\u044e\u0439\u043c",
      "25.4"),
  AREA("mm²", false, "mm²", "1", "mm2", "1", "mm^2", "1"),
  TEMPERATURE("°C", false, "°C", "1", "C", "1", "degC", "1", "deg C", "1", "℃", "1"),
  /** A difference of temperatures, in kelvin. */
  TEMPERATURE_RISE("K", false, "K", "1", "°C", "1", "C", "1", "degC", "1", "℃", "1"),
  THERMAL_RESISTANCE(
      "K/W", false, "K/W", "1", "°C/W", "1", "C/W", "1", "℃/W", "1", "degC/W", "1", "mK/W",
      "0.001"),
  /** Relative change a kelvin: of a resistor's value, of a crystal's frequency. */
  TEMPERATURE_COEFFICIENT(
      "ppm/K", false, "ppm/K", "1", "ppm/°C", "1", "ppm/C", "1", "1e-6/K", "1", "%/K", "10000",
      "%/°C", "10000"),
  ANGLE("°", false, "°", "1", "deg", "1"),
  PERCENT("%", false, "%", "1"),
  MASS("g", true, "g", "1"),
  SLEW_RATE("V/s", true, "V/s", "1", "V/µs", "1000000", "V/us", "1000000", "V/ns", "1000000000"),
  /** A bare number: a gain, a ratio, a count. */
  RATIO("", false, "", "1", "pcs", "1", "x", "1");

  private final String symbol;
  private final boolean prefixed;
  private final Map<String, BigDecimal> units;
  private final Map<String, BigDecimal> unitsInAnyCase;

  Dimension(String symbol, boolean prefixed, String... unitsAndScales) {
    this.symbol = symbol;
    this.prefixed = prefixed;
    var table = new LinkedHashMap<String, BigDecimal>();
    for (int i = 0; i < unitsAndScales.length; i += 2) {
      table.put(unitsAndScales[i], new BigDecimal(unitsAndScales[i + 1]));
    }
    this.units = Map.copyOf(table);
    this.unitsInAnyCase = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    this.unitsInAnyCase.putAll(table);
  }

  /** The unit in which amounts of this dimension are held and shown. */
  public String symbol() {
    return symbol;
  }

  /** Whether SI prefixes go with its units. */
  public boolean takesPrefixes() {
    return prefixed;
  }

  /** The size in {@link #symbol()} of a unit spelt just so; null where it is not understood. */
  BigDecimal unit(String text) {
    return units.get(text);
  }

  /** The size of a unit in whatever case it is spelt; null where it is not understood. */
  BigDecimal unitInAnyCase(String text) {
    return unitsInAnyCase.get(text);
  }
}
