package lowfirst.swap;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lowfirst.board.Designator;
import lowfirst.board.Driver;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.channel.CheckKind;

/**
 * A channel that the part serves.
 *
 * @param channel the channel
 * @param role what the part does in it
 * @param switching how often its driver switches it
 */
public record SwapUse(OutputChannel channel, Role role, Switching switching) {

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
        CheckKind.SWITCHING_TIME,
        CheckKind.SAFE_AREA,
        CheckKind.JUNCTION_TEMPERATURE),
    PULL_DOWN(
        CheckKind.GATE_LEVEL,
        CheckKind.GATE_LIMIT,
        CheckKind.GATE_OFF,
        CheckKind.GATE_DRIVE_CURRENT),
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
        CheckKind.FUSE_PROTECTS_WIRE);

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
                    .map(role -> new SwapUse(channel, role, switching(kit, channel)))
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

  /** Which of its designators the part has in this channel. */
  public Designator place() {
    return switch (role) {
      case MOSFET -> channel.mosfet().orElseThrow();
      case GATE_RESISTOR -> channel.gateResistor().orElseThrow();
      case PULL_DOWN -> channel.pullDown().orElseThrow();
      case FLYBACK_DIODE -> channel.flybackDiode().orElseThrow();
      case FUSE -> channel.fuse().orElseThrow();
    };
  }
}
