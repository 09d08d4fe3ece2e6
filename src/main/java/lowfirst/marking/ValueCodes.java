package lowfirst.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/**
 * How a value is written on parts.
 *
 * @param value the value
 * @param bands rows of bands with the tolerance each stands for; for an inductor in µH
 * @param refusals why a wanted row of bands can't be written
 * @param prints letter and digit codes
 */
public record ValueCodes(
    Quantity value, List<Banded> bands, List<String> refusals, List<String> prints) {

  /** A row of bands and the tolerance that it says. */
  public record Banded(BandSequence bands, Tolerance tolerance, Layout layout) {}

  public ValueCodes {
    bands = List.copyOf(bands);
    refusals = List.copyOf(refusals);
    prints = List.copyOf(prints);
  }

  /**
   * How a value is written on parts.
   *
   * @param tolerance the tolerance; without it the usual ±5 % and ±1 % are shown
   * @param ppmPerKelvin a temperature coefficient, for a row of six bands as well
   */
  public static ValueCodes of(
      Quantity value, Optional<Tolerance> tolerance, OptionalInt ppmPerKelvin) {
    var bands = new ArrayList<Banded>();
    var refusals = new ArrayList<String>();
    if (value.dimension() == Dimension.RESISTANCE) {
      List<Tolerance> tolerances =
          tolerance.isPresent()
              ? List.of(tolerance.get())
              : List.of(Tolerance.percent("5"), Tolerance.percent("1"));
      for (Tolerance each : tolerances) {
        Layout layout = BandEncoding.usualLayout(value, each);
        add(value, each, layout, OptionalInt.empty(), bands, refusals);
      }
      if (ppmPerKelvin.isPresent()) {
        Tolerance last = tolerances.get(tolerances.size() - 1);
        add(value, last, Layout.SIX, ppmPerKelvin, bands, refusals);
      }
    } else if (value.dimension() == Dimension.INDUCTANCE) {
      var micro = new Quantity(value.amount().scaleByPowerOfTen(6), Dimension.RESISTANCE);
      Tolerance each = tolerance.orElse(Tolerance.percent("10"));
      add(micro, each, Layout.FOUR, OptionalInt.empty(), bands, refusals);
    }
    return new ValueCodes(value, bands, refusals, prints(value, tolerance));
  }

  private static void add(
      Quantity value,
      Tolerance tolerance,
      Layout layout,
      OptionalInt ppmPerKelvin,
      List<Banded> bands,
      List<String> refusals) {
    Reading<BandSequence> written = BandEncoding.encode(value, tolerance, layout, ppmPerKelvin);
    if (written.isRead()) {
      bands.add(new Banded(written.orThrow(), tolerance, layout));
    } else {
      refusals.add(written.fault());
    }
  }

  private static List<String> prints(Quantity value, Optional<Tolerance> tolerance) {
    Optional<ToleranceLetter> known =
        tolerance.isPresent() ? ToleranceLetter.of(tolerance.get(), value) : Optional.empty();
    String letter = known.isPresent() ? known.get().name() : "";
    var prints = new ArrayList<String>();
    for (Optional<String> code : List.of(RkmCode.write(value).value(), DigitCode.write(value))) {
      if (code.isPresent()) {
        prints.add(code.get() + letter);
      }
    }
    return prints;
  }
}
