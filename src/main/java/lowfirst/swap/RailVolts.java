package lowfirst.swap;

import lowfirst.board.Rail;
import lowfirst.quantity.Sourced;

/** How high and how low a rail may be: with its tolerance, or 10 % where it states none. */
final class RailVolts {
  private RailVolts() {}

  /** Not a number where its voltage isn't known. */
  static double nominal(Rail rail) {
    return rail.voltage().map(Sourced::asDouble).orElse(Double.NaN);
  }

  static double high(Rail rail) {
    return nominal(rail) * (1 + part(rail));
  }

  static double low(Rail rail) {
    return nominal(rail) * (1 - part(rail));
  }

  private static double part(Rail rail) {
    return rail.percentOff() / 100;
  }
}
