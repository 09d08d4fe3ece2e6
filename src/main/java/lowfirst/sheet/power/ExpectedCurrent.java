package lowfirst.sheet.power;

import java.util.Optional;
import lowfirst.board.Load;
import lowfirst.board.Rail;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Sourced;

/** The current that a load should take, worked out from what the kit says of it. */
final class ExpectedCurrent {
  private ExpectedCurrent() {}

  /** The current in amperes at the rail's nominal voltage; empty when the kit says too little. */
  private static Optional<Double> amperes(Load load, Optional<Rail> rail) {
    if (load.current().isPresent()) {
      return load.current().map(Sourced::asDouble);
    }
    Optional<Double> volts = rail.flatMap(Rail::voltage).map(Sourced::asDouble);
    Optional<Double> byResistance =
        volts.flatMap(v -> load.resistance().map(ohms -> v / ohms.asDouble()));
    return byResistance.isPresent()
        ? byResistance
        : volts.flatMap(v -> load.power().map(watts -> watts.asDouble() / v));
  }

  /** For example {@code 2 A (1.9 A to 2.1 A)}, or what is missing. */
  static String words(Load load, Optional<Rail> rail) {
    Optional<Double> amperes = amperes(load, rail);
    if (amperes.isEmpty()) {
      return "not known: write the current of \"" + load.name() + "\" in loads.csv";
    }
    double amount = amperes.get();
    double own = share(load.tolerance());
    double volts = load.current().isPresent() ? 0 : share(rail.flatMap(Rail::tolerance));
    // A resistance that is low draws more; a current or a power is itself low or high.
    boolean inverse = load.current().isEmpty() && load.resistance().isPresent();
    double least = amount * (1 - volts) * (inverse ? 1 / (1 + own) : 1 - own);
    double most = amount * (1 + volts) * (inverse ? 1 / (1 - own) : 1 + own);
    String range = own + volts > 0 ? " (" + shown(least) + " to " + shown(most) + ")" : "";
    String inrush =
        load.inrush().map(peak -> "; at switching on up to " + peak.quantity()).orElse("");
    return shown(amount) + range + inrush;
  }

  private static double share(Optional<Sourced> tolerance) {
    return tolerance.map(Sourced::asDouble).orElse(0.0) / 100;
  }

  private static String shown(double amperes) {
    return Quantity.of(amperes, Dimension.CURRENT).rounded(2);
  }
}
