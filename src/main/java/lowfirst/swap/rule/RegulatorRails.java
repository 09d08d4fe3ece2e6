package lowfirst.swap.rule;

import java.util.List;
import java.util.Optional;
import lowfirst.board.Load;
import lowfirst.board.OutputChannel;
import lowfirst.board.Rail;
import lowfirst.quantity.Quantity;
import lowfirst.swap.subject.SwapCase;

/** The rails of a kit that a regulator may hang on, and the one that it feeds. */
final class RegulatorRails {
  private RegulatorRails() {}

  /** Every rail above the output voltage. */
  static List<Rail> higher(SwapCase swap) {
    Optional<Double> out = outputVolts(swap);
    return swap.kit().rails().stream()
        .filter(rail -> out.filter(volts -> rail.nominalVolts() > 1.05 * volts).isPresent())
        .toList();
  }

  static Optional<Rail> fed(SwapCase swap) {
    Optional<Double> out = outputVolts(swap);
    return swap.kit().rails().stream()
        .filter(
            rail ->
                out.filter(volts -> Math.abs(rail.nominalVolts() - volts) < 0.05 * volts)
                    .isPresent())
        .findFirst();
  }

  private static Optional<Double> outputVolts(SwapCase swap) {
    return swap.offered().lines("VO").stream()
        .flatMap(line -> line.typ().stream())
        .map(Quantity::asDouble)
        .findFirst();
  }

  /** What the loads of a rail draw by their tables: the least that flows with all of them on. */
  static double loadAmps(SwapCase swap, Rail rail) {
    double sum = 0;
    for (OutputChannel channel : swap.kit().channels()) {
      Optional<Load> load = swap.kit().load(channel.load());
      if (load.map(Load::rail).filter(rail.name()::equals).isPresent()) {
        sum += amps(load.get(), rail.nominalVolts());
      }
    }
    return sum;
  }

  private static double amps(Load load, double volts) {
    if (load.current().isPresent()) {
      return load.current().get().asDouble();
    }
    if (load.power().isPresent()) {
      return load.power().get().asDouble() / volts;
    }
    return load.resistance().map(ohms -> volts / ohms.asDouble()).orElse(0.0);
  }
}
