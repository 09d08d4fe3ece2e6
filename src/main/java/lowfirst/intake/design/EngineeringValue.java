package lowfirst.intake.design;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lowfirst.intake.column.Column;
import lowfirst.intake.design.DesignData.Characteristic;
import lowfirst.intake.xml.XmlNumber;
import lowfirst.marking.Series;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * What a characteristic of IPC-2581 says, in the words of a table's cell: a number with its unit, a
 * range by the bound that tells, a tolerance in engineering units as per cent of the value.
 */
final class EngineeringValue {
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  /** Unit words of engineering, by the signs that the reader of amounts knows. */
  private static final Map<String, String> SIGNS =
      Map.ofEntries(
          Map.entry("OHM", "Ω"),
          Map.entry("OHMS", "Ω"),
          Map.entry("KOHM", "kΩ"),
          Map.entry("KOHMS", "kΩ"),
          Map.entry("MEGOHM", "MΩ"),
          Map.entry("FARAD", "F"),
          Map.entry("FARADS", "F"),
          Map.entry("MICROFARAD", "µF"),
          Map.entry("NANOFARAD", "nF"),
          Map.entry("PICOFARAD", "pF"),
          Map.entry("UF", "µF"),
          Map.entry("NF", "nF"),
          Map.entry("PF", "pF"),
          Map.entry("HENRY", "H"),
          Map.entry("HENRYS", "H"),
          Map.entry("UH", "µH"),
          Map.entry("MH", "mH"),
          Map.entry("HERTZ", "Hz"),
          Map.entry("HZ", "Hz"),
          Map.entry("MHZ", "MHz"),
          Map.entry("KHZ", "kHz"),
          Map.entry("VOLT", "V"),
          Map.entry("VOLTS", "V"),
          Map.entry("WATT", "W"),
          Map.entry("WATTS", "W"),
          Map.entry("PERCENT", "%"),
          Map.entry("MILLIMETER", "mm"),
          Map.entry("INCH", "inch"),
          Map.entry("MICRON", "µm"));

  private EngineeringValue() {}

  /** What a column's cell would hold. */
  static String text(Characteristic said, Column column) {
    if (said.upper().isEmpty()) {
      return withUnit(said.value(), said.unit());
    }
    Optional<BigDecimal> lower = number(said.value());
    Optional<BigDecimal> upper = number(said.upper());
    if (lower.isEmpty() || upper.isEmpty() || lower.get().signum() == 0) {
      // What goes up to a bound is called by it: a rating, a height, a potentiometer.
      return withUnit(said.upper(), said.unit());
    }
    return switch (column) {
      case VALUE -> middle(said, lower.get(), upper.get());
      case TOLERANCE ->
          lower.get().signum() < 0 && upper.get().signum() >= 0 && isPercent(said.unit())
              ? limits(lower.get().negate(), upper.get())
              : range(said);
      default -> withUnit(said.upper(), said.unit());
    };
  }

  /** The value in the middle of a range around it; the range itself where that is none. */
  private static String middle(Characteristic said, BigDecimal lower, BigDecimal upper) {
    BigDecimal middle = nominal(lower, upper);
    return lower.signum() > 0 && isPreferred(middle)
        ? withUnit(middle.toPlainString(), said.unit())
        : range(said);
  }

  private static BigDecimal nominal(BigDecimal lower, BigDecimal upper) {
    return lower.add(upper).divide(BigDecimal.valueOf(2)).stripTrailingZeros();
  }

  private static boolean isPreferred(BigDecimal number) {
    // Only the figures count, so the dimension doesn't matter.
    var value = new Quantity(number, Dimension.RESISTANCE);
    return number.signum() > 0 && (Series.E24.contains(value) || Series.E96.contains(value));
  }

  private static boolean isPercent(String unit) {
    return unit.isEmpty() || unit.equals("%") || unit.equalsIgnoreCase("PERCENT");
  }

  private static String range(Characteristic said) {
    String unit = SIGNS.getOrDefault(said.unit().toUpperCase(Locale.ROOT), said.unit());
    // No number with its unit, so that nobody takes one bound for the value.
    return said.value() + " to " + said.upper() + (unit.isEmpty() ? "" : " (" + unit + ")");
  }

  /** Per cent of the value, from limits in its own unit; empty where none are stated. */
  static Optional<String> tolerance(Characteristic said) {
    Optional<BigDecimal> value = number(said.value());
    Optional<BigDecimal> minus = number(said.minus()).map(BigDecimal::abs);
    Optional<BigDecimal> plus = number(said.plus()).map(BigDecimal::abs);
    Optional<BigDecimal> upper = number(said.upper());
    if (value.isPresent() && upper.isPresent()) {
      BigDecimal nominal = nominal(value.get(), upper.get());
      if (value.get().signum() <= 0 || !isPreferred(nominal)) {
        return Optional.empty();
      }
      minus = Optional.of(nominal.subtract(value.get()));
      plus = Optional.of(upper.get().subtract(nominal));
      value = Optional.of(nominal);
    }
    if (value.isEmpty() || minus.isEmpty() || plus.isEmpty() || value.get().signum() <= 0) {
      return Optional.empty();
    }
    BigDecimal below = percent(minus.get(), value.get());
    // A limit as large as the value can't be counted in its unit.
    return below.compareTo(HUNDRED) < 0 && plus.get().signum() + minus.get().signum() > 0
        ? Optional.of(limits(below, percent(plus.get(), value.get())))
        : Optional.empty();
  }

  private static BigDecimal percent(BigDecimal part, BigDecimal whole) {
    return part.multiply(HUNDRED).divide(whole, 3, RoundingMode.HALF_UP).stripTrailingZeros();
  }

  private static String limits(BigDecimal minus, BigDecimal plus) {
    return minus.compareTo(plus) == 0
        ? plus.toPlainString() + " %"
        : "+" + plus.toPlainString() + "/-" + minus.toPlainString() + " %";
  }

  private static String withUnit(String number, String unit) {
    String sign = SIGNS.getOrDefault(unit.toUpperCase(Locale.ROOT), unit);
    boolean bare = XmlNumber.in(number).isPresent();
    return bare && !unit.isEmpty() ? number + " " + sign : number;
  }

  private static Optional<BigDecimal> number(String text) {
    return XmlNumber.in(text).isPresent()
        ? Optional.of(new BigDecimal(text)).filter(EngineeringValue::isSane)
        : Optional.empty();
  }

  /** Not with so many zeros that written out it would fill memory. */
  private static boolean isSane(BigDecimal number) {
    return Math.abs((long) number.precision() - number.scale()) < 40 && number.scale() < 40;
  }
}
