package lowfirst.channel.check;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lowfirst.board.Designator;
import lowfirst.board.OutputChannel;

/** The place of a part in a channel. */
public enum Role {
  /** The part in the MOSFET's place, which may be a transistor, an array or an optocoupler. */
  MOSFET(
      "MOSFET",
      OutputChannel::mosfet,
      CheckKind.OWN_PARTS,
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
      CheckKind.STALL_CURRENT,
      CheckKind.STALL_JUNCTION,
      CheckKind.DRAIN_VOLTAGE,
      CheckKind.AVALANCHE_CURRENT,
      CheckKind.AVALANCHE_ENERGY,
      CheckKind.REPETITIVE_AVALANCHE,
      CheckKind.STAGE_CURRENT,
      CheckKind.STAGE_TOTAL,
      CheckKind.STAGE_VOLTAGE,
      CheckKind.STAGE_TEMPERATURE,
      CheckKind.FORCED_GAIN,
      CheckKind.OPTO_CURRENT,
      CheckKind.PULL_IN),
  GATE_RESISTOR(
      "gate resistor",
      OutputChannel::gateResistor,
      CheckKind.OWN_PARTS,
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
      "pull-down",
      OutputChannel::pullDown,
      CheckKind.OWN_PARTS,
      CheckKind.GATE_LEVEL,
      CheckKind.GATE_LIMIT,
      CheckKind.GATE_OFF,
      CheckKind.GATE_DRIVE_CURRENT,
      CheckKind.PULL_DOWN_POWER,
      CheckKind.FORCED_GAIN),
  FLYBACK_DIODE(
      "flyback diode",
      OutputChannel::flybackDiode,
      CheckKind.OWN_PARTS,
      CheckKind.DIODE_VOLTAGE,
      CheckKind.DIODE_PEAK,
      CheckKind.DIODE_CURRENT,
      CheckKind.DIODE_TEMPERATURE,
      CheckKind.DIODE_RECOVERY,
      CheckKind.RELEASE_TIME,
      CheckKind.DRAIN_VOLTAGE),
  FUSE(
      "fuse",
      OutputChannel::fuse,
      CheckKind.FUSE_CURRENT,
      CheckKind.FUSE_PULSE,
      CheckKind.FUSE_HOLDER,
      CheckKind.CONTACT_FAULT,
      CheckKind.FUSE_VOLTAGE,
      CheckKind.FUSE_BREAKING,
      CheckKind.FUSE_PROTECTS_TRACK,
      CheckKind.FUSE_PROTECTS_WIRE,
      CheckKind.STALL_CURRENT,
      CheckKind.STALL_JUNCTION,
      CheckKind.FUSE_HOLDS,
      CheckKind.TRIP_PROTECTS_TRACK,
      CheckKind.TRIP_PROTECTS_WIRE),
  /** A driver that carries the load itself: array, optocoupler, transistor. */
  STAGE(
      "driver",
      channel -> Optional.empty(),
      CheckKind.STAGE_CURRENT,
      CheckKind.INRUSH_CURRENT,
      CheckKind.STALL_CURRENT,
      CheckKind.STALL_JUNCTION,
      CheckKind.STAGE_TOTAL,
      CheckKind.STAGE_VOLTAGE,
      CheckKind.STAGE_TEMPERATURE,
      CheckKind.FORCED_GAIN,
      CheckKind.OPTO_CURRENT,
      CheckKind.GATE_LEVEL,
      CheckKind.JUNCTION_TEMPERATURE,
      CheckKind.PULL_IN);

  private final String words;
  private final Function<OutputChannel, Optional<Designator>> place;
  private final Set<CheckKind> checks;

  Role(String words, Function<OutputChannel, Optional<Designator>> place, CheckKind... checks) {
    this.words = words;
    this.place = place;
    this.checks = EnumSet.copyOf(Set.of(checks));
  }

  /** What a person calls it. */
  public String words() {
    return words;
  }

  /** Its designator; empty where none is fitted, and of a stage, which a driver names. */
  public Optional<Designator> placeIn(OutputChannel channel) {
    return place.apply(channel);
  }

  /** The checks that a part in this place has a say in. */
  public Set<CheckKind> checks() {
    return checks;
  }
}
