package lowfirst.channel.formula;

import lowfirst.quantity.Source;

/**
 * What a fuse's rated current means, by the standard it is made to. Continuous share and current at
 * which it surely opens: UL 248-14 0.75 and 1.35 within an hour; IEC 60127 1.00 and 2.1 within half
 * an hour (schmelzleiter.de, "Sind verschiedene Standards miteinander vergleichbar"; Littelfuse
 * Fuseology Selection Guide p. 12; Littelfuse, EDN 26 Sep 1996).
 */
public enum FuseFamily {
  UL_248_14("UL 248-14", 0.75, 1.35),
  IEC_60127("IEC 60127", 1.00, 2.1),
  /** Not said: it carries as little as the one and opens as late as the other. */
  UNSTATED("standard not stated", 0.75, 2.1);

  /** Loss of rating by ambient, per kelvin above 25 °C (interfacebus.com, Fuse Derating). */
  static final double PER_KELVIN = 0.005;

  /** Pulses closer together than this add up: so far apart were those of Chart 2. */
  public static final double COOLING_SECONDS = 10;

  /** What Chart 2 was drawn for at most. */
  public static final int MOST_PULSES = 100_000;

  private final double continuousShare;
  private final double openingFactor;
  private final Source source;

  FuseFamily(String words, double continuousShare, double openingFactor) {
    this.continuousShare = continuousShare;
    this.openingFactor = openingFactor;
    this.source =
        Source.standard(words + ": overload gates, schmelzleiter.de and Littelfuse Fuseology");
  }

  /** Where its two numbers come from. */
  public Source source() {
    return source;
  }

  /** Current it carries for good in still air, in amperes. */
  public double continuousAmperes(double ratedAmperes, double airCelsius) {
    double warm = 1 - PER_KELVIN * Math.max(0, airCelsius - 25);
    return ratedAmperes * continuousShare * Math.max(0, warm);
  }

  /** Current at which it surely opens, in amperes: all below it must be borne downstream. */
  public double openingAmperes(double ratedAmperes) {
    return ratedAmperes * openingFactor;
  }

  /**
   * Share of the nominal melting I²t that a pulse may have (Littelfuse catalogue, Chart 2): 22 %
   * for 100 000 pulses, 29 % for 10 000, 38 % for 1 000, 48 % for 100; not a number beyond.
   */
  public static double endurance(double pulses) {
    if (pulses <= 100) {
      return 0.48;
    }
    if (pulses <= 1_000) {
      return 0.38;
    }
    if (pulses <= 10_000) {
      return 0.29;
    }
    return pulses <= MOST_PULSES ? 0.22 : Double.NaN;
  }
}
