package lowfirst.sorting;

import java.util.Locale;
import lowfirst.part.PartKind;
import lowfirst.sorting.Compartment.Role;

/** What a mix-up can do, the worst first. */
public enum Consequence {
  /** A wrong pull-down or MOSFET: a load can switch on by itself, or a MOSFET half on burns. */
  LOAD_OUT_OF_CONTROL,
  /**
   * A wrong flyback diode or fuse, or a rating too low: protection is missing, a part can burst.
   */
  PROTECTION_LOST,
  /** A wrong gate resistor: slow switching heats the MOSFET, or the driver is overloaded. */
  SWITCHING_SPOILT,
  /** A wrong semiconductor or pin order: a part can be destroyed at first power. */
  PART_DESTROYED,
  /** The circuit misbehaves; nothing is at risk. */
  CIRCUIT_MISBEHAVES,
  /** It works, a little differently: brightness, tolerance. */
  HARMLESS;

  /** What happens when {@code fitted} is put where {@code meant} belongs. */
  static Consequence of(Compartment fitted, Compartment meant) {
    if (meant.roles().contains(Role.PULL_DOWN) || meant.roles().contains(Role.MOSFET)) {
      return LOAD_OUT_OF_CONTROL;
    }
    if (meant.roles().contains(Role.FLYBACK_DIODE) || meant.roles().contains(Role.FUSE)) {
      return PROTECTION_LOST;
    }
    if (isRatedLower(fitted, meant) || meant.type().kind() == PartKind.FUSE) {
      return PROTECTION_LOST;
    }
    if (meant.roles().contains(Role.GATE_RESISTOR)) {
      return SWITCHING_SPOILT;
    }
    return byKind(fitted, meant);
  }

  /** Ratings that are stated on both, the fitted part's below the meant one's. */
  private static boolean isRatedLower(Compartment fitted, Compartment meant) {
    if (fitted.type().kind() != meant.type().kind()) {
      return false;
    }
    boolean volts =
        fitted.type().ratedVoltage().isPresent()
            && meant.type().ratedVoltage().isPresent()
            && fitted.type().ratedVoltage().get().compareTo(meant.type().ratedVoltage().get()) < 0;
    boolean watts =
        fitted.type().ratedPower().isPresent()
            && meant.type().ratedPower().isPresent()
            && fitted.type().ratedPower().get().compareTo(meant.type().ratedPower().get()) < 0;
    return volts || watts;
  }

  private static Consequence byKind(Compartment fitted, Compartment meant) {
    PartKind kind = meant.type().kind();
    boolean otherPart = fitted.type().kind() != kind;
    boolean active =
        kind.isStaticSensitive()
            || kind.isPolarised() && kind != PartKind.LED && kind != PartKind.RESISTOR_NETWORK;
    boolean sameValue =
        fitted.type().value().isPresent()
            && fitted.type().value().equals(meant.type().value())
            && !otherPart;
    if (sameValue) {
      return HARMLESS;
    }
    if (active) {
      return PART_DESTROYED;
    }
    if (kind == PartKind.LED && !otherPart) {
      return HARMLESS;
    }
    return isBrightness(meant) && !otherPart ? HARMLESS : CIRCUIT_MISBEHAVES;
  }

  /** A resistor that only sets how bright something is, by its own description. */
  private static boolean isBrightness(Compartment meant) {
    return meant.type().kind() == PartKind.RESISTOR
        && !meant.descriptions().isEmpty()
        && meant.descriptions().stream()
            .map(words -> words.toLowerCase(Locale.ROOT))
            .allMatch(words -> words.matches(".*\\b(led|leds|lamp|indicator)\\b.*"));
  }
}
