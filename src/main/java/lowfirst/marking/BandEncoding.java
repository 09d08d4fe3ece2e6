package lowfirst.marking;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/**
 * Writes a resistance as colour bands by IEC 60062:2016: "±5 % and wider require two [figures]; ±2
 * % and tighter three". Refuses what the code can't write.
 */
public final class BandEncoding {
  private static final Tolerance TWENTY_PERCENT = Tolerance.percent("20");

  private BandEncoding() {}

  /**
   * The bands of a resistor: three or four for ±5 % and wider where two figures are enough, five
   * otherwise.
   */
  public static Reading<BandSequence> encode(Quantity value, Tolerance tolerance) {
    Layout layout = usualLayout(value, tolerance);
    return encode(value, tolerance, layout, OptionalInt.empty());
  }

  /** How a resistor of this value and tolerance is usually banded. */
  static Layout usualLayout(Quantity value, Tolerance tolerance) {
    if (value.isZero()) {
      return Layout.LINK;
    }
    boolean wide = tolerance.plus().compareTo(BigDecimal.valueOf(5)) >= 0;
    if (!wide || value.amount().precision() > 2) {
      return Layout.FIVE;
    }
    return tolerance.equals(TWENTY_PERCENT) ? Layout.THREE : Layout.FOUR;
  }

  /**
   * The bands of a resistor in a stated layout.
   *
   * @param ppmPerKelvin the temperature coefficient, for six bands only
   */
  public static Reading<BandSequence> encode(
      Quantity value, Tolerance tolerance, Layout layout, OptionalInt ppmPerKelvin) {
    if (value.dimension() != Dimension.RESISTANCE || value.amount().signum() < 0) {
      return refused(value, "it is not a resistance");
    }
    if (value.isZero()) {
      return Reading.of(BandSequence.of(Colour.BLACK), Layout.LINK.words());
    }
    Optional<Integer> digits = digits(layout);
    if (digits.isEmpty()) {
      return refused(value, "bands are written with 3, 4, 5 or 6");
    }
    int figures = digits.get();
    int exponent = value.amount().precision() - value.amount().scale() - figures;
    if (value.amount().precision() > figures) {
      return refused(value, "it needs more than " + figures + " figures");
    }
    Optional<Colour> multiplier = Colour.ofExponent(exponent);
    if (multiplier.isEmpty()) {
      return refused(value, "no colour stands for ×10^" + exponent);
    }
    var bands = new ArrayList<Colour>();
    String written = value.amount().scaleByPowerOfTen(-exponent).toBigIntegerExact().toString();
    for (int at = 0; at < figures; at++) {
      bands.add(Colour.ofDigit(written.charAt(at) - '0'));
    }
    bands.add(multiplier.get());
    return finished(bands, tolerance, layout, ppmPerKelvin);
  }

  private static Reading<BandSequence> finished(
      List<Colour> bands, Tolerance tolerance, Layout layout, OptionalInt ppmPerKelvin) {
    if (layout == Layout.THREE) {
      return tolerance.equals(TWENTY_PERCENT)
          ? Reading.of(new BandSequence(bands), layout.words())
          : refused(tolerance, "three bands always mean ±20 %");
    }
    Optional<Colour> band = Colour.ofTolerance(tolerance, Edition.IEC_60062_2016);
    if (band.isEmpty()) {
      return refused(tolerance, "no colour stands for this tolerance");
    }
    bands.add(band.get());
    if (layout == Layout.SIX) {
      Optional<Colour> last =
          ppmPerKelvin.isPresent()
              ? Colour.ofPpmPerKelvin(ppmPerKelvin.getAsInt())
              : Optional.empty();
      if (last.isEmpty()) {
        return refused(tolerance, "six bands need a temperature coefficient that has a colour");
      }
      bands.add(last.get());
    }
    return Reading.of(new BandSequence(bands), layout.words());
  }

  private static Optional<Integer> digits(Layout layout) {
    return switch (layout) {
      case THREE, FOUR -> Optional.of(2);
      case FIVE, SIX -> Optional.of(3);
      case LINK,
          FOUR_AND_SPECIAL,
          FOUR_AND_FAILURE_RATE,
          FOUR_HIGH_VOLTAGE,
          INDUCTOR_THREE,
          INDUCTOR_FOUR,
          INDUCTOR_MILITARY ->
          Optional.empty();
    };
  }

  private static Reading<BandSequence> refused(Object what, String why) {
    return Reading.fault(
        "the colour code can't write " + what + ": " + why,
        "use a value of up to three figures between 0.01 Ω and 999 GΩ and a tolerance of the code");
  }
}
