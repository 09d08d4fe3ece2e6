package lowfirst.swap.subject;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Driver;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.channel.check.Role;
import lowfirst.part.PartType;

/**
 * A channel that the part serves.
 *
 * @param channel the channel
 * @param role what the part does in it
 * @param switching how often its driver switches it
 * @param place which of its designators the part has in it
 */
public record SwapUse(OutputChannel channel, Role role, Switching switching, Designator place) {

  /** How often a channel is switched. */
  public enum Switching {
    /** On and off at times of the hand. */
    SELDOM,
    /** By pulse-width modulation. */
    PWM
  }

  /** Every channel that these designators of a board serve. */
  public static List<SwapUse> in(Kit kit, String board, List<Designator> designators) {
    Set<Designator> places = new LinkedHashSet<>(designators);
    return kit.channels().stream()
        .filter(channel -> channel.board().equals(board))
        .flatMap(
            channel -> named(kit, channel, places).or(() -> stage(kit, channel, places)).stream())
        .toList();
  }

  /** The first role whose designator is one of these. */
  private static Optional<SwapUse> named(Kit kit, OutputChannel channel, Set<Designator> places) {
    for (Role role : Role.values()) {
      Optional<Designator> place = role.placeIn(channel).filter(places::contains);
      if (place.isPresent()) {
        return Optional.of(use(kit, channel, role, place.get()));
      }
    }
    return Optional.empty();
  }

  private static Switching switching(Kit kit, OutputChannel channel) {
    boolean pwm = kit.driver(channel.driver()).flatMap(Driver::pwmFrequency).isPresent();
    return pwm ? Switching.PWM : Switching.SELDOM;
  }

  private static SwapUse use(Kit kit, OutputChannel channel, Role role, Designator place) {
    return new SwapUse(channel, role, switching(kit, channel), place);
  }

  /** A driver is named by its part type: the first of these places that holds that type. */
  private static Optional<SwapUse> stage(Kit kit, OutputChannel channel, Set<Designator> places) {
    Optional<String> driven =
        kit.driver(channel.driver()).map(Driver::partType).filter(type -> !type.isBlank());
    Optional<Board> board = kit.board(channel.board());
    if (channel.mosfet().isPresent() || driven.isEmpty() || board.isEmpty()) {
      return Optional.empty();
    }
    return places.stream()
        .filter(
            place ->
                board
                    .flatMap(there -> there.itemOf(place))
                    .filter(item -> isStage(item.partType(), driven.get()))
                    .isPresent())
        .findFirst()
        .map(place -> use(kit, channel, Role.STAGE, place));
  }

  private static boolean isStage(PartType type, String driven) {
    boolean carries =
        switch (type.kind()) {
          case DRIVER_ARRAY, OPTOCOUPLER, TRANSISTOR, BIPOLAR_TRANSISTOR -> true;
          default -> false;
        };
    return carries && (Words.same(type.typeNumber(), driven) || Words.same(type.text(), driven));
  }
}
