package lowfirst.swap;

import java.util.List;
import java.util.Optional;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Kit;

/**
 * What a rule may look at: the two parts and where the swap would be.
 *
 * @param kit the kit before the swap
 * @param board the board it would be on
 * @param designators where it would be fitted
 * @param asked the part that the BOM asks for
 * @param offered the candidate
 * @param uses the channels it would serve
 */
public record SwapCase(
    Kit kit,
    Board board,
    List<Designator> designators,
    SwapPart asked,
    SwapPart offered,
    List<SwapUse> uses) {

  public SwapCase {
    designators = List.copyOf(designators);
    uses = List.copyOf(uses);
  }

  /** A swap of these designators. */
  public static SwapCase of(
      Kit kit, Board board, List<Designator> designators, SwapPart asked, SwapPart offered) {
    return new SwapCase(
        kit, board, designators, asked, offered, SwapUse.in(kit, board.name(), designators));
  }

  /** The same place with another candidate. */
  SwapCase offering(SwapPart candidate) {
    return new SwapCase(kit, board, designators, asked, candidate, uses);
  }

  /** Whether every place that would be filled is part of a channel. */
  boolean servesOnlyChannels() {
    return !designators.isEmpty()
        && designators.stream()
            .allMatch(place -> uses.stream().anyMatch(use -> use.place().equals(place)));
  }

  /** The highest rail of the kit at its upper tolerance, in volts; empty when a rail has none. */
  Optional<Double> highestRailVolts() {
    double highest = 0;
    for (var rail : kit.rails()) {
      if (rail.voltage().isEmpty()) {
        return Optional.empty();
      }
      double upper = 1 + rail.tolerance().map(t -> t.asDouble() / 100).orElse(0.0);
      highest = Math.max(highest, rail.voltage().get().asDouble() * upper);
    }
    return kit.rails().isEmpty() ? Optional.empty() : Optional.of(highest);
  }
}
