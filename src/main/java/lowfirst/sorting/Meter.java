package lowfirst.sorting;

import java.math.BigDecimal;
import lowfirst.board.Settings;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Source;

/**
 * The builder's multimeter: how accurate it is on resistance and on capacitance.
 *
 * @param ohms accuracy on resistance
 * @param ohmsSource where that stands
 * @param farads accuracy on capacitance
 * @param faradsSource where that stands
 */
public record Meter(
    MeterAccuracy ohms, Source ohmsSource, MeterAccuracy farads, Source faradsSource) {

  private static final MeterAccuracy ASSUMED_OHMS = new MeterAccuracy(1, 5, 2000);
  private static final MeterAccuracy ASSUMED_FARADS = new MeterAccuracy(4, 5, 2000);

  private static final int MOST_DECADES = 30;

  /** Range with the finest resolution: one tenth of an ohm a count, ten picofarads a count. */
  private static final BigDecimal FINEST_OHM = new BigDecimal("0.1");

  private static final BigDecimal FINEST_FARAD = new BigDecimal("10E-12");

  /** The meter that a kit states, or a plain handheld one, and which is said in the sources. */
  public static Meter of(Settings settings) {
    String written = settings.meter();
    String capacitance = settings.meterCapacitance();
    Reading<MeterAccuracy> ohms = MeterAccuracy.parse(written);
    Reading<MeterAccuracy> farads = MeterAccuracy.parse(capacitance);
    return new Meter(
        ohms.value().orElse(ASSUMED_OHMS),
        source(ohms, written, "meter", ASSUMED_OHMS),
        farads.value().orElse(ASSUMED_FARADS),
        source(farads, capacitance, "meter capacitance", ASSUMED_FARADS));
  }

  private static Source source(
      Reading<MeterAccuracy> reading, String written, String key, MeterAccuracy assumed) {
    if (reading.isRead()) {
      return Source.kit("kit.properties, " + key);
    }
    String what = "a plain handheld meter, ±(" + assumed + ")";
    String unread = written.isBlank() ? "" : ", since " + reading.fault();
    return Source.assumed(what + unread, "kit.properties, " + key);
  }

  /** The accuracy on a dimension. */
  public MeterAccuracy accuracy(Dimension dimension) {
    return dimension == Dimension.CAPACITANCE ? farads : ohms;
  }

  /** Where the accuracy on a dimension stands. */
  public Source source(Dimension dimension) {
    return dimension == Dimension.CAPACITANCE ? faradsSource : ohmsSource;
  }

  /**
   * The resolution of the range that an autoranging meter shows a reading on: the finest range
   * whose end isn't passed.
   */
  public BigDecimal resolution(double reading, Dimension dimension) {
    BigDecimal finest = dimension == Dimension.CAPACITANCE ? FINEST_FARAD : FINEST_OHM;
    int counts = accuracy(dimension).displayCounts();
    int decades = 0;
    while (decades < MOST_DECADES
        && Math.abs(reading) > finest.scaleByPowerOfTen(decades).doubleValue() * counts) {
      decades++;
    }
    return finest.scaleByPowerOfTen(decades);
  }
}
