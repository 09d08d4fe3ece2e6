package lowfirst.channel.formula;

import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.quantity.Source;

/**
 * A stranded copper wire by its cross-section. Resistance: IEC 60228 class 5, tinned (the higher
 * column), for its nominal sizes from 0.5 mm² on. Of the small sizes 0.14 to 0.34 mm² DIN VDE 0295
 * is known only from a copy whose columns can't be told apart (134, 96, 76, 53 Ω/km): a tenth is
 * added, more than the columns differ (40.1 to 39.0 at 0.5 mm²). ASTM B258 diameters at 0.017241
 * Ω·mm²/m for gauge sizes, 2 % added for stranding. Current: IEC 60335-1 table 11 (cords; ≤ 3 A on
 * 0.5 mm² up to 63 A on 10 mm²), and 700 circular mils per ampere below 0.5 mm².
 */
public final class Conductor {
  /** Of the current of one wire. */
  public static final Source AMPACITY =
      Source.standard("IEC 60335-1 table 11; below 0.5 mm² 700 cmil/A (handbook practice)");

  /** Of the share of it that each of several wires together carries. */
  public static final Source BUNDLE =
      Source.standard("MIL-W-5088L bundle derating, all wires loaded");

  /** Of ohms for each metre. */
  public static final Source RESISTANCE =
      Source.standard(
          "IEC 60228 class 5, tinned; below 0.5 mm² DIN VDE 0295 and a tenth; ASTM B258");

  /** Of the current of a wire by itself in open air. */
  public static final Source OPEN_AIR =
      Source.standard("Handbook of Electronic Tables and Formulas, chassis wiring column");

  /** Of what a fuse must keep a wire from. */
  public static final Source OVERLOAD_RULE = Source.standard("IEC 60364-4-43 433.1: I2 ≤ 1.45·IZ");

  /** How far above its continuous current a conductor may run until its protection opens. */
  public static final double OVERLOAD = 1.45;

  /** Highest continuous temperature of common PVC insulation, °C. */
  public static final double INSULATION_CELSIUS = 70;

  private static final double[] IEC_AREAS = {
    0.14, 0.22, 0.25, 0.34, 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10
  };
  private static final double[] IEC_OHMS_PER_KM = {
    147.4, 105.6, 83.6, 58.3, 40.1, 26.7, 20.0, 13.7, 8.21, 5.09, 3.39, 1.95
  };
  private static final double[] CORD_AREAS = {0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10};
  private static final double[] CORD_AMPERES = {3, 6, 10, 16, 25, 32, 40, 63};
  private static final double[] AIR_GAUGES = {30, 28, 26, 24, 22, 20, 18, 16};
  private static final double[] AIR_AMPERES = {0.86, 1.4, 2.2, 3.5, 7, 11, 16, 22};
  private static final double[] BUNDLE_FACTORS = {
    1, 0.825, 0.725, 0.66, 0.61, 0.5725, 0.54, 0.5125, 0.485, 0.465, 0.445, 0.43, 0.415, 0.3975,
    0.385, 0.37, 0.36, 0.35, 0.3425
  };
  private static final double SQUARE_MILLIMETRES_PER_CIRCULAR_MIL = 5.067075e-4;
  private static final double STRANDING = 1.02;
  private static final double IACS_OHMS_PER_KM = 17.241;
  private static final Pattern METRIC =
      Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*(?:mm²|mm2|mm\\^2|qmm)?");
  private static final Pattern GAUGE =
      Pattern.compile("(?:awg\\s*#?\\s*(\\d{1,2}))|(?:#?(\\d{1,2})\\s*awg)");

  private Conductor() {}

  /** The cross-section in mm² of a size as people write it: {@code 0.75 mm²}, {@code AWG 18}. */
  public static OptionalDouble squareMillimetres(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    Matcher gauge = GAUGE.matcher(plain);
    if (gauge.matches()) {
      String number = gauge.group(1) == null ? gauge.group(2) : gauge.group(1);
      return OptionalDouble.of(gaugeSquareMillimetres(Integer.parseInt(number)));
    }
    Matcher metric = METRIC.matcher(plain);
    if (metric.matches()) {
      double area = Double.parseDouble(metric.group(1).replace(',', '.'));
      double least = isBare(plain) ? Math.min(area, gaugeSquareMillimetres((int) area)) : area;
      return area > 0 ? OptionalDouble.of(least) : OptionalDouble.empty();
    }
    return OptionalDouble.empty();
  }

  /** What a whole number without a unit was taken as; empty where the unit is there. */
  public static String doubt(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    return isBare(plain) ? " (mm² or AWG? the thinner counts; write the unit)" : "";
  }

  /** A bare whole number may be square millimetres or a gauge: 18 is 18 mm² or 0.82 mm². */
  private static boolean isBare(String plain) {
    return plain.matches("\\d{1,2}");
  }

  /** Diameter of a gauge size in inches, ASTM B258: 0.005·92^((36 − n)/39). */
  public static double gaugeInches(double gauge) {
    return 0.005 * Math.pow(92, (36 - gauge) / 39);
  }

