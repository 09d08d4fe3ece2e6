package lowfirst.channel.data;

import java.util.EnumMap;
import java.util.Map;
import lowfirst.quantity.Quantity;

/**
 * What some part that is sold may have: above zero, and far within the bounds here, which are set
 * by practice a good step beyond the best known. An amount beyond them slipped by a thousand, in
 * its unit or its column: 43 µΩ for 43 mΩ would let anything carry.
 */
public final class PlausibleAmount {
  /** Of what harms, in each symbol's own unit. */
  private static final Map<DatasheetSymbol, Double> LEAST =
      new EnumMap<>(
          Map.of(
              DatasheetSymbol.RDSON, 0.3e-3,
              DatasheetSymbol.RTHJA, 1.0,
              DatasheetSymbol.RTHJC, 0.01,
              DatasheetSymbol.VF, 0.05,
              DatasheetSymbol.VCESAT, 0.005,
              DatasheetSymbol.QG, 0.02e-9,
              DatasheetSymbol.QGD, 0.02e-9,
              DatasheetSymbol.TRR, 0.5e-9));

  /** Of what it bears. */
  private static final Map<DatasheetSymbol, Double> MOST =
      new EnumMap<>(
          Map.of(
              DatasheetSymbol.VDS, 10e3,
              DatasheetSymbol.VRRM, 50e3,
              DatasheetSymbol.ID, 5e3,
              DatasheetSymbol.IC, 5e3,
              DatasheetSymbol.IFAV, 5e3,
              DatasheetSymbol.EAS, 100.0,
              DatasheetSymbol.IN, 5e3,
              DatasheetSymbol.TJ, 400.0));

  private PlausibleAmount() {}

  /** Whether a part may have this amount. */
  public static boolean is(DatasheetSymbol symbol, Quantity amount) {
    if (amount.amount().signum() <= 0) {
      return false;
    }
    double least = LEAST.getOrDefault(symbol, 0.0);
    double most = MOST.getOrDefault(symbol, Double.POSITIVE_INFINITY);
    double value = least > 0 || most < Double.POSITIVE_INFINITY ? amount.asDouble() : least;
    return value >= least && value <= most;
  }
}
