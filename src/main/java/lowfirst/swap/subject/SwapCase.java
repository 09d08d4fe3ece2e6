package lowfirst.swap.subject;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.board.Rail;

/**
 * What a rule may look at: the two parts and where the swap would be.
 *
 * @param kit the kit before the swap
 * @param board the board it would be on
 * @param designators where it would be fitted
 * @param asked the part that the BOM asks for
 * @param offered the candidate
 * @param uses the channels it would serve
 * @param servesOnlyChannels whether every place that would be filled is part of a channel
 */
public record SwapCase(
    Kit kit,
    Board board,
    List<Designator> designators,
    SwapPart asked,
    SwapPart offered,
    List<SwapUse> uses,
    boolean servesOnlyChannels) {

  public SwapCase {
    designators = List.copyOf(designators);
    uses = List.copyOf(uses);
  }

  /** A swap of these designators. */
  public static SwapCase of(
      Kit kit, Board board, List<Designator> designators, SwapPart asked, SwapPart offered) {
    List<SwapUse> uses = SwapUse.in(kit, board.name(), designators);
    Set<Designator> served = uses.stream().map(SwapUse::place).collect(Collectors.toSet());
    boolean onlyChannels = !designators.isEmpty() && served.containsAll(designators);
    return new SwapCase(kit, board, designators, asked, offered, uses, onlyChannels);
  }

  /** The same place with another candidate. */
  public SwapCase offering(SwapPart candidate) {
    return new SwapCase(kit, board, designators, asked, candidate, uses, servesOnlyChannels);
  }

  /** Whether a channel that it serves is pulse-width modulated. */
  public boolean isUnderPwm() {
    for (SwapUse use : uses) {
      if (use.switching() == SwapUse.Switching.PWM) {
        return true;
      }
    }
    return false;
  }

  /** The highest rail of the kit at its upper tolerance, in volts; empty when a rail has none. */
  public Optional<Double> highestRailVolts() {
    return kit.rails().stream()
        .map(Rail::highestVolts)
        .max(Double::compare)
        .filter(volts -> !volts.isNaN());
  }
}
