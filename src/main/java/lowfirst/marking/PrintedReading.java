package lowfirst.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/**
 * One thing that a print on a part can mean.
 *
 * @param on what kind of part has to carry the print for this reading
 * @param value resistance, capacitance, inductance, voltage or current, where it says one
 * @param tolerance where it says one
 * @param voltage the rated voltage, where it says one beside the value
 * @param words what it says besides, such as a dielectric's limits; may be empty
 * @param rule how it was read
 * @param likelihood how often parts in a hobby bag are marked so
 */
public record PrintedReading(
    Carrier on,
    Optional<Quantity> value,
    Optional<Tolerance> tolerance,
    Optional<Quantity> voltage,
    String words,
    String rule,
    Likelihood likelihood) {

  /** What a print stands on. */
  public enum Carrier {
    RESISTOR("resistor"),
    RESISTOR_NETWORK("resistor network"),
    CAPACITOR("capacitor"),
    INDUCTOR("inductor"),
    ZENER_DIODE("Zener diode"),
    REGULATOR("regulator"),
    FUSE("fuse"),
    TRIMMER("trimmer"),
    POTENTIOMETER("potentiometer"),
    CRYSTAL("crystal"),
    VARISTOR("varistor"),
    THERMISTOR("thermistor"),
    ANY("any part");

    private final String words;

    Carrier(String words) {
      this.words = words;
    }

    /** What a person calls it. */
    public String words() {
      return words;
    }
  }

  /** How often parts in a hobby bag are marked so. */
  public enum Likelihood {
    USUAL,
    RARE,
    /** On surface-mount parts only. */
    NOT_THROUGH_HOLE
  }

  /** Whether it says a value that every shop has, a number of E24; or no value of that series. */
  boolean isEverydayValue() {
    return !isCoded() || value.get().isZero() || Series.E24.contains(value.get());
  }

  /** Whether it says a value that is written on such a part in bands or codes. */
  boolean isCoded() {
    return value.isPresent()
        && switch (on) {
          case RESISTOR, RESISTOR_NETWORK, CAPACITOR, INDUCTOR -> true;
          default -> false;
        };
  }

  static PrintedReading value(
      Carrier on, Quantity value, Optional<Tolerance> tolerance, String rule) {
    return new PrintedReading(
        on, Optional.of(value), tolerance, Optional.empty(), "", rule, Likelihood.USUAL);
  }

  /** Those that there are. */
  @SafeVarargs
  static List<PrintedReading> found(Optional<PrintedReading>... readings) {
    var found = new ArrayList<PrintedReading>();
    for (Optional<PrintedReading> reading : readings) {
      if (reading.isPresent()) {
        found.add(reading.get());
      }
    }
    return found;
  }

  static PrintedReading words(String words, String rule, Likelihood likelihood) {
    return new PrintedReading(
        Carrier.ANY, Optional.empty(), Optional.empty(), Optional.empty(), words, rule, likelihood);
  }

  PrintedReading rated(Optional<Quantity> volts) {
    return new PrintedReading(on, value, tolerance, volts, words, rule, likelihood);
  }

  PrintedReading saying(String further) {
    return new PrintedReading(on, value, tolerance, voltage, further, rule, likelihood);
  }

  PrintedReading as(Likelihood other) {
    return new PrintedReading(on, value, tolerance, voltage, words, rule, other);
  }
}
