package lowfirst.part;

import java.util.Optional;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/**
 * What one buys: value, package and ratings. Two items with equal part types go into one
 * compartment of the sorting tray.
 *
 * @param kind what kind of part
 * @param text the value or type number as the user wrote it, for example {@code 4k7} or {@code
 *     1N4148}; what sheets show
 * @param value resistance, capacitance or inductance, where the kind has one and it was understood
 * @param tolerance the tolerance, where stated
 * @param ratedVoltage the rated voltage, where stated
 * @param ratedPower the rated power, where stated
 * @param typeNumber the maker's type number, the key into datasheets; empty when there is none
 * @param packageName the package or footprint as the user wrote it; may be empty
 */
public record PartType(
    PartKind kind,
    String text,
    Optional<Quantity> value,
    Optional<Tolerance> tolerance,
    Optional<Quantity> ratedVoltage,
    Optional<Quantity> ratedPower,
    String typeNumber,
    String packageName) {

  /** One of which nothing but words is known. */
  public static PartType named(PartKind kind, String text, String typeNumber, String packageName) {
    return new PartType(
        kind,
        text,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        typeNumber,
        packageName);
  }

  /** The same of another kind. */
  public PartType with(PartKind other) {
    return new PartType(
        other, text, value, tolerance, ratedVoltage, ratedPower, typeNumber, packageName);
  }

  /** The same under another package name. */
  public PartType in(String otherPackage) {
    return new PartType(
        kind, text, value, tolerance, ratedVoltage, ratedPower, typeNumber, otherPackage);
  }

  /** Field by field: what a record makes of itself is put together at each start of the program. */
  @Override
  public boolean equals(Object other) {
    return other instanceof PartType that
        && kind == that.kind
        && text.equals(that.text)
        && packageName.equals(that.packageName)
        && typeNumber.equals(that.typeNumber)
        && value.equals(that.value)
        && tolerance.equals(that.tolerance)
        && ratedVoltage.equals(that.ratedVoltage)
        && ratedPower.equals(that.ratedPower);
  }

  /** Of what tells most part types apart: many are looked up, and the rest costs more to hash. */
  @Override
  public int hashCode() {
    return 31 * (31 * text.hashCode() + packageName.hashCode()) + typeNumber.hashCode();
  }

  /** What datasheets know it by: the type number, or the text where there is none. */
  public String name() {
    return typeNumber.isBlank() ? text : typeNumber;
  }

  /** For example {@code 4.7 kΩ resistor} or {@code 1N4148 diode}. */
  public String words() {
    String said = value.map(Quantity::toString).orElse(name());
    return said.isBlank() ? kind.words() : said + " " + kind.words();
  }
}