  /** Cross-section of a gauge size in circular mils: the diameter in mils, squared. */
  public static double circularMils(double gauge) {
    double mils = 1000 * gaugeInches(gauge);
    return mils * mils;
  }

  private static double gaugeSquareMillimetres(double gauge) {
    return circularMils(gauge) * SQUARE_MILLIMETRES_PER_CIRCULAR_MIL;
  }

  /** Resistance of one kilometre at 20 °C, in ohms. */
  public static double ohmsPerKilometre(double squareMillimetres) {
    int nominal = Arrays.binarySearch(IEC_AREAS, squareMillimetres);
    double computed = STRANDING * IACS_OHMS_PER_KM / squareMillimetres;
    if (nominal >= 0) {
      return IEC_OHMS_PER_KM[nominal];
    }
    // between nominal sizes never below what the next larger one has
    int larger = -nominal - 1;
    return larger < IEC_AREAS.length ? Math.max(computed, IEC_OHMS_PER_KM[larger]) : computed;
  }

  /** Resistance of a length in ohms, hot. */
  public static double ohms(double squareMillimetres, double lengthMillimetres, double celsius) {
    return ohmsPerKilometre(squareMillimetres)
        * lengthMillimetres
        * 1e-6
        * CopperTemperature.factor(20, celsius);
  }

  /** The least that a length can have in ohms: solid pure copper at 0 °C. */
  public static double leastOhms(double squareMillimetres, double lengthMillimetres) {
    return IACS_OHMS_PER_KM
        / squareMillimetres
        * lengthMillimetres
        * 1e-6
        * CopperTemperature.factor(20, 0);
  }

  /** Current by the handbook rule of 700 circular mils for each ampere. */
  public static double amperesByMils(double squareMillimetres) {
    return squareMillimetres / SQUARE_MILLIMETRES_PER_CIRCULAR_MIL / 700;
  }

  /** Continuous current at 30 °C in amperes, alone. */
  public static double amperes(double squareMillimetres) {
    if (!(squareMillimetres >= CORD_AREAS[0])) {
      return amperesByMils(squareMillimetres);
    }
    int i = Arrays.binarySearch(CORD_AREAS, squareMillimetres);
    int size = i >= 0 ? i : -i - 2;
    return CORD_AMPERES[size];
  }

  /** Continuous current in warm air and in a bundle, in amperes. */
  public static double amperes(double squareMillimetres, double airCelsius, double together) {
    return amperes(squareMillimetres) * shareHere(airCelsius, together);
  }

  /** What is left of each wire's current when {@code together} loaded wires share a bundle. */
  public static double bundleFactor(double together) {
    int wires = (int) Math.ceil(together);
    int last = BUNDLE_FACTORS.length;
    return wires <= last
        ? BUNDLE_FACTORS[Math.max(wires, 1) - 1]
        : BUNDLE_FACTORS[last - 1] * last / wires;
  }

  /**
   * What a wire bears while a fuse opens, in amperes: as a single wire in open air; less where 1.45
   * times what it carries in this air and bundle is less (IEC 60364-4-43 433.1: I2 ≤ 1.45·IZ).
   */
  public static double overloadAmperes(
      double squareMillimetres, double airCelsius, double together) {
    return openAirAmperes(squareMillimetres)
        * Math.min(1, OVERLOAD * shareHere(airCelsius, together));
  }

  /** What is left of a current in air of 30 °C and alone, in this air and bundle. */
  public static double shareHere(double airCelsius, double together) {
    return warmShare(airCelsius) * bundleFactor(together);
  }

  private static double warmShare(double airCelsius) {
    double left = (INSULATION_CELSIUS - airCelsius) / (INSULATION_CELSIUS - 30);
    return Math.sqrt(Math.max(0, Math.min(1, left)));
  }

  /** Current as a single wire in open air, in amperes. */
  public static double openAirAmperes(double squareMillimetres) {
    double best = 0;
    for (int i = 0; i < AIR_GAUGES.length; i++) {
      double area = gaugeSquareMillimetres(AIR_GAUGES[i]);
      if (area > squareMillimetres) {
        return best == 0
            ? AIR_AMPERES[0] * squareMillimetres / area
            : between(i, squareMillimetres);
      }
      best = AIR_AMPERES[i];
    }
    // beyond the table in proportion to the area would be too much; the root is on the safe side
    double last = gaugeSquareMillimetres(AIR_GAUGES[AIR_GAUGES.length - 1]);
    return best * Math.sqrt(squareMillimetres / last);
  }

  private static double between(int larger, double area) {
    double low = gaugeSquareMillimetres(AIR_GAUGES[larger - 1]);
    double high = gaugeSquareMillimetres(AIR_GAUGES[larger]);
    double share = (area - low) / (high - low);
    return AIR_AMPERES[larger - 1] + share * (AIR_AMPERES[larger] - AIR_AMPERES[larger - 1]);
  }

  /** The next larger nominal size, in mm²; the last when there is none. */
  public static double nextSize(double squareMillimetres) {
    for (double area : IEC_AREAS) {
      if (area > squareMillimetres) {
        return area;
      }
    }
    return IEC_AREAS[IEC_AREAS.length - 1];
  }
}
