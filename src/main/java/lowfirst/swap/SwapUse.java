package lowfirst.swap;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Driver;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.channel.CheckKind;
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

  /** What a part does in a channel. */
  public enum Role {
    MOSFET(
        CheckKind.GATE_LEVEL,
        CheckKind.GATE_LIMIT,
        CheckKind.GATE_OFF,
        CheckKind.GATE_DRIVE_CURRENT,
        CheckKind.SWITCHING_TIME,
        CheckKind.DRAIN_CURRENT,
        CheckKind.INRUSH_CURRENT,
        CheckKind.SAFE_AREA,
        CheckKind.JUNCTION_TEMPERATURE,
        CheckKind.INRUSH_JUNCTION,
        CheckKind.DRAIN_VOLTAGE,
        CheckKind.AVALANCHE_CURRENT,
        CheckKind.AVALANCHE_ENERGY,
        CheckKind.REPETITIVE_AVALANCHE,
        CheckKind.PULL_IN),
    GATE_RESISTOR(
        CheckKind.GATE_LEVEL,
        CheckKind.GATE_LIMIT,
        CheckKind.GATE_OFF,
        CheckKind.GATE_DRIVE_CURRENT,
        CheckKind.GATE_RESISTOR_POWER,
        CheckKind.SWITCHING_TIME,
        CheckKind.SAFE_AREA,
        CheckKind.JUNCTION_TEMPERATURE,
        CheckKind.FORCED_GAIN),
    PULL_DOWN(
        CheckKind.GATE_LEVEL,
        CheckKind.GATE_LIMIT,
        CheckKind.GATE_OFF,
        CheckKind.GATE_DRIVE_CURRENT,
        CheckKind.PULL_DOWN_POWER,
        CheckKind.FORCED_GAIN),
    FLYBACK_DIODE(
        CheckKind.DIODE_VOLTAGE,
        CheckKind.DIODE_PEAK,
        CheckKind.DIODE_CURRENT,
        CheckKind.DIODE_TEMPERATURE,
        CheckKind.DIODE_RECOVERY,
        CheckKind.RELEASE_TIME,
        CheckKind.DRAIN_VOLTAGE),
    FUSE(
        CheckKind.FUSE_CURRENT,
        CheckKind.FUSE_PULSE,
        CheckKind.FUSE_VOLTAGE,
        CheckKind.FUSE_BREAKING,
        CheckKind.FUSE_PROTECTS_TRACK,
        CheckKind.FUSE_PROTECTS_WIRE,
        CheckKind.FUSE_HOLDS,
        CheckKind.TRIP_PROTECTS_TRACK,
        CheckKind.TRIP_PROTECTS_WIRE),
    /** A driver that carries the load itself: array, optocoupler, transistor. */
    STAGE(
        CheckKind.STAGE_CURRENT,
        CheckKind.STAGE_TOTAL,
        CheckKind.STAGE_VOLTAGE,
        CheckKind.STAGE_TEMPERATURE,
        CheckKind.FORCED_GAIN,
        CheckKind.OPTO_CURRENT,
        CheckKind.PULL_IN);

    private final Set<CheckKind> checks;

    Role(CheckKind... checks) {
      this.checks = EnumSet.copyOf(Set.of(checks));
    }

    /** The checks of a channel that this part has a say in. */
    public Set<CheckKind> checks() {
      return checks;
    }
  }

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
            channel ->
                roleIn(channel, places)
                    .map(role -> use(kit, channel, role, placeOf(channel, role)))
                    .or(() -> stage(kit, channel, places))
                    .stream())
        .toList();
  }

  private static Optional<Role> roleIn(OutputChannel channel, Set<Designator> places) {
    if (channel.mosfet().filter(places::contains).isPresent()) {
      return Optional.of(Role.MOSFET);
    }
    if (channel.gateResistor().filter(places::contains).isPresent()) {
      return Optional.of(Role.GATE_RESISTOR);
    }
    if (channel.pullDown().filter(places::contains).isPresent()) {
      return Optional.of(Role.PULL_DOWN);
    }
    if (channel.flybackDiode().filter(places::contains).isPresent()) {
      return Optional.of(Role.FLYBACK_DIODE);
    }
    return channel.fuse().filter(places::contains).map(place -> Role.FUSE);
  }

  private static Switching switching(Kit kit, OutputChannel channel) {
    boolean pwm = kit.driver(channel.driver()).flatMap(Driver::pwmFrequency).isPresent();
    return pwm ? Switching.PWM : Switching.SELDOM;
  }

  private static SwapUse use(Kit kit, OutputChannel channel, Role role, Designator place) {
    return new SwapUse(channel, role, switching(kit, channel), place);
  }

  private static Designator placeOf(OutputChannel channel, Role role) {
    return switch (role) {
      case MOSFET -> channel.mosfet().orElseThrow();
      case GATE_RESISTOR -> channel.gateResistor().orElseThrow();
      case PULL_DOWN -> channel.pullDown().orElseThrow();
      case FLYBACK_DIODE -> channel.flybackDiode().orElseThrow();
      case FUSE -> channel.fuse().orElseThrow();
      case STAGE -> throw new IllegalArgumentException("channels name no stage's designator");
    };
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
          case DRIVER_ARRAY, OPTOCOUPLER, BIPOLAR_TRANSISTOR -> true;
          default -> false;
        };
    return carries && (Words.same(type.typeNumber(), driven) || Words.same(type.text(), driven));
  }
}
