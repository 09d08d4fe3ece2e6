package lowfirst.sheet.power;

import java.util.Optional;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.OutputChannel;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/**
 * The resistance from a driver pin to the return with the driver unplugged: gate resistor plus
 * pull-down when the pull-down hangs on the gate, the pull-down alone when it hangs on the driver.
 */
final class GatePath {
  /** Taken where the BOM states none: the loosest of the common carbon film resistors. */
  private static final Tolerance LOOSE = Tolerance.percent("5");

  private GatePath() {}

  /** For example {@code 10.3 kΩ (9.81 kΩ to 10.8 kΩ)}, or what is missing. */
  static String words(Board board, OutputChannel channel) {
    if (channel.pullDown().isEmpty()) {
      return "no pull-down named: open";
    }
    Optional<PartType> gate = channel.gateResistor().flatMap(d -> resistor(board, d));
    Optional<PartType> pullDown = channel.pullDown().flatMap(d -> resistor(board, d));
    if (pullDown.isEmpty()) {
      return "value of " + channel.pullDown().get() + " not known";
    }
    return switch (channel.pullDownSide()) {
      case DRIVER -> range(Optional.empty(), pullDown.get());
      case GATE -> alongGate(channel, gate, pullDown.get());
      case UNSTATED ->
          alongGate(channel, gate, pullDown.get())
              + ", or "
              + range(Optional.empty(), pullDown.get())
              + " if the pull-down hangs on the driver";
    };
  }

  private static String alongGate(
      OutputChannel channel, Optional<PartType> gate, PartType pullDown) {
    boolean missing = channel.gateResistor().isPresent() && gate.isEmpty();
    return missing
        ? "value of " + channel.gateResistor().get() + " not known"
        : range(gate, pullDown);
  }

  private static Optional<PartType> resistor(Board board, Designator designator) {
    return board
        .itemOf(designator)
        .map(Item::partType)
        .filter(type -> type.value().isPresent())
        .filter(type -> type.value().get().dimension() == Dimension.RESISTANCE);
  }

  private static String range(Optional<PartType> gate, PartType pullDown) {
    double nominal = pullDown.value().orElseThrow().asDouble();
    double lowest = tolerance(pullDown).lowest(pullDown.value().orElseThrow()).asDouble();
    double highest = tolerance(pullDown).highest(pullDown.value().orElseThrow()).asDouble();
    if (gate.isPresent()) {
      Quantity value = gate.get().value().orElseThrow();
      nominal += value.asDouble();
      lowest += tolerance(gate.get()).lowest(value).asDouble();
      highest += tolerance(gate.get()).highest(value).asDouble();
    }
    return shown(nominal) + " (" + shown(lowest) + " to " + shown(highest) + ")";
  }

  private static Tolerance tolerance(PartType type) {
    return type.tolerance().orElse(LOOSE);
  }

  private static String shown(double ohms) {
    return Quantity.of(ohms, Dimension.RESISTANCE).rounded(3);
  }
}
