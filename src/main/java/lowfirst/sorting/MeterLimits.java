package lowfirst.sorting;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.quantity.Tolerance;

/**
 * Which meter reading to accept for a loose part, guarded against the meter's own error.
 *
 * <p>With tolerance limits TL and TU, meter limit a(y), standard uncertainty u = a/√3 (the maker's
 * limits taken as a rectangular distribution, GUM 4.3.7) and guard band w = 2u: accept TL + w ≤ y ≤
 * TU - w; reject y &lt; TL - w or y &gt; TU + w; between them nobody can tell. Sources:
 * ILAC-G8:09/2019 4.1 and 4.2.3, JCGM 106:2012, ISO 14253-1.
 *
 * @param nominal the value on the part
 * @param tolerance the tolerance the limits are made of
 * @param toleranceSource where the tolerance stands, or that it is assumed
 * @param accept the readings to accept; absent when the meter is too coarse to accept any
 * @param rejectBelow below this the part is surely out of tolerance
 * @param rejectAbove above this the part is surely out of tolerance
 */
public record MeterLimits(
    Quantity nominal,
    Tolerance tolerance,
    Source toleranceSource,
    Optional<Range> accept,
    Quantity rejectBelow,
    Quantity rejectAbove) {

  /** Readings from {@code low} to {@code high}, both included, as the display can show them. */
  public record Range(Quantity low, Quantity high) {
    /** Whether a reading is inside. */
    public boolean includes(Quantity reading) {
      return low.compareTo(reading) <= 0 && high.compareTo(reading) >= 0;
    }
  }

  /** What a reading says about a part. */
  public enum Judgement {
    ACCEPT,
    REJECT,
    /** The meter's own error reaches over the limit. */
    CANNOT_TELL
  }

  /** Guard band in units of the meter's limit a: w = 2u = 2a/√3. */
  private static final double GUARD = 2 / Math.sqrt(3);

  /** Below this the leads and the touch of the probes matter (common practice, after Fluke). */
  private static final Quantity LEADS_MATTER = Quantity.of("10", Dimension.RESISTANCE);

  /** The limits of a loose resistor or capacitor; empty for parts that a multimeter can't judge. */
  public static Optional<MeterLimits> of(PartType type, Meter meter) {
    boolean measurable = type.kind() == PartKind.RESISTOR || type.kind().isCapacitor();
    Optional<Quantity> value = type.value().filter(amount -> amount.amount().signum() > 0);
    if (!measurable || value.isEmpty()) {
      return Optional.empty();
    }
    Tolerance tolerance = type.tolerance().orElseGet(() -> AssumedTolerance.of(type.kind()));
    Source source =
        type.tolerance().isPresent()
            ? Source.kit("the BOM")
            : Source.assumed(tolerance + ", since the BOM states none", "the BOM, tolerance");
    return Optional.of(of(value.get(), tolerance, source, meter));
  }

  /** The limits of a resistance or capacitance. */
  public static MeterLimits of(
      Quantity nominal, Tolerance tolerance, Source toleranceSource, Meter meter) {
    Dimension dimension = nominal.dimension();
    double lowest = tolerance.lowest(nominal).asDouble();
    double highest = tolerance.highest(nominal).asDouble();
    var limits = new Solver(meter, dimension);
    double low = limits.solved(lowest, +1);
    double high = limits.solved(highest, -1);
    Quantity lowShown = limits.shown(low, RoundingMode.CEILING);
    Quantity highShown = limits.shown(high, RoundingMode.FLOOR);
    Optional<Range> accept =
        lowShown.compareTo(highShown) <= 0
            ? Optional.of(new Range(lowShown, highShown))
            : Optional.empty();
    return new MeterLimits(
        nominal,
        tolerance,
        toleranceSource,
        accept,
        limits.shown(Math.max(0, limits.solved(lowest, -1)), RoundingMode.FLOOR),
        limits.shown(limits.solved(highest, +1), RoundingMode.CEILING));
  }

  /** Solves y ∓ w(y) = limit for y, with the resolution of the range that y is shown on. */
  private record Solver(Meter meter, Dimension dimension) {

    /** The reading whose guard band just touches {@code limit}: above it for +1, below for -1. */
    double solved(double limit, int side) {
      MeterAccuracy accuracy = meter.accuracy(dimension);
      double reading = limit;
      double resolution = meter.resolution(limit, dimension).doubleValue();
      for (int again = 0; again < 3; again++) {
        double constant = GUARD * accuracy.counts() * resolution;
        double share = GUARD * accuracy.percent() / 100;
        reading = (limit + side * constant) / (1 - side * share);
        double there = meter.resolution(reading, dimension).doubleValue();
        if (there <= resolution) {
          break;
        }
        resolution = there;
      }
      return reading;
    }

    /** As the display shows it: a whole number of counts. */
    Quantity shown(double reading, RoundingMode rounding) {
      BigDecimal resolution = meter.resolution(reading, dimension);
      // A double's last bits must not push an exact count to the next one.
      BigDecimal counts =
          new BigDecimal(reading / resolution.doubleValue())
              .setScale(6, RoundingMode.HALF_EVEN)
              .setScale(0, rounding);
      return new Quantity(counts.multiply(resolution), dimension);
    }
  }

  /** What a reading says; a judgement about tolerance only, not about voltage or heat. */
  public Judgement judge(Quantity reading) {
    if (reading.dimension() != nominal.dimension()) {
      throw new IllegalArgumentException(reading + " for " + nominal);
    }
    if (accept.filter(range -> range.includes(reading)).isPresent()) {
      return Judgement.ACCEPT;
    }
    boolean out = reading.compareTo(rejectBelow) < 0 || reading.compareTo(rejectAbove) > 0;
    return out ? Judgement.REJECT : Judgement.CANNOT_TELL;
  }

  /** Whether the resistance of the test leads has to be taken off first. */
  public boolean leadsMatter() {
    return nominal.dimension() == Dimension.RESISTANCE && nominal.compareTo(LEADS_MATTER) < 0;
  }

  /** Whether no reading can be good for both parts: the meter tells them apart. */
  public boolean tellsApartFrom(MeterLimits other) {
    return nominal.dimension() == other.nominal.dimension()
        && (rejectAbove.compareTo(other.rejectBelow) < 0
            || other.rejectAbove.compareTo(rejectBelow) < 0);
  }
}
